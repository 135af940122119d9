// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/cell_polygons.h"

namespace grid {

/// For every cell of a piece: metres from its centre to the nearest border of the piece, to half a
/// cell; 0 where the cell belongs to none.
[[nodiscard]] Grid<float> distanceToBorder_m(const PieceGrid& pieces);

/// For every piece the cell farthest from its borders (its pole of inaccessibility), with a slight
/// pull to the mean of its cells: where a label sits best. Pieces without cells give the frame's
/// corner.
[[nodiscard]] std::vector<geo::WaterPoint> middlesOf(const PieceGrid& pieces, std::size_t count);

} // namespace grid
