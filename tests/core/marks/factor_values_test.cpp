// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/beliefs.h"
#include "core/marks/factor_values.h"

#include "tests/support/made_up_day.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace {

using units::Bearing;
using units::Length;
using units::Speed;

logbook::Wind wind(double from_deg, double speed_m_s) {
    return {Bearing::degrees(from_deg), Speed::metresPerSecond(speed_m_s)};
}

/// Values of a map at rising arguments must themselves rise (or fall) and stay within 0 and 1.
void expectMonotone(const std::function<double(double)>& map, double from, double to, bool rises) {
    double before = map(from);
    for (double x = from; x <= to; x += (to - from) / 200.0) {
        const double now = map(x);
        EXPECT_GE(now, 0.0);
        EXPECT_LE(now, 1.0);
        EXPECT_TRUE(rises ? now >= before : now <= before) << x;
        before = now;
    }
    EXPECT_NE(map(from), map(to));
}

TEST(FactorValues, RiseWithWhatSpeaksForAMarkAndFallWithWhatSpeaksAgainst) {
    const Length cast = Length::metres(30.0);
    expectMonotone([](double x) { return marks::depthValue(x); }, 0.0, 1.0, true);
    expectMonotone([&](double x) { return marks::edgeValue(x, cast); }, 0.0, 500.0, true);
    expectMonotone([&](double x) { return marks::featureValue(x, cast); }, 0.0, 3000.0, true);
    expectMonotone([](double x) { return marks::windwardValue(Speed::metresPerSecond(x)); }, -20.0,
                   20.0, true);
    expectMonotone([](double x) { return marks::waveValue(Length::metres(x), 0.0); }, 0.0, 2.0,
                   false);
    expectMonotone([](double x) { return marks::trustValue(Length::metres(x)); }, 0.0, 5.0, false);
}

TEST(FactorValues, GiveAStraightEdgeThroughTheMiddleWhatTheyPromise) {
    EXPECT_NEAR(marks::edgeValue(60.0, Length::metres(30.0)), 0.8647, 1e-4);
    EXPECT_EQ(marks::edgeValue(0.0, Length::metres(30.0)), 0.0);
}

TEST(WaveValue, RisesToTheHeightThatIsLikedAndFallsFromThere) {
    for (const double ripple : {0.0, 0.25, 0.5, 1.0}) {
        const double peak_m = 0.2 * ripple;
        EXPECT_EQ(marks::waveValue(Length::metres(peak_m), ripple), 1.0) << ripple;
        double before = 1.0;
        for (double away_m = 0.01; away_m < 1.0; away_m += 0.01) {
            const double above = marks::waveValue(Length::metres(peak_m + away_m), ripple);
            EXPECT_LT(above, before);
            before = above;
        }
        for (double height_m = 0.0; height_m + 0.006 < peak_m; height_m += 0.01) {
            EXPECT_LT(marks::waveValue(Length::metres(height_m), ripple),
                      marks::waveValue(Length::metres(height_m + 0.005), ripple));
        }
    }
}

TEST(Windward, IsFullWhereTheWindBlowsStraightUpTheSlope) {
    // Bottom rises to the east; a westerly blows up it.
    EXPECT_NEAR(marks::windUpSlope(wind(270.0, 6.0), 0.1, 0.0).inMetresPerSecond(), 6.0, 1e-9);
    EXPECT_NEAR(marks::windUpSlope(wind(90.0, 6.0), 0.1, 0.0).inMetresPerSecond(), -6.0, 1e-9);
    EXPECT_NEAR(marks::windUpSlope(wind(180.0, 6.0), 0.1, 0.0).inMetresPerSecond(), 0.0, 1e-9);
}

TEST(Windward, CountsAGentleSlopeForLess) {
    EXPECT_NEAR(marks::windUpSlope(wind(270.0, 6.0), 0.01, 0.0).inMetresPerSecond(), 1.2, 1e-9);
    EXPECT_EQ(marks::windUpSlope(wind(270.0, 6.0), 0.0, 0.0).inMetresPerSecond(), 0.0);
}

TEST(Windward, IsAHalfWithoutWind) {
    EXPECT_EQ(marks::windwardValue(Speed()), 0.5);
}

marks::LogSays saying(double here, double mean, double width) {
    return {{here, 0.5 * here, 2.0 * here}, mean, width};
}

std::vector<marks::Factor> factorsOf(const support::MadeUpDay& day,
                                     const marks::Surroundings& around,
                                     const std::optional<marks::WaveState>& waves) {
    return marks::factorsOf(day.ground.limit(), around, day.plan, waves, std::nullopt);
}

const marks::Factor* factorIn(const std::vector<marks::Factor>& factors, marks::FactorKind kind) {
    const auto found = std::ranges::find(factors, kind, &marks::Factor::kind);
    return found == factors.end() ? nullptr : &*found;
}

