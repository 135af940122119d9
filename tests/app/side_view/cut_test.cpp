// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/cut.h"
#include "app/side_view/side_frame.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

namespace {

using side_view::Cut;
using side_view::makeCut;

const geo::Path acrossTheMiddle{{-80.0, 0.0}, {120.0, 0.0}};

TEST(Cut, FollowsTheBottomUnderThePath) {
    const Cut cut = makeCut(support::starDerived(), acrossTheMiddle, units::Length(), 101);
    ASSERT_EQ(cut.samples.size(), 101U);
    EXPECT_DOUBLE_EQ(cut.length_m(), 200.0);
    for (const side_view::CutSample& sample : cut.samples) {
        ASSERT_TRUE(sample.depth_m);
        // Cells of 5 m, straight between their centres.
        EXPECT_NEAR(*sample.depth_m, support::starDepth_m(sample.at), 0.05) << sample.along_m;
    }
}

TEST(Cut, AHigherLevelIsDeeperByJustThat) {
    const auto derived = support::starDerived();
    const Cut low = makeCut(derived, acrossTheMiddle, units::Length(), 50);
    const Cut high = makeCut(derived, acrossTheMiddle, units::Length::metres(0.7), 50);
    for (std::size_t i = 0; i < low.samples.size(); ++i) {
        EXPECT_NEAR(*high.samples[i].depth_m - *low.samples[i].depth_m, 0.7, 1e-9);
    }
}

TEST(Cut, LandHasNoDepth) {
    const Cut cut = makeCut(support::starDerived(), {{0.0, 0.0}, {2000.0, 0.0}}, units::Length());
    EXPECT_TRUE(cut.samples.front().depth_m);
    EXPECT_FALSE(cut.samples.back().depth_m);
}

TEST(Cut, KnowsTheGuessAndTheWeed) {
    const auto derived = support::starDerived();
    const Cut guess = makeCut(derived, {{-260.0, 60.0}, {-180.0, 60.0}}, units::Length(), 5);
    EXPECT_EQ(guess.samples[2].trust, surface::TrustName::guess);
    EXPECT_GT(guess.samples[2].halfWidth_m, 2.0);
    const geo::WaterPoint bay = support::starPoint(0.92, 0.0);
    ASSERT_GT(bay.x_m, 250.0);
    const Cut weedy = makeCut(derived, {bay, {bay.x_m + 5.0, bay.y_m}}, units::Length(), 3);
    EXPECT_NEAR(weedy.samples[0].weed_m, 1.2, 1e-6);
}

TEST(Cut, PlaceAndAlongAreEachOthersInverse) {
    const Cut cut = makeCut(support::starDerived(), {{0, 0}, {30, 0}, {30, 40}}, units::Length());
    for (const double along : {0.0, 12.5, 30.0, 55.0, 70.0}) {
        EXPECT_NEAR(*cut.alongOf(cut.placeAt(along), 0.01), along, 1e-6);
    }
    EXPECT_FALSE(cut.alongOf({200.0, 200.0}, 40.0));
}

TEST(Cut, APathThatGoesNowhereIsEmpty) {
    EXPECT_TRUE(makeCut(support::starDerived(), {{5, 5}, {5, 5}}, units::Length()).isEmpty());
    EXPECT_TRUE(makeCut(support::starDerived(), {}, units::Length()).isEmpty());
}

TEST(Cut, ThePathOfAMarkRunsFromBehindTheSternToBeyondTheBow) {
    const water::PlannedDay day = support::starDay();
    const marks::Mark& mark = day.marks[0];
    const geo::Path path = side_view::pathThrough(mark, units::Length::metres(15.0));
    const Cut cut = makeCut(support::starDerived(), path, units::Length());
    const double stern = *cut.alongOf(mark.anchors.stern->place, 0.1);
    const double lie = *cut.alongOf(mark.anchors.lie.centre, 0.1);
    const double bow = *cut.alongOf(mark.anchors.bow.place, 0.1);
    EXPECT_NEAR(stern, 15.0, 1e-6);
    EXPECT_LT(stern, lie);
    EXPECT_LT(lie, bow);
    EXPECT_NEAR(cut.length_m() - bow, 15.0, 1e-6);
}

TEST(SideFrame, PutsTheWholeCutInTheBox) {
    const QRectF box(10, 20, 800, 180);
    const auto frame = side_view::SideFrame::showing(box, 120.0, 9.0, 1.6);
    EXPECT_TRUE(box.contains(frame.at(0.0, 9.0)));
    EXPECT_TRUE(box.contains(frame.at(120.0, -1.5)) || frame.at(120.0, -1.5).x() == box.right());
    EXPECT_NEAR(frame.alongAt(frame.at(47.0, 3.0).x()), 47.0, 1e-9);
}

TEST(SideFrame, IsToScaleWhereThePageIsHighEnough) {
    const auto frame = side_view::SideFrame::showing(QRectF(0, 0, 300, 80), 60.0, 8.0, 0.4);
    EXPECT_NEAR(frame.exaggeration(), 1.0, 1e-6);
}

} // namespace
