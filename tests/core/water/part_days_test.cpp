// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/part_days.h"

#include <gtest/gtest.h>

namespace {

using soundings::Sounding;
using soundings::SurveyDay;
using std::chrono::hours;
using std::chrono::minutes;

const units::Clock london = units::Clock::inZone("Europe/London").value();
/// Midnight UTC of 2026-05-02.
const units::Moment midnight{std::chrono::sys_days(std::chrono::year(2026) / 5 / 2)};

SurveyDay dayOf(const std::vector<std::optional<units::Moment>>& times) {
    SurveyDay day;
    day.name = "whole";
    day.source = "log.nmea";
    day.waterTemperature = units::Temperature::celsius(12.0);
    double depth_m = 1.0;
    for (const auto& time : times) {
        day.soundings.edit().push_back({{3.1, 55.2}, units::Depth::metres(depth_m), time});
        depth_m += 1.0;
    }
    day.passStarts = {0};
    return day;
}

TEST(PartDays, ThreeDaysInOneFileAreThreeSurveyDays) {
    SurveyDay whole = dayOf({midnight + hours(9), midnight + hours(10), std::nullopt,
                             midnight + hours(33), midnight + hours(34), midnight + hours(60)});
    whole.passStarts = {0, 2, 4};
    whole.setAsideByHand = {1, 4};
    const auto days = water::partedByDays(whole, london);
    ASSERT_EQ(days.size(), 3U);
    EXPECT_EQ(days[0].name, "2026-05-02");
    EXPECT_EQ(days[1].name, "2026-05-03");
    EXPECT_EQ(days[2].name, "2026-05-04");
    EXPECT_EQ(days[0].soundings.size(), 3U) << "without a time: with those before";
    EXPECT_EQ(days[0].passStarts, (std::vector<std::size_t>{0, 2}));
    EXPECT_EQ(days[1].passStarts, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(days[1].setAsideByHand, (std::vector<std::size_t>{1}));
    EXPECT_EQ(days[2].passStarts, (std::vector<std::size_t>{0}));
    std::size_t all = 0;
    for (const SurveyDay& day : days) {
        EXPECT_EQ(day.source, "log.nmea");
        EXPECT_FALSE(day.waterTemperature) << "a mean over three days is true of none";
        all += day.soundings.size();
    }
    EXPECT_EQ(all, whole.soundings.size()) << "nothing lost, nothing doubled";
}

TEST(PartDays, AnOutingOverMidnightAndAFileWithoutTimesStayWhole) {
    const SurveyDay night =
        dayOf({midnight + hours(21), midnight + hours(24) + minutes(30), midnight + hours(26)});
    EXPECT_EQ(water::partedByDays(night, london), std::vector{night});
    const SurveyDay untimed = dayOf({std::nullopt, std::nullopt});
    EXPECT_EQ(water::partedByDays(untimed, london), std::vector{untimed});
    const SurveyDay twice = dayOf({midnight + hours(6), midnight + hours(20)});
    EXPECT_EQ(water::partedByDays(twice, london), std::vector{twice}) << "one date";
    EXPECT_EQ(water::partedByDays(SurveyDay(), london).size(), 1U);
}

TEST(PartDays, TheDateIsThatAtTheWater) {
    // 23:30 UTC is past midnight in a British summer.
    const SurveyDay day = dayOf({midnight + hours(12), midnight + hours(23) + minutes(30)});
    EXPECT_EQ(water::partedByDays(day, london).size(), 2U);
    EXPECT_EQ(water::partedByDays(day, units::Clock()).size(), 1U);
}

} // namespace
