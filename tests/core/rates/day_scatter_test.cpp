// SPDX-License-Identifier: GPL-3.0-or-later
// Days are the sample, not fish: what the scatter of days makes of intervals and comparisons, by
// formula and in simulated seasons.
#include "core/rates/count_rates.h"
#include "core/rates/day_scatter.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace {

using rates::ByDay;
using rates::Tally;

units::Day day(int number) {
    return std::chrono::sys_days(std::chrono::year(2026) / 4 / 1) + std::chrono::days(number);
}

ByDay daysOf(const std::vector<Tally>& tallies) {
    ByDay days;
    for (std::size_t i = 0; i < tallies.size(); ++i) {
        days[day(static_cast<int>(i))] = tallies[i];
    }
    return days;
}

TEST(DayScatter, IsOneWithinADayAndGrowsWithTheFishOfADay) {
    EXPECT_EQ(rates::dispersionOf(daysOf({{9, 30.0}}), 0.5, 2.0), 1.0);
    EXPECT_EQ(rates::dispersionOf({}, 0.5, 2.0), 1.0);
    // Days of 10 and 30 rod-hours at 0.2: 2 and 6 expected; 1 + v (4 + 36) / 8.
    EXPECT_DOUBLE_EQ(rates::dispersionOf(daysOf({{0, 10.0}, {5, 30.0}}), 0.2, 0.5), 3.5);
    EXPECT_DOUBLE_EQ(rates::dispersionOf(daysOf({{0, 10.0}, {5, 30.0}}), 0.2, 0.0), 1.0);
    const Tally worth = rates::worthOf({7.0, 21.0}, 3.5);
    EXPECT_DOUBLE_EQ(worth.fish, 2.0);
    EXPECT_DOUBLE_EQ(worth.rodHours, 6.0);
}

TEST(DayScatter, IsTheUsualWhereNothingSpeaksOfIt) {
    EXPECT_DOUBLE_EQ(rates::dayVariance({}), 1.0 / 3.0);
    const std::vector<ByDay> oneDay{daysOf({{4, 10.0}})};
    EXPECT_DOUBLE_EQ(rates::dayVariance(oneDay), 1.0 / 3.0);
    const std::vector<ByDay> blanks{daysOf({{0, 10.0}, {0, 10.0}})};
    EXPECT_DOUBLE_EQ(rates::dayVariance(blanks), 1.0 / 3.0);
}

TEST(DayScatter, TakesRowsThatDifferForNoScatter) {
    std::vector<ByDay> rows;
    for (const double fish : {2.0, 20.0}) { // ten times, day for day alike
        rows.push_back(daysOf(std::vector<Tally>(40, {fish, 10.0})));
    }
    const double alike = rates::dayVariance(rows);
    EXPECT_LT(alike, 0.1);
    rows.push_back(daysOf({{40, 10.0}, {0, 10.0}, {40, 10.0}, {0, 10.0}, {40, 10.0}, {0, 10.0}}));
    EXPECT_GT(rates::dayVariance(rows), 1.4 * alike);
}

/// A season: each trip some stays, in the month that it falls in or in sections by lot.
struct Season {
    std::vector<double> perRodHour; ///< By row.
    bool isByMonth = true;
    double dayShape = 0.0; ///< Of the gamma factor of a day; 0: no day effect.
    int trips = 30;
};

