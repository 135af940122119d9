// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/cell_polygons.h"

#include "core/grid/connected_pieces.h"
#include "core/grid/piece_middles.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <set>
#include <string>

#include <gtest/gtest.h>

namespace {

using grid::Cell;
using grid::GridFrame;
using grid::PieceGrid;

/// Pieces drawn with digits, '.' for none; cells of 10 m.
PieceGrid drawn(const std::vector<std::string>& rows) {
    const GridFrame f(0.0, 10.0 * static_cast<double>(rows.size()), 10.0,
                      static_cast<int>(rows.front().size()), static_cast<int>(rows.size()));
    PieceGrid pieces(f, -1);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Cell c = f.cellAt(i);
        const char sign = rows[static_cast<std::size_t>(c.row)][static_cast<std::size_t>(c.col)];
        pieces[i] = sign == '.' ? -1 : sign - '0';
    }
    return pieces;
}

double area_m2(const std::vector<geo::Piece>& pieces) {
    double sum_m2 = 0.0;
    for (const geo::Piece& piece : pieces) {
        sum_m2 += geo::areaOf(piece).inSquareMetres();
    }
    return sum_m2;
}

/// The points that the rings of a piece run through.
std::set<std::pair<double, double>> pointsOf(const std::vector<geo::Piece>& pieces) {
    std::set<std::pair<double, double>> out;
    for (const geo::Piece& piece : pieces) {
        for (const geo::WaterPoint p : piece.outer) {
            out.emplace(p.x_m, p.y_m);
        }
    }
    return out;
}

TEST(CellPolygons, KeepTheAreaOfALargeDisc) {
    const GridFrame f(0.0, 400.0, 4.0, 100, 100);
    PieceGrid pieces(f, -1);
    double cells = 0.0;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (geo::distance_m(f.centre(f.cellAt(i)), {200.0, 200.0}) < 150.0) {
            pieces[i] = 0;
            cells += 1.0;
        }
    }
    const auto polygons = grid::polygonsOf(pieces, 1);
    ASSERT_EQ(polygons[0].size(), 1U);
    EXPECT_NEAR(area_m2(polygons[0]), cells * 16.0, 0.005 * cells * 16.0);
    // The staircase is gone: its length would be 8 r, the circle's is 2 pi r.
    EXPECT_NEAR(geo::lengthAround(polygons[0][0].outer).inMetres(), 2.0 * 3.14159 * 150.0, 25.0);
}

TEST(CellPolygons, TurnOuterRingsCounterClockwiseAndHolesClockwise) {
    const auto polygons = grid::polygonsOf(
        drawn({"0000000", "0000000", "00...00", "00.1.00", "00...00", "0000000", "0000000"}), 2);
    ASSERT_EQ(polygons[0].size(), 1U);
    EXPECT_GT(geo::signedArea_m2(polygons[0][0].outer), 0.0);
    ASSERT_EQ(polygons[0][0].islands.size(), 1U);
    EXPECT_LT(geo::signedArea_m2(polygons[0][0].islands[0]), 0.0);
    ASSERT_EQ(polygons[1].size(), 1U);
    EXPECT_TRUE(polygons[1][0].islands.empty());
}

TEST(CellPolygons, ShareTheirBorderPointForPoint) {
    const auto polygons =
        grid::polygonsOf(drawn({"0000111", "0001111", "0011111", "0000111", "0000011"}), 2);
    const auto left = pointsOf(polygons[0]);
    const auto right = pointsOf(polygons[1]);
    std::size_t shared = 0;
    for (const auto& p : left) {
        shared += right.count(p);
    }
    EXPECT_GE(shared, 4U);
    // What one gives up the other gains: together they fill what both cover, less rounded corners.
    EXPECT_NEAR(area_m2(polygons[0]) + area_m2(polygons[1]), 3500.0, 150.0);
}

TEST(CellPolygons, KeepCellsApartThatTouchOnlyAtACorner) {
    const auto polygons = grid::polygonsOf(drawn({"00...", "00...", "..00.", "..00."}), 1);
    EXPECT_EQ(polygons[0].size(), 2U);
    for (const geo::Piece& piece : polygons[0]) {
        EXPECT_GT(geo::signedArea_m2(piece.outer), 0.0);
    }
}

