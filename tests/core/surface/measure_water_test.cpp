// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/measure_water.h"

#include "tests/support/made_up_water.h"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

namespace {

using surface::Hypsography;
using surface::MeasureSettings;

base::Result<Hypsography> measured(const support::MadeUpWater& water,
                                   const MeasureSettings& settings = {}) {
    base::Progress progress;
    return surface::measureWater(water.depth, water.mask, water.outline, settings, progress);
}

support::MadeUpWater paraboloid(double radius_m, double depth_m, double cell_m) {
    return support::madeUpWater(
        {{support::circle({0.0, 0.0}, radius_m), {}}},
        [=](geo::WaterPoint p) {
            return depth_m * (1.0 - (p.x_m * p.x_m + p.y_m * p.y_m) / (radius_m * radius_m));
        },
        cell_m);
}

TEST(MeasureWater, FindsTheVolumeOfAConeWithinHalfAPercent) {
    const auto form = measured(support::cone(100.0, 9.0, 5.0));
    ASSERT_TRUE(form.has_value()) << form.error().sentence();
    const double exact_m3 = std::numbers::pi * 100.0 * 100.0 * 9.0 / 3.0;
    EXPECT_NEAR(form->volume.inCubicMetres(), exact_m3, 0.005 * exact_m3);
    EXPECT_NEAR(form->area.inSquareMetres(), std::numbers::pi * 1e4,
                0.005 * std::numbers::pi * 1e4);
    EXPECT_NEAR(form->volumeDevelopment, 1.0, 0.05);
    EXPECT_NEAR(form->shoreDevelopment, 1.0, 0.001);
}

TEST(MeasureWater, FindsTheVolumeOfAParaboloidWithinHalfAPercent) {
    const auto form = measured(paraboloid(100.0, 9.0, 5.0));
    ASSERT_TRUE(form.has_value()) << form.error().sentence();
    const double exact_m3 = std::numbers::pi * 1e4 * 9.0 / 2.0;
    EXPECT_NEAR(form->volume.inCubicMetres(), exact_m3, 0.005 * exact_m3);
    EXPECT_NEAR(form->volumeDevelopment, 1.5, 0.01);
}

TEST(MeasureWater, TabulatesAreaAndVolumeByDepth) {
    const auto form = measured(support::cone(200.0, 10.0, 4.0));
    ASSERT_TRUE(form.has_value());
    ASSERT_GE(form->steps.size(), 10U);
    for (std::size_t k = 0; k < 9; ++k) {
        const double left = 1.0 - static_cast<double>(k) / 10.0; // share of the radius left
        const double area_m2 = std::numbers::pi * std::pow(200.0 * left, 2);
        EXPECT_DOUBLE_EQ(form->steps[k].depth.inMetres(), static_cast<double>(k));
        EXPECT_NEAR(form->steps[k].area.inSquareMetres(), area_m2, 0.01 * area_m2 + 20.0);
        EXPECT_NEAR(form->steps[k].below.inCubicMetres(), area_m2 * 10.0 * left / 3.0,
                    0.01 * area_m2 * 10.0 * left / 3.0 + 20.0);
    }
}

TEST(MeasureWater, FollowsTheLevelDownAndUp) {
    const support::MadeUpWater water = support::cone(200.0, 10.0, 4.0);
    MeasureSettings settings;
    settings.rise = units::Length::metres(-2.0);
    const auto low = measured(water, settings);
    ASSERT_TRUE(low.has_value());
    const double lowArea_m2 = std::numbers::pi * 160.0 * 160.0;
    EXPECT_NEAR(low->area.inSquareMetres(), lowArea_m2, 0.01 * lowArea_m2);
    EXPECT_NEAR(low->volume.inCubicMetres(), lowArea_m2 * 8.0 / 3.0, 0.01 * lowArea_m2 * 8.0 / 3.0);

    settings.rise = units::Length::metres(1.0);
    const auto high = measured(water, settings);
    const auto chart = measured(water);
    ASSERT_TRUE(high.has_value() && chart.has_value());
    EXPECT_NEAR(high->volume.inCubicMetres() - chart->volume.inCubicMetres(),
                chart->area.inSquareMetres(), 1.0);
}

TEST(MeasureWater, CountsShoreCellsByTheirShare) {
    const support::MadeUpWater water = support::madeUpWater(
        {{support::rectangle(0.0, 0.0, 103.0, 57.0), {}}}, [](geo::WaterPoint) { return 2.0; },
        10.0);
    const auto form = measured(water);
    ASSERT_TRUE(form.has_value());
    EXPECT_NEAR(form->area.inSquareMetres(), 103.0 * 57.0, 60.0);
    EXPECT_NEAR(form->volume.inCubicMetres(), 2.0 * 103.0 * 57.0, 120.0);
}

TEST(MeasureWater, RefusesALevelWithoutWaterAndSettingsOutOfRange) {
    const support::MadeUpWater water = support::cone(100.0, 9.0, 5.0);
    MeasureSettings settings;
    settings.rise = units::Length::metres(-9.5);
    const auto dry = measured(water, settings);
    ASSERT_FALSE(dry.has_value());
    EXPECT_EQ(dry.error().kind, base::ErrorKind::unusableInput);
    settings = {};
    settings.step = units::Length::metres(0.0);
    const auto noStep = measured(water, settings);
    ASSERT_FALSE(noStep.has_value());
    EXPECT_EQ(noStep.error().kind, base::ErrorKind::wrongUse);
}

} // namespace
