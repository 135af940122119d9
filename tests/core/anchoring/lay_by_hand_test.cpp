// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/lay_by_hand.h"

#include "core/anchoring/cautions.h"

#include "tests/support/anchor_bottom.h"

#include <random>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using anchoring::AnchorsByHand;
using anchoring::AnchorSet;
using anchoring::BoatSettings;
using anchoring::LiePart;
using anchoring::Weather;
using geo::WaterPoint;
using support::bottomOf;
using testing::Contains;
using testing::Not;
using units::Bearing;
using units::Length;
using units::Speed;

const grid::DepthGrid& flat() {
    static const grid::DepthGrid bottom = bottomOf([](WaterPoint) { return 5.5; });
    return bottom;
}

Weather windFrom(double degrees) {
    return {Bearing::degrees(degrees), Speed::metresPerSecond(4.0), {}};
}

base::Result<AnchorSet> lay(const AnchorsByHand& hand, const Weather& weather,
                            const BoatSettings& boat = {}, const grid::DepthGrid& depth = flat(),
                            const grid::Grid<std::uint8_t>* closed = nullptr,
                            WaterPoint mark = {0, 0}) {
    base::Progress progress;
    return anchoring::layByHand(depth, closed, mark, hand, weather, boat, progress);
}

template <class C>
const C* find(const AnchorSet& set) {
    for (const anchoring::Caution& caution : set.cautions) {
        if (const auto* found = std::get_if<C>(&caution)) {
            return found;
        }
    }
    return nullptr;
}

TEST(LayByHand, KeepsTheBoatOnTheMarkInLineWithTheBowAnchorAndLandsTheOther) {
    const auto set = lay({WaterPoint{0, 24.5}, {}, {}}, windFrom(0));
    ASSERT_TRUE(set) << set.error().sentence();
    EXPECT_EQ(set->lie.centre, (WaterPoint{0, 0}));
    EXPECT_NEAR(set->lie.heading.inDegrees(), 0.0, 1e-9);
    EXPECT_TRUE(set->bow.isByHand);
    // 22 m from the cleat, 5.5 m deep and 0.6 m up.
    EXPECT_NEAR(set->bow.rope.inMetres(), std::hypot(22.0, 6.1), 1e-6);
    EXPECT_NEAR(set->bow.scope, std::hypot(22.0, 6.1) / 6.1, 1e-6);
    ASSERT_TRUE(set->stern);
    EXPECT_FALSE(set->stern->isByHand);
    EXPECT_NEAR(set->stern->scope, 1.5, 1e-6);
    EXPECT_NEAR(set->stern->place.x_m, 0.0, 1e-9);
    EXPECT_TRUE(set->cautions.empty());
    EXPECT_EQ(set->offTheWind_deg, 0.0);
}

TEST(LayByHand, LandsTheBowAnchorAheadOfASternAnchorThatIsLaid) {
    const auto set = lay({{}, WaterPoint{-12, 0}, {}}, windFrom(90));
    ASSERT_TRUE(set) << set.error().sentence();
    EXPECT_NEAR(set->lie.heading.inDegrees(), 90.0, 1e-9);
    EXPECT_NEAR(set->stern->rope.inMetres(), std::hypot(9.5, 6.0), 1e-6);
    EXPECT_TRUE(set->stern->isByHand);
    EXPECT_FALSE(set->bow.isByHand);
    EXPECT_NEAR(set->bow.scope, 3.0, 1e-6);
    EXPECT_GT(set->bow.place.x_m, 15.0);
}

TEST(LayByHand, LaysTheBoatOnTheLineBetweenBothWhereItPassesNearestToTheMark) {
    const auto set = lay({WaterPoint{10, 30}, WaterPoint{10, -14}, {}}, windFrom(0));
    ASSERT_TRUE(set) << set.error().sentence();
    EXPECT_NEAR(set->lie.centre.x_m, 10.0, 1e-9);
    EXPECT_NEAR(set->lie.centre.y_m, 0.0, 1e-9);
    EXPECT_NEAR(set->bow.rope.inMetres(), std::hypot(27.5, 6.1), 1e-6);
    EXPECT_NEAR(set->stern->rope.inMetres(), std::hypot(11.5, 6.0), 1e-6);
    EXPECT_NEAR(set->fallBackRope.inMetres(), std::hypot(39.0, 6.1), 1e-6);
    ASSERT_NE(find<anchoring::LiesOffTheMark>(*set), nullptr);
    EXPECT_NEAR(find<anchoring::LiesOffTheMark>(*set)->off.inMetres(), 10.0, 1e-9);
}

