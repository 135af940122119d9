// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/gentle_kinds.h"

#include "core/grid/connected_pieces.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace structure {

using grid::Cell;
using grid::GridFrame;

namespace {

/// What a piece of gentle ground borders on, counted in cell sides.
struct Neighbours {
    double all = 0.0;
    double dropOff = 0.0; ///< A drop-off that leads down from the piece.
    double deeper = 0.0;  ///< Ground that is deeper some way off.
};

Neighbours neighboursOf(const std::vector<std::size_t>& cells, std::int32_t piece,
                        const grid::PieceGrid& pieces, const KindGrid& kinds,
                        const grid::DepthGrid& depth, int lipCells) {
    constexpr double clearly_m = 0.15; // deeper by more than the drawing's scatter
    const GridFrame& f = depth.frame();
    Neighbours out;
    for (const std::size_t i : cells) {
        const Cell c = f.cellAt(i);
        for (const Cell step : {Cell{0, -1}, Cell{-1, 0}, Cell{1, 0}, Cell{0, 1}}) {
            const Cell next{c.col + step.col, c.row + step.row};
            if (f.holds(next) && pieces[next] == piece) {
                continue;
            }
            out.all += 1.0;
            bool isDeeper = false;
            bool isDropOff = false;
            for (int k = 1; k <= lipCells; ++k) {
                const Cell off{c.col + k * step.col, c.row + k * step.row};
                if (!depth.has(off) || pieces[off] == piece) {
                    break;
                }
                isDeeper =
                    static_cast<double>(depth.raw_m()[f.index(off)] - depth.raw_m()[i]) > clearly_m;
                isDropOff = isDropOff || kinds[off] == codeOf(ZoneKind::dropOff);
            }
            out.deeper += isDeeper ? 1.0 : 0.0;
            out.dropOff += isDeeper && isDropOff ? 1.0 : 0.0;
        }
    }
    return out;
}

ZoneKind kindOf(const Neighbours& n) {
    constexpr double leastDropOff = 0.1; // of the border
    constexpr double mostOfBorder = 0.5;
    if (n.dropOff < leastDropOff * n.all) {
        return ZoneKind::flat;
    }
    return n.deeper > mostOfBorder * n.all ? ZoneKind::plateau : ZoneKind::shelf;
}

} // namespace

void nameGentleGround(KindGrid& kinds, const grid::DepthGrid& depth, units::Depth limit,
                      units::Length lip) {
    const int lipCells = 1 + static_cast<int>(std::ceil(lip.inMetres() / depth.frame().cell_m()));
    grid::Grid<std::int32_t> gentle(kinds.frame(), -1);
    const auto limit_m = static_cast<float>(limit.inMetres());
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        if (kinds[i] == codeOf(ZoneKind::flat) && depth.raw_m()[i] <= limit_m) {
            gentle[i] = 0;
        }
    }
    const grid::ConnectedPieces pieces = grid::connectedPieces(gentle);
    const KindGrid before = kinds;
    for (std::size_t p = 0; p < pieces.cells.size(); ++p) {
        const ZoneKind kind = kindOf(neighboursOf(pieces.cells[p], static_cast<std::int32_t>(p),
                                                  pieces.pieceOfCell, before, depth, lipCells));
        for (const std::size_t i : pieces.cells[p]) {
            kinds[i] = codeOf(kind);
        }
    }
}

} // namespace structure
