// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/anchor_ground.h"

#include "core/structure/slope_grid.h"
#include "core/water/steps/plan_day.h"
#include "tests/support/given.h"
#include "tests/support/holding.h"
#include "tests/support/planned_water.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using support::PlannedWater;
using units::Depth;

using Bottom = std::function<double(WaterPoint)>;

/// The plane with another bottom today.
void lay(PlannedWater& made, const Bottom& today_m) {
    auto drawn = std::make_shared<surface::DrawnWater>(*made.derived.drawn);
    const grid::GridFrame& frame = drawn->depth.frame();
    for (std::size_t i = 0; i < frame.size(); ++i) {
        if (drawn->depth.has(i)) {
            const double m = today_m(frame.centre(frame.cellAt(i))) - PlannedWater::level_m;
            drawn->depth.set(i, Depth::metres(m));
        }
    }
    made.derived.drawn = std::move(drawn);
    made.water.houseRules.closed.clear();
    made.water.pinnedMarks.clear();
    made.water.plan.tackle.bowRope = units::Length::metres(50.0);
    made.water.plan.tackle.sternRope = units::Length::metres(30.0);
}

water::PlannedDay planOf(const PlannedWater& made) {
    base::Progress quiet;
    return water::planDay(made.water, made.derived, made.water.plan, quiet).value();
}

double hectares(const water::PlannedDay& day, marks::Exclusion why) {
    return day.excluded[static_cast<std::size_t>(why)].inHectares();
}

/// Ridges from north to south, 30 m from crest to crest, 2 to 5 m deep, with flanks of 20 %.
double ridges_m(WaterPoint p) {
    return 2.0 + 0.2 * std::fabs(30.0 * (p.x_m / 30.0 - std::round(p.x_m / 30.0)));
}

TEST(AnchorGround, IsAsSteepAsTheBottomIsDrawnThere) {
    PlannedWater made;
    lay(made, [](WaterPoint p) { return 3.0 + 0.003 * p.x_m + 0.004 * p.y_m; });
    const auto day =
        water::DayGround::make(made.water, made.derived, made.water.plan.day.levelChange).value();
    EXPECT_NEAR(support::given(water::slopeAt(*day, {20.0, 30.0})), 0.005, 1e-6);
    EXPECT_FALSE(water::slopeAt(*day, {20.0, -150.0})) << "a guess says nothing";
    EXPECT_FALSE(water::slopeAt(*day, {20.0, 500.0}));
}

TEST(AnchorGround, SteeperThanAnyAnchorHoldsIsLeftOutAndMeasured) {
    PlannedWater made;
    // North of the middle steps of 5 m across one cell, every 28 m: 5 m over 8 m by Horn.
    const auto steps_m = [](WaterPoint p) {
        return p.y_m > 0.0 && std::fmod(p.x_m + 560.0, 28.0) < 14.0 ? 5.5 : p.y_m > 0.0 ? 1.2 : 3.0;
    };
    lay(made, steps_m);
    made.water.plan.count = 12;
    const water::PlannedDay day = planOf(made);
    EXPECT_GT(hectares(day, marks::Exclusion::tooSteep), 0.1);
    EXPECT_GT(day.unanchorable, 0U);
    const auto ground =
        water::DayGround::make(made.water, made.derived, made.water.plan.day.levelChange).value();
    for (const marks::Mark& mark : day.marks) {
        EXPECT_FALSE(water::isTooSteep(mark.anchors, *ground)) << mark.rank;
    }
    lay(made, [](WaterPoint) { return 3.0; });
    EXPECT_EQ(hectares(planOf(made), marks::Exclusion::tooSteep), 0.0);
}

