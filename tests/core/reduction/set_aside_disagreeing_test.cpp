// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/set_aside_disagreeing.h"

#include "tests/core/reduction/survey_builder.h"

#include <algorithm>
#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace reduction {

namespace {

using soundings::Verdict;

/// Three passes side by side, 4 m apart, over a bottom that falls by 1 in 5 along them.
std::vector<soundings::SurveyDay> threePasses(std::uint32_t seed = 1) {
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0.0, 0.05);
    std::vector<soundings::SurveyDay> days;
    for (const double side_m : {0.0, 4.0, 8.0}) {
        days.push_back(MadeUpDay::along({0, side_m}, {198, side_m}, 100, [&](geo::WaterPoint p) {
            return 3.0 + 0.2 * p.x_m + noise(random);
        }));
    }
    return days;
}

ReducedSurvey compared(const std::vector<soundings::SurveyDay>& days) {
    base::Progress progress;
    return setAsideDisagreeing(days, MadeUpDay::reduced(days), {}, progress).value();
}

void shift(soundings::SurveyDay& day, std::size_t first, std::size_t last, double by_m) {
    for (std::size_t i = first; i < last; ++i) {
        day.soundings.edit()[i].shown =
            units::Depth::metres(day.soundings[i].shown.inMetres() + by_m);
    }
}

TEST(SetAsideDisagreeing, FindsALongStretchThatTwoOtherPassesContradict) {
    auto days = threePasses();
    shift(days[1], 40, 80, -8.0);
    const ReducedSurvey survey = compared(days);
    for (std::size_t i = 45; i < 75; ++i) {
        EXPECT_EQ(survey.days[1].verdicts[i], Verdict::disagrees) << i;
    }
    EXPECT_EQ(std::ranges::count(survey.days[0].verdicts, Verdict::kept), 100);
    EXPECT_EQ(std::ranges::count(survey.days[2].verdicts, Verdict::kept), 100);
}

TEST(SetAsideDisagreeing, OfTwoPassesAloneBothStay) {
    auto days = threePasses();
    days.pop_back();
    shift(days[1], 40, 80, -8.0);
    EXPECT_EQ(compared(days).keptCount(), 200U);
}

TEST(SetAsideDisagreeing, LeavesASteepBottomAlone) {
    for (std::uint32_t seed = 1; seed <= 10; ++seed) {
        EXPECT_EQ(compared(threePasses(seed)).keptCount(), 300U) << "seed " << seed;
    }
}

TEST(SetAsideDisagreeing, LeavesWhatTheUserTookBack) {
    auto days = threePasses();
    shift(days[1], 40, 80, -8.0);
    days[1].keptByHand = {60};
    EXPECT_EQ(compared(days).days[1].verdicts[60], Verdict::kept);
    EXPECT_EQ(compared(days).days[1].verdicts[61], Verdict::disagrees);
}

TEST(SetAsideDisagreeing, NamesASettingThatIsOutOfItsRange) {
    const auto days = threePasses();
    DisagreeingSettings settings;
    settings.near_m = 0.0;
    base::Progress progress;
    const auto result = setAsideDisagreeing(days, MadeUpDay::reduced(days), settings, progress);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().kind, base::ErrorKind::wrongUse);
}

} // namespace

} // namespace reduction
