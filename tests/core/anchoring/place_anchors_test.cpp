// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/place_anchors.h"

#include "tests/support/holding.h"

#include "core/anchoring/rope.h"

#include "tests/support/anchor_bottom.h"
#include "tests/support/given.h"

#include <random>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using anchoring::AnchorSet;
using anchoring::BoatSettings;
using anchoring::Weather;
using support::bottomOf;
using support::given;
using testing::Contains;
using testing::HasSubstr;
using units::Bearing;
using units::Depth;
using units::Length;
using units::Speed;

Weather windFrom(double degrees, double speed_m_s = 5.0) {
    return {Bearing::degrees(degrees), Speed::metresPerSecond(speed_m_s), {}};
}

base::Result<AnchorSet> place(const grid::DepthGrid& depth, geo::WaterPoint mark,
                              const Weather& weather, const BoatSettings& boat = {}) {
    base::Progress progress;
    return anchoring::placeAnchors(depth, nullptr, mark, weather, boat, progress);
}

void expectRopesTight(const AnchorSet& set, const BoatSettings& boat) {
    const auto bowRun = anchoring::runOf(set.bow.rope, set.bow.depth, boat.bowHeight);
    const auto sternRun = anchoring::runOf(set.stern->rope, set.stern->depth, boat.sternHeight);
    ASSERT_TRUE(bowRun && sternRun);
    const auto bow = anchoring::bowOf(set.lie, boat.length);
    const auto stern = anchoring::sternOf(set.lie, boat.length);
    EXPECT_NEAR(geo::distance_m(bow, set.bow.place), given(bowRun).inMetres(), 0.02);
    EXPECT_NEAR(geo::distance_m(stern, set.stern->place), given(sternRun).inMetres(), 0.02);
}

TEST(PlaceAnchors, LaysTheBowAnchorUpwindAtItsScopeOnAFlatBottom) {
    const auto flat = bottomOf([](geo::WaterPoint) { return 5.9; });
    BoatSettings boat;
    boat.bowHeight = Length::metres(0.6);
    const auto set = place(flat, {0, 0}, windFrom(90));
    ASSERT_TRUE(set);
    EXPECT_NEAR(set->bow.rope.inMetres(), 19.5, 1e-4);
    EXPECT_NEAR(set->bow.place.x_m, 2.5 + 18.3848, 0.01);
    EXPECT_NEAR(set->bow.place.y_m, 0.0, 1e-6);
    EXPECT_NEAR(set->stern->rope.inMetres(), 1.5 * 6.4, 1e-4);
    EXPECT_LT(set->stern->place.x_m, -2.5);
    EXPECT_EQ(set->lie.heading, Bearing::degrees(90));
    EXPECT_EQ(set->offTheWind_deg, 0.0);
    expectRopesTight(*set, boat);
}

TEST(PlaceAnchors, ReadsTheDepthWhereTheAnchorLandsOnASlope) {
    // Deeper by one in ten towards the north.
    const auto slope = bottomOf([](geo::WaterPoint p) { return 4.0 + 0.1 * p.y_m; });
    const auto set = place(slope, {0, 0}, windFrom(0));
    ASSERT_TRUE(set);
    EXPECT_NEAR(set->bow.depth.inMetres(), 4.0 + 0.1 * set->bow.place.y_m, 1e-3);
    EXPECT_NEAR(set->bow.scope, 3.0, 1e-3);
    EXPECT_GT(set->bow.depth, set->stern->depth);
    expectRopesTight(*set, BoatSettings());
}

TEST(PlaceAnchors, FallsBackOnMoreRopeThanSheLiesTo) {
    const auto flat = bottomOf([](geo::WaterPoint) { return 6.0; });
    const auto set = place(flat, {0, 0}, windFrom(200));
    ASSERT_TRUE(set);
    EXPECT_GT(set->fallBackRope, set->bow.rope);
    EXPECT_LE(set->fallBackRope, BoatSettings().bowRope);
}