TEST(LayByHand, KeepsTheBoatBetweenAnchorsThatBothLieOnOneSide) {
    const auto set = lay({WaterPoint{0, 60}, WaterPoint{0, 20}, {}}, windFrom(0));
    ASSERT_TRUE(set) << set.error().sentence();
    EXPECT_NEAR(set->lie.centre.y_m, 22.5, 1e-9) << "her stern above the stern anchor";
    EXPECT_NE(find<anchoring::TooSteep>(*set), nullptr);
}

TEST(LayByHand, HangsABoatAtOneAnchorDownwindOfItAsFarAsTheMark) {
    BoatSettings boat;
    boat.toOneAnchor = true;
    const AnchorsByHand hand{WaterPoint{0, 20}, {}, Bearing::degrees(0)};
    const auto set = lay(hand, windFrom(0), boat);
    ASSERT_TRUE(set) << set.error().sentence();
    EXPECT_FALSE(set->stern);
    EXPECT_NEAR(geo::distance_m(set->lie.centre, {0, 0}), 0.0, 1e-9);
    EXPECT_NEAR(set->bow.rope.inMetres(), std::hypot(17.5, 6.1), 1e-6);
    EXPECT_NEAR(set->swing->radius.inMetres(), 22.5, 1e-9);
    EXPECT_TRUE(set->cautions.empty());
    const auto turned = lay(hand, windFrom(90), boat);
    ASSERT_TRUE(turned) << turned.error().sentence();
    EXPECT_NEAR(geo::distance_m(turned->lie.centre, {-20, 20}), 0.0, 1e-9);
    EXPECT_EQ(turned->bow.rope, set->bow.rope) << "the rope is as it was paid out";
    EXPECT_EQ(turned->offTheWind_deg, 0.0);
    EXPECT_NE(find<anchoring::LiesOffTheMark>(*turned), nullptr);
    ASSERT_NE(find<anchoring::WindChangedSince>(*turned), nullptr);
    EXPECT_NEAR(find<anchoring::WindChangedSince>(*turned)->change_deg, 90.0, 1e-9);
}

TEST(LayByHand, TellsRopesThatAreTooShortAndTooSteep) {
    BoatSettings boat;
    boat.bowRope = Length::metres(30.0);
    boat.sternRope = Length::metres(10.0);
    const auto far = lay({WaterPoint{0, 40}, WaterPoint{0, -14}, {}}, windFrom(0), boat);
    ASSERT_TRUE(far);
    EXPECT_THAT(far->cautions, Contains(anchoring::RopeTooShort{LiePart::bowAnchor,
                                                                far->fallBackRope, boat.bowRope}));
    EXPECT_THAT(far->cautions, Contains(anchoring::RopeTooShort{LiePart::sternAnchor,
                                                                far->stern->rope, boat.sternRope}));
    // Long enough as she lies, and too short to fall back as far as the stern anchor.
    boat.sternRope = Length::metres(20.0);
    boat.bowRope = Length::metres(33.0);
    const auto back = lay({WaterPoint{0, 30}, WaterPoint{0, -14}, {}}, windFrom(0), boat);
    ASSERT_TRUE(back);
    ASSERT_LT(back->bow.rope, boat.bowRope);
    ASSERT_GT(back->fallBackRope, boat.bowRope);
    EXPECT_EQ(back->cautions.front(), anchoring::Caution(anchoring::RopeTooShort{
                                          LiePart::bowAnchor, back->fallBackRope, boat.bowRope}));
    boat.bowRope = Length::metres(40.0);
    const auto fits = lay({WaterPoint{0, 30}, WaterPoint{0, -14}, {}}, windFrom(0), boat);
    ASSERT_TRUE(fits);
    EXPECT_EQ(find<anchoring::RopeTooShort>(*fits), nullptr);
    const auto near = lay({WaterPoint{0, 8}, {}, {}}, windFrom(0));
    ASSERT_TRUE(near);
    const auto* steep = find<anchoring::TooSteep>(*near);
    ASSERT_NE(steep, nullptr);
    EXPECT_EQ(steep->part, LiePart::bowAnchor);
    EXPECT_EQ(steep->least, 2.0);
    EXPECT_NEAR(steep->scope, near->bow.scope, 1e-9);
}

