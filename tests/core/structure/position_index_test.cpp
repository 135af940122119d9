// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/position_index.h"

#include "tests/support/made_up_water.h"

#include <gtest/gtest.h>

namespace {

using structure::PositionIndex;
using units::Length;

TEST(PositionIndex, IsPositiveOnAHumpAndNegativeInAPit) {
    for (const double height_m : {1.5, -1.5}) {
        const support::MadeUpWater water =
            support::gaussianHump(200.0, 6.0, height_m, 15.0, {20.0, -30.0}, 5.0);
        const PositionIndex index =
            PositionIndex::of(water.depth, Length::metres(10.0), Length::metres(60.0));
        const auto rise = index.riseAt(water.depth.frame().cellOf({20.0, -30.0}));
        ASSERT_TRUE(rise.has_value());
        EXPECT_GT(rise->inMetres() * height_m, 1.0);
    }
}

TEST(PositionIndex, IsZeroOnAPlaneAwayFromTheShore) {
    const support::MadeUpWater water = support::plane(150.0, 1.0, 9.0, 5.0);
    const PositionIndex index =
        PositionIndex::of(water.depth, Length::metres(10.0), Length::metres(40.0));
    for (const double x_m : {-80.0, 0.0, 95.0}) {
        EXPECT_NEAR(index.riseAt(water.depth.frame().cellOf({x_m, 20.0}))->inMetres(), 0.0, 1e-5);
    }
}

TEST(PositionIndex, KeepsDecimetres) {
    const support::MadeUpWater water = support::gaussianHump(150.0, 4.0, 0.2, 12.0, {}, 4.0);
    const PositionIndex index =
        PositionIndex::of(water.depth, Length::metres(8.0), Length::metres(48.0));
    EXPECT_NEAR(index.riseAt(water.depth.frame().cellOf({0.1, 0.1}))->inMetres(), 0.18, 0.02);
}

TEST(PositionIndex, IsUnknownWhereMostOfTheRingIsDry) {
    grid::DepthGrid depth(grid::GridFrame(0.0, 500.0, 10.0, 50, 50));
    depth.set(25 * 50 + 25, units::Depth::metres(3.0));
    const PositionIndex index =
        PositionIndex::of(depth, Length::metres(20.0), Length::metres(60.0));
    EXPECT_FALSE(index.riseAt({25, 25}).has_value());
}

} // namespace
