// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/grid_frame.h"

#include <cmath>

#include <fmt/format.h>

namespace grid {

base::Result<GridFrame> GridFrame::covering(const geo::Box& box, units::Length cell,
                                            int marginCells, std::int64_t mostCells) {
    const double cell_m = cell.inMetres();
    if (!(cell_m > 0.0) || !std::isfinite(cell_m) || box.isEmpty()) {
        return base::fail(base::ErrorKind::wrongUse,
                          fmt::format("a cell of {} m cannot be laid on this water", cell_m), "",
                          "choose a cell between 1 and 50 m");
    }
    const double west = std::floor(box.west_m / cell_m) - marginCells;
    const double south = std::floor(box.south_m / cell_m) - marginCells;
    const double east = std::ceil(box.east_m / cell_m) + marginCells;
    const double north = std::ceil(box.north_m / cell_m) + marginCells;
    const double cells = (east - west) * (north - south);
    if (cells > static_cast<double>(mostCells)) {
        return base::fail(
            base::ErrorKind::wrongUse,
            fmt::format(
                "cells of {} m would need {:.0f} million of them, more than the {} million allowed",
                cell_m, cells / 1e6, mostCells / 1'000'000),
            "", "choose a larger cell");
    }
    return GridFrame(west * cell_m, north * cell_m, cell_m, static_cast<int>(east - west),
                     static_cast<int>(north - south));
}

Cell GridFrame::cellOf(geo::WaterPoint p) const {
    constexpr double far = 1e9;
    const double col = std::floor((p.x_m - west_m_) / cell_m_);
    const double row = std::floor((north_m_ - p.y_m) / cell_m_);
    const auto held = [](double v) {
        return std::isfinite(v) ? std::fmax(-far, std::fmin(far, v)) : -far;
    };
    return {static_cast<int>(held(col)), static_cast<int>(held(row))};
}

} // namespace grid
