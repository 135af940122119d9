// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/crossing_dot.h"

#include "app/chart/chart_painter.h"
#include "app/chart/furniture.h"
#include "app/chart/picking.h"
#include "app/chart/sounding_pick.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

namespace {

reduction::Crossing differing(double difference_m, double depth_m = 5.0) {
    reduction::Crossing crossing;
    crossing.depthA_m = depth_m - 0.5 * difference_m;
    crossing.depthB_m = depth_m + 0.5 * difference_m;
    return crossing;
}

chart::ChartContent withCrossings() {
    chart::ChartContent content = support::starContent();
    content.shown.insert(chart::LayerKind::crossings);
    return content;
}

TEST(CrossingDot, GrowsWithTheDifferenceOfEitherSign) {
    double before = 0.0;
    for (const double difference_m : {0.0, 0.1, 0.3, 0.6}) {
        const double radius = chart::dotOf(differing(difference_m), 1.0).radius;
        EXPECT_GT(radius, before);
        EXPECT_DOUBLE_EQ(chart::dotOf(differing(-difference_m), 1.0).radius, radius);
        before = radius;
    }
}

// IHO S-44 Ed. 6.1.0 (2022), Table 1: order 2, a = 1.0 m, b = 0.023. At 20 m that is
// sqrt(1 + 0.46^2) = 1.1007 m for one sounding, 1.5567 m for two that err independently.
TEST(CrossingDot, StandsInARingBeyondWhatTwoSoundingsOfOrder2MayDifferBy) {
    EXPECT_FALSE(chart::dotOf(differing(1.55, 20.0), 1.0).isBeyond);
    EXPECT_TRUE(chart::dotOf(differing(1.56, 20.0), 1.0).isBeyond);
    EXPECT_TRUE(chart::dotOf(differing(-1.56, 20.0), 1.0).isBeyond);
    EXPECT_FALSE(chart::dotOf(differing(1.41, 0.0), 1.0).isBeyond);
    EXPECT_TRUE(chart::dotOf(differing(1.42, 0.0), 1.0).isBeyond);
}

TEST(CrossingDot, TheSameDifferenceOfEitherSignIsEquallyDarkOnPaper) {
    const chart::Palette& grey = chart::Palette::grey();
    EXPECT_EQ(grey.difference(-0.7), grey.difference(0.7));
    EXPECT_LT(grey.difference(1.0).lightnessF(), grey.difference(0.3).lightnessF());
}

TEST(CrossingDot, IsExplainedOnTheChartWhileItIsShown) {
    const QSize size(1100, 640);
    QImage image(size, QImage::Format_RGB32);
    QPainter painter(&image);
    const auto pieces = [&](const chart::ChartContent& content) {
        const chart::ViewFrame view = chart::wholeWater(content, size);
        chart::LabelSpace labels(QRectF(QPointF(0.0, 0.0), size));
        chart::LayerContext on{painter, view, content, chart::Palette::screen(), labels};
        return chart::furnitureOf(on);
    };
    const auto with = pieces(withCrossings());
    chart::ChartContent without = withCrossings();
    without.shown.erase(chart::LayerKind::crossings);
    EXPECT_EQ(with.size(), pieces(without).size() + 1);
    for (std::size_t i = 0; i + 1 < with.size(); ++i) {
        EXPECT_FALSE(with.back().box.intersects(with[i].box)) << i;
    }
}

TEST(CrossingsShown, WhatDiffersMostStandsForItsNeighboursWhereTheyCrowd) {
    chart::ChartContent content = withCrossings();
    auto checked = std::make_shared<water::CheckedSurvey>(*content.derived.checked);
    checked->crossings.clear();
    for (const double x_m : {0.0, 1.0, 2.0, 60.0}) {
        checked->crossings.push_back(differing(x_m == 1.0 ? -0.5 : 0.1));
        checked->crossings.back().at = {x_m, 0.0};
    }
    content.derived.checked = checked;
    const chart::ViewFrame far = chart::wholeWater(content, {900, 640}).centredOn({0.0, 0.0});
    EXPECT_EQ(chart::crossingsShown(content, far, 1.0), (std::vector<std::size_t>{3, 1}));
    const chart::ViewFrame near = far.zoomed(20.0 / far.pixelsPerMetre(), {450, 320});
    EXPECT_EQ(chart::crossingsShown(content, near, 1.0), (std::vector<std::size_t>{2, 0, 1}));
}

TEST(CrossingAt, FindsTheDotUnderThePointerOnlyWhileItIsShown) {
    chart::ChartContent content = withCrossings();
    const chart::ViewFrame view = chart::wholeWater(content, {900, 640});
    const auto& crossings = content.derived.checked->crossings;
    for (std::size_t i = 0; i < crossings.size(); ++i) {
        const QPointF pixel = view.toScreen(crossings[i].at);
        EXPECT_EQ(chart::crossingAt(content, view, pixel), i);
        EXPECT_FALSE(chart::crossingAt(content, view, pixel + QPointF(12.0, 0.0)));
    }
    content.shown.erase(chart::LayerKind::crossings);
    EXPECT_FALSE(chart::crossingAt(content, view, view.toScreen(crossings[0].at)));
}

TEST(SoundingPick, FindsAKeptSoundingInItsDay) {
    using soundings::Verdict;
    reduction::ReducedSurvey survey;
    survey.days.resize(2);
    survey.days[0].verdicts = {Verdict::spike, Verdict::kept, Verdict::kept};
    survey.days[1].verdicts = {Verdict::dropOut, Verdict::kept};
    EXPECT_EQ(chart::pickOfKept(survey, 0), (chart::SoundingPick{0, 1}));
    EXPECT_EQ(chart::pickOfKept(survey, 1), (chart::SoundingPick{0, 2}));
    EXPECT_EQ(chart::pickOfKept(survey, 2), (chart::SoundingPick{1, 1}));
    EXPECT_FALSE(chart::pickOfKept(survey, 3));
}

} // namespace
