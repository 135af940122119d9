// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/side_scene.h"
#include "tests/app/support/star_water.h"
#include "tests/support/made_up_water.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using side_view::Cut;
using side_view::makeCut;
using surface::TrustName;

/// A square of side 200 m whose depth is 5 m + x / 40: 2.5 m in the west, 7.5 m in the east. Trust
/// is 0.3 m; weed stands 1.2 m high in its north, by even chance in its south.
class PlaneCut : public testing::Test {
protected:
    PlaneCut() {
        const support::MadeUpWater plane = support::plane(100.0, 2.5, 7.5, 2.0);
        derived_.outline = std::make_shared<geo::Outline>(plane.outline);
        const grid::GridFrame& frame = plane.depth.frame();
        auto drawn = std::make_shared<surface::DrawnWater>();
        drawn->mask = plane.mask;
        drawn->depth = plane.depth;
        drawn->trust = surface::TrustGrid(grid::Grid<float>(frame, 0.3F),
                                          grid::Grid<TrustName>(frame, TrustName::inferred));
        derived_.drawn = drawn;
        auto weed = std::make_shared<weed::WeedMap>();
        weed->probability = grid::Grid<float>(frame, 0.0F);
        weed->height_m = grid::Grid<float>(frame, 1.2F);
        for (std::size_t i = 0; i < frame.size(); ++i) {
            const double north = frame.centre(frame.cellAt(i)).y_m;
            weed->probability[i] = north > 0.0 ? 0.51F : 0.5F;
            if (north > 80.0) {
                weed->height_m[i] = NAN;
            } else if (north > 60.0) {
                weed->height_m[i] = 9.0F;
            }
        }
        derived_.weed = weed;
    }
    side_view::CutSample at(geo::WaterPoint p, double rise_m = 0.0) const {
        return makeCut(derived_, {p, {p.x_m + 1.0, p.y_m}}, units::Length::metres(rise_m), 2)
            .samples.front();
    }
    water::Derived derived_;
};

TEST_F(PlaneCut, DepthIsThatOfTodaysLevel) {
    for (const double rise_m : {0.0, 0.6, -0.6}) {
        EXPECT_NEAR(at({40.0, 0.0}, rise_m).depth_m.value_or(NAN), 6.0 + rise_m, 1e-5) << rise_m;
    }
    EXPECT_NEAR(at({-80.0, 10.0}, -2.9).depth_m.value_or(NAN), 0.1, 1e-5);
    EXPECT_FALSE(at({-80.0, 10.0}, -3.1).depth_m) << "it has fallen dry";
    EXPECT_FALSE(at({140.0, 0.0}).depth_m) << "land";
}

TEST_F(PlaneCut, TrustAndWeedAreThoseOfThePlace) {
    const auto sample = at({40.0, 20.0});
    EXPECT_NEAR(sample.halfWidth_m, 0.3, 1e-6);
    EXPECT_EQ(sample.trust, TrustName::inferred);
    EXPECT_NEAR(sample.weed_m, 1.2, 1e-6);
    EXPECT_EQ(at({40.0, -20.0}).weed_m, 0.0) << "an even chance is not likely";
    EXPECT_NEAR(at({40.0, 70.0}, -2.0).weed_m, 4.0, 1e-5) << "never above the surface";
    EXPECT_EQ(at({40.0, 90.0}).weed_m, 0.0) << "no height is known";
    EXPECT_EQ(at({140.0, 20.0}).weed_m, 0.0);
}

TEST_F(PlaneCut, SamplesLieAtEvenStepsFromEndToEnd) {
    const Cut cut = makeCut(derived_, {{-40, 0}, {0, 0}, {0, 30}}, units::Length(), 8);
    ASSERT_EQ(cut.samples.size(), 8U);
    for (std::size_t i = 0; i < 8; ++i) {
        const double along = 10.0 * static_cast<double>(i);
        EXPECT_NEAR(cut.samples[i].along_m, along, 1e-9);
        const geo::WaterPoint expected =
            along <= 40.0 ? geo::WaterPoint{along - 40.0, 0.0} : geo::WaterPoint{0.0, along - 40.0};
        EXPECT_NEAR(geo::distance_m(cut.samples[i].at, expected), 0.0, 1e-9);
    }
    EXPECT_EQ(makeCut(derived_, {{-40, 0}, {0, 0}}, units::Length()).samples.size(), 400U);
    EXPECT_TRUE(makeCut(derived_, {{-40, 0}, {0, 0}}, units::Length(), 1).isEmpty());
}

TEST_F(PlaneCut, LandHasNoDepthThoughItsCellHasOne) {
    const geo::Ring west = support::rectangle(-100.0, -100.0, 30.0, 100.0);
    derived_.outline = std::make_shared<geo::Outline>(
        *geo::Outline::make({geo::Piece{west, {}}}, *geo::WaterFrame::centredOn({3.1, 55.2})));
    EXPECT_TRUE(at({29.0, 0.0}).depth_m);
    EXPECT_FALSE(at({40.0, 0.0}).depth_m);
    derived_.outline.reset();
    EXPECT_TRUE(at({40.0, 0.0}).depth_m) << "where no shore is known";
}

TEST_F(PlaneCut, WithoutADrawingThereIsNoDepth) {
    derived_.drawn.reset();
    EXPECT_FALSE(at({40.0, 0.0}).depth_m);
}

