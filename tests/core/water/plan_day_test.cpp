// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/plan_day.h"

#include "core/anchoring/rope.h"
#include "tests/support/given.h"
#include "tests/support/holding.h"
#include "tests/support/planned_water.h"

#include <algorithm>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using marks::FactorKind;
using marks::Mark;
using structure::ZoneKind;
using support::given;
using support::PlannedWater;
using testing::Contains;
using testing::HasSubstr;
using units::Length;

const PlannedWater& made() {
    static const PlannedWater water;
    return water;
}

base::Result<water::PlannedDay> planOf(const PlannedWater& made) {
    base::Progress quiet;
    return water::planDay(made.water, made.derived, made.water.plan, quiet);
}

const water::PlannedDay& planned() {
    static const water::PlannedDay day = planOf(made()).value();
    return day;
}

const std::vector<Mark>& marksOfIt() {
    return planned().marks;
}

double valueOf(const Mark& mark, FactorKind kind) {
    return std::ranges::find(mark.factors, kind, &marks::Factor::kind)->value;
}

/// Metres from p to the shore of the rectangle, by plain geometry.
double shoreAhead_m(WaterPoint p, double bearing_deg) {
    const double a = bearing_deg * std::numbers::pi / 180.0;
    const double east = std::sin(a);
    const double north = std::cos(a);
    const double x_m = east > 0.0 ? (300.0 - p.x_m) / east : (-300.0 - p.x_m) / east;
    const double y_m = north > 0.0 ? (200.0 - p.y_m) / north : (-200.0 - p.y_m) / north;
    return std::min(std::fabs(x_m), std::fabs(y_m));
}

double effectiveFetch_m(WaterPoint p) {
    double sum_m = 0.0;
    double weights = 0.0;
    for (int turn_deg = -42; turn_deg <= 42; turn_deg += 6) {
        const double weight = std::cos(turn_deg * std::numbers::pi / 180.0);
        sum_m += weight * shoreAhead_m(p, 120.0 + turn_deg);
        weights += weight;
    }
    return sum_m / weights;
}

/// Shore Protection Manual 1984, shallow water, at 7 m/s.
double waveHeight_m(double fetch_m, double depth_m) {
    const double u2 = std::pow(0.71 * std::pow(7.0, 1.23), 2.0);
    const double limit = std::tanh(0.53 * std::pow(9.81 * depth_m / u2, 0.75));
    const double open = 0.00565 * std::sqrt(9.81 * fetch_m / u2);
    return 0.283 * limit * std::tanh(open / limit) * u2 / 9.81;
}

/// Mean depth today on the way upwind: the bottom is a plane, so it is that of the way's middle.
double depthUpwind_m(WaterPoint p) {
    const double half_m = 0.5 * shoreAhead_m(p, 120.0);
    const double a = 120.0 * std::numbers::pi / 180.0;
    return PlannedWater::today_m({p.x_m + half_m * std::sin(a), p.y_m + half_m * std::cos(a)});
}

TEST(PlanDay, GivesTheMarksAskedForAndTheUsersOwnAmongThem) {
    ASSERT_EQ(marksOfIt().size(), 6U);
    std::vector<std::string> own;
    for (const Mark& mark : marksOfIt()) {
        EXPECT_EQ(mark.rank, static_cast<int>(&mark - marksOfIt().data()) + 1);
        if (mark.isPinned) {
            own.push_back(mark.name);
        }
    }
    EXPECT_THAT(own, testing::UnorderedElementsAre("Old post", "Reeds", "South"));
    for (const Mark& mark : marksOfIt()) {
        const WaterPoint at = mark.name == "Old post" ? WaterPoint{62.3, 62.7}
                              : mark.name == "Reeds"  ? WaterPoint{-136, 100}
                                                      : WaterPoint{57.3, -151.7};
        if (mark.isPinned) {
            EXPECT_NEAR(geo::distance_m(mark.place, at), 0.0, 1e-3) << "never moved";
        }
    }
}

