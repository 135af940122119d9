// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/wind_dial.h"
#include "tests/app/support/recorded_pages.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

#include <cmath>
#include <numbers>

namespace {

using widgets::WindDial;

class WindDialTest : public testing::Test {
protected:
    WindDialTest() { dial_.resize(120, 120); }
    static QPoint towards(double degrees, double away = 45.0) {
        const double angle = degrees * std::numbers::pi / 180.0;
        return {static_cast<int>(std::lround(60.0 + away * std::sin(angle))),
                static_cast<int>(std::lround(60.0 - away * std::cos(angle)))};
    }
    WindDial dial_;
    QSignalSpy turning_{&dial_, &WindDial::turning};
    QSignalSpy turned_{&dial_, &WindDial::turned};
};

TEST_F(WindDialTest, TakesAnyAngleAsOneFromNorthClockwise) {
    for (const auto& [given, taken] :
         {std::pair(0.0, 0.0), {47.0, 47.0}, {360.0, 0.0}, {-10.0, 350.0}, {725.0, 5.0}}) {
        dial_.setFrom(given);
        EXPECT_NEAR(dial_.from(), taken, 1e-9) << given;
    }
    EXPECT_EQ(turned_.count(), 0) << "shown, not turned";
}

TEST_F(WindDialTest, EveryDirectionIsThatUnderTheHandInStepsOfFive) {
    for (int degrees = 0; degrees < 360; degrees += 15) {
        QTest::mousePress(&dial_, Qt::LeftButton, {}, towards(degrees + 1.0));
        EXPECT_NEAR(dial_.from(), degrees, 1e-9);
        QTest::mouseRelease(&dial_, Qt::LeftButton, {}, towards(degrees + 1.0));
        EXPECT_NEAR(turning_.back().at(0).toDouble(), degrees, 1e-9);
        EXPECT_NEAR(turned_.back().at(0).toDouble(), degrees, 1e-9);
    }
}

TEST_F(WindDialTest, TellsWhileItTurnsAndOnceWhenLetGo) {
    QTest::mousePress(&dial_, Qt::LeftButton, {}, towards(90.0));
    QTest::mouseMove(&dial_, towards(180.0));
    EXPECT_GE(turning_.count(), 2);
    EXPECT_EQ(turned_.count(), 0);
    dial_.setFrom(10.0);
    EXPECT_NEAR(dial_.from(), 180.0, 1e-9) << "left alone while it is dragged";
    QTest::mouseRelease(&dial_, Qt::LeftButton, {}, towards(180.0));
    ASSERT_EQ(turned_.count(), 1);
    EXPECT_NEAR(turned_.at(0).at(0).toDouble(), 180.0, 1e-9);
    dial_.setFrom(10.0);
    EXPECT_NEAR(dial_.from(), 10.0, 1e-9);
}

TEST_F(WindDialTest, TheOtherButtonAndItsMiddleTurnNothing) {
    dial_.setFrom(70.0);
    QTest::mouseClick(&dial_, Qt::RightButton, {}, towards(180.0));
    QTest::mouseMove(&dial_, towards(200.0));
    EXPECT_EQ(turned_.count(), 0);
    QTest::mousePress(&dial_, Qt::LeftButton, {}, towards(180.0, 2.0));
    EXPECT_NEAR(dial_.from(), 70.0, 1e-9);
}

TEST_F(WindDialTest, RightAndUpTurnClockwiseLeftAndDownBack) {
    for (const auto& [key, turn] : {std::pair(Qt::Key_Right, 5.0),
                                    {Qt::Key_Up, 5.0},
                                    {Qt::Key_Left, -5.0},
                                    {Qt::Key_Down, -5.0}}) {
        dial_.setFrom(100.0);
        QTest::keyClick(&dial_, key);
        EXPECT_NEAR(dial_.from(), 100.0 + turn, 1e-9);
        EXPECT_NEAR(turned_.back().at(0).toDouble(), 100.0 + turn, 1e-9);
    }
    const qsizetype before = turned_.count();
    QTest::keyClick(&dial_, Qt::Key_A);
    EXPECT_EQ(turned_.count(), before);
}

TEST_F(WindDialTest, TheArrowBlowsFromThereThroughTheMiddle) {
    dial_.setFrom(90.0);
    support::RecordedPages pages;
    dial_.render(&pages);
    // The arrow is the last line and the head the only polygon: it points away from the east.
    const auto lines = pages.all(support::Drawn::Kind::line);
    const auto heads = pages.all(support::Drawn::Kind::polygon);
    ASSERT_FALSE(lines.empty());
    ASSERT_FALSE(heads.empty());
    EXPECT_GT(lines.back().points[0].x(), 90.0) << "its tail is where the wind comes from";
    EXPECT_LT(lines.back().points[1].x(), 30.0);
    EXPECT_NEAR(lines.back().points[0].y(), 60.0, 0.6);
    EXPECT_LT(heads.back().points[0].x(), heads.back().points[1].x());
    EXPECT_LT(heads.back().points[0].x(), 30.0);
    EXPECT_EQ(pages.lines(), QStringList({"N", "E", "S", "W"}));
    std::vector<QPointF> letters;
    for (const auto& text : pages.all(support::Drawn::Kind::text)) {
        letters.push_back(text.points[0]);
    }
    EXPECT_LT(letters[0].y(), letters[2].y());
    EXPECT_GT(letters[1].x(), letters[3].x());
}

} // namespace
