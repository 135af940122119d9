// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/bearing.h"
#include "core/units/length.h"

#include <cmath>

namespace geo {

/// A place in the water's own flat frame: metres east and north of its origin. Within 20 km of it,
/// distances are right to 5 parts in a million.
struct WaterPoint {
    double x_m = 0.0;
    double y_m = 0.0;
    friend bool operator==(const WaterPoint&, const WaterPoint&) = default;
};

[[nodiscard]] inline double distance_m(WaterPoint a, WaterPoint b) {
    return std::hypot(b.x_m - a.x_m, b.y_m - a.y_m);
}

[[nodiscard]] inline units::Length distance(WaterPoint a, WaterPoint b) {
    return units::Length::metres(distance_m(a, b));
}

/// Grid bearing from a to b, which within a few kilometres of the origin is true to a few
/// hundredths of a degree.
[[nodiscard]] inline units::Bearing bearing(WaterPoint a, WaterPoint b) {
    return units::Bearing::ofStep(b.x_m - a.x_m, b.y_m - a.y_m);
}

[[nodiscard]] inline WaterPoint moved(WaterPoint from, units::Bearing bearing,
                                      units::Length distance) {
    return {from.x_m + distance.inMetres() * bearing.east(),
            from.y_m + distance.inMetres() * bearing.north()};
}

/// An upright box; empty until something is put in.
struct Box {
    double west_m = INFINITY;
    double south_m = INFINITY;
    double east_m = -INFINITY;
    double north_m = -INFINITY;

    void take(WaterPoint p) {
        west_m = std::fmin(west_m, p.x_m);
        south_m = std::fmin(south_m, p.y_m);
        east_m = std::fmax(east_m, p.x_m);
        north_m = std::fmax(north_m, p.y_m);
    }
    [[nodiscard]] bool isEmpty() const { return !(west_m <= east_m && south_m <= north_m); }
    [[nodiscard]] bool holds(WaterPoint p) const {
        return p.x_m >= west_m && p.x_m <= east_m && p.y_m >= south_m && p.y_m <= north_m;
    }
    [[nodiscard]] double width_m() const { return east_m - west_m; }
    [[nodiscard]] double height_m() const { return north_m - south_m; }
    [[nodiscard]] Box grownBy(double margin_m) const {
        return {west_m - margin_m, south_m - margin_m, east_m + margin_m, north_m + margin_m};
    }
};

} // namespace geo
