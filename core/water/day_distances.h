// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"

#include <optional>
#include <vector>

namespace water {

/// Metres over water between the places of a day; infinite where there is no way.
struct DayDistances {
    std::vector<std::vector<double>> between_m;
    std::vector<double> fromLaunch_m; ///< Empty without a launch.
};

/// Over-water distances on cells of about a four-hundredth of the water's breadth, at least 5 m:
/// within 2 % and a cell. A launch on the bank counts from the nearest water.
[[nodiscard]] DayDistances dayDistances(const geo::Outline& outline,
                                        const std::vector<geo::WaterPoint>& places,
                                        std::optional<geo::WaterPoint> launch);

} // namespace water
