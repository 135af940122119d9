// SPDX-License-Identifier: GPL-3.0-or-later
// What can be pointed at and drawn on the chart without a mouse.
#include "app/chart/chart_canvas.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

namespace {

using chart::ChartCanvas;

class KeyPointer : public testing::Test {
protected:
    void SetUp() override {
        canvas_.resize(900, 640);
        canvas_.setContent(support::starContent());
        canvas_.show();
        QObject::connect(&canvas_, &ChartCanvas::made,
                         [this](const chart::Made& made) { made_.push_back(made); });
    }
    void press(int key, int times = 1, Qt::KeyboardModifiers modifiers = {}) {
        for (int i = 0; i < times; ++i) {
            QTest::keyClick(&canvas_, static_cast<Qt::Key>(key), modifiers);
        }
    }
    [[nodiscard]] geo::WaterPoint middle() const {
        return canvas_.viewFrame().toWater(QRectF(canvas_.rect()).center());
    }
    [[nodiscard]] double metres(double pixels) const {
        return pixels / canvas_.viewFrame().pixelsPerMetre();
    }
    ChartCanvas canvas_;
    std::vector<chart::Made> made_;
};

TEST_F(KeyPointer, DrawsALineFromSpaceToSpaceWithTheArrowsInBetween) {
    canvas_.setTool(chart::ToolKind::stroke);
    const geo::WaterPoint from = middle();
    press(Qt::Key_Right); // the pointer comes up in the middle
    press(Qt::Key_Space);
    press(Qt::Key_Right, 3, Qt::ShiftModifier);
    press(Qt::Key_Down, 2);
    ASSERT_TRUE(made_.empty()) << "it is not whole yet";
    press(Qt::Key_Space);
    ASSERT_EQ(made_.size(), 1U);
    const auto& line = std::get<chart::StrokeMade>(made_[0]).line;
    EXPECT_NEAR(line.front().x_m, from.x_m, 1e-6);
    EXPECT_NEAR(line.front().y_m, from.y_m, 1e-6);
    EXPECT_NEAR(line.back().x_m, from.x_m + metres(144.0), 1e-6);
    EXPECT_NEAR(line.back().y_m, from.y_m - metres(12.0), 1e-6);
    EXPECT_GE(line.size(), 6U) << "the way between is drawn as well";
}

TEST_F(KeyPointer, GoesRoundARing) {
    canvas_.setTool(chart::ToolKind::lasso);
    press(Qt::Key_Left);
    press(Qt::Key_Space);
    press(Qt::Key_Left, 2, Qt::ShiftModifier);
    press(Qt::Key_Up, 2, Qt::ShiftModifier);
    press(Qt::Key_Right, 2, Qt::ShiftModifier);
    press(Qt::Key_Space);
    ASSERT_EQ(made_.size(), 1U);
    EXPECT_NEAR(std::abs(geo::signedArea_m2(std::get<chart::RingMade>(made_[0]).ring)),
                metres(96.0) * metres(96.0), 1.0);
}

TEST_F(KeyPointer, PointsAtAPlaceWithOneSpace) {
    canvas_.setTool(chart::ToolKind::note);
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    press(Qt::Key_Space);
    ASSERT_EQ(made_.size(), 1U);
    EXPECT_NEAR(std::get<chart::PointMade>(made_[0]).at.y_m, middle().y_m + metres(6.0), 1e-6);
}

TEST_F(KeyPointer, TracesCornersAndClosesThemWithReturn) {
    canvas_.setTool(chart::ToolKind::polygon);
    press(Qt::Key_Right);
    press(Qt::Key_Space);
    press(Qt::Key_Right, 1, Qt::ShiftModifier);
    press(Qt::Key_Space);
    press(Qt::Key_Down, 1, Qt::ShiftModifier);
    press(Qt::Key_Space);
    press(Qt::Key_Return);
    ASSERT_EQ(made_.size(), 1U);
    EXPECT_EQ(std::get<chart::RingMade>(made_[0]).ring.size(), 3U);
}

TEST_F(KeyPointer, MovesThePaperUnderItAtTheEdge) {
    canvas_.setTool(chart::ToolKind::stroke);
    press(Qt::Key_Right);
    press(Qt::Key_Space);
    const geo::WaterPoint from = middle();
    press(Qt::Key_Right, 20, Qt::ShiftModifier);
    press(Qt::Key_Space);
    ASSERT_EQ(made_.size(), 1U);
    EXPECT_NEAR(std::get<chart::StrokeMade>(made_[0]).line.back().x_m, from.x_m + metres(20 * 48.0),
                1e-6);
    EXPECT_GT(middle().x_m, from.x_m);
}

TEST_F(KeyPointer, EscapeDropsWhatIsHalfDrawn) {
    canvas_.setTool(chart::ToolKind::stroke);
    press(Qt::Key_Right);
    press(Qt::Key_Space);
    press(Qt::Key_Right, 3, Qt::ShiftModifier);
    press(Qt::Key_Escape);
    press(Qt::Key_Right, 3, Qt::ShiftModifier);
    EXPECT_TRUE(made_.empty());
    press(Qt::Key_Space);
    press(Qt::Key_Down, 2, Qt::ShiftModifier);
    press(Qt::Key_Space);
    EXPECT_EQ(made_.size(), 1U) << "Space begins again";
}

TEST_F(KeyPointer, SaysWhereItIs) {
    canvas_.setTool(chart::ToolKind::stroke);
    std::optional<geo::WaterPoint> said;
    QObject::connect(&canvas_, &ChartCanvas::pointedAt,
                     [&](std::optional<geo::WaterPoint> place) { said = place; });
    press(Qt::Key_Right);
    ASSERT_TRUE(said);
    EXPECT_NEAR(said->x_m, middle().x_m, 1e-6);
}

TEST_F(KeyPointer, WithoutAToolTheArrowsMoveThePaper) {
    const geo::WaterPoint before = middle();
    press(Qt::Key_Right);
    EXPECT_NE(middle().x_m, before.x_m);
    press(Qt::Key_Space);
    EXPECT_TRUE(made_.empty());
}

} // namespace
