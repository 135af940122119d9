// SPDX-License-Identifier: GPL-3.0-or-later
// Baits that the user put himself, and those of a boat that swings.
#include "core/anchoring/swing.h"
#include "core/rods/spread_rods.h"

#include "tests/support/made_up_zones.h"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using rods::BaitCaution;
using rods::BaitRule;
using testing::Contains;
using testing::Each;
using testing::ElementsAre;
using testing::Field;
using testing::IsEmpty;
using units::Bearing;
using units::Depth;
using units::Length;

/// 300 m square, 3 m deep in the west and 12 in the east; closed in the north beyond 60 m.
class BaitsByHand : public testing::Test {
protected:
    [[nodiscard]] rods::RodSpread spread(const std::vector<WaterPoint>& byHand,
                                         const rods::RodSettings& settings = {}) const {
        base::Progress progress;
        return rods::spreadRods(ground_, anchors_, settings, progress, byHand).value();
    }
    [[nodiscard]] grid::Grid<std::uint8_t> closedOfIt() const {
        grid::Grid<std::uint8_t> closed(water_.depth.frame(), 0);
        for (std::size_t i = 0; i < closed.size(); ++i) {
            closed[i] = closed.frame().centre(closed.frame().cellAt(i)).y_m > 60.0 ? 1 : 0;
        }
        return closed;
    }
    /// Between two anchors with the bow to the south-west.
    [[nodiscard]] static anchoring::AnchorSet between(WaterPoint lie) {
        anchoring::AnchorSet set;
        set.lie = {lie, Bearing::degrees(225.0)};
        set.bow = {geo::moved(lie, set.lie.heading, Length::metres(20)), Depth::metres(4),
                   Length::metres(15), 3.0};
        set.stern = {geo::moved(lie, set.lie.heading.opposite(), Length::metres(10)),
                     Depth::metres(4), Length::metres(8), 1.5};
        return set;
    }
    [[nodiscard]] static anchoring::AnchorSet toOne(WaterPoint lie, double toEachSide_deg) {
        anchoring::AnchorSet set = between(lie);
        set.stern.reset();
        set.swing = anchoring::Swing{Length::metres(22.5), toEachSide_deg};
        return set;
    }

    support::MadeUpWater water_ = support::step(150.0, 3.0, 12.0, 30.0, 3.0);
    structure::ZoneMap zones_ = support::noZones(water_);
    structure::ZoneMap weed_ = support::noZones(water_);
    grid::Grid<std::uint8_t> closed_ = closedOfIt();
    rods::Ground ground_{water_.depth, Depth::metres(9.0), &closed_, zones_, weed_};
    anchoring::AnchorSet anchors_ = between({-30, 40});
};

TEST_F(BaitsByHand, StayWhereTheyAreWithTheirFiguresAndTheOthersAreLaidBesideThem) {
    const WaterPoint put{-50.0, 45.0};
    const auto laid = spread({put});
    ASSERT_EQ(laid.rods.size(), 4U);
    const auto rod = std::ranges::find(laid.rods, true, &rods::RodPlace::isByHand);
    ASSERT_NE(rod, laid.rods.end());
    EXPECT_EQ(rod->place, put);
    EXPECT_NEAR(rod->distance.inMetres(), std::hypot(20.0, 5.0), 1e-9);
    EXPECT_EQ(rod->depth, *ground_.depthAt(put));
    EXPECT_NEAR(rod->stopKnot.inMetres(), rod->depth.inMetres() + 0.3048, 1e-9);
    EXPECT_EQ(std::ranges::count(laid.rods, true, &rods::RodPlace::isByHand), 1);
    EXPECT_THAT(laid.cautions, IsEmpty()) << "it breaks nothing";
    for (const rods::RodPlace& other : laid.rods) {
        if (!other.isByHand) {
            EXPECT_GE(geo::distance_m(other.place, put), 6.0 - 1e-6);
        }
    }
}

