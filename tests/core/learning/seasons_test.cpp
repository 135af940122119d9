// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/learning/seasons.h"

#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using learning::Seasons;

TEST(Seasons, BeginAfterTwoMonthsWithoutATrip) {
    const Seasons seasons({2025y / 10 / 1, 2025y / 11 / 29, 2026y / 1 / 27, 2026y / 3 / 28});
    EXPECT_EQ(seasons.slotOf(2026y / 3 / 28), 3);
    EXPECT_EQ(seasons.slotOf(2026y / 1 / 27), 2) << "59 days are no rest";
    EXPECT_EQ(seasons.slotOf(2025y / 10 / 1), 2);
}

TEST(Seasons, BeginAnewAfterAYearOfFishingAllTheTime) {
    std::vector<units::Day> days;
    for (int k = 0; k < 60; ++k) {
        days.emplace_back(std::chrono::sys_days(2024y / 1 / 1) + std::chrono::days(14 * k));
    }
    const Seasons seasons(days);
    EXPECT_EQ(seasons.slotOf(days.front()), 1);
    EXPECT_EQ(seasons.slotOf(2024y / 12 / 30), 1) << "day 364";
    EXPECT_EQ(seasons.slotOf(days.back()), 3);
}

TEST(Seasons, OlderThanTheNewestFourAreHeldTogether) {
    const Seasons seasons(
        {2020y / 5 / 1, 2021y / 5 / 1, 2022y / 5 / 1, 2023y / 5 / 1, 2024y / 5 / 1, 2025y / 5 / 1});
    EXPECT_EQ(seasons.slotOf(2025y / 5 / 1), 3);
    EXPECT_EQ(seasons.slotOf(2022y / 5 / 1), 0);
    EXPECT_EQ(seasons.slotOf(2021y / 5 / 1), 0);
    EXPECT_EQ(seasons.slotOf(2020y / 5 / 1), 0);
}

TEST(Seasons, DoNotDependOnTheOrderOfTheDays) {
    const Seasons seasons({2026y / 3 / 28, 2025y / 10 / 1, 2025y / 11 / 29});
    EXPECT_EQ(seasons.slotOf(2025y / 11 / 29), 2);
    EXPECT_EQ(seasons.slotOf(2026y / 3 / 28), 3);
}

} // namespace
