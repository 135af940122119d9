// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/cell_polygons.h"

namespace grid {

/// Connected pieces of equal cells, numbered by their first cell in the grid's order.
struct ConnectedPieces {
    PieceGrid pieceOfCell;                       ///< Negative where the cell belongs to none.
    std::vector<std::vector<std::size_t>> cells; ///< Of each piece, ascending.
};

/// Cells of the same class, not below 0, that touch along a side make one piece.
[[nodiscard]] ConnectedPieces connectedPieces(const Grid<std::int32_t>& classOfCell);

} // namespace grid
