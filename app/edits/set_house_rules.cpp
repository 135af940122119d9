// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/set_house_rules.h"

#include "app/edits/change_water.h"

namespace edits {

void setHouseRules(open_water::OpenWater& open, const logbook::HouseRules& rules) {
    change(open, QObject::tr("Set house rules"), {water::Part::houseRules},
           [&rules](water::Water& water) { water.houseRules = rules; });
}

} // namespace edits
