// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/brush_stroke.h"
#include "app/side_view/side_view.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <QTest>

namespace {

using side_view::BrushAct;
using side_view::SideView;

/// The star water with its survey day twice over, as the water holds it and as it was judged.
chart::ChartContent twoDays() {
    chart::ChartContent content = support::starContent();
    auto checked = std::make_shared<water::CheckedSurvey>(*content.derived.checked);
    checked->survey.days.push_back(checked->survey.days.front());
    auto water = std::make_shared<water::Water>(*content.water);
    for (const auto& judged : checked->survey.days) {
        soundings::SurveyDay day;
        day.soundings.edit().resize(judged.points.size());
        water->days.push_back(day);
    }
    water->days[1].setAsideByHand = {5};
    water->days[1].keptByHand = {97}; // which the rules call a spike
    content.derived.checked = checked;
    content.water = water;
    return content;
}

TEST(TrackDays, WhatTheHandSaidHoldsAtOnceAndOfItsOwnDay) {
    using soundings::Verdict;
    SideView view;
    view.setContent(twoDays());
    view.showTrack(1);
    EXPECT_EQ(view.profile().profile.points[5].verdict, Verdict::byHand);
    EXPECT_EQ(view.profile().profile.points[97].verdict, Verdict::kept);
    view.showTrack(0);
    EXPECT_EQ(view.profile().profile.points[5].verdict, Verdict::kept);
    EXPECT_EQ(view.profile().profile.points[97].verdict, Verdict::spike);
}

TEST(TrackDays, AClickTellsTheDayWhoseTrackIsShown) {
    SideView view;
    view.resize(900, 190);
    view.setContent(twoDays());
    std::optional<chart::SoundingPick> clicked;
    QObject::connect(&view, &SideView::soundingClicked,
                     [&](chart::SoundingPick pick) { clicked = pick; });
    for (const int day : {1, 0}) {
        view.showTrack(day);
        QTest::mouseClick(&view, Qt::LeftButton, {}, {450, 100});
        ASSERT_TRUE(clicked);
        EXPECT_EQ(clicked->day, day);
    }
}

TEST(TrackDays, TheBrushMeetsWhatLiesWithinNinePixels) {
    const QRectF page(0.0, 0.0, 1000.0, 290.0);
    for (const auto& [away, isMet] : {std::pair(8.9, true), std::pair(9.1, false)}) {
        side_view::ProfileScene scene;
        scene.profile.points = {{50.0, 4.0, soundings::Verdict::kept, 0, {}}};
        scene.to_m = 100.0;
        scene.brush = side_view::Brush{BrushAct::setAside, {}, true, {}};
        const QPointF at =
            side_view::pixelOf(scene.profile.points[0], side_view::frameOf(scene, page), 1.0);
        side_view::drawOn(scene, page, at + QPointF(away, 0.0));
        EXPECT_EQ(scene.brush->met.size(), isMet ? 1U : 0U) << away;
    }
}

} // namespace
