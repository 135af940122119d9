// SPDX-License-Identifier: GPL-3.0-or-later
// A day whose wind turns: each stay by the wind of its hours.
#include "core/marks/winds_of_day.h"
#include "core/water/steps/day_waves.h"
#include "core/water/steps/plan_day.h"
#include "core/water/steps/stay_winds.h"
#include "tests/support/given.h"
#include "tests/support/holding.h"
#include "tests/support/planned_water.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace {

using marks::FactorKind;
using std::chrono::hours;
using support::given;
using support::PlannedWater;
using units::Bearing;
using units::Speed;

const logbook::Wind fromEast{Bearing::degrees(120.0), Speed::metresPerSecond(7.0)};
const logbook::Wind fromWest{Bearing::degrees(300.0), Speed::metresPerSecond(5.0)};

/// The plane from 9:00 to 17:30 without own marks, its wind turning at 13:00.
PlannedWater turning(const logbook::Wind& later = fromWest) {
    PlannedWater made;
    made.water.pinnedMarks.clear();
    made.water.plan.day.windLater = marks::LaterWind{hours(13), later};
    return made;
}

water::PlannedDay planOf(const PlannedWater& made) {
    base::Progress quiet;
    return water::planDay(made.water, made.derived, made.water.plan, quiet).value();
}

units::Moment at(const PlannedWater& made, std::chrono::seconds hour) {
    return made.water.clock.at(made.water.plan.day.day, hour);
}

const marks::Mark& markOf(const water::PlannedDay& day, int rank) {
    return *std::ranges::find(day.marks, rank, &marks::Mark::rank);
}

const marks::Factor& factorOf(const marks::Mark& mark, FactorKind kind) {
    return *std::ranges::find(mark.factors, kind, &marks::Factor::kind);
}

bool isBowTo(const marks::Mark& mark, const logbook::Wind& wind) {
    const double away_deg = mark.anchors.offTheWind_deg;
    return mark.anchors.lie.heading.angleTo_deg(given(wind.from).turnedBy(away_deg)) < 1e-6;
}

double height_m(const PlannedWater& made, const marks::Mark& mark, const logbook::Wind& wind) {
    grid::DepthGrid today(made.ground.depth.frame());
    for (std::size_t i = 0; i < made.ground.depth.frame().size(); ++i) {
        const geo::WaterPoint p =
            made.ground.depth.frame().centre(made.ground.depth.frame().cellAt(i));
        const double today_m = std::max(PlannedWater::chartDepth_m(p), 0.0) + PlannedWater::level_m;
        if (made.ground.depth.has(i) && today_m > 0.0) {
            today.set(i, units::Depth::metres(today_m));
        }
    }
    return given(water::exposureAt(made.ground.outline, today, mark.place, wind).waves)
        .height.inMetres();
}

TEST(TwoWinds, EachStayHasRopesAndWavesOfTheWindOfItsHours) {
    const PlannedWater made = turning();
    const water::PlannedDay day = planOf(made);
    int before = 0;
    int after = 0;
    for (const marks::DayStop& stop : day.day.stops) {
        const marks::Mark& mark = markOf(day, stop.rank);
        if (stop.leave <= at(made, hours(13))) {
            ++before;
            EXPECT_TRUE(isBowTo(mark, fromEast)) << stop.rank;
            EXPECT_NEAR(given(mark.waveHeight).inMetres(), height_m(made, mark, fromEast), 1e-4);
            EXPECT_FALSE(support::holds<marks::WindTurnsHere>(mark.cautions));
        } else if (stop.arrive >= at(made, hours(13))) {
            ++after;
            EXPECT_TRUE(isBowTo(mark, fromWest)) << stop.rank;
            EXPECT_NEAR(given(mark.waveHeight).inMetres(), height_m(made, mark, fromWest), 1e-4);
            EXPECT_FALSE(support::holds<marks::WindTurnsHere>(mark.cautions));
            for (const rods::RodPlace& rod : mark.spread.rods) {
                EXPECT_NEAR(geo::distance_m(rod.place, mark.anchors.lie.centre),
                            rod.distance.inMetres(), made.water.plan.tackle.boatLength.inMetres());
            }
        }
    }
    EXPECT_GT(before, 0);
    EXPECT_GT(after, 0);
}

