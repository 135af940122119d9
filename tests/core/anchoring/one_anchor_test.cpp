// SPDX-License-Identifier: GPL-3.0-or-later
// A boat at one anchor: downwind of it, with room to swing.
#include "core/anchoring/place_anchors.h"
#include "core/anchoring/rope.h"
#include "core/anchoring/swing.h"

#include "tests/support/anchor_bottom.h"

#include <random>

#include <gtest/gtest.h>

namespace {

using anchoring::AnchorSet;
using anchoring::BoatSettings;
using anchoring::Weather;
using support::bottomOf;
using units::Bearing;
using units::Length;
using units::Speed;

BoatSettings toOneAnchor() {
    BoatSettings boat;
    boat.toOneAnchor = true;
    return boat;
}

Weather windFrom(double degrees, std::optional<double> speed_m_s = 5.0) {
    return {Bearing::degrees(degrees),
            speed_m_s ? std::optional(Speed::metresPerSecond(*speed_m_s)) : std::nullopt,
            {}};
}

base::Result<AnchorSet> place(const grid::DepthGrid& depth, geo::WaterPoint mark,
                              const Weather& weather, const BoatSettings& boat = toOneAnchor(),
                              const grid::Grid<std::uint8_t>* closed = nullptr) {
    base::Progress progress;
    return anchoring::placeAnchors(depth, closed, mark, weather, boat, progress);
}

TEST(OneAnchor, LiesUpwindByItsScopeAndTheBoatOnTheMark) {
    const auto flat = bottomOf([](geo::WaterPoint) { return 5.9; });
    const auto set = place(flat, {0, 0}, windFrom(90));
    ASSERT_TRUE(set) << set.error().sentence();
    EXPECT_FALSE(set->stern);
    EXPECT_NEAR(set->bow.rope.inMetres(), 3.0 * 6.5, 1e-4);
    EXPECT_NEAR(set->bow.place.x_m, 2.5 + std::sqrt(19.5 * 19.5 - 6.5 * 6.5), 0.01);
    EXPECT_NEAR(set->bow.place.y_m, 0.0, 1e-6);
    EXPECT_EQ(set->lie.centre, (geo::WaterPoint{0, 0}));
    EXPECT_EQ(set->lie.heading, Bearing::degrees(90));
    EXPECT_EQ(set->fallBackRope, set->bow.rope);
    EXPECT_FALSE(set->beamPull_N) << "she turns to the wind by herself";
    ASSERT_TRUE(set->swing);
    EXPECT_NEAR(set->swing->radius.inMetres(), set->bow.place.x_m + 2.5, 1e-6);
}

TEST(OneAnchor, NeedsNoSternRope) {
    const auto deep = bottomOf([](geo::WaterPoint) { return 12.0; });
    BoatSettings boat = toOneAnchor();
    boat.sternRope = Length::metres(5.0);
    EXPECT_TRUE(place(deep, {0, 0}, windFrom(10), boat));
    boat.toOneAnchor = false;
    EXPECT_FALSE(place(deep, {0, 0}, windFrom(10), boat));
}

TEST(OneAnchor, SailsAboutInAWindAndLiesAnywhereWithoutOne) {
    const auto flat = bottomOf([](geo::WaterPoint) { return 4.0; });
    EXPECT_EQ(place(flat, {0, 0}, windFrom(10))->swing->toEachSide_deg, 30.0);
    EXPECT_EQ(place(flat, {0, 0}, windFrom(10, std::nullopt))->swing->toEachSide_deg, 30.0);
    EXPECT_EQ(place(flat, {0, 0}, windFrom(10, 1.5))->swing->toEachSide_deg, 180.0);
    EXPECT_EQ(place(flat, {0, 0}, windFrom(10, 1.9))->swing->toEachSide_deg, 30.0);
    Weather unknown = windFrom(10);
    unknown.isFromKnown = false;
    EXPECT_EQ(place(flat, {0, 0}, unknown)->swing->toEachSide_deg, 180.0);
}

TEST(OneAnchor, LiesToBeReckonedWithAreAllAsFarFromIt) {
    const auto flat = bottomOf([](geo::WaterPoint) { return 4.0; });
    const AnchorSet set = *place(flat, {20, 10}, windFrom(75));
    const auto lies = anchoring::liesOf(set);
    ASSERT_EQ(lies.size(), 5U);
    EXPECT_EQ(lies[0], set.lie);
    double widest_deg = 0.0;
    for (const anchoring::Lie& lie : lies) {
        EXPECT_NEAR(geo::distance_m(lie.centre, set.bow.place),
                    geo::distance_m(set.lie.centre, set.bow.place), 1e-9);
        EXPECT_LT(geo::bearing(lie.centre, set.bow.place).angleTo_deg(lie.heading), 1e-6);
        widest_deg = std::max(widest_deg, lie.heading.angleTo_deg(set.lie.heading));
    }
    EXPECT_NEAR(widest_deg, 30.0, 1e-9);
    AnchorSet anywhere = set;
    anywhere.swing->toEachSide_deg = 180.0;
    EXPECT_EQ(anchoring::liesOf(anywhere).size(), 24U) << "each once round the circle";
    anywhere.swing.reset();
    EXPECT_EQ(anchoring::liesOf(anywhere).size(), 1U);
}

TEST(OneAnchor, ShortensTheRopeForRoomToSwingAndRefusesWhereThereIsNone) {
    // A bank 40 m north of the mark; the anchor lies to the north.
    const auto banked = bottomOf([](geo::WaterPoint p) { return p.y_m < 40.0 ? 5.4 : -1.0; });
    const auto set = place(banked, {0, 0}, windFrom(0));
    ASSERT_TRUE(set) << set.error().sentence();
    EXPECT_LT(set->bow.scope, 3.0 - 0.1);
    EXPECT_LE(set->bow.place.y_m + set->swing->radius.inMetres(), 40.0);
    const auto nearer = place(banked, {0, 30}, windFrom(0));
    ASSERT_FALSE(nearer);
    EXPECT_EQ(nearer.error().what, "there is no room here to swing round one anchor");
    EXPECT_EQ(nearer.error().kind, base::ErrorKind::unusableInput);
}

/// Whatever the wind, the whole circle is water to float in, and open.
TEST(OneAnchor, NeverSwingsAshoreOrIntoClosedWater) {
    std::mt19937 random(20261127); // NOLINT(cert-msc51-cpp): a failing case must replay
    std::uniform_real_distribution<double> at(-120.0, 120.0);
    std::uniform_real_distribution<double> turn(0.0, 360.0);
    const auto pond = bottomOf(
        [](geo::WaterPoint p) { return 9.0 - 0.0007 * (p.x_m * p.x_m + 1.3 * p.y_m * p.y_m); });
    grid::Grid<std::uint8_t> closed(pond.frame(), 0);
    for (std::size_t i = 0; i < closed.size(); ++i) {
        closed[i] = pond.frame().centre(pond.frame().cellAt(i)).x_m > 70.0 ? 1 : 0;
    }
    int placed = 0;
    for (int k = 0; k < 300; ++k) {
        const auto set =
            place(pond, {at(random), at(random)}, windFrom(turn(random)), toOneAnchor(), &closed);
        if (!set) {
            continue;
        }
        ++placed;
        for (int side = 0; side < 72; ++side) {
            for (const double share : {0.25, 0.5, 0.75, 1.0}) {
                const auto p = geo::moved(set->bow.place, Bearing::degrees(5.0 * side),
                                          set->swing->radius * (0.999 * share));
                ASSERT_TRUE(pond.at(p)) << k;
                ASSERT_LT(p.x_m, 71.0) << k;
            }
        }
    }
    EXPECT_GT(placed, 60);
}

} // namespace
