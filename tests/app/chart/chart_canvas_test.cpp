// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/chart_canvas.h"
#include "app/chart/furniture.h"
#include "app/chart/mark_drawing.h"
#include "app/chart/picking.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <QContextMenuEvent>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include <algorithm>
#include <memory>

namespace {

using chart::ChartCanvas;

class ChartCanvasTest : public testing::Test {
protected:
    void SetUp() override {
        canvas_.resize(900, 640);
        canvas_.setContent(support::starContent());
        canvas_.show();
        QCoreApplication::processEvents();
    }
    QPoint pixelOf(geo::WaterPoint p) const { return canvas_.viewFrame().toScreen(p).toPoint(); }
    QPoint ringOf(int rank) const {
        return chart::ringsOf(canvas_.content().planned->marks, canvas_.viewFrame(), 1.0)
            .at(rank)
            .middle.toPoint();
    }
    /// What the tool made last, if it was of this kind, from now on.
    template <class What>
    std::shared_ptr<std::optional<What>> lastMade() {
        auto last = std::make_shared<std::optional<What>>();
        QObject::connect(&canvas_, &ChartCanvas::made, [last](const chart::Made& made) {
            const auto* what = std::get_if<What>(&made);
            *last = what == nullptr ? std::nullopt : std::optional(*what);
        });
        return last;
    }
    void drag(QPoint from, QPoint to) {
        QTest::mousePress(&canvas_, Qt::LeftButton, {}, from);
        for (int i = 1; i <= 4; ++i) {
            QMouseEvent move(QEvent::MouseMove, QPointF(from + (to - from) * i / 4),
                             canvas_.mapToGlobal(QPointF(from + (to - from) * i / 4)), Qt::NoButton,
                             Qt::LeftButton, Qt::NoModifier);
            QCoreApplication::sendEvent(&canvas_, &move);
        }
        QTest::mouseRelease(&canvas_, Qt::LeftButton, {}, to);
    }
    ChartCanvas canvas_;
};

TEST_F(ChartCanvasTest, DraggingMovesThePaperWithTheHand) {
    const geo::WaterPoint held = canvas_.viewFrame().toWater({300, 300});
    drag({300, 300}, {380, 260});
    const QPointF now = canvas_.viewFrame().toScreen(held);
    EXPECT_NEAR(now.x(), 380.0, 1e-6);
    EXPECT_NEAR(now.y(), 260.0, 1e-6);
}

TEST_F(ChartCanvasTest, TheWheelEnlargesAboutThePointer) {
    const QPointF at(200, 150);
    const geo::WaterPoint under = canvas_.viewFrame().toWater(at);
    const double before = canvas_.viewFrame().pixelsPerMetre();
    QWheelEvent wheel(at, canvas_.mapToGlobal(at), {}, {0, 120}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&canvas_, &wheel);
    EXPECT_GT(canvas_.viewFrame().pixelsPerMetre(), 1.1 * before);
    EXPECT_NEAR(canvas_.viewFrame().toScreen(under).x(), at.x(), 1e-6);
    EXPECT_NEAR(canvas_.viewFrame().toScreen(under).y(), at.y(), 1e-6);
}

TEST_F(ChartCanvasTest, ZeroShowsTheWholeWaterAgain) {
    const chart::ViewFrame whole = canvas_.viewFrame();
    QTest::keyClick(&canvas_, Qt::Key_Plus);
    QTest::keyClick(&canvas_, Qt::Key_Left);
    EXPECT_NE(canvas_.viewFrame(), whole);
    QTest::keyClick(&canvas_, Qt::Key_0);
    EXPECT_EQ(canvas_.viewFrame(), whole);
}

TEST_F(ChartCanvasTest, ArrowsMoveTheSight) {
    const geo::WaterPoint middle = canvas_.viewFrame().toWater({450, 320});
    QTest::keyClick(&canvas_, Qt::Key_Right);
    EXPECT_GT(canvas_.viewFrame().toWater({450, 320}).x_m, middle.x_m);
    QTest::keyClick(&canvas_, Qt::Key_Up);
    EXPECT_GT(canvas_.viewFrame().toWater({450, 320}).y_m, middle.y_m);
}

TEST_F(ChartCanvasTest, AClickOnARingPicksTheMark) {
    QSignalSpy marks(&canvas_, &ChartCanvas::markClicked);
    QTest::mouseClick(&canvas_, Qt::LeftButton, {}, ringOf(3));
    ASSERT_EQ(marks.size(), 1);
    EXPECT_EQ(marks[0][0].toInt(), 3);
}

TEST_F(ChartCanvasTest, AMarkDraggedSaysWhereItWasPut) {
    int dragged = 0;
    geo::WaterPoint put;
    QObject::connect(&canvas_, &ChartCanvas::lieDropped,
                     [&](const chart::LiePart& part, geo::WaterPoint to) {
                         EXPECT_EQ(part.kind, chart::LiePart::Kind::boat);
                         dragged = part.rank;
                         put = to;
                     });
    const chart::ViewFrame before = canvas_.viewFrame();
    const geo::WaterPoint wanted = support::starPoint(0.5, 60.0);
    drag(ringOf(2), pixelOf(wanted));
    EXPECT_EQ(dragged, 2);
    EXPECT_LT(geo::distance_m(put, wanted), 2.0 / before.pixelsPerMetre());
    EXPECT_EQ(canvas_.viewFrame(), before); // the paper stays where it is
}

TEST_F(ChartCanvasTest, AnchorsAndBaitsOfTheChosenMarkAreDraggedAndTellEachMove) {
    chart::ChartContent content = canvas_.content();
    content.selection.mark = 2;
    canvas_.setContent(content);
    const marks::Mark& mark = content.planned->marks[1];
    ASSERT_EQ(mark.rank, 2);
    canvas_.showPlace(mark.place, 4.0);
    using Kind = chart::LiePart::Kind;
    const std::vector<std::pair<chart::LiePart, geo::WaterPoint>> parts{
        {{2, Kind::bow, 0}, mark.anchors.bow.place},
        {{2, Kind::stern, 0}, mark.anchors.stern->place},
        {{2, Kind::bait, 1}, mark.spread.rods.at(1).place}};
    for (const auto& [wanted, from] : parts) {
        std::vector<chart::LiePart> held;
        std::vector<chart::LiePart> dropped;
        const auto holding = QObject::connect(
            &canvas_, &ChartCanvas::lieHeld,
            [&](const chart::LiePart& part, geo::WaterPoint) { held.push_back(part); });
        const auto dropping = QObject::connect(
            &canvas_, &ChartCanvas::lieDropped,
            [&](const chart::LiePart& part, geo::WaterPoint) { dropped.push_back(part); });
        drag(pixelOf(from), pixelOf(from) + QPoint(30, 20));
        EXPECT_FALSE(held.empty());
        EXPECT_EQ(dropped, std::vector<chart::LiePart>{wanted});
        QObject::disconnect(holding);
        QObject::disconnect(dropping);
    }
}

TEST_F(ChartCanvasTest, EscapeTakesADragBackAndTheButtonThenDropsNothing) {
    int dropped = 0;
    int letGo = 0;
    QObject::connect(&canvas_, &ChartCanvas::lieDropped, [&] { ++dropped; });
    QObject::connect(&canvas_, &ChartCanvas::lieLetGo, [&] { ++letGo; });
    const QPoint from = ringOf(2);
    QTest::mousePress(&canvas_, Qt::LeftButton, {}, from);
    QTest::mouseMove(&canvas_, from + QPoint(20, 20));
    QMouseEvent move(QEvent::MouseMove, from + QPoint(40, 30), canvas_.mapToGlobal(from),
                     Qt::NoButton, Qt::LeftButton, {});
    QCoreApplication::sendEvent(&canvas_, &move);
    QTest::keyClick(&canvas_, Qt::Key_Escape);
    EXPECT_EQ(letGo, 1);
    QTest::mouseRelease(&canvas_, Qt::LeftButton, {}, from + QPoint(40, 30));
    EXPECT_EQ(dropped, 0);
}

TEST_F(ChartCanvasTest, PartsOfAnOldPlanAreNotTakenHoldOf) {
    chart::ChartContent content = canvas_.content();
    content.selection.mark = 2;
    canvas_.setContent(content);
    const marks::Mark& mark = content.planned->marks[1];
    canvas_.showPlace(mark.place, 4.0);
    const QPointF bow = canvas_.viewFrame().toScreen(mark.anchors.bow.place);
    EXPECT_TRUE(chart::liePartAt(content, canvas_.viewFrame(), bow));
    content.age.isPlanOld = true;
    EXPECT_FALSE(chart::liePartAt(content, canvas_.viewFrame(), bow));
    content.age.isPlanOld = false;
    content.selection.mark = 1;
    const auto other = chart::liePartAt(content, canvas_.viewFrame(), bow);
    EXPECT_FALSE(other) << "of the chosen mark alone";
}

TEST_F(ChartCanvasTest, APlainClickSaysWhereButNotWhatIsNotThere) {
    QSignalSpy marks(&canvas_, &ChartCanvas::markClicked);
    int clicks = 0;
    QObject::connect(&canvas_, &ChartCanvas::clicked, [&] { ++clicks; });
    QTest::mouseClick(&canvas_, Qt::LeftButton, {}, pixelOf({0.0, 0.0}));
    EXPECT_EQ(clicks, 1);
    EXPECT_EQ(marks.size(), 0);
}

TEST_F(ChartCanvasTest, TheCutToolGivesTheLineDrawn) {
    canvas_.setTool(chart::ToolKind::cutLine);
    const auto line = lastMade<chart::LineMade>();
    drag(pixelOf({-100, 0}), pixelOf({150, 80}));
    ASSERT_TRUE(*line);
    EXPECT_NEAR((*line)->from.x_m, -100.0, 2.0);
    EXPECT_NEAR((*line)->to.y_m, 80.0, 2.0);
}

TEST_F(ChartCanvasTest, TheCutLeavesTheNumberOfTheChosenMarkLegible) {
    const geo::WaterPoint middle{20.0, 10.0};
    const auto shown = [&](bool hasCut) {
        canvas_.setCut(hasCut ? std::optional(chart::LineMade{{-150.0, 10.0}, {190.0, 10.0}})
                              : std::nullopt);
        canvas_.finishPainting();
        return canvas_.grab().toImage();
    };
    canvas_.setChosen(middle);
    const QImage with = shown(true);
    const QImage without = shown(false);
    const QPoint at = pixelOf(middle);
    for (int dx = -6; dx <= 6; ++dx) {
        EXPECT_EQ(with.pixel(at + QPoint(dx, 0)), without.pixel(at + QPoint(dx, 0))) << dx;
    }
    EXPECT_NE(with.pixel(at + QPoint(30, 0)), without.pixel(at + QPoint(30, 0)));
}

TEST_F(ChartCanvasTest, TheCutLeavesTheRingOfTheChosenMarkFree) {
    chart::ChartContent content = support::starContent();
    content.selection.mark = 1;
    canvas_.setContent(content);
    const QPoint at = ringOf(1);
    const geo::WaterPoint middle = canvas_.viewFrame().toWater(at);
    const auto shown = [&](bool hasCut) {
        canvas_.setCut(hasCut ? std::optional(chart::LineMade{{middle.x_m - 200.0, middle.y_m},
                                                              {middle.x_m + 200.0, middle.y_m}})
                              : std::nullopt);
        canvas_.finishPainting();
        return canvas_.grab().toImage();
    };
    const QImage with = shown(true);
    const QImage without = shown(false);
    for (int dx = -7; dx <= 7; ++dx) {
        EXPECT_EQ(with.pixel(at + QPoint(dx, 0)), without.pixel(at + QPoint(dx, 0))) << dx;
    }
    EXPECT_NE(with.pixel(at + QPoint(40, 0)), without.pixel(at + QPoint(40, 0)));
}

TEST_F(ChartCanvasTest, ThePolygonToolGathersCornersUntilEnter) {
    canvas_.setTool(chart::ToolKind::polygon);
    const auto ring = lastMade<chart::RingMade>();
    for (const geo::WaterPoint corner :
         {geo::WaterPoint{0, 0}, {100, 0}, {120, 40}, {100, 100}, {0, 100}}) {
        QTest::mouseClick(&canvas_, Qt::LeftButton, {}, pixelOf(corner));
    }
    QTest::keyClick(&canvas_, Qt::Key_Backspace);
    EXPECT_FALSE(*ring);
    QTest::keyClick(&canvas_, Qt::Key_Return);
    ASSERT_TRUE(*ring);
    ASSERT_EQ((*ring)->ring.size(), 4U); // the last of five was taken back
}

TEST_F(ChartCanvasTest, TheLassoGivesTheRingDrawn) {
    canvas_.setTool(chart::ToolKind::lasso);
    const auto ring = lastMade<chart::RingMade>();
    drag(pixelOf({-100, 0}), pixelOf({150, 80}));
    ASSERT_TRUE(*ring);
    EXPECT_GE((*ring)->ring.size(), 4U);
}

/// A square shore with a square island, and the hand on its corners.
class ShoreToolTest : public ChartCanvasTest {
protected:
    void SetUp() override {
        ChartCanvasTest::SetUp();
        QObject::connect(&canvas_, &ChartCanvas::made, [this](const chart::Made& made) {
            made_.push_back(std::get<chart::ShoreMade>(made));
        });
        show({{{-300, -200}, {300, -200}, {300, 200}, {-300, 200}}, {{{0, 0}, {0, 60}, {60, 0}}}});
        canvas_.setTool(chart::ToolKind::shore);
    }
    void show(const geo::Piece& piece) {
        chart::ChartContent content = support::starContent();
        auto water = std::make_shared<water::Water>(*content.water);
        water->shoreline = {geo::toEarth(piece, *water->frame)};
        content.water = water;
        canvas_.setContent(content);
    }
    std::vector<chart::ShoreMade> made_;
    using Act = chart::ShoreMade::Act;
};

TEST_F(ShoreToolTest, ACornerDraggedSaysWhereItWasPut) {
    const chart::ViewFrame before = canvas_.viewFrame();
    drag(pixelOf({300, 200}), pixelOf({340, 260}));
    ASSERT_EQ(made_.size(), 1U);
    EXPECT_EQ(made_[0].act, Act::move);
    EXPECT_EQ(made_[0].corner, (water::ShoreCorner{0, 0, 2}));
    EXPECT_LT(geo::distance_m(made_[0].at, {340, 260}), 2.0 / before.pixelsPerMetre());
    EXPECT_EQ(canvas_.viewFrame(), before);
}

TEST_F(ShoreToolTest, AClickOnTheLineMakesACornerThere) {
    QTest::mouseClick(&canvas_, Qt::LeftButton, {}, pixelOf({300, 20}));
    ASSERT_EQ(made_.size(), 1U);
    EXPECT_EQ(made_[0].act, Act::add);
    EXPECT_EQ(made_[0].corner, (water::ShoreCorner{0, 0, 1}));
}

TEST_F(ShoreToolTest, DeleteTakesTheChosenCornerOfAnIslandAway) {
    QTest::keyClick(&canvas_, Qt::Key_Delete);
    EXPECT_TRUE(made_.empty()) << "nothing is chosen yet";
    QTest::mouseClick(&canvas_, Qt::LeftButton, {}, pixelOf({60, 0}));
    EXPECT_TRUE(made_.empty()) << "a click chooses and changes nothing";
    QTest::keyClick(&canvas_, Qt::Key_Delete);
    ASSERT_EQ(made_.size(), 1U);
    EXPECT_EQ(made_[0].act, Act::remove);
    EXPECT_EQ(made_[0].corner.ring, 1U);
    EXPECT_EQ(made_[0].corner.corner, 2U);
}

TEST_F(ShoreToolTest, BesideTheShoreTheHandMovesThePaper) {
    const geo::WaterPoint middle = canvas_.viewFrame().toWater({450, 320});
    drag(pixelOf({-150, 100}), pixelOf({-100, 60}));
    EXPECT_TRUE(made_.empty());
    EXPECT_GT(geo::distance_m(canvas_.viewFrame().toWater({450, 320}), middle), 20.0);
}

TEST_F(ShoreToolTest, ThePaperStaysWhereItIsWhenTheShoreGrows) {
    const chart::ViewFrame before = canvas_.viewFrame();
    show({{{-300, -200}, {480, -200}, {300, 200}, {-300, 200}}, {}});
    EXPECT_EQ(canvas_.viewFrame(), before);
}

TEST_F(ShoreToolTest, FollowsTheShoreWhenItIsUndone) {
    show({{{-300, -200}, {380, -200}, {380, 200}, {-300, 200}}, {}});
    drag(pixelOf({380, 200}), pixelOf({300, 260}));
    ASSERT_EQ(made_.size(), 1U);
    EXPECT_EQ(made_[0].corner, (water::ShoreCorner{0, 0, 2}));
}

TEST_F(ChartCanvasTest, AStrokeGivesTheLineDrawnAndASlipOfTheHandNothing) {
    canvas_.setTool(chart::ToolKind::stroke);
    const auto stroke = lastMade<chart::StrokeMade>();
    QTest::mouseClick(&canvas_, Qt::LeftButton, {}, pixelOf({-100, 0}));
    EXPECT_FALSE(*stroke);
    drag(pixelOf({-100, 0}), pixelOf({150, 80}));
    ASSERT_TRUE(*stroke);
    const geo::Path& line = (*stroke)->line;
    ASSERT_GE(line.size(), 2U);
    EXPECT_NEAR(line.front().x_m, -100.0, 2.0);
    EXPECT_NEAR(line.back().y_m, 80.0, 2.0);
}

TEST_F(ChartCanvasTest, PointingSaysWhereAndLeavingThatNothingIs) {
    std::vector<std::optional<geo::WaterPoint>> told;
    QObject::connect(&canvas_, &ChartCanvas::pointedAt, [&](auto place) { told.push_back(place); });
    QMouseEvent move(QEvent::MouseMove, QPointF(300, 200), canvas_.mapToGlobal(QPointF(300, 200)),
                     Qt::NoButton, Qt::NoButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&canvas_, &move);
    QEvent leave(QEvent::Leave);
    QCoreApplication::sendEvent(&canvas_, &leave);
    ASSERT_EQ(told.size(), 2U);
    ASSERT_TRUE(told[0]);
    EXPECT_EQ(*told[0], canvas_.viewFrame().toWater({300, 200}));
    EXPECT_FALSE(told[1]);
}

TEST(ChartCanvasEmpty, TeachesWhatToDropOnIt) {
    ChartCanvas canvas;
    canvas.resize(800, 600);
    canvas.setContent(chart::ChartContent{});
    canvas.finishPainting();
    const QImage image = canvas.grab().toImage();
    int inked = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            inked += image.pixelColor(x, y).lightnessF() < 0.4F ? 1 : 0;
        }
    }
    EXPECT_GT(inked, 1500); // letters, not a bare sheet
}

