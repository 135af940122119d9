// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/count_hour_rates.h"

#include "tests/core/rates/log_builder.h"
#include "tests/support/given.h"

#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace {

using rates::HourRates;
using rates::HourSettings;
using support::given;

HourRates count(const logbook::Log& log, const HourSettings& settings = {}) {
    base::Progress progress;
    return rates::countHourRates(log, units::Clock(), settings, progress).value();
}

/// Thirty days from 06:00 to 18:00 with fish by chance at a rate that peaks at nine.
logbook::Log autumn(unsigned seed) {
    std::mt19937 chance(seed);
    logbook::Log log;
    for (int day = 1; day <= 30; ++day) {
        logbook::Stay stay = logs::stay("2026-11-01", "06:00", "18:00", 2);
        stay.start += std::chrono::days(day - 1);
        stay.end += std::chrono::days(day - 1);
        for (int minute = 0; minute < 720; ++minute) {
            const double hour = 6.0 + minute / 60.0;
            const double rate = 0.05 + 0.35 * std::exp(-0.5 * std::pow((hour - 9.0) / 1.5, 2));
            if (static_cast<double>(chance() % 1000000) / 1e6 < 2.0 * rate / 60.0) {
                logbook::Fish fish;
                fish.time = stay.start + std::chrono::minutes(minute);
                stay.runs.push_back(fish);
            }
        }
        log.push_back(stay);
    }
    return log;
}

TEST(HourRates, FindTheHourOfThePeak) {
    const HourRates rates = count(autumn(21));
    EXPECT_EQ(rates.trips, 30);
    ASSERT_EQ(rates.points.size(), 48U);
    const auto& nine = rates.points[18];
    const auto& four = rates.points[32];
    EXPECT_EQ(nine.hour, 9.0);
    ASSERT_TRUE(nine.rate && four.rate);
    EXPECT_GT(given(nine.rate).low, given(four.rate).high);
    EXPECT_GT(given(nine.rate).per10RodHours, 2.4);
    EXPECT_LT(given(nine.rate).per10RodHours, 4.8);
}

TEST(HourRates, SayNothingOfHoursThatWereNotFished) {
    const HourRates rates = count(autumn(21));
    EXPECT_FALSE(rates.points[0].rate);
    EXPECT_FALSE(rates.points[4].rate);
    EXPECT_TRUE(rates.points[24].rate);
}

TEST(HourRates, KeepTheirBandForTheSameSeed) {
    const logbook::Log log = autumn(22);
    const HourRates one = count(log);
    const HourRates two = count(log);
    for (std::size_t i = 0; i < one.points.size(); ++i) {
        EXPECT_EQ(one.points[i].rate, two.points[i].rate);
    }
}

TEST(HourRates, DoNotTakeBlanksForCertainty) {
    logbook::Log log{logs::stay("2026-11-01", "08:00", "12:00", 2),
                     logs::stay("2026-11-02", "08:00", "12:00", 2)};
    const HourRates rates = count(log);
    const auto& ten = rates.points[20];
    ASSERT_TRUE(ten.rate);
    EXPECT_EQ(given(ten.rate).per10RodHours, 0.0);
    EXPECT_GT(given(ten.rate).high, 1.0);
}

TEST(HourRates, GoRoundMidnight) {
    logbook::Log log;
    for (int day = 1; day <= 9; ++day) {
        logbook::Stay stay = logs::stay("2026-11-01", "22:00", "23:00");
        stay.start += std::chrono::days(day);
        stay.end = stay.start + std::chrono::hours(4);
        logbook::Fish fish;
        fish.time = stay.start + std::chrono::minutes(115);
        stay.runs = {fish};
        log.push_back(stay);
    }
    const HourRates rates = count(log);
    ASSERT_TRUE(rates.points[0].rate && rates.points[47].rate && rates.points[1].rate);
    EXPECT_NEAR(given(rates.points[47].rate).per10RodHours,
                given(rates.points[0].rate).per10RodHours,
                0.2 * given(rates.points[0].rate).per10RodHours);
}

TEST(HourRates, AreThePlainRateWhereThatIsTheSameAllDay) {
    logbook::Log log{logs::stay("2026-11-01", "00:00", "23:59", 1)};
    log[0].end = log[0].start + std::chrono::hours(24);
    for (int minute = 15; minute < 1440; minute += 30) {
        logbook::Fish fish;
        fish.time = log[0].start + std::chrono::minutes(minute);
        log[0].runs.push_back(fish);
    }
    for (const auto& point : count(log).points) {
        EXPECT_NEAR(given(point.rate).per10RodHours, 20.0, 0.1);
    }
}

TEST(HourRates, RefuseSettingsOutOfRangeAndTakeAnEmptyLog) {
    base::Progress progress;
    HourSettings settings;
    settings.width_h = 0.0;
    EXPECT_EQ(rates::countHourRates({}, units::Clock(), settings, progress).error().kind,
              base::ErrorKind::wrongUse);
    for (const auto& point : count({}).points) {
        EXPECT_FALSE(point.rate);
    }
}

} // namespace
