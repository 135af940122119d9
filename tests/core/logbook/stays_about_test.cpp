// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/stays_about.h"

#include <gtest/gtest.h>

#include <random>

namespace {

using namespace logbook;
using namespace std::chrono_literals;

const units::Moment october{std::chrono::sys_days(std::chrono::year(2026) / 10 / 1)};

TEST(StaysAbout, AreAllThatCanBeUnderWayAndNoneThatCannot) {
    std::mt19937 dice(11);
    std::uniform_int_distribution<int> minute(0, 6 * 24 * 60);
    Log stays(400);
    for (std::size_t i = 0; i < stays.size(); ++i) {
        stays[i].id = StayId(static_cast<std::int64_t>(i) + 1);
        stays[i].start = october + std::chrono::minutes(minute(dice));
        stays[i].end = stays[i].start + std::chrono::minutes(minute(dice) % 1440);
    }
    KeptLog log;
    putInOrder(log, stays);
    for (int time = 0; time < 200; ++time) {
        const units::Moment start = october + std::chrono::minutes(minute(dice));
        const units::Moment end = start + std::chrono::minutes(minute(dice) % 600);
        const Positions found = staysAbout(log, start, end);
        for (std::size_t i = 0; i < log.size(); ++i) {
            const bool isFound = !found.empty() && i >= found.front() && i <= found.back();
            EXPECT_EQ(isFound, log[i].start >= start - longestStay && log[i].start <= end);
            EXPECT_TRUE(isFound || log[i].end < start || log[i].start > end);
        }
    }
}

TEST(StaysAbout, IncludeThoseAtBothBounds) {
    Stay dayBefore;
    dayBefore.id = StayId(1);
    dayBefore.start = october;
    Stay atTheEnd = dayBefore;
    atTheEnd.id = StayId(2);
    atTheEnd.start = october + longestStay + 1h;
    const KeptLog log({dayBefore, atTheEnd});
    EXPECT_EQ(staysAbout(log, october + longestStay, atTheEnd.start).size(), 2U);
    EXPECT_EQ(staysAbout(log, october + longestStay + 1ms, atTheEnd.start - 1ms).size(), 0U);
    EXPECT_TRUE(staysAbout({}, october, october).empty());
}

} // namespace
