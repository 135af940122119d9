// SPDX-License-Identifier: GPL-3.0-or-later
// The trust of a drawn depth against its formula: half-widths, names at their thresholds, and the
// curve that errors made by the formula lead back to.
#include "core/surface/solver/trust_drawing.h"
#include "tests/core/surface/tracks.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using surface::TrustCurve;
using surface::TrustName;
using surface::solver::ActiveCells;
using surface::solver::Bottom;
using surface::solver::ErrorGrowth;
using surface::solver::Field;
using surface::solver::Ground;

/// A square water of 400 m in cells of 5 m, level at `depth_m`, with one sounding in its middle.
class OneSounding : public testing::Test {
protected:
    void SetUp() override {
        const support::MadeUpWater water = support::plane(200.0, 4.0, 4.0, 5.0);
        base::Progress silent;
        ground_ =
            surface::solver::groundOf(water.outline, units::Length::metres(5.0), 1, silent).value();
        middle_ = ground_.frame().cellOf({2.5, 2.5});
        soundings_ = {tracks::at(ground_.frame().centre(middle_), 4.0)};
    }
    surface::TrustGrid trust(double depth_m, const TrustCurve& curve, double slope = 0.0) {
        Bottom bottom;
        bottom.depth_m.assign(ground_.cells.places(), 0.0);
        ground_.cells.forEach([&](std::size_t p, std::size_t) { bottom.depth_m[p] = depth_m; });
        bottom.lay.slope.assign(ground_.cells.places(), slope);
        const std::vector<std::size_t> positions{0};
        base::Progress silent;
        return surface::solver::drawTrust(ground_, bottom, soundings_, positions,
                                          ErrorGrowth(curve), 1, silent)
            .value();
    }
    grid::Cell beside(int cols, int rows) const { return {middle_.col + cols, middle_.row + rows}; }
    Ground ground_;
    grid::Cell middle_;
    std::vector<soundings::KeptSounding> soundings_;
};

TEST_F(OneSounding, IsSoundedWithinACellOfItAndInferredBeyond) {
    const surface::TrustGrid trust =
        this->trust(4.0, {.factor = 0.0, .farthest_m = 1e6, .floor_m = 0.2});
    EXPECT_EQ(trust.at(beside(0, 0)), TrustName::sounded);
    EXPECT_EQ(trust.at(beside(1, 0)), TrustName::sounded);
    EXPECT_EQ(trust.at(beside(0, -1)), TrustName::sounded);
    EXPECT_EQ(trust.at(beside(1, 1)), TrustName::inferred);
    EXPECT_EQ(trust.at(beside(2, 0)), TrustName::inferred);
}

TEST_F(OneSounding, EveryNameHasItsWordAndItsShareOfTheWater) {
    EXPECT_EQ(surface::wordFor(TrustName::sounded), "sounded");
    EXPECT_EQ(surface::wordFor(TrustName::inferred), "inferred");
    EXPECT_EQ(surface::wordFor(TrustName::guess), "guess");
    const surface::TrustGrid trust =
        this->trust(4.0, {.factor = 0.0, .farthest_m = 1e6, .floor_m = 0.2});
    const auto cells = static_cast<double>(ground_.mask.activeCount());
    EXPECT_NEAR(trust.shareOf(TrustName::sounded), 5.0 / cells, 1e-12);
    EXPECT_NEAR(trust.shareOf(TrustName::inferred), 1.0 - 5.0 / cells, 1e-12);
    EXPECT_EQ(trust.shareOf(TrustName::guess), 0.0);
}

TEST_F(OneSounding, BecomesAGuessBeyondHalfAMetreOrATenthOfTheDepthWhicheverIsMore) {
    struct Case {
        double depth_m;
        double halfWidth_m;
        TrustName name;
    };
    for (const Case& c : {Case{4.0, 0.499, TrustName::inferred}, Case{4.0, 0.501, TrustName::guess},
                          Case{8.0, 0.799, TrustName::inferred}, Case{8.0, 0.801, TrustName::guess},
                          Case{0.0, 0.499, TrustName::inferred}}) {
        const auto trust =
            this->trust(c.depth_m, {.factor = 0.0, .farthest_m = 1e6, .floor_m = c.halfWidth_m});
        EXPECT_EQ(trust.at(beside(5, 5)), c.name) << c.depth_m << " " << c.halfWidth_m;
        EXPECT_EQ(trust.at(beside(0, 0)), TrustName::sounded) << "whatever its half-width";
        EXPECT_NEAR(trust.halfWidthAt(beside(5, 5))->inMetres(), c.halfWidth_m, 1e-6);
    }
}

