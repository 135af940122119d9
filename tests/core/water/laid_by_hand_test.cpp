// SPDX-License-Identifier: GPL-3.0-or-later
// Anchors and baits as the user laid them, from the water to the plan; one anchor; and what is
// tried with the hand against what the plan then makes of it.
#include "core/water/questions/lie_trial.h"
#include "core/water/steps/plan_day.h"

#include "tests/support/planned_water.h"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using support::PlannedWater;
using testing::Contains;
using units::Bearing;
using units::Length;

water::PlannedDay planOf(const PlannedWater& made, water::Workings* kept = nullptr) {
    base::Progress quiet;
    auto planned = water::planDay(made.water, made.derived, made.water.plan, quiet, kept);
    EXPECT_TRUE(planned) << planned.error().sentence();
    return std::move(*planned);
}

const marks::Mark& markNamed(const water::PlannedDay& planned, const std::string& name) {
    const auto found = std::ranges::find(planned.marks, name, &marks::Mark::name);
    EXPECT_NE(found, planned.marks.end()) << name;
    return *found;
}

/// The wind comes from 120 degrees; the anchor lies 16 m off towards 100.
const WaterPoint post{62.3, 62.7};
WaterPoint bowPut() {
    return geo::moved(post, Bearing::degrees(100.0), Length::metres(16.0));
}

PlannedWater laid() {
    PlannedWater made;
    water::LaidByHand& hand = made.water.pinnedMarks[0].laid;
    hand.bow = made.onEarth(bowPut());
    hand.baits = {made.onEarth({62.3, 74.0}), made.onEarth({52.0, 56.0})};
    hand.windFrom = Bearing::degrees(120.0);
    return made;
}

TEST(LaidByHand, IsInThePlanWithRopesKnotsAndWordOfIt) {
    const PlannedWater made = laid();
    const marks::Mark mark = markNamed(planOf(made), "Old post");
    EXPECT_TRUE(mark.isLaidByHand());
    EXPECT_TRUE(mark.anchors.bow.isByHand);
    EXPECT_LT(geo::distance_m(mark.anchors.bow.place, bowPut()), 0.05);
    EXPECT_NEAR(mark.anchors.lie.heading.inDegrees(), 100.0, 0.3);
    EXPECT_NEAR(mark.anchors.bow.rope.inMetres(),
                std::hypot(16.0 - 2.25, PlannedWater::today_m(bowPut()) + 0.8), 0.05);
    ASSERT_TRUE(mark.anchors.stern);
    EXPECT_FALSE(mark.anchors.stern->isByHand);
    EXPECT_EQ(std::ranges::count(mark.spread.rods, true, &rods::RodPlace::isByHand), 2);
    for (const rods::RodPlace& rod : mark.spread.rods) {
        EXPECT_NEAR(rod.stopKnot.inMetres(), PlannedWater::today_m(rod.place) + 0.45, 1e-3);
    }
    const water::PlannedDay without = planOf(PlannedWater());
    EXPECT_FALSE(markNamed(without, "Old post").isLaidByHand());
}

/// With sections of a known stamp, so that what is worked out is kept from plan to plan.
PlannedWater stamped(PlannedWater made) {
    made.derived.stamps[water::Step::sections] = water::Stamp();
    return made;
}

TEST(LaidByHand, IsKeptThroughEveryPlanWithWorkingsOrWithout) {
    PlannedWater made = stamped(laid());
    PlannedWater bare = stamped(PlannedWater());
    for (const double wind_deg : {120.0, 75.0, 300.0}) {
        water::Workings kept;
        bare.water.plan.day.wind.from = Bearing::degrees(wind_deg);
        made.water.plan.day.wind.from = Bearing::degrees(wind_deg);
        ASSERT_FALSE(markNamed(planOf(bare, &kept), "Old post").isLaidByHand());
        const std::size_t known = kept.worked.size();
        ASSERT_GT(known, 0U) << "else nothing is kept that could be taken for the hand's";
        for (water::Workings* workings : {&kept, static_cast<water::Workings*>(nullptr)}) {
            const marks::Mark mark = markNamed(planOf(made, workings), "Old post");
            EXPECT_TRUE(mark.anchors.bow.isByHand) << wind_deg;
            EXPECT_LT(geo::distance_m(mark.anchors.bow.place, bowPut()), 0.05);
        }
        EXPECT_FALSE(markNamed(planOf(bare, &kept), "Old post").isLaidByHand()) << "given back";
        EXPECT_EQ(kept.worked.size(), known) << "and all that was kept was still of use";
    }
}

