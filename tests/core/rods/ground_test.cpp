// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rods/ground.h"

#include "tests/support/made_up_zones.h"

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using structure::ZoneKind;
using units::Depth;

TEST(LengthWithin, IsTheChordOfALineThatCrossesTheCircle) {
    // Half chord of a circle of 5 at 3 from its middle: 4.
    EXPECT_NEAR(rods::lengthWithin_m({-100, 3}, {100, 3}, {0, 0}, 5.0), 8.0, 1e-12);
}

TEST(LengthWithin, StopsAtTheEndsOfTheLine) {
    EXPECT_NEAR(rods::lengthWithin_m({-1, 0}, {2, 0}, {0, 0}, 5.0), 3.0, 1e-12);
    EXPECT_NEAR(rods::lengthWithin_m({0, 0}, {0, 9}, {0, 0}, 5.0), 5.0, 1e-12);
}

TEST(LengthWithin, IsNothingForALineOutsideOrAPoint) {
    EXPECT_EQ(rods::lengthWithin_m({6, -9}, {6, 9}, {0, 0}, 5.0), 0.0);
    EXPECT_EQ(rods::lengthWithin_m({7, 0}, {9, 0}, {0, 0}, 5.0), 0.0);
    EXPECT_EQ(rods::lengthWithin_m({1, 1}, {1, 1}, {0, 0}, 5.0), 0.0);
}

class GroundOfAStep : public testing::Test {
protected:
    [[nodiscard]] structure::ZoneMap structureOfIt() const {
        structure::ZoneMap map = support::noZones(water_);
        support::addZone(map, water_, ZoneKind::dropOff,
                         [](WaterPoint p) { return std::fabs(p.x_m) < 15.0; },
                         {{{-15, -100}, {-15, 0}, {-15, 100}}});
        return map;
    }
    [[nodiscard]] structure::ZoneMap weedOfIt() const {
        structure::ZoneMap map = support::noZones(water_);
        support::addZone(map, water_, ZoneKind::weedBed, [](WaterPoint p) { return p.x_m < 0.0; });
        support::addZone(map, water_, ZoneKind::weedEdge,
                         [](WaterPoint p) { return p.x_m > 0.0 && p.x_m < 6.0; },
                         {{{0, -100}, {0, 100}}});
        return map;
    }
    [[nodiscard]] grid::Grid<std::uint8_t> closedOfIt() const {
        grid::Grid<std::uint8_t> map(water_.depth.frame(), 0);
        for (std::size_t i = 0; i < map.size(); ++i) {
            map[i] = map.frame().centre(map.frame().cellAt(i)).y_m > 80.0 ? 1 : 0;
        }
        return map;
    }
    support::MadeUpWater water_ = support::step(100.0, 3.0, 12.0, 30.0, 3.0);
    structure::ZoneMap zones_ = structureOfIt();
    structure::ZoneMap weed_ = weedOfIt();
    grid::Grid<std::uint8_t> closed_ = closedOfIt();
    rods::Ground ground_{water_.depth, Depth::metres(9.0), &closed_, zones_, weed_};
};

TEST_F(GroundOfAStep, IsFishableOnlyInOpenWaterAboveTheLimit) {
    EXPECT_TRUE(ground_.isFishable(WaterPoint{-50, 0}));
    EXPECT_FALSE(ground_.isFishable(WaterPoint{50, 0})) << "too deep";
    EXPECT_FALSE(ground_.isFishable(WaterPoint{-50, 90})) << "closed";
    EXPECT_FALSE(ground_.isFishable(WaterPoint{-50, 150})) << "land";
}

TEST_F(GroundOfAStep, NamesTheKindMostWorthNaming) {
    EXPECT_EQ(ground_.kindAt({3, 0}), ZoneKind::dropOff) << "over a weed edge";
    EXPECT_EQ(ground_.kindAt({-50, 0}), ZoneKind::weedBed);
    EXPECT_EQ(ground_.kindAt({50, 0}), std::nullopt);
}

TEST_F(GroundOfAStep, FindsEachEdgeWithinReachOnce) {
    const auto near = ground_.edgesNear({-10, -5}, 12.0);
    ASSERT_EQ(near.size(), 3U);
    EXPECT_EQ(near[0].kind, ZoneKind::dropOff);
    EXPECT_EQ(near[2].kind, ZoneKind::weedEdge);
    EXPECT_NE(near[0].zone, near[2].zone);
    EXPECT_TRUE(ground_.edgesNear({-60, 0}, 30.0).empty());
}

TEST_F(GroundOfAStep, FindsTheSameEdgesAsLookingAtEveryOne) {
    for (double x_m = -190.0; x_m < 200.0; x_m += 17.0) {
        for (const double radius_m : {1.0, 20.0, 90.0, 400.0}) {
            const WaterPoint p{x_m, 0.3 * x_m};
            std::size_t expected = 0;
            for (const rods::EdgePiece& e : ground_.edges()) {
                expected += geo::distanceToSegment_m(p, e.a, e.b) <= radius_m ? 1U : 0U;
            }
            EXPECT_EQ(ground_.edgesNear(p, radius_m).size(), expected) << x_m << ' ' << radius_m;
        }
    }
}

TEST(Ground, TakesTheFootForTheEdgeWhereADropOffBeginsAtTheShore) {
    const support::MadeUpWater water = support::step(100.0, 3.0, 12.0, 30.0, 3.0);
    structure::ZoneMap zones = support::noZones(water);
    support::addZone(zones, water, ZoneKind::dropOff,
                     [](WaterPoint p) { return std::fabs(p.x_m) < 15.0; });
    // A foot all along, a top edge along the southern half alone.
    zones.zones[0].topEdges = {{{-15, -100}, {-15, 0}}};
    zones.zones[0].feet = {{{15, -100}, {15, 100}}};
    const structure::ZoneMap none = support::noZones(water);
    const rods::Ground ground(water.depth, Depth::metres(15.0), nullptr, zones, none);
    double foot_m = 0.0;
    for (const rods::EdgePiece& edge : ground.edges()) {
        if (edge.a.x_m > 0.0) {
            foot_m += geo::distance_m(edge.a, edge.b);
            EXPECT_GT(std::min(edge.a.y_m, edge.b.y_m), 15.0) << "a top edge lies above it";
        }
    }
    EXPECT_NEAR(foot_m, 100.0 - 26.0, 5.0);
}

TEST(Ground, SeesLandBetweenTwoPlaces) {
    const support::MadeUpWater water = support::twoBasins(100.0, 20.0, 4.0, 4.0);
    const structure::ZoneMap none = support::noZones(water);
    const rods::Ground ground(water.depth, Depth::metres(9.0), nullptr, none, none);
    EXPECT_TRUE(ground.isOverOpenWater({-60, 0}, {60, 0})) << "through the neck";
    EXPECT_FALSE(ground.isOverOpenWater({-60, 40}, {60, 40})) << "across the land beside it";
    EXPECT_TRUE(ground.isOverOpenWater({-60, -40}, {-60, 40}));
    EXPECT_FALSE(ground.isOverOpenWater({-60, 0}, {-60, 90}));
}

} // namespace
