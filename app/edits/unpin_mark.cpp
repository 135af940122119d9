// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/unpin_mark.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/plan.h"

namespace edits {

void unpinMark(open_water::OpenWater& open, geo::LonLat place) {
    act(open, wording::Tongue::tr("Let mark go"),
        [&](const water::Water& water) { return acts::unpinMark(water, place); });
}

} // namespace edits
