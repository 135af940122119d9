// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/remove_stay.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/stays.h"

namespace edits {

void removeStay(open_water::OpenWater& open, logbook::StayId id) {
    act(open, wording::Tongue::tr("Remove stay"),
        [&](const water::Water& water) { return acts::removeStay(water, id); });
}

} // namespace edits
