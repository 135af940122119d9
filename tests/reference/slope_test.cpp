// SPDX-License-Identifier: GPL-3.0-or-later
// Horn, B. K. P. (1981), Hill shading and the reflectance map, Proc. IEEE 69, 14-47, with the
// worked example that is in circulation for it (where it was first printed was not found: it is
// known at second hand); topographic position index after Weiss (2001, a poster), value as GDAL's
// gdaldem gives it.
#include "core/structure/position_index.h"
#include "core/structure/slope_grid.h"

#include <array>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

namespace {

grid::DepthGrid nine(const std::array<double, 9>& values_m, double cell_m) {
    grid::DepthGrid depth(grid::GridFrame(0.0, 3.0 * cell_m, cell_m, 3, 3));
    for (std::size_t i = 0; i < values_m.size(); ++i) {
        depth.set(i, units::Depth::metres(values_m[i]));
    }
    return depth;
}

// Worked example of the published method, cell 5: dz/dx 0.05, dz/dy -3.8 per row southward, 380.033
// percent. It is printed as 75.25762 degrees, from single precision; the same grid in double gives
// 75.2576577, and gdaldem 3.6.2 gives 75.2576599.
TEST(SlopeReference, AgreesWithThePublishedExampleOfHornsMethod) {
    const grid::DepthGrid depth = nine({50, 45, 50, 30, 30, 30, 8, 10, 10}, 5.0);
    const auto slope = structure::SlopeGrid::of(depth, units::Length());
    const double percent = slope.percentAt({1, 1}).value();
    EXPECT_NEAR(percent, 380.033, 0.001);
    EXPECT_NEAR(std::atan(percent / 100.0) * 180.0 / std::numbers::pi, 75.2576577, 1e-6);
    EXPECT_NEAR(slope.deeperEastward()[4], 0.05, 1e-6);
    EXPECT_NEAR(slope.deeperNorthward()[4], 3.8, 1e-5);
}

// Worked example for aspect, cell 1: dz/dx -8.125, dz/dy -0.375 per row southward.
TEST(SlopeReference, AgreesWithThePublishedExampleForAspect) {
    const grid::DepthGrid depth = nine({101, 92, 85, 101, 92, 85, 101, 91, 84}, 1.0);
    const auto slope = structure::SlopeGrid::of(depth, units::Length());
    EXPECT_NEAR(slope.deeperEastward()[4], -8.125, 1e-5);
    EXPECT_NEAR(slope.deeperNorthward()[4], 0.375, 1e-5);
}

// Weiss (2001) on the first example taken as heights: +0.875 (gdaldem TPI gives the same). Depths
// count down, so the same numbers as depths give the opposite sign.
TEST(SlopeReference, PositionIndexHasTheSizeOfTheTopographicOneAndTheSignOfDepth) {
    const grid::DepthGrid depth = nine({50, 45, 50, 30, 30, 30, 8, 10, 10}, 5.0);
    const auto index =
        structure::PositionIndex::of(depth, units::Length::metres(5.0), units::Length::metres(7.5));
    EXPECT_NEAR(index.riseAt({1, 1})->inMetres(), -0.875, 1e-5);
}

} // namespace