TEST_F(BaitsByHand, AreCountedClockwiseFromTheBowLikeAll) {
    const auto laid = spread({{-30, 20}, {-50, 40}, {-10, 40}, {-20, 57}});
    std::vector<double> turns_deg;
    for (const rods::RodPlace& rod : laid.rods) {
        turns_deg.push_back(Bearing::degrees(rod.bearing.inDegrees() - 225.0).inDegrees());
    }
    EXPECT_EQ(turns_deg.size(), 4U);
    EXPECT_TRUE(std::ranges::is_sorted(turns_deg));
}

TEST_F(BaitsByHand, ThatBreakARuleAreLaidAndTold) {
    const auto only = [this](WaterPoint put) { return spread({put}).cautions; };
    const auto rule = [](BaitRule which) { return Contains(Field(&BaitCaution::rule, which)); };
    EXPECT_THAT(only({-30, 64}), rule(BaitRule::inClosedWater));
    EXPECT_THAT(only({-30, 9}), rule(BaitRule::tooFar));
    EXPECT_THAT(only({-30, 46}), rule(BaitRule::tooNear));
    EXPECT_THAT(only({-47, 22}), rule(BaitRule::foulOfRope));
    anchors_ = between({10, 0});
    EXPECT_THAT(only({35, 2}), rule(BaitRule::belowLimit));
    anchors_ = between({-130, -130});
    EXPECT_THAT(only({-133, -158}), rule(BaitRule::onLand));
    const auto pair = spread({{-130, -110}, {-127, -109}}).cautions;
    EXPECT_THAT(pair, Contains(Field(&BaitCaution::rule, BaitRule::nearAnotherLine)));
    rods::RodSettings deepOnly;
    deepOnly.shallowest = Depth::metres(5.0);
    EXPECT_THAT(spread({{-130, -110}}, deepOnly).cautions, rule(BaitRule::tooShallow));
}

TEST_F(BaitsByHand, BeyondTheRodsAreLeftOutAndCounted) {
    rods::RodSettings settings;
    settings.rods = 2;
    const auto laid = spread({{-30, 20}, {-50, 40}, {-10, 40}}, settings);
    EXPECT_EQ(laid.rods.size(), 2U);
    EXPECT_EQ(laid.laidTooMany, 1);
    EXPECT_EQ(spread({{-30, 20}}, settings).laidTooMany, 0);
}

TEST_F(BaitsByHand, OfABoatThatSwingsAreInReachFromEveryLieThatIsToBeReckonedWith) {
    anchors_ = toOne({-30, 10}, 30.0);
    const rods::RodSettings settings;
    const auto laid = spread({});
    ASSERT_GE(laid.rods.size(), 2U);
    for (const anchoring::Lie& lie : anchoring::liesOf(anchors_)) {
        for (const rods::RodPlace& rod : laid.rods) {
            const double away_m = geo::distance_m(lie.centre, rod.place);
            EXPECT_LE(away_m, settings.cast.inMetres() + 1e-6);
            EXPECT_GE(away_m, settings.nearest.inMetres() - 1e-6);
            EXPECT_GE(geo::bearing(lie.centre, rod.place).angleTo_deg(lie.heading),
                      settings.ropeClear_deg - 1e-6);
            EXPECT_TRUE(ground_.isOverOpenWater(lie.centre, rod.place));
            for (const rods::RodPlace& other : laid.rods) {
                if (&other != &rod) {
                    EXPECT_GE(geo::bearing(lie.centre, rod.place)
                                  .angleTo_deg(geo::bearing(lie.centre, other.place)),
                              settings.leastAngle_deg - 1e-6);
                }
            }
        }
    }
}

TEST_F(BaitsByHand, OfABoatThatMayLieAnywhereAreNoneWhereNothingIsCertain) {
    anchors_ = toOne({-30, 10}, 180.0);
    EXPECT_THAT(spread({}).rods, IsEmpty()) << "a cast of 30 m, and 40 m across the circle";
    const auto put = spread({{-50.0, 5.0}});
    ASSERT_EQ(put.rods.size(), 1U);
    EXPECT_THAT(put.cautions, Contains(BaitCaution{1, BaitRule::tooFar, 0}));
}

} // namespace
