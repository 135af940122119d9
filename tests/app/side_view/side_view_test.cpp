// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/side_view.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <QMouseEvent>
#include <QTest>

namespace {

using side_view::SideView;

class SideViewTest : public testing::Test {
protected:
    void SetUp() override {
        view.resize(900, 190);
        view.setContent(support::starContent());
        QObject::connect(&view, &SideView::pointedAt, [this](auto place) { pointed = place; });
    }
    void pointTo(QPointF pixel) {
        QMouseEvent move(QEvent::MouseMove, pixel, view.mapToGlobal(pixel), Qt::NoButton,
                         Qt::NoButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&view, &move);
    }
    SideView view;
    std::optional<geo::WaterPoint> pointed;
};

TEST_F(SideViewTest, PointingIsToldAsAPlaceOnTheCut) {
    view.showCut({-100, 0}, {100, 0});
    pointTo({450, 100});
    ASSERT_TRUE(pointed);
    EXPECT_NEAR(pointed->x_m, 0.0, 1.0);
    EXPECT_NEAR(pointed->y_m, 0.0, 1e-6);
}

TEST_F(SideViewTest, AnswersToThePlaceTheChartPointsAt) {
    view.showCut({-100, 0}, {100, 0});
    view.setPointed(geo::WaterPoint{25.0, 10.0});
    ASSERT_TRUE(view.scene().pointed_m);
    EXPECT_NEAR(*view.scene().pointed_m, 125.0, 1e-6);
    view.setPointed(geo::WaterPoint{25.0, 300.0}); // far off the cut
    EXPECT_FALSE(view.scene().pointed_m);
}

TEST_F(SideViewTest, ShowsTheRigOfAMark) {
    view.showMark(1);
    ASSERT_TRUE(view.scene().mark);
    const QImage with = view.grab().toImage();
    view.showCut(view.scene().cut.path.front(), view.scene().cut.path.back());
    EXPECT_FALSE(view.scene().mark);
    EXPECT_NE(view.grab().toImage(), with);
}

TEST_F(SideViewTest, AMarkThatIsGoneLeavesAnEmptySheet) {
    view.showMark(99);
    EXPECT_TRUE(view.scene().cut.isEmpty());
    EXPECT_FALSE(view.grab().isNull());
}

TEST_F(SideViewTest, TheTrackAnswersAndItsSoundingsCanBeClicked) {
    view.showTrack(0);
    const auto& points = view.profile().profile.points;
    ASSERT_GT(points.size(), 100U);
    std::optional<std::size_t> clicked;
    QObject::connect(&view, &SideView::soundingClicked,
                     [&](chart::SoundingPick pick) { clicked = pick.sounding; });
    pointTo({450, 100});
    ASSERT_TRUE(pointed);
    QTest::mouseClick(&view, Qt::LeftButton, {}, {450, 100});
    ASSERT_TRUE(clicked);
    EXPECT_EQ(points[*clicked].at, *pointed);
}

TEST_F(SideViewTest, AChosenSoundingIsRingedAndItsStretchOfTrackShown) {
    view.showTrack(0);
    const std::size_t last = view.profile().profile.points.size() - 1;
    view.setChosen(chart::SoundingPick{0, last}, true);
    const QImage with = view.grab().toImage();
    const double along = view.profile().profile.points[last].along_m;
    EXPECT_LE(view.profile().from_m, along);
    EXPECT_GE(view.profile().to_m, along);
    EXPECT_LT(view.profile().to_m - view.profile().from_m, 300.0);
    view.setChosen(std::nullopt, false);
    EXPECT_NE(view.grab().toImage(), with);
}

TEST(TrackProfile, APositionThatJumpedDoesNotLengthenTheTrack) {
    reduction::ReducedDay day;
    using soundings::Verdict;
    day.points = {{0, 0}, {10, 0}, {500, 0}, {20, 0}};
    day.depth_m = {1, 2, 3, 4};
    day.verdicts = {Verdict::kept, Verdict::kept, Verdict::positionJump, Verdict::kept};
    const auto profile = side_view::makeTrackProfile(day);
    EXPECT_DOUBLE_EQ(profile.length_m(), 20.0);
    EXPECT_EQ(profile.nearestAlong(19.0), 3U);
}

} // namespace
