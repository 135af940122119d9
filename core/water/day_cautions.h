// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/planned_day.h"
#include "core/water/water.h"

#include <string>
#include <vector>

namespace water {

/// What anybody should bear in mind on such a day, the gravest first: wind, cold water, darkness,
/// season and house rules, and the standing cautions for an anchored small boat. Cold water below
/// 15 C: RNLI. Pike in warm water: Environment Agency 2019 (from 21 C). Ropes: US state boater
/// courses ask for 5 to 10 times the depth and never for the stern alone.
[[nodiscard]] std::vector<std::string> dayCautions(const Water& water, const PlannedDay& planned);

} // namespace water
