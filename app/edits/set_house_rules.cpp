// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/set_house_rules.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/facts.h"

namespace edits {

void setHouseRules(open_water::OpenWater& open, const logbook::HouseRules& rules) {
    act(open, wording::Tongue::tr("Set house rules"),
        [&](const water::Water& water) { return acts::setHouseRules(water, rules); });
}

} // namespace edits