TEST(PlanDay, DepthsAreThoseOfTodaysLevel) {
    for (const Mark& mark : marksOfIt()) {
        EXPECT_NEAR(mark.depth.inMetres(), PlannedWater::today_m(mark.place), 1e-4);
        EXPECT_NEAR(mark.anchors.bow.depth.inMetres(),
                    PlannedWater::today_m(mark.anchors.bow.place), 1e-4);
        EXPECT_NEAR(mark.anchors.stern->depth.inMetres(),
                    PlannedWater::today_m(mark.anchors.stern->place), 1e-4);
        for (const rods::RodPlace& rod : mark.spread.rods) {
            EXPECT_NEAR(rod.depth.inMetres(), PlannedWater::today_m(rod.place), 1e-4);
        }
    }
    PlannedWater high;
    high.water.plan.day.levelChange = Length::metres(0.75);
    const auto day = planOf(high).value();
    for (const Mark& mark : day.marks) {
        EXPECT_NEAR(mark.depth.inMetres(), PlannedWater::chartDepth_m(mark.place) + 0.75, 1e-4);
    }
}

TEST(PlanDay, MarksLieWithinTheLimitInWaterDeepEnough) {
    for (const Mark& mark : marksOfIt()) {
        EXPECT_LE(mark.depth.inMetres(), 6.0);
        EXPECT_GE(mark.depth.inMetres(), 1.0);
        for (const rods::RodPlace& rod : mark.spread.rods) {
            EXPECT_LE(rod.depth.inMetres(), 6.0 + 1e-6);
        }
    }
}

TEST(PlanDay, TellsPlaceSectionZonesAndTrustOfEachMark) {
    for (const Mark& mark : marksOfIt()) {
        const WaterPoint p = mark.place;
        const WaterPoint cell =
            made().ground.depth.frame().centre(made().ground.depth.frame().cellOf(p));
        EXPECT_NEAR(geo::distance_m(made().ground.frame.toWater(mark.lonLat), p), 0.0, 1e-3);
        EXPECT_EQ(mark.section, PlannedWater::sectionNumber(cell));
        EXPECT_EQ(mark.sectionName, cell.x_m < 0.0 ? "West" : "East");
        EXPECT_NEAR(mark.trust.inMetres(), PlannedWater::trust_m(cell), 1e-5);
        if (mark.name == "Old post") {
            EXPECT_EQ(mark.zones, std::vector{ZoneKind::weedBed});
        }
        std::vector<ZoneKind> kinds;
        if (p.x_m < -165.0) {
            kinds.push_back(ZoneKind::plateau);
        }
        if (p.x_m > 65.0 && p.y_m > 65.0) {
            kinds.push_back(ZoneKind::weedBed);
        }
        if (p.x_m < -165.0 || p.x_m > -135.0) {
            EXPECT_THAT(mark.zones, testing::IsSupersetOf(kinds));
        }
    }
}

TEST(PlanDay, FetchIsMeasuredToWhereTheWindComesFrom) {
    for (const Mark& mark : marksOfIt()) {
        EXPECT_NEAR(mark.fetch.value().inMetres(), effectiveFetch_m(mark.place), 0.05);
    }
}

TEST(PlanDay, WavesGrowWithTheEffectiveFetchAndAreHeldByTheDepthUpwind) {
    for (const Mark& mark : marksOfIt()) {
        const double expected_m =
            waveHeight_m(effectiveFetch_m(mark.place), depthUpwind_m(mark.place));
        EXPECT_NEAR(mark.waveHeight.value().inMetres(), expected_m, 0.005 * expected_m);
        // The plan weighs windward 1.3 and shelter 0.4: a liking for waves of 0.153 m.
        const double ripple = 1.3 / 1.7;
        const double off =
            (mark.waveHeight.value().inMetres() - 0.2 * ripple) / (0.25 * (1.0 - 0.5 * ripple));
        EXPECT_NEAR(valueOf(mark, FactorKind::shelter), 1.0 / (1.0 + off * off), 1e-9);
    }
}