TEST(WindNotSaid, IsAHalfWithItsReasonForWindwardAndShelter) {
    support::MadeUpDay day;
    const auto around = marks::surroundingsOf(day.input(), {10.0, 0.0}, Length::metres(30.0));
    day.plan.day.wind = {};
    const auto nothing = factorsOf(day, around, std::nullopt);
    EXPECT_EQ(factorIn(nothing, marks::FactorKind::windward)->value, 0.5);
    EXPECT_EQ(factorIn(nothing, marks::FactorKind::windward)->because,
              marks::Reason(marks::WindNotKnown{}));
    EXPECT_EQ(factorIn(nothing, marks::FactorKind::shelter)->value, 0.5);
    EXPECT_EQ(factorIn(nothing, marks::FactorKind::shelter)->because,
              marks::Reason(marks::WavesNotKnown{}));
    day.plan.day.wind.from = Bearing::degrees(270.0);
    EXPECT_EQ(factorIn(factorsOf(day, around, std::nullopt), marks::FactorKind::windward)->because,
              marks::Reason(marks::WindNotKnown{}))
        << "a direction alone blows on to nothing";
    day.plan.day.wind = {std::nullopt, Speed::metresPerSecond(6.0)};
    const auto variable = factorsOf(day, around, std::nullopt);
    EXPECT_EQ(factorIn(variable, marks::FactorKind::windward)->value, 0.5);
    EXPECT_EQ(factorIn(variable, marks::FactorKind::windward)->because,
              marks::Reason(marks::WindNotKnown{}));
    EXPECT_EQ(factorIn(variable, marks::FactorKind::shelter), nullptr) << "not yet worked out";
    day.plan.day.wind.speed = Speed();
    EXPECT_EQ(factorIn(factorsOf(day, around, std::nullopt), marks::FactorKind::windward)->because,
              marks::Reason(marks::NoWind{}))
        << "a calm comes from nowhere";
}

TEST(Record, IsAHalfForThePlaceThatIsLikeTheWholeWater) {
    EXPECT_DOUBLE_EQ(marks::recordValue(saying(1.4, 1.4, 0.3)), 0.5);
    EXPECT_DOUBLE_EQ(marks::recordValue(saying(1.4, 0.7, 0.3)), 2.0 / 3.0);
}

TEST(Record, IsAHalfWhereTheLogIsSilent) {
    EXPECT_EQ(marks::recordValue(std::nullopt), 0.5);
    EXPECT_EQ(marks::recordValue(saying(0.0, 0.0, 0.0)), 0.5);
}

TEST(LessTried, IsFullForAPlaceThatNobodyTriedAndFallsWithWhatIsKnown) {
    EXPECT_EQ(marks::lessTriedValue(std::nullopt), 1.0);
    EXPECT_GT(marks::lessTriedValue(saying(1, 1, 1.0)), marks::lessTriedValue(saying(1, 1, 0.1)));
}

// The score was a weighted mean from 0 to 1; now it is how many times the water's mean is expected.
TEST(Score, IsTheProductOfWhatTheFactorsMultiplyBy) {
    const std::vector<marks::Factor> factors{{marks::FactorKind::depth, 0.5, 1.0, {}, 1.5},
                                             {marks::FactorKind::dropOff, 1.0, 3.0, {}, 0.8},
                                             {marks::FactorKind::hour, 0.0, 0.0, {}, 2.0}};
    EXPECT_DOUBLE_EQ(marks::scoreOf(factors), 2.4);
}

TEST(Score, IsTheWatersMeanWhereNothingMatters) {
    EXPECT_EQ(marks::scoreOf({{marks::FactorKind::depth, 0.5, 0.0, {}}}), 1.0);
    EXPECT_EQ(marks::scoreOf({}), 1.0);
}

TEST(Factors, ComeInOrderWithTheirWeightsAndReasons) {
    const support::MadeUpDay day;
    const geo::WaterPoint place{10.0, 0.0};
    const auto around = marks::surroundingsOf(day.input(), place, Length::metres(30.0));
    const auto factors =
        factorsOf(day, around, marks::WaveState{Length::metres(300), Length::metres(0.12)});
    ASSERT_EQ(factors.size(), marks::allFactorKinds.size());
    const marks::Weights weights;
    for (std::size_t k = 0; k < factors.size(); ++k) {
        EXPECT_EQ(factors[k].kind, marks::allFactorKinds[k]);
        EXPECT_EQ(factors[k].weight, marks::countingWeight(weights, factors[k].kind));
        EXPECT_NE(factors[k].because, marks::Reason());
    }
    EXPECT_TRUE(std::holds_alternative<marks::DropOffNear>(factors[1].because));
    EXPECT_EQ(factors[5].because,
              marks::Reason(marks::WaveState{Length::metres(300), Length::metres(0.12)}));
}

TEST(Factors, GiveNoTrustToDepthsOfWhichNobodyKnowsHowFarTheyAreOff) {
    const support::MadeUpDay day;
    marks::Surroundings around;
    around.trust = Length::metres(std::nan(""));
    const auto factors = factorsOf(day, around, std::nullopt);
    const auto trust = std::ranges::find(factors, marks::FactorKind::trust, &marks::Factor::kind);
    ASSERT_NE(trust, factors.end());
    EXPECT_EQ(trust->value, 0.0);
    EXPECT_EQ(trust->because, marks::Reason(marks::DepthsKnownTo{}));
}

TEST(Factors, LeaveShelterOutUntilTheWavesAreKnown) {
    const support::MadeUpDay day;
    for (const marks::Factor& factor : factorsOf(day, {}, std::nullopt)) {
        EXPECT_NE(factor.kind, marks::FactorKind::shelter);
    }
}

} // namespace
