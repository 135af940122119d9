// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/logbook/house_rules.h"
#include "core/water/document/settings.h"
#include "core/water/document/water.h"

#include <functional>

namespace acts {

/// Changes what is known of the water as a whole: name, clock, chart level, places, launch. Of the
/// change only the parts facts and plan are taken.
/// \return wrongUse where a setting would be out of its range.
[[nodiscard]] base::Result<water::Water>
changeFacts(const water::Water& water, const std::function<void(water::Water&)>& changeThem);

/// Sets how the water is drawn and divided.
/// \return wrongUse where a setting is out of its range.
[[nodiscard]] base::Result<water::Water> setSettings(const water::Water& water,
                                                     const water::Settings& settings);

/// Gives the water its fishery's rules.
[[nodiscard]] base::Result<water::Water> setHouseRules(const water::Water& water,
                                                       const logbook::HouseRules& rules);

} // namespace acts
