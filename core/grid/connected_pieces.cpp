// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/connected_pieces.h"

#include <algorithm>
#include <array>

namespace grid {

namespace {

/// Gives every cell of the class that is joined to `first` the number `piece`; the cells in the
/// order met.
std::vector<std::size_t> flood(const Grid<std::int32_t>& classOfCell, PieceGrid& pieceOfCell,
                               std::size_t first, std::int32_t piece) {
    const GridFrame& f = classOfCell.frame();
    std::vector<std::size_t> cells{first};
    pieceOfCell[first] = piece;
    for (std::size_t done = 0; done < cells.size(); ++done) {
        const Cell c = f.cellAt(cells[done]);
        for (const Cell n : {Cell{c.col, c.row - 1}, Cell{c.col - 1, c.row}, Cell{c.col + 1, c.row},
                             Cell{c.col, c.row + 1}}) {
            if (f.holds(n) && pieceOfCell[n] < 0 && classOfCell[n] == classOfCell[first]) {
                pieceOfCell[n] = piece;
                cells.push_back(f.index(n));
            }
        }
    }
    return cells;
}

} // namespace

ConnectedPieces connectedPieces(const Grid<std::int32_t>& classOfCell) {
    ConnectedPieces out{PieceGrid(classOfCell.frame(), -1), {}};
    for (std::size_t i = 0; i < classOfCell.size(); ++i) {
        if (classOfCell[i] >= 0 && out.pieceOfCell[i] < 0) {
            out.cells.push_back(flood(classOfCell, out.pieceOfCell, i,
                                      static_cast<std::int32_t>(out.cells.size())));
            std::sort(out.cells.back().begin(), out.cells.back().end());
        }
    }
    return out;
}

} // namespace grid
