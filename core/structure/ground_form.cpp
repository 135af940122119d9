// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/ground_form.h"

#include "core/base/two_at_once.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
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

/// By value, so that four are compared at once; the first where the second is NaN.
float larger(float so, float now) {
    return now > so ? now : so;
}

/// Raises what stands out in a row by what it does along one axis, four cells at a time and without
/// a branch: depths are NaN where there is no water, and no comparison with NaN raises anything.
void lookAlong(const Side& side, int row, const grid::DepthGrid& depth, const SlopeGrid& slope,
               GroundForm& out) {
    constexpr float toll = 0.45F * 0.01F; // of the slope in percent
    constexpr float basin = 0.005F;
    const grid::GridFrame& f = depth.frame();
    const int margin = std::abs(side.cols);
    if (row < side.rows || row + side.rows >= f.rows() || 2 * margin >= f.cols()) {
        return; // rows of a side are never negative
    }
    const std::size_t start = f.index({margin, row});
    const std::size_t step =
        f.index({margin + side.cols, row + side.rows}) - start; // ahead, as a whole
    const float* const here = depth.raw_m().data() + start;
    const float* const ahead = here + step;
    const float* const behind = here - step;
    const float* const percent = slope.percent().values().data() + start;
    float* const ridge = out.ridge_m.values().data() + start;
    float* const valley = out.valley_m.values().data() + start;
    float* const trough = out.trough_m.values().data() + start;
    const float share = side.share;
    const float tollHere = toll * side.reach_m;
    const float rise_m = basin * side.reach_m;
    const int count = f.cols() - 2 * margin;
    // two loops: one with three results is too much for the compiler to keep apart
    for (int k = 0; k < count; ++k) {
        const float low_m = 0.5F * (ahead[k] + behind[k] - std::fabs(ahead[k] - behind[k]));
        ridge[k] = larger(ridge[k], share * (low_m - here[k]) - tollHere * percent[k]);
    }
    for (int k = 0; k < count; ++k) {
        const float high_m = 0.5F * (ahead[k] + behind[k] + std::fabs(ahead[k] - behind[k]));
        const float lower_m = share * (here[k] - high_m) - tollHere * percent[k];
        valley[k] = larger(valley[k], lower_m);
        trough[k] = larger(trough[k], lower_m - rise_m);
    }
}

} // namespace

GroundForm GroundForm::of(const grid::DepthGrid& depth, const SlopeGrid& slope,
                          units::Length reach) {
    const grid::GridFrame& f = depth.frame();
    GroundForm out{grid::Grid<float>(f, -INFINITY), grid::Grid<float>(f, -INFINITY),
                   grid::Grid<float>(f, -INFINITY)};
    const std::vector<Side> sides = sidesTo(reach.inMetres() / f.cell_m(), f.cell_m());
    const auto look = [&](int first, int last) {
        for (int row = first; row < last; ++row) {
            for (const Side& side : sides) {
                lookAlong(side, row, depth, slope, out);
            }
        }
    };
    base::twoAtOnce([&] { look(0, f.rows() / 2); }, [&] { look(f.rows() / 2, f.rows()); });
    for (std::size_t i = 0; i < depth.size(); ++i) {
        if (!depth.has(i)) {
            out.ridge_m[i] = out.valley_m[i] = out.trough_m[i] = NAN;
        }
    }
    return out;
}

} // namespace structure
