// SPDX-License-Identifier: GPL-3.0-or-later
// Clocks across the days on which they change, and every refusal of a time that is none.
#include "core/units/moment.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace units;
using namespace std::chrono_literals;

Moment utc(int year, unsigned month, unsigned day, std::chrono::milliseconds since) {
    return std::chrono::sys_days(std::chrono::year(year) / std::chrono::month(month) /
                                 std::chrono::day(day)) +
           since;
}

// European Union: clocks change at 01:00 UTC on the last Sundays of March and October. United
// States: at 02:00 local time on the second Sunday of March and the first of November. India:
// +5:30.
struct ClockRow {
    const char* zone;
    Moment moment;
    const char* local;
    const char* timeOfDay;
    double hour;
};

TEST(Clock, ShowsLocalTimeOnBothSidesOfEachChange) {
    const ClockRow rows[] = {
        {"Europe/London", utc(2026, 3, 29, 59min), "2026-03-29T00:59:00+00:00", "00:59", 59.0 / 60},
        {"Europe/London", utc(2026, 3, 29, 60min), "2026-03-29T02:00:00+01:00", "02:00", 2.0},
        {"Europe/London", utc(2026, 10, 25, 59min), "2026-10-25T01:59:00+01:00", "01:59",
         1.0 + 59.0 / 60},
        {"Europe/London", utc(2026, 10, 25, 60min), "2026-10-25T01:00:00+00:00", "01:00", 1.0},
        {"America/Chicago", utc(2026, 3, 8, 7h + 59min), "2026-03-08T01:59:00-06:00", "01:59",
         1.0 + 59.0 / 60},
        {"America/Chicago", utc(2026, 3, 8, 8h), "2026-03-08T03:00:00-05:00", "03:00", 3.0},
        {"America/Chicago", utc(2026, 11, 1, 7h), "2026-11-01T01:00:00-06:00", "01:00", 1.0},
        {"Asia/Kolkata", utc(2026, 6, 30, 20h), "2026-07-01T01:30:00+05:30", "01:30", 1.5},
        {"America/St_Johns", utc(2026, 12, 1, 1h), "2026-11-30T21:30:00-03:30", "21:30", 21.5},
        {"Etc/UTC", utc(2026, 12, 31, 23h + 59min + 59s + 7ms), "2026-12-31T23:59:59.007+00:00",
         "00:00", 23.0 + (59.0 * 60 + 59.007) / 3600}};
    for (const ClockRow& row : rows) {
        const Clock clock = Clock::inZone(row.zone).value();
        EXPECT_EQ(clock.zone(), row.zone);
        EXPECT_EQ(isoLocalText(row.moment, clock), row.local);
        EXPECT_EQ(timeOfDayText(row.moment, clock), row.timeOfDay) << row.local;
        EXPECT_NEAR(clock.hourOfDay(row.moment), row.hour, 1e-9) << row.local;
        EXPECT_EQ(isoText(clock.dayOf(row.moment)), std::string(row.local).substr(0, 10));
        EXPECT_EQ(momentFrom(row.local, Clock()), row.moment);
    }
    EXPECT_EQ(Clock().zone(), "Etc/UTC");
    EXPECT_EQ(Clock::inZone("Nowhere/Else").error().kind, base::ErrorKind::wrongUse);
}

TEST(Clock, FindsTheInstantOfALocalTimeOnTheDaysOfTheChange) {
    const Clock london = Clock::inZone("Europe/London").value();
    const Clock chicago = Clock::inZone("America/Chicago").value();
    const Day spring = std::chrono::year(2026) / 3 / 29;
    const Day autumn = std::chrono::year(2026) / 10 / 25;
    EXPECT_EQ(london.at(spring, 30min), utc(2026, 3, 29, 30min));
    EXPECT_EQ(london.at(spring, 90min), utc(2026, 3, 29, 1h)) << "left out: the jump";
    EXPECT_EQ(london.at(spring, 2h), utc(2026, 3, 29, 1h));
    EXPECT_EQ(london.at(spring, 8h), utc(2026, 3, 29, 7h));
    EXPECT_EQ(london.at(autumn, 30min), utc(2026, 10, 24, 23h + 30min));
    EXPECT_EQ(london.at(autumn, 1h), utc(2026, 10, 25, 0min)) << "twice: the earlier";
    EXPECT_EQ(london.at(autumn, 2h), utc(2026, 10, 25, 2h));
    EXPECT_EQ(chicago.at(std::chrono::year(2026) / 7 / 4, 6h), utc(2026, 7, 4, 11h));
    EXPECT_EQ(Clock().at(std::chrono::year(2026) / 7 / 4, 6h + 5s), utc(2026, 7, 4, 6h + 5s));
}