/// The rows' names lead back to their numbers.
rates::RateTable counted(const Season& season, std::mt19937& chance, logbook::Log& log) {
    const auto rows = static_cast<int>(season.perRodHour.size());
    std::vector<rates::GroupedStay> parts;
    std::vector<int> rowOf;
    log.clear();
    std::gamma_distribution<double> luck(std::max(season.dayShape, 1.0),
                                         1.0 / std::max(season.dayShape, 1.0));
    for (int trip = 0; trip < season.trips; ++trip) {
        const double factor = season.dayShape > 0.0 ? luck(chance) : 1.0;
        const int stays = 2 + static_cast<int>(chance() % 4);
        for (int k = 0; k < stays; ++k) {
            logbook::Stay stay;
            stay.rods = 3;
            stay.start = std::chrono::sys_days(day(7 * trip)) + std::chrono::hours(6 + 2 * k);
            stay.end = stay.start + std::chrono::minutes(40 + chance() % 100);
            rowOf.push_back(season.isByMonth ? std::min(rows - 1, trip * rows / season.trips)
                                             : static_cast<int>(chance() % rows));
            std::poisson_distribution<int> fish(
                factor * season.perRodHour[static_cast<std::size_t>(rowOf.back())] *
                stay.rodHours().value());
            stay.runs.resize(static_cast<std::size_t>(fish(chance)));
            log.push_back(stay);
        }
    }
    for (std::size_t i = 0; i < log.size(); ++i) {
        parts.push_back(rates::wholeStay(log[i], std::to_string(rowOf[i])));
    }
    base::Progress quiet;
    return rates::countRates(parts, {}, quiet).value();
}

/// Shares of the intervals that hold the truth, and of seasons in which some row is told apart.
struct Held {
    double exact = 0.0;
    double steadied = 0.0;
    double toldApart = 0.0;
};

Held heldIn(const std::function<Season(std::mt19937&)>& make, int seasons) {
    std::mt19937 chance(20261127);
    Held held;
    int rows = 0;
    for (int k = 0; k < seasons; ++k) {
        const Season season = make(chance);
        logbook::Log log;
        const rates::RateTable table = counted(season, chance, log);
        bool isTold = false;
        for (const rates::RateRow& row : table.rows) {
            const double truth = 10.0 * season.perRodHour[std::stoul(row.name)];
            held.exact += row.rate->low <= truth && truth <= row.rate->high ? 1.0 : 0.0;
            held.steadied += row.shrunk->low <= truth && truth <= row.shrunk->high ? 1.0 : 0.0;
            isTold = isTold || row.pAgainstTheRest.value_or(1.0) < 0.05;
            ++rows;
        }
        held.toldApart += isTold ? 1.0 : 0.0;
    }
    return {held.exact / rows, held.steadied / rows, held.toldApart / seasons};
}

Season alike(bool isByMonth, double dayShape) {
    return {std::vector<double>(7, 0.25), isByMonth, dayShape, 30};
}

// The shares are those of 120 seasons each with a fixed seed: what is asked for leaves room for
// their standard errors.
TEST(SimulatedSeasons, WithoutADayEffectIntervalsHoldAndNothingIsToldApart) {
    const Held held = heldIn([](std::mt19937&) { return alike(true, 0.0); }, 120);
    EXPECT_GE(held.exact, 0.95);
    EXPECT_GE(held.steadied, 0.95);
    EXPECT_LE(held.toldApart, 0.05);
}

TEST(SimulatedSeasons, OfDaysThatDifferByAThirdIntervalsHoldToo) {
    const Held months = heldIn([](std::mt19937&) { return alike(true, 3.0); }, 120);
    EXPECT_GE(months.exact, 0.93);
    EXPECT_GE(months.steadied, 0.93);
    EXPECT_LE(months.toldApart, 0.09);
    const Held sections = heldIn([](std::mt19937&) { return alike(false, 3.0); }, 120);
    EXPECT_GE(sections.exact, 0.93);
    EXPECT_LE(sections.toldApart, 0.06);
}

TEST(SimulatedSeasons, OfSectionsThatDifferSteadiedIntervalsHold) {
    const auto differing = [](double dayShape) {
        return [dayShape](std::mt19937& chance) {
            Season season = alike(false, dayShape);
            std::gamma_distribution<double> rate(2.8, 0.25 / 2.8);
            for (double& perRodHour : season.perRodHour) {
                perRodHour = rate(chance);
            }
            return season;
        };
    };
    for (const double dayShape : {0.0, 3.0}) {
        const Held held = heldIn(differing(dayShape), 120);
        EXPECT_GE(held.exact, 0.93) << dayShape;
        EXPECT_GE(held.steadied, 0.92) << dayShape;
        EXPECT_LE(held.steadied, 0.98) << dayShape;
    }
}

} // namespace
