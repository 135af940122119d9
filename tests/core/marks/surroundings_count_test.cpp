// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/propose_marks.h"
#include "core/marks/surroundings.h"

#include "tests/support/made_up_day.h"

#include <algorithm>
#include <random>
#include <set>

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using marks::Surroundings;
using structure::ZoneKind;
using units::Depth;
using units::Length;

/// The same as surroundingsOf() by looking at every cell of the whole water.
Surroundings byLookingAtAll(const support::MadeUpDay& day, WaterPoint place, double cast_m) {
    Surroundings out;
    const grid::GridFrame& frame = day.water.depth.frame();
    // Land beyond the frame is a part of the circle, too.
    double cells = 0.0;
    const grid::Cell middle = frame.cellOf(place);
    for (int row = -12; row <= 12; ++row) {
        for (int col = -12; col <= 12; ++col) {
            const WaterPoint p = frame.centre({middle.col + col, middle.row + row});
            cells += geo::distance_m(p, place) <= cast_m ? 1.0 : 0.0;
        }
    }
    double fishable = 0.0;
    double guesses = 0.0;
    double trust_m = 0.0;
    double shallowest_m = 1e9;
    double top_m = 1e9;
    std::set<ZoneKind> kinds;
    for (std::size_t i = 0; i < frame.size(); ++i) {
        const grid::Cell c = frame.cellAt(i);
        if (geo::distance_m(frame.centre(c), place) > cast_m) {
            continue;
        }
        out.isClosedNear = out.isClosedNear || day.closed[i] != 0;
        if (!day.water.depth.has(i)) {
            continue;
        }
        const double depth_m = day.water.depth.at(c)->inMetres();
        if (depth_m < 0.5 || depth_m > 9.144 || day.closed[i] != 0) {
            continue;
        }
        fishable += 1.0;
        guesses += day.isGuess[i];
        trust_m += static_cast<double>(day.trust_m[i]);
        shallowest_m = std::min(shallowest_m, depth_m);
        out.deepest = std::max(out.deepest, Depth::metres(depth_m));
        for (const structure::ZoneMap* map : {&day.zones, &day.weed}) {
            if (map->zoneOfCell[i] == structure::noZone) {
                continue;
            }
            const ZoneKind kind = map->zones[static_cast<std::size_t>(map->zoneOfCell[i])].kind;
            kinds.insert(kind);
            out.featureArea_m2 += kind == ZoneKind::hump ? frame.cellArea_m2() : 0.0;
            if (kind == ZoneKind::dropOff) {
                top_m = std::min(top_m, depth_m);
                out.dropOffFoot = std::max(out.dropOffFoot, Depth::metres(depth_m));
            }
        }
    }
    out.fishableShare = fishable / cells;
    out.guessShare = fishable > 0.0 ? guesses / fishable : 0.0;
    out.trust = Length::metres(trust_m / fishable);
    out.shallowest = Depth::metres(fishable > 0.0 ? shallowest_m : 0.0);
    out.dropOffTop = kinds.contains(ZoneKind::dropOff) ? Depth::metres(top_m) : out.shallowest;
    out.dropOffFoot = kinds.contains(ZoneKind::dropOff) ? out.dropOffFoot : out.deepest;
    out.kinds.assign(kinds.begin(), kinds.end());
    return out;
}