TEST(TwoWinds, AStayThatTheTurnFallsIntoIsToldSoAndLaidForTheLongerPartOfIt) {
    for (const bool isEarly : {true, false}) {
        PlannedWater made = turning();
        // One mark for the whole day: 9:00 to 17:30 but for the way to it.
        made.water.plan.count = 1;
        const auto turn = isEarly ? hours(10) : hours(16);
        made.water.plan.day.windLater->at = turn;
        const water::PlannedDay day = planOf(made);
        ASSERT_EQ(day.day.stops.size(), 1U);
        const marks::Mark& mark = day.marks[0];
        EXPECT_TRUE(isBowTo(mark, isEarly ? fromWest : fromEast));
        EXPECT_EQ(
            std::ranges::count(mark.cautions, marks::Caution(marks::WindTurnsHere{turn, isEarly})),
            1);
        EXPECT_NEAR(given(mark.waveHeight).inMetres(),
                    std::max(height_m(made, mark, fromEast), height_m(made, mark, fromWest)), 1e-4)
            << "the higher of both";
    }
}

TEST(TwoWinds, FactorsAreTheMeanOfBothByTheirHours) {
    const PlannedWater made = turning();
    const water::PlannedDay day = planOf(made);
    // 9:00 to 13:00 of 9:00 to 17:30.
    const double before = 4.0 / 8.5;
    PlannedWater first = made;
    first.water.plan.day.windLater.reset();
    PlannedWater last = first;
    last.water.plan.day.wind = fromWest;
    for (const marks::Mark& mark : day.marks) {
        const auto shelter = [&](const logbook::Wind& wind) {
            return marks::waveValue(units::Length::metres(height_m(made, mark, wind)), 1.3 / 1.7);
        };
        EXPECT_NEAR(factorOf(mark, FactorKind::shelter).value,
                    before * shelter(fromEast) + (1.0 - before) * shelter(fromWest), 1e-4);
        const auto& because = factorOf(mark, FactorKind::windward).because;
        const auto& both = std::get<marks::InTwoWinds>(because);
        EXPECT_EQ(both.turn, hours(13));
        // The bottom rises to the west: the easterly blows up it, the westerly down.
        EXPECT_EQ(std::get<marks::WindOnSlope>(both.before).way, marks::WindOnSlope::Way::up);
        EXPECT_EQ(std::get<marks::WindOnSlope>(both.after).way, marks::WindOnSlope::Way::down);
    }
}

TEST(TwoWinds, OneThatBlowsOutsideTheHoursChangesNothing) {
    const PlannedWater plain = [] {
        PlannedWater made = turning();
        made.water.plan.day.windLater.reset();
        return made;
    }();
    PlannedWater late = turning();
    late.water.plan.day.windLater->at = hours(18);
    const water::PlannedDay a = planOf(plain);
    const water::PlannedDay b = planOf(late);
    ASSERT_EQ(a.marks.size(), b.marks.size());
    for (std::size_t k = 0; k < a.marks.size(); ++k) {
        EXPECT_EQ(a.marks[k].place, b.marks[k].place);
        EXPECT_EQ(a.marks[k].anchors, b.marks[k].anchors);
        EXPECT_EQ(a.marks[k].score, b.marks[k].score);
        EXPECT_EQ(b.marks[k].later.has_value(), false);
    }
}

TEST(TwoWinds, NoStayReachesIntoHoursThatAreTooRoughForIt) {
    // A gale from the east in the afternoon: the deep west lies open to it.
    const PlannedWater made = turning({Bearing::degrees(90.0), Speed::metresPerSecond(40.0)});
    const water::PlannedDay day = planOf(made);
    EXPECT_TRUE(water::roughStays(day, day.day, made.water.clock).empty());
    for (const marks::DayStop& stop : day.day.stops) {
        EXPECT_LE(given(markOf(day, stop.rank).waveHeight).inMetres(), 0.35) << stop.rank;
    }
    const auto isRoughLater = [](const marks::Mark& mark) {
        return given(given(mark.later).waves).height.inMetres() > 0.35;
    };
    EXPECT_GT(std::ranges::count_if(day.marks, isRoughLater), 0) << "else nothing is asked here";
    for (const int rank : day.day.tooRough) {
        EXPECT_EQ(std::ranges::count(day.day.leftOut, rank), 1);
        EXPECT_TRUE(isRoughLater(markOf(day, rank)));
    }
    EXPECT_TRUE(support::holds<water::StayAshore>(day.cautions)) << "the strongest of both";
}

TEST(TwoWinds, AnUnknownAfternoonIsSaidAndTheMorningCounted) {
    const PlannedWater made = turning(logbook::Wind());
    const water::PlannedDay day = planOf(made);
    EXPECT_TRUE(support::holds<water::WavesNotCounted>(day.basis));
    EXPECT_TRUE(support::holds<water::WindNotSaid>(day.cautions));
    for (const marks::DayStop& stop : day.day.stops) {
        const marks::Mark& mark = markOf(day, stop.rank);
        const bool isMorning = stop.leave <= at(made, hours(13));
        EXPECT_EQ(mark.waveHeight.has_value(), isMorning) << "nor where only a part is known";
    }
}

} // namespace
