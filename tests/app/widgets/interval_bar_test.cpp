// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/interval_bar.h"
#include "tests/app/support/recorded_pages.h"

#include <gtest/gtest.h>

namespace {

using support::Drawn;
using widgets::Interval;
using widgets::IntervalBar;

const QColor ink(10, 20, 200);

/// What the bar draws, taken from its widget's paint event.
class BarOnPaper : public IntervalBar {
public:
    BarOnPaper() : IntervalBar(QPalette::Link) {
        resize(500, 100);
        QPalette colours = palette();
        colours.setColor(QPalette::Link, ink);
        setPalette(colours);
    }
    /// The boxes filled in this colour, left to right edge.
    [[nodiscard]] std::vector<QLineF> filled(float alpha) {
        support::RecordedPages pages;
        render(&pages);
        std::vector<QLineF> boxes;
        for (const Drawn& drawn : pages.all(Drawn::Kind::polygon)) {
            QColor colour = ink;
            colour.setAlphaF(alpha);
            if (drawn.brush.color() == colour) {
                const QRectF box = drawn.points.boundingRect();
                boxes.emplace_back(box.left(), box.center().y(), box.right(), box.center().y());
            }
        }
        return boxes;
    }
    [[nodiscard]] std::vector<QPointF> dots() {
        support::RecordedPages pages;
        render(&pages);
        std::vector<QPointF> middles;
        for (const Drawn& drawn : pages.all(Drawn::Kind::ellipse)) {
            middles.push_back(drawn.points.boundingRect().center());
        }
        return middles;
    }
    [[nodiscard]] QStringList words() {
        support::RecordedPages pages;
        render(&pages);
        return pages.lines();
    }
};

TEST(IntervalBar, DrawsValueAndRangeOnOneScaleFromNought) {
    BarOnPaper bar;
    bar.setRows({{"a", 1.0, 0.5, 2.0, "1.0", true}, {"b", 2.0, 1.0, 4.0, "2.0", true}}, 4.0);
    const auto ranges = bar.filled(0.35F);
    const auto dots = bar.dots();
    ASSERT_EQ(ranges.size(), 2U);
    ASSERT_EQ(dots.size(), 2U);
    const double left = 200.0; // Two fifths are for the name.
    const double perUnit = (ranges[1].x2() - left) / 4.0;
    EXPECT_GT(perUnit, 50.0);
    EXPECT_NEAR(ranges[0].x1(), left + 0.5 * perUnit, 0.01);
    EXPECT_NEAR(ranges[0].x2(), left + 2.0 * perUnit, 0.01);
    EXPECT_NEAR(ranges[1].x1(), left + perUnit, 0.01);
    EXPECT_NEAR(dots[0].x(), left + perUnit, 0.01);
    EXPECT_NEAR(dots[1].x(), left + 2.0 * perUnit, 0.01);
    EXPECT_NEAR(dots[1].y() - dots[0].y(), 0.5 * bar.sizeHint().height(), 0.01);
}

TEST(IntervalBar, AShareWithoutDoubtIsAPlainBar) {
    BarOnPaper bar;
    bar.setRows({{"a", 0.25, 0.25, 0.25, "0.25", true}, {"b", 1.0, 1.0, 1.0, "1.00", true}}, 1.0);
    const auto bars = bar.filled(1.0F);
    ASSERT_EQ(bars.size(), 2U);
    EXPECT_TRUE(bar.filled(0.35F).empty());
    EXPECT_NEAR(bars[0].x1(), 200.0, 0.01);
    EXPECT_NEAR(bars[0].length(), 0.25 * bars[1].length(), 0.01);
}

TEST(IntervalBar, WhatReachesFartherIsCutAndWhatIsNotKnownHasNoBar) {
    BarOnPaper bar;
    bar.setRows({{"a", 1.0, 0.5, 9.0, "1.0", true},
                 {"b", 0.0, 0.0, 2.0, "not fished", false},
                 {"c", 1.0, 0.5, 2.0, "1.0", true}},
                2.0);
    const auto ranges = bar.filled(0.35F);
    ASSERT_EQ(ranges.size(), 2U);
    EXPECT_NEAR(ranges[0].x2(), ranges[1].x2(), 0.01);
}

TEST(IntervalBar, SaysEachNameWithItsWords) {
    BarOnPaper bar;
    bar.setRows({{"shelter", 0.7, 0.7, 0.7, "0.70", true}, {"record", 0, 0, 0, "none", false}},
                1.0);
    EXPECT_EQ(bar.accessibleDescription(), "shelter: 0.70; record: none");
    EXPECT_EQ(bar.words(), QStringList({"shelter", "0.70", "record", "none"}));
    EXPECT_EQ(bar.sizeHint().height(), bar.minimumSizeHint().height());
    EXPECT_GT(bar.sizeHint().height(), 2 * 12) << "two rows of letters";
}

TEST(IntervalBar, SaysWhatIsBehindABarBelowItAndMakesRoomForAllOfIt) {
    const QString why = "58 m of drop-off, 4.0 to 9.0 m, within a cast";
    BarOnPaper bar;
    bar.setRows({{"drop-off", 1.2, 1.2, 1.2, "1.20", true}, {"waves", 1.1, 1.1, 1.1, "1.10", true}},
                2.0);
    const int without = bar.heightForWidth(500);
    bar.setRows(
        {{"drop-off", 1.2, 1.2, 1.2, "1.20", true, why}, {"waves", 1.1, 1.1, 1.1, "1.10", true}},
        2.0);
    EXPECT_EQ(bar.accessibleDescription(), "drop-off: 1.20, " + why + "; waves: 1.10");
    EXPECT_EQ(bar.words(), QStringList({"drop-off", "1.20", why, "waves", "1.10"}));
    const int one = bar.heightForWidth(500) - without;
    EXPECT_GT(one, 10);
    EXPECT_GT(bar.heightForWidth(120) - without, 2 * one) << "wrapped where there is little room";
}

TEST(IntervalBar, FollowsTheInkOfTheTheme) {
    BarOnPaper bar;
    bar.setRows({{"a", 1.0, 1.0, 1.0, "1.0", true}}, 1.0);
    ASSERT_EQ(bar.filled(1.0F).size(), 1U);
    QPalette other = bar.palette();
    other.setColor(QPalette::Link, Qt::green);
    bar.setPalette(other);
    EXPECT_TRUE(bar.filled(1.0F).empty());
}

TEST(IntervalBar, AScaleOfNothingIsOne) {
    BarOnPaper bar;
    bar.setRows({{"a", 0.5, 0.5, 0.5, "0.5", true}}, 0.0);
    const auto half = bar.filled(1.0F);
    ASSERT_EQ(half.size(), 1U);
    bar.setRows({{"a", 0.5, 0.5, 0.5, "0.5", true}}, 1.0);
    EXPECT_NEAR(half[0].length(), bar.filled(1.0F)[0].length(), 0.01);
}

} // namespace
