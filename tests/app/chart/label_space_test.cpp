// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/label_space.h"

#include <gtest/gtest.h>

namespace {

TEST(LabelSpace, GivesAPlaceOnlyOnce) {
    chart::LabelSpace space(QRectF(0, 0, 100, 100));
    EXPECT_TRUE(space.take(QRectF(10, 10, 30, 10)));
    EXPECT_FALSE(space.take(QRectF(35, 15, 30, 10)));
    EXPECT_TRUE(space.take(QRectF(41, 10, 30, 10)));
}

TEST(LabelSpace, KeepsLabelsWhollyOnThePage) {
    chart::LabelSpace space(QRectF(0, 0, 100, 100));
    EXPECT_FALSE(space.take(QRectF(90, 10, 30, 10)));
    EXPECT_FALSE(space.take(QRectF(10, -3, 30, 10)));
}

TEST(LabelSpace, TakesAllBoxesOrNone) {
    chart::LabelSpace space(QRectF(0, 0, 100, 100));
    space.block(QRectF(50, 50, 10, 10));
    EXPECT_FALSE(space.takeAll({QRectF(10, 10, 10, 10), QRectF(55, 55, 10, 10)}));
    EXPECT_TRUE(space.isFree(QRectF(10, 10, 10, 10)));
}

TEST(LabelSpace, ATurnedLabelLeavesTheCornersOfItsBoxFree) {
    chart::LabelSpace space(QRectF(0, 0, 200, 200));
    ASSERT_TRUE(space.takeTurned({100, 100}, QSizeF(100, 10), 45.0));
    // Along the slanting letters nothing else fits, in the corner beside them it does.
    EXPECT_FALSE(space.isFree(QRectF(125, 125, 6, 6)));
    EXPECT_TRUE(space.isFree(QRectF(125, 70, 10, 10)));
}

} // namespace