TEST(LayByHand, TellsWhatComesAshoreAndIntoClosedWater) {
    const auto banked = bottomOf([](WaterPoint p) { return p.x_m < 30.0 ? 5.5 : -1.0; });
    const auto ashore = lay({WaterPoint{40, 0}, {}, {}}, windFrom(90), {}, banked);
    ASSERT_TRUE(ashore) << ashore.error().sentence();
    EXPECT_THAT(ashore->cautions, Contains(anchoring::LiesAshore{LiePart::bowAnchor}));
    EXPECT_EQ(ashore->bow.depth, units::Depth());
    grid::Grid<std::uint8_t> closed(flat().frame(), 0);
    for (std::size_t i = 0; i < closed.size(); ++i) {
        const WaterPoint p = flat().frame().centre(flat().frame().cellAt(i));
        closed[i] = p.y_m > 10.0 && p.y_m < 14.0 ? 1 : 0; // a strip that only the rope crosses
    }
    const auto crossed = lay({WaterPoint{0, 22}, {}, {}}, windFrom(0), {}, flat(), &closed);
    ASSERT_TRUE(crossed);
    ASSERT_FALSE(crossed->cautions.empty());
    EXPECT_EQ(crossed->cautions.front(),
              anchoring::Caution(anchoring::LiesInClosedWater{LiePart::bowAnchor}))
        << "the gravest first";
    BoatSettings swinging;
    swinging.toOneAnchor = true;
    const auto round =
        lay({WaterPoint{0, -20}, {}, {}}, windFrom(180), swinging, flat(), &closed, {0, -2});
    ASSERT_TRUE(round);
    EXPECT_THAT(round->cautions, Not(Contains(anchoring::LiesInClosedWater{LiePart::swing})));
    const auto wide =
        lay({WaterPoint{0, -20}, {}, {}}, windFrom(90), swinging, flat(), &closed, {-29, -20});
    ASSERT_TRUE(wide);
    EXPECT_THAT(wide->cautions, Contains(anchoring::LiesInClosedWater{LiePart::swing}));
}

TEST(LayByHand, TellsHowFarOffTheWindItIsAndWhetherTheWindHasChanged) {
    const AnchorsByHand hand{WaterPoint{0, 24}, {}, Bearing::degrees(0)};
    const auto fits = lay(hand, windFrom(2));
    EXPECT_EQ(find<anchoring::LaidOffTheWind>(*fits), nullptr);
    const auto some = lay(hand, windFrom(340));
    ASSERT_NE(find<anchoring::LaidOffTheWind>(*some), nullptr);
    EXPECT_NEAR(find<anchoring::LaidOffTheWind>(*some)->turn_deg, 20.0, 1e-9);
    EXPECT_FALSE(find<anchoring::LaidOffTheWind>(*some)->isTooFar);
    EXPECT_NEAR(some->offTheWind_deg, 20.0, 1e-9);
    EXPECT_THAT(some->cautions, Contains(anchoring::WindChangedSince{20.0}));
    const auto beam = lay(hand, windFrom(90));
    EXPECT_TRUE(find<anchoring::LaidOffTheWind>(*beam)->isTooFar);
    EXPECT_NEAR(beam->offTheWind_deg, -90.0, 1e-9);
    const auto small = lay(hand, windFrom(8));
    EXPECT_EQ(find<anchoring::WindChangedSince>(*small), nullptr);
    // It was laid off the wind, and now it fits.
    const auto better = lay({WaterPoint{0, 24}, {}, Bearing::degrees(60)}, windFrom(0));
    EXPECT_EQ(find<anchoring::WindChangedSince>(*better), nullptr);
    Weather unknown = windFrom(90);
    unknown.isFromKnown = false;
    const auto nobody = lay(hand, unknown);
    EXPECT_EQ(find<anchoring::LaidOffTheWind>(*nobody), nullptr);
    EXPECT_NE(find<anchoring::BowToOpenWater>(*nobody), nullptr);
}

