// SPDX-License-Identifier: GPL-3.0-or-later
// Days are the sample, not fish: what the scatter of days makes of intervals and comparisons, by
// formula and in simulated seasons.
#include "core/rates/count_rates.h"
#include "core/rates/day_scatter.h"
#include "tests/support/simulated_season.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace {

using rates::ByDay;
using rates::Tally;

ByDay daysOf(const std::vector<Tally>& tallies) {
    ByDay days;
    for (std::size_t i = 0; i < tallies.size(); ++i) {
        days[support::dayOfSeason(static_cast<int>(i))] = tallies[i];
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

TEST(DayScatter, IsWhatTheFormulaMakesOfTheDays) {
    // Two days alike, 2 fish each: S2 = 1/2, S3 = 1/4, so found = 0 - 4 (1 - 1/2) = -2 and unit =
    // 4 * 3 (1/2 - 1/2 + 1/4) = 3; the usual weighs 12 * (4 * 3 / 2) / 2 = 36.
    const std::vector<ByDay> alike{daysOf({{2, 10.0}, {2, 10.0}})};
    EXPECT_NEAR(rates::dayVariance(alike), (-2.0 + 36.0 / 3.0) / (3.0 + 36.0), 1e-12);
    // 0 and 4: the scatter is 8.
    const std::vector<ByDay> uneven{daysOf({{0, 10.0}, {4, 10.0}})};
    EXPECT_NEAR(rates::dayVariance(uneven), (6.0 + 36.0 / 3.0) / (3.0 + 36.0), 1e-12);
    // Of 10 and 30 rod-hours: S2 = 10/16, S3 = 28/64; 1 and 3 fish are off by nothing.
    const std::vector<ByDay> shares{daysOf({{1, 10.0}, {3, 30.0}})};
    const double unit = 12.0 * (0.625 - 0.875 + 0.390625);
    const double usual = 12.0 * (12.0 * 0.625) / 2.0;
    EXPECT_NEAR(rates::dayVariance(shares), (-4.0 * 0.375 + usual / 3.0) / (unit + usual), 1e-12);
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

using support::alikeSeason;
using support::Held;
using support::heldIn;
using support::Season;

// The shares are those of 120 seasons each with a fixed seed: what is asked for leaves room for
// their standard errors.
TEST(SimulatedSeasons, WithoutADayEffectIntervalsHoldAndNothingIsToldApart) {
    const Held held = heldIn([](std::mt19937&) { return alikeSeason(true, 0.0); }, 120);
    EXPECT_GE(held.exact, 0.95);
    EXPECT_GE(held.steadied, 0.95);
    EXPECT_LE(held.toldApart, 0.05);
}

TEST(SimulatedSeasons, OfDaysThatDifferByAThirdIntervalsHoldToo) {
    const Held months = heldIn([](std::mt19937&) { return alikeSeason(true, 3.0); }, 120);
    EXPECT_GE(months.exact, 0.93);
    EXPECT_GE(months.steadied, 0.93);
    EXPECT_LE(months.toldApart, 0.09);
    const Held sections = heldIn([](std::mt19937&) { return alikeSeason(false, 3.0); }, 120);
    EXPECT_GE(sections.exact, 0.93);
    EXPECT_LE(sections.toldApart, 0.06);
}

TEST(SimulatedSeasons, TellTheBestHourToHalfAnHourAndCoverTheTrueCurve) {
    for (const double dayShape : {0.0, 3.0}) {
        const support::HoursHeld held = support::hoursHeldIn(60, dayShape);
        EXPECT_GE(held.peak, 0.80) << dayShape; // 0.85 to 0.9 of a thousand, see bench_rates
        EXPECT_GE(held.covered, 0.90) << dayShape;
    }
}

TEST(SimulatedSeasons, OfSectionsThatDifferSteadiedIntervalsHold) {
    const auto differing = [](double dayShape) {
        return [dayShape](std::mt19937& chance) {
            Season season = alikeSeason(false, dayShape);
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
