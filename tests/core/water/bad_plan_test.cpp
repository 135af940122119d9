// SPDX-License-Identifier: GPL-3.0-or-later
// What is asked by a slip of the hand, and waters of which little is known: what is said of each.
#include "core/water/steps/plan_day.h"
#include "core/water/steps/problems.h"
#include "tests/support/given.h"
#include "tests/support/holding.h"
#include "tests/support/planned_water.h"

#include <algorithm>
#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using marks::Exclusion;
using support::PlannedWater;
using units::Depth;
using units::Length;

base::Result<water::PlannedDay> tried(const PlannedWater& made) {
    base::Progress quiet;
    return water::planDay(made.water, made.derived, made.water.plan, quiet);
}

const water::WaterLeftOut* leftOutOf(const water::PlannedDay& day) {
    for (const water::PlanNote& note : day.basis) {
        if (const auto* left = std::get_if<water::WaterLeftOut>(&note)) {
            return left;
        }
    }
    return nullptr;
}

TEST(BadPlan, ALaunchThirteenKilometresOffIsRefusedWithTheDistance) {
    PlannedWater made;
    made.water.plan.launch = made.onEarth({-13300.0, 0.0});
    const auto day = tried(made);
    ASSERT_FALSE(day);
    EXPECT_EQ(day.error().kind, base::ErrorKind::unusableInput);
    EXPECT_EQ(day.error().what, "the launch lies 13.0 km from this water");
    EXPECT_EQ(day.error().where, "launch");
    EXPECT_FALSE(day.error().whatToDo.empty());
}

TEST(BadPlan, ALaunchOnTheBankIsOneAndOneInTheFieldsIsNot) {
    PlannedWater made;
    made.water.plan.launch = made.onEarth({-300.0 - 198.0, 0.0});
    const auto day = tried(made);
    ASSERT_TRUE(day) << day.error().sentence();
    EXPECT_FALSE(day->day.stops.empty());
    made.water.plan.launch = made.onEarth({-300.0 - 202.0, 0.0});
    EXPECT_EQ(tried(made).error().what, "the launch lies 202 m from this water");
}

TEST(BadPlan, ALaunchOnTheOtherSideOfTheEarthIsRefusedWithTheWayThere) {
    PlannedWater made;
    const geo::LonLat middle = made.water.frame->centre();
    made.water.plan.launch = geo::LonLat{
        middle.lon_deg > 0.0 ? middle.lon_deg - 180.0 : middle.lon_deg + 180.0, -middle.lat_deg};
    made.water.shoreline = {{{made.onEarth({-300.0, -200.0}), made.onEarth({300.0, -200.0}),
                              made.onEarth({0.0, 200.0})},
                             {}}};
    const auto day = tried(made);
    ASSERT_FALSE(day);
    EXPECT_EQ(day.error().what, "the launch lies 20003.9 km from this water")
        << "half a meridian: pi a / (1 + n) (1 + n^2/4 + n^4/64) (Helmert 1880), axes of WGS 84";
    EXPECT_THAT(water::problemsIn(made.water),
                testing::Contains(testing::HasSubstr("launch lies far")));
}

TEST(BadPlan, RopesOfFiveMetresGiveWhatTheyReachAndSayWhatTheyLeaveOut) {
    PlannedWater made;
    made.water.pinnedMarks.clear();
    made.water.plan.tackle.bowRope = Length::metres(5.0);
    made.water.plan.tackle.sternRope = Length::metres(5.0);
    made.water.plan.tackle.scope = 1.5;
    made.water.plan.count = 40;
    const auto day = tried(made);
    ASSERT_TRUE(day) << day.error().sentence();
    for (const marks::Mark& mark : day->marks) {
        EXPECT_LE(mark.anchors.bow.rope, Length::metres(5.0));
        EXPECT_LE(mark.anchors.stern.value().rope, Length::metres(5.0));
    }
    const water::WaterLeftOut* left = leftOutOf(*day);
    ASSERT_NE(left, nullptr) << day->marks.size();
    double ha = 0.0;
    for (const auto& [why, area] : left->parts) {
        ha += why == Exclusion::ropesTooShort || why == Exclusion::noAnchors ? area.inHectares()
                                                                             : 0.0;
    }
    // 5 m of rope at 1.5 times depth and bow: 2.5 m deep, the western fifth of 24 ha.
    EXPECT_GT(ha, 8.0);
    EXPECT_EQ(left->found, day->marks.size());
    EXPECT_EQ(left->wanted, 40);
}

