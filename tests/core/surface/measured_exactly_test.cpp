// SPDX-License-Identifier: GPL-3.0-or-later
// Figures of a water worked out by hand, to the last place: areas, volumes, depths, the table.
#include "core/surface/measure_water.h"
#include "tests/support/made_up_water.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

namespace {

using surface::Hypsography;
using surface::HypsographyStep;
using surface::MeasureSettings;
using units::Area;
using units::Depth;
using units::Length;
using units::Volume;

/// Water in every cell of 12 by 7 cells of 10 m, deepening by formula.
struct Block {
    explicit Block(const support::Bottom& bottom) : depth(frame) {
        mask = grid::Mask::from(grid::Grid<std::uint8_t>(frame, 1));
        for (std::size_t i = 0; i < frame.size(); ++i) {
            depth.set(i, Depth::metres(bottom(frame.centre(frame.cellAt(i)))));
        }
    }
    [[nodiscard]] base::Result<Hypsography> measured(double rise_m, double step_m = 1.0) const {
        MeasureSettings settings;
        settings.rise = Length::metres(rise_m);
        settings.step = Length::metres(step_m);
        base::Progress silent;
        return surface::measureWater(depth, mask, outline, settings, silent);
    }
    grid::GridFrame frame{0.0, 70.0, 10.0, 12, 7};
    grid::Mask mask;
    grid::DepthGrid depth;
    geo::Outline outline = geo::Outline::make({{support::rectangle(0.0, 0.0, 120.0, 70.0), {}}},
                                              geo::WaterFrame::centredOn({3.1, 55.2}).value())
                               .value();
};

TEST(MeasuredExactly, ABoxHasTheFiguresOfABoxAtEveryLevel) {
    const Block box([](geo::WaterPoint) { return 2.0; });
    for (const double rise_m : {-0.5, 0.0, 0.75}) {
        const Hypsography form = box.measured(rise_m).value();
        const double deep_m = 2.0 + rise_m;
        EXPECT_DOUBLE_EQ(form.rise.inMetres(), rise_m);
        EXPECT_NEAR(form.area.inSquareMetres(), 8400.0, 1e-6);
        EXPECT_NEAR(form.volume.inCubicMetres(), 8400.0 * deep_m, 1e-6);
        EXPECT_NEAR(form.meanDepth.inMetres(), deep_m, 1e-9);
        EXPECT_NEAR(form.maxDepth.inMetres(), deep_m, 1e-9);
        EXPECT_NEAR(form.volumeDevelopment, 3.0, 1e-9);
        EXPECT_NEAR(form.shoreLength.inMetres(), 380.0, 1e-6);
        // Hutchinson 1957: L / (2 sqrt(pi A)).
        EXPECT_NEAR(form.shoreDevelopment, 380.0 / (2.0 * std::sqrt(std::numbers::pi * 8400.0)),
                    1e-9);
        ASSERT_EQ(form.steps.size(), static_cast<std::size_t>(deep_m) + 1);
        for (std::size_t k = 0; k < form.steps.size(); ++k) {
            EXPECT_NEAR(form.steps[k].depth.inMetres(), static_cast<double>(k), 1e-12);
            EXPECT_NEAR(form.steps[k].area.inSquareMetres(), 8400.0, 1e-6);
            EXPECT_NEAR(form.steps[k].below.inCubicMetres(),
                        8400.0 * (deep_m - static_cast<double>(k)), 1e-6);
        }
    }
}

// Sixteen parts a cell, each with the depth between the centres at its own middle: the same sum,
// written down once more.
TEST(MeasuredExactly, ASlopeIsTheSumOfItsSixteenthsAndNothingAboveTheWaterCounts) {
    const auto bottom = [](geo::WaterPoint p) { return 0.25 + 0.04 * p.x_m - 0.01 * p.y_m; };
    const Block slope(bottom);
    for (const double rise_m : {-1.3, 0.0, 0.4}) {
        double area_m2 = 0.0;
        double volume_m3 = 0.0;
        double deepest_m = 0.0;
        double below2_m3 = 0.0;
        double at2_m2 = 0.0;
        for (double x_m = 1.25; x_m < 120.0; x_m += 2.5) {
            for (double y_m = 1.25; y_m < 70.0; y_m += 2.5) {
                const double depth_m =
                    bottom({std::clamp(x_m, 5.0, 115.0), std::clamp(y_m, 5.0, 65.0)}) + rise_m;
                if (depth_m > 0.0) {
                    area_m2 += 6.25;
                    volume_m3 += 6.25 * depth_m;
                    deepest_m = std::max(deepest_m, depth_m);
                }
                if (depth_m >= 2.0) {
                    at2_m2 += 6.25;
                    below2_m3 += 6.25 * (depth_m - 2.0);
                }
            }
        }
        const Hypsography form = slope.measured(rise_m).value();
        EXPECT_NEAR(form.area.inSquareMetres(), area_m2, 7.0) << rise_m;
        EXPECT_NEAR(form.volume.inCubicMetres(), volume_m3, 1.0) << rise_m;
        EXPECT_NEAR(form.maxDepth.inMetres(), deepest_m, 1e-5) << rise_m;
        EXPECT_NEAR(form.meanDepth.inMetres(), volume_m3 / area_m2, 0.003) << rise_m;
        EXPECT_NEAR(form.volumeDevelopment, 3.0 * volume_m3 / area_m2 / deepest_m, 0.01);
        EXPECT_NEAR(form.steps.at(2).area.inSquareMetres(), at2_m2, 13.0) << rise_m;
        EXPECT_NEAR(form.steps.at(2).below.inCubicMetres(), below2_m3, 1.0) << rise_m;
    }
}

TEST(MeasuredExactly, ACellThatTheShoreCutsCountsByItsShare) {
    const auto water = support::madeUpWater(
        {{support::rectangle(0.0, 0.0, 65.0, 43.0), {}}}, [](geo::WaterPoint) { return 2.0; },
        10.0);
    base::Progress silent;
    const Hypsography form =
        surface::measureWater(water.depth, water.mask, water.outline, {}, silent).value();
    EXPECT_NEAR(form.area.inSquareMetres(), 65.0 * 43.0, 20.0);
    EXPECT_NEAR(form.volume.inCubicMetres(), 2.0 * 65.0 * 43.0, 40.0);
}

TEST(MeasuredExactly, TheShoreCountsItsIslandsAndTheAreaDoesNot) {
    const auto water = support::madeUpWater(
        {{support::rectangle(0.0, 0.0, 200.0, 100.0),
          {support::rectangle(60.0, 40.0, 100.0, 60.0)}}},
        [](geo::WaterPoint) { return 3.0; }, 5.0);
    base::Progress silent;
    const Hypsography form =
        surface::measureWater(water.depth, water.mask, water.outline, {}, silent).value();
    EXPECT_NEAR(form.shoreLength.inMetres(), 600.0 + 120.0, 1e-6);
    EXPECT_NEAR(form.shoreDevelopment, 720.0 / (2.0 * std::sqrt(std::numbers::pi * 19200.0)), 1e-9);
    EXPECT_NEAR(form.area.inSquareMetres(), 19200.0, 30.0);
    EXPECT_NEAR(form.volume.inCubicMetres(), 57600.0, 90.0);
}

TEST(MeasuredExactly, RefusesWhatItCannotMeasureAndSaysWhy) {
    const Block box([](geo::WaterPoint) { return 2.0; });
    for (const double rise_m : {-2.0, -2.5}) {
        const auto dry = box.measured(rise_m);
        ASSERT_FALSE(dry);
        EXPECT_EQ(dry.error().kind, base::ErrorKind::unusableInput);
        EXPECT_NE(dry.error().what.find(rise_m < -2.0 ? "-2.50 m" : "-2.00 m"), std::string::npos)
            << dry.error().what;
    }
    EXPECT_TRUE(box.measured(-1.99));
    for (const auto& [step_m, rise_m] :
         {std::pair(0.0099, 0.0), {100.1, 0.0}, {1.0, 100.1}, {1.0, -100.1}, {NAN, 0.0}}) {
        const auto wrong = box.measured(rise_m, step_m);
        ASSERT_FALSE(wrong) << step_m << " " << rise_m;
        EXPECT_EQ(wrong.error().kind, base::ErrorKind::wrongUse);
    }
    EXPECT_TRUE(box.measured(100.0, 0.01));
    EXPECT_TRUE(box.measured(0.0, 100.0));
    base::Progress silent;
    const grid::Mask other =
        grid::Mask::from(grid::Grid<std::uint8_t>(grid::GridFrame(0.0, 70.0, 10.0, 11, 7), 1));
    const auto apart = surface::measureWater(box.depth, other, box.outline, {}, silent);
    ASSERT_FALSE(apart);
    EXPECT_EQ(apart.error().kind, base::ErrorKind::wrongUse);
}

/// Steps at 0 and 2 m, deepest at 5 m.
Hypsography twoSteps() {
    Hypsography form;
    form.maxDepth = Depth::metres(5.0);
    form.steps = {{Depth(), Area::squareMetres(100.0), Volume::cubicMetres(300.0)},
                  {Depth::metres(2.0), Area::squareMetres(60.0), Volume::cubicMetres(140.0)}};
    return form;
}

TEST(HypsographySteps, BetweenTwoTheAreaIsStraightAndTheVolumeWhatLiesBelow) {
    struct Case {
        double depth_m;
        double area_m2;
        double below_m3;
    };
    for (const Case& c : {Case{0.0, 100.0, 300.0}, Case{0.5, 90.0, 252.5}, Case{1.0, 80.0, 210.0},
                          Case{2.0, 60.0, 140.0}, Case{3.5, 30.0, 72.5}, Case{5.0, 0.0, 50.0},
                          Case{5.001, 0.0, 0.0}}) {
        const HypsographyStep at = surface::stepAt(twoSteps(), Depth::metres(c.depth_m));
        EXPECT_DOUBLE_EQ(at.depth.inMetres(), c.depth_m);
        EXPECT_NEAR(at.area.inSquareMetres(), c.area_m2, 1e-9) << c.depth_m;
        EXPECT_NEAR(at.below.inCubicMetres(), c.below_m3, 1e-9) << c.depth_m;
    }
}

TEST(HypsographySteps, RowsReachTheGreatestDepthItselfAndAreAThousandAtMost) {
    const auto rows = surface::rowsEvery(twoSteps(), Length::metres(2.5));
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_DOUBLE_EQ(rows[2].depth.inMetres(), 5.0);
    EXPECT_NEAR(rows[1].area.inSquareMetres(), 50.0, 1e-9);
    EXPECT_EQ(surface::rowsEvery(twoSteps(), Length::metres(2.6)).size(), 2U);
    const auto many = surface::rowsEvery(twoSteps(), Length::metres(0.001));
    ASSERT_EQ(many.size(), 1000U);
    EXPECT_NEAR(many.back().depth.inMetres(), 0.999, 1e-9);
}

} // namespace
