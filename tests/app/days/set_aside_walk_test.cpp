// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/set_aside_walk.h"
#include "app/days/survey_day/sounding_view.h"

#include <gtest/gtest.h>

namespace {

namespace survey_day = days::survey_day;
using chart::SoundingPick;
using soundings::Verdict;
using survey_day::SetAsideWalk;

/// Two days of four soundings; spikes at 1 and 3 of the first and at 0 of the second.
struct TwoDays {
    TwoDays() {
        water.days.resize(2);
        auto checked = std::make_shared<water::CheckedSurvey>();
        checked->survey.days.resize(2);
        for (std::size_t d = 0; d < 2; ++d) {
            water.days[d].soundings.edit().assign(4, {{3.1, 55.2}, units::Depth::metres(4.2), {}});
            checked->survey.days[d].points.resize(4);
            checked->survey.days[d].depth_m.resize(4);
        }
        checked->survey.days[0].verdicts = {Verdict::kept, Verdict::spike, Verdict::kept,
                                            Verdict::spike};
        checked->survey.days[1].verdicts = {Verdict::spike, Verdict::kept, Verdict::byHand,
                                            Verdict::kept};
        water.days[1].setAsideByHand = {2};
        derived.checked = std::move(checked);
    }
    SetAsideWalk spikes() const { return {water.days, derived.checked, Verdict::spike}; }
    water::Water water;
    water::Derived derived;
};

TEST(SetAsideWalk, GoesThroughAllDaysAndRoundAgain) {
    const SetAsideWalk walk = TwoDays().spikes();
    ASSERT_EQ(walk.size(), 3U);
    std::optional<SoundingPick> at;
    for (const SoundingPick wanted : {SoundingPick{0, 1}, {0, 3}, {1, 0}, {0, 1}}) {
        at = walk.after(at);
        EXPECT_EQ(at, wanted);
    }
    EXPECT_EQ(walk.before(at), (SoundingPick{1, 0}));
    EXPECT_EQ(survey_day::walkWords(walk, Verdict::spike, SoundingPick{1, 0}), "3 of 3: spike");
}

TEST(SetAsideWalk, ASoundingTakenBackByHandLeavesAtOnceButKeepsItsPlace) {
    TwoDays two;
    two.water.days[0].keptByHand = {3};
    const SetAsideWalk walk = two.spikes();
    ASSERT_EQ(walk.size(), 2U);
    EXPECT_FALSE(walk.positionOf({0, 3}));
    EXPECT_EQ(walk.before(SoundingPick{0, 3}), (SoundingPick{0, 1}));
    EXPECT_EQ(walk.after(SoundingPick{0, 3}), (SoundingPick{1, 0}));
    EXPECT_EQ(survey_day::walkWords(walk, Verdict::spike, SoundingPick{0, 3}), "2 left: spike");
}

TEST(SetAsideWalk, AnEmptyOneHasNoNext) {
    const SetAsideWalk none;
    EXPECT_FALSE(none.after(std::nullopt));
    EXPECT_FALSE(none.before(SoundingPick{0, 1}));
    EXPECT_EQ(survey_day::walkWords(none, Verdict::byHand, std::nullopt), "none left: by hand");
}

TEST(SetAsideWalk, ReasonsFollowTheHandBeforeTheRulesDo) {
    TwoDays two;
    two.water.days[0].setAsideByHand = {0, 2};
    two.water.days[1].setAsideByHand.edit().clear();
    const auto reasons = survey_day::reasonsFor(two.water.days, two.derived.checked);
    ASSERT_EQ(reasons.size(), 2U);
    EXPECT_EQ(reasons[0], std::pair(Verdict::spike, std::size_t{3}));
    EXPECT_EQ(reasons[1], std::pair(Verdict::byHand, std::size_t{2}));
}

TEST(SoundingView, TellsTheTermsOfADepthAsASum) {
    TwoDays two;
    soundings::SurveyDay& day = two.water.days[0];
    day.name = "2026-09-05";
    day.sounder.draft = units::Depth::metres(0.25);
    day.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(0.35));
    day.agreedOffset = units::Length::metres(0.1);
    const auto view = survey_day::soundingViewOf(
        {two.water, two.derived, wording::Words(preferences::UnitSystem::metric), {}}, {0, 1});
    ASSERT_TRUE(view);
    EXPECT_EQ(view->title, "2026-09-05, no time");
    EXPECT_EQ(view->verdict, "set aside: spike");
    ASSERT_EQ(view->terms.size(), 6U);
    EXPECT_EQ(view->terms[0], (QStringList{"shown by the sounder", "4.20 m"}));
    EXPECT_EQ(view->terms[1], (QStringList{"speed of sound: water not known", "0.00 m"}));
    EXPECT_EQ(view->terms[2][1], "+0.25 m");
    EXPECT_EQ(view->terms[3], (QStringList{"water level, gauge +0.35 m", "−0.35 m"}));
    EXPECT_EQ(view->terms[4], (QStringList{"agreed for this day", "+0.10 m"}));
    EXPECT_EQ(view->terms[5], (QStringList{"below chart level", "= 4.20 m"}));
}

TEST(SoundingView, SaysWhatTheHandHasDecided) {
    TwoDays two;
    two.water.days[0].keptByHand = {1};
    const wording::Words words;
    EXPECT_EQ(survey_day::soundingViewOf({two.water, two.derived, words, {}}, {0, 1})->verdict,
              "kept by hand");
    EXPECT_EQ(survey_day::soundingViewOf({two.water, two.derived, words, {}}, {1, 2})->verdict,
              "set aside: by hand");
    EXPECT_FALSE(survey_day::soundingViewOf({two.water, two.derived, words, {}}, {2, 0}));
}

} // namespace
