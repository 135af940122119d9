// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/elided_label.h"
#include "tests/app/support/recorded_pages.h"

#include <gtest/gtest.h>

#include <QFontMetrics>

namespace {

using widgets::ElidedLabel;

QString shownBy(ElidedLabel& label) {
    support::RecordedPages pages;
    label.render(&pages);
    return pages.lines().join('|');
}

TEST(ElidedLabel, ShowsAllOfItWhereThereIsRoomAndNeedsNoTooltip) {
    ElidedLabel label;
    label.resize(600, 30);
    label.setWhole("Skarrow Water");
    EXPECT_EQ(shownBy(label), "Skarrow Water");
    EXPECT_FALSE(label.isCut());
    EXPECT_EQ(label.toolTip(), "");
}

TEST(ElidedLabel, SaysThatItIsCutAndKeepsTheWholeInTheTooltip) {
    ElidedLabel label;
    label.resize(600, 30);
    const QString name(200, 'n');
    label.setWhole(name);
    EXPECT_TRUE(label.isCut());
    EXPECT_EQ(label.toolTip(), name);
    EXPECT_TRUE(shownBy(label).endsWith(QChar(0x2026)));
    EXPECT_EQ(label.text(), name);
    label.setWhole("short");
    EXPECT_EQ(label.toolTip(), "");
    label.setWhole("Skarrow Water");
    label.resize(40, 30);
    label.grab(); // A widget that was never shown is resized with its first picture.
    EXPECT_TRUE(label.isCut());
    EXPECT_EQ(label.toolTip(), "Skarrow Water") << "also where the room is taken later";
}

TEST(ElidedLabel, GivesWayToItsNeighbours) {
    ElidedLabel label;
    label.setWhole(QString(200, 'n'));
    EXPECT_LE(label.minimumSizeHint().width(), 10 * label.fontMetrics().averageCharWidth());
    EXPECT_GT(label.sizeHint().width(), 100 * label.fontMetrics().averageCharWidth() / 2);
}

} // namespace
