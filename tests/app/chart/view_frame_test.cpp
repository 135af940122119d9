// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/view_frame.h"

#include "app/chart/view_keys.h"

#include <gtest/gtest.h>

namespace {

using chart::ViewFrame;
using geo::WaterPoint;

/// 200 by 100 m in 500 by 300 pixels with 50 to spare: 2 pixels a metre, (100, 50) in the middle.
ViewFrame view() {
    return ViewFrame::showing({0.0, 0.0, 200.0, 100.0}, {500.0, 300.0}, 50.0);
}

void expectAt(QPointF pixel, double x, double y) {
    EXPECT_NEAR(pixel.x(), x, 1e-9);
    EXPECT_NEAR(pixel.y(), y, 1e-9);
}

void expectAt(WaterPoint p, double x_m, double y_m) {
    EXPECT_NEAR(p.x_m, x_m, 1e-9);
    EXPECT_NEAR(p.y_m, y_m, 1e-9);
}

TEST(ViewFrame, ShowsTheWholeBoxInTheMiddleWithItsMarginNorthUp) {
    EXPECT_DOUBLE_EQ(view().pixelsPerMetre(), 2.0);
    EXPECT_EQ(view().size(), QSizeF(500.0, 300.0));
    expectAt(view().toScreen({100.0, 50.0}), 250.0, 150.0);
    expectAt(view().toScreen({0.0, 0.0}), 50.0, 250.0);
    expectAt(view().toScreen({200.0, 100.0}), 450.0, 50.0);
    // As high as the box allows where that is less.
    const ViewFrame tall = ViewFrame::showing({0, 0, 50, 400}, {500.0, 300.0}, 50.0);
    EXPECT_DOUBLE_EQ(tall.pixelsPerMetre(), 0.5);
    expectAt(tall.toScreen({25.0, 400.0}), 250.0, 50.0);
}

TEST(ViewFrame, PixelsAndMetresAreInversesOfEachOther) {
    expectAt(view().toWater({250.0, 150.0}), 100.0, 50.0);
    expectAt(view().toWater({0.0, 0.0}), -25.0, 125.0);
    expectAt(view().toWater({500.0, 300.0}), 225.0, -25.0);
    for (const WaterPoint p : {WaterPoint{-300.0, 12.5}, WaterPoint{77.0, -91.0}}) {
        const WaterPoint back = view().toWater(view().toScreen(p));
        expectAt(back, p.x_m, p.y_m);
    }
    const geo::Box box = view().box();
    EXPECT_NEAR(box.west_m, -25.0, 1e-9);
    EXPECT_NEAR(box.east_m, 225.0, 1e-9);
    EXPECT_NEAR(box.south_m, -25.0, 1e-9);
    EXPECT_NEAR(box.north_m, 125.0, 1e-9);
}

TEST(ViewFrame, IsEnlargedAboutThePlaceUnderThePointerWithinItsBounds) {
    const ViewFrame large = view().zoomed(3.0, {400.0, 90.0});
    EXPECT_DOUBLE_EQ(large.pixelsPerMetre(), 6.0);
    expectAt(large.toWater({400.0, 90.0}), 175.0, 80.0);
    expectAt(large.toWater({250.0, 150.0}), 150.0, 70.0);
    EXPECT_DOUBLE_EQ(view().zoomed(1e9, {0, 0}).pixelsPerMetre(), 100.0);
    EXPECT_DOUBLE_EQ(view().zoomed(1e-9, {0, 0}).pixelsPerMetre(), 1.0 / 200.0);
    EXPECT_DOUBLE_EQ(ViewFrame::showing({0, 0, 1e7, 10}, {500, 300}, 0.0).pixelsPerMetre(),
                     1.0 / 200.0);
    EXPECT_DOUBLE_EQ(ViewFrame::showing({0, 0, 0.1, 0.1}, {500, 300}, 0.0).pixelsPerMetre(), 100.0);
}

TEST(ViewFrame, MovesAsAHandMovesPaperAndKeepsItsMiddleInAnotherSize) {
    const ViewFrame moved = view().panned({30.0, -20.0});
    expectAt(moved.toScreen({100.0, 50.0}), 280.0, 130.0);
    const ViewFrame wide = view().resized({900.0, 400.0});
    expectAt(wide.toScreen({100.0, 50.0}), 450.0, 200.0);
    EXPECT_DOUBLE_EQ(wide.pixelsPerMetre(), 2.0);
    expectAt(view().centredOn({7.0, 8.0}).toScreen({7.0, 8.0}), 250.0, 150.0);
    const ViewFrame empty = ViewFrame::showing(geo::Box(), {500.0, 300.0}, 10.0);
    EXPECT_DOUBLE_EQ(empty.pixelsPerMetre(), 1.0);
    EXPECT_EQ(empty.size(), QSizeF(500.0, 300.0));
}

TEST(ViewKeys, MoveTheSightByEightyPixelsAndChangeItsScaleAboutTheMiddle) {
    struct Case {
        int key;
        double x; ///< Where the place in the middle stands afterwards.
        double y;
    };
    for (const Case& c : {Case{Qt::Key_Left, 330.0, 150.0}, Case{Qt::Key_Right, 170.0, 150.0},
                          Case{Qt::Key_Up, 250.0, 230.0}, Case{Qt::Key_Down, 250.0, 70.0}}) {
        const auto after = chart::viewAfterKey(c.key, view());
        ASSERT_TRUE(after);
        expectAt(after->toScreen({100.0, 50.0}), c.x, c.y);
        EXPECT_DOUBLE_EQ(after->pixelsPerMetre(), 2.0);
    }
    for (const int key : {Qt::Key_Plus, Qt::Key_Equal}) {
        EXPECT_DOUBLE_EQ(chart::viewAfterKey(key, view())->pixelsPerMetre(), 2.8);
        expectAt(chart::viewAfterKey(key, view())->toScreen({100.0, 50.0}), 250.0, 150.0);
    }
    EXPECT_NEAR(chart::viewAfterKey(Qt::Key_Minus, view())->pixelsPerMetre(), 2.0 / 1.4, 1e-12);
    EXPECT_FALSE(chart::viewAfterKey(Qt::Key_A, view()));
}

} // namespace
