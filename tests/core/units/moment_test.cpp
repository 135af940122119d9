// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/moment.h"

#include <gtest/gtest.h>

namespace {

using namespace units;
using namespace std::chrono_literals;

Clock london() {
    return Clock::inZone("Europe/London").value();
}

Moment utc(int year, unsigned month, unsigned day, std::chrono::milliseconds since) {
    return std::chrono::sys_days(std::chrono::year(year) / std::chrono::month(month) /
                                 std::chrono::day(day)) +
           since;
}

TEST(Moment, ReadsEveryUsualWayOfWritingAnInstant) {
    const Moment wanted = utc(2026, 10, 3, 7h + 10min);
    for (const char* text : {"2026-10-03T07:10:00Z", "2026-10-03T08:10:00+01:00",
                             "2026-10-03 07:10Z", "2026-10-03T08:10+0100", "2026-10-03T08:10:00",
                             "2026-10-03T02:10:00.000-05:00", "2026-10-03T08:10:00+01"}) {
        EXPECT_EQ(momentFrom(text, london()), wanted) << text;
    }
}

TEST(Moment, RefusesWhatIsNone) {
    for (const char* text : {"", "2026-10-03", "2026-13-01T00:00Z", "2026-02-30T00:00Z",
                             "2026-10-03T25:00Z", "2026-10-03T08:61Z", "2026-10-03T08:10:00+",
                             "2026-10-03T08:10:00Zx", "2026-10-03T08:10:00.", "yesterday"}) {
        EXPECT_FALSE(momentFrom(text, london())) << text;
    }
}

TEST(Moment, TextReadsBackAsTheSameInstant) {
    const Moment moment = utc(2026, 9, 5, 8h + 3min + 4s + 250ms);
    EXPECT_EQ(isoText(moment), "2026-09-05T08:03:04.250Z");
    EXPECT_EQ(momentFrom(isoText(moment), Clock()), moment);
    EXPECT_EQ(isoLocalText(moment, london()), "2026-09-05T09:03:04.250+01:00");
    EXPECT_EQ(momentFrom(isoLocalText(moment, london()), Clock()), moment);
}

TEST(Clock, KnowsSummerTime) {
    EXPECT_EQ(london().offsetAt(utc(2026, 7, 1, 12h)), 1h);
    EXPECT_EQ(london().offsetAt(utc(2026, 12, 1, 12h)), 0h);
    EXPECT_DOUBLE_EQ(london().hourOfDay(utc(2026, 7, 1, 12h + 30min)), 13.5);
}

TEST(Clock, TakesTheEarlierOfTwoInstantsWhenClocksGoBack) {
    const Day lastSunday = std::chrono::year(2026) / 10 / 25;
    EXPECT_EQ(london().at(lastSunday, 1h + 30min), utc(2026, 10, 25, 30min));
}

TEST(Clock, TakesTheJumpForATimeThatIsLeftOut) {
    const Day firstSunday = std::chrono::year(2026) / 3 / 29;
    EXPECT_EQ(london().at(firstSunday, 1h + 30min), utc(2026, 3, 29, 1h));
}

TEST(Clock, RefusesAZoneThatIsNone) {
    const auto clock = Clock::inZone("Mare/Tranquillitatis");
    ASSERT_FALSE(clock);
    EXPECT_NE(clock.error().sentence().find("Mare/Tranquillitatis"), std::string::npos);
}

TEST(TimeOfDay, TakesOneOrTwoDigitsForTheHour) {
    EXPECT_EQ(timeOfDayFrom("8:05"), 8h + 5min);
    EXPECT_EQ(timeOfDayFrom("17:40"), 17h + 40min);
    EXPECT_FALSE(timeOfDayFrom("24:00"));
    EXPECT_FALSE(timeOfDayFrom("8"));
}

} // namespace
