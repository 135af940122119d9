// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/path.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"

namespace grid {

/// A way from one place to another that keeps to cells that hold a depth, with as few bends as a
/// boat needs: straight where nothing is in the way. Places on land are left and reached straight.
/// Ends are the places given. Empty where no way leads over the water: better no line than one over
/// land.
[[nodiscard]] geo::Path wayOverWater(const DepthGrid& depth, geo::WaterPoint from,
                                     geo::WaterPoint to);

/// True where every cell on the straight line from a to b holds a depth, however narrow what lies
/// between: it is looked at every tenth of a cell.
[[nodiscard]] bool isStraightWay(const DepthGrid& depth, geo::WaterPoint a, geo::WaterPoint b);
/// The same where every cell is active.
[[nodiscard]] bool isStraightWay(const Mask& mask, geo::WaterPoint a, geo::WaterPoint b);

} // namespace grid
