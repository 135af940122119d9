// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/doubts.h"
#include "app/wording/log_words.h"

#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using wording::Words;

const units::Clock london = units::Clock::inZone("Europe/London").value();
const units::Moment morning = units::momentFrom("2026-10-03T07:00:00Z", units::Clock()).value();

TEST(DoubtsSaid, EachInOneSentence) {
    const Words metric(preferences::UnitSystem::metric);
    const Words imperial(preferences::UnitSystem::imperial);
    const auto said = [&](const water::StayDoubt& doubt) {
        return wording::said(doubt, london, metric);
    };
    EXPECT_EQ(said(water::StayInTheFuture{}), "This stay has not ended yet.");
    EXPECT_EQ(said(water::StayOverADay{1824h}), "This stay is 1824 hours long.");
    EXPECT_EQ(said(water::StayOutOfSeason{}), "The fishery is closed at this time of the year.");
    EXPECT_EQ(said(water::StayOfManyRods{4, 3, true}), "4 rods, where the house allows 3.");
    EXPECT_EQ(said(water::StayOfManyRods{5, 4, false}), "5 rods, where 4 ride in the boat.");
    EXPECT_EQ(said(water::FishBesideStay{1}), "One fish was taken before or after this stay.");
    EXPECT_EQ(said(water::FishBesideStay{3}), "3 fish were taken before or after this stay.");
    const water::StayDoubt off = water::StayOffTheWater{units::Length::metres(420.0)};
    EXPECT_TRUE(said(off).contains("420 m"));
    EXPECT_FALSE(wording::said(off, london, imperial).contains(" m "));
    EXPECT_EQ(said(water::StayOverOther{morning, morning + 2h}),
              "Another stay lasted from 08:00 to 10:00: one boat cannot be in both.");
}

TEST(LogBroughtIn, SaysWhatCameAndWhatOfItDidNot) {
    water::LogBroughtIn log;
    log.stays.resize(1);
    EXPECT_EQ(wording::broughtIn(log), "1 stay brought in.");
    EXPECT_EQ(wording::leftOutOf(log, {}), "");
    log.stays.resize(14);
    log.updates = 2;
    log.known = 3;
    EXPECT_EQ(wording::broughtIn(log), "12 stays brought in, 2 updated, 3 known already.");
    log.report.refuse("no_such_stay", 7, "fish,9");
    EXPECT_EQ(wording::leftOutOf(log, {}),
              "1 row not used: 1 of a stay that is not there (line 7: 'fish,9').");
    log.report.dropField("weight_kg", 9, "21-4x");
    log.report.dropField("rods", 11, "many");
    EXPECT_TRUE(wording::leftOutOf(log, {}).endsWith(
        "2 fields left empty (first: weight_kg '21-4x' in row 9)."));
    logbook::Stay stay;
    stay.start = morning;
    stay.end = morning + 2h;
    log.report = {};
    log.doubtful = {{stay, logbook::StayId(5), 4}};
    water::Water water;
    water.clock = london;
    EXPECT_EQ(wording::leftOutOf(log, water),
              "1 stay not brought in. Sat 3 Oct 2026, 08:00 to 10:00: overlaps another stay "
              "brought in with it.");
    stay.id = logbook::StayId(5);
    stay.end += 30min;
    water.log = {stay};
    EXPECT_EQ(wording::leftOutOf(log, water),
              "1 stay not brought in. Sat 3 Oct 2026, 08:00 to 10:00: the log has the boat in "
              "another stay then, 08:00 to 10:30. Which one is right?");
}

} // namespace
