// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>

namespace sections {

/// What is summed over the cells of a part of the water, weighted by area: enough to tell its size,
/// its middle and how much its depth varies, and to add and take away cells at no
/// cost.
struct PartSums {
    double area_m2 = 0.0;
    double x_m3 = 0.0;
    double y_m3 = 0.0;
    double depth_m3 = 0.0;
    double depthSquares_m4 = 0.0;
    double border_m = 0.0; ///< Length round it (Crofton, four directions); kept by who moves cells.

    void add(const PartSums& other, double sign = 1.0) {
        area_m2 += sign * other.area_m2;
        x_m3 += sign * other.x_m3;
        y_m3 += sign * other.y_m3;
        depth_m3 += sign * other.depth_m3;
        depthSquares_m4 += sign * other.depthSquares_m4;
    }
    /// Sum of the squared differences from its mean depth.
    [[nodiscard]] double depthScatter_m4() const {
        return area_m2 > 0.0 ? std::max(0.0, depthSquares_m4 - depth_m3 * depth_m3 / area_m2) : 0.0;
    }
};

} // namespace sections