TEST(CutTable, TheDeepestIsThatWithItsTrust) {
    Cut cut;
    EXPECT_EQ(cut.deepest_m(), 0.0);
    cut.samples = {{0.0, {}, 4.0, 0.9, TrustName::guess, 0.0},
                   {10.0, {}, 4.5, 0.2, TrustName::sounded, 0.0},
                   {20.0, {}, std::nullopt, 0.0, TrustName::sounded, 0.0}};
    EXPECT_DOUBLE_EQ(cut.deepest_m(), 4.9);
    EXPECT_DOUBLE_EQ(cut.length_m(), 20.0);
    EXPECT_DOUBLE_EQ(cut.depthAt_m(0.0), 4.0);
    EXPECT_DOUBLE_EQ(cut.depthAt_m(9.0), 4.5);
    EXPECT_DOUBLE_EQ(cut.depthAt_m(10.0), 4.5);
    EXPECT_DOUBLE_EQ(cut.depthAt_m(11.0), 0.0) << "land";
    EXPECT_DOUBLE_EQ(cut.depthAt_m(99.0), 0.0);
}

TEST(CutTable, PlacesAndTheirWayAlongHoldToThePath) {
    const Cut cut = makeCut(support::starDerived(), {{0, 0}, {30, 0}, {30, 40}}, units::Length());
    EXPECT_EQ(cut.placeAt(-5.0), (geo::WaterPoint{0, 0}));
    EXPECT_EQ(cut.placeAt(99.0), (geo::WaterPoint{30, 40}));
    EXPECT_NEAR(cut.alongOf({12.0, -4.0}, 4.0).value_or(NAN), 12.0, 1e-9);
    EXPECT_FALSE(cut.alongOf({12.0, -4.0}, 3.9));
    EXPECT_NEAR(cut.alongOf({33.0, 25.0}, 10.0).value_or(NAN), 55.0, 1e-9);
    EXPECT_NEAR(cut.alongOf({-6.0, 0.0}, 10.0).value_or(NAN), 0.0, 1e-9);
    EXPECT_NEAR(cut.alongOf({30.0, 46.0}, 10.0).value_or(NAN), 70.0, 1e-9);
}

TEST(CutTable, ThePathOfAMarkGoesOnStraightBeyondEachAnchor) {
    marks::Mark mark;
    mark.anchors.lie.centre = {0, 0};
    mark.anchors.bow.place = {30, 40};             // 50 m
    mark.anchors.stern.emplace().place = {-20, 0}; // bent
    const geo::Path path = side_view::pathThrough(mark, units::Length::metres(10.0));
    const geo::Path expected{{-30, 0}, {-20, 0}, {0, 0}, {30, 40}, {36, 48}};
    ASSERT_EQ(path.size(), expected.size());
    for (std::size_t i = 0; i < path.size(); ++i) {
        EXPECT_NEAR(geo::distance_m(path[i], expected[i]), 0.0, 1e-9) << i;
    }
}

TEST(CutTable, ThePathOfAMarkAtOneAnchorGoesOnBehindTheBoat) {
    marks::Mark mark;
    mark.anchors.lie.centre = {0, 0};
    mark.anchors.bow.place = {0, 30};
    const geo::Path path = side_view::pathThrough(mark, units::Length::metres(10.0));
    const geo::Path expected{{0, -10}, {0, 0}, {0, 30}, {0, 40}};
    ASSERT_EQ(path.size(), expected.size());
    for (std::size_t i = 0; i < path.size(); ++i) {
        EXPECT_NEAR(geo::distance_m(path[i], expected[i]), 0.0, 1e-9) << i;
    }
}

TEST(SceneAlong, HoldsTheFishWithinFifteenMetresAtTheirBait) {
    chart::ChartContent content = support::starContent();
    water::Water water = *content.water;
    const auto stayAt = [&](geo::WaterPoint p, std::optional<double> bait_m, bool landed) {
        logbook::Stay stay;
        stay.place = water.frame->toEarth(p);
        logbook::Fish fish;
        fish.landed = landed;
        if (bait_m) {
            fish.baitDepth = units::Depth::metres(*bait_m);
        }
        stay.runs.push_back(fish);
        return stay;
    };
    water.log = {stayAt({-60.0, 14.9}, 3.2, true), stayAt({20.0, -14.9}, {}, false),
                 stayAt({40.0, 15.1}, 2.0, true)};
    content.water = std::make_shared<water::Water>(water);
    const auto scene = side_view::sceneAlong(content, {{-100, 0}, {100, 0}});
    ASSERT_EQ(scene.fish.size(), 2U);
    EXPECT_NEAR(scene.fish[0].along_m, 40.0, 0.01);
    EXPECT_NEAR(scene.fish[0].depth_m.value_or(NAN), 3.2, 1e-9);
    EXPECT_TRUE(scene.fish[0].landed);
    EXPECT_NEAR(scene.fish[1].along_m, 120.0, 0.01);
    EXPECT_FALSE(scene.fish[1].depth_m);
    EXPECT_FALSE(scene.fish[1].landed);
    EXPECT_EQ(scene.bands, water.settings.bands.value_or(contours::Bands()));
}

} // namespace
