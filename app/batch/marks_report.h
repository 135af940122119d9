// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"

#include <nlohmann/json_fwd.hpp>

namespace batch {

/// The report of `marks`; keys as the contract says, each with its unit.
[[nodiscard]] nlohmann::ordered_json marksReport(const water::Water& water,
                                                 const water::PlannedDay& planned);

} // namespace batch
