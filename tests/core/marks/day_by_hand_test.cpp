// SPDX-License-Identifier: GPL-3.0-or-later
// Order and stays as the user wants them: kept as they are, and the rest of the day shared out.
#include "core/marks/order_day.h"

#include <cmath>
#include <limits>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using marks::DayInput;
using marks::DayPlan;
using testing::ElementsAre;

const units::Moment eight =
    units::Moment(std::chrono::sys_days(std::chrono::year(2026) / 10 / 3)) + 8h;

/// Four stops on a line, 900 m apart (ten minutes at the usual speed), launched at the first.
DayInput onALine() {
    DayInput input;
    for (int k = 0; k < 4; ++k) {
        input.stops.push_back({k + 1, 0.8 - 0.1 * k});
        input.fromLaunch_m.push_back(900.0 * k);
        std::vector<double> row;
        for (int j = 0; j < 4; ++j) {
            row.push_back(900.0 * std::abs(k - j));
        }
        input.between_m.push_back(row);
    }
    input.start = eight;
    input.end = eight + 8h;
    return input;
}

DayPlan planOf(const DayInput& input) {
    base::Progress progress;
    return marks::orderDay(input, {}, progress).value();
}

std::vector<int> ranksOf(const DayPlan& plan) {
    std::vector<int> ranks;
    for (const marks::DayStop& stop : plan.stops) {
        ranks.push_back(stop.rank);
    }
    return ranks;
}

TEST(DayByHand, GoesInTheOrderThatTheUserGaveWithTimesAndWaysToIt) {
    DayInput input = onALine();
    EXPECT_FALSE(planOf(input).isOrderByHand);
    input.byHand = {2, 0, 3, 1};
    const DayPlan plan = planOf(input);
    EXPECT_TRUE(plan.isOrderByHand);
    EXPECT_THAT(ranksOf(plan), ElementsAre(3, 1, 4, 2));
    // Moves of 2, 2, 3 and 2 times 900 m, home another 900 m: 100 minutes of 8 hours.
    EXPECT_NEAR(plan.moves.inMetres(), 9000.0, 1e-9);
    EXPECT_EQ(plan.stops[0].arrive, eight + 20min);
    EXPECT_EQ(plan.stops[0].leave, eight + 20min + 95min);
    EXPECT_EQ(plan.stops[0].stay, 85min) << "but for ten minutes at the ropes";
    EXPECT_EQ(plan.stops[1].arrive, plan.stops[0].leave + 20min);
    EXPECT_EQ(plan.stops[2].move, units::Length::metres(2700.0));
    EXPECT_EQ(plan.stops[3].leave, eight + 8h - 10min);
}

TEST(DayByHand, LeavesOutOnlyWhatThereIsNoWayOrNoTimeFor) {
    DayInput input = onALine();
    input.byHand = {3, 2, 1, 0};
    input.end = eight + 170min; // A stop takes 40 minutes; one has to go.
    DayPlan plan = planOf(input);
    EXPECT_THAT(ranksOf(plan), ElementsAre(3, 2, 1)) << "the least of them";
    EXPECT_THAT(plan.leftOut, ElementsAre(4));
    EXPECT_TRUE(plan.isOrderByHand);
    input = onALine();
    input.byHand = {3, 2, 1, 0};
    for (std::size_t k = 0; k < 4; ++k) {
        const double way_m = k == 1 ? 0.0 : std::numeric_limits<double>::infinity();
        input.between_m[1][k] = input.between_m[k][1] = way_m;
    }
    plan = planOf(input);
    EXPECT_THAT(ranksOf(plan), ElementsAre(4, 3, 1));
    EXPECT_THAT(plan.leftOut, ElementsAre(2));
}

TEST(DayByHand, StaysAsLongOnAMarkAsTheUserWantsAndSharesOutTheRest) {
    DayInput input = onALine();
    input.byHand = {0, 1, 2, 3};
    input.stops[1].stay = 3h;
    const DayPlan plan = planOf(input);
    EXPECT_EQ(plan.stops[1].stay, 3h);
    EXPECT_TRUE(plan.stops[1].isStayByHand);
    EXPECT_EQ(plan.stops[1].leave - plan.stops[1].arrive, 3h + 10min);
    // 8 h less an hour of moves and 3 h 10: 230 minutes for three, less ten at the ropes.
    for (const std::size_t k : {0U, 2U, 3U}) {
        EXPECT_EQ(plan.stops[k].stay, std::chrono::seconds(4000)) << k;
        EXPECT_FALSE(plan.stops[k].isStayByHand);
    }
    EXPECT_NEAR(std::chrono::duration<double>(plan.stops[3].leave - (eight + 8h - 30min)).count(),
                0.0, 1.0);
}

TEST(DayByHand, AStayOfOneMarkGoesBeforeThatWantedOfAll) {
    DayInput input = onALine();
    input.byHand = {0, 1, 2, 3};
    input.stay = 60min;
    input.stops[2].stay = 20min;
    const DayPlan plan = planOf(input);
    EXPECT_EQ(plan.stops[2].stay, 20min) << "shorter than the least, for the user wants it";
    for (const std::size_t k : {0U, 1U, 3U}) {
        EXPECT_EQ(plan.stops[k].stay, 60min);
    }
    EXPECT_EQ(plan.stops[3].leave, eight + 30min + 3 * 70min + 30min) << "the day ends earlier";
}

TEST(DayByHand, LongStaysPushTheLeastMarksOutWhoeverOrders) {
    DayInput input = onALine();
    input.stops[0].stay = 6h;
    const DayPlan plan = planOf(input);
    EXPECT_FALSE(plan.isOrderByHand) << "a stay alone is no order";
    EXPECT_THAT(plan.leftOut, ElementsAre(3, 4));
    EXPECT_EQ(plan.stops.size(), 2U);
}

TEST(DayByHand, AnOrderThatDoesNotFitAndAStayOutOfRangeAreRefused) {
    base::Progress progress;
    for (const std::vector<std::size_t>& wrong :
         {std::vector<std::size_t>{0, 1, 2}, {0, 1, 2, 2}, {0, 1, 2, 4}, {0, 1, 2, 3, 0}}) {
        DayInput input = onALine();
        input.byHand = wrong;
        const auto plan = marks::orderDay(input, {}, progress);
        ASSERT_FALSE(plan);
        EXPECT_EQ(plan.error().kind, base::ErrorKind::wrongUse);
    }
    for (const auto stay : {std::chrono::seconds(299), std::chrono::seconds(43'201)}) {
        DayInput input = onALine();
        input.stops[3].stay = stay;
        EXPECT_FALSE(marks::orderDay(input, {}, progress));
    }
}

} // namespace
