// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/light/clock_and_sun.h"

#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;

const units::Moment summer{std::chrono::sys_days(std::chrono::year(2026) / 7 / 1) + 12h};
const units::Moment winter{std::chrono::sys_days(std::chrono::year(2026) / 1 / 10) + 12h};

std::chrono::seconds ahead(const char* zone, double lon_deg, units::Moment moment) {
    return light::clockAheadOfSun(units::Clock::inZone(zone).value(), {lon_deg, 50.0}, moment);
}

TEST(ClockAheadOfSun, IsTheZonesOffsetLessFourMinutesADegree) {
    EXPECT_EQ(ahead("Etc/UTC", 0.0, summer), 0s);
    EXPECT_EQ(ahead("Europe/London", 0.0, summer), 1h);
    EXPECT_EQ(ahead("Europe/Berlin", 15.0, winter), 0s) << "the meridian of its zone";
    EXPECT_EQ(ahead("Europe/Berlin", 7.5, summer), 90min);
    EXPECT_EQ(ahead("America/New_York", -75.0, winter), 0s);
}

TEST(ClockAheadOfSun, IsSuspectForTheClockOfAnotherCountry) {
    // Galicia keeps Madrid's time: two and a half hours ahead of its sun in summer, and asked
    // about.
    EXPECT_GT(ahead("Europe/Madrid", -8.4, summer), light::suspectClock);
    EXPECT_GT(ahead("Etc/UTC", -75.0, winter), light::suspectClock);
    EXPECT_LT(ahead("Etc/UTC", 75.0, winter), -light::suspectClock);
    EXPECT_LT(ahead("Europe/London", -8.0, summer), light::suspectClock);
}

TEST(ClockAheadOfSun, IsWithinHalfADayWhereverTheDateLineRuns) {
    // Apia: 13 h east of Greenwich by its clock, 171.8 degrees west by the map.
    EXPECT_EQ(ahead("Pacific/Apia", -171.75, winter), 27min);
    EXPECT_EQ(ahead("Etc/UTC", 180.0, winter), 12h);
    EXPECT_EQ(ahead("Etc/UTC", -180.0, winter), 12h);
}

} // namespace