TEST(PlanDay, WindwardIsThatOfTheWindUpTheSlope) {
    // The bottom rises to the west by 1.2 % and to the south by 0.3 %; the wind blows to 300.
    const double slope = std::hypot(0.012, 0.003);
    const double a = 300.0 * std::numbers::pi / 180.0;
    const double up = (-0.012 * std::sin(a) - 0.003 * std::cos(a)) / slope;
    const double v = 7.0 * up * slope / 0.05;
    for (const Mark& mark : marksOfIt()) {
        EXPECT_NEAR(valueOf(mark, FactorKind::windward), 0.5 * (1.0 + v / (std::fabs(v) + 3.0)),
                    1e-4);
    }
}

// The score was the weighted mean of the factors; now it is what they multiply the mean by.
TEST(PlanDay, ScoresAreTheProductOfTheFactorsByThePlansOwnWeights) {
    for (const Mark& mark : marksOfIt()) {
        double product = 1.0;
        ASSERT_EQ(mark.factors.size(), marks::allFactorKinds.size());
        for (std::size_t k = 0; k < mark.factors.size(); ++k) {
            const marks::Factor& factor = mark.factors[k];
            EXPECT_EQ(factor.kind, marks::allFactorKinds[k]);
            const double said = made().water.plan.weights.of(factor.kind);
            EXPECT_NEAR(factor.weight,
                        factor.kind == FactorKind::windward  ? 0.0
                        : factor.kind == FactorKind::shelter ? 1.7
                                                             : said,
                        1e-12);
            const bool isOfTheLog =
                factor.kind == FactorKind::record || factor.kind == FactorKind::lessTried;
            product *= isOfTheLog ? 1.0 : std::exp(0.4 * factor.weight * (factor.value - 0.5));
        }
        // But for what the chance takes that the depth is not what is drawn.
        EXPECT_NEAR(mark.score, product, 1e-4);
    }
}

TEST(PlanDay, BoatsLieOnTheMarkWithTheBowToTheWind) {
    for (const Mark& mark : marksOfIt()) {
        EXPECT_EQ(mark.anchors.lie.centre, mark.place);
        EXPECT_NEAR(mark.anchors.lie.heading.inDegrees(), 120.0 + mark.anchors.offTheWind_deg,
                    1e-9);
        EXPECT_LE(std::fabs(mark.anchors.offTheWind_deg), 40.0);
    }
}

TEST(PlanDay, RopesRunStraightFromTheirOwnCleatToTheirAnchor) {
    // Heights of the cleats: 0.8 m as planned at the bow, half a metre at the stern.
    for (const Mark& mark : marksOfIt()) {
        const anchoring::AnchorSet& set = mark.anchors;
        const WaterPoint bow = geo::moved(mark.place, set.lie.heading, Length::metres(2.25));
        const WaterPoint stern =
            geo::moved(mark.place, set.lie.heading.opposite(), Length::metres(2.25));
        const double bowRise_m = PlannedWater::today_m(set.bow.place) + 0.8;
        const double sternRise_m = PlannedWater::today_m(set.stern->place) + 0.5;
        EXPECT_NEAR(std::hypot(geo::distance_m(bow, set.bow.place), bowRise_m),
                    set.bow.rope.inMetres(), 0.01);
        EXPECT_NEAR(std::hypot(geo::distance_m(stern, set.stern->place), sternRise_m),
                    set.stern->rope.inMetres(), 0.01);
        EXPECT_NEAR(set.bow.scope, set.bow.rope.inMetres() / bowRise_m, 1e-4);
        EXPECT_NEAR(set.stern->scope, set.stern->rope.inMetres() / sternRise_m, 1e-4);
        EXPECT_LT(geo::bearing(bow, set.bow.place).angleTo_deg(set.lie.heading), 1e-6);
        EXPECT_LT(geo::bearing(set.stern->place, stern).angleTo_deg(set.lie.heading), 1e-6);
        const double back_m = geo::distance_m(set.bow.place, set.stern->place) - 4.5;
        EXPECT_NEAR(set.fallBackRope.inMetres(), std::hypot(back_m, bowRise_m), 1e-3);
        EXPECT_NEAR(set.beamPull_N.value(), 0.5 * 1.225 * 3.0 * 49.0, 1e-9);
    }
}

