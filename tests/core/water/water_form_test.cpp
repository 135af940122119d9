// SPDX-License-Identifier: GPL-3.0-or-later
// The form of a water whose every depth is known: a square of 400 m, from 0 m deep in the west to
// 8 m in the east, so that an area of a certain depth is a strip of 50 m for each metre.
#include "core/water/steps/derive_steps.h"

#include "tests/support/made_up_water.h"

#include <gtest/gtest.h>

#include <set>

namespace {

using namespace water;

constexpr double side_m = 400.0;

support::MadeUpWater ramp(double deepest_m = 8.0) {
    return support::plane(0.5 * side_m, 0.0, deepest_m, 5.0);
}

WaterForm formAt(const support::MadeUpWater& made, const contours::Bands& bands, double rise_m) {
    const surface::DrawnWater drawn{made.mask, made.depth, {}, {}};
    base::Progress silent;
    auto form = formOf(contours::CountsIn::metres, bands, drawn, made.outline,
                       units::Length::metres(rise_m), silent);
    EXPECT_TRUE(form) << form.error().sentence();
    return std::move(*form);
}

contours::Bands bandsAt(std::vector<double> edges_m) {
    std::vector<units::Depth> edges;
    for (const double edge_m : edges_m) {
        edges.push_back(units::Depth::metres(edge_m));
    }
    return contours::Bands::make(edges, units::Depth::metres(9.0)).value();
}

double area_m2(const std::vector<geo::Piece>& pieces) {
    double sum_m2 = 0.0;
    for (const geo::Piece& piece : pieces) {
        sum_m2 += geo::areaOf(piece).inSquareMetres();
    }
    return sum_m2;
}

TEST(WaterForm, AtChartLevelItsFiguresAreThoseOfTheRamp) {
    const WaterForm form = formAt(ramp(), bandsAt({2.0, 6.0}), 0.0);
    EXPECT_EQ(form.rise, units::Length());
    EXPECT_TRUE(form.waterLeft.empty());
    EXPECT_NEAR(form.hypsography.area.inSquareMetres(), 160000.0, 100.0);
    EXPECT_NEAR(form.hypsography.volume.inCubicMetres(), 640000.0, 3000.0);
    ASSERT_EQ(form.bandMeasures.size(), 3U);
    const double strips_m2[] = {40000.0, 80000.0, 40000.0};
    const double means_m[] = {1.0, 4.0, 7.0};
    for (std::size_t band = 0; band < 3; ++band) {
        EXPECT_NEAR(form.bandMeasures[band].area.inSquareMetres(), strips_m2[band], 2100.0);
        EXPECT_NEAR(form.bandMeasures[band].volume.inCubicMetres(), strips_m2[band] * means_m[band],
                    15000.0);
        EXPECT_NEAR(area_m2(form.bandPolygons[band].pieces), strips_m2[band], 2500.0);
        EXPECT_EQ(form.bandPolygons[band].from, form.bandMeasures[band].from);
    }
}

TEST(WaterForm, AHigherLevelDeepensAllOfItBetweenUprightBanks) {
    const WaterForm form = formAt(ramp(), bandsAt({2.0, 6.0}), 1.0);
    EXPECT_EQ(form.rise, units::Length::metres(1.0));
    EXPECT_TRUE(form.waterLeft.empty());
    EXPECT_NEAR(form.hypsography.area.inSquareMetres(), 160000.0, 100.0);
    EXPECT_NEAR(form.hypsography.volume.inCubicMetres(), 800000.0, 3000.0);
    EXPECT_NEAR(form.hypsography.maxDepth.inMetres(), 9.0, 0.1);
    EXPECT_NEAR(form.bandMeasures[0].area.inSquareMetres(), 20000.0, 2100.0); // 1 m to 2 m
    EXPECT_NEAR(form.bandMeasures[2].area.inSquareMetres(), 60000.0, 2100.0); // 6 m to 9 m
}

TEST(WaterForm, ALowerLevelLeavesTheWestDry) {
    const WaterForm form = formAt(ramp(), bandsAt({2.0, 6.0}), -1.0);
    EXPECT_NEAR(form.hypsography.area.inSquareMetres(), 140000.0, 1500.0);
    EXPECT_NEAR(form.hypsography.volume.inCubicMetres(), 490000.0, 4000.0); // 140000 x 3.5 m
    EXPECT_NEAR(form.hypsography.maxDepth.inMetres(), 7.0, 0.1);
    ASSERT_EQ(form.waterLeft.size(), 1U);
    EXPECT_NEAR(area_m2(form.waterLeft), 140000.0, 4000.0); // and half a cell round it
    double west_m = side_m;
    for (const geo::WaterPoint p : form.waterLeft[0].outer) {
        west_m = std::min(west_m, p.x_m);
    }
    EXPECT_NEAR(west_m, -150.0, 3.0);
    EXPECT_NEAR(form.bandMeasures[0].area.inSquareMetres(), 40000.0, 2100.0);
    EXPECT_NEAR(form.bandMeasures[2].area.inSquareMetres(), 20000.0, 2100.0);
}

TEST(WaterForm, ALineLiesWhereTheWaterIsAsDeepAsItSaysAtThatLevel) {
    for (const double rise_m : {-1.5, 0.0, 0.5}) {
        const WaterForm form = formAt(ramp(), bandsAt({3.0}), rise_m);
        bool isThere = false;
        for (const contours::Contour& contour : form.contours) {
            if (contour.depth == units::Depth::metres(3.0)) {
                isThere = true;
                for (const geo::WaterPoint p : contour.line) {
                    EXPECT_NEAR(p.x_m, 50.0 * (3.0 - rise_m) - 200.0, 2.0) << rise_m;
                }
            }
        }
        EXPECT_TRUE(isThere) << rise_m;
    }
}

/// The depths at which there are lines. The deepest cell of the ramp lies half a cell beyond its
/// eastern shore.
std::vector<double> levels(double deepest_m, std::vector<double> edges_m, double rise_m = 0.0) {
    const auto made = ramp(deepest_m / (0.5 + 202.5 / side_m));
    EXPECT_NEAR(made.depth.deepest()->inMetres(), deepest_m, 1e-4);
    std::set<double> found_m;
    for (const auto& contour : formAt(made, bandsAt(std::move(edges_m)), rise_m).contours) {
        found_m.insert(contour.depth.inMetres());
    }
    return {found_m.begin(), found_m.end()};
}

std::vector<double> stepsOf(double step_m, double deepest_m) {
    std::vector<double> steps_m;
    for (double depth_m = step_m; depth_m < deepest_m; depth_m += step_m) {
        steps_m.push_back(depth_m);
    }
    return steps_m;
}

TEST(WaterForm, HasSomeFifteenLinesAtRoundSteps) {
    const double steps_m[] = {0.25, 0.5, 1.0, 2.0, 5.0, 10.0};
    for (std::size_t i = 0; i < 5; ++i) {
        const double most_m = 15.0 * steps_m[i];
        EXPECT_EQ(levels(0.999 * most_m, {steps_m[i]}), stepsOf(steps_m[i], 0.999 * most_m));
        EXPECT_EQ(levels(1.001 * most_m, {steps_m[i + 1]}),
                  stepsOf(steps_m[i + 1], 1.001 * most_m));
    }
    EXPECT_EQ(levels(400.0, {10.0}), stepsOf(10.0, 400.0)) << "never farther apart";
    EXPECT_EQ(levels(9.0, {1.0}, -2.0), stepsOf(0.5, 7.0)) << "by the depth at that level";
    EXPECT_EQ(levels(7.0, {1.0}, 2.0), (std::vector{3.0, 4.0, 5.0, 6.0, 7.0, 8.0}))
        << "nothing is shallower than 2 m then";
}

TEST(WaterForm, HasALineAtEveryEdgeThatIsNotBelowAllWater) {
    EXPECT_EQ(levels(8.05, {2.2, 7.9, 8.2}),
              (std::vector{1.0, 2.0, 2.2, 3.0, 4.0, 5.0, 6.0, 7.0, 7.9, 8.0}));
}

TEST(WaterForm, TheTableOfDepthsGoesByTenCentimetres) {
    const WaterForm form = formAt(ramp(), bandsAt({2.0}), 0.0);
    ASSERT_GT(form.hypsography.steps.size(), 70U);
    for (std::size_t i = 0; i < 70; ++i) {
        const double depth_m = 0.1 * static_cast<double>(i);
        EXPECT_NEAR(form.hypsography.steps[i].depth.inMetres(), depth_m, 1e-9);
        EXPECT_NEAR(form.hypsography.steps[i].area.inSquareMetres(),
                    (8.0 - depth_m) / 8.0 * 160000.0, 1500.0);
    }
}

TEST(WaterForm, IsRefusedWhereNoWaterIsLeft) {
    const auto made = ramp();
    const surface::DrawnWater drawn{made.mask, made.depth, {}, {}};
    base::Progress silent;
    EXPECT_FALSE(formOf(contours::CountsIn::metres, bandsAt({2.0}), drawn, made.outline,
                        units::Length::metres(-9.0), silent));
}

} // namespace
