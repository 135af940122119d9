// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/logbook/house_rules.h"

namespace edits {

/// Gives the water its fishery's rules.
void setHouseRules(open_water::OpenWater& open, const logbook::HouseRules& rules);

} // namespace edits
