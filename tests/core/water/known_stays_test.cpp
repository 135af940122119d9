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
    *more.runs[0].time += 59s;
    more.runs[0].species.clear();
    more.runs[0].weight = units::Weight::pounds(6.0);
    Stay updated = water::updatedBy(known, more);
    ASSERT_EQ(updated.runs.size(), 1U);
    EXPECT_EQ(updated.runs[0].id, known.runs[0].id);
    EXPECT_EQ(updated.runs[0].species, "bream");
    EXPECT_EQ(updated.runs[0].weight, units::Weight::pounds(6.0));
    for (const auto& another :
         {+[](logbook::Fish& f) { *f.time += 60s; }, +[](logbook::Fish& f) { f.species = "tench"; },
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
    more.start = *known.runs[0].time + 5min;
    EXPECT_EQ(water::updatedBy(known, more).start, known.runs[0].time);
}

TEST(UpdatedBy, AFishWithoutATimeIsOneThatCanBeTheSame) {
    const Stay known = support::fullStay(); // a bream of 5 lb and half a metre
    Stay more = known;
    more.runs[0].time.reset();
    more.runs[0].note.clear();
    EXPECT_EQ(water::updatedBy(known, more), known) << "nor is its time lost";
    more.runs[0].weight = units::Weight::pounds(6.0);
    EXPECT_EQ(water::updatedBy(known, more).runs.size(), 2U);
}

TEST(UpdatedBy, NoNewFieldIsLostOnEitherSide) {
    Stay bare = support::fullStay();
    const Stay full = bare;
    bare.conditions.level.reset();
    bare.conditions.sky.clear();
    bare.who.clear();
    bare.baitPlace.reset();
    bare.photograph.clear();
    bare.others.clear();
    bare.runs[0].who.clear();
    bare.runs[0].hooked.clear();
    bare.runs[0].returned.reset();
    bare.runs[0].baitPlace.reset();
    bare.runs[0].photograph.clear();
    bare.runs[0].others.clear();
    EXPECT_EQ(water::updatedBy(bare, full), full);
    EXPECT_EQ(water::updatedBy(full, bare), full);
    bare.others = {{"air", "cold"}, {"moon", "new"}};
    const std::vector<logbook::OtherField> both{{"air", "cold"}, {"moon", "new"}};
    EXPECT_EQ(water::updatedBy(full, bare).others, both) << "by column, the later word counts";
}

/// The log's stay is Anna's, of two rods, with a pike of 5 kg in the 150th minute.
water::Water annasStay() {
    water::Water water = oneStay();
    Stay& stay = water.log.edit(0);
    stay.who = "Anna";
    stay.rods = 2;
    logbook::Fish pike;
    pike.id = logbook::FishId(8);
    pike.time = morning + 150min;
    pike.species = "pike";
    pike.weight = units::Weight::kilograms(5.0);
    stay.runs = {pike};
    return water;
}

Stay bensStay(double north_m) {
    Stay stay = stayAt(125, 235, north_m);
    stay.who = "Ben";
    stay.rods = 3;
    return stay;
}

TEST(OtherAnglers, AtOnePlaceAndTimeAreAQuestionAndElsewhereAnotherBoat) {
    const water::Water water = annasStay();
    const water::KnownStays ask(water);
    EXPECT_EQ(ask.standingOf(bensStay(10.0)).is, Is::doubtful);
    EXPECT_EQ(ask.standingOf(bensStay(10.0)).of, logbook::StayId(7));
    EXPECT_EQ(ask.standingOf(bensStay(400.0)).is, Is::fresh) << "one boat each";
    Stay both = bensStay(10.0);
    both.who = "Ben and anna";
    EXPECT_EQ(ask.standingOf(both).is, Is::update) << "she was there";
    both.who.clear();
    EXPECT_EQ(ask.standingOf(both).is, Is::update) << "nobody says that it was somebody else";
    using water::OtherAngler;
    EXPECT_EQ(water::KnownStays(water, {OtherAngler::separateRods}).standingOf(bensStay(0)).is,
              Is::fresh);
    EXPECT_EQ(water::KnownStays(water, {OtherAngler::sameRods}).standingOf(bensStay(0)).is,
              Is::update);
}

TEST(OtherAnglers, InAPartnersLogAreAlsoThoseOfWhomTheLogSaysNothing) {
    water::Water water = annasStay();
    water.log.edit(0).who.clear();
    EXPECT_EQ(water::KnownStays(water).standingOf(bensStay(0)).is, Is::update);
    const water::Sharing partner{water::OtherAngler::ask, true};
    EXPECT_EQ(water::KnownStays(water, partner).standingOf(bensStay(0)).is, Is::doubtful);
}

TEST(OtherAnglers, FoundAgainAreKnownAndNotAsked) {
    water::Water water = annasStay();
    Stay bens = bensStay(10.0);
    bens.id = logbook::StayId(9);
    logbook::putInOrder(water.log, {bens});
    EXPECT_EQ(water::KnownStays(water).standingOf(bens).is, Is::known);
    EXPECT_EQ(water::KnownStays(water).standingOf(annasStay().log[0]).is, Is::known);
}

TEST(OtherAnglers, WithTheSameRodsMakeOneStayOfBothWithEachFishOnce) {
    const Stay annas = annasStay().log[0];
    Stay bens = bensStay(10.0);
    bens.runs = annas.runs; // he noted her pike, too
    bens.runs.push_back(annas.runs[0]);
    bens.runs[1].weight = units::Weight::kilograms(2.0);
    const Stay one = water::updatedBy(annas, bens);
    EXPECT_EQ(one.who, "Anna, Ben");
    EXPECT_EQ(one.rods, 2) << "as was noted first: they are the same";
    ASSERT_EQ(one.runs.size(), 2U);
    EXPECT_EQ(one.runs[0].who, "Anna");
    EXPECT_EQ(one.runs[1].who, "Ben");
    EXPECT_EQ(water::updatedBy(one, bens).runs.size(), 2U) << "nor by and by";
}

} // namespace
