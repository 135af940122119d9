// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/document/banned_water.h"
#include "core/water/questions/banned_extent.h"
#include "core/water/steps/banned_places.h"
#include "core/water/steps/plan_day.h"

#include "tests/support/holding.h"
#include "tests/support/planned_water.h"

#include <algorithm>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using support::PlannedWater;
using units::Length;

water::PlannedDay planOf(const PlannedWater& made) {
    base::Progress quiet;
    return water::planDay(made.water, made.derived, made.water.plan, quiet).value();
}

water::BannedWater round(const PlannedWater& made, WaterPoint middle, double radius_m,
                         const std::string& name = {}) {
    return water::bannedRound(made.onEarth(middle), Length::metres(radius_m), name);
}

TEST(BannedWater, RoundAPlaceHoldsAllOfTheCircleAndLittleMore) {
    PlannedWater made;
    made.water.banned = {round(made, {40, -25}, 60.0, "Snags")};
    const auto banned = water::BannedPlaces::of(made.water).value();
    for (int degree = 0; degree < 360; ++degree) {
        const auto towards = units::Bearing::degrees(degree);
        const WaterPoint in = geo::moved({40, -25}, towards, Length::metres(59.99));
        ASSERT_NE(banned.at(in), nullptr) << degree;
        EXPECT_EQ(*banned.at(in), "Snags");
        EXPECT_EQ(banned.at(geo::moved({40, -25}, towards, Length::metres(60.31))), nullptr);
    }
}

TEST(BannedWater, ExtendsOverTheAreaOfItsLineWhicheverWayThatRuns) {
    const PlannedWater made;
    const std::vector<WaterPoint> box{{10, -40}, {110, -40}, {110, 10}, {10, 10}};
    water::BannedWater banned{"Box", made.water.frame->toEarth(std::span(box))};
    for (int way = 0; way < 2; ++way) {
        const water::BannedExtent extent = water::extentOf(made.water, banned);
        EXPECT_NEAR(extent.area.inSquareMetres(), 5000.0, 0.01);
        EXPECT_NEAR(extent.middle.x_m, 60.0, 1e-4);
        EXPECT_NEAR(extent.middle.y_m, -15.0, 1e-4);
        std::ranges::reverse(banned.ring);
    }
}

TEST(BannedWater, IsToldByTheFirstBanThatHoldsThePlace) {
    PlannedWater made;
    EXPECT_FALSE(water::BannedPlaces::of(made.water).value().areAny());
    made.water.banned = {round(made, {0, 0}, 30.0, "first"), round(made, {20, 0}, 30.0, "second")};
    const auto banned = water::BannedPlaces::of(made.water).value();
    EXPECT_TRUE(banned.areAny());
    EXPECT_EQ(*banned.at({10, 0}), "first") << "bans may lie over one another";
    EXPECT_EQ(*banned.at({45, 0}), "second");
    EXPECT_EQ(banned.at({60, 0}), nullptr);
}

TEST(BannedWater, WhoseLineCrossesItselfIsNamed) {
    PlannedWater made;
    made.water.banned = {{"Bow",
                          {made.onEarth({0, 0}), made.onEarth({50, 50}), made.onEarth({50, 0}),
                           made.onEarth({0, 50})}}};
    const auto banned = water::BannedPlaces::of(made.water);
    ASSERT_FALSE(banned);
    EXPECT_THAT(banned.error().where, testing::StartsWith("banned water Bow"));
    base::Progress quiet;
    const auto planned = water::planDay(made.water, made.derived, made.water.plan, quiet);
    ASSERT_FALSE(planned);
    EXPECT_EQ(planned.error().where, banned.error().where);
}

TEST(BannedWater, HoldsNoMarkOfThePlanAndTheListFillsUpElsewhere) {
    PlannedWater made;
    made.water.pinnedMarks.clear();
    const water::PlannedDay open = planOf(made);
    const WaterPoint best = open.marks[0].place;
    made.water.banned = {round(made, best, 30.0)};
    const water::PlannedDay planned = planOf(made);
    EXPECT_EQ(planned.marks.size(), open.marks.size());
    for (const marks::Mark& mark : planned.marks) {
        EXPECT_GE(geo::distance_m(mark.place, best), 30.0);
    }
    EXPECT_FALSE(planned.madeFrom == open.madeFrom) << "the plan of before is old";
}

TEST(BannedWater, IsToldAsTheHectaresThatComeBackWhenTheBanIsLifted) {
    PlannedWater made;
    const auto bannedIn = [&made] {
        return planOf(made)
            .excluded[static_cast<std::size_t>(marks::Exclusion::banned)]
            .inSquareMetres();
    };
    EXPECT_EQ(bannedIn(), 0.0);
    made.water.banned = {round(made, {-80, -60}, 30.0)};
    EXPECT_NEAR(bannedIn(), 900.0 * std::numbers::pi, 150.0);
    // Deeper than the limit all the same.
    made.water.banned = {round(made, {270, 0}, 25.0)};
    EXPECT_EQ(bannedIn(), 0.0);
}

TEST(BannedWater, LeavesOwnMarksWhereTheyAreWithACaution) {
    PlannedWater made;
    made.water.banned = {round(made, {62.3, 62.7}, 20.0, "Roots")};
    const water::PlannedDay planned = planOf(made);
    const auto own = std::ranges::find(planned.marks, "Old post", &marks::Mark::name);
    ASSERT_NE(own, planned.marks.end());
    EXPECT_THAT(own->cautions, testing::Contains(marks::Caution(marks::InBannedWater{"Roots"})));
    for (const marks::Mark& mark : planned.marks) {
        EXPECT_EQ(support::holds<marks::InBannedWater>(mark.cautions), mark.name == "Old post");
    }
}

TEST(BannedWater, SaysWhyTheListIsShort) {
    PlannedWater made;
    made.water.pinnedMarks.clear();
    made.water.banned = {{"west",
                          {made.onEarth({-400, -300}), made.onEarth({100, -300}),
                           made.onEarth({100, 300}), made.onEarth({-400, 300})}}};
    made.water.plan.count = 40;
    const water::PlannedDay planned = planOf(made);
    ASSERT_LT(planned.marks.size(), 40U);
    const auto* left = std::get_if<water::WaterLeftOut>(&planned.basis.back());
    ASSERT_NE(left, nullptr);
    EXPECT_TRUE(std::ranges::any_of(
        left->parts, [](const auto& part) { return part.first == marks::Exclusion::banned; }));
}

TEST(OwnMarks, OffTheWaterAreToldWithTheirPlace) {
    PlannedWater made;
    made.water.pinnedMarks = {{"", made.onEarth({900, 0})}, {"Ashore", made.onEarth({0, 240})}};
    const water::PlannedDay planned = planOf(made);
    ASSERT_EQ(planned.refused.size(), 2U);
    EXPECT_EQ(planned.refused[0].name, "");
    EXPECT_EQ(planned.refused[0].place, made.water.pinnedMarks[0].place);
    EXPECT_EQ(planned.refused[1].name, "Ashore");
    EXPECT_EQ(planned.refused[1].why.what, "it lies on no water of this chart today");
}

} // namespace
