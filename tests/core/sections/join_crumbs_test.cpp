// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/join_crumbs.h"

#include <gtest/gtest.h>

namespace {

/// Cells of 10 m, rows as text: a digit is the piece, '.' water of none, ' ' land.
struct Drawn {
    grid::PieceGrid pieces;
    grid::Mask mask;
};

Drawn drawn(const std::vector<std::string>& rows) {
    const grid::GridFrame f(0.0, 10.0 * static_cast<double>(rows.size()), 10.0,
                            static_cast<int>(rows.front().size()), static_cast<int>(rows.size()));
    Drawn out{grid::PieceGrid(f, -1), {}};
    grid::Grid<std::uint8_t> active(f, 0);
    for (std::size_t i = 0; i < f.size(); ++i) {
        const grid::Cell c = f.cellAt(i);
        const char sign = rows[static_cast<std::size_t>(c.row)][static_cast<std::size_t>(c.col)];
        active[i] = sign == ' ' ? 0 : 1;
        out.pieces[i] = sign >= '0' && sign <= '9' ? sign - '0' : -1;
    }
    out.mask = grid::Mask::from(active);
    return out;
}

TEST(JoinCrumbs, GoToThePieceNearestOverWaterNotOverLand) {
    Drawn d = drawn({"000 111", "000 111", "000 .11",
                     "000 2..", // the crumb touches 0 across land only
                     "000 ..1"});
    EXPECT_EQ(sections::joinCrumbs(d.pieces, 3, d.mask, 250.0), 2U);
    EXPECT_EQ(d.pieces[(grid::Cell{4, 3})], d.pieces[(grid::Cell{5, 0})]);
}

TEST(JoinCrumbs, GoRoundAnIsletAndNotAcrossItsCorner) {
    // Three cells over water to piece 1, four round the islet to piece 0, which across its land
    // would be the nearer.
    Drawn d = drawn({".........", "1........", "11..2....", "..... ...", "......000", "........."});
    EXPECT_EQ(sections::joinCrumbs(d.pieces, 3, d.mask, 250.0), 2U);
    EXPECT_EQ(d.pieces[(grid::Cell{4, 2})], d.pieces[(grid::Cell{1, 2})]);
}

TEST(JoinCrumbs, StayByThemselvesWhereNothingCanBeReached) {
    Drawn d = drawn({"000  1", "000  1"});
    EXPECT_EQ(sections::joinCrumbs(d.pieces, 2, d.mask, 500.0), 2U);
    EXPECT_NE(d.pieces[(grid::Cell{5, 0})], d.pieces[(grid::Cell{0, 0})]);
}

TEST(JoinCrumbs, LeavesPiecesOfTheLeastSizeAlone) {
    Drawn d = drawn({"000.1", "000.1"});
    EXPECT_EQ(sections::joinCrumbs(d.pieces, 2, d.mask, 200.0), 2U);
    EXPECT_EQ(sections::joinCrumbs(d.pieces, 2, d.mask, 201.0), 1U);
}

} // namespace
