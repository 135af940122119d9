// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/order_day.h"

#include <cmath>
#include <functional>

#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using marks::DayInput;
using marks::DayPlan;

const units::Moment nine =
    units::Moment(std::chrono::sys_days(std::chrono::year(2026) / 11 / 14)) + 9h;

/// Two marks, 120 m from each other, 90 and 180 m from the launch; two hours.
DayInput twoMarks() {
    DayInput input;
    input.stops = {{1, 0.8}, {2, 0.4}};
    input.between_m = {{0.0, 120.0}, {120.0, 0.0}};
    input.fromLaunch_m = {90.0, 180.0};
    input.start = nine;
    input.end = nine + 2h;
    input.boatSpeed = units::Speed::metresPerSecond(1.2);
    // The first hour is the better one, so that the better mark comes first.
    input.hourWeight = [](units::Moment moment) { return moment < nine + 1h ? 1.2 : 0.8; };
    return input;
}

DayPlan planOf(const DayInput& input, const marks::DaySettings& settings = {}) {
    base::Progress quiet;
    return marks::orderDay(input, settings, quiet).value();
}

TEST(WorthOfAnOrder, IsItsScoresByTheHoursOfTheirTurnsLessTheWayHomeIncluded) {
    DayInput input = twoMarks();
    // 1.05 in the middle of the first hour, 1.15 in that of the second.
    input.hourWeight = [](units::Moment moment) {
        return 1.0 + 0.1 * std::chrono::duration<double, std::ratio<3600>>(moment - nine).count();
    };
    const double metre = 0.6 * 1.1 / (3600.0 * 1.2);
    EXPECT_NEAR(marks::worthOf(input, {0, 1}), 0.8 * 1.05 + 0.4 * 1.15 - metre * 390.0, 1e-9);
    EXPECT_NEAR(marks::worthOf(input, {1, 0}), 0.4 * 1.05 + 0.8 * 1.15 - metre * 390.0, 1e-9);
    const double alone = 0.8 * 1.1 / (7200.0 * 1.2);
    EXPECT_NEAR(marks::worthOf(input, {0}), 0.8 * 1.1 - alone * 180.0, 1e-9);
    EXPECT_EQ(marks::worthOf(input, {}), 0.0);
    input.fromLaunch_m.clear();
    EXPECT_NEAR(marks::worthOf(input, {0, 1}), 0.8 * 1.05 + 0.4 * 1.15 - metre * 120.0, 1e-9);
    EXPECT_EQ(planOf(input).stops.front().rank, 2) << "the better mark in the better hour";
}

TEST(TimesOfTheDay, AreWaysAtTheBoatsSpeedAndEqualStays) {
    const DayPlan plan = planOf(twoMarks());
    // 390 m at 1.2 m/s are 325 s; what is left of 7200 s makes two stays of 3437.5 s.
    EXPECT_EQ(plan.moves, units::Length::metres(390.0));
    ASSERT_EQ(plan.stops.size(), 2U);
    EXPECT_EQ(plan.stops[0].rank, 1);
    EXPECT_EQ(plan.stops[0].move, units::Length::metres(90.0));
    EXPECT_EQ(plan.stops[0].arrive, nine + 75s);
    EXPECT_EQ(plan.stops[0].leave, nine + 3513s);
    EXPECT_EQ(plan.stops[1].move, units::Length::metres(120.0));
    EXPECT_EQ(plan.stops[1].arrive, nine + 3613s);
    EXPECT_EQ(plan.stops[1].leave, nine + 7050s);
    EXPECT_FALSE(plan.dark.areAny());
}

TEST(TimesOfTheDay, KeepAStayOfJustTheLeastAndNoShorterOne) {
    DayInput input = twoMarks();
    input.end = nine + 325s + 80min;
    EXPECT_EQ(planOf(input).stops.size(), 2U);
    input.end -= 2s;
    const DayPlan shorter = planOf(input);
    ASSERT_EQ(shorter.stops.size(), 1U);
    EXPECT_EQ(shorter.stops.front().rank, 1) << "the better one stays";
    EXPECT_EQ(shorter.leftOut, std::vector<int>{2});
    EXPECT_EQ(shorter.leastStay, 30min);
    marks::DaySettings settings;
    settings.leastStay = 29min;
    EXPECT_EQ(planOf(input, settings).stops.size(), 2U);
    settings.leastStay = 3h;
    EXPECT_EQ(planOf(input, settings).leftOut, (std::vector<int>{1, 2}));
    EXPECT_EQ(planOf(input, settings).leastStay, 3h);
}

TEST(TimesOfTheDay, LeaveOutWhatCannotBeReachedFromTheBestMarkWithoutALaunch) {
    DayInput input = twoMarks();
    input.fromLaunch_m.clear();
    input.between_m[0][1] = input.between_m[1][0] = INFINITY;
    EXPECT_EQ(planOf(input).leftOut, std::vector<int>{2});
    input.stops[1].score = 0.9;
    EXPECT_EQ(planOf(input).leftOut, std::vector<int>{1});
    input.stops[1].score = 0.8;
    EXPECT_EQ(planOf(input).leftOut, std::vector<int>{2}) << "of equal scores the better rank";
}

/// What is dark where the day runs from `start` to `end` and it is home at the end.
marks::DarkHours darkOf(units::Moment start, units::Moment end,
                        const std::optional<light::SunTimes>& sun) {
    DayInput input = twoMarks();
    input.start = start;
    input.end = end;
    input.light = sun;
    return planOf(input).dark;
}