TEST(CellPolygons, PutAHoleIntoThePieceThatSurroundsIt) {
    const auto polygons =
        grid::polygonsOf(drawn({"00000..", "0...0..", "0...0.0", "0...0..", "00000.."}), 1);
    ASSERT_EQ(polygons[0].size(), 2U);
    std::vector<std::size_t> holes{polygons[0][0].islands.size(), polygons[0][1].islands.size()};
    std::sort(holes.begin(), holes.end());
    EXPECT_EQ(holes, (std::vector<std::size_t>{0U, 1U}));
}

TEST(CellPolygons, MoveNoBorderBeyondHalfACellInAnyJumbleOfPieces) {
    const unsigned seed = 4711;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937 random(seed);
    std::uniform_int_distribution<std::int32_t> piece(-1, 3);
    const GridFrame f(0.0, 30.0, 1.0, 30, 30);
    PieceGrid pieces(f, -1);
    for (std::int32_t& p : pieces.values()) {
        p = piece(random);
    }
    const auto polygons = grid::polygonsOf(pieces, 4);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const geo::WaterPoint middle = f.centre(f.cellAt(i));
        for (std::size_t k = 0; k < polygons.size(); ++k) {
            // The middle of a cell lies in its own piece and in no other, and away from borders.
            int inside = 0;
            for (const geo::Piece& p : polygons[k]) {
                std::vector<geo::Ring> rings = p.islands;
                rings.push_back(p.outer);
                for (const geo::Ring& ring : rings) {
                    for (std::size_t a = 0, b = ring.size() - 1; a < ring.size(); b = a++) {
                        const bool crosses =
                            (ring[a].y_m > middle.y_m) != (ring[b].y_m > middle.y_m);
                        if (crosses && middle.x_m < ring[a].x_m + (middle.y_m - ring[a].y_m) /
                                                                      (ring[b].y_m - ring[a].y_m) *
                                                                      (ring[b].x_m - ring[a].x_m)) {
                            ++inside;
                        }
                    }
                }
            }
            EXPECT_EQ(inside % 2 == 1, pieces[i] == static_cast<std::int32_t>(k))
                << "cell " << i << ", piece " << k;
        }
    }
}

TEST(ConnectedPieces, JoinAlongSidesAndAreNumberedByTheirFirstCell) {
    const grid::ConnectedPieces found =
        grid::connectedPieces(drawn({"11.0", "1..0", ".1.1", "...1"}));
    ASSERT_EQ(found.cells.size(), 4U);
    EXPECT_EQ(found.cells[0], (std::vector<std::size_t>{0, 1, 4}));
    EXPECT_EQ(found.cells[1], (std::vector<std::size_t>{3, 7}));
    EXPECT_EQ(found.cells[2], (std::vector<std::size_t>{9}));
    EXPECT_EQ(found.cells[3], (std::vector<std::size_t>{11, 15}));
    EXPECT_LT(found.pieceOfCell[2], 0);
}

TEST(PieceMiddles, LieInThePieceFarFromItsBorders) {
    // A large square with a long tail: the mean of the cells is drawn into the tail, the middle is
    // not.
    const PieceGrid pieces = drawn({"00000..........", "00000..........", "000000000000000",
                                    "00000..........", "00000.........."});
    const std::vector<geo::WaterPoint> middles = grid::middlesOf(pieces, 2);
    EXPECT_EQ(middles[0], (geo::WaterPoint{25.0, 25.0}));
    EXPECT_EQ(middles[1], (geo::WaterPoint{0.0, 50.0})) << "the frame's corner for no cells";
}

TEST(PieceMiddles, CountTheDistanceToTheBorderFromHalfACell) {
    const grid::Grid<float> distance_m =
        grid::distanceToBorder_m(drawn({".....", ".000.", ".000.", ".000.", "....."}));
    EXPECT_FLOAT_EQ((distance_m[Cell{2, 2}]), 15.0F);
    EXPECT_FLOAT_EQ((distance_m[Cell{1, 1}]), 5.0F);
    EXPECT_FLOAT_EQ((distance_m[Cell{0, 0}]), 0.0F);
}

} // namespace
