// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/water_way.h"

#include <gtest/gtest.h>

namespace {

/// Water 200 m by 100 m, 3 m deep, with a wall from the south that leaves 20 m free in the north.
grid::DepthGrid walled(double cell_m) {
    const auto cols = static_cast<int>(200.0 / cell_m);
    const auto rows = static_cast<int>(100.0 / cell_m);
    grid::DepthGrid depth(grid::GridFrame(0.0, 100.0, cell_m, cols, rows));
    for (std::size_t i = 0; i < depth.size(); ++i) {
        const geo::WaterPoint p = depth.frame().centre(depth.frame().cellAt(i));
        const bool isWall = p.x_m > 95.0 && p.x_m < 105.0 && p.y_m < 80.0;
        if (!isWall) {
            depth.set(i, units::Depth::metres(3.0));
        }
    }
    return depth;
}

TEST(WayOverWater, IsStraightWhereNothingIsInTheWay) {
    const geo::Path way = grid::wayOverWater(walled(2.0), {10.0, 95.0}, {190.0, 90.0});
    EXPECT_EQ(way, (geo::Path{{10.0, 95.0}, {190.0, 90.0}}));
}

TEST(WayOverWater, GoesRoundWhatIsInTheWayAndHardlyFartherThanItMust) {
    const grid::DepthGrid depth = walled(2.0);
    const geo::WaterPoint from{40.0, 20.0};
    const geo::WaterPoint to{160.0, 20.0};
    const geo::Path way = grid::wayOverWater(depth, from, to);
    ASSERT_GE(way.size(), 3U);
    EXPECT_EQ(way.front(), from);
    EXPECT_EQ(way.back(), to);
    for (const geo::WaterPoint p : geo::densified(way, 1.0)) {
        EXPECT_TRUE(depth.has(depth.frame().cellOf(p))) << p.x_m << ' ' << p.y_m;
    }
    const double shortest_m = 2.0 * std::hypot(55.0, 60.0) + 10.0;
    EXPECT_LT(geo::lengthOf(way).inMetres(), 1.05 * shortest_m);
    EXPECT_LE(way.size(), 8U) << "no more bends than a boat needs";
}

TEST(WayOverWater, IsNoneWhereNoWaterLeadsThere) {
    grid::DepthGrid depth = walled(2.0);
    for (std::size_t i = 0; i < depth.size(); ++i) {
        const double x_m = depth.frame().centre(depth.frame().cellAt(i)).x_m;
        if (x_m > 95.0 && x_m < 105.0) {
            depth.clear(i);
        }
    }
    EXPECT_TRUE(grid::wayOverWater(depth, {40.0, 20.0}, {160.0, 20.0}).empty());
}

TEST(WayOverWater, LeavesALaunchOnLand) {
    const geo::Path way = grid::wayOverWater(walled(2.0), {-15.0, 50.0}, {60.0, 50.0});
    EXPECT_EQ(way.front(), (geo::WaterPoint{-15.0, 50.0}));
    EXPECT_EQ(way.back(), (geo::WaterPoint{60.0, 50.0}));
}

} // namespace
