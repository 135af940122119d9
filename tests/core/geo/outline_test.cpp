// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/outline.h"

#include "core/geo/hull.h"

#include <gtest/gtest.h>

#include <numbers>
#include <random>

namespace {

using namespace geo;

WaterFrame frame() {
    return WaterFrame::centredOn({3.1, 55.2}).value();
}

Ring square(double x, double y, double side) {
    return {{x, y}, {x + side, y}, {x + side, y + side}, {x, y + side}};
}

Outline squareWithIsland() {
    return Outline::make(std::vector{Piece{square(0, 0, 100), {square(40, 40, 20)}}}, frame())
        .value();
}

TEST(Outline, CountsIslandsAsLand) {
    const Outline outline = squareWithIsland();
    EXPECT_DOUBLE_EQ(outline.area().inSquareMetres(), 10000.0 - 400.0);
    EXPECT_DOUBLE_EQ(outline.shoreLength().inMetres(), 480.0);
    EXPECT_TRUE(outline.contains({10, 10}));
    EXPECT_FALSE(outline.contains({50, 50}));
    EXPECT_FALSE(outline.contains({-1, 50}));
}

TEST(Outline, KnowsTheDistanceToTheNearestShoreIslandsIncluded) {
    const Outline outline = squareWithIsland();
    EXPECT_DOUBLE_EQ(outline.distanceToShore_m({50, 30}), 10.0);
    EXPECT_DOUBLE_EQ(outline.distanceToShore_m({3, 50}), 3.0);
    EXPECT_DOUBLE_EQ(outline.distanceToShore_m({50, 50}), 10.0);
}

TEST(Outline, TurnsRingsThatRunTheWrongWay) {
    Ring backwards = square(0, 0, 100);
    std::reverse(backwards.begin(), backwards.end());
    const Outline outline = Outline::make(std::vector{Piece{backwards, {}}}, frame()).value();
    EXPECT_GT(signedArea_m2(outline.pieces().front().outer), 0.0);
}

TEST(Outline, TellsWhereTheShoreCrossesItself) {
    // Loops of different size, and loops of one size, whose areas cancel.
    for (const Ring& ring : {Ring{{0, 0}, {100, 100}, {160, 0}, {20, 100}},
                             Ring{{0, 0}, {100, 100}, {100, 0}, {0, 100}}}) {
        const auto outline = Outline::make(std::vector{Piece{ring, {}}}, frame());
        ASSERT_FALSE(outline);
        EXPECT_EQ(outline.error().kind, base::ErrorKind::unusableInput);
        EXPECT_EQ(outline.error().what, "the shore crosses itself");
        EXPECT_NE(outline.error().where.find("latitude 55.200"), std::string::npos);
    }
}

TEST(Outline, RefusesAShoreWithoutArea) {
    EXPECT_FALSE(Outline::make(std::vector<Piece>{}, frame()));
    EXPECT_FALSE(Outline::make(std::vector{Piece{{{0, 0}, {100, 0}}, {}}}, frame()));
}

TEST(Outline, ContainsAgreesWithTheAngleSumOnARuggedShore) {
    const unsigned seed = 7;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> radius(60.0, 100.0);
    std::uniform_real_distribution<double> anywhere(-110.0, 110.0);
    Ring shore;
    for (int i = 0; i < 200; ++i) {
        const double a = 2.0 * std::numbers::pi * i / 200.0;
        const double r = radius(random);
        shore.push_back({r * std::cos(a), r * std::sin(a)});
    }
    const Outline outline = Outline::make(std::vector{Piece{shore, {}}}, frame()).value();
    for (int i = 0; i < 2000; ++i) {
        const WaterPoint p{anywhere(random), anywhere(random)};
        double turned = 0.0;
        for (std::size_t k = 0; k < shore.size(); ++k) {
            const WaterPoint a = shore[k];
            const WaterPoint b = shore[(k + 1) % shore.size()];
            turned += std::remainder(std::atan2(b.y_m - p.y_m, b.x_m - p.x_m) -
                                         std::atan2(a.y_m - p.y_m, a.x_m - p.x_m),
                                     2.0 * std::numbers::pi);
        }
        EXPECT_EQ(outline.contains(p), std::fabs(turned) > 3.0)
            << "seed " << seed << " point " << p.x_m << ' ' << p.y_m;
    }
}

TEST(Outline, IsCrossedByALineThatLeavesTheWater) {
    const Outline outline = squareWithIsland();
    EXPECT_TRUE(outline.isCrossedBy({10, 50}, {90, 50}));
    EXPECT_FALSE(outline.isCrossedBy({10, 10}, {90, 20}));
}

TEST(Hull, HoldsEveryPointWithTheMarginToSpare) {
    const std::vector<WaterPoint> points{{0, 0}, {100, 0}, {50, 80}, {50, 20}};
    const Outline outline =
        Outline::make(std::vector{Piece{hullOf(points, 15.0), {}}}, frame()).value();
    for (const WaterPoint p : points) {
        EXPECT_TRUE(outline.contains(p));
        EXPECT_GE(outline.distanceToShore_m(p), 14.5);
    }
    EXPECT_GT(hullOf(std::vector<WaterPoint>{{5, 5}}, 15.0).size(), 8U);
    EXPECT_TRUE(hullOf({}, 15.0).empty());
}

} // namespace
