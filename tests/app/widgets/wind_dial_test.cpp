// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/wind_dial.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

namespace {

TEST(WindDial, PointsToWhereItIsDragged) {
    widgets::WindDial dial;
    dial.resize(120, 120);
    QSignalSpy turned(&dial, &widgets::WindDial::turned);
    QTest::mousePress(&dial, Qt::LeftButton, {}, {60, 10});
    QTest::mouseMove(&dial, {110, 60});
    QTest::mouseRelease(&dial, Qt::LeftButton, {}, {110, 60});
    ASSERT_EQ(turned.count(), 1);
    EXPECT_NEAR(turned.front().front().toDouble(), 90.0, 1e-9);
}

TEST(WindDial, HasNoArrowUntilSomebodySaysWhereTheWindComesFrom) {
    widgets::WindDial dial;
    dial.resize(120, 120);
    EXPECT_FALSE(dial.isKnown());
    const QImage none = dial.grab().toImage();
    dial.setFrom(0.0);
    EXPECT_TRUE(dial.isKnown());
    EXPECT_NE(dial.grab().toImage(), none);
    dial.setUnknown();
    EXPECT_FALSE(dial.isKnown());
    EXPECT_EQ(dial.grab().toImage(), none);
    QTest::keyClick(&dial, Qt::Key_Right);
    EXPECT_TRUE(dial.isKnown());
    EXPECT_NEAR(dial.from(), 5.0, 1e-9);
}

TEST(WindDial, TurnsThroughNorthByKeys) {
    widgets::WindDial dial;
    dial.setFrom(0.0);
    QTest::keyClick(&dial, Qt::Key_Left);
    EXPECT_NEAR(dial.from(), 355.0, 1e-9);
    QTest::keyClick(&dial, Qt::Key_Right);
    EXPECT_NEAR(dial.from(), 0.0, 1e-9);
}

} // namespace
