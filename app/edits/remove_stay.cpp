// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/remove_stay.h"

#include "app/edits/change_water.h"

namespace edits {

void removeStay(open_water::OpenWater& open, logbook::StayId id) {
    change(open, QObject::tr("Remove stay"), {water::Part::log}, [&](water::Water& water) {
        std::erase_if(water.log.edit(), [&](const logbook::Stay& stay) { return stay.id == id; });
    });
}

} // namespace edits
