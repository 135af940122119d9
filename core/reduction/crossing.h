// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"

#include <cstddef>

namespace reduction {

/// A place where two passes of the boat cross: two depths for one place.
struct Crossing {
    geo::WaterPoint at;
    double depthA_m = 0.0; ///< On the earlier pass, straight between its two soundings.
    double depthB_m = 0.0; ///< On the later pass.
    int dayA = 0;
    int dayB = 0;
    std::size_t soundingA = 0; ///< Position, among the kept soundings, of the one just before it.
    std::size_t soundingB = 0;
    double shareA = 0.0; ///< From there towards the next, 0 to 1.
    double shareB = 0.0;

    [[nodiscard]] double difference_m() const { return depthB_m - depthA_m; }
};

} // namespace reduction