TEST(PlaceAnchors, TurnsTheBowWhereTheAnchorWouldComeAshore) {
    // Shore 12 m north of the mark; open to the west.
    const auto nearShore = bottomOf([](geo::WaterPoint p) { return p.y_m < 12.0 ? 4.0 : -1.0; });
    const auto set = place(nearShore, {0, 0}, windFrom(0));
    ASSERT_TRUE(set);
    EXPECT_LT(set->bow.place.y_m, 12.0);
    EXPECT_TRUE(nearShore.at(set->bow.place));
    EXPECT_TRUE(set->offTheWind_deg != 0.0 || set->bow.scope < 2.99);
    EXPECT_TRUE(support::holds<anchoring::TurnedOffTheWind>(set->cautions) ||
                support::holds<anchoring::ShortOfRoom>(set->cautions));
    expectRopesTight(*set, BoatSettings());
}

TEST(PlaceAnchors, RefusesAHoleTooSmallForTwoAnchors) {
    const auto pond =
        bottomOf([](geo::WaterPoint p) { return std::hypot(p.x_m, p.y_m) < 12.0 ? 6.0 : -1.0; });
    const auto set = place(pond, {0, 0}, windFrom(45));
    ASSERT_FALSE(set);
    EXPECT_EQ(set.error().kind, base::ErrorKind::unusableInput);
    EXPECT_THAT(set.error().what, HasSubstr("no room"));
    EXPECT_FALSE(set.error().whatToDo.empty());
}

TEST(PlaceAnchors, RefusesAMarkOnLandAndRopesThatDoNotReach) {
    const auto half = bottomOf([](geo::WaterPoint p) { return p.x_m > 0.0 ? 30.0 : -1.0; });
    EXPECT_THAT(place(half, {-50, 0}, windFrom(0)).error().what, HasSubstr("no water"));
    EXPECT_THAT(place(half, {100, 0}, windFrom(0)).error().what, HasSubstr("ropes are too short"));
}

TEST(PlaceAnchors, RefusesSettingsOutOfTheirRange) {
    const auto flat = bottomOf([](geo::WaterPoint) { return 5.0; });
    BoatSettings boat;
    boat.scope = 0.9;
    EXPECT_EQ(place(flat, {0, 0}, windFrom(0), boat).error().kind, base::ErrorKind::wrongUse);
    boat = {};
    boat.bowRope = Length::metres(std::nan(""));
    EXPECT_EQ(place(flat, {0, 0}, windFrom(0), boat).error().kind, base::ErrorKind::wrongUse);
}

TEST(PlaceAnchors, WarnsOfScopeAndWaves) {
    const auto flat = bottomOf([](geo::WaterPoint) { return 5.0; });
    const auto calm = place(flat, {0, 0}, windFrom(0, 3.0)).value();
    EXPECT_TRUE(calm.cautions.empty());
    Weather rough = windFrom(0, 12.0);
    rough.waveHeight = Length::metres(0.45);
    const auto set = place(flat, {0, 0}, rough).value();
    EXPECT_EQ(set.cautions.front(), anchoring::Caution(anchoring::HighWaves{}));
    EXPECT_TRUE(support::holds<anchoring::ShortForTheWind>(set.cautions));
    EXPECT_GT(set.beamPull_N, calm.beamPull_N);
}

TEST(PlaceAnchors, KeepsEverythingAfloatAndTightOnAnyBottom) {
    constexpr unsigned seed = 11;
    SCOPED_TRACE(seed);
    std::mt19937 chance(seed);
    const auto within = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(chance() % 10000) / 10000.0;
    };
    int placed = 0;
    for (int trial = 0; trial < 200; ++trial) {
        const double wave = within(15, 60);
        const double lean = within(-0.05, 0.05);
        const auto bottom = bottomOf([&](geo::WaterPoint p) {
            return 4.0 + lean * p.x_m + 3.0 * std::sin(p.x_m / wave) * std::cos(p.y_m / wave);
        });
        const auto set = place(bottom, {within(-120, 120), within(-120, 120)},
                               windFrom(within(0, 360), within(0, 9)));
        if (!set) {
            continue;
        }
        ++placed;
        EXPECT_TRUE(bottom.at(set->bow.place) && bottom.at(set->stern->place));
        EXPECT_LE(set->bow.rope, BoatSettings().bowRope);
        EXPECT_LE(set->stern->rope, BoatSettings().sternRope);
        EXPECT_GE(set->bow.scope, BoatSettings().leastScope - 1e-6);
        EXPECT_LE(std::fabs(set->offTheWind_deg), BoatSettings().mostTurn_deg);
        expectRopesTight(*set, BoatSettings());
    }
    EXPECT_GT(placed, 100);
}

} // namespace
