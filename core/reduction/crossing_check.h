// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reduction/crossing.h"

#include <cstddef>
#include <span>

namespace reduction {

/// Largest vertical uncertainty at a depth, 95 %, of IHO S-44 Ed. 6.1.0 (2022), Table 1:
/// sqrt(a^2 + (b d)^2).
[[nodiscard]] double order1b_m(double depth_m);
[[nodiscard]] double order2_m(double depth_m);

/// Whether |difference| is within sqrt(2) x that limit (two soundings that err independently), at
/// the mean of both depths.
[[nodiscard]] bool isWithinOrder1b(const Crossing& crossing);
[[nodiscard]] bool isWithinOrder2(const Crossing& crossing);

/// How well two depths for one place agree. A yardstick for the reader, no hydrographic survey.
struct CrossingCheck {
    std::size_t count = 0;
    double mean_m = 0.0; ///< Later minus earlier pass.
    double rms_m = 0.0;
    double p95_m = 0.0; ///< 95 % of |difference| lie within it.
    /// Shares of the crossings that are within each, 0 to 1.
    double withinOrder1b = 0.0;
    double withinOrder2 = 0.0;
};

[[nodiscard]] CrossingCheck checkOf(std::span<const Crossing> crossings);

} // namespace reduction
