// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/side_view.h"

#include "app/chart/palette.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <QMouseEvent>
#include <QTest>

namespace {

using side_view::SideView;

class SideViewTest : public testing::Test {
protected:
    void SetUp() override {
        view_.resize(900, 190);
        view_.setContent(support::starContent());
        QObject::connect(&view_, &SideView::pointedAt, [this](auto place) { pointed_ = place; });
    }
    void pointTo(QPointF pixel) {
        QMouseEvent move(QEvent::MouseMove, pixel, view_.mapToGlobal(pixel), Qt::NoButton,
                         Qt::NoButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&view_, &move);
    }
    SideView view_;
    std::optional<geo::WaterPoint> pointed_;
};

TEST_F(SideViewTest, PointingIsToldAsAPlaceOnTheCut) {
    view_.showCut({-100, 0}, {100, 0});
    pointTo({450, 100});
    ASSERT_TRUE(pointed_);
    EXPECT_NEAR(pointed_->x_m, 0.0, 1.0);
    EXPECT_NEAR(pointed_->y_m, 0.0, 1e-6);
}

TEST_F(SideViewTest, AnswersToThePlaceTheChartPointsAt) {
    view_.showCut({-100, 0}, {100, 0});
    view_.setPointed(geo::WaterPoint{25.0, 10.0});
    ASSERT_TRUE(view_.scene().pointed_m);
    EXPECT_NEAR(*view_.scene().pointed_m, 125.0, 1e-6);
    view_.setPointed(geo::WaterPoint{25.0, 300.0}); // far off the cut
    EXPECT_FALSE(view_.scene().pointed_m);
}

TEST_F(SideViewTest, AnEmptySheetHasTheColoursOfTheThemeToo) {
    for (const chart::Inks inks : {chart::Inks::light, chart::Inks::dark}) {
        chart::ChartContent content = support::starContent();
        content.inks = inks;
        view_.setContent(content);
        view_.showNothing();
        EXPECT_EQ(view_.grab().toImage().pixelColor(3, 3), chart::Palette::of(inks).card);
    }
}

TEST_F(SideViewTest, ShowsTheRigOfAMark) {
    view_.showMark(1);
    ASSERT_TRUE(view_.scene().mark);
    const QImage with = view_.grab().toImage();
    view_.showCut(view_.scene().cut.path.front(), view_.scene().cut.path.back());
    EXPECT_FALSE(view_.scene().mark);
    EXPECT_NE(view_.grab().toImage(), with);
}

TEST_F(SideViewTest, TheCutFollowsTheHandThatHoldsAnAnchorOfItsMark) {
    view_.showMark(1);
    const side_view::SideScene planned = view_.scene();
    ASSERT_TRUE(planned.mark);
    marks::Mark tried = *planned.mark;
    tried.anchors.bow.place.x_m += 12.0;
    tried.anchors.bow.rope = units::Length::metres(61.0);
    std::vector<geo::Path> told;
    QObject::connect(&view_, &SideView::cutChanged,
                     [&](const geo::Path& path) { told.push_back(path); });
    view_.setTried(tried);
    EXPECT_EQ(view_.scene().mark->anchors.bow.rope, tried.anchors.bow.rope);
    EXPECT_NE(view_.scene().cut.path, planned.cut.path);
    ASSERT_EQ(told.size(), 1U) << "the chart shows where the cut is now";
    EXPECT_EQ(told[0], view_.scene().cut.path);
    view_.showMark(2);
    EXPECT_EQ(view_.scene().mark->rank, 2) << "of another mark nothing is held";
    view_.showMark(1);
    view_.setTried(std::nullopt);
    EXPECT_EQ(view_.scene().cut.path, planned.cut.path);
    view_.showCut({-100, 0}, {100, 0});
    view_.setTried(tried);
    EXPECT_FALSE(view_.scene().mark) << "a line drawn by hand stays what it is";
}

TEST_F(SideViewTest, AMarkThatIsGoneLeavesAnEmptySheet) {
    view_.showMark(99);
    EXPECT_TRUE(view_.scene().cut.isEmpty());
    EXPECT_FALSE(view_.grab().isNull());
}

TEST_F(SideViewTest, TheTrackAnswersAndItsSoundingsCanBeClicked) {
    view_.showTrack(0);
    const auto& points = view_.profile().profile.points;
    ASSERT_GT(points.size(), 100U);
    std::optional<std::size_t> clicked;
    QObject::connect(&view_, &SideView::soundingClicked,
                     [&](chart::SoundingPick pick) { clicked = pick.sounding; });
    pointTo({450, 100});
    ASSERT_TRUE(pointed_);
    QTest::mouseClick(&view_, Qt::LeftButton, {}, {450, 100});
    ASSERT_TRUE(clicked);
    EXPECT_EQ(points[*clicked].at, *pointed_);
}

TEST_F(SideViewTest, AChosenSoundingIsRingedAndItsStretchOfTrackShown) {
    view_.showTrack(0);
    const std::size_t last = view_.profile().profile.points.size() - 1;
    view_.setChosen(chart::SoundingPick{0, last}, true);
    const QImage with = view_.grab().toImage();
    const double along = view_.profile().profile.points[last].along_m;
    EXPECT_LE(view_.profile().from_m, along);
    EXPECT_GE(view_.profile().to_m, along);
    EXPECT_LT(view_.profile().to_m - view_.profile().from_m, 300.0);
    view_.setChosen(std::nullopt, false);
    EXPECT_NE(view_.grab().toImage(), with);
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
