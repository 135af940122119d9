// SPDX-License-Identifier: GPL-3.0-or-later
// A wind that nobody said is not a calm: what of a plan stands on it, and what then does not.
#include "core/water/steps/day_waves.h"
#include "core/water/steps/plan_day.h"
#include "core/wind/fetch.h"
#include "core/wind/waves.h"
#include "tests/support/given.h"
#include "tests/support/holding.h"
#include "tests/support/planned_water.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using marks::FactorKind;
using support::given;
using support::PlannedWater;
using units::Bearing;
using units::Length;
using units::Speed;

/// The plane without own marks, with a log or without.
PlannedWater plane(bool isLogged = false) {
    PlannedWater made;
    made.water.pinnedMarks.clear();
    for (int day = 1; isLogged && day <= 8; ++day) {
        logbook::Stay stay;
        stay.start = made.water.clock.at(std::chrono::year(2025) / 11 / day, std::chrono::hours(9));
        stay.end = stay.start + std::chrono::hours(3);
        stay.place = made.onEarth({-200, 20.0 * day - 80.0});
        stay.rods = 2;
        stay.conditions.windFrom = Bearing::degrees(120.0);
        stay.conditions.windSpeed = Speed::metresPerSecond(6.0);
        stay.runs.resize(day % 3 == 0 ? 2 : 0);
        made.water.log.push_back(stay);
    }
    return made;
}

water::PlannedDay planOf(const PlannedWater& made) {
    base::Progress quiet;
    return water::planDay(made.water, made.derived, made.water.plan, quiet).value();
}

const marks::Factor& factorOf(const marks::Mark& mark, FactorKind kind) {
    return *std::ranges::find(mark.factors, kind, &marks::Factor::kind);
}

units::Area tooRough(const water::PlannedDay& day) {
    return day.excluded[static_cast<std::size_t>(marks::Exclusion::tooRough)];
}

TEST(WindNotSaid, CountsNeitherWavesNorShelterNorWindwardWithALogOrWithout) {
    for (const bool isLogged : {false, true}) {
        PlannedWater made = plane(isLogged);
        made.water.plan.day.wind = {};
        made.water.plan.weights.set(FactorKind::shelter, 3.0);
        const water::PlannedDay day = planOf(made);
        ASSERT_FALSE(day.marks.empty());
        EXPECT_EQ(day.meanPer10RodHours.has_value(), isLogged);
        for (const marks::Mark& mark : day.marks) {
            EXPECT_EQ(mark.fetch, std::nullopt);
            EXPECT_EQ(mark.waveHeight, std::nullopt);
            EXPECT_EQ(factorOf(mark, FactorKind::windward).times, 1.0);
            EXPECT_EQ(factorOf(mark, FactorKind::windward).because,
                      marks::Reason(marks::WindNotKnown{}));
            EXPECT_EQ(factorOf(mark, FactorKind::shelter).times, 1.0);
            EXPECT_EQ(factorOf(mark, FactorKind::shelter).because,
                      marks::Reason(marks::WavesNotKnown{}));
            EXPECT_FALSE(support::holds<marks::WavesHere>(mark.cautions));
            EXPECT_EQ(mark.anchors.beamPull_N, std::nullopt);
        }
        EXPECT_EQ(tooRough(day), units::Area());
    }
}

TEST(WindNotSaid, IsSaidOfTheListOfTheDayAndOfEveryAnchor) {
    PlannedWater made = plane();
    made.water.plan.day.wind = {};
    const water::PlannedDay day = planOf(made);
    EXPECT_TRUE(support::holds<water::WavesNotCounted>(day.basis));
    EXPECT_EQ(day.cautions.front(), water::DayCaution(water::WindNotSaid{}));
    for (const marks::Mark& mark : day.marks) {
        EXPECT_TRUE(support::holds<anchoring::BowToOpenWater>(mark.anchors.cautions));
        EXPECT_FALSE(support::holds<anchoring::TurnedOffTheWind>(mark.anchors.cautions));
    }
}

TEST(WindNotSaid, IsNotSaidOfACalm) {
    PlannedWater made = plane();
    made.water.plan.day.wind = {Bearing::degrees(120.0), Speed()};
    const water::PlannedDay day = planOf(made);
    EXPECT_FALSE(support::holds<water::WavesNotCounted>(day.basis));
    EXPECT_FALSE(support::holds<water::WindNotSaid>(day.cautions));
    for (const marks::Mark& mark : day.marks) {
        EXPECT_EQ(mark.waveHeight, Length());
        EXPECT_EQ(factorOf(mark, FactorKind::shelter).value, marks::waveValue(Length(), 1.3 / 1.7));
        EXPECT_EQ(factorOf(mark, FactorKind::windward).because, marks::Reason(marks::NoWind{}));
        EXPECT_FALSE(support::holds<anchoring::BowToOpenWater>(mark.anchors.cautions));
    }
}