TEST(BadPlan, ALimitOfHalfAMetreLeavesNothingAndSaysSoInHectares) {
    PlannedWater made;
    made.water.pinnedMarks.clear();
    made.water.settings.bands =
        contours::Bands::make({Depth::metres(0.25)}, Depth::metres(0.5)).value();
    const auto day = tried(made);
    ASSERT_FALSE(day);
    EXPECT_NE(day.error().what.find(" ha too deep"), std::string::npos) << day.error().what;
    EXPECT_EQ(day.error().whatToDo, "choose a deeper limit");
}

TEST(BadPlan, WithoutAnyBeliefAllPlacesPromiseTheSameAndTheListIsStillOne) {
    PlannedWater made;
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        made.water.plan.weights.set(kind, 0.0);
    }
    const auto day = tried(made);
    ASSERT_TRUE(day) << day.error().sentence();
    EXPECT_GE(day->marks.size(), 6U);
    for (const marks::Mark& mark : day->marks) {
        // But for the chance that one lies out of reach.
        EXPECT_NEAR(mark.score, 1.0, 1e-3) << mark.rank;
    }
    const auto again = tried(made);
    for (std::size_t k = 0; k < day->marks.size(); ++k) {
        EXPECT_EQ(day->marks[k].place, again->marks[k].place);
    }
}

TEST(BadPlan, WaterAtThreeHundredDegreesIsRefused) {
    PlannedWater made;
    made.water.plan.day.waterTemperature = units::Temperature::celsius(300.0);
    const auto day = tried(made);
    ASSERT_FALSE(day);
    EXPECT_EQ(day.error().kind, base::ErrorKind::wrongUse);
    EXPECT_NE(day.error().sentence().find("degrees"), std::string::npos);
    made.water.plan.day.waterTemperature = units::Temperature::celsius(30.0);
    EXPECT_TRUE(tried(made));
}

TEST(BadPlan, AVariableWindLaysEachBoatToItsOwnOpenWaterAndSaysSo) {
    PlannedWater made;
    made.water.plan.day.wind = {std::nullopt, units::Speed::metresPerSecond(6.0)};
    const auto day = tried(made);
    ASSERT_TRUE(day) << day.error().sentence();
    EXPECT_GE(day->marks.size(), 6U);
    for (const marks::Mark& mark : day->marks) {
        EXPECT_THAT(mark.anchors.cautions,
                    testing::Contains(anchoring::Caution(anchoring::BowToOpenWater{})));
        EXPECT_GT(support::given(mark.waveHeight), Length());
    }
}

TEST(BadPlan, AWaterOfWhichNothingIsKnownStillHasAListAndSaysWhatItIs) {
    PlannedWater made;
    made.water.pinnedMarks.clear();
    made.derived.structure =
        std::make_shared<const structure::ZoneMap>(support::noZones(made.ground));
    weed::WeedMap noWeed;
    noWeed.zones = support::noZones(made.ground);
    made.derived.weed = std::make_shared<const weed::WeedMap>(std::move(noWeed));
    auto drawn = std::make_shared<surface::DrawnWater>(*made.derived.drawn);
    const grid::GridFrame& frame = drawn->depth.frame();
    drawn->trust = {grid::Grid<float>(frame, 3.0F),
                    grid::Grid<surface::TrustName>(frame, surface::TrustName::guess)};
    made.derived.drawn = drawn;
    const auto day = tried(made);
    ASSERT_TRUE(day) << day.error().sentence();
    EXPECT_GE(day->marks.size(), 6U);
    EXPECT_THAT(day->basis, testing::Contains(water::PlanNote(water::NothingCaught{})));
    for (const marks::Mark& mark : day->marks) {
        EXPECT_THAT(mark.cautions, testing::Contains(marks::Caution(marks::GuessedHere{})));
        EXPECT_TRUE(mark.zones.empty());
        EXPECT_FALSE(mark.expected);
    }
}

TEST(BadPlan, NoListConsistsOfGuessesWhileSoundedWaterIsAsGood) {
    // The south is a guess, and by the beliefs alone no worse than the north.
    PlannedWater made;
    made.water.pinnedMarks.clear();
    made.water.plan.count = 12;
    const auto day = tried(made);
    ASSERT_TRUE(day) << day.error().sentence();
    EXPECT_TRUE(std::ranges::none_of(
        day->marks, [](const marks::Mark& mark) { return PlannedWater::isGuess(mark.place); }));
    // An own mark there is kept, and falls with the chance that its depth is another.
    made.water.pinnedMarks = {{"South", made.onEarth({-200.0, -150.0})}};
    const auto own = tried(made);
    ASSERT_TRUE(own) << own.error().sentence();
    const auto mark = std::ranges::find(own->marks, true, &marks::Mark::isPinned);
    ASSERT_NE(mark, own->marks.end());
    EXPECT_LT(mark->score, 0.98 * own->marks[0].score);
}

} // namespace
