// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/take_over_parts.h"

#include "core/grid/cells_within.h"
#include "core/sections/pair_cut.h"

#include <cmath>
#include <deque>
#include <limits>

namespace sections {

namespace {

using grid::PieceGrid;

/// New water is divided by itself from this share of the wanted size on (ours).
constexpr double leastOpen = 0.5;
/// A part that has lost more than this share of its water is given up where it is too small (ours).
constexpr double mostLost = 0.5;
constexpr int notReached = std::numeric_limits<int>::max();

PieceGrid partsOn(const grid::GridFrame& cells, const Numbering& before,
                  const geo::WaterFrame& frame, std::size_t& count) {
    PieceGrid parts(cells, -1);
    count = 0;
    for (const auto& part : partsOf(before)) {
        std::vector<geo::Piece> pieces;
        for (const geo::LonLatPiece& piece : part) {
            pieces.push_back(geo::toWater(piece, frame));
        }
        for (const std::size_t cell : grid::cellsWithin(pieces, cells)) {
            parts[cell] = static_cast<std::int32_t>(count);
        }
        ++count;
    }
    return parts;
}

grid::ConnectedPieces fishablePockets(const grid::Grid<std::uint8_t>& isFishable) {
    PieceGrid fishable(isFishable.frame(), -1);
    for (std::size_t i = 0; i < fishable.size(); ++i) {
        fishable[i] = isFishable[i] != 0 ? 0 : -1;
    }
    return grid::connectedPieces(fishable);
}

/// Of each part the position of its largest piece that hangs together; the first of equals.
std::vector<std::size_t> mainPieces(const grid::ConnectedPieces& connected, const PieceGrid& parts,
                                    std::size_t count) {
    std::vector<std::size_t> main(count, connected.cells.size());
    for (std::size_t k = 0; k < connected.cells.size(); ++k) {
        std::size_t& best = main[static_cast<std::size_t>(parts[connected.cells[k].front()])];
        if (best == connected.cells.size() ||
            connected.cells[k].size() > connected.cells[best].size()) {
            best = k;
        }
    }
    return main;
}

/// How many connected pieces that are kept lie in each pocket of fishable water.
std::vector<std::size_t> keptIn(const grid::ConnectedPieces& pockets,
                                const grid::ConnectedPieces& kept) {
    std::vector<std::size_t> count(pockets.cells.size(), 0);
    for (const std::vector<std::size_t>& piece : kept.cells) {
        ++count[static_cast<std::size_t>(pockets.pieceOfCell[piece.front()])];
    }
    return count;
}

/// Lets go what no longer hangs together with its part, but for pockets that never did and are
/// still cut off: one that water now joins with another section would be a second piece of its own
/// in open water.
void letLooseGo(PieceGrid& kept, const PieceGrid& parts, std::size_t count,
                const grid::ConnectedPieces& pockets) {
    const grid::ConnectedPieces before = grid::connectedPieces(parts);
    const std::vector<std::size_t> mainBefore = mainPieces(before, parts, count);
    const grid::ConnectedPieces now = grid::connectedPieces(kept);
    const std::vector<std::size_t> mainNow = mainPieces(now, kept, count);
    const std::vector<std::size_t> keptInPocket = keptIn(pockets, now);
    for (std::size_t k = 0; k < now.cells.size(); ++k) {
        const std::size_t cell = now.cells[k].front();
        const auto part = static_cast<std::size_t>(kept[cell]);
        const auto pocket = static_cast<std::size_t>(pockets.pieceOfCell[cell]);
        const bool isPocket =
            before.pieceOfCell[cell] != static_cast<std::int32_t>(mainBefore[part]) &&
            keptInPocket[pocket] == 1;
        if (k != mainNow[part] && !isPocket) {
            for (const std::size_t i : now.cells[k]) {
                kept[i] = -1;
            }
        }
    }
}

/// Lets parts go that are hardly there any more, and numbers the others without gaps. \return how
/// many those are.
std::size_t letLostGo(PieceGrid& kept, const PieceGrid& parts, std::size_t count,
                      double wantedCells) {
    std::vector<double> had(count, 0.0);
    std::vector<double> has(count, 0.0);
    for (std::size_t i = 0; i < kept.size(); ++i) {
        if (parts[i] >= 0) {
            had[static_cast<std::size_t>(parts[i])] += 1.0;
        }
        if (kept[i] >= 0) {
            has[static_cast<std::size_t>(kept[i])] += 1.0;
        }
    }
    std::vector<std::int32_t> number(count, -1);
    std::size_t left = 0;
    for (std::size_t p = 0; p < count; ++p) {
        const bool isLost =
            has[p] < (1.0 - mostLost) * had[p] && has[p] < SizeLimits().least * wantedCells;
        if (has[p] > 0.0 && !isLost) {
            number[p] = static_cast<std::int32_t>(left++);
        }
    }
    for (std::int32_t& part : kept.values()) {
        part = part < 0 ? -1 : number[static_cast<std::size_t>(part)];
    }
    return left;
}

/// Fishable cells in no part: the part from which each is reached in the fewest steps.
struct Reached {
    PieceGrid part;
    grid::Grid<int> steps;
};

Reached reachFrom(const PieceGrid& kept, const grid::Grid<std::uint8_t>& isFishable) {
    const grid::GridFrame& f = kept.frame();
    Reached reached{kept, grid::Grid<int>(f, notReached)};
    std::deque<std::size_t> waiting;
    for (std::size_t i = 0; i < kept.size(); ++i) {
        if (kept[i] >= 0) {
            reached.steps[i] = 0;
            waiting.push_back(i);
        }
    }
    while (!waiting.empty()) {
        const std::size_t i = waiting.front();
        waiting.pop_front();
        const grid::Cell c = f.cellAt(i);
        for (const grid::Cell to : {grid::Cell{c.col, c.row - 1}, grid::Cell{c.col - 1, c.row},
                                    grid::Cell{c.col + 1, c.row}, grid::Cell{c.col, c.row + 1}}) {
            if (f.holds(to) && isFishable[to] != 0 && reached.steps[to] == notReached) {
                reached.steps[to] = reached.steps[i] + 1;
                reached.part[to] = reached.part[i];
                waiting.push_back(f.index(to));
            }
        }
    }
    return reached;
}

} // namespace

double lumpSide_m(double wanted_m2) {
    constexpr double lumpsInSection = 64.0;
    return std::sqrt(wanted_m2 / lumpsInSection);
}

TakenOver takeOverParts(const Numbering& before, const geo::WaterFrame& frame,
                        const grid::Grid<std::uint8_t>& isFishable, units::Area wanted) {
    if (before.waters.empty() || before.wantedArea != wanted) {
        return {};
    }
    const grid::GridFrame& cells = isFishable.frame();
    std::size_t count = 0;
    const PieceGrid parts = partsOn(cells, before, frame, count);
    PieceGrid kept = parts;
    for (std::size_t i = 0; i < kept.size(); ++i) {
        kept[i] = isFishable[i] != 0 ? kept[i] : -1;
    }
    letLooseGo(kept, parts, count, fishablePockets(isFishable));
    const double wantedCells = wanted.inSquareMetres() / cells.cellArea_m2();
    TakenOver over;
    over.count = letLostGo(kept, parts, count, wantedCells);
    if (over.count == 0) {
        return over;
    }
    Reached reached = reachFrom(kept, isFishable);
    const double near = lumpSide_m(wanted.inSquareMetres()) / cells.cell_m();
    PieceGrid far(cells, -1);
    for (std::size_t i = 0; i < far.size(); ++i) {
        far[i] = isFishable[i] != 0 && reached.steps[i] > near ? 0 : -1;
    }
    over.isOpen = grid::Grid<std::uint8_t>(cells, 0);
    for (const std::vector<std::size_t>& piece : grid::connectedPieces(far).cells) {
        const bool isOpen = static_cast<double>(piece.size()) >= leastOpen * wantedCells;
        // Water by itself, too small to be divided, is a piece of its own.
        const bool isApart = !isOpen && reached.part[piece.front()] < 0;
        for (const std::size_t i : piece) {
            over.isOpen[i] = isOpen ? 1 : 0;
            reached.part[i] = isOpen    ? -1
                              : isApart ? static_cast<std::int32_t>(over.count)
                                        : reached.part[i];
        }
        over.openCells += isOpen ? piece.size() : 0;
        over.count += isApart ? 1 : 0;
    }
    over.pieces = std::move(reached.part);
    return over;
}

} // namespace sections