TEST(Clock, LocalTimesWithoutAZoneMeanTheWatersClockToTheMillisecond) {
    const Clock london = Clock::inZone("Europe/London").value();
    EXPECT_EQ(momentFrom("2026-07-01T08:00:00.250", london), utc(2026, 7, 1, 7h + 250ms));
    EXPECT_EQ(momentFrom("2026-12-01 08:00:00,5", london), utc(2026, 12, 1, 8h + 500ms));
    EXPECT_EQ(momentFrom(" 2026-12-01t08:00z ", london), utc(2026, 12, 1, 8h));
}

TEST(Moment, TakesOffsetsWithTheirSign) {
    for (const auto& [text, hours] : {std::pair{"2026-06-01T12:00-05:30", 17.5},
                                      {"2026-06-01T12:00+0530", 6.5},
                                      {"2026-06-01T12:00-03", 15.0},
                                      {"2026-06-01T12:00:60Z", 12.0 + 1.0 / 60},
                                      {"2026-06-01T00:00+14:00", -14.0},
                                      {"2026-06-01T23:59Z", 24.0 - 1.0 / 60}}) {
        EXPECT_EQ(momentFrom(text, Clock()),
                  utc(2026, 6, 1, std::chrono::milliseconds(std::llround(hours * 3.6e6))))
            << text;
    }
}

TEST(Moment, RoundsFractionsToTheMillisecond) {
    EXPECT_EQ(momentFrom("2026-06-01T00:00:00.0004Z", Clock()), utc(2026, 6, 1, 0ms));
    EXPECT_EQ(momentFrom("2026-06-01T00:00:00.0006Z", Clock()), utc(2026, 6, 1, 1ms));
    EXPECT_EQ(momentFrom("2026-06-01T00:00:00.123456Z", Clock()), utc(2026, 6, 1, 123ms));
    EXPECT_EQ(isoText(utc(2026, 6, 1, 5ms)), "2026-06-01T00:00:00.005Z");
    EXPECT_EQ(isoText(utc(2026, 6, 1, 0ms)), "2026-06-01T00:00:00Z");
    EXPECT_EQ(isoText(utc(1969, 12, 31, 23h + 59min)), "1969-12-31T23:59:00Z");
}

TEST(Moment, RefusesEachPartThatIsWrong) {
    for (const char* text : {"2026-10-03X08:10Z",
                             "2026-10-03T8:10Z",
                             "2026-10-03T08.10Z",
                             "2026-10-03T08:1Z",
                             "2026-10-03T24:00Z",
                             "2026-10-03T08:60Z",
                             "2026-10-03T08:10:61Z",
                             "2026-10-03T08:10:0Z",
                             "2026-10-03T08:10:00.Z",
                             "2026-10-03T08:10:00X",
                             "2026-10-03T08:10:00+1",
                             "2026-10-03T08:10:00+01:0",
                             "2026-10-03T08:10:00+01:00x",
                             "2026-10-03T08:10:00+x1:00",
                             "2026/10/03T08:10Z",
                             "2026-10-03",
                             "26-10-03T08:10Z",
                             "2026-1-03T08:10Z",
                             "2026-10-3T08:10Z",
                             "2026-00-03T08:10Z",
                             "2026-10-00T08:10Z",
                             "2026-04-31T08:10Z",
                             "2025-02-29T08:10Z",
                             "2026-10-03T08:10 Z"}) {
        EXPECT_FALSE(momentFrom(text, Clock())) << text;
    }
    EXPECT_TRUE(momentFrom("2024-02-29T08:10Z", Clock()));
}

TEST(Day, IsReadAndWrittenInFull) {
    EXPECT_EQ(dayFrom(" 2026-02-28 "), std::chrono::year(2026) / 2 / 28);
    EXPECT_EQ(isoText(std::chrono::year(986) / 1 / 2), "0986-01-02");
    for (const char* text : {"", "2026-02-29", "2026-02-28x", "2026-2-28", "28-02-2026"}) {
        EXPECT_FALSE(dayFrom(text)) << text;
    }
}

TEST(TimeOfDay, IsBelowTwentyFourHoursAndWhole) {
    EXPECT_EQ(timeOfDayFrom("0:00"), 0s);
    EXPECT_EQ(timeOfDayFrom(" 23:59:59 "), 24h - 1s);
    EXPECT_EQ(timeOfDayFrom("7:05:09.9"), 7h + 5min + 9s);
    for (const char* text : {"", "7", "7:", "7:5", "24:00", "7:60", "7:05:", "7:05 am", "-7:05"}) {
        EXPECT_FALSE(timeOfDayFrom(text)) << text;
    }
}

TEST(TimeOfDay, IsRoundedToTheNearestMinute) {
    EXPECT_EQ(timeOfDayText(utc(2026, 6, 1, 8h + 10min + 29s), Clock()), "08:10");
    EXPECT_EQ(timeOfDayText(utc(2026, 6, 1, 8h + 10min + 31s), Clock()), "08:11");
}

} // namespace
