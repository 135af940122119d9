// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/cell_polygons.h"
#include "core/grid/cells_within.h"

#include <gtest/gtest.h>

#include <random>

namespace {

using namespace grid;

const GridFrame frame(100.0, 300.0, 4.0, 30, 20);

TEST(CellsWithin, GivesTheCellsBackThatAnOutlineWasDrawnRound) {
    for (unsigned seed = 1; seed <= 50; ++seed) {
        std::mt19937 random(seed);
        PieceGrid pieces(frame, -1);
        for (std::int32_t& piece : pieces.values()) {
            // Single cells, cells that touch at corners alone, holes and cells at the rim.
            piece = static_cast<std::int32_t>(random() % 4) - 1;
        }
        const auto outlines = polygonsOf(pieces, 3);
        for (std::int32_t k = 0; k < 3; ++k) {
            std::vector<std::size_t> cells;
            for (std::size_t i = 0; i < pieces.size(); ++i) {
                if (pieces[i] == k) {
                    cells.push_back(i);
                }
            }
            EXPECT_EQ(cellsWithin(outlines[static_cast<std::size_t>(k)], frame), cells)
                << "seed " << seed;
        }
    }
}

TEST(CellsWithin, CountsMiddlesAndLeavesIslandsOut) {
    const geo::Piece piece{{{101.0, 299.0}, {101.0, 281.0}, {119.0, 281.0}, {119.0, 299.0}},
                           {{{107.0, 293.0}, {113.0, 293.0}, {113.0, 287.0}, {107.0, 287.0}}}};
    // Middles at 102, 106 ... 118: five by five, less the one in the island at (110, 290).
    const auto cells = cellsWithin(std::span(&piece, 1), frame);
    EXPECT_EQ(cells.size(), 24U);
    EXPECT_EQ(std::ranges::count(cells, frame.index(frame.cellOf({110.0, 290.0}))), 0);
}

TEST(CellsWithin, KnowsNothingOutsideTheFrame) {
    const geo::Piece wide{{{0.0, 0.0}, {1000.0, 0.0}, {1000.0, 1000.0}, {0.0, 1000.0}}, {}};
    EXPECT_EQ(cellsWithin(std::span(&wide, 1), frame).size(), frame.size());
    const geo::Piece away{{{0.0, 0.0}, {50.0, 0.0}, {50.0, 50.0}}, {}};
    EXPECT_TRUE(cellsWithin(std::span(&away, 1), frame).empty());
    EXPECT_TRUE(cellsWithin({}, frame).empty());
}

} // namespace
