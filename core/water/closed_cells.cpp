// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/closed_cells.h"

#include "core/geo/outline.h"

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
        for (std::size_t i = 0; i < closed.size(); ++i) {
            if (closed[i] == 0 && outline->contains(frame.centre(frame.cellAt(i)))) {
                closed[i] = 1;
            }
        }
    }
    return closed;
}

} // namespace water
