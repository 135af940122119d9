// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/track_profile.h"

#include "app/chart/lettering.h"
#include "app/chart/palette.h"
#include "app/side_view/side_view.h"
#include "tests/app/support/recorded_pages.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

namespace {

using side_view::ProfileScene;
using side_view::SideView;
using side_view::TrackProfile;
using soundings::Verdict;
using support::Drawn;

const QRectF page(0.0, 0.0, 1000.0, 290.0);

/// A hundred metres along, a sounding every 10 m, 3 m deep and deeper by 0.5 m each; one spike, one
/// whose position jumped.
ProfileScene hundredMetres() {
    reduction::ReducedDay day;
    for (int i = 0; i <= 10; ++i) {
        day.points.push_back({10.0 * i, 0.0});
        day.depth_m.push_back(3.0 + 0.5 * i);
        day.verdicts.push_back(Verdict::kept);
    }
    day.verdicts[4] = Verdict::spike;
    day.depth_m[4] = 40.0;
    day.verdicts[7] = Verdict::positionJump;
    day.points[7] = {70.0, 500.0};
    ProfileScene scene;
    scene.profile = side_view::makeTrackProfile(day);
    scene.to_m = 100.0;
    return scene;
}

TEST(TrackProfileTable, EachSoundingLiesAsFarAlongAsTheBoatHadCome) {
    const TrackProfile profile = hundredMetres().profile;
    ASSERT_EQ(profile.points.size(), 11U);
    EXPECT_DOUBLE_EQ(profile.length_m(), 100.0);
    for (std::size_t i = 0; i < 11; ++i) {
        const double along = i == 7 ? 60.0 : 10.0 * static_cast<double>(i);
        EXPECT_NEAR(profile.points[i].along_m, along, 1e-9) << i;
        EXPECT_EQ(profile.points[i].sounding, i);
        EXPECT_DOUBLE_EQ(profile.points[i].depth_m, i == 4 ? 40.0 : 3.0 + 0.5 * double(i));
    }
    EXPECT_EQ(profile.points[4].verdict, Verdict::spike);
    // 8 m, the deepest that is kept, and a quarter of it.
    EXPECT_DOUBLE_EQ(profile.deepest_m(), 10.0);
    EXPECT_DOUBLE_EQ(TrackProfile().deepest_m(), 1.25);
}

TEST(TrackProfileTable, TheNearestIsNearestAndWithinReach) {
    const TrackProfile profile = hundredMetres().profile;
    EXPECT_EQ(profile.nearest({52.0, 0.0}, 40.0), 5U);
    EXPECT_EQ(profile.nearest({70.0, 470.0}, 40.0), 7U);
    EXPECT_FALSE(profile.nearest({52.0, 60.0}, 40.0));
    EXPECT_EQ(profile.nearestAlong(-4.0), 0U);
    EXPECT_EQ(profile.nearestAlong(14.0), 1U);
    EXPECT_EQ(profile.nearestAlong(16.0), 2U);
    EXPECT_EQ(profile.nearestAlong(400.0), 10U);
    EXPECT_FALSE(TrackProfile().nearestAlong(3.0));
}

TEST(TrackProfileTable, ThePageShowsAirAboveAndTheDeepestBelow) {
    const auto frame = side_view::frameOf(hundredMetres(), page);
    EXPECT_DOUBLE_EQ(frame.from_m, 0.0);
    EXPECT_DOUBLE_EQ(frame.to_m, 100.0);
    EXPECT_DOUBLE_EQ(frame.air_m, 1.6);
    EXPECT_DOUBLE_EQ(frame.deepest_m, 10.0);
    // 290 pixels for 11.6 m.
    EXPECT_NEAR(frame.at(50.0, 4.0).y(), 140.0, 1e-9);
    EXPECT_NEAR(frame.at(50.0, 4.0).x(), 500.0, 1e-9);
    const ProfileScene scene = hundredMetres();
    EXPECT_NEAR(side_view::pixelOf(scene.profile.points[4], frame, 1.0).y(), 284.0, 1e-9)
        << "on the edge, so that it is not lost";
}

TEST(TrackProfileTable, ThePointUnderThePointerIsTheNearestDrawnElseTheNearestAlong) {
    const ProfileScene scene = hundredMetres();
    const auto frame = side_view::frameOf(scene, page);
    for (std::size_t i = 0; i < 11; ++i) {
        const QPointF at = side_view::pixelOf(scene.profile.points[i], frame, 1.0);
        EXPECT_EQ(side_view::pointUnder(scene, page, at + QPointF(3.0, 3.0)), i);
    }
    EXPECT_EQ(side_view::pointUnder(scene, page, {337.0, 5.0}), 3U);
}

TEST(TrackProfileRead, WhatIsPointedAtSaysItsDepthAndWhyItIsSetAside) {
    const QFont font = chart::typeface(chart::TypeSize::small, 1.0, chart::TypeStyle::bold);
    const auto written = [&](std::size_t point, preferences::UnitSystem units,
                             const QString& text) {
        ProfileScene scene = hundredMetres();
        scene.words = wording::Words(units);
        scene.pointed = point;
        support::RecordedPages pages;
        QPainter painter(&pages);
        side_view::paintProfile(painter, scene, page);
        return pages.lettered(text, font).size();
    };
    using preferences::UnitSystem;
    EXPECT_EQ(written(2, UnitSystem::metric, "4.0 m"), 1U);
    EXPECT_EQ(written(2, UnitSystem::imperial, "13.1 ft"), 1U);
    EXPECT_EQ(written(4, UnitSystem::metric, "40.0 m  set aside: spike"), 1U);
    EXPECT_EQ(written(7, UnitSystem::metric, "6.5 m  set aside: position jumped"), 1U);
}

TEST(TrackProfileRead, TheBottomGoesThroughWhatIsKeptAndTheLegendSaysTheStretch) {
    ProfileScene scene = hundredMetres();
    support::RecordedPages pages;
    QPainter painter(&pages);
    side_view::paintProfile(painter, scene, page);
    const auto frame = side_view::frameOf(scene, page);
    const auto bottoms = pages.all(Drawn::Kind::polyline);
    ASSERT_EQ(bottoms.size(), 1U);
    QPolygonF expected;
    for (const auto& point : scene.profile.points) {
        if (point.verdict == Verdict::kept) {
            expected << frame.at(point.along_m, point.depth_m);
        }
    }
    ASSERT_EQ(bottoms[0].points.size(), expected.size());
    for (qsizetype i = 0; i < expected.size(); ++i) {
        EXPECT_NEAR(bottoms[0].points[i].x(), expected[i].x(), 1e-6);
        EXPECT_NEAR(bottoms[0].points[i].y(), expected[i].y(), 1e-6);
    }
    EXPECT_EQ(pages
                  .lettered("0.0 m to 100 m along the track; × echo, + position, □ other passes or "
                            "by hand",
                            chart::typeface(chart::TypeSize::small, 0.92))
                  .size(),
              1U);
}

class TrackAtTheDesk : public testing::Test {
protected:
    void SetUp() override {
        view_.resize(900, 190);
        view_.setContent(support::starContent());
        view_.showTrack(0);
        whole_ = view_.profile().profile.length_m();
    }
    void turnWheel(QPoint degrees, double x) {
        QWheelEvent event({x, 90.0}, view_.mapToGlobal(QPointF(x, 90.0)), {}, degrees, Qt::NoButton,
                          Qt::NoModifier, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(&view_, &event);
    }
    SideView view_;
    double whole_ = 0.0;
};

TEST_F(TrackAtTheDesk, TheWholeTrackIsShownAndTheWheelEnlargesAboutThePointer) {
    EXPECT_DOUBLE_EQ(view_.profile().from_m, 0.0);
    EXPECT_DOUBLE_EQ(view_.profile().to_m, whole_);
    turnWheel({0, 120}, 300.0);
    EXPECT_NEAR(view_.profile().to_m - view_.profile().from_m, 0.8 * whole_, 1e-6);
    EXPECT_NEAR(view_.profile().from_m, whole_ / 3.0 * 0.2, 1e-6) << "what lay under it stays";
    const double from = view_.profile().from_m;
    turnWheel({-120, 0}, 300.0);
    EXPECT_NEAR(view_.profile().from_m, from + 0.08 * whole_, 1e-6);
    turnWheel({0, -1200}, 300.0);
    EXPECT_NEAR(view_.profile().from_m, 0.0, 1e-6);
    EXPECT_NEAR(view_.profile().to_m, whole_, 1e-6);
    turnWheel({0, 12000}, 300.0);
    EXPECT_NEAR(view_.profile().to_m - view_.profile().from_m, 40.0, 1e-6);
}

TEST_F(TrackAtTheDesk, ADayThatIsNotThereShowsNoTrack) {
    view_.showTrack(3);
    EXPECT_TRUE(view_.profile().profile.points.empty());
    EXPECT_TRUE(view_.showsTrack());
    view_.showNothing();
    EXPECT_FALSE(view_.showsTrack());
}

TEST_F(TrackAtTheDesk, AnswersToThePlaceTheChartPointsAtWithinFortyMetres) {
    const auto& points = view_.profile().profile.points;
    view_.setPointed(points[200].at);
    EXPECT_EQ(view_.profile().pointed, 200U);
    view_.setPointed(geo::WaterPoint{points[0].at.x_m, points[0].at.y_m - 41.0});
    EXPECT_FALSE(view_.profile().pointed);
    view_.setPointed(points[200].at);
    view_.setPointed(std::nullopt);
    EXPECT_FALSE(view_.profile().pointed);
}

TEST_F(TrackAtTheDesk, WhenThePointerLeavesNothingIsPointedAt) {
    std::vector<bool> told;
    QObject::connect(&view_, &SideView::pointedAt, [&](std::optional<geo::WaterPoint> place) {
        told.push_back(place.has_value());
    });
    view_.setPointed(view_.profile().profile.points[5].at);
    QEvent leave(QEvent::Leave);
    QCoreApplication::sendEvent(&view_, &leave);
    EXPECT_FALSE(view_.profile().pointed);
    EXPECT_EQ(told, std::vector<bool>{false});
}

TEST_F(TrackAtTheDesk, AChosenSoundingInSightMovesNothing) {
    view_.setChosen(chart::SoundingPick{0, 50}, false);
    EXPECT_EQ(view_.profile().chosen, 50U);
    EXPECT_DOUBLE_EQ(view_.profile().from_m, 0.0);
    EXPECT_DOUBLE_EQ(view_.profile().to_m, whole_);
    view_.setChosen(chart::SoundingPick{0, 50}, true);
    EXPECT_NEAR(view_.profile().to_m - view_.profile().from_m, 240.0, 1e-6);
    view_.setChosen(chart::SoundingPick{0, 1u << 20}, false);
    EXPECT_EQ(view_.profile().chosen, 50U) << "there is no such sounding";
}

TEST_F(TrackAtTheDesk, ACutTellsItsPathAndTheTrackNone) {
    std::vector<std::size_t> corners;
    QObject::connect(&view_, &SideView::cutChanged,
                     [&](const geo::Path& path) { corners.push_back(path.size()); });
    view_.showCut({-50, 0}, {50, 0});
    EXPECT_EQ(view_.scene().cut.path, (geo::Path{{-50, 0}, {50, 0}}));
    view_.showMark(2);
    ASSERT_TRUE(view_.scene().mark);
    EXPECT_EQ(view_.scene().mark->rank, 2);
    view_.showTrack(0);
    EXPECT_EQ(corners, (std::vector<std::size_t>{2, 5, 0}));
}

} // namespace
