// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/slope_grid.h"

#include "core/grid/box_mean.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace structure {

using grid::Cell;
using grid::Grid;
using grid::GridFrame;

namespace {

/// Weighted mean of the differences along the middle and the two outer lines of the nine, each
/// taken across the cell where both ends hold a depth, else from the middle of the line to one end.
class Difference {
public:
    void take(float low, float middle, float high, double weight) {
        double d = NAN;
        if (!std::isnan(low) && !std::isnan(high)) {
            d = 0.5 * (static_cast<double>(high) - static_cast<double>(low));
        } else if (!std::isnan(middle)) {
            d = std::isnan(high) ? static_cast<double>(middle) - static_cast<double>(low)
                                 : static_cast<double>(high) - static_cast<double>(middle);
        }
        if (!std::isnan(d)) {
            sum_ += weight * d;
            weights_ += weight;
        }
    }
    /// 0 where nothing could be compared: a cell by itself is level as far as anyone knows.
    [[nodiscard]] double value() const { return weights_ > 0.0 ? sum_ / weights_ : 0.0; }

private:
    double sum_ = 0.0;
    double weights_ = 0.0;
};

/// The nine depths round a cell, north-west first.
std::array<float, 9> nineAt(const grid::DepthGrid& depth, Cell c) {
    const GridFrame& f = depth.frame();
    std::array<float, 9> nine{};
    std::size_t k = 0;
    for (int dr = -1; dr <= 1; ++dr) {
        for (int dc = -1; dc <= 1; ++dc) {
            const Cell n{c.col + dc, c.row + dr};
            nine[k++] = f.holds(n) ? depth.raw_m()[f.index(n)] : NAN;
        }
    }
    return nine;
}

} // namespace

int windowRadius(units::Length scale, double cell_m) {
    return std::max(0, static_cast<int>(std::lround(0.5 * (scale.inMetres() / cell_m - 1.0))));
}

Fall fallAt(const grid::DepthGrid& depth, Cell c) {
    const std::array<float, 9> z = nineAt(depth, c);
    Difference east;
    Difference north;
    for (std::size_t k = 0; k < 3; ++k) {
        const double weight = k == 1 ? 2.0 : 1.0;
        east.take(z[3 * k], z[3 * k + 1], z[3 * k + 2], weight);
        north.take(z[6 + k], z[3 + k], z[k], weight);
    }
    const double cell_m = depth.frame().cell_m();
    return {east.value() / cell_m, north.value() / cell_m};
}

SlopeGrid SlopeGrid::of(const grid::DepthGrid& depth, units::Length scale) {
    const GridFrame& f = depth.frame();
    SlopeGrid out;
    out.percent_ = Grid<float>(f, NAN);
    out.east_ = Grid<float>(f, NAN);
    out.north_ = Grid<float>(f, NAN);
    for (std::size_t i = 0; i < depth.size(); ++i) {
        if (!depth.has(i)) {
            continue;
        }
        const Fall fall = fallAt(depth, f.cellAt(i));
        out.east_[i] = static_cast<float>(fall.eastward);
        out.north_[i] = static_cast<float>(fall.northward);
    }
    // Averaging the differences is averaging the depths, but right up to the shore.
    const int radius = windowRadius(scale, f.cell_m());
    out.east_ = grid::boxMean(out.east_, radius);
    out.north_ = grid::boxMean(out.north_, radius);
    for (std::size_t i = 0; i < depth.size(); ++i) {
        out.percent_[i] = 100.0F * std::hypot(out.east_[i], out.north_[i]);
    }
    return out;
}

std::optional<double> SlopeGrid::percentAt(Cell c) const {
    if (!frame().holds(c) || std::isnan(percent_[c])) {
        return std::nullopt;
    }
    return static_cast<double>(percent_[c]);
}

} // namespace structure
