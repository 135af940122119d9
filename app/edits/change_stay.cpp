// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_stay.h"

#include "app/edits/change_water.h"
#include "core/acts/stays.h"

namespace edits {

void changeStay(open_water::OpenWater& open, const QString& name, logbook::StayId id,
                const std::function<void(logbook::Stay&)>& changeOne) {
    act(open, name,
        [&](const water::Water& water) { return acts::changeStay(water, id, changeOne); });
}

} // namespace edits
