// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/pin_mark.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/plan.h"

namespace edits {

void pinMark(open_water::OpenWater& open, geo::LonLat from, const water::PinnedMark& mark) {
    act(open, wording::Tongue::tr("Keep mark"),
        [&](const water::Water& water) { return acts::pinMark(water, from, mark); });
}

} // namespace edits
