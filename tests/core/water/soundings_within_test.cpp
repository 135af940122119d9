// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/soundings_within.h"

#include <gtest/gtest.h>

namespace {

reduction::ReducedSurvey surveyAt(std::vector<geo::WaterPoint> points) {
    reduction::ReducedSurvey survey;
    survey.days.resize(2);
    survey.days[1].points = std::move(points);
    return survey;
}

TEST(SoundingsWithin, TakesWhatLiesInTheRingDayByDay) {
    const geo::Ring square{{0.0, 0.0}, {10.0, 0.0}, {10.0, 10.0}, {0.0, 10.0}};
    const auto choice = water::soundingsWithin(
        surveyAt({{5.0, 5.0}, {15.0, 5.0}, {9.9, 0.1}, {-0.1, 5.0}, {5.0, 10.1}}), square);
    ASSERT_EQ(choice.size(), 2U);
    EXPECT_TRUE(choice[0].empty());
    EXPECT_EQ(choice[1], (std::vector<std::size_t>{0, 2}));
}

TEST(SoundingsWithin, TakesBothLobesOfARingThatCrossesItself) {
    const geo::Ring bow{{0.0, 0.0}, {10.0, 10.0}, {10.0, 0.0}, {0.0, 10.0}};
    const auto choice =
        water::soundingsWithin(surveyAt({{1.0, 5.0}, {9.0, 5.0}, {5.0, 9.0}, {5.0, 1.0}}), bow);
    EXPECT_EQ(choice[1], (std::vector<std::size_t>{0, 1}));
}

TEST(SoundingsWithin, TakesNothingFromARingOfNoArea) {
    EXPECT_TRUE(water::soundingsWithin(surveyAt({{0.0, 0.0}}), {})[1].empty());
}

} // namespace
