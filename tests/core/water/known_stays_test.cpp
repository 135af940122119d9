// SPDX-License-Identifier: GPL-3.0-or-later
// One boat is in one place at a time: what of a log and a new stay are one stay, which of the two
// is wrong, and what becomes of what they say.
#include "core/water/steps/known_stays.h"
#include "tests/support/full_water.h"

#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using logbook::Stay;
using water::StayStanding;
using Is = water::StayStanding::Is;

const units::Moment morning = support::fullWaterMorning();

/// From so many minutes after the morning to so many, at a distance to the north.
Stay stayAt(int from_min, int to_min, double north_m = 0.0) {
    Stay stay;
    stay.start = morning + std::chrono::minutes(from_min);
    stay.end = morning + std::chrono::minutes(to_min);
    stay.place = {3.1, 55.2 + north_m / 111'300.0};
    return stay;
}

/// A log of one stay from the morning's 120th to its 240th minute. A cast is 30 m.
water::Water oneStay() {
    water::Water water = support::fullWater();
    water.plan.tackle.cast = units::Length::metres(30.0);
    Stay stay = stayAt(120, 240);
    stay.id = logbook::StayId(7);
    water.log = {stay};
    return water;
}

Is standingOf(const Stay& stay) {
    const water::Water water = oneStay();
    return water::KnownStays(water).standingOf(stay).is;
}

TEST(KnownStays, AreToldByTimeAndPlace) {
    EXPECT_EQ(standingOf(stayAt(120, 240)), Is::known);
    EXPECT_EQ(standingOf(stayAt(125, 230, 20.0)), Is::update) << "noted otherwise";
    EXPECT_EQ(standingOf(stayAt(0, 120)), Is::fresh) << "before";
    EXPECT_EQ(standingOf(stayAt(240, 300)), Is::fresh) << "after";
    EXPECT_EQ(standingOf(stayAt(120, 240, 40.0)), Is::doubtful) << "beyond a cast";
    EXPECT_EQ(standingOf(stayAt(130, 140, 500.0)), Is::doubtful) << "elsewhere within it";
}

TEST(KnownStays, OverlapByHalfOfTheShorterOrAreNotTheSame) {
    EXPECT_EQ(standingOf(stayAt(60, 180)), Is::update) << "60 of 120 minutes";
    EXPECT_EQ(standingOf(stayAt(60, 179)), Is::doubtful) << "59 of 119";
    EXPECT_EQ(standingOf(stayAt(60, 150)), Is::doubtful) << "30 of 90";
    EXPECT_EQ(standingOf(stayAt(60, 136, 500.0)), Is::doubtful) << "over a quarter of an hour";
    EXPECT_EQ(standingOf(stayAt(60, 135, 500.0)), Is::fresh) << "times are noted roughly";
    EXPECT_EQ(standingOf(stayAt(60, 135)), Is::fresh);
}

TEST(KnownStays, MeetNoneThatIsLongerThanADay) {
    EXPECT_EQ(standingOf(stayAt(0, 24 * 60)), Is::update);
    EXPECT_EQ(standingOf(stayAt(0, 24 * 60 + 1)), Is::fresh) << "that is a slip of its own";
    water::Water water = oneStay();
    water.log.edit(0).end = morning + 76h * 24;
    EXPECT_EQ(water::KnownStays(water).standingOf(stayAt(600, 700)).is, Is::fresh);
}

TEST(KnownStays, PreferTheOneAtTheSamePlace) {
    water::Water water = oneStay();
    Stay elsewhere = stayAt(110, 200, 400.0);
    elsewhere.id = logbook::StayId(3);
    water.log = {elsewhere, water.log[0]};
    const StayStanding standing = water::KnownStays(water).standingOf(stayAt(120, 240));
    EXPECT_EQ(standing.is, Is::known);
    EXPECT_EQ(standing.of, logbook::StayId(7));
}

TEST(KnownStays, KnowWhatWasTakenMeanwhile) {
    const water::Water water = oneStay();
    water::KnownStays known(water);
    Stay fresh = stayAt(300, 400);
    fresh.id = logbook::StayId(50);
    known.take(fresh);
    EXPECT_EQ(known.standingOf(stayAt(300, 400)).of, logbook::StayId(50));
    fresh.rods = 3;
    known.take(fresh);
    EXPECT_EQ(known.find(logbook::StayId(50))->rods, 3) << "another in its place";
    Stay ofLog = water.log[0];
    ofLog.bait = "worm";
    known.take(ofLog);
    EXPECT_EQ(known.find(logbook::StayId(7))->bait, "worm");
    Stay same = stayAt(120, 240);
    same.bait = "worm";
    EXPECT_EQ(known.standingOf(same).is, Is::known);
    EXPECT_EQ(known.find(logbook::StayId(99)), nullptr);
}

TEST(KnownStays, AreFoundInAWaterWithoutAFrameToo) {
    water::Water water = oneStay();
    water.frame.reset();
    const water::KnownStays known(water);
    EXPECT_EQ(known.standingOf(stayAt(120, 240, 20.0)).is, Is::update);
    EXPECT_EQ(known.standingOf(stayAt(120, 240, 40.0)).is, Is::doubtful);
}

TEST(UpdatedBy, WhatIsSaidGoesFirstAndWhatIsLeftOpenStays) {
    const Stay known = support::fullStay();
    EXPECT_EQ(water::updatedBy(known, known), known);
    Stay more;
    more.start = known.start - 5min;
    more.end = known.end;
    more.place = known.place;
    more.rods = 4;
    more.conditions.windSpeed = units::Speed::metresPerSecond(9.0);
    more.note = "gusts";
    Stay expected = known;
    expected.start = more.start;
    expected.rods = 4;
    expected.conditions.windSpeed = more.conditions.windSpeed;
    expected.note = "calm; gusts";
    EXPECT_EQ(water::updatedBy(known, more), expected);
    EXPECT_EQ(water::updatedBy(expected, more), expected) << "said twice is said once";
}

TEST(UpdatedBy, AFishOfOneMinuteIsOneFish) {
    const Stay known = support::fullStay(); // a bream in the 40th minute
    Stay more = known;
    more.runs[0].time += 59s;
    more.runs[0].species.clear();
    more.runs[0].weight = units::Weight::pounds(6.0);
    Stay updated = water::updatedBy(known, more);
    ASSERT_EQ(updated.runs.size(), 1U);
    EXPECT_EQ(updated.runs[0].id, known.runs[0].id);
    EXPECT_EQ(updated.runs[0].species, "bream");
    EXPECT_EQ(updated.runs[0].weight, units::Weight::pounds(6.0));
    for (const auto& another :
         {+[](logbook::Fish& f) { f.time += 60s; }, +[](logbook::Fish& f) { f.species = "tench"; },
          +[](logbook::Fish& f) { f.landed = false; }}) {
        more = known;
        another(more.runs[0]);
        updated = water::updatedBy(known, more);
        ASSERT_EQ(updated.runs.size(), 2U);
        EXPECT_FALSE(updated.runs[0].id.isGiven() && updated.runs[1].id.isGiven());
    }
    more.runs = {known.runs[0], known.runs[0]};
    EXPECT_EQ(water::updatedBy(known, more).runs.size(), 2U) << "two in one minute are two";
}

TEST(UpdatedBy, AFishStaysInItsStayWhateverTheTimesAreRoundedTo) {
    const Stay known = support::fullStay();
    Stay more = known;
    more.runs.clear();
    more.start = known.runs[0].time + 5min;
    EXPECT_EQ(water::updatedBy(known, more).start, known.runs[0].time);
}

} // namespace
