// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/closed_cells.h"
#include "core/water/steps/day_distances.h"
#include "core/water/steps/plan_day.h"
#include "core/water/steps/propose_trip.h"
#include "tests/support/given.h"
#include "tests/support/holding.h"
#include "tests/support/planned_water.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using support::given;
using support::PlannedWater;
using support::rectangle;
using units::Length;

geo::LonLatPiece pieceOf(const PlannedWater& made, const geo::Ring& outer,
                         const std::vector<geo::Ring>& islands = {}) {
    return geo::toEarth(geo::Piece{outer, islands}, made.ground.frame);
}

void close(PlannedWater& made, std::vector<geo::LonLatPiece> pieces) {
    made.water.houseRules.closed = {{"Reserve", std::move(pieces)}};
}

TEST(ClosedCells, AreAllThatAnyPieceReachesIntoAndNotItsIslands) {
    // Borders lie off the borders of cells of 4 m, so that which cells are touched is plain.
    PlannedWater made;
    close(made, {pieceOf(made, rectangle(-101, -101, -49, -49), {rectangle(-91, -91, -59, -59)}),
                 pieceOf(made, rectangle(11, 21, 53, 39))});
    made.water.houseRules.closed.push_back(
        {"Line", {pieceOf(made, rectangle(101.2, -150, 101.9, 150))}});
    const auto closed = water::closedCells(made.water, made.ground.depth.frame()).value();
    const grid::GridFrame& frame = closed.frame();
    for (std::size_t i = 0; i < closed.size(); ++i) {
        const WaterPoint p = frame.centre(frame.cellAt(i));
        const auto touches = [&p](double west, double south, double east, double north) {
            return p.x_m + 2.0 > west && p.x_m - 2.0 < east && p.y_m + 2.0 > south &&
                   p.y_m - 2.0 < north;
        };
        const bool inOpenMiddle =
            p.x_m - 2.0 > -91 && p.x_m + 2.0 < -59 && p.y_m - 2.0 > -91 && p.y_m + 2.0 < -59;
        const bool expected = (touches(-101, -101, -49, -49) && !inOpenMiddle) ||
                              touches(11, 21, 53, 39) || touches(101.2, -150, 101.9, 150);
        EXPECT_EQ(closed[i] != 0, expected) << p.x_m << ' ' << p.y_m;
    }
}

TEST(ClosedCells, AreNoneWithoutClosedWater) {
    PlannedWater made;
    made.water.houseRules.closed.clear();
    const auto closed = water::closedCells(made.water, made.ground.depth.frame()).value();
    EXPECT_EQ(std::ranges::count(closed.values(), 0), static_cast<long>(closed.size()));
}

TEST(ClosedCells, TellWhichClosedWaterCrossesItself) {
    PlannedWater made;
    close(made, {pieceOf(made, {{0, 0}, {100, 100}, {100, 0}, {0, 100}})});
    const auto closed = water::closedCells(made.water, made.ground.depth.frame());
    ASSERT_FALSE(closed);
    EXPECT_EQ(closed.error().kind, base::ErrorKind::unusableInput);
    EXPECT_TRUE(closed.error().where.starts_with("closed water Reserve, longitude"))
        << closed.error().where;
    base::Progress quiet;
    EXPECT_EQ(water::planDay(made.water, made.derived, made.water.plan, quiet).error().what,
              closed.error().what);
}

/// Ways on the plane with a wall of closed water from the south bank that leaves 60 m in the north.
class WaysRoundClosedWater : public testing::Test {
protected:
    WaysRoundClosedWater() { close(made_, {pieceOf(made_, rectangle(-1, -201, 1, 140))}); }
    [[nodiscard]] water::DayDistances ways(const std::vector<WaterPoint>& places,
                                           std::optional<WaterPoint> launch) const {
        return water::dayDistances(made_.water, made_.ground.outline, places, launch).value();
    }
    PlannedWater made_;
};

TEST_F(WaysRoundClosedWater, LeadRoundIt) {
    const auto ways = this->ways({{-100, 0}, {100, 0}, {-100, 180}}, WaterPoint{100, -198});
    // Cells of 5 m are closed as far as the wall reaches into them.
    const double round_m = 2.0 * std::hypot(95.0, 145.0) + 10.0;
    EXPECT_NEAR(ways.between_m[0][1], round_m, 0.03 * round_m + 5.0);
    EXPECT_EQ(ways.between_m[0][1], ways.between_m[1][0]);
    EXPECT_NEAR(ways.between_m[0][2], 180.0, 0.02 * 180.0 + 5.0) << "straight where it is open";
    EXPECT_EQ(ways.between_m[1][1], 0.0);
    ASSERT_EQ(ways.fromLaunch_m.size(), 3U);
    EXPECT_NEAR(ways.fromLaunch_m[1], 198.0, 0.02 * 198.0 + 5.0);
    EXPECT_GT(ways.fromLaunch_m[0], std::hypot(95.0, 338.0) + std::hypot(95.0, 140.0));
    EXPECT_TRUE(this->ways({{-100, 0}}, std::nullopt).fromLaunch_m.empty());
}

