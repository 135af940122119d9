// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/slope_grid.h"

#include "tests/support/made_up_water.h"

#include <gtest/gtest.h>

namespace {

using structure::SlopeGrid;
using units::Length;

TEST(SlopeGrid, GivesTheSlopeOfAPlaneEverywhereEvenAtTheShore) {
    const support::MadeUpWater water = support::plane(100.0, 2.0, 12.0, 5.0);
    for (const double scale_m : {0.0, 8.0, 30.0}) {
        const SlopeGrid slope = SlopeGrid::of(water.depth, Length::metres(scale_m));
        for (std::size_t i = 0; i < water.depth.size(); ++i) {
            if (water.mask.isActive(i)) {
                EXPECT_NEAR(slope.percent()[i], 5.0, 1e-3) << "cell " << i;
                EXPECT_NEAR(slope.deeperEastward()[i], 0.05, 1e-5);
                EXPECT_NEAR(slope.deeperNorthward()[i], 0.0, 1e-5);
            }
        }
    }
}

TEST(SlopeGrid, HasNoSlopeOutsideTheWater) {
    const support::MadeUpWater water = support::cone(100.0, 8.0, 4.0);
    const SlopeGrid slope = SlopeGrid::of(water.depth, Length::metres(8.0));
    EXPECT_FALSE(slope.percentAt({0, 0}).has_value());
    EXPECT_FALSE(slope.percentAt({-3, 2}).has_value());
    for (std::size_t i = 0; i < water.depth.size(); ++i) {
        EXPECT_EQ(std::isnan(slope.percent()[i]), !water.mask.isActive(i));
    }
}

TEST(SlopeGrid, PointsDownTheConeFromEverySide) {
    const support::MadeUpWater water = support::cone(200.0, 10.0, 5.0);
    const SlopeGrid slope = SlopeGrid::of(water.depth, Length());
    const grid::GridFrame& f = water.depth.frame();
    for (const geo::WaterPoint p : {geo::WaterPoint{100.0, 0.0}, geo::WaterPoint{-60.0, 80.0},
                                    geo::WaterPoint{0.0, -120.0}}) {
        const grid::Cell c = f.cellOf(p);
        const geo::WaterPoint at = f.centre(c);
        const double r = std::hypot(at.x_m, at.y_m);
        EXPECT_NEAR(slope.percentAt(c).value(), 5.0, 0.02);
        EXPECT_NEAR(slope.deeperEastward()[c], -0.05 * at.x_m / r, 5e-4);
        EXPECT_NEAR(slope.deeperNorthward()[c], -0.05 * at.y_m / r, 5e-4);
    }
}

TEST(SlopeGrid, CallsALoneCellLevel) {
    grid::DepthGrid depth(grid::GridFrame(0.0, 30.0, 10.0, 3, 3));
    depth.set(4, units::Depth::metres(3.0));
    EXPECT_EQ(SlopeGrid::of(depth, Length()).percentAt({1, 1}), 0.0);
}

} // namespace
