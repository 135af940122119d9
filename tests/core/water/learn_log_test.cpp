// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/learn_log.h"

#include "core/water/steps/hour_weight.h"
#include "tests/support/given.h"
#include "tests/support/planned_water.h"

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using learning::Group;
using support::given;
using support::PlannedWater;

/// The plane with a log that is laid by each test.
class LearnedLogs : public testing::Test {
protected:
    LearnedLogs()
        : closed_(made_.ground.depth.frame(), 0),
          ground_(made_.ground.depth, units::Depth::metres(6.0), &closed_, *made_.derived.structure,
                  made_.derived.weed->zones) {}

    logbook::Stay& stay(WaterPoint place, units::Day day, double hour, double hours, int fish) {
        logbook::Stay stay;
        stay.start = made_.water.clock.at(day, std::chrono::minutes(std::lround(60.0 * hour)));
        stay.end = stay.start + std::chrono::minutes(std::lround(60.0 * hours));
        stay.place = made_.onEarth(place);
        stay.rods = 2;
        stay.runs.resize(static_cast<std::size_t>(fish));
        for (logbook::Fish& one : stay.runs) {
            one.time = stay.start + (stay.end - stay.start) / 2;
        }
        made_.water.log.push_back(stay);
        return made_.water.log.edit(made_.water.log.size() - 1);
    }

    water::LearnedLog learned() {
        base::Progress quiet;
        return water::learnedFor(
            water::fitLog(made_.water, input(), made_.water.plan, quiet).value(), made_.water.plan);
    }

    [[nodiscard]] marks::MarkInput input() const {
        return {.frame = made_.ground.frame,
                .outline = made_.ground.outline,
                .ground = ground_,
                .bands = *made_.water.settings.bands,
                .sections = *made_.derived.sections,
                .trust_m = made_.derived.drawn->trust.halfWidths_m(),
                .isGuess = nullptr,
                .learned = nullptr,
                .waveHeightAt = {}};
    }

    static units::Day november(unsigned day) {
        return std::chrono::year(2025) / 11 / std::chrono::day(day);
    }

    PlannedWater made_;
    grid::Grid<std::uint8_t> closed_;
    rods::Ground ground_;
};

TEST_F(LearnedLogs, SayNothingWhereNobodyFished) {
    EXPECT_FALSE(learned().learned);
    EXPECT_EQ(learned().stays, 0U);
}

TEST_F(LearnedLogs, CountEveryStayOnceInOnePlaceOrAnother) {
    stay({-200, 20}, november(1), 9.0, 3.0, 1);
    stay({5000, 20}, november(1), 13.0, 3.0, 5);
    stay({-200, 20}, november(2), 9.0, 0.0, 2);
    const water::LearnedLog log = learned();
    EXPECT_EQ(log.stays, 1U);
    EXPECT_EQ(log.elsewhere, 1U);
    EXPECT_EQ(log.withoutEffort, 1U);
    // The five fish of another lake are not this water's.
    EXPECT_LT(given(log.learned).model.mean().rate(), 0.25);
}

TEST_F(LearnedLogs, KnowSectionSeasonKindDepthWindAndHourOfAStay) {
    logbook::Stay& one = stay({-200, 20}, november(1), 8.0, 2.0, 1);
    one.conditions.windFrom = units::Bearing::degrees(90.0);
    one.conditions.windSpeed = units::Speed::metresPerSecond(6.0);
    one.conditions.waterTemperature = units::Temperature::celsius(6.0);
    const learning::CatchModel model = given(learned().learned).model;
    EXPECT_TRUE(model.positionOf(Group::section, 0)) << "west";
    EXPECT_FALSE(model.positionOf(Group::section, 1));
    // The plan is for November 2026: another season, of which nothing is known.
    EXPECT_TRUE(model.positionOf(Group::sectionBySeason, 2));
    EXPECT_EQ(given(learned().learned).season, 3);
    EXPECT_TRUE(
        model.positionOf(Group::kindAt, static_cast<int>(structure::ZoneKind::plateau) + 1));
    EXPECT_TRUE(model.positionOf(Group::wind, 0));
    EXPECT_TRUE(model.positionOf(Group::hour, 4));
    EXPECT_FALSE(model.positionOf(Group::hour, 5));
    // 1.66 m deep, between the knots at 1.5 and 2.2 m.
    EXPECT_TRUE(model.positionOf(Group::depth, 2));
    EXPECT_TRUE(model.positionOf(Group::depthByTemperature, 2));
    EXPECT_FALSE(model.positionOf(Group::depth, 4));
}

