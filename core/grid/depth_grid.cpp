// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/depth_grid.h"

#include <algorithm>

namespace grid {

std::optional<units::Depth> DepthGrid::at(geo::WaterPoint p) const {
    const GridFrame& f = frame();
    if (!has(f.cellOf(p))) {
        return std::nullopt;
    }
    const double u = (p.x_m - f.west_m()) / f.cell_m() - 0.5;
    const double v = (f.north_m() - p.y_m) / f.cell_m() - 0.5;
    const int col = static_cast<int>(std::floor(u));
    const int row = static_cast<int>(std::floor(v));
    double sum_m = 0.0;
    double weights = 0.0;
    for (int dr = 0; dr < 2; ++dr) {
        for (int dc = 0; dc < 2; ++dc) {
            const Cell c{col + dc, row + dr};
            if (has(c)) {
                const double w = (1.0 - std::fabs(u - c.col)) * (1.0 - std::fabs(v - c.row));
                sum_m += w * static_cast<double>(depth_m_[c]);
                weights += w;
            }
        }
    }
    return units::Depth::metres(weights > 0.0 ? sum_m / weights
                                              : static_cast<double>(depth_m_[f.cellOf(p)]));
}

std::optional<units::Depth> DepthGrid::deepest() const {
    std::optional<float> deepest_m;
    for (const float d_m : raw_m()) {
        if (!std::isnan(d_m) && (!deepest_m || d_m > *deepest_m)) {
            deepest_m = d_m;
        }
    }
    return deepest_m ? std::optional(units::Depth::metres(static_cast<double>(*deepest_m)))
                     : std::nullopt;
}

DepthGrid DepthGrid::shiftedBy(units::Length rise) const {
    DepthGrid out = *this;
    const auto rise_m = static_cast<float>(rise.inMetres());
    for (float& d_m : out.raw_m()) {
        d_m += rise_m;
    }
    return out;
}

DepthGrid DepthGrid::raisedBy(units::Length rise) const {
    DepthGrid out = shiftedBy(rise);
    for (float& d_m : out.raw_m()) {
        if (d_m <= 0.0F) {
            d_m = NAN;
        }
    }
    return out;
}

} // namespace grid
