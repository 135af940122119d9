// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/closed_cells.h"
#include "core/water/steps/day_ways.h"
#include "core/water/steps/plan_day.h"
#include "tests/support/given.h"
#include "tests/support/planned_water.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using support::given;
using support::PlannedWater;
using support::rectangle;

/// The plane with a wall of closed water from the south bank that leaves 60 m in the north.
class DayWays : public testing::Test {
protected:
    DayWays() { close(rectangle(-1, -201, 1, 140)); }

    void close(const geo::Ring& ring) {
        made_.water.houseRules.closed = {
            {"Reserve", {geo::toEarth(geo::Piece{ring, {}}, made_.ground.frame)}}};
        open_ =
            water::openWaterOf(made_.ground.depth,
                               water::closedCells(made_.water, made_.ground.depth.frame()).value());
    }

    /// The day over these places in their order, ranks from 1.
    [[nodiscard]] marks::DayPlan dayOver(const std::vector<WaterPoint>& places,
                                         std::optional<WaterPoint> launch) const {
        std::vector<marks::Mark> marks;
        marks::DayPlan day;
        for (const WaterPoint place : places) {
            marks::Mark mark;
            mark.rank = static_cast<int>(marks.size()) + 1;
            mark.place = place;
            marks.push_back(mark);
            day.stops.push_back({mark.rank, {}, {}, {}, {}});
        }
        water::layWays(day, marks, open_, launch);
        return day;
    }

    [[nodiscard]] bool isOpenAllAlong(const geo::Path& way) const {
        for (const WaterPoint p : geo::densified(way, 0.5)) {
            if (!open_.has(open_.frame().cellOf(p))) {
                return false;
            }
        }
        return true;
    }

    PlannedWater made_;
    grid::DepthGrid open_;
};

TEST_F(DayWays, LeadFromTheLaunchOverEachStopAndHomeThroughOpenWaterOnly) {
    const WaterPoint launch{-150, -100};
    const std::vector<WaterPoint> places{{-100, 0}, {100, 0}, {100, -150}};
    const marks::DayPlan day = dayOver(places, launch);
    EXPECT_EQ(day.stops[0].way, (geo::Path{launch, places[0]})) << "straight where it is open";
    EXPECT_EQ(day.stops[2].way, (geo::Path{places[1], places[2]}));
    const geo::Path& round = day.stops[1].way;
    ASSERT_GE(round.size(), 3U);
    EXPECT_EQ(round.front(), places[0]);
    EXPECT_EQ(round.back(), places[1]);
    EXPECT_TRUE(isOpenAllAlong(round));
    // Cells of 4 m are closed as far as the wall reaches into them.
    const double shortest_m = 2.0 * std::hypot(96.0, 144.0) + 8.0;
    EXPECT_NEAR(geo::lengthOf(round).inMetres(), shortest_m, 0.02 * shortest_m);
    ASSERT_GE(day.wayHome.size(), 3U);
    EXPECT_EQ(day.wayHome.front(), places[2]);
    EXPECT_EQ(day.wayHome.back(), launch);
    EXPECT_TRUE(isOpenAllAlong(day.wayHome));
}

TEST_F(DayWays, HaveNoLegWhereTheWaterIsShut) {
    close(rectangle(-0.4, -201, 0.4, 201));
    const marks::DayPlan day = dayOver({{-100, 0}, {100, 0}, {120, 50}}, WaterPoint{-150, 0});
    EXPECT_FALSE(day.stops[0].way.empty());
    EXPECT_TRUE(day.stops[1].way.empty());
    EXPECT_EQ(day.stops[2].way.size(), 2U) << "the legs beyond are there";
    EXPECT_TRUE(day.wayHome.empty());
}

TEST_F(DayWays, LeaveALaunchOnTheBankAndBeginAtTheFirstStopWithoutOne) {
    const WaterPoint bank{-310, 0};
    const marks::DayPlan day = dayOver({{-100, 0}}, bank);
    ASSERT_GE(day.stops[0].way.size(), 3U);
    EXPECT_EQ(day.stops[0].way.front(), bank);
    EXPECT_EQ(day.wayHome.back(), bank);
    const marks::DayPlan without = dayOver({{-100, 0}, {-50, 0}}, std::nullopt);
    EXPECT_TRUE(without.stops[0].way.empty());
    EXPECT_EQ(without.stops[1].way.size(), 2U);
    EXPECT_TRUE(without.wayHome.empty());
}

TEST_F(DayWays, AreEmptyForADayOfNoStopsOrAMarkThatIsNotThere) {
    EXPECT_TRUE(dayOver({}, WaterPoint{0, 0}).wayHome.empty());
    marks::DayPlan day;
    day.stops = {{7, {}, {}, {}, {}}};
    water::layWays(day, {}, open_, WaterPoint{-100, 0});
    EXPECT_TRUE(day.stops[0].way.empty());
    EXPECT_TRUE(day.wayHome.empty());
}

TEST_F(DayWays, OfAPlannedDayAreAsLongAsItsMoves) {
    base::Progress quiet;
    const auto day = water::planDay(made_.water, made_.derived, made_.water.plan, quiet).value();
    ASSERT_FALSE(day.day.stops.empty());
    ASSERT_TRUE(made_.water.plan.launch);
    for (const marks::DayStop& stop : day.day.stops) {
        const double move_m = stop.move.inMetres();
        // Moves are counted on cells of 5 m: within 2 % and a cell at each end.
        EXPECT_NEAR(geo::lengthOf(stop.way).inMetres(), move_m, 0.02 * move_m + 10.0) << stop.rank;
    }
    EXPECT_EQ(day.day.wayHome.back(), made_.ground.frame.toWater(given(made_.water.plan.launch)));
}

} // namespace
