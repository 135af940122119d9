// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/check_by_lines.h"

#include "tests/core/surface/tracks.h"

#include <gtest/gtest.h>

namespace {

surface::LineCheckSettings settingsOf(double cell_m) {
    surface::LineCheckSettings settings;
    settings.draw.cell = units::Length::metres(cell_m);
    settings.draw.stiffness = 300.0;
    settings.draw.contourStiffness = 10.0;
    settings.folds = 4;
    return settings;
}

TEST(CheckByLines, ComparesEverySoundingOnce) {
    const support::MadeUpWater water = support::cone(300.0, 12.0, 10.0);
    const auto soundings = tracks::lines(water, 60.0, 4.0);
    base::Progress progress;
    const auto check = surface::checkByLines(water.outline, soundings, settingsOf(10.0), progress);
    ASSERT_TRUE(check.has_value()) << check.error().sentence();
    EXPECT_EQ(check->soundings, soundings.size());
    EXPECT_GT(check->stretches, 4U);
    EXPECT_LT(check->meanAbsolute.inMetres(), 0.3);
    EXPECT_LE(check->meanAbsolute, check->rootMeanSquare);
    EXPECT_LE(check->rootMeanSquare, check->p95 * 1.5);
}

TEST(CheckByLines, SeesThatARoughBottomIsForetoldWorse) {
    const support::MadeUpWater smooth = support::cone(300.0, 12.0, 10.0);
    const support::MadeUpWater rough = support::madeUpWater(
        smooth.outline.pieces(),
        [&](geo::WaterPoint p) {
            return smooth.bottom(p) + std::sin(p.x_m / 15.0) * std::cos(p.y_m / 15.0);
        },
        10.0);
    base::Progress progress;
    const auto one = surface::checkByLines(smooth.outline, tracks::lines(smooth, 60.0, 4.0),
                                           settingsOf(10.0), progress);
    const auto other = surface::checkByLines(rough.outline, tracks::lines(rough, 60.0, 4.0),
                                             settingsOf(10.0), progress);
    ASSERT_TRUE(one.has_value() && other.has_value());
    EXPECT_GT(other->meanAbsolute, one->meanAbsolute * 2.0);
}

TEST(CheckByLines, RefusesFewerSoundingsThanParts) {
    const support::MadeUpWater water = support::cone(300.0, 12.0, 10.0);
    base::Progress progress;
    const auto check = surface::checkByLines(water.outline, std::vector{tracks::at({0, 0}, 5.0)},
                                             settingsOf(10.0), progress);
    ASSERT_FALSE(check.has_value());
    EXPECT_EQ(check.error().kind, base::ErrorKind::unusableInput);
}

} // namespace
