// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/order_day.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>
#include <set>

#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using marks::DayInput;
using marks::DayPlan;

const units::Moment eight =
    units::Moment(std::chrono::sys_days(std::chrono::year(2026) / 10 / 3)) + 8h;

/// Stops on a plane with straight ways between them.
DayInput dayOf(const std::vector<geo::WaterPoint>& places, const std::vector<double>& scores,
               std::optional<geo::WaterPoint> launch = geo::WaterPoint{0, 0}) {
    DayInput input;
    for (std::size_t k = 0; k < places.size(); ++k) {
        input.stops.push_back({static_cast<int>(k) + 1, scores[k]});
        std::vector<double> row;
        for (const geo::WaterPoint other : places) {
            row.push_back(geo::distance_m(places[k], other));
        }
        input.between_m.push_back(row);
        if (launch) {
            input.fromLaunch_m.push_back(geo::distance_m(*launch, places[k]));
        }
    }
    input.start = eight;
    input.end = eight + 8h;
    return input;
}

DayInput scatteredDay(std::mt19937& random, std::size_t count) {
    std::uniform_real_distribution<double> place(-900.0, 900.0);
    std::uniform_real_distribution<double> score(0.2, 0.9);
    std::vector<geo::WaterPoint> places;
    std::vector<double> scores;
    for (std::size_t k = 0; k < count; ++k) {
        places.push_back({place(random), place(random)});
        scores.push_back(score(random));
    }
    DayInput input = dayOf(places, scores);
    input.hourWeight = [](units::Moment moment) {
        return 1.0 +
               0.6 * std::cos(
                         std::chrono::duration<double, std::ratio<3600>>(moment - eight).count());
    };
    return input;
}

DayPlan planOf(const DayInput& input, const marks::DaySettings& settings = {}) {
    base::Progress progress;
    return marks::orderDay(input, settings, progress).value();
}

std::vector<std::size_t> orderOf(const DayInput& input, const DayPlan& plan) {
    std::vector<std::size_t> order;
    for (const marks::DayStop& stop : plan.stops) {
        const auto at = std::ranges::find(input.stops, stop.rank, &DayInput::Stop::rank);
        order.push_back(static_cast<std::size_t>(at - input.stops.begin()));
    }
    return order;
}

TEST(OrderOfTheDay, PutsEachStopIntoTheHoursWhoseWindSuitsIt) {
    // On one spot, so that no way has a price; turns from 8 to 12 and from 12 to 16.
    DayInput input = dayOf({{50, 0}, {50, 0}}, {1.0, 1.0}, std::nullopt);
    input.stopWeight = [](std::size_t stop, units::Moment moment) {
        const bool isMorning = moment < eight + 4h;
        return stop == 0 ? (isMorning ? 0.5 : 1.5) : 1.0;
    };
    EXPECT_DOUBLE_EQ(marks::worthOf(input, {0, 1}), 0.5 + 1.0);
    EXPECT_DOUBLE_EQ(marks::worthOf(input, {1, 0}), 1.0 + 1.5);
    EXPECT_EQ(orderOf(input, planOf(input)), (std::vector<std::size_t>{1, 0}));
    marks::DaySettings roughly;
    roughly.exactUpTo = 0;
    EXPECT_EQ(orderOf(input, planOf(input, roughly)), (std::vector<std::size_t>{1, 0}));
}

TEST(OrderOfTheDay, IsTheBestOfAllOrders) {
    constexpr unsigned seed = 41;
    std::mt19937 random(seed);
    for (std::size_t count = 1; count <= 7; ++count) {
        const DayInput input = scatteredDay(random, count);
        std::vector<std::size_t> order(count);
        std::iota(order.begin(), order.end(), std::size_t{0});
        double best = -INFINITY;
        do {
            best = std::max(best, marks::worthOf(input, order));
        } while (std::ranges::next_permutation(order).found);
        EXPECT_NEAR(marks::worthOf(input, orderOf(input, planOf(input))), best, 1e-9)
            << "seed " << seed << " with " << count << " stops";
    }
}

TEST(OrderOfTheDay, VisitsEachMarkOnce) {
    std::mt19937 random(5);
    for (const std::size_t count : {1U, 6U, 12U, 14U}) {
        const DayInput input = scatteredDay(random, count);
        marks::DaySettings settings;
        settings.leastStay = 5min;
        const DayPlan plan = planOf(input, settings);
        std::set<int> ranks;
        for (const marks::DayStop& stop : plan.stops) {
            ranks.insert(stop.rank);
        }
        EXPECT_EQ(ranks.size(), count);
        EXPECT_EQ(plan.stops.size(), count);
        EXPECT_TRUE(plan.leftOut.empty());
    }
}