TEST(LaidByHand, IsToldWhereTheWindOrTheLevelChanges) {
    PlannedWater made = laid();
    made.water.plan.day.wind.from = Bearing::degrees(200.0);
    const marks::Mark turned = markNamed(planOf(made), "Old post");
    EXPECT_THAT(turned.anchors.cautions,
                Contains(anchoring::Caution(anchoring::WindChangedSince{80.0})));
    made.water.plan.day.wind.from = Bearing::degrees(120.0);
    const marks::Mark low = markNamed(planOf(made), "Old post");
    made.water.plan.day.levelChange = Length::metres(0.8);
    const marks::Mark high = markNamed(planOf(made), "Old post");
    EXPECT_EQ(low.anchors.bow.place, high.anchors.bow.place);
    EXPECT_GT(high.anchors.bow.rope, low.anchors.bow.rope) << "ropes follow the level";
    EXPECT_LT(high.anchors.bow.scope, low.anchors.bow.scope);
    const rods::RodPlace& rod = high.spread.rods.at(0);
    EXPECT_NEAR(rod.stopKnot.inMetres() - rod.depth.inMetres(), 0.45, 1e-9);
}

TEST(LaidByHand, ThatHoldsNoBoatIsToldAsAMarkThatCannotBeAnchoredOn) {
    PlannedWater made = laid();
    made.water.pinnedMarks[0].laid.stern = made.onEarth(bowPut());
    const water::PlannedDay planned = planOf(made);
    EXPECT_TRUE(std::ranges::none_of(
        planned.marks, [](const marks::Mark& mark) { return mark.name == "Old post"; }));
    const auto refused = std::ranges::find(planned.refused, "Old post", &water::RefusedMark::name);
    ASSERT_NE(refused, planned.refused.end());
    EXPECT_EQ(refused->why.what, "the anchors lie nearer to each other than the boat is long");
}

TEST(LaidByHand, OfTheUsersMarkIsNotTakenForOneOfTheProgramAtThatPlace) {
    PlannedWater made;
    const water::PlannedDay free = planOf(made);
    EXPECT_TRUE(std::ranges::none_of(free.marks, &marks::Mark::isLaidByHand));
}

TEST(OneAnchorDay, LaysEveryMarkToOneAnchorAndSaysSoOnce) {
    PlannedWater made;
    made.water.plan.tackle.toOneAnchor = true;
    made.water.plan.tackle.scope = 2.5;
    const water::PlannedDay planned = planOf(made);
    ASSERT_FALSE(planned.marks.empty());
    for (const marks::Mark& mark : planned.marks) {
        EXPECT_FALSE(mark.anchors.stern);
        ASSERT_TRUE(mark.anchors.swing);
        EXPECT_NEAR(mark.anchors.lie.heading.inDegrees(), 120.0, 1e-9);
        for (int side = 0; side < 36; ++side) {
            const auto p = geo::moved(mark.anchors.bow.place, Bearing::degrees(10.0 * side),
                                      mark.anchors.swing->radius * 0.99);
            EXPECT_TRUE(mark.isPinned || !PlannedWater::isClosed(p));
            EXPECT_GT(PlannedWater::today_m(p), 0.4);
        }
    }
    EXPECT_THAT(planned.cautions, Contains(water::DayCaution(water::SwingsToOneAnchor{})));
    EXPECT_TRUE(std::ranges::none_of(planned.cautions, [](const auto& caution) {
        return std::holds_alternative<water::WindOnTheBeam>(caution);
    }));
}

TEST(OneAnchorDay, IsNotLeftOutForAShortSternRope) {
    PlannedWater made;
    made.water.pinnedMarks.clear();
    made.water.plan.tackle.toOneAnchor = true;
    made.water.plan.tackle.sternRope = Length::metres(5.0);
    made.water.plan.tackle.bowRope = Length::metres(40.0);
    const water::PlannedDay one = planOf(made);
    made.water.plan.tackle.sternRope = Length::metres(40.0);
    EXPECT_EQ(planOf(made).excluded, one.excluded);
}