TEST(PlanDay, ShortRopesAreNeverPaidOutFartherThanThereIs) {
    bool isShortened = false;
    for (const Mark& mark : marksOfIt()) {
        EXPECT_LE(mark.anchors.fallBackRope.inMetres(), 16.0);
        EXPECT_LE(mark.anchors.stern->rope.inMetres(), 6.5 + 1e-9);
        EXPECT_LE(mark.anchors.bow.scope, 3.5 + 1e-6);
        EXPECT_GE(mark.anchors.bow.scope, 2.0 - 1e-6);
        EXPECT_GE(mark.anchors.stern->scope, 1.2 - 1e-6);
        EXPECT_LE(mark.anchors.stern->scope, 1.5 + 1e-6);
        isShortened = isShortened || mark.anchors.bow.scope < 3.4;
        EXPECT_EQ(mark.anchors.bow.scope < 3.45,
                  support::holds<anchoring::ShortOfRoom>(mark.anchors.cautions));
    }
    EXPECT_TRUE(isShortened) << "the water is too deep for the scope asked for";
}

TEST(PlanDay, RodsAreHeldToTheHouseRules) {
    EXPECT_EQ(planned().plan.tackle.rods, 4);
    for (const Mark& mark : marksOfIt()) {
        EXPECT_LE(mark.spread.rods.size(), 4U);
    }
    EXPECT_TRUE(std::ranges::any_of(marksOfIt(),
                                    [](const Mark& mark) { return mark.spread.rods.size() == 4; }));
    PlannedWater free;
    free.water.houseRules.rodLimit.reset();
    const auto day = planOf(free).value();
    EXPECT_EQ(day.plan.tackle.rods, 6) << "no rule, no limit";
    EXPECT_TRUE(std::ranges::any_of(day.marks,
                                    [](const Mark& mark) { return mark.spread.rods.size() > 4; }));
    free.water.houseRules.rodLimit = 7;
    EXPECT_EQ(planOf(free).value().plan.tackle.rods, 6) << "a limit adds no rods";
}

TEST(PlanDay, BaitsLieBetweenHalfACastAndACastWithTheKnotSetOverTheDepth) {
    for (const Mark& mark : marksOfIt()) {
        for (const rods::RodPlace& rod : mark.spread.rods) {
            const double away_m = geo::distance_m(mark.place, rod.place);
            EXPECT_NEAR(rod.distance.inMetres(), away_m, 1e-9);
            EXPECT_LT(rod.bearing.angleTo_deg(geo::bearing(mark.place, rod.place)), 1e-9);
            EXPECT_LE(away_m, 15.0 + 1e-9);
            EXPECT_GE(away_m, 7.5 - 1e-9);
            EXPECT_NEAR(rod.stopKnot.inMetres(), rod.depth.inMetres() + 0.45, 1e-9);
        }
    }
}

TEST(PlanDay, AShortCastBringsTheNearestBaitNearer) {
    PlannedWater made;
    made.water.plan.tackle.cast = Length::metres(7.0);
    made.water.plan.count = 2;
    const auto day = planOf(made);
    ASSERT_TRUE(day) << day.error().sentence();
    EXPECT_FALSE(day->marks.front().spread.rods.empty());
    for (const rods::RodPlace& rod : day->marks.front().spread.rods) {
        EXPECT_LE(rod.distance.inMetres(), 7.0 + 1e-9);
        EXPECT_GE(rod.distance.inMetres(), 3.5 - 1e-9);
    }
}

TEST(PlanDay, KeepsTheDayThatWasAskedFor) {
    marks::Plan asked = made().water.plan;
    asked.tackle.rods = 4;
    EXPECT_EQ(planned().plan, asked);
    base::Progress quiet;
    asked.count = 4;
    const auto day = water::planDay(made().water, made().derived, asked, quiet).value();
    EXPECT_EQ(day.plan.count, 4) << "the plan given goes before the water's own";
    EXPECT_EQ(day.marks.size(), 4U);
}