TEST(OrderOfTheDay, IsNearlyAsGoodByImprovementAsByTryingAll) {
    std::mt19937 random(11);
    for (int round = 0; round < 10; ++round) {
        const DayInput input = scatteredDay(random, 10);
        // Ten marks fit into the day whatever the order: both ways have the same ones to order.
        marks::DaySettings exactly;
        exactly.atTheRopes = 0min;
        marks::DaySettings improved = exactly;
        improved.exactUpTo = 0;
        const double exact = marks::worthOf(input, orderOf(input, planOf(input, exactly)));
        const double good = marks::worthOf(input, orderOf(input, planOf(input, improved)));
        EXPECT_LE(good, exact + 1e-9);
        EXPECT_GE(good, exact - 0.05 * std::fabs(exact));
    }
}

TEST(OrderOfTheDay, FillsTheDayFromStartToEnd) {
    std::mt19937 random(3);
    const DayInput input = scatteredDay(random, 8);
    const DayPlan plan = planOf(input);
    const double speed = input.boatSpeed.inMetresPerSecond();
    units::Moment clock = input.start;
    double moves_m = 0.0;
    for (const marks::DayStop& stop : plan.stops) {
        moves_m += stop.move.inMetres();
        const double move_s = std::chrono::duration<double>(stop.arrive - clock).count();
        EXPECT_NEAR(move_s, stop.move.inMetres() / speed, 1.01);
        EXPECT_GT(stop.leave, stop.arrive);
        clock = stop.leave;
    }
    const double home_m = plan.moves.inMetres() - moves_m;
    EXPECT_NEAR(home_m, input.fromLaunch_m[orderOf(input, plan).back()], 1e-6);
    EXPECT_NEAR(std::chrono::duration<double>(input.end - clock).count(), home_m / speed, 1.01);
}

TEST(OrderOfTheDay, GoesRoundRatherThanToAndFro) {
    const DayInput input = dayOf({{100, 0}, {300, 0}, {200, 0}, {400, 0}}, {0.5, 0.5, 0.5, 0.5});
    EXPECT_NEAR(planOf(input).moves.inMetres(), 800.0, 1e-9);
}

TEST(OrderOfTheDay, KeepsTheBestMarkForTheBestHour) {
    DayInput input = dayOf({{10, 0}, {0, 10}, {-10, 0}, {0, -10}}, {0.9, 0.3, 0.3, 0.3});
    input.hourWeight = [](units::Moment moment) { return moment > eight + 6h ? 1.8 : 0.6; };
    EXPECT_EQ(planOf(input).stops.back().rank, 1);
}

TEST(OrderOfTheDay, StartsAnywhereWithoutALaunch) {
    const DayInput input = dayOf({{0, 0}, {100, 0}, {50, 0}}, {0.5, 0.5, 0.5}, std::nullopt);
    const DayPlan plan = planOf(input);
    EXPECT_NEAR(plan.moves.inMetres(), 100.0, 1e-9);
    EXPECT_EQ(plan.stops.front().move.inMetres(), 0.0);
    EXPECT_EQ(plan.stops.front().arrive, input.start);
}

TEST(OrderOfTheDay, LeavesTheLeastMarksOutOfAShortDayAndSaysSo) {
    DayInput input = dayOf({{10, 0}, {20, 0}, {30, 0}, {40, 0}}, {0.9, 0.2, 0.8, 0.1});
    input.end = input.start + 85min;
    const DayPlan plan = planOf(input);
    ASSERT_EQ(plan.stops.size(), 2U) << "half an hour each, and ten minutes at the ropes";
    EXPECT_EQ(plan.leftOut, (std::vector{2, 4}));
    EXPECT_EQ(plan.leastStay, 30min);
    EXPECT_FALSE(plan.dark.areAny());
    for (const marks::DayStop& stop : plan.stops) {
        EXPECT_GE(stop.leave - stop.arrive, 40min);
    }
}

TEST(OrderOfTheDay, LeavesOutWhatTheBoatCannotReach) {
    DayInput input = dayOf({{10, 0}, {20, 0}, {30, 0}}, {0.5, 0.9, 0.4});
    for (std::size_t k = 0; k < 3; ++k) {
        input.between_m[1][k] = input.between_m[k][1] = k == 1 ? 0.0 : HUGE_VAL;
    }
    input.fromLaunch_m[1] = HUGE_VAL;
    const DayPlan plan = planOf(input);
    EXPECT_EQ(plan.leftOut, (std::vector{2}));
    EXPECT_EQ(plan.stops.size(), 2U);
    EXPECT_TRUE(std::isfinite(plan.moves.inMetres()));
}

