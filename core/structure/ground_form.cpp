// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/ground_form.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace structure {

namespace {

/// A step to one side in whole cells, which covers the reach wanted but for rounding.
struct Side {
    int cols = 0;
    int rows = 0;
    float reach_m = 0.0F;
    float share = 1.0F; ///< Reach over the distance covered.
};

/// Eight axes: with four, a saddle that lies askew to the grid fell between them.
std::vector<Side> sidesTo(double reach_cells, double cell_m) {
    constexpr int axes = 8;
    std::vector<Side> sides;
    for (const double reach : {0.5 * reach_cells, reach_cells}) {
        for (int k = 0; k < axes; ++k) {
            const double angle = std::numbers::pi * k / axes;
            const int cols = static_cast<int>(std::lround(reach * std::cos(angle)));
            const int rows = static_cast<int>(std::lround(reach * std::sin(angle)));
            sides.push_back({cols, rows, static_cast<float>(reach * cell_m),
                             static_cast<float>(reach / std::hypot(cols, rows))});
        }
    }
    return sides;
}

} // namespace

GroundForm GroundForm::of(const grid::DepthGrid& depth, const SlopeGrid& slope,
                          units::Length reach) {
    constexpr float toll = 0.45F;
    constexpr float basin = 0.005F;
    const grid::GridFrame& f = depth.frame();
    GroundForm out{grid::Grid<float>(f, NAN), grid::Grid<float>(f, NAN), grid::Grid<float>(f, NAN)};
    const std::vector<Side> sides = sidesTo(reach.inMetres() / f.cell_m(), f.cell_m());
    for (std::size_t i = 0; i < depth.size(); ++i) {
        if (!depth.has(i)) {
            continue;
        }
        const grid::Cell c = f.cellAt(i);
        const float here_m = depth.raw_m()[i];
        float ridge_m = -INFINITY;
        float valley_m = -INFINITY;
        float trough_m = -INFINITY;
        for (const Side& s : sides) {
            const grid::Cell a{c.col + s.cols, c.row + s.rows};
            const grid::Cell b{c.col - s.cols, c.row - s.rows};
            if (depth.has(a) && depth.has(b)) {
                const auto [low, high] =
                    std::minmax(depth.raw_m()[f.index(a)], depth.raw_m()[f.index(b)]);
                const float off_m = toll * 0.01F * slope.percent()[i] * s.reach_m;
                ridge_m = std::max(ridge_m, s.share * (low - here_m) - off_m);
                const float lower_m = s.share * (here_m - high) - off_m;
                valley_m = std::max(valley_m, lower_m);
                trough_m = std::max(trough_m, lower_m - basin * s.reach_m);
            }
        }
        out.ridge_m[i] = ridge_m;
        out.valley_m[i] = valley_m;
        out.trough_m[i] = trough_m;
    }
    return out;
}

} // namespace structure