TEST(PlanDay, LightIsThatOfTheLaunchOnThatDay) {
    const light::SunTimes sun = light::sunTimesOn(
        std::chrono::year(2026) / 11 / 14, given(made().water.plan.launch), made().water.clock);
    EXPECT_EQ(planned().light, sun);
    // NOAA's equations of the sun by an independent program: 15:45:01 UTC.
    EXPECT_EQ(units::timeOfDayText(given(sun.sunset), made().water.clock), "16:45");
    PlannedWater unlaunched;
    unlaunched.water.plan.launch.reset();
    EXPECT_EQ(planOf(unlaunched).value().light, light::sunTimesOn(std::chrono::year(2026) / 11 / 14,
                                                                  {3.1, 55.2}, made().water.clock));
}

TEST(PlanDay, ArrivesWhenTheMovesAndEqualStaysSay) {
    const marks::DayPlan& day = planned().day;
    ASSERT_EQ(day.stops.size(), 6U);
    EXPECT_TRUE(day.leftOut.empty());
    const units::Clock& clock = made().water.clock;
    const units::Moment start = clock.at(std::chrono::year(2026) / 11 / 14, std::chrono::hours(9));
    double moves_m = 0.0;
    WaterPoint at{-250.0, 190.0};
    for (const marks::DayStop& stop : day.stops) {
        const WaterPoint to = marksOfIt()[static_cast<std::size_t>(stop.rank - 1)].place;
        EXPECT_GE(stop.move.inMetres(), 0.98 * geo::distance_m(at, to) - 8.0);
        moves_m += stop.move.inMetres();
        at = to;
    }
    const double home_m = day.moves.inMetres() - moves_m;
    EXPECT_GE(home_m, 0.98 * geo::distance_m(at, {-250.0, 190.0}) - 8.0);
    const double stay_s = (8.5 * 3600.0 - day.moves.inMetres() / 1.2) / 6.0;
    double clock_s = 0.0;
    for (const marks::DayStop& stop : day.stops) {
        clock_s += stop.move.inMetres() / 1.2;
        EXPECT_NEAR(std::chrono::duration<double>(stop.arrive - start).count(), clock_s, 0.51);
        clock_s += stay_s;
        EXPECT_NEAR(std::chrono::duration<double>(stop.leave - start).count(), clock_s, 0.51);
    }
    EXPECT_NEAR(clock_s + home_m / 1.2, 8.5 * 3600.0, 1e-6) << "home when the day ends";
}

TEST(PlanDay, TellsTheCautionsOfTheDayTheGravestFirstAndTheRulesByThemselves) {
    using Home = marks::DarkHours::Home;
    EXPECT_EQ(planned().cautions,
              (std::vector<water::DayCaution>{
                  water::FallingIn{water::ColdWater{true}, false}, water::Thunder{},
                  marks::DarkHours{false, Home::inTheDark}, water::WindOnTheBeam{},
                  water::Ropes{3.5}, water::TellSomebody{}}));
    EXPECT_EQ(planned().rules,
              (std::vector<water::DayRule>{water::RodLimit{4}, water::ClosedPart{"Reserve"},
                                           water::HouseNote{"Nets are provided."},
                                           water::LocalRulesFirst{}}));
    EXPECT_EQ(planned().fishCare, std::vector{water::FishCare::handling});
    ASSERT_FALSE(planned().refused.empty());
    EXPECT_EQ(planned().refused.front().name, "Hole");
    EXPECT_EQ(planned().refused.front().why.what, "the ropes are too short for the depth here");
}

TEST(PlanDay, TellsTheCautionsOfEachMark) {
    for (const Mark& mark : marksOfIt()) {
        EXPECT_EQ(support::holds<marks::InClosedWater>(mark.cautions), mark.name == "Reeds");
        const WaterPoint cell =
            made().ground.depth.frame().centre(made().ground.depth.frame().cellOf(mark.place));
        EXPECT_EQ(support::holds<marks::GuessedHere>(mark.cautions), PlannedWater::isGuess(cell));
        EXPECT_TRUE(mark.name != "South" || PlannedWater::isGuess(cell));
        EXPECT_EQ(support::holds<marks::RoomForRods>(mark.cautions), mark.spread.rods.size() < 4);
    }
}

} // namespace