TEST(StopWinds, EveryStopNamesTheWindThatItsAnchorsAreLaidFor) {
    PlannedWater made;
    std::size_t first = 0;
    std::size_t later = 0;
    std::size_t turnedEarly = 0;
    std::size_t turnedLate = 0;
    for (const int hour : {12, 13, 14, 15}) {
        made.water.plan.day.windLater = marks::LaterWind{
            std::chrono::hours(hour), {Bearing::degrees(300.0), units::Speed::metresPerSecond(3)}};
        const water::PlannedDay planned = planOf(made);
        ASSERT_GE(planned.day.stops.size(), 3U);
        for (const marks::DayStop& stop : planned.day.stops) {
            const marks::Mark& mark = planned.marks[static_cast<std::size_t>(stop.rank - 1)];
            ASSERT_TRUE(stop.wind.from);
            const bool isLater = *stop.wind.from == Bearing::degrees(300.0);
            ++(isLater ? later : first);
            EXPECT_LT(mark.anchors.lie.heading.angleTo_deg(*stop.wind.from), 40.0 + 1e-6);
            const auto turn =
                made.water.clock.at(made.water.plan.day.day, std::chrono::hours(hour));
            const auto before = std::min(turn, stop.leave) - std::min(turn, stop.arrive);
            const auto after = std::max(turn, stop.leave) - std::max(turn, stop.arrive);
            EXPECT_EQ(isLater, after > before) << "the wind of the longer part of the stay";
            if (before.count() > 0 && after.count() > 0) {
                ++(after > before ? turnedEarly : turnedLate);
            }
        }
    }
    for (const std::size_t seen : {first, later, turnedEarly, turnedLate}) {
        EXPECT_GT(seen, 0U) << "else it is not asked here";
    }
}

class Tried : public testing::Test {
protected:
    void make() {
        planned_ = std::make_shared<const water::PlannedDay>(planOf(made_));
        water_ = std::make_shared<const water::Water>(made_.water);
    }
    [[nodiscard]] base::Result<marks::Mark> with(const water::PinnedMark& asked) const {
        const auto trial = water::LieTrial::of(water_, made_.derived, planned_,
                                               markNamed(*planned_, "Old post").rank);
        return trial.value().with(asked);
    }
    static void expectSame(const marks::Mark& tried, const marks::Mark& planned) {
        EXPECT_TRUE(tried.anchors == planned.anchors);
        ASSERT_EQ(tried.spread.rods.size(), planned.spread.rods.size());
        for (std::size_t k = 0; k < tried.spread.rods.size(); ++k) {
            EXPECT_EQ(tried.spread.rods[k].place, planned.spread.rods[k].place);
            EXPECT_EQ(tried.spread.rods[k].stopKnot, planned.spread.rods[k].stopKnot);
            EXPECT_EQ(tried.spread.rods[k].isByHand, planned.spread.rods[k].isByHand);
        }
        EXPECT_EQ(tried.spread.cautions, planned.spread.cautions);
        EXPECT_EQ(tried.waveHeight, planned.waveHeight);
        EXPECT_NEAR(tried.depth.inMetres(), planned.depth.inMetres(), 1e-9);
    }

    PlannedWater made_;
    std::shared_ptr<const water::PlannedDay> planned_;
    std::shared_ptr<const water::Water> water_;
};

TEST_F(Tried, IsJustWhatTheNextPlanMakesOfIt) {
    make();
    water::PinnedMark asked = made_.water.pinnedMarks[0];
    asked.laid = laid().water.pinnedMarks[0].laid;
    const auto tried = with(asked);
    ASSERT_TRUE(tried) << tried.error().sentence();
    made_.water.pinnedMarks[0] = asked;
    expectSame(*tried, markNamed(planOf(made_), "Old post"));
}

TEST_F(Tried, OfTheBoatIsWhatThePlanMakesOfTheMarkThere) {
    make();
    water::PinnedMark asked = made_.water.pinnedMarks[0];
    asked.place = made_.onEarth({80.0, 20.0});
    const auto tried = with(asked);
    ASSERT_TRUE(tried) << tried.error().sentence();
    made_.water.pinnedMarks[0] = asked;
    expectSame(*tried, markNamed(planOf(made_), "Old post"));
}

TEST_F(Tried, IsInTheWindOfTheStay) {
    made_.water.plan.day.windLater = marks::LaterWind{
        std::chrono::hours(9) + std::chrono::minutes(1), {Bearing::degrees(300.0), std::nullopt}};
    make();
    const auto tried = with(made_.water.pinnedMarks[0]);
    ASSERT_TRUE(tried) << tried.error().sentence();
    expectSame(*tried, markNamed(*planned_, "Old post"));
    EXPECT_LT(tried->anchors.lie.heading.angleTo_deg(Bearing::degrees(300.0)), 41.0);
}

TEST_F(Tried, SaysWhyNothingCanBeLaid) {
    make();
    water::PinnedMark asked = made_.water.pinnedMarks[0];
    asked.laid.bow = asked.place;
    const auto tried = with(asked);
    ASSERT_FALSE(tried);
    EXPECT_EQ(tried.error().what, "the anchor lies under the boat");
    EXPECT_FALSE(water::LieTrial::of(water_, made_.derived, planned_, 99));
    EXPECT_FALSE(water::LieTrial::of(water_, water::Derived(), planned_, 1));
}

} // namespace
