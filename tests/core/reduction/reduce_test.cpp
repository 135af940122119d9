// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/correct_depths.h"

#include "core/reduction/set_aside_outside_shore.h"
#include "tests/core/reduction/survey_builder.h"

#include <gtest/gtest.h>

namespace reduction {

namespace {

using soundings::Verdict;

soundings::SurveyDay flatDay(double depth_m, std::size_t count = 20) {
    return MadeUpDay::along({0, 0}, {2.0 * static_cast<double>(count - 1), 0}, count,
                            [depth_m](geo::WaterPoint) { return depth_m; });
}

TEST(ReductionTerms, AddUpToTheReducedDepth) {
    soundings::SurveyDay day = flatDay(10.0);
    day.waterTemperature = units::Temperature::celsius(4.0);
    day.sounder.draft = units::Depth::metres(0.3);
    day.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(0.45));
    ReductionSettings settings;
    settings.chartLevel = units::WaterLevel::metresOnGauge(0.25);
    settings.dayOffsets = {units::Length::metres(0.05)};
    const ReductionTerms terms = termsOf({day}, 0, 3, settings);
    EXPECT_NEAR(terms.soundSpeed.inMetres(), -0.5224, 5e-5); // 10 m shown at 4 C are 9.4776 m
    EXPECT_DOUBLE_EQ(terms.draft.inMetres(), 0.3);
    EXPECT_DOUBLE_EQ(terms.level.inMetres(), -0.2);
    EXPECT_DOUBLE_EQ(
        terms.reduced.inMetres(),
        terms.shown.inMetres() +
            (terms.soundSpeed + terms.draft + terms.level + terms.dayOffset).inMetres());
    EXPECT_NEAR(terms.reduced.inMetres(), 9.6276, 5e-5);
}

TEST(ReductionTerms, TakeTheFirstKnownLevelAsChartLevel) {
    soundings::SurveyDay without = flatDay(5.0);
    soundings::SurveyDay with = flatDay(5.0);
    with.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(1.5));
    const auto level = chartLevelOf({without, with}, {});
    ASSERT_TRUE(level);
    EXPECT_DOUBLE_EQ(level->inMetresOnGauge(), 1.5);
    EXPECT_FALSE(chartLevelOf({without}, {}));
    EXPECT_DOUBLE_EQ(termsOf({without, with}, 0, 0, {}).reduced.inMetres(), 5.0);
}

TEST(ReductionTerms, FollowTheGaugeOverTheDay) {
    soundings::SurveyDay day = flatDay(5.0);
    day.gauge = soundings::Gauge::table(
        {{*day.soundings.front().time, units::WaterLevel::metresOnGauge(1.0)},
         {*day.soundings.back().time, units::WaterLevel::metresOnGauge(1.19)}});
    ReductionSettings settings;
    settings.chartLevel = units::WaterLevel::metresOnGauge(1.0);
    EXPECT_NEAR(termsOf({day}, 0, 10, settings).level.inMetres(), -0.10, 1e-12);
}

TEST(ReductionTerms, CorrectNoSpeedForALeadLine) {
    soundings::SurveyDay day = flatDay(5.0);
    day.waterTemperature = units::Temperature::celsius(4.0);
    day.sounder.measuresBySound = false;
    EXPECT_DOUBLE_EQ(termsOf({day}, 0, 0, {}).reduced.inMetres(), 5.0);
}

TEST(CorrectDepths, RefusesOffsetsForOtherDays) {
    base::Progress progress;
    ReductionSettings settings;
    settings.dayOffsets.resize(3);
    const auto reduced = correctDepths({flatDay(5.0)}, MadeUpDay::frame(), settings, progress);
    ASSERT_FALSE(reduced);
    EXPECT_EQ(reduced.error().kind, base::ErrorKind::wrongUse);
}

TEST(KeptSoundings, NumberPassesOverAllDays) {
    soundings::SurveyDay first = flatDay(5.0);
    first.passStarts = {0, 8};
    first.setAsideByHand = {3};
    const std::vector days{first, flatDay(6.0)};
    const auto kept = keptSoundings(days, MadeUpDay::reduced(days));
    ASSERT_EQ(kept.size(), 39U);
    EXPECT_EQ(kept[6].pass, 0);
    EXPECT_EQ(kept[7].pass, 1); // number 3 is set aside
    EXPECT_EQ(kept[19].pass, 2);
    EXPECT_EQ(kept[19].day, 1);
    EXPECT_NEAR(kept[19].depth_m, 6.0, 1e-12);
    EXPECT_EQ(MadeUpDay::reduced(days).setAsideCounts(),
              (std::map<std::string, std::size_t>{{"by_hand", 1}}));
}

geo::Outline square(double from_m, double to_m) {
    return *geo::Outline::make(
        std::vector<geo::Piece>{{{{from_m, -50}, {to_m, -50}, {to_m, 50}, {from_m, 50}}, {}}},
        MadeUpDay::frame());
}

TEST(SetAsideOutsideShore, LeavesWhatTheUserTookBack) {
    soundings::SurveyDay day = flatDay(5.0); // from 0 to 38 m
    day.keptByHand = {0};
    base::Progress progress;
    const auto survey = setAsideOutsideShore({day}, MadeUpDay::reduced({day}), square(9, 200),
                                             MadeUpDay::frame(), {}, progress);
    ASSERT_TRUE(survey);
    EXPECT_EQ(survey->days[0].verdicts[0], Verdict::kept);
    EXPECT_EQ(survey->days[0].verdicts[4], Verdict::outsideShore);
    EXPECT_EQ(survey->days[0].verdicts[5], Verdict::kept);
    OutsideShoreSettings lenient;
    lenient.margin_m = 2.0;
    const auto near = setAsideOutsideShore({day}, MadeUpDay::reduced({day}), square(9, 200),
                                           MadeUpDay::frame(), lenient, progress);
    EXPECT_EQ(near->days[0].verdicts[4], Verdict::kept);
    EXPECT_EQ(near->days[0].verdicts[3], Verdict::outsideShore);
}

TEST(SetAsideOutsideShore, SaysHowFarOffAllSoundingsLie) {
    base::Progress progress;
    const std::vector days{flatDay(5.0)};
    const auto survey = setAsideOutsideShore(days, MadeUpDay::reduced(days), square(10000, 10200),
                                             MadeUpDay::frame(), {}, progress);
    ASSERT_FALSE(survey);
    EXPECT_EQ(survey.error().kind, base::ErrorKind::unusableInput);
    EXPECT_NE(survey.error().what.find("10.1 km"), std::string::npos) << survey.error().what;
}

TEST(SetAsideOutsideShore, SaysThatLongitudeAndLatitudeAreSwapped) {
    base::Progress progress;
    std::vector days{flatDay(5.0)};
    for (soundings::Sounding& sounding : days[0].soundings.edit()) {
        std::swap(sounding.place.lon_deg, sounding.place.lat_deg);
    }
    const auto survey = setAsideOutsideShore(days, MadeUpDay::reduced(days), square(-10, 200),
                                             MadeUpDay::frame(), {}, progress);
    ASSERT_FALSE(survey);
    EXPECT_NE(survey.error().whatToDo.find("swapped"), std::string::npos);
}

} // namespace

} // namespace reduction
