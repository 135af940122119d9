// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/refresher.h"
#include "app/days/step_panel.h"
#include "app/days/survey_day/survey_day.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/edits/set_aside_soundings.h"
#include "tests/support/desk_bowl.h"

#include <gtest/gtest.h>

#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

namespace {

constexpr int drawingStep = 3;
constexpr int nextStep = 7;

/// At the desk, with a small water drawn.
class DrawnWaterAtTheDesk : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(folder_.filePath("small.gpkg"), "Skarrow Water"));
        ASSERT_TRUE(support::layBowl(open_));
    }

    template <class Widget>
    static Widget* named(QWidget& day, const QString& name) {
        for (Widget* widget : day.findChildren<Widget*>()) {
            if (widget->accessibleName() == name || widget->property("text").toString() == name) {
                return widget;
            }
        }
        return nullptr;
    }

    /// Sets a few soundings aside and draws the water on.
    void setSomeAside() {
        edits::setAsideSoundings(open_, {{100, 101, 102}});
        ASSERT_TRUE(support::derive(open_));
    }

    QTemporaryDir folder_;
    open_water::OpenWater open_;
    preferences::Preferences preferences_;
    days::ChartLink chart_{open_, preferences_};
    days::DayContext context_{open_, preferences_, chart_};
    days::survey_day::SurveyDay day_{context_};
};

TEST_F(DrawnWaterAtTheDesk, DrawnAgainWithNothingChangedSaysSo) {
    day_.show();
    day_.steps().openStep(drawingStep);
    auto* draw = named<QPushButton>(day_, "Draw");
    ASSERT_NE(draw, nullptr);
    const auto before = open_.derived().drawn;
    // What the sections were used for is counted beside: that is no drawing.
    day_.findChild<days::Refresher*>()->finish();
    open_.jobs().finishAll();
    QSignalSpy happened(&open_, &open_water::OpenWater::happened);
    draw->click();
    ASSERT_EQ(happened.count(), 1);
    EXPECT_TRUE(happened.at(0).at(0).toString().contains("up to date"));
    EXPECT_FALSE(open_.jobs().isBusy());
    EXPECT_EQ(open_.derived().drawn, before);
}

TEST_F(DrawnWaterAtTheDesk, AnEditUndoneTakesTheEarlierMapBack) {
    const water::Derived before = open_.derived();
    setSomeAside();
    EXPECT_NE(open_.derived().drawn, before.drawn);
    open_.undoStack().undo();
    ASSERT_TRUE(support::derive(open_));
    EXPECT_EQ(open_.derived().drawn, before.drawn);
    EXPECT_EQ(open_.derived().sections, before.sections);
}

TEST_F(DrawnWaterAtTheDesk, DrawAfterASmallEditChoosesAnewAndKeepsThat) {
    day_.show();
    setSomeAside();
    ASSERT_TRUE(open_.derived().drawn->report.isChoiceKept);
    day_.steps().openStep(drawingStep);
    named<QPushButton>(day_, "Draw")->click();
    open_.jobs().finishAll();
    EXPECT_FALSE(open_.derived().drawn->report.isChoiceKept);
    open_.finishKeeping();
    open_water::OpenWater other;
    ASSERT_TRUE(other.open(open_.path()));
    ASSERT_TRUE(other.derived().drawn);
    EXPECT_FALSE(other.derived().drawn->report.isChoiceKept);
}

TEST_F(DrawnWaterAtTheDesk, SpeedOfTheBoatIsOneForSoundingAndForFishing) {
    days::tomorrow::TomorrowDay tomorrow(context_);
    day_.steps().openStep(nextStep);
    auto* speed = named<widgets::AmountField>(day_, "Boat speed");
    ASSERT_NE(speed, nullptr);
    speed->setFocus();
    speed->selectAll();
    QTest::keyClicks(speed, "4 kn");
    QTest::keyClick(speed, Qt::Key_Return);
    EXPECT_NEAR(open_.water()->plan.tackle.boatSpeed.inKnots(), 4.0, 1e-9);
    tomorrow.steps().openStep(1);
    for (auto* body : tomorrow.findChildren<days::DayStep*>()) {
        body->refresh();
    }
    auto* between = named<widgets::AmountField>(tomorrow, "Boat speed");
    ASSERT_NE(between, nullptr);
    EXPECT_EQ(between->text(), speed->text());
}

} // namespace