TEST(Surroundings, AreThoseThatLookingAtEveryCellOfTheWaterFinds) {
    const support::MadeUpDay day;
    constexpr unsigned seed = 29;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> east(-340.0, 340.0);
    std::uniform_real_distribution<double> north(-250.0, 240.0);
    int looked = 0;
    for (int round = 0; round < 150; ++round) {
        const WaterPoint place{east(random), north(random)};
        const double cast_m = round % 2 == 0 ? 30.0 : 17.0;
        if (!day.ground.depthAt(place)) {
            continue;
        }
        const auto found = marks::surroundingsOf(day.input(), place, Length::metres(cast_m));
        const auto expected = byLookingAtAll(day, place, cast_m);
        SCOPED_TRACE(std::to_string(place.x_m) + " " + std::to_string(place.y_m));
        ++looked;
        EXPECT_EQ(found.depth, *day.ground.depthAt(place));
        EXPECT_NEAR(found.fishableShare, expected.fishableShare, 1e-12);
        EXPECT_EQ(found.isClosedNear, expected.isClosedNear);
        EXPECT_NEAR(found.guessShare, expected.guessShare, 1e-12);
        EXPECT_EQ(found.shallowest, expected.shallowest);
        EXPECT_EQ(found.deepest, expected.deepest);
        EXPECT_EQ(found.dropOffTop, expected.dropOffTop);
        EXPECT_EQ(found.dropOffFoot, expected.dropOffFoot);
        EXPECT_EQ(found.kinds, expected.kinds);
        EXPECT_NEAR(found.featureArea_m2, expected.featureArea_m2, 1e-9);
        if (expected.fishableShare > 0.0) {
            EXPECT_NEAR(found.trust.inMetres(), expected.trust.inMetres(), 1e-9);
        }
    }
    EXPECT_GT(looked, 80) << "seed " << seed;
}

/// A bottom that falls by 4 % to the east and 3 % to the south, with zones where a test puts them.
class OnAPlane : public testing::Test {
protected:
    OnAPlane()
        : water_(support::madeUpWater(
              {{support::rectangle(-100, -100, 100, 100), {}}},
              [](WaterPoint p) { return 8.0 + 0.04 * p.x_m - 0.03 * p.y_m; }, 2.0)),
          zones_(support::noZones(water_)), weed_(support::noZones(water_)),
          closed_(water_.depth.frame(), 0), trust_m_(water_.depth.frame(), 0.2F) {}

    template <class Ask>
    auto with(const Ask& ask, double limit_m = 30.0) const {
        const rods::Ground ground(water_.depth, Depth::metres(limit_m), &closed_, zones_, weed_);
        const marks::MarkInput input{.frame = water_.frame,
                                     .outline = water_.outline,
                                     .ground = ground,
                                     .bands = bands_,
                                     .sections = sections_,
                                     .trust_m = trust_m_,
                                     .isGuess = nullptr,
                                     .learned = nullptr,
                                     .waveHeightAt = {}};
        return ask(input);
    }
    [[nodiscard]] Surroundings at(WaterPoint p, double limit_m = 30.0) const {
        return with(
            [p](const marks::MarkInput& input) {
                return marks::surroundingsOf(input, p, Length::metres(20.0));
            },
            limit_m);
    }
    void closeCell(WaterPoint p) { closed_[closed_.frame().cellOf(p)] = 1; }

    support::MadeUpWater water_;
    structure::ZoneMap zones_;
    structure::ZoneMap weed_;
    grid::Grid<std::uint8_t> closed_;
    grid::Grid<float> trust_m_;
    contours::Bands bands_;
    sections::SectionMap sections_;
};

TEST_F(OnAPlane, UphillIsTheWayItGetsShallowerByAsMuchAsItDoes) {
    const Surroundings around = at({10, -20});
    EXPECT_NEAR(around.riseEast, -0.04, 1e-5);
    EXPECT_NEAR(around.riseNorth, 0.03, 1e-5);
}

TEST_F(OnAPlane, EveryKindOfFeatureCountsAndTheLargestIsNamed) {
    for (const ZoneKind kind : structure::allZoneKinds) {
        zones_ = support::noZones(water_);
        support::addZone(zones_, water_, kind, [](WaterPoint p) { return p.x_m > 4.0; });
        const bool isFeature = kind == ZoneKind::hump || kind == ZoneKind::hole ||
                               kind == ZoneKind::spur || kind == ZoneKind::saddle;
        EXPECT_EQ(at({0, 0}).featureArea_m2 > 0.0, isFeature) << structure::nameOf(kind);
        EXPECT_EQ(at({0, 0}).feature, isFeature ? std::optional(kind) : std::nullopt);
    }
    support::addZone(zones_, water_, ZoneKind::saddle, [](WaterPoint p) { return p.x_m < 8.0; });
    support::addZone(zones_, water_, ZoneKind::hole, [](WaterPoint p) { return p.x_m < -8.0; });
    EXPECT_EQ(at({0, 0}).feature, ZoneKind::saddle);
}