TEST_F(OneSounding, HalfWidthGrowsWithTheDistanceToItOrToTheShore) {
    const TrustCurve curve{
        .factor = 3.0, .ofDistance = 0.5, .ofUnevenness = 1.0, .farthest_m = 1e6, .floor_m = 0.2};
    const surface::TrustGrid trust = this->trust(4.0, curve, 0.03);
    // A level bottom is uneven by a hundredth; positions are off by 2 m on a slope of 3 %.
    const auto wanted = [](double distance_m) {
        return std::hypot(0.2, 2.0 * 0.03, 3.0 * std::sqrt(std::max(distance_m, 1.0)) * 0.01);
    };
    for (const int cols : {0, 3, 8, 20}) {
        EXPECT_NEAR(trust.halfWidthAt(beside(cols, 0))->inMetres(), wanted(5.0 * cols), 1e-5);
    }
    // 12.5 m off the shore in the east: known from it as if 1.5 x 12.5 + 8 m away.
    const grid::Cell east = ground_.frame().cellOf({187.5, 2.5});
    EXPECT_NEAR(trust.halfWidthAt(east)->inMetres(), wanted(1.5 * 12.5 + 8.0), 1e-5);
}

TEST_F(OneSounding, WithoutTrustEveryCellIsAGuessWithoutBound) {
    const surface::TrustGrid none = surface::solver::noTrust(ground_).value();
    EXPECT_EQ(none.at(middle_), TrustName::guess);
    EXPECT_TRUE(std::isinf(none.halfWidthAt(middle_)->inMetres()));
    EXPECT_FALSE(none.at(grid::Cell{0, 0}).has_value());
}

TEST(KnownAt, IsTheSoundingOrTheShoreWhicheverIsNearer) {
    EXPECT_DOUBLE_EQ(surface::solver::knownAt_m(30.0, 100.0), 30.0);
    EXPECT_DOUBLE_EQ(surface::solver::knownAt_m(300.0, 40.0), 68.0);
    EXPECT_DOUBLE_EQ(surface::solver::knownAt_m(300.0, -5.0), 8.0);
}

TEST(ErrorGrowthFormula, IsTheRootOfItsThreeTermsAndGrowsEvenlyBeyondTheFarthest) {
    const ErrorGrowth growth(TrustCurve{.factor = 2.0,
                                        .ofDistance = 0.5,
                                        .ofUnevenness = 0.75,
                                        .farthest_m = 100.0,
                                        .floor_m = 0.2});
    const double uneven = std::pow(0.1, 0.75);
    EXPECT_NEAR(growth.halfWidth_m({25.0, 0.1, 0.05}), std::hypot(0.2, 0.1, 2.0 * 5.0 * uneven),
                1e-12);
    EXPECT_NEAR(growth.halfWidth_m({0.0, 0.1, 0.0}), std::hypot(0.2, 2.0 * uneven), 1e-12);
    EXPECT_NEAR(growth.halfWidth_m({100.0, 0.1, 0.0}), std::hypot(0.2, 20.0 * uneven), 1e-12);
    // Four times as far: four times the error at the farthest, and half a percent of 300 m.
    EXPECT_NEAR(growth.halfWidth_m({400.0, 0.1, 0.0}), std::hypot(0.2, 80.0 * uneven + 1.5), 1e-12);
}

std::vector<ErrorGrowth::Observation> byFormula(int count, double soundingError_m) {
    std::vector<ErrorGrowth::Observation> made;
    for (int i = 0; i < count; ++i) {
        const double distance_m = 1.0 + i % 100;
        const double uneven = 0.02 + 0.003 * (i % 37);
        const double slope = 0.001 * (i % 50);
        const double grown = 3.0 * std::sqrt(distance_m) * uneven;
        made.push_back(
            {{distance_m, uneven, slope}, std::hypot(grown, 1.96 * soundingError_m, 2.0 * slope)});
    }
    return made;
}

