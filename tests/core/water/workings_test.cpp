// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/workings.h"

#include "core/water/steps/plan_day.h"
#include "tests/support/planned_water.h"

#include <gtest/gtest.h>

namespace {

using marks::FactorKind;
using water::PlannedDay;
using water::Workings;

/// The plane with a few trips in its log.
class Plans : public testing::Test {
protected:
    Plans() {
        made_.derived.stamps[water::Step::sections] = water::Stamp(1);
        for (unsigned day = 1; day <= 6; ++day) {
            fish(day, {-200, 20}, 3);
            fish(day, {-20, 90}, 0);
        }
    }

    void fish(unsigned day, geo::WaterPoint place, int fish) {
        logbook::Stay stay;
        stay.start = made_.water.clock.at(std::chrono::year(2026) / 10 / std::chrono::day(day),
                                          std::chrono::hours(9));
        stay.end = stay.start + std::chrono::hours(2);
        stay.place = made_.onEarth(place);
        stay.rods = 3;
        stay.runs.resize(static_cast<std::size_t>(fish));
        for (logbook::Fish& one : stay.runs) {
            one.time = stay.start + std::chrono::minutes(30);
        }
        made_.water.log.push_back(stay);
    }

    PlannedDay planned(Workings* workings) {
        base::Progress quiet;
        return water::planDay(made_.water, made_.derived, made_.water.plan, quiet, workings)
            .value();
    }

    void expectTheSamePlan(const char* what) {
        const PlannedDay fresh = planned(nullptr);
        const PlannedDay again = planned(&workings_);
        ASSERT_EQ(again.marks.size(), fresh.marks.size()) << what;
        for (std::size_t k = 0; k < fresh.marks.size(); ++k) {
            const marks::Mark& a = again.marks[k];
            const marks::Mark& b = fresh.marks[k];
            EXPECT_EQ(a.place.x_m, b.place.x_m) << what << ' ' << k;
            EXPECT_EQ(a.place.y_m, b.place.y_m) << what << ' ' << k;
            EXPECT_EQ(a.score, b.score) << what << ' ' << k;
            EXPECT_EQ(a.name, b.name) << what << ' ' << k;
            EXPECT_EQ(a.isPinned, b.isPinned) << what << ' ' << k;
            EXPECT_EQ(a.depth, b.depth) << what << ' ' << k;
            EXPECT_EQ(a.anchors, b.anchors) << what << ' ' << k;
            EXPECT_EQ(a.spread.rods.size(), b.spread.rods.size()) << what << ' ' << k;
        }
        EXPECT_EQ(again.meanPer10RodHours, fresh.meanPer10RodHours) << what;
        EXPECT_EQ(again.unanchorable, fresh.unanchorable) << what;
    }

    support::PlannedWater made_;
    Workings workings_;
};

TEST_F(Plans, AreTheSameWithWorkingsWhateverWasAskedBefore) {
    expectTheSamePlan("first");
    expectTheSamePlan("again");
    marks::Plan& plan = made_.water.plan;
    plan.weights.set(FactorKind::dropOff, 2.0);
    plan.weights.set(FactorKind::weedEdge, 0.0);
    expectTheSamePlan("other weights");
    plan.tryNew = 1.0;
    expectTheSamePlan("to try");
    plan.day.wind.from = units::Bearing::degrees(310.0);
    expectTheSamePlan("another wind");
    plan.tackle.cast = units::Length::metres(45.0);
    expectTheSamePlan("a longer cast");
    plan.tackle.bowRope = units::Length::metres(14.0);
    expectTheSamePlan("a shorter rope");
    plan.day.levelChange = units::Length::metres(0.2);
    expectTheSamePlan("another level");
    plan.day.day = std::chrono::year(2027) / 5 / 1;
    expectTheSamePlan("another season");
    fish(20, {100, -20}, 9);
    expectTheSamePlan("more fish");
    made_.water.houseRules.closed.clear();
    expectTheSamePlan("all open");
    made_.water.pinnedMarks.clear();
    expectTheSamePlan("no own marks");
    const geo::WaterPoint best = planned(nullptr).marks[0].place;
    made_.water.banned = {water::bannedRound(made_.onEarth(best), units::Length::metres(40.0), {})};
    expectTheSamePlan("the best banned");
    made_.water.banned.clear();
    expectTheSamePlan("the ban lifted");
}

TEST_F(Plans, KeepTheRopesWhereWaterIsBanned) {
    static_cast<void>(planned(&workings_));
    const auto log = workings_.log.what;
    const std::size_t worked = workings_.worked.size();
    made_.water.banned = {
        water::bannedRound(made_.onEarth({0, 0}), units::Length::metres(40.0), {})};
    static_cast<void>(planned(&workings_));
    EXPECT_EQ(workings_.log.what, log);
    EXPECT_GE(workings_.worked.size(), worked) << "what is known of a place stays known";
}

TEST_F(Plans, KeepTheFitTheLookRoundAndTheRopesWhileASliderMoves) {
    static_cast<void>(planned(&workings_));
    const auto log = workings_.log.what;
    const auto looked = workings_.looked.what;
    const std::size_t worked = workings_.worked.size();
    EXPECT_GT(worked, 6U);
    made_.water.plan.weights.set(FactorKind::depth, 1.2);
    static_cast<void>(planned(&workings_));
    EXPECT_EQ(workings_.log.what, log);
    EXPECT_EQ(workings_.looked.what, looked);
    EXPECT_LT(workings_.worked.size(), 2 * worked) << "only what is new is worked out";
}

TEST_F(Plans, KeepNothingOfAWaterWithoutAStamp) {
    made_.derived.stamps.clear();
    static_cast<void>(planned(&workings_));
    const auto log = workings_.log.what;
    static_cast<void>(planned(&workings_));
    EXPECT_NE(workings_.log.what, log);
}

} // namespace