TEST(LayByHand, RefusesWhatHoldsNoBoat) {
    const auto refused = [](const base::Result<AnchorSet>& set, base::ErrorKind kind) {
        return !set && set.error().kind == kind;
    };
    using base::ErrorKind;
    EXPECT_TRUE(refused(lay({}, windFrom(0)), ErrorKind::wrongUse));
    EXPECT_TRUE(refused(lay({WaterPoint{0, 1}, {}, {}}, windFrom(0)), ErrorKind::unusableInput));
    EXPECT_TRUE(refused(lay({WaterPoint{0, 2}, WaterPoint{0, -2}, {}}, windFrom(0)),
                        ErrorKind::unusableInput));
    const auto banked = bottomOf([](WaterPoint p) { return p.y_m > -5.0 ? 5.5 : -1.0; });
    EXPECT_TRUE(refused(lay({WaterPoint{0, 24}, {}, {}}, windFrom(0), {}, banked),
                        ErrorKind::unusableInput))
        << "no water for the stern anchor";
    BoatSettings boat;
    boat.toOneAnchor = true;
    EXPECT_TRUE(refused(lay({{}, WaterPoint{0, -12}, {}}, windFrom(0), boat), ErrorKind::wrongUse));
    EXPECT_TRUE(
        refused(lay({WaterPoint{0, 10}, {}, {}}, windFrom(0), boat, banked, nullptr, {0, 30}),
                ErrorKind::unusableInput))
        << "the boat would lie ashore";
    boat = {};
    boat.scope = 50.0;
    EXPECT_TRUE(refused(lay({WaterPoint{0, 24}, {}, {}}, windFrom(0), boat), ErrorKind::wrongUse));
}

/// Whatever is laid: ropes are as long as straight ones, and scope is rope over rise.
TEST(LayByHand, RopesAreStraightWhereverAnchorsLie) {
    std::mt19937 random(3); // NOLINT(cert-msc51-cpp): a failing case must replay
    std::uniform_real_distribution<double> at(-60.0, 60.0);
    std::uniform_real_distribution<double> turn(0.0, 360.0);
    const auto sloping = bottomOf([](WaterPoint p) { return 7.0 + 0.05 * p.x_m + 0.02 * p.y_m; });
    const BoatSettings boat;
    int laid = 0;
    for (int k = 0; k < 400; ++k) {
        AnchorsByHand hand;
        hand.bow = WaterPoint{at(random), at(random)};
        if (k % 2 == 0) {
            hand.stern = WaterPoint{at(random), at(random)};
        }
        const auto set = lay(hand, windFrom(turn(random)), boat, sloping);
        if (!set) {
            continue;
        }
        ++laid;
        const auto straight = [&](const anchoring::Anchor& anchor, WaterPoint cleat,
                                  Length height) {
            const double rise_m = sloping.at(anchor.place)->inMetres() + height.inMetres();
            EXPECT_NEAR(anchor.rope.inMetres(),
                        std::hypot(geo::distance_m(cleat, anchor.place), rise_m), 0.02)
                << k;
            EXPECT_NEAR(anchor.scope, anchor.rope.inMetres() / rise_m, 1e-3) << k;
        };
        straight(set->bow, anchoring::bowOf(set->lie, boat.length), boat.bowHeight);
        straight(*set->stern, anchoring::sternOf(set->lie, boat.length), boat.sternHeight);
    }
    EXPECT_GT(laid, 300);
}

} // namespace
