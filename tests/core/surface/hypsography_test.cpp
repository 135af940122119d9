// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/hypsography.h"
#include "core/surface/measure_water.h"

#include "tests/support/made_up_water.h"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

namespace {

using surface::Hypsography;
using units::Depth;
using units::Length;

/// A cone of 200 m radius and 10 m depth, measured every 0.1 m.
Hypsography cone() {
    const support::MadeUpWater water = support::cone(200.0, 10.0, 4.0);
    surface::MeasureSettings settings;
    settings.step = Length::metres(0.1);
    base::Progress progress;
    return surface::measureWater(water.depth, water.mask, water.outline, settings, progress)
        .value();
}

double coneArea_m2(double depth_m) {
    return std::numbers::pi * std::pow(200.0 * (1.0 - depth_m / 10.0), 2);
}

TEST(Hypsography, DepthsInFeetAreReadOffBetweenTheSteps) {
    const Hypsography form = cone();
    for (const double depth_ft : {0.0, 1.0, 7.0, 15.0, 25.0}) {
        const double depth_m = Depth::feet(depth_ft).inMetres();
        const surface::HypsographyStep at = surface::stepAt(form, Depth::feet(depth_ft));
        const double area_m2 = coneArea_m2(depth_m);
        const double volume_m3 = area_m2 * (10.0 - depth_m) / 3.0;
        EXPECT_NEAR(at.area.inSquareMetres(), area_m2, 0.01 * area_m2 + 20.0) << depth_ft;
        EXPECT_NEAR(at.below.inCubicMetres(), volume_m3, 0.01 * volume_m3 + 20.0) << depth_ft;
    }
}

TEST(Hypsography, RowsBeginAtTheSurfaceAndEndAboveTheDeepest) {
    const Hypsography form = cone();
    const auto rows = surface::rowsEvery(form, Length::metres(1.0));
    ASSERT_EQ(rows.size(), 10U); // the deepest cell of a cone lies a little above its tip
    EXPECT_DOUBLE_EQ(rows.front().area.inSquareMetres(), form.area.inSquareMetres());
    EXPECT_DOUBLE_EQ(rows.front().below.inCubicMetres(), form.volume.inCubicMetres());
    for (std::size_t k = 1; k < rows.size(); ++k) {
        EXPECT_LT(rows[k].area, rows[k - 1].area);
        EXPECT_LT(rows[k].below, rows[k - 1].below);
    }
}

TEST(Hypsography, NothingLiesBelowTheDeepest) {
    const Hypsography form = cone();
    const surface::HypsographyStep at = surface::stepAt(form, form.maxDepth + Depth::metres(0.01));
    EXPECT_EQ(at.area.inSquareMetres(), 0.0);
    EXPECT_EQ(at.below.inCubicMetres(), 0.0);
    EXPECT_TRUE(surface::rowsEvery(Hypsography(), Length::metres(1.0)).empty());
    EXPECT_TRUE(surface::rowsEvery(form, Length()).empty());
}

} // namespace
