// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/units/depth.h"
#include "core/units/moment.h"

#include <cmath>
#include <optional>

namespace soundings {

/// One depth at one place and time, as the sounder or the lead showed it.
struct Sounding {
    geo::LonLat place;
    units::Depth shown;
    std::optional<units::Moment> time; ///< UTC; absent where the file has none.
    friend bool operator==(const Sounding&, const Sounding&) = default;
};

/// One sounding ready for drawing: reduced to chart level, in the water's frame, not set aside.
struct KeptSounding {
    geo::LonLat place;
    double x_m = 0.0;
    double y_m = 0.0;
    double depth_m = 0.0; ///< Reduced depth, positive down.
    int day = 0;          ///< Position of its survey day.
    /// Number of its pass, counted over all days; soundings of a pass follow one another.
    int pass = 0;
    double time_s = NAN; ///< Seconds since 1970, UTC; not a number where the file has no time.
};

} // namespace soundings
