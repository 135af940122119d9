// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/ground_form.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace structure {

namespace {

/// A step to one side and the distance that it covers.
struct Side {
    int cols = 0;
    int rows = 0;
    float distance_m = 0.0F;
};

std::vector<Side> sidesTo(double reach_cells, double cell_m) {
    constexpr double diagonal = 0.70710678;
    std::vector<Side> sides;
    for (const double share : {0.5, 1.0}) {
        const int straight = std::max(1, static_cast<int>(std::lround(share * reach_cells)));
        const int oblique =
            std::max(1, static_cast<int>(std::lround(diagonal * share * reach_cells)));
        for (const auto& [cols, rows] :
             {std::pair{straight, 0}, std::pair{0, straight}, std::pair{oblique, oblique},
              std::pair{oblique, -oblique}}) {
            sides.push_back({cols, rows, static_cast<float>(cell_m * std::hypot(cols, rows))});
        }
    }
    return sides;
}

} // namespace

GroundForm GroundForm::of(const grid::DepthGrid& depth, const SlopeGrid& slope,
                          units::Length reach) {
    constexpr float toll = 0.35F;
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
                const float off_m = toll * 0.01F * slope.percent()[i] * s.distance_m;
                ridge_m = std::max(ridge_m, low - here_m - off_m);
                valley_m = std::max(valley_m, here_m - high - off_m);
                trough_m = std::max(trough_m, here_m - high - off_m - basin * s.distance_m);
            }
        }
        out.ridge_m[i] = ridge_m;
        out.valley_m[i] = valley_m;
        out.trough_m[i] = trough_m;
    }
    return out;
}

} // namespace structure
