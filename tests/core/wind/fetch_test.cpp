// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wind/fetch.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using units::Bearing;

geo::Outline outlineOf(std::vector<geo::Piece> pieces) {
    const auto frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    return geo::Outline::make(std::move(pieces), frame).value();
}

/// 1000 by 600 m with a square island of 100 m round (500, 300).
geo::Outline lakeWithIsland() {
    return outlineOf({{{{0, 0}, {1000, 0}, {1000, 600}, {0, 600}},
                       {{{450, 250}, {550, 250}, {550, 350}, {450, 350}}}}});
}

TEST(Fetch, EndsAtAnIsland) {
    const geo::Outline lake = lakeWithIsland();
    EXPECT_NEAR(wind::fetchAt(lake, {100, 300}, Bearing::degrees(90)).straight.inMetres(), 350.0,
                1e-6);
    EXPECT_NEAR(wind::fetchAt(lake, {100, 200}, Bearing::degrees(90)).straight.inMetres(), 900.0,
                1e-6);
    EXPECT_NEAR(wind::fetchAt(lake, {700, 300}, Bearing::degrees(270)).straight.inMetres(), 150.0,
                1e-6);
}

TEST(Fetch, IsNothingOnLand) {
    const geo::Outline lake = lakeWithIsland();
    EXPECT_EQ(wind::fetchAt(lake, {500, 300}, Bearing()).straight, units::Length());
    EXPECT_EQ(wind::fetchAt(lake, {-50, 300}, Bearing()).effective, units::Length());
}

TEST(Fetch, LooksToWhereTheWindComesFrom) {
    const geo::Outline lake = lakeWithIsland();
    EXPECT_NEAR(wind::fetchAt(lake, {200, 500}, Bearing::degrees(0)).straight.inMetres(), 100.0,
                1e-6);
    EXPECT_NEAR(wind::fetchAt(lake, {200, 500}, Bearing::degrees(180)).straight.inMetres(), 500.0,
                1e-6);
}

TEST(Fetch, OfAllRoundIsThatOfEachSide) {
    const geo::Outline lake = lakeWithIsland();
    for (const geo::WaterPoint place : {geo::WaterPoint{200, 500}, geo::WaterPoint{700, 320}}) {
        const auto all = wind::fetchAllRound(lake, place);
        ASSERT_EQ(all.size(), 60U);
        for (std::size_t k = 0; k < all.size(); ++k) {
            EXPECT_NEAR(all[k].side.inDegrees(), 6.0 * static_cast<double>(k), 1e-9);
            const wind::Fetch one = wind::fetchAt(lake, place, all[k].side);
            EXPECT_NEAR(all[k].fetch.straight.inMetres(), one.straight.inMetres(), 1e-6);
            EXPECT_NEAR(all[k].fetch.effective.inMetres(), one.effective.inMetres(), 1e-6);
        }
    }
    EXPECT_TRUE(wind::fetchAllRound(lake, {500, 300}).empty()) << "on the island";
}

} // namespace