TEST(AnchorGround, OnASlopeIsACautionAndWhetherItFallsToTheBoatIsTold) {
    PlannedWater made;
    lay(made, ridges_m);
    const water::PlannedDay day = planOf(made);
    std::size_t told = 0;
    for (const marks::Mark& mark : day.marks) {
        const std::array ends{
            std::tuple{marks::AnchorEnd::bow, mark.anchors.bow, mark.bowGround},
            std::tuple{marks::AnchorEnd::stern, mark.anchors.stern.value(), mark.sternGround}};
        for (const auto& [end, anchor, ground] : ends) {
            const bool isGuess = PlannedWater::isGuess(anchor.place);
            ASSERT_EQ(ground.slope.has_value(), !isGuess);
            const marks::SteepAtAnchor* caution = nullptr;
            for (const marks::Caution& one : mark.cautions) {
                const auto* steep = std::get_if<marks::SteepAtAnchor>(&one);
                caution = steep != nullptr && steep->end == end ? steep : caution;
            }
            EXPECT_EQ(caution != nullptr, !isGuess && *ground.slope >= 0.18);
            if (caution == nullptr || *ground.slope < 0.195) {
                continue; // near a crest
            }
            ++told;
            EXPECT_EQ(caution->slope, *ground.slope);
            // The flanks fall to the east or to the west alone.
            const double fall =
                ridges_m({anchor.place.x_m + 1.0, 0.0}) - ridges_m({anchor.place.x_m - 1.0, 0.0});
            const double east = geo::bearing(anchor.place, mark.place).east();
            const double along = east * (fall > 0.0 ? 1.0 : -1.0);
            EXPECT_EQ(caution->isToBoat, along > std::sqrt(0.5)) << mark.rank << ' ' << along;
        }
    }
    EXPECT_GT(told, 3U);
}

/// Cautions of foul ground on a mark.
std::vector<marks::FoulAtAnchor> foulOf(const marks::Mark& mark) {
    std::vector<marks::FoulAtAnchor> out;
    for (const marks::Caution& one : mark.cautions) {
        if (const auto* foul = std::get_if<marks::FoulAtAnchor>(&one)) {
            out.push_back(*foul);
        }
    }
    return out;
}

TEST(AnchorGround, IsWhatTheLeadBroughtUpNearest) {
    PlannedWater made;
    const auto note = [&made](WaterPoint p, std::optional<soundings::Bottom> bottom) {
        const auto id = static_cast<std::int64_t>(made.water.leadLine.size()) + 1;
        made.water.leadLine.edit().push_back(
            {soundings::LeadLineId(id), made.onEarth(p), Depth::metres(3.0), bottom});
    };
    const marks::Mark before = planOf(made).marks[0];
    EXPECT_FALSE(before.bowGround.bottom);
    EXPECT_TRUE(foulOf(before).empty());
    const WaterPoint bow = before.anchors.bow.place;
    const WaterPoint stern = before.anchors.stern.value().place;
    const units::Bearing off = geo::bearing(stern, bow);
    note(geo::moved(bow, off, units::Length::metres(14.8)), soundings::Bottom::rock);
    note(geo::moved(stern, off.opposite(), units::Length::metres(15.2)), soundings::Bottom::weed);
    note(geo::moved(bow, off, units::Length::metres(2.0)), std::nullopt);
    const marks::Mark rock = planOf(made).marks[0];
    ASSERT_EQ(rock.place, before.place);
    EXPECT_EQ(rock.bowGround.bottom, soundings::Bottom::rock);
    EXPECT_FALSE(rock.sternGround.bottom) << "a step too far";
    EXPECT_THAT(foulOf(rock), testing::ElementsAre(marks::FoulAtAnchor{marks::AnchorEnd::bow,
                                                                       soundings::Bottom::rock}));
    note(geo::moved(bow, off, units::Length::metres(9.0)), soundings::Bottom::soft);
    note(geo::moved(stern, off.opposite(), units::Length::metres(9.0)), soundings::Bottom::weed);
    const marks::Mark soft = planOf(made).marks[0];
    EXPECT_EQ(soft.bowGround.bottom, soundings::Bottom::soft) << "nearer than the rock";
    EXPECT_THAT(foulOf(soft), testing::ElementsAre(marks::FoulAtAnchor{marks::AnchorEnd::stern,
                                                                       soundings::Bottom::weed}));
}

} // namespace
