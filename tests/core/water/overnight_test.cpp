// SPDX-License-Identifier: GPL-3.0-or-later
// A day on the water that ends after midnight.
#include "core/marks/overnight.h"
#include "core/water/steps/plan_day.h"

#include "tests/support/planned_water.h"

#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using support::PlannedWater;

marks::ExpectedDay said(std::chrono::seconds start, std::chrono::seconds end,
                        std::optional<std::chrono::seconds> turn = {}) {
    marks::ExpectedDay day;
    day.start = start;
    day.end = end;
    if (turn) {
        day.windLater = marks::LaterWind{*turn, {}};
    }
    return marks::overnight(day);
}

TEST(Overnight, AnEndBeforeTheStartIsOfTheNextMorningAndSoIsATurnOfTheWind) {
    EXPECT_EQ(said(8h, 16h).end, 16h);
    EXPECT_EQ(said(20h, 2h).end, 26h);
    EXPECT_EQ(said(20h, 26h).end, 26h) << "said twice";
    EXPECT_EQ(said(8h, 8h).end, 8h);
    EXPECT_EQ(said(20h, 2h, 1h).windLater->at, 25h);
    EXPECT_EQ(said(20h, 2h, 22h).windLater->at, 22h);
    EXPECT_EQ(said(8h, 16h, 6h).windLater->at, 6h);
    EXPECT_EQ(said(8h, 16h, 30h).windLater->at, 6h) << "it was a night before";
    EXPECT_TRUE(marks::isOvernight(said(20h, 0h)));
    EXPECT_FALSE(marks::isOvernight(said(20h, 23h)));
}

TEST(Overnight, StaysGoOnOverMidnightByTheWatersClockEachInItsWind) {
    PlannedWater made;
    marks::ExpectedDay& day = made.water.plan.day;
    day.start = 20h;
    day.end = 4h;
    day.windLater =
        marks::LaterWind{1h, {units::Bearing::degrees(300.0), units::Speed::metresPerSecond(3.0)}};
    day = marks::overnight(day);
    base::Progress quiet;
    const auto planned = water::planDay(made.water, made.derived, made.water.plan, quiet);
    ASSERT_TRUE(planned) << planned.error().sentence();
    const auto& stops = planned->day.stops;
    ASSERT_GE(stops.size(), 3U);
    EXPECT_GE(stops.front().arrive, made.water.clock.at(day.day, 20h));
    EXPECT_LE(stops.back().leave, made.water.clock.at(day.day, 28h));
    EXPECT_GT(stops.back().leave, made.water.clock.at(day.day, 27h));
    EXPECT_EQ(stops.front().wind, day.wind);
    EXPECT_EQ(stops.back().wind, day.windLater->wind);
    for (std::size_t k = 1; k < stops.size(); ++k) {
        EXPECT_GT(stops[k].arrive, stops[k - 1].leave);
    }
    EXPECT_EQ(planned->day.dark.home, marks::DarkHours::Home::inTheDark);
}

} // namespace
