// SPDX-License-Identifier: GPL-3.0-or-later
// Since an earlier survey, at the desk.
#include "app/days/survey_day/years_part.h"

#include "app/edits/change_facts.h"
#include "app/edits/pin_mark.h"
#include "tests/app/days/desk.h"
#include "tests/support/desk_bowl.h"

#include <QCheckBox>
#include <QFile>
#include <QSignalSpy>

namespace {

using chart::LayerKind;

constexpr int drawingStep = 3;

/// The bowl, and a file of it whose chart level stood 0.6 m lower on the gauge: with the same
/// depths its bed lay that much lower.
class YearsPart : public support::Desk {
protected:
    void SetUp() override {
        Desk::SetUp();
        ASSERT_TRUE(support::layBowl(open_));
        keep();
        earlier_ = folder_.filePath("earlier.gpkg");
        ASSERT_TRUE(QFile::copy(folder_.filePath("small.gpkg"), earlier_));
        openStep(drawingStep);
        turn();
    }
    void keep() {
        open_.jobs().finishAll();
        open_.finishKeeping();
    }
    days::survey_day::YearsPart& part() { return *day_.findChild<days::survey_day::YearsPart*>(); }
    void compare() {
        part().compareWith(earlier_);
        open_.jobs().finishAll();
        turn();
        open_.jobs().finishAll();
    }
    [[nodiscard]] const water::YearsCompared* years() const { return chart_.content().years.get(); }

    QString earlier_;
};

TEST_F(YearsPart, SaysWhereTheBottomHasChangedAndShowsItOnTheChart) {
    EXPECT_FALSE(chart_.content().shown.contains(LayerKind::change));
    compare();
    ASSERT_NE(years(), nullptr);
    EXPECT_TRUE(says("nothing has changed by more than both surveys may be off"));
    EXPECT_TRUE(chart_.content().shown.contains(LayerKind::change));
    EXPECT_EQ(years()->sums.risen, units::Area());
    button("Leave it").click();
    EXPECT_EQ(years(), nullptr);
    EXPECT_FALSE(says("drawn both times"));
}

TEST_F(YearsPart, WhatIsToldIsAlwaysOfTheDrawingThatIsShown) {
    compare();
    const auto before = chart_.content().years;
    edits::changeFacts(open_, "Set chart level", [](water::Water& water) {
        water.chartLevel = water.chartLevel + units::Length::metres(0.6);
    });
    turn();
    EXPECT_EQ(years(), nullptr) << "depths of before on a gauge of now would be silt";
    EXPECT_TRUE(says("Comparing"));
    chart_.setShown(LayerKind::change, false);
    ASSERT_TRUE(support::derive(open_));
    open_.jobs().finishAll();
    turn();
    EXPECT_NE(chart_.content().years, before);
    open_.jobs().finishAll();
    ASSERT_NE(years(), nullptr);
    EXPECT_EQ(years()->change.rise_m.frame(), open_.derived().drawn->depth.frame());
    EXPECT_FALSE(chart_.content().shown.contains(LayerKind::change)) << "he switched it off";
}

TEST_F(YearsPart, TakesTheMiddleOffWhereThatIsALevel) {
    compare();
    EXPECT_FALSE(years()->takenOff);
    named<QCheckBox>("What all has in common is a level").click();
    open_.jobs().finishAll();
    ASSERT_NE(years(), nullptr);
    EXPECT_TRUE(years()->takenOff);
    EXPECT_TRUE(says("taken for a level noted wrongly"));
}

TEST_F(YearsPart, TellsOfTheUsersMarks) {
    const geo::LonLat place = open_.water()->frame->toEarth({0, 0});
    edits::pinMark(open_, place, {"Ours", place});
    compare();
    const auto& table = named<widgets::PlainTable>("Marks since the earlier survey");
    ASSERT_EQ(table.rowCount(), 1);
    EXPECT_EQ(table.words(0, 0), "Ours");
    EXPECT_TRUE(table.words(0, 1).startsWith("as it was, "));
    const geo::LonLat beside = open_.water()->frame->toEarth({60, 0});
    edits::pinMark(open_, beside, {"Another", beside});
    turn();
    open_.jobs().finishAll();
    EXPECT_EQ(table.rowCount(), 2) << "a mark made since";
}

TEST_F(YearsPart, LeavesTheComparisonWithTheWater) {
    compare();
    ASSERT_TRUE(open_.create(folder_.filePath("other.gpkg"), "Other"));
    ASSERT_TRUE(support::layBowl(open_));
    turn();
    open_.jobs().finishAll();
    EXPECT_EQ(years(), nullptr) << "the years of one water are not another's";
}

TEST_F(YearsPart, SaysWhatCannotBeCompared) {
    QSignalSpy failed(&open_, &open_water::OpenWater::failed);
    part().compareWith(folder_.filePath("none.gpkg"));
    open_.jobs().finishAll();
    EXPECT_EQ(failed.count(), 1);
    EXPECT_EQ(years(), nullptr);
}

} // namespace