TEST_F(WaysRoundClosedWater, AreNoneWhereItShutsTheWater) {
    close(made_, {pieceOf(made_, rectangle(-0.4, -201, 0.4, 201))});
    const auto ways = this->ways({{-100, 0}, {100, 0}}, WaterPoint{-300, 0});
    EXPECT_TRUE(std::isinf(ways.between_m[0][1]))
        << "narrower than a cell, and closed all the same";
    EXPECT_TRUE(std::isfinite(ways.fromLaunch_m[0]));
    EXPECT_TRUE(std::isinf(ways.fromLaunch_m[1]));
}

TEST_F(WaysRoundClosedWater, CountFromTheNearestOpenWaterForAPlaceInClosedWater) {
    const auto ways = this->ways({{0.2, 0}, {100, 0}}, WaterPoint{-310, 0});
    EXPECT_TRUE(std::isfinite(ways.between_m[0][1]));
    EXPECT_TRUE(std::isfinite(ways.fromLaunch_m[0])) << "a launch on the bank";
    close(made_, {pieceOf(made_, rectangle(-400, -300, 400, 300))});
    EXPECT_TRUE(std::isinf(this->ways({{0, 0}, {9, 9}}, WaterPoint{0, 0}).fromLaunch_m[0]));
}

TEST_F(WaysRoundClosedWater, LeaveMarksOutOfTheDayThatCannotBeReached) {
    close(made_, {pieceOf(made_, rectangle(99, -201, 101, 201))});
    made_.water.houseRules.closed.push_back({"Bay", {pieceOf(made_, rectangle(-301, 0, 40, 201))}});
    made_.water.plan.launch = made_.onEarth({-200.0, -190.0});
    made_.water.pinnedMarks = {{"Beyond", made_.onEarth({115.0, -50.0})}};
    base::Progress quiet;
    const auto day = water::planDay(made_.water, made_.derived, made_.water.plan, quiet).value();
    std::vector<int> beyond;
    for (const marks::Mark& mark : day.marks) {
        if (mark.place.x_m > 99.0) {
            beyond.push_back(mark.rank);
        }
    }
    EXPECT_FALSE(beyond.empty()) << "the user's own mark lies there";
    EXPECT_EQ(day.day.leftOut, beyond);
}

bool isNearClosed(WaterPoint p, double room_m) {
    for (int turn = 0; turn < 72; ++turn) {
        for (double off_m = 0.0; off_m <= room_m; off_m += 0.25) {
            if (PlannedWater::isClosed(
                    geo::moved(p, units::Bearing::degrees(5.0 * turn), Length::metres(off_m)))) {
                return true;
            }
        }
    }
    return false;
}

void expectOpenAlong(WaterPoint a, WaterPoint b, const std::string& what) {
    for (const WaterPoint p : geo::densified({a, b}, 0.2)) {
        ASSERT_FALSE(PlannedWater::isClosed(p)) << what << " at " << p.x_m << ' ' << p.y_m;
    }
}

void expectOutOfClosedWater(const marks::Mark& mark) {
    EXPECT_FALSE(isNearClosed(mark.place, 4.5)) << "the boat's swing";
    expectOpenAlong(anchoring::bowOf(mark.anchors.lie, Length::metres(4.5)), mark.anchors.bow.place,
                    "the bow rope");
    expectOpenAlong(mark.place, mark.anchors.stern->place, "the boat and its stern rope");
    for (const rods::RodPlace& rod : mark.spread.rods) {
        expectOpenAlong(mark.place, rod.place, "a line");
    }
}

TEST(ClosedWater, HoldsNoPartOfThePlanWhateverTheWind) {
    PlannedWater made;
    made.water.pinnedMarks.clear();
    // The user's own marks all round what is closed: they are planned on wherever anchors hold.
    for (double x_m = -171.0; x_m < 10.0; x_m += 13.0) {
        for (double y_m = -60.0; y_m < 170.0; y_m += 17.0) {
            if (!isNearClosed({x_m, y_m}, 6.0) && isNearClosed({x_m, y_m}, 25.0)) {
                made.water.pinnedMarks.push_back({"Own", made.onEarth({x_m, y_m})});
            }
        }
    }
    int beside = 0;
    for (const double from_deg : {15.0, 120.0, 265.0}) {
        made.water.plan.day.wind.from = units::Bearing::degrees(from_deg);
        base::Progress quiet;
        const auto day = water::planDay(made.water, made.derived, made.water.plan, quiet).value();
        for (const marks::Mark& mark : day.marks) {
            expectOutOfClosedWater(mark);
            beside += isNearClosed(mark.place, 20.0) ? 1 : 0;
        }
    }
    EXPECT_GT(beside, 60) << "marks that closed water is near enough to matter to";
}

