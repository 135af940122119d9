// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/reshape_sections.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace {

using sections::ChangeRefused;
using sections::SectionChange;
using Kind = SectionChange::Kind;

/// Four cells of 10 m and a little more.
const units::Area least = units::Area::squareMetres(450.0);

/// 400 m x 200 m on cells of 10 m: piece 0 in the west, 1 in the east, and 2 apart from both.
struct Map {
    geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    grid::PieceGrid pieces{grid::GridFrame(0.0, 200.0, 10.0, 50, 20), -1};
    std::size_t count = 3;

    Map() {
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            const int col = pieces.frame().cellAt(i).col;
            pieces[i] = col < 20 ? 0 : col < 40 ? 1 : col > 44 ? 2 : -1;
        }
    }
    [[nodiscard]] geo::LonLat at(double x_m, double y_m) const {
        return frame.toEarth(geo::WaterPoint{x_m, y_m});
    }
    [[nodiscard]] std::int32_t pieceAt(double x_m, double y_m) const {
        return pieces[pieces.frame().cellOf({x_m, y_m})];
    }
    [[nodiscard]] auto cellsOf(std::int32_t piece) const {
        return std::count(pieces.values().begin(), pieces.values().end(), piece);
    }
    std::vector<ChangeRefused> make(const SectionChange& change) {
        return sections::reshapeSections(pieces, count, std::array{change}, frame, least);
    }
};

TEST(ReshapeSections, JoinsTwoThatTouchAndNumbersOn) {
    Map map;
    EXPECT_TRUE(map.make({Kind::join, {map.at(50, 50), map.at(300, 150)}, {}}).empty());
    EXPECT_EQ(map.count, 2U);
    EXPECT_EQ(map.pieceAt(50, 50), map.pieceAt(300, 150));
    EXPECT_EQ(map.pieceAt(480, 50), 1);
}

TEST(ReshapeSections, SplitsTheSectionUnderTheLineAndKeepsTheNumberOnTheLargerSide) {
    Map map;
    EXPECT_TRUE(map.make({Kind::split, {}, {map.at(-20, 63), map.at(215, 57)}}).empty());
    EXPECT_EQ(map.count, 4U);
    EXPECT_EQ(map.pieceAt(50, 150), 0);
    EXPECT_EQ(map.pieceAt(50, 20), 3);
    EXPECT_EQ(map.cellsOf(0) + map.cellsOf(3), 400);
    EXPECT_EQ(map.cellsOf(3), 120);
    EXPECT_EQ(map.cellsOf(1), 400) << "a line that ends just beyond leaves the neighbour alone";
}

TEST(ReshapeSections, SplitsAlongALineThroughMiddlesOfCells) {
    Map map;
    EXPECT_TRUE(map.make({Kind::split, {}, {map.at(-5, 95), map.at(205, 95)}}).empty());
    EXPECT_EQ(map.cellsOf(0) + map.cellsOf(3), 400);
    EXPECT_GE(map.cellsOf(3), 180);
}

TEST(ReshapeSections, MovesABorderToTheLine) {
    Map map;
    EXPECT_TRUE(map.make({Kind::border,
                          {map.at(50, 50), map.at(300, 150)},
                          {map.at(251, -10), map.at(254, 210)}})
                    .empty());
    EXPECT_EQ(map.count, 3U);
    EXPECT_EQ(map.pieceAt(240, 100), map.pieceAt(50, 100));
    EXPECT_NE(map.pieceAt(270, 100), map.pieceAt(50, 100));
    EXPECT_EQ(map.cellsOf(map.pieceAt(50, 100)), 500);
}

TEST(ReshapeSections, RefusesALineThatCutsOffACrumb) {
    Map map;
    const grid::PieceGrid before = map.pieces;
    // across the corner of the western piece: three cells of a row, then five
    const auto refused =
        map.make({Kind::split, {}, {map.at(28, -5), map.at(28, 11), map.at(-5, 11)}});
    ASSERT_EQ(refused.size(), 1U);
    EXPECT_NE(refused[0].why.what.find("too little"), std::string::npos);
    EXPECT_EQ(map.pieces, before);
    EXPECT_TRUE(
        map.make({Kind::split, {}, {map.at(48, -5), map.at(48, 11), map.at(-5, 11)}}).empty());
    EXPECT_EQ(map.cellsOf(3), 5);
}

/// The western piece with a pocket of four cells in the far south-east.
Map withPocket() {
    Map map;
    for (int col = 41; col < 45; ++col) {
        map.pieces[grid::Cell{col, 19}] = 0;
    }
    return map;
}

TEST(ReshapeSections, APocketApartIsNoSideOfACut) {
    Map map = withPocket();
    const auto refused = map.make({Kind::split, {}, {map.at(50, 50), map.at(150, 50)}});
    ASSERT_EQ(refused.size(), 1U);
    EXPECT_NE(refused[0].why.what.find("does not cut"), std::string::npos);
}

TEST(ReshapeSections, APocketApartStaysWithTheNearerSide) {
    Map map = withPocket();
    EXPECT_TRUE(map.make({Kind::split, {}, {map.at(148, -5), map.at(148, 205)}}).empty());
    EXPECT_EQ(map.pieceAt(425, 5), map.pieceAt(190, 5));
    EXPECT_NE(map.pieceAt(425, 5), map.pieceAt(50, 5));
}

TEST(ReshapeSections, RefusesWhatCannotBeAndChangesNothing) {
    Map map;
    const grid::PieceGrid before = map.pieces;
    const std::vector<SectionChange> changes{
        {Kind::join, {map.at(50, 50), map.at(60, 60)}, {}},
        {Kind::join, {map.at(50, 50), map.at(480, 50)}, {}},
        {Kind::join, {map.at(50, 50), map.at(420, 50)}, {}},
        {Kind::join, {map.at(50, 50)}, {}},
        {Kind::split, {}, {map.at(50, 50), map.at(150, 50)}},
        {Kind::split, {}, {map.at(-500, 50), map.at(-400, 50)}},
        {Kind::split, {}, {map.at(50, 50)}},
        {Kind::border, {map.at(50, 50), map.at(300, 50)}, {map.at(150, 50), map.at(250, 50)}}};
    const auto refused =
        sections::reshapeSections(map.pieces, map.count, changes, map.frame, least);
    ASSERT_EQ(refused.size(), changes.size());
    for (const ChangeRefused& r : refused) {
        EXPECT_FALSE(r.why.what.empty());
        EXPECT_FALSE(r.why.whatToDo.empty());
    }
    EXPECT_EQ(map.pieces, before);
    EXPECT_EQ(map.count, 3U);
}

} // namespace