TEST(CautionsOfTheDay, OfTheLightBeginAtDawnSunsetAndDuskToTheSecond) {
    using Dark = marks::DarkHours;
    const light::SunTimes sun{nine - 1h, nine, nine + 6h, nine + 7h};
    const Dark dark{false, Dark::Home::inTheDark};
    const Dark late{false, Dark::Home::afterSunset};
    const Dark early{true, Dark::Home::inTheLight};
    EXPECT_EQ(darkOf(nine - 1h, nine + 6h, sun), Dark{});
    EXPECT_EQ(darkOf(nine - 1h - 1s, nine + 6h, sun), early);
    EXPECT_EQ(darkOf(nine, nine + 6h + 1s, sun), late);
    EXPECT_EQ(darkOf(nine, nine + 7h, sun), late);
    EXPECT_EQ(darkOf(nine, nine + 7h + 1s, sun), dark);
    EXPECT_EQ(darkOf(nine - 2h, nine + 8h, sun), (Dark{true, Dark::Home::inTheDark}));
    EXPECT_EQ(darkOf(nine - 2h, nine + 8h, std::nullopt), Dark{});
    EXPECT_EQ(darkOf(nine, nine + 8h, light::SunTimes{{}, {}, nine + 6h, {}}), late)
        << "a white night";
    EXPECT_EQ(darkOf(nine - 2h, nine + 8h, light::SunTimes{}), Dark{});
}

TEST(CautionsOfTheDay, CountTheWayHome) {
    DayInput input = twoMarks();
    const units::Moment lastLeaves = planOf(input).stops.back().leave;
    input.light = light::SunTimes{nine, nine, lastLeaves + 1s, lastLeaves + 100s};
    EXPECT_EQ(planOf(input).dark.home, marks::DarkHours::Home::inTheDark);
    input.light->civilDusk = nine + 3h;
    EXPECT_EQ(planOf(input).dark.home, marks::DarkHours::Home::afterSunset);
}

TEST(SettingsOfTheDay, AreRefusedOutOfTheirRangesAndNotAtTheirEnds) {
    struct Row {
        const char* what;
        std::function<void(DayInput&, marks::DaySettings&)> change;
    };
    const std::vector<Row> rows{
        {"", [](DayInput&, marks::DaySettings& s) { s.leastStay = 5min; }},
        {"", [](DayInput&, marks::DaySettings& s) { s.leastStay = 8h; }},
        {"", [](DayInput&, marks::DaySettings& s) { s.exactUpTo = 0; }},
        {"", [](DayInput&, marks::DaySettings& s) { s.exactUpTo = 14; }},
        {"", [](DayInput& d, marks::DaySettings&) { d.end = d.start; }},
        {"", [](DayInput& d,
                marks::DaySettings&) { d.boatSpeed = units::Speed::metresPerSecond(0.1); }},
        {"the least stay is out of its range",
         [](DayInput&, marks::DaySettings& s) { s.leastStay = 5min - 1s; }},
        {"the least stay is out of its range",
         [](DayInput&, marks::DaySettings& s) { s.leastStay = 8h + 1s; }},
        {"an exact order of so many stops takes too long",
         [](DayInput&, marks::DaySettings& s) { s.exactUpTo = -1; }},
        {"an exact order of so many stops takes too long",
         [](DayInput&, marks::DaySettings& s) { s.exactUpTo = 15; }},
        {"the day ends before it starts",
         [](DayInput& d, marks::DaySettings&) { d.end = d.start - 1s; }},
        {"the boat would never arrive",
         [](DayInput& d, marks::DaySettings&) {
             d.boatSpeed = units::Speed::metresPerSecond(0.09);
         }},
        {"the boat would never arrive",
         [](DayInput& d, marks::DaySettings&) {
             d.boatSpeed = units::Speed::metresPerSecond(NAN);
         }},
        {"the distances do not fit the marks",
         [](DayInput& d, marks::DaySettings&) { d.between_m[1].pop_back(); }},
        {"the distances do not fit the marks",
         [](DayInput& d, marks::DaySettings&) { d.between_m.pop_back(); }},
        {"the distances do not fit the marks",
         [](DayInput& d, marks::DaySettings&) { d.fromLaunch_m.pop_back(); }},
    };
    for (const Row& row : rows) {
        DayInput input = twoMarks();
        marks::DaySettings settings;
        row.change(input, settings);
        base::Progress quiet;
        const auto plan = marks::orderDay(input, settings, quiet);
        EXPECT_EQ(plan ? "" : plan.error().what, row.what);
        EXPECT_TRUE(plan || plan.error().kind == base::ErrorKind::wrongUse);
    }
    EXPECT_EQ(marks::DaySettings().leastStay, 30min);
    EXPECT_EQ(marks::DaySettings().exactUpTo, 12);
}

TEST(OrderOfTheDay, StopsWhenAsked) {
    struct Stopped : base::Progress {
        [[nodiscard]] bool stopAsked() const override { return true; }
    } stopped;
    const auto plan = marks::orderDay(twoMarks(), {}, stopped);
    ASSERT_FALSE(plan);
    EXPECT_EQ(plan.error().kind, base::ErrorKind::cancelled);
}

} // namespace