TEST(ErrorGrowthFormula, ErrorsMadeByItLeadBackToItsCurve) {
    const TrustCurve curve = ErrorGrowth::from(byFormula(400, 0.08), 0.08).curve();
    EXPECT_NEAR(curve.factor, 3.0, 1e-6);
    EXPECT_DOUBLE_EQ(curve.ofDistance, 0.5);
    EXPECT_DOUBLE_EQ(curve.ofUnevenness, 1.0);
    EXPECT_NEAR(curve.floor_m, 1.96 * 0.08, 1e-12);
    EXPECT_DOUBLE_EQ(curve.farthest_m, 91.0) << "that nine in ten keep within";
}

TEST(ErrorGrowthFormula, CountsTheNoiseHalfOnADenselySoundedWaterAndIsCommonForTooFew) {
    EXPECT_NEAR(ErrorGrowth::from(byFormula(1799, 0.1), 0.1).curve().floor_m, 0.196, 1e-12);
    EXPECT_NEAR(ErrorGrowth::from(byFormula(1800, 0.1), 0.1).curve().floor_m, 0.098, 1e-12);
    TrustCurve common;
    common.floor_m = 0.196;
    EXPECT_EQ(ErrorGrowth::from(byFormula(39, 0.1), 0.1).curve(), common);
    EXPECT_NE(ErrorGrowth::from(byFormula(40, 0.1), 0.1).curve().factor, common.factor);
    EXPECT_EQ(common.factor, 6.0);
    EXPECT_EQ(common.ofDistance, 0.5);
    EXPECT_EQ(common.ofUnevenness, 1.0);
}

TEST(ErrorGrowthFormula, LeavesOneInTwentyOfWhatIsToComeAboveIt) {
    std::vector<ErrorGrowth::Observation> errors;
    for (int i = 1; i <= 99; ++i) {
        errors.push_back({{1.0, 1.0, 0.0}, static_cast<double>(i)});
    }
    EXPECT_NEAR(ErrorGrowth::from(errors, 0.0).curve().factor, 95.0, 1e-9);
}

TEST(Unevenness, IsTheSlopeHalfItsScatterAndAHundredth) {
    const support::MadeUpWater water = support::plane(400.0, 5.0, 5.0, 5.0);
    const ActiveCells cells = ActiveCells::of(water.mask);
    const auto laid = [&](const support::Bottom& bottom) {
        Field depth_m(cells.places(), 0.0);
        for (const ActiveCells::Run& run : cells.runs()) {
            for (int col = run.begin; col < run.end; ++col) {
                depth_m[cells.place(col, run.row)] = bottom(water.mask.frame().centre(
                    {col - ActiveCells::padding, run.row - ActiveCells::padding}));
            }
        }
        return surface::solver::unevennessOf(cells, depth_m, 1);
    };
    const auto at = [&](const Field& field, geo::WaterPoint p) {
        const grid::Cell cell = water.mask.frame().cellOf(p);
        return field[cells.place(cell.col + ActiveCells::padding, cell.row + ActiveCells::padding)];
    };
    const Field even = laid([](geo::WaterPoint p) { return 50.0 + 0.06 * p.x_m + 0.08 * p.y_m; });
    EXPECT_NEAR(at(even, {2.5, 2.5}), 0.11, 1e-6);
    const Field roof = laid([](geo::WaterPoint p) { return 5.0 + 0.1 * std::abs(p.x_m - 2.5); });
    EXPECT_NEAR(at(roof, {200.0, 0.0}), 0.11, 1e-3) << "even, although the roof is not";
    EXPECT_NEAR(at(roof, {2.5, 0.0}), 0.16, 0.01) << "the mean of both slopes is none";
    // Level, but a steep bank within 300 m: half of the mean round about.
    const Field bank = laid([](geo::WaterPoint p) { return 5.0 + 0.5 * std::max(p.x_m, 0.0); });
    EXPECT_GT(at(bank, {-90.0, 0.0}), 0.05);
    EXPECT_NEAR(at(bank, {200.0, 0.0}), 0.51, 0.01);
}

} // namespace
