// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/surroundings.h"

#include "tests/support/made_up_day.h"

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using structure::ZoneKind;
using units::Length;

class SurroundingsOfADay : public testing::Test {
protected:
    [[nodiscard]] marks::Surroundings at(WaterPoint p, double cast_m = 30.0) const {
        return marks::surroundingsOf(day_.input(), p, Length::metres(cast_m));
    }
    support::MadeUpDay day_;
};

/// A place on the line where down_m() is `off_m`.
WaterPoint onSlope(double off_m, double along_m) {
    const double d = 21.0 + off_m;
    return {0.8 * d - 0.6 * along_m, 0.6 * d + 0.8 * along_m};
}

TEST_F(SurroundingsOfADay, MeasureTheChordOfAnEdgeThroughTheCircle) {
    EXPECT_NEAR(at(onSlope(-13.0, 0.0)).dropOff_m, 60.0, 0.5);
    // 18 m off the line: half chord sqrt(30^2 - 18^2) = 24.
    EXPECT_NEAR(at(onSlope(-31.0, 0.0)).dropOff_m, 48.0, 0.5);
    EXPECT_EQ(at(onSlope(-60.0, 0.0)).dropOff_m, 0.0);
}

TEST_F(SurroundingsOfADay, MeasureWeedEdgesApartFromDropOffs) {
    const auto around = at(onSlope(-120.0, 0.0));
    EXPECT_NEAR(around.weedEdge_m, 60.0, 0.5);
    EXPECT_EQ(around.dropOff_m, 0.0);
}

TEST_F(SurroundingsOfADay, TellDepthsAsTheFormulaHasThem) {
    const WaterPoint p = onSlope(-13.0, 0.0);
    const auto around = at(p);
    EXPECT_NEAR(around.depth.inMetres(), support::MadeUpDay::bottomAt(p), 0.1);
    EXPECT_NEAR(around.shallowest.inMetres(), support::MadeUpDay::bottomAt(onSlope(-43.0, 0.0)),
                0.25);
    EXPECT_LE(around.deepest.inMetres(), day_.bands.limit().inMetres());
}

TEST_F(SurroundingsOfADay, CountLandAndDeepWaterAsNotFishable) {
    EXPECT_NEAR(at({-150.0, -50.0}).fishableShare, 1.0, 1e-9);
    EXPECT_EQ(at({250.0, -50.0}).fishableShare, 0.0) << "all below the limit";
    // A place 10 m from a straight shore, cast 30: the segment beyond takes 0.2923 of the circle.
    const support::MadeUpWater flat = support::plane(200.0, 4.0, 4.0, 1.0);
    const structure::ZoneMap none = support::noZones(flat);
    const rods::Ground ground(flat.depth, units::Depth::metres(9.0), nullptr, none, none);
    const grid::Grid<float> trust(flat.depth.frame(), 0.1F);
    const marks::MarkInput input{.frame = flat.frame,
                                 .outline = flat.outline,
                                 .ground = ground,
                                 .bands = day_.bands,
                                 .sections = day_.sections,
                                 .trust_m = trust,
                                 .isGuess = nullptr,
                                 .learned = nullptr,
                                 .waveHeightAt = {}};
    const auto around = marks::surroundingsOf(input, {190.0, 0.0}, Length::metres(30.0));
    // The cells that the shore passes through count as water: a column of 57 in 2828.
    EXPECT_NEAR(around.fishableShare, 1.0 - 0.2923, 0.025);
}

TEST_F(SurroundingsOfADay, DoNotCountWaterTooShallowForABait) {
    // Depth grows from 0 in the west by 1 m in 20 m: below half a metre as far as 10 m out.
    const support::MadeUpWater bank = support::plane(100.0, 0.0, 10.0, 1.0);
    const structure::ZoneMap none = support::noZones(bank);
    const rods::Ground ground(bank.depth, units::Depth::metres(9.0), nullptr, none, none);
    const grid::Grid<float> trust(bank.depth.frame(), 0.1F);
    const marks::MarkInput input{.frame = bank.frame,
                                 .outline = bank.outline,
                                 .ground = ground,
                                 .bands = day_.bands,
                                 .sections = day_.sections,
                                 .trust_m = trust,
                                 .isGuess = nullptr,
                                 .learned = nullptr,
                                 .waveHeightAt = {}};
    const auto around = marks::surroundingsOf(input, {-80.0, 0.0}, Length::metres(20.0));
    EXPECT_GE(around.shallowest.inMetres(), 0.5);
    // The segment of the circle beyond the line 10 m west takes 0.1955 of it.
    EXPECT_NEAR(around.fishableShare, 1.0 - 0.1955, 0.02);
}

TEST_F(SurroundingsOfADay, FindTheWayUphill) {
    const auto around = at(onSlope(0.0, 0.0));
    // The slope falls along (0.8, 0.6), so it rises the other way.
    EXPECT_LT(around.riseEast, 0.0);
    EXPECT_NEAR(around.riseNorth / around.riseEast, 0.75, 0.1);
}

TEST_F(SurroundingsOfADay, MeasureAFeatureByItsFishableArea) {
    const auto around = at({171.0, 57.0});
    EXPECT_EQ(around.feature, ZoneKind::hump);
    double expected_m2 = 0.0;
    for (const std::size_t i : day_.zones.zones[1].cells) {
        const grid::Cell c = day_.water.depth.frame().cellAt(i);
        expected_m2 += day_.ground.isFishable(c) ? day_.water.depth.frame().cellArea_m2() : 0.0;
    }
    EXPECT_GT(expected_m2, 500.0);
    EXPECT_NEAR(around.featureArea_m2, expected_m2, 1e-9);
}

TEST_F(SurroundingsOfADay, NameEveryKindWithinTheCastOnce) {
    const auto kinds = at(onSlope(-25.0, 0.0)).kinds;
    EXPECT_EQ(kinds, (std::vector{ZoneKind::dropOff, ZoneKind::shelf}));
}

TEST_F(SurroundingsOfADay, KnowClosedWaterWithinTheCast) {
    EXPECT_TRUE(at({-160.0, 100.0}).isClosedNear);
    EXPECT_FALSE(at({-100.0, 100.0}).isClosedNear);
}

TEST_F(SurroundingsOfADay, TellHowMuchIsAGuess) {
    EXPECT_EQ(at({-150.0, -50.0}).guessShare, 0.0);
    EXPECT_NEAR(at({-150.0, -141.0}).guessShare, 0.5, 0.1);
    EXPECT_GT(at({-150.0, -200.0}).trust.inMetres(), 1.0);
}

TEST_F(SurroundingsOfADay, AreEmptyOnLand) {
    const auto around = at({0.0, 900.0});
    EXPECT_EQ(around.fishableShare, 0.0);
    EXPECT_TRUE(around.kinds.empty());
}

TEST_F(SurroundingsOfADay, LookAtTheOwnCellForACastShorterThanIt) {
    EXPECT_EQ(at({-150.5, -50.5}, 0.5).fishableShare, 1.0);
}

} // namespace
