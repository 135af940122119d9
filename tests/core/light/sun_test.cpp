// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/light/sun.h"

#include "tests/support/given.h"

#include <gtest/gtest.h>

namespace {

using support::given;
using namespace std::chrono_literals;

units::Day day(const char* text) {
    return given(units::dayFrom(text));
}

TEST(SunTimes, HaveNoSunriseUnderTheMidnightSun) {
    const auto sun = light::sunTimesOn(day("2025-06-21"), {25.0, 70.0}, units::Clock());
    EXPECT_FALSE(sun.sunrise);
    EXPECT_FALSE(sun.sunset);
    EXPECT_FALSE(sun.civilDawn);
    EXPECT_FALSE(sun.civilDusk);
}

TEST(SunTimes, HaveNoCivilDawnInAWhiteNightThoughTheSunSets) {
    const auto sun = light::sunTimesOn(day("2025-06-21"), {27.0, 61.0}, units::Clock());
    EXPECT_TRUE(sun.sunrise);
    EXPECT_TRUE(sun.sunset);
    EXPECT_FALSE(sun.civilDawn);
    EXPECT_FALSE(sun.civilDusk);
}

TEST(SunTimes, HaveTwilightButNoSunInThePolarNight) {
    const auto sun = light::sunTimesOn(day("2025-12-21"), {25.0, 70.0}, units::Clock());
    EXPECT_TRUE(sun.civilDawn);
    EXPECT_FALSE(sun.sunrise);
    EXPECT_TRUE(sun.civilDusk);
}

TEST(SunTimes, BelongToTheCalendarDayOfTheWaterNotOfGreenwich) {
    const auto clock = units::Clock::inZone("America/Denver").value();
    const auto sun = light::sunTimesOn(day("2003-10-17"), {-105.1786, 39.742476}, clock);
    EXPECT_EQ(clock.dayOf(given(sun.sunrise)), day("2003-10-17"));
    EXPECT_EQ(clock.dayOf(given(sun.sunset)), day("2003-10-17"));
    // The sunset is already of the next day in Greenwich.
    EXPECT_EQ(units::Clock().dayOf(given(sun.sunset)), day("2003-10-18"));
}

TEST(SunTimes, BelongToTheCalendarDayWhereTheClockIsHalfADayAheadOfTheSunInGreenwich) {
    const auto clock = units::Clock::inZone("Pacific/Kiritimati").value();
    const auto sun = light::sunTimesOn(day("2026-03-20"), {-157.4, 1.9}, clock);
    EXPECT_EQ(clock.dayOf(given(sun.sunrise)), day("2026-03-20"));
    EXPECT_EQ(clock.dayOf(given(sun.sunset)), day("2026-03-20"));
}

TEST(SunTimes, ComeInOrderOnEveryDayOfTheYear) {
    const auto clock = units::Clock::inZone("Europe/London").value();
    const geo::LonLat place{3.1, 55.2};
    for (auto d = std::chrono::sys_days(day("2024-01-01"));
         d <= std::chrono::sys_days(day("2024-12-31")); d += std::chrono::days(1)) {
        const auto sun = light::sunTimesOn(units::Day(d), place, clock);
        ASSERT_TRUE(sun.civilDawn && sun.sunrise && sun.sunset && sun.civilDusk);
        EXPECT_LT(given(sun.civilDawn), given(sun.sunrise));
        EXPECT_LT(given(sun.sunrise), given(sun.sunset));
        EXPECT_LT(given(sun.sunset), given(sun.civilDusk));
        EXPECT_EQ(clock.dayOf(given(sun.sunrise)), units::Day(d));
    }
}

TEST(SunAt, PutsTheSunOnTheHorizonAtSunrise) {
    const geo::LonLat place{3.1, 55.2};
    const auto sun = light::sunTimesOn(day("2026-10-03"), place, units::Clock());
    EXPECT_NEAR(light::sunAt(given(sun.sunrise), place).elevation_deg, -0.833, 1e-4);
    EXPECT_NEAR(light::sunAt(given(sun.civilDusk), place).elevation_deg, -6.0, 1e-4);
    EXPECT_LT(light::sunAt(given(sun.sunrise), place).azimuth.inDegrees(), 180.0);
    EXPECT_GT(light::sunAt(given(sun.sunset), place).azimuth.inDegrees(), 180.0);
}

TEST(SunAt, StandsInTheNorthAtNoonSouthOfTheTropics) {
    const light::SunPosition sun = light::sunAt(
        given(units::momentFrom("2025-06-21T12:02:00Z", units::Clock())), {0.0, -35.0});
    EXPECT_LT(sun.azimuth.angleTo_deg(units::Bearing::degrees(0.0)), 1.0);
    EXPECT_NEAR(sun.elevation_deg, 90.0 - 35.0 - 23.44, 0.05);
}

} // namespace