TEST(OrderOfTheDay, IsEmptyForADayWithoutTime) {
    DayInput input = dayOf({{10, 0}}, {0.5});
    input.end = input.start;
    const DayPlan plan = planOf(input);
    EXPECT_TRUE(plan.stops.empty());
    EXPECT_EQ(plan.leftOut, (std::vector{1}));
}

TEST(OrderOfTheDay, StaysAsLongAsIsWantedAndIsHomeWhenTheyAreOver) {
    DayInput input = dayOf({{90, 0}, {180, 0}}, {0.9, 0.2}, std::nullopt);
    input.stay = 75min;
    input.boatSpeed = units::Speed::metresPerSecond(1.5);
    const DayPlan plan = planOf(input);
    ASSERT_EQ(plan.stops.size(), 2U);
    // 90 m are a minute; a stop is the stay and ten minutes at the ropes.
    EXPECT_EQ(plan.stops[0].arrive, eight);
    EXPECT_EQ(plan.stops[0].leave, eight + 85min);
    EXPECT_EQ(plan.stops[1].arrive, eight + 86min);
    EXPECT_EQ(plan.stops[1].leave, eight + 171min) << "the rest of the day is free";
    EXPECT_EQ(plan.leastStay, 75min);
}

TEST(OrderOfTheDay, LeavesOutTheLeastMarksWhereTheStaysWantedDoNotFit) {
    DayInput input = dayOf({{90, 0}, {180, 0}, {90, 90}}, {0.9, 0.2, 0.8});
    input.stay = 3h;
    const DayPlan plan = planOf(input);
    EXPECT_EQ(plan.stops.size(), 2U);
    EXPECT_EQ(plan.leftOut, (std::vector{2}));
    input.stay = 9h;
    EXPECT_TRUE(planOf(input).stops.empty());
}

TEST(OrderOfTheDay, WeighsTheHoursThatTheStaysWantedFallInto) {
    DayInput input = dayOf({{10, 0}, {0, 10}}, {0.9, 0.3});
    // The afternoon is best; with stays of an hour both are over by eleven.
    input.hourWeight = [](units::Moment moment) {
        if (moment > eight + 4h) {
            return 3.0;
        }
        return moment < eight + 70min ? 2.0 : 1.0;
    };
    EXPECT_EQ(planOf(input).stops.front().rank, 2) << "shared out, the better one last";
    input.stay = 1h;
    EXPECT_EQ(planOf(input).stops.front().rank, 1);
}

TEST(OrderOfTheDay, IsRefusedForStaysThatNobodyMeans) {
    base::Progress progress;
    for (const auto stay : {4min, 721min}) {
        DayInput input = dayOf({{10, 0}}, {0.5});
        input.stay = stay;
        EXPECT_EQ(marks::orderDay(input, {}, progress).error().kind, base::ErrorKind::wrongUse);
    }
    marks::DaySettings settings;
    settings.atTheRopes = 121min;
    EXPECT_FALSE(marks::orderDay(dayOf({{10, 0}}, {0.5}), settings, progress));
}

TEST(OrderOfTheDay, IsEmptyWithoutMarks) {
    EXPECT_TRUE(planOf(dayOf({}, {})).stops.empty());
}

TEST(OrderOfTheDay, WarnsOfComingHomeInTheDark) {
    DayInput input = dayOf({{10, 0}}, {0.5});
    input.light = light::SunTimes{eight - 2h, eight - 90min, eight + 7h, eight + 450min};
    using Home = marks::DarkHours::Home;
    EXPECT_EQ(planOf(input).dark, (marks::DarkHours{false, Home::inTheDark}));
    input.end = eight + 435min;
    EXPECT_EQ(planOf(input).dark, (marks::DarkHours{false, Home::afterSunset}));
    input.end = eight + 6h;
    EXPECT_FALSE(planOf(input).dark.areAny());
    input.start = eight - 3h;
    EXPECT_EQ(planOf(input).dark, (marks::DarkHours{true, Home::inTheLight}));
}

TEST(OrderOfTheDay, IsRefusedForDistancesThatDoNotFit) {
    base::Progress progress;
    DayInput input = dayOf({{10, 0}, {20, 0}}, {0.5, 0.5});
    input.between_m.pop_back();
    EXPECT_EQ(marks::orderDay(input, {}, progress).error().kind, base::ErrorKind::wrongUse);
}

TEST(OrderOfTheDay, IsRefusedForADayThatEndsBeforeItStarts) {
    base::Progress progress;
    DayInput input = dayOf({{10, 0}}, {0.5});
    input.end = input.start - 1h;
    EXPECT_EQ(marks::orderDay(input, {}, progress).error().kind, base::ErrorKind::wrongUse);
}

} // namespace
