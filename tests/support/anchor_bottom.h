// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/depth_grid.h"

#include <functional>

namespace support {

/// A bottom by formula on cells of 2 m over 400 by 400 m round the origin; no water where not
/// positive.
inline grid::DepthGrid bottomOf(const std::function<double(geo::WaterPoint)>& depth_m) {
    grid::DepthGrid grid(grid::GridFrame(-200, 200, 2.0, 200, 200));
    for (std::size_t i = 0; i < grid.size(); ++i) {
        const double here_m = depth_m(grid.frame().centre(grid.frame().cellAt(i)));
        if (here_m > 0.0) {
            grid.set(i, units::Depth::metres(here_m));
        }
    }
    return grid;
}

} // namespace support
