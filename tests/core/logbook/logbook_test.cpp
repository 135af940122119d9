// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/house_rules.h"
#include "core/logbook/trip.h"

#include <gtest/gtest.h>

namespace {

using namespace logbook;
using namespace std::chrono_literals;

Stay stayAt(std::int64_t id, units::Moment start) {
    Stay stay;
    stay.id = StayId(id);
    stay.start = start;
    stay.end = start + 90min;
    stay.rods = 4;
    return stay;
}

const units::Moment october{std::chrono::sys_days(std::chrono::year(2026) / 10 / 3) + 8h};

TEST(Stay, EffortIsRodsTimesHours) {
    EXPECT_DOUBLE_EQ(stayAt(1, october).rodHours().value(), 6.0);
}

TEST(Stay, OfRodsThatNobodyNotedHasNoKnownEffort) {
    Stay stay;
    stay.start = october;
    stay.end = october + 90min;
    EXPECT_FALSE(stay.rodHours());
    stay.rods = 1;
    EXPECT_DOUBLE_EQ(stay.rodHours().value(), 1.5);
}

TEST(Stay, LostRunsAreNoFish) {
    Stay stay = stayAt(1, october);
    stay.runs.push_back({});
    stay.runs.back().landed = false;
    EXPECT_TRUE(stay.isBlank());
    stay.runs.push_back({});
    EXPECT_EQ(stay.fishCount(), 1);
    EXPECT_FALSE(stay.isBlank());
}

TEST(Trip, IsTheStaysOfOneDayByTheWatersClock) {
    // 23:30 UTC in summer is half past midnight of the next day in London.
    const units::Moment late{std::chrono::sys_days(std::chrono::year(2026) / 7 / 1) + 23h + 30min};
    const Log log{stayAt(2, late), stayAt(1, late - 15h)};
    EXPECT_EQ(tripsOf(log, units::Clock()).size(), 1U);
    const auto trips = tripsOf(log, units::Clock::inZone("Europe/London").value());
    ASSERT_EQ(trips.size(), 2U);
    EXPECT_EQ(units::isoText(trips[1].day), "2026-07-02");
}

TEST(Trip, TellsItsStaysInTheOrderOfTheDay) {
    const Log log{stayAt(3, october + 4h), stayAt(1, october), stayAt(2, october + 2h)};
    const auto trips = tripsOf(log, units::Clock());
    ASSERT_EQ(trips.size(), 1U);
    ASSERT_EQ(trips[0].stays.size(), 3U);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(trips[0].stays[i]->id, StayId(static_cast<std::int64_t>(i) + 1)) << i;
    }
}

TEST(Log, IsSortedByStartThenById) {
    Log log{stayAt(3, october), stayAt(1, october), stayAt(2, october - 1h)};
    sortByTime(log);
    EXPECT_EQ(log[0].id, StayId(2));
    EXPECT_EQ(log[1].id, StayId(1));
}

TEST(Season, MayRunOverTheNewYear) {
    const auto on = [](int y, unsigned m, unsigned d) {
        return units::Day(std::chrono::year(y), std::chrono::month(m), std::chrono::day(d));
    };
    const Season winter{std::chrono::October / 1, std::chrono::March / 14};
    EXPECT_TRUE(winter.holds(on(2026, 12, 31)));
    EXPECT_TRUE(winter.holds(on(2027, 3, 14)));
    EXPECT_FALSE(winter.holds(on(2027, 3, 15)));
    const Season autumn{std::chrono::September / 15, std::chrono::November / 30};
    EXPECT_TRUE(autumn.holds(on(2026, 9, 15)));
    EXPECT_FALSE(autumn.holds(on(2026, 9, 14)));
    EXPECT_TRUE(autumn.holds(on(2026, 11, 30)));
    EXPECT_FALSE(autumn.holds(on(2026, 12, 1)));
    EXPECT_TRUE(winter.holds(on(2026, 10, 1)));
    EXPECT_FALSE(winter.holds(on(2026, 9, 30)));
}

} // namespace
