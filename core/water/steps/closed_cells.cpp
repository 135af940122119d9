// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/closed_cells.h"

#include "core/grid/touched_cells.h"

namespace water {

base::Result<grid::Grid<std::uint8_t>> closedCells(const Water& water,
                                                   const grid::GridFrame& frame) {
    grid::Grid<std::uint8_t> closed(frame, 0);
    for (const logbook::ClosedWater& piece : water.houseRules.closed) {
        const auto outline = geo::Outline::make(piece.pieces, *water.frame);
        if (!outline) {
            base::Error error = outline.error();
            error.where =
                "closed water " + piece.name + (error.where.empty() ? "" : ", " + error.where);
            return std::unexpected(error);
        }
        const grid::Grid<std::uint8_t> touched = grid::touchedCells(*outline, frame);
        for (std::size_t i = 0; i < closed.size(); ++i) {
            closed[i] = closed[i] != 0 || touched[i] != 0 ? 1 : 0;
        }
    }
    return closed;
}

} // namespace water
