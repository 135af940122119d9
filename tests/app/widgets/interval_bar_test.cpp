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
    BarOnPaper() : IntervalBar(ink) { resize(500, 100); }
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
    EXPECT_NEAR(dots[1].y() - dots[0].y(), 19.0, 0.01);
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
    EXPECT_EQ(bar.sizeHint().height(), 38);
    EXPECT_EQ(bar.minimumSizeHint().height(), 38);
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