TEST(ClosedWater, LeavesAMarkInTheOpenMiddleOfAClosedPieceAlone) {
    PlannedWater made;
    made.water.pinnedMarks = {{"Middle", made.onEarth({-100.0, 100.0})}};
    made.water.plan.tackle.bowRope = Length::metres(11.0);
    made.water.plan.tackle.scope = 2.0;
    base::Progress quiet;
    const auto day = water::planDay(made.water, made.derived, made.water.plan, quiet).value();
    const auto mark = std::ranges::find(day.marks, "Middle", &marks::Mark::name);
    ASSERT_NE(mark, day.marks.end());
    EXPECT_FALSE(support::holds<marks::InClosedWater>(mark->cautions));
    expectOutOfClosedWater(*mark);
    EXPECT_FALSE(mark->spread.rods.empty());
}

TEST(ClosedWater, RefusesAMarkOfTheUsersWhereTheAnchorsWouldLieInIt) {
    PlannedWater made;
    made.water.pinnedMarks = {{"Corner", made.onEarth({-80.0, 80.0})}};
    base::Progress quiet;
    const auto day = water::planDay(made.water, made.derived, made.water.plan, quiet).value();
    ASSERT_EQ(day.refused.size(), 1U);
    EXPECT_EQ(day.refused.front().name, "Corner");
    EXPECT_EQ(day.refused.front().why.what, "there is no room here for two anchors in this wind");
}

/// Where to sound next on the plane, of which the far east has been sounded.
class TripPastClosedWater : public testing::Test {
protected:
    [[nodiscard]] base::Result<surface::SurveyTrip> trip(int minutes = 90) {
        base::Progress quiet;
        return water::proposeTrip(made_.water, made_.derived, std::chrono::minutes(minutes), quiet);
    }
    PlannedWater made_;
};

TEST_F(TripPastClosedWater, SailsThroughNoneOfItHoweverNarrow) {
    close(made_, {pieceOf(made_, rectangle(-0.3, -201, 0.3, 150)),
                  pieceOf(made_, rectangle(-150.4, -120, -149.9, 201))});
    const auto isShut = [](WaterPoint p) {
        return (std::fabs(p.x_m) <= 0.3 && p.y_m <= 150.0) ||
               (p.x_m >= -150.4 && p.x_m <= -149.9 && p.y_m >= -120.0);
    };
    const auto trip = this->trip();
    ASSERT_TRUE(trip) << trip.error().sentence();
    ASSERT_GE(trip->lines.size(), 3U);
    bool isPast = false;
    for (const WaterPoint p : geo::densified(trip->route, 0.2)) {
        EXPECT_FALSE(isShut(p)) << p.x_m << ' ' << p.y_m;
        isPast = isPast || p.x_m > 10.0;
    }
    EXPECT_TRUE(isPast) << "round both of them";
    for (const surface::SurveyLine& line : trip->lines) {
        for (const WaterPoint p : geo::densified({line.start, line.end}, 0.2)) {
            EXPECT_FALSE(isShut(p)) << p.x_m << ' ' << p.y_m;
        }
    }
}

TEST_F(TripPastClosedWater, SoundsNothingThatItShutsOff) {
    close(made_, {pieceOf(made_, rectangle(49.7, -201, 50.3, 201))});
    const auto trip = this->trip();
    ASSERT_TRUE(trip) << trip.error().sentence();
    for (const WaterPoint p : trip->route) {
        EXPECT_LT(p.x_m, 49.7);
    }
}

TEST_F(TripPastClosedWater, StartsAtTheLaunchAndTakesThePlansSpeedAndTime) {
    made_.water.houseRules.closed.clear();
    const auto trip = this->trip(40);
    ASSERT_TRUE(trip) << trip.error().sentence();
    EXPECT_LT(geo::distance_m(trip->route.front(), {-250.0, 190.0}), 1e-3);
    EXPECT_LT(geo::distance_m(trip->route.back(), {-250.0, 190.0}), 1e-3);
    EXPECT_LE(trip->duration, std::chrono::minutes(40));
    EXPECT_NEAR(static_cast<double>(trip->duration.count()), trip->distance.inMetres() / 1.2, 1.0);
    for (const surface::SurveyLine& line : trip->lines) {
        EXPECT_GE(line.length.inMetres(), 0.24 * std::sqrt(600.0 * 400.0));
    }
    made_.water.plan.launch.reset();
    // Without a launch, from the shore nearest to the middle: of corners alone, the first of four.
    const auto free = this->trip(40);
    ASSERT_TRUE(free);
    EXPECT_NEAR(geo::distance_m(free->route.front(), {0, 0}), std::hypot(300.0, 200.0), 1e-6);
    made_.derived.drawn.reset();
    EXPECT_EQ(this->trip().error().kind, base::ErrorKind::wrongUse);
}

TEST_F(TripPastClosedWater, TakesShortLinesWhereLittleTimeLeavesNoOther) {
    made_.water.houseRules.closed.clear();
    // 150 m in all, by a shore that is a guess: no room for a quarter of the water's side.
    made_.water.plan.launch = made_.onEarth({-240.0, -170.0});
    made_.water.plan.tackle.boatSpeed = units::Speed::metresPerSecond(0.5);
    const auto trip = this->trip(5);
    ASSERT_TRUE(trip) << trip.error().sentence();
    EXPECT_GE(trip->lines.front().length.inMetres(), 59.0);
    EXPECT_LT(trip->lines.front().length.inMetres(), 120.0);
}

} // namespace