TEST_F(LearnedLogs, TakeNoWindAndNoTemperatureThatNobodyNoted) {
    logbook::Stay& one = stay({-200, 20}, november(1), 8.0, 2.0, 1);
    one.conditions.windFrom = units::Bearing::degrees(90.0); // without a speed
    const learning::CatchModel model = given(learned().learned).model;
    EXPECT_FALSE(model.positionOf(Group::wind, 0));
    EXPECT_FALSE(model.positionOf(Group::depthByTemperature, 2));
}

TEST_F(LearnedLogs, CutAStayByItsHoursAndGiveEachWhatWasCaughtInIt) {
    // Two fish at seven, none in the two hours after eight.
    logbook::Stay& one = stay({-200, 20}, november(1), 6.0, 4.0, 2);
    for (logbook::Fish& fish : one.runs) {
        fish.time = one.start + std::chrono::minutes(60);
    }
    const learning::CatchModel model = given(learned().learned).model;
    EXPECT_GT(model.effect({{Group::hour, 3, 1.0}}).rate(), 1.02);
    EXPECT_LT(model.effect({{Group::hour, 4, 1.0}}).rate(), 0.98);
}

TEST_F(LearnedLogs, CountFishAndNotLostRuns) {
    for (unsigned day = 1; day <= 6; ++day) {
        stay({-200, 20}, november(day), 8.0, 2.0, 2);
    }
    const double all = given(learned().learned).model.mean().rate();
    for (std::size_t i = 0; i < made_.water.log.size(); ++i) {
        made_.water.log.edit(i).runs.front().landed = false;
    }
    EXPECT_LT(given(learned().learned).model.mean().rate(), all);
}

TEST_F(LearnedLogs, ShareThePlannedHoursAmongTheirBlocks) {
    stay({-200, 20}, november(1), 8.0, 2.0, 1);
    made_.water.plan.day.start = std::chrono::hours(9);
    made_.water.plan.day.end = std::chrono::hours(13);
    const learning::Features hours = given(learned().learned).hours;
    EXPECT_EQ(hours, (learning::Features{
                         {Group::hour, 4, 0.25}, {Group::hour, 5, 0.5}, {Group::hour, 6, 0.25}}));
    made_.water.plan.tackle.rods = 3;
    made_.water.plan.count = 4;
    EXPECT_NEAR(given(learned().learned).rodHoursOfStay, 3.0, 1e-12);
}

TEST_F(LearnedLogs, WeighHoursByWhatTheLogSaysOfThem) {
    for (unsigned day = 1; day <= 20; ++day) {
        stay({-200, 20}, november(day), 8.0, 2.0, 0);
        stay({-200, 20}, november(day), 14.0, 2.0, 3);
    }
    const auto weight = water::hourWeightOf(learned().learned, made_.water.clock);
    const auto at = [&](double hour) {
        return weight(
            made_.water.clock.at(november(25), std::chrono::minutes(std::lround(60.0 * hour))));
    };
    EXPECT_GT(at(15.9), 1.5 * at(8.1));
    EXPECT_EQ(at(14.0), at(15.9));
    EXPECT_EQ(at(20.5), 1.0) << "nobody has fished then";
    EXPECT_FALSE(water::hourWeightOf(std::nullopt, made_.water.clock));
}

TEST_F(LearnedLogs, StopWhenAsked) {
    struct Stopped : base::Progress {
        [[nodiscard]] bool stopAsked() const override { return true; }
    } stopped;
    stay({-200, 20}, november(1), 8.0, 2.0, 1);
    const auto log = water::fitLog(made_.water, input(), made_.water.plan, stopped);
    ASSERT_FALSE(log);
    EXPECT_EQ(log.error().kind, base::ErrorKind::cancelled);
}

} // namespace
