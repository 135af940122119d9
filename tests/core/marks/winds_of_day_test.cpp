// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/winds_of_day.h"

#include <gtest/gtest.h>

namespace {

using std::chrono::hours;

const logbook::Wind west{units::Bearing::degrees(270.0), units::Speed::metresPerSecond(4.0)};
const logbook::Wind south{units::Bearing::degrees(180.0), units::Speed::metresPerSecond(9.0)};

marks::ExpectedDay turningAt(std::chrono::seconds at) {
    marks::ExpectedDay day;
    day.start = hours(8);
    day.end = hours(16);
    day.wind = west;
    day.windLater = marks::LaterWind{at, south};
    return day;
}

TEST(WindsOfDay, AreOneWhereTheWindDoesNotTurn) {
    marks::ExpectedDay day = turningAt(hours(12));
    day.windLater.reset();
    const auto winds = marks::windsOf(day);
    ASSERT_EQ(winds.size(), 1U);
    EXPECT_EQ(winds[0].wind, west);
    EXPECT_EQ(winds[0].from, hours(8));
    EXPECT_EQ(winds[0].to, hours(16));
    EXPECT_EQ(winds[0].share, 1.0);
}

TEST(WindsOfDay, AreTwoWithTheirSharesWhereItTurnsWithinTheHours) {
    const auto winds = marks::windsOf(turningAt(hours(14)));
    ASSERT_EQ(winds.size(), 2U);
    EXPECT_EQ(winds[0].wind, west);
    EXPECT_EQ(winds[0].to, hours(14));
    EXPECT_DOUBLE_EQ(winds[0].share, 0.75);
    EXPECT_EQ(winds[1].wind, south);
    EXPECT_EQ(winds[1].from, hours(14));
    EXPECT_EQ(winds[1].to, hours(16));
    EXPECT_DOUBLE_EQ(winds[1].share, 0.25);
}

TEST(WindsOfDay, AreThatOfTheHoursAlone) {
    for (const auto& [at, wind] : {std::pair{hours(6), south}, std::pair{hours(8), south},
                                   std::pair{hours(16), west}, std::pair{hours(20), west}}) {
        const auto winds = marks::windsOf(turningAt(at));
        ASSERT_EQ(winds.size(), 1U) << at.count();
        EXPECT_EQ(winds[0].wind, wind) << at.count();
    }
    const auto evening = marks::windsBetween(turningAt(hours(14)), hours(14), hours(15));
    ASSERT_EQ(evening.size(), 1U);
    EXPECT_EQ(evening[0].wind, south);
}

TEST(WindsOfDay, TheLaterWindBlowsFromItsHourOn) {
    EXPECT_EQ(marks::windAt(turningAt(hours(14)), hours(14) - std::chrono::seconds(1)), west);
    EXPECT_EQ(marks::windAt(turningAt(hours(14)), hours(14)), south);
}

} // namespace
