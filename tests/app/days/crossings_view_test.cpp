// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/crossings_view.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

namespace survey_day = days::survey_day;

namespace {

const wording::Words metric(preferences::UnitSystem::metric);
const wording::Words imperial(preferences::UnitSystem::imperial);

reduction::Crossing crossing(double x_m, double difference_m, int dayA, int dayB) {
    reduction::Crossing crossing;
    crossing.at = {x_m, 0.0};
    crossing.depthA_m = 5.0;
    crossing.depthB_m = 5.0 + difference_m;
    crossing.dayA = dayA;
    crossing.dayB = dayB;
    return crossing;
}

class CrossingsViewTest : public testing::Test {
protected:
    void SetUp() override {
        water_ = support::starWater();
        water_.days.resize(2);
        water_.days[0].name = "2026-09-05";
        water_.days[1].name = "north end";
        auto checked = std::make_shared<water::CheckedSurvey>();
        checked->crossings = {crossing(0.0, 0.1, 0, 0), crossing(50.0, -1.7, 0, 1),
                              crossing(5000.0, 0.4, 0, 1)};
        checked->check = {.count = 61, .mean_m = -0.04, .rms_m = 0.29};
        derived_ = support::starDerived();
        derived_.checked = std::move(checked);
    }
    survey_day::ViewInput input(const wording::Words& words = metric) const {
        return {water_, derived_, words, {}};
    }
    water::Water water_;
    water::Derived derived_;
};

TEST_F(CrossingsViewTest, TellsTheMeanWithItsSign) {
    const auto view = survey_day::crossingsViewOf(input());
    ASSERT_EQ(view.summary.size(), 6U);
    EXPECT_EQ(view.summary[0], (QStringList{"crossings", "61"}));
    EXPECT_EQ(view.summary[1][1], "−0.04 m");
    EXPECT_EQ(view.summary[2][1], "0.29 m");
}

TEST_F(CrossingsViewTest, ListsTheWorstFirstWhicheverPassIsDeeper) {
    const auto view = survey_day::crossingsViewOf(input());
    EXPECT_EQ(view.crossings, (std::vector<std::size_t>{1, 2, 0}));
    ASSERT_EQ(view.worst.size(), 3U);
    EXPECT_EQ(view.worst[0][2], "−1.70 m");
    EXPECT_EQ(view.worst[1][2], "+0.40 m");
    EXPECT_EQ(view.rowOf(2), 1);
    EXPECT_FALSE(view.rowOf(7));
}

TEST_F(CrossingsViewTest, ListsNoMoreThanAskedFor) {
    const auto view = survey_day::crossingsViewOf(input(), 2);
    EXPECT_EQ(view.crossings, (std::vector<std::size_t>{1, 2}));
    EXPECT_FALSE(view.rowOf(0));
}

TEST_F(CrossingsViewTest, NamesTheDaysShortAndOnceWhereBothAreTheSame) {
    const auto view = survey_day::crossingsViewOf(input());
    EXPECT_EQ(view.worst[0][1], "5 Sep, north end");
    EXPECT_EQ(view.worst[2][1], "5 Sep");
}

TEST_F(CrossingsViewTest, NamesTheSectionOrElseThePlace) {
    auto map = std::make_shared<sections::SectionMap>(*derived_.sections);
    map->sectionOfCell[map->sectionOfCell.frame().cellOf({50.0, 0.0})] = 2;
    derived_.sections = map;
    const auto view = survey_day::crossingsViewOf(input());
    EXPECT_EQ(view.worst[0][0].toStdString(), map->sections[2].name);
    EXPECT_TRUE(view.worst[1][0].endsWith(" E")) << view.worst[1][0].toStdString(); // on land
}

TEST_F(CrossingsViewTest, SaysBothDepthsOfACrossing) {
    const QString words = survey_day::crossingWords(input(), 1);
    EXPECT_TRUE(words.startsWith("5.00 m on the earlier pass, 3.30 m on the later"))
        << words.toStdString();
    EXPECT_TRUE(survey_day::crossingWords(input(imperial), 1).startsWith("16.40 ft"));
    EXPECT_TRUE(survey_day::crossingWords(input(), 3).isEmpty());
}

TEST_F(CrossingsViewTest, HasNothingToSayWithoutCrossings) {
    derived_.checked = std::make_shared<water::CheckedSurvey>();
    const auto view = survey_day::crossingsViewOf(input());
    EXPECT_TRUE(view.summary.empty());
    EXPECT_TRUE(view.worst.empty());
}

} // namespace