TEST_F(ChartCanvasTest, TheWindsArrowIsTurnedByItsTip) {
    const auto arrow = chart::windArrowOf(canvas_.content(), canvas_.viewFrame());
    ASSERT_TRUE(arrow.has_value());
    QSignalSpy held(&canvas_, &ChartCanvas::windHeld);
    QSignalSpy dropped(&canvas_, &ChartCanvas::windDropped);
    const QPoint middle = arrow->middle.toPoint();
    drag(middle + QPoint(2, 2), middle + QPoint(40, 0));
    ASSERT_EQ(dropped.size(), 1);
    EXPECT_GT(held.size(), 0);
    // Its tip lies where the wind blows to: east, so that it comes from the west.
    EXPECT_EQ(dropped[0][0].value<units::Bearing>().inDegrees(), 270.0);
    drag(middle + QPoint(2, 2), middle + QPoint(0, -40));
    EXPECT_EQ(dropped.back()[0].value<units::Bearing>().inDegrees(), 180.0);
}

TEST_F(ChartCanvasTest, EscapeTakesBackTheTurnOfTheWind) {
    const QPoint middle =
        chart::windArrowOf(canvas_.content(), canvas_.viewFrame()).value().middle.toPoint();
    QSignalSpy dropped(&canvas_, &ChartCanvas::windDropped);
    QSignalSpy letGo(&canvas_, &ChartCanvas::windLetGo);
    const chart::ViewFrame before = canvas_.viewFrame();
    QTest::mousePress(&canvas_, Qt::LeftButton, {}, middle);
    QMouseEvent move(QEvent::MouseMove, middle + QPoint(30, 10),
                     canvas_.mapToGlobal(QPointF(middle + QPoint(30, 10))), Qt::NoButton,
                     Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&canvas_, &move);
    QTest::keyClick(&canvas_, Qt::Key_Escape);
    QTest::mouseRelease(&canvas_, Qt::LeftButton, {}, middle + QPoint(30, 10));
    EXPECT_EQ(letGo.size(), 1);
    EXPECT_EQ(dropped.size(), 0);
    EXPECT_EQ(canvas_.viewFrame(), before) << "and the paper lay still";
}

