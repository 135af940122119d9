// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reduction/crossing.h"
#include "core/reduction/day_difference.h"

#include <span>
#include <vector>

namespace reduction {

struct DayDifferenceSettings {
    /// Fewer crossings between two days tell nothing of their levels. Default 5, as for tying
    /// days. 3 to 100.
    std::size_t leastCrossings = 5;
    /// Differences below this are lost in the step of the sounder and in the waves. Default 0.1 m
    /// (ours). 0.01 to 1 m.
    units::Length least = units::Length::metres(0.1);
    /// How many standard errors of its median a difference has to reach. Default 3 (ours): days
    /// that agree are hardly ever said to differ. 1 to 10.
    double errors = 3.0;
};

/// Pairs of survey days that disagree, the greatest difference first. The standard error of a
/// median is 1.253 sigma / sqrt(n) (of a normal sample; Kendall and Stuart), sigma by the median
/// absolute deviation.
[[nodiscard]] std::vector<DayDifference> findDayDifferences(std::span<const Crossing> crossings,
                                                            const DayDifferenceSettings& settings);

} // namespace reduction
