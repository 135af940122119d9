// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/reshape_shore.h"

#include "core/geo/outline.h"

#include <gtest/gtest.h>

namespace {

using water::ShoreCorner;
using water::Shoreline;

const geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();

geo::Ring square(double west_m, double south_m, double side_m) {
    return {{west_m, south_m},
            {west_m + side_m, south_m},
            {west_m + side_m, south_m + side_m},
            {west_m, south_m + side_m}};
}

/// 400 m square with a 40 m island in its south-west.
Shoreline pond() {
    return {{frame.toEarth(square(0.0, 0.0, 400.0)), {frame.toEarth(square(50.0, 50.0, 40.0))}}};
}

double area_m2(const Shoreline& shoreline) {
    return geo::Outline::make(shoreline, frame).value().area().inSquareMetres();
}

TEST(ReshapeShore, MovingACornerLeavesAllOthersToTheLastDigit) {
    const auto moved = water::withCornerMoved(pond(), frame, {0, 0, 2}, {500.0, 500.0});
    ASSERT_TRUE(moved.has_value()) << moved.error().sentence();
    Shoreline wanted = pond();
    wanted[0].outer[2] = frame.toEarth(geo::WaterPoint{500.0, 500.0});
    EXPECT_EQ(*moved, wanted);
    EXPECT_NEAR(area_m2(*moved), 160000.0 + 40000.0 - 1600.0, 1.0);
}

TEST(ReshapeShore, ACornerIsAddedAfterItsNeighbourAndTakenAwayAgain) {
    const auto more = water::withCornerAdded(pond(), frame, {0, 1, 3}, {40.0, 70.0});
    ASSERT_TRUE(more.has_value()) << more.error().sentence();
    EXPECT_EQ((*more)[0].islands[0].size(), 5U);
    const auto less = water::withoutCorner(*more, frame, {0, 1, 4});
    ASSERT_TRUE(less.has_value());
    EXPECT_EQ(*less, pond());
}

TEST(ReshapeShore, RefusesAShoreThatWouldCrossItself) {
    const auto crossed = water::withCornerMoved(pond(), frame, {0, 0, 2}, {-100.0, 100.0});
    ASSERT_FALSE(crossed.has_value());
    EXPECT_NE(crossed.error().sentence().find("crosses itself"), std::string::npos);
}

TEST(ReshapeShore, RefusesToTakeTheLastThreeCornersAndOnesThatAreNotThere) {
    const auto three = water::withoutCorner(pond(), frame, {0, 1, 0});
    ASSERT_TRUE(three.has_value());
    EXPECT_FALSE(water::withoutCorner(*three, frame, {0, 1, 0}).has_value());
    for (const ShoreCorner corner : {ShoreCorner{1, 0, 0}, {0, 2, 0}, {0, 0, 4}}) {
        EXPECT_FALSE(water::withoutCorner(pond(), frame, corner).has_value());
    }
}

TEST(ReshapeShore, AnIslandIsDrawnInTheWaterOnly) {
    const auto two = water::withIsland(pond(), frame, square(200.0, 200.0, 30.0));
    ASSERT_TRUE(two.has_value()) << two.error().sentence();
    EXPECT_EQ((*two)[0].islands.size(), 2U);
    EXPECT_NEAR(area_m2(*two), 160000.0 - 1600.0 - 900.0, 1.0);
    EXPECT_FALSE(water::withIsland(pond(), frame, square(600.0, 600.0, 30.0)).has_value())
        << "on land";
    EXPECT_FALSE(water::withIsland(pond(), frame, square(60.0, 60.0, 10.0)).has_value())
        << "on an island";
    EXPECT_FALSE(water::withIsland(pond(), frame, square(380.0, 380.0, 60.0)).has_value())
        << "across the shore";
}

TEST(ReshapeShore, AnIslandIsTakenAwayWhereOnePointsIntoIt) {
    const auto none = water::withoutIslandAt(pond(), frame, {70.0, 70.0});
    ASSERT_TRUE(none.has_value());
    EXPECT_TRUE((*none)[0].islands.empty());
    EXPECT_FALSE(water::withoutIslandAt(pond(), frame, {200.0, 200.0}).has_value());
}

TEST(ReshapeShore, TracedAnewItKeepsTheIslandsInside) {
    const auto kept = water::tracedAnew(pond(), frame, square(-20.0, -20.0, 300.0));
    ASSERT_TRUE(kept.has_value());
    EXPECT_EQ((*kept)[0].islands, pond()[0].islands);
    const auto left = water::tracedAnew(pond(), frame, square(100.0, 100.0, 250.0));
    ASSERT_TRUE(left.has_value());
    EXPECT_TRUE((*left)[0].islands.empty());
}

} // namespace