TEST_F(ChartCanvasTest, TheRightButtonAsksForAMenuAtThePlaceAndItsKeyAtTheChosenMark) {
    QSignalSpy asked(&canvas_, &ChartCanvas::menuAsked);
    const QPoint at(320, 240);
    QContextMenuEvent byMouse(QContextMenuEvent::Mouse, at, canvas_.mapToGlobal(at));
    QCoreApplication::sendEvent(&canvas_, &byMouse);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(pixelOf(asked[0][0].value<geo::WaterPoint>()), at);
    EXPECT_EQ(asked[0][1].toPoint(), canvas_.mapToGlobal(at));
    chart::ChartContent content = canvas_.content();
    content.selection.mark = 2;
    canvas_.setContent(content);
    QContextMenuEvent byKey(QContextMenuEvent::Keyboard, at, canvas_.mapToGlobal(at));
    QCoreApplication::sendEvent(&canvas_, &byKey);
    ASSERT_EQ(asked.size(), 2);
    EXPECT_EQ(pixelOf(asked[1][0].value<geo::WaterPoint>()), ringOf(2));
    canvas_.setTool(chart::ToolKind::note);
    QCoreApplication::sendEvent(&canvas_, &byMouse);
    EXPECT_EQ(asked.size(), 2) << "the hand is at something else";
}

TEST_F(ChartCanvasTest, ABoxIsShownWholeWithAMargin) {
    const geo::Box box{100.0, 50.0, 180.0, 90.0};
    canvas_.showBox(box);
    const chart::ViewFrame& view = canvas_.viewFrame();
    EXPECT_TRUE(view.box().holds({100.0, 50.0}));
    EXPECT_TRUE(view.box().holds({180.0, 90.0}));
    EXPECT_LT(view.box().width_m(), 2.0 * 80.0) << "as large as it goes";
    const chart::ViewFrame before = view;
    canvas_.showBox({});
    EXPECT_EQ(canvas_.viewFrame(), before);
}

} // namespace
