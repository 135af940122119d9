// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/outline.h"
#include "core/water/document/water.h"

#include <optional>
#include <vector>

namespace water {

/// Metres over water between the places of a day; infinite where there is no way.
struct DayDistances {
    std::vector<std::vector<double>> between_m;
    std::vector<double> fromLaunch_m; ///< Empty without a launch.
};

/// Over-water distances on cells of about a four-hundredth of the water's breadth, at least 5 m:
/// within 2 % and a cell. No way leads through closed water. A launch on the bank, and whatever
/// else does not lie in open water, counts from the nearest. \return the error of closedCells().
[[nodiscard]] base::Result<DayDistances> dayDistances(const Water& water,
                                                      const geo::Outline& outline,
                                                      const std::vector<geo::WaterPoint>& places,
                                                      std::optional<geo::WaterPoint> launch);

} // namespace water