TEST_F(OnAPlane, TrustIsThatOfThePlaceWhereNothingCanBeFished) {
    trust_m_ = grid::Grid<float>(water_.depth.frame(), 0.7F);
    EXPECT_NEAR(at({0, 0}, 1.0).trust.inMetres(), 0.7, 1e-6);
    EXPECT_EQ(at({0, 0}, 1.0).guessShare, 0.0);
}

TEST_F(OnAPlane, EdgesCountOnlyWhereABaitMayLieOnThem) {
    support::addZone(zones_, water_, ZoneKind::dropOff, [](WaterPoint) { return true; },
                     {{{0, -90}, {0, 90}}});
    support::addZone(weed_, water_, ZoneKind::weedEdge, [](WaterPoint) { return true; },
                     {{{-90, 10}, {90, 10}}});
    EXPECT_NEAR(at({0, 0}).dropOff_m, 40.0, 0.1);
    EXPECT_NEAR(at({0, 0}).weedEdge_m, 2.0 * std::sqrt(300.0), 0.1);
    // Deeper than 8.15 m: all of the drop-off edge that lies south of y = -5.
    EXPECT_NEAR(at({0, 0}, 8.15).dropOff_m, 25.0, 2.1);
    for (std::size_t i = 0; i < closed_.size(); ++i) {
        closed_[i] = closed_.frame().centre(closed_.frame().cellAt(i)).x_m > 0.0 ? 1 : 0;
    }
    EXPECT_NEAR(at({0, 0}).weedEdge_m, std::sqrt(300.0), 2.1);
}

TEST_F(OnAPlane, ABoatMayLieOnlyWhereItFloatsSwingsAndIsAllowed) {
    marks::Plan plan;
    plan.tackle.boatLength = Length::metres(6.0);
    marks::ProposeSettings settings;
    const auto mayLie = [&](WaterPoint p, double limit_m = 30.0) {
        return with(
            [&](const marks::MarkInput& input) {
                return marks::mayLieAt(input, p, plan, settings);
            },
            limit_m);
    };
    EXPECT_TRUE(mayLie({0, 0}));
    EXPECT_FALSE(mayLie({0, 150})) << "land";
    EXPECT_TRUE(mayLie({93.9, 0}));
    EXPECT_FALSE(mayLie({94.1, 0})) << "no room to the bank";
    settings.swingRoom = 2.0;
    EXPECT_FALSE(mayLie({93.9, 0})) << "two boat lengths of it";
    settings.swingRoom = 1.0;
    EXPECT_TRUE(mayLie({0, 0}, 8.001));
    EXPECT_FALSE(mayLie({0, 0}, 7.999)) << "deeper than the limit";
    settings.shallowest = Depth::metres(7.999);
    EXPECT_TRUE(mayLie({0, 0}));
    settings.shallowest = Depth::metres(8.001);
    EXPECT_FALSE(mayLie({0, 0})) << "too shallow to lie in";
}

TEST_F(OnAPlane, ASwingTouchesNoClosedCell) {
    marks::Plan plan;
    plan.tackle.boatLength = Length::metres(6.0);
    const auto mayLie = [&](WaterPoint p) {
        return with(
            [&](const marks::MarkInput& input) { return marks::mayLieAt(input, p, plan, {}); });
    };
    closeCell({11.0, 3.0}); // reaches from 10 to 12 east and 2 to 4 north
    EXPECT_FALSE(mayLie({11.0, 3.0}));
    EXPECT_FALSE(mayLie({4.1, 3.0}));
    EXPECT_TRUE(mayLie({3.9, 3.0}));
    EXPECT_FALSE(mayLie({17.9, 3.0}));
    EXPECT_TRUE(mayLie({18.1, 3.0}));
    EXPECT_FALSE(mayLie({11.0, -3.9}));
    EXPECT_TRUE(mayLie({11.0, -4.1}));
    EXPECT_FALSE(mayLie({11.0, 9.9}));
    EXPECT_TRUE(mayLie({11.0, 10.1}));
    EXPECT_FALSE(mayLie({5.9, -2.2})) << "near its corner";
    EXPECT_TRUE(mayLie({5.7, -2.3})) << "past its corner";
    EXPECT_FALSE(mayLie({8.0, 1.0})) << "inside the swing, not on its rim";
}

} // namespace