TEST(WindNotSaid, OfADirectionWithoutASpeedTheBowIsLaidToItAndNoWavesAreCounted) {
    PlannedWater made = plane();
    made.water.plan.day.wind = {Bearing::degrees(120.0), std::nullopt};
    const water::PlannedDay day = planOf(made);
    EXPECT_TRUE(support::holds<water::WavesNotCounted>(day.basis));
    for (const marks::Mark& mark : day.marks) {
        EXPECT_EQ(mark.waveHeight, std::nullopt);
        EXPECT_LT(mark.anchors.lie.heading.angleTo_deg(
                      Bearing::degrees(120.0 + mark.anchors.offTheWind_deg)),
                  1e-6);
        EXPECT_FALSE(support::holds<anchoring::BowToOpenWater>(mark.anchors.cautions));
    }
}

/// Of 600 by 400 m and 4 m deep all over.
struct Tank {
    Tank()
        : made(support::madeUpWater(
              {{support::rectangle(-300, -200, 300, 200), {}}}, [](WaterPoint) { return 4.0; },
              5.0)) {}
    [[nodiscard]] water::Exposure at(WaterPoint p, const logbook::Wind& wind) const {
        return water::exposureAt(made.outline, made.depth, p, wind);
    }
    support::MadeUpWater made;
};

TEST(Exposure, IsToTheWindWhereItIsKnown) {
    const Tank tank;
    const logbook::Wind wind{Bearing::degrees(90.0), Speed::metresPerSecond(8.0)};
    const water::Exposure one = tank.at({-200, 0}, wind);
    EXPECT_EQ(one.side, Bearing::degrees(90.0));
    const Length fetch = wind::fetchAt(tank.made.outline, {-200, 0}, one.side).effective;
    EXPECT_EQ(given(one.waves).fetch, fetch);
    EXPECT_NEAR(given(one.waves).height.inMetres(),
                wind::wavesOverDepth(Speed::metresPerSecond(8.0), fetch, units::Depth::metres(4.0))
                    .significantHeight.inMetres(),
                1e-6);
}

TEST(Exposure, ToAVariableWindIsThatToTheSideOfTheHighestWaves) {
    const Tank tank;
    const logbook::Wind variable{std::nullopt, Speed::metresPerSecond(8.0)};
    for (const WaterPoint p : {WaterPoint{-250, 0}, WaterPoint{250, 30}, WaterPoint{120, -180}}) {
        const water::Exposure worst = tank.at(p, variable);
        for (int side_deg = 0; side_deg < 360; side_deg += 6) {
            const auto one = tank.at(p, {Bearing::degrees(side_deg), variable.speed});
            EXPECT_LE(given(one.waves).height, given(worst.waves).height) << side_deg;
        }
        EXPECT_EQ(given(tank.at(p, {worst.side, variable.speed}).waves).height,
                  given(worst.waves).height);
    }
    EXPECT_NEAR(tank.at({-250, 0}, variable).side.inDegrees(), 90.0, 1e-9) << "along the water";
}

TEST(Exposure, ToNobodysWindIsThatToTheLongestOpenWater) {
    const Tank tank;
    EXPECT_NEAR(tank.at({-250, 0}, {}).side.inDegrees(), 90.0, 1e-9);
    EXPECT_NEAR(tank.at({250, 0}, {}).side.inDegrees(), 270.0, 1e-9);
    EXPECT_FALSE(tank.at({250, 0}, {}).waves.has_value());
    const auto calm = tank.at({250, 0}, {std::nullopt, Speed()});
    EXPECT_EQ(given(calm.waves).height, Length());
    EXPECT_NEAR(calm.side.inDegrees(), 270.0, 1e-9);
}

TEST(DayWaves, OfAVariableWindAreThoseOfTheWorstSideAndOfNobodysWindNone) {
    const Tank tank;
    const WaterPoint middleOfASquare{-220, 20};
    const logbook::Wind variable{std::nullopt, Speed::metresPerSecond(12.0)};
    water::DayWaves waves(tank.made.outline, tank.made.depth, variable);
    EXPECT_EQ(waves.heightNear(middleOfASquare),
              given(tank.at(middleOfASquare, variable).waves).height);
    EXPECT_TRUE(waves.mayExceed(Length::metres(0.05)));
    water::DayWaves unknown(tank.made.outline, tank.made.depth, {});
    EXPECT_FALSE(unknown.mayExceed(Length::metres(0.05)));
    EXPECT_EQ(unknown.heightNear(middleOfASquare), Length());
}

} // namespace
