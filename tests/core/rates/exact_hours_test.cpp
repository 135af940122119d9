// SPDX-License-Identifier: GPL-3.0-or-later
// Rates by the hour, groups of the log, and stays found in a track, against figures by formula.
#include "core/rates/chance.h"
#include "core/rates/count_hour_rates.h"
#include "core/rates/find_stays.h"
#include "core/rates/grouping.h"

#include "tests/core/rates/log_builder.h"
#include "tests/support/given.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

namespace {

using rates::GroupedStay;
using support::given;
using namespace std::chrono_literals;

rates::HourRates hoursOf(const logbook::Log& log, const rates::HourSettings& settings = {},
                         const units::Clock& clock = {}) {
    base::Progress progress;
    return rates::countHourRates(log, clock, settings, progress).value();
}

/// A bell round the clock.
double bell(double hour, double at, double width_h) {
    const double apart = std::remainder(hour - at, 24.0) / width_h;
    return std::exp(-0.5 * apart * apart);
}

TEST(HourRate, OfOneTripIsTheRatioOfTwoBellsWithTheLimitsOfChance) {
    // Two rods from 22:00 to 02:00, a fish at 23:30, one at 01:00, a lost run and a perch.
    logbook::Log log{logs::stay("2026-10-01", "22:00", "23:00", 2)};
    log[0].end = log[0].start + 4h;
    log[0].runs = {logs::fish("2026-10-01 23:30", 3.0), logs::fish("2026-10-02 01:00", 4.0),
                   logs::lost("2026-10-01 23:00"),
                   logs::fish("2026-10-01 22:30", 0.2, "", "perch")};
    for (const double width_h : {1.0, 2.0, 6.0}) {
        rates::HourSettings settings;
        settings.width_h = width_h;
        settings.species = "Pike";
        settings.leastRodHours = 2.5;
        const rates::HourRates found = hoursOf(log, settings);
        ASSERT_EQ(found.points.size(), 48U);
        EXPECT_EQ(found.trips, 1);
        for (std::size_t i = 0; i < 48; ++i) {
            const double hour = 0.5 * static_cast<double>(i);
            const double fish = bell(23.5, hour, width_h) + bell(1.0, hour, width_h);
            double effort = 0.0;
            double squares = 0.0;
            for (int slice = 0; slice < 48; ++slice) { // Of five minutes.
                const double weight = bell(22.0 + (slice + 0.5) / 12.0, hour, width_h);
                effort += 2.0 / 12.0 * weight;
                squares += 2.0 / 12.0 * weight * weight;
            }
            EXPECT_EQ(found.points[i].hour, hour);
            EXPECT_NEAR(found.points[i].rodHours, effort, 1e-9) << hour;
            // Half a kernel's width away from the hours fished nothing is drawn any more.
            const bool isFished = std::abs(std::remainder(hour, 24.0)) <= 2.0 + 0.5 * width_h;
            ASSERT_EQ(found.points[i].rate.has_value(), effort >= 2.5 && isFished) << hour;
            if (!found.points[i].rate) {
                continue;
            }
            const rates::Rate rate = given(found.points[i].rate);
            const double worth = effort / squares;
            const rates::CountLimits limits = rates::countLimits(fish * worth);
            EXPECT_NEAR(rate.per10RodHours, 10.0 * fish / effort, 1e-9) << hour;
            // The kernel seen through itself, over the half hours fished.
            double twice = 0.0;
            double seen = 0.0;
            for (int half = -4; half <= 4; ++half) {
                const auto at = static_cast<std::size_t>((half + 48) % 48);
                const double spent = std::abs(half) == 4 ? 0.5 : 1.0;
                const double weight = bell(0.5 * half, hour, width_h) * spent;
                const double there =
                    (bell(23.5, 0.5 * half, width_h) + bell(1.0, 0.5 * half, width_h)) /
                    found.points[at].rodHours;
                twice += weight * there;
                seen += weight;
            }
            const double off = 10.0 * (twice / seen - fish / effort);
            const double low = 10.0 * limits.low / (effort * worth) - std::max(0.0, off);
            EXPECT_NEAR(rate.low, std::max(0.0, low), 1e-9) << hour;
            EXPECT_NEAR(rate.high, 10.0 * limits.high / (effort * worth) + std::max(0.0, -off),
                        1e-9)
                << hour;
        }
    }
}

TEST(HourRate, OfTwoTripsReachesFromNoneToAllOfTheBetter) {
    // Many fish on one day and none on the other: days drawn anew are both the one or both the
    // other in one draw of four.
    logbook::Log log{logs::stay("2026-10-01", "08:00", "12:00"),
                     logs::stay("2026-10-02", "08:00", "12:00")};
    log[0].runs.resize(100, logs::fish("2026-10-01 10:00", 3.0));
    const rates::HourRates found = hoursOf(log);
    EXPECT_EQ(found.trips, 2);
    const auto& ten = found.points[20];
    const rates::Rate rate = given(ten.rate);
    EXPECT_NEAR(rate.low, 0.0, 1e-9);
    // The curve comes to a point there, which the kernel makes lower than it was.
    EXPECT_GT(rate.high, 10.0 * 100.0 / (ten.rodHours / 2.0));
    EXPECT_NEAR(rate.per10RodHours, 10.0 * 100.0 / ten.rodHours, 1e-9);
}

TEST(HourRate, CountsNoFishOverAnEffortThatNobodyNoted) {
    logbook::Log log{logs::stay("2026-10-01", "08:00", "12:00", 2)};
    log[0].runs = {logs::fish("2026-10-01 09:00", 3.0)};
    const rates::HourRates known = hoursOf(log);
    log.push_back(logs::stay("2026-10-02", "08:00", "12:00"));
    log[1].rods.reset();
    log[1].runs = {logs::fish("2026-10-02 10:00", 3.0), logs::fish("2026-10-02 10:30", 4.0)};
    const rates::HourRates with = hoursOf(log);
    for (std::size_t i = 0; i < known.points.size(); ++i) {
        EXPECT_EQ(with.points[i].rodHours, known.points[i].rodHours) << i;
        ASSERT_EQ(with.points[i].rate.has_value(), known.points[i].rate.has_value()) << i;
        if (known.points[i].rate) {
            EXPECT_EQ(with.points[i].rate->per10RodHours, known.points[i].rate->per10RodHours);
        }
    }
}

TEST(HourRate, GoesByTheWatersClock) {
    const logbook::Log log{logs::stay("2026-07-01", "08:00", "12:00")};
    const auto oslo = hoursOf(log, {}, units::Clock::inZone("Europe/Oslo").value());
    const auto utc = hoursOf(log);
    for (std::size_t i = 0; i < 44; ++i) {
        EXPECT_NEAR(oslo.points[i + 4].rodHours, utc.points[i].rodHours, 1e-9);
    }
}

TEST(HourSetting, IsRefusedJustBeyondItsLimits) {
    base::Progress progress;
    const auto isFine = [&](auto set) {
        rates::HourSettings settings;
        set(settings);
        return rates::countHourRates({}, {}, settings, progress).has_value();
    };
    using Settings = rates::HourSettings;
    EXPECT_TRUE(isFine([](Settings& s) { s.width_h = 0.25; }));
    EXPECT_FALSE(isFine([](Settings& s) { s.width_h = 0.24; }));
    EXPECT_TRUE(isFine([](Settings& s) { s.width_h = 6.0; }));
    EXPECT_FALSE(isFine([](Settings& s) { s.width_h = 6.1; }));
    EXPECT_TRUE(isFine([](Settings& s) { s.points = 24; }));
    EXPECT_FALSE(isFine([](Settings& s) { s.points = 23; }));
    EXPECT_TRUE(isFine([](Settings& s) { s.points = 288; }));
    EXPECT_FALSE(isFine([](Settings& s) { s.points = 289; }));
    EXPECT_TRUE(isFine([](Settings& s) { s.draws = 100; }));
    EXPECT_FALSE(isFine([](Settings& s) { s.draws = 99; }));
    EXPECT_TRUE(isFine([](Settings& s) { s.draws = 10000; }));
    EXPECT_FALSE(isFine([](Settings& s) { s.draws = 10001; }));
    EXPECT_FALSE(isFine([](Settings& s) { s.leastRodHours = 0.0; }));
}

TEST(Wind, IsTheEighthItComesFromOrCalm) {
    const std::vector<std::pair<double, const char*>> eighths{
        {0, "N"},      {22.4, "N"},  {22.6, "NE"},  {67.4, "NE"}, {67.6, "E"},
        {112.6, "SE"}, {157.6, "S"}, {202.6, "SW"}, {247.6, "W"}, {292.6, "NW"},
        {337.4, "NW"}, {337.6, "N"}, {359.9, "N"}};
    for (const auto& [degrees, name] : eighths) {
        EXPECT_EQ(rates::windEighth(units::Bearing::degrees(degrees)), name) << degrees;
    }
    const auto groupOf = [](std::optional<double> degrees, std::optional<double> knots) {
        logbook::Log log{logs::stay("2026-10-01", "08:00", "10:00", 2)};
        log[0].runs = {logs::fish("2026-10-01 09:00", 3.0)};
        if (degrees) {
            log[0].conditions.windFrom = units::Bearing::degrees(*degrees);
        }
        if (knots) {
            log[0].conditions.windSpeed = units::Speed::knots(*knots);
        }
        const auto parts = rates::byWind(log);
        EXPECT_EQ(parts.size(), 1U);
        EXPECT_NEAR(parts[0].rodHours, 4.0, 1e-12);
        EXPECT_EQ(parts[0].runs.size(), 1U);
        return parts[0].group;
    };
    EXPECT_EQ(groupOf({}, {}), "not noted");
    EXPECT_EQ(groupOf({}, 0.49), "calm");
    EXPECT_EQ(groupOf(90.0, 0.49), "calm");
    EXPECT_EQ(groupOf(90.0, 0.51), "E");
    EXPECT_EQ(groupOf(90.0, {}), "E");
    EXPECT_EQ(groupOf({}, 5.0), "not noted");
    EXPECT_EQ(rates::windOrder(), (std::vector<std::string>{"N", "NE", "E", "SE", "S", "SW", "W",
                                                            "NW", "calm", "not noted"}));
}

TEST(Month, IsThatOfTheStartByTheWatersClock) {
    const std::vector<std::string> names{"January",   "February", "March",    "April",
                                         "May",       "June",     "July",     "August",
                                         "September", "October",  "November", "December"};
    EXPECT_EQ(rates::monthOrder(), names);
    logbook::Log log;
    for (int month = 1; month <= 12; ++month) {
        const std::string day = (month < 10 ? "2026-0" : "2026-") + std::to_string(month) + "-01";
        log.push_back(logs::stay(day, "00:30", "01:30"));
    }
    const auto utc = rates::byMonth(log, {});
    const auto azores = rates::byMonth(log, units::Clock::inZone("Atlantic/Azores").value());
    for (std::size_t i = 0; i < 12; ++i) {
        EXPECT_EQ(utc[i].group, names[i]);
        // An hour behind UTC; in summer time just as it.
        const bool isSummer = i >= 3 && i <= 9;
        EXPECT_EQ(azores[i].group, names[isSummer ? i : (i + 11) % 12]);
    }
}

using Shares = std::map<std::string, std::pair<double, std::size_t>>; ///< Rod-hours and runs.

Shares sharesOf(const std::vector<GroupedStay>& parts) {
    Shares shares;
    for (const GroupedStay& part : parts) {
        shares[part.group] = {part.rodHours, part.runs.size()};
    }
    return shares;
}

TEST(Bait, SharesTheEffortOfItsStayAndKeepsItsOwnFish) {
    const auto of = [](const std::string& bait, const std::vector<const char*>& fishBaits) {
        logbook::Log log{logs::stay("2026-10-01", "08:00", "11:00", 2, bait)};
        for (const char* one : fishBaits) {
            log[0].runs.push_back(logs::fish("2026-10-01 09:00", 3.0, one));
        }
        return sharesOf(rates::byBait(log));
    };
    EXPECT_EQ(of("", {}), (Shares{{"not noted", {6.0, 0}}}));
    EXPECT_EQ(of("Smelt", {"", " SMELT"}), (Shares{{"smelt", {6.0, 2}}}));
    EXPECT_EQ(of("smelt;perch+ roach/smelt,", {"roach"}),
              (Shares{{"smelt", {2.0, 0}}, {"perch", {2.0, 0}}, {"roach", {2.0, 1}}}));
    EXPECT_EQ(of("smelt", {"trout", ""}),
              (Shares{{"smelt", {3.0, 0}}, {"trout", {3.0, 1}}, {"not noted", {0.0, 1}}}));
}

TEST(HourBlock, IsNamedByItsFirstAndLastHour) {
    const auto at = logs::moment("2026-10-01T09:59:59Z");
    const std::vector<std::pair<int, const char*>> blocks{{1, "09-10"}, {2, "08-10"}, {3, "09-12"},
                                                          {4, "08-12"}, {6, "06-12"}, {8, "08-16"},
                                                          {12, "00-12"}};
    for (const auto& [hours, name] : blocks) {
        EXPECT_EQ(rates::hourBlock(at, {}, hours), name);
    }
    EXPECT_EQ(rates::hourBlock(logs::moment("2026-10-01T10:00:00Z"), {}), "10-12");
    EXPECT_EQ(rates::hourBlock(logs::moment("2026-10-01T00:00:00Z"), {}), "00-02");
    EXPECT_EQ(rates::hourBlock(logs::moment("2026-10-01T23:59:59Z"), {}), "22-24");
}

/// Lies at a place, a fix every five seconds, both ends included.
void lie(rates::Track& track, geo::WaterPoint place, std::chrono::seconds from,
         std::chrono::seconds to) {
    const units::Moment start = logs::moment("2026-10-03T07:00:00Z");
    for (auto at = from; at <= to; at += 5s) {
        track.push_back({place, start + at});
    }
}

std::vector<rates::TrackStay> found(const rates::Track& track,
                                    const rates::FindStaysSettings& settings = {}) {
    base::Progress progress;
    return rates::findStays(track, settings, progress).value();
}

TEST(FoundStay, LastsEightMinutesOrAsLongAsIsAskedFor) {
    const auto count = [](std::chrono::seconds length, std::chrono::minutes least) {
        rates::Track track;
        lie(track, {30, 40}, 0s, length);
        rates::FindStaysSettings settings;
        settings.least = least;
        return found(track, settings).size();
    };
    EXPECT_EQ(count(480s, 8min), 1U);
    EXPECT_EQ(count(475s, 8min), 0U);
    EXPECT_EQ(count(900s, 15min), 1U);
    EXPECT_EQ(count(895s, 15min), 0U);
    rates::Track track;
    lie(track, {30, 40}, 60s, 660s);
    const auto stays = found(track);
    ASSERT_EQ(stays.size(), 1U);
    EXPECT_EQ(stays[0].start, logs::moment("2026-10-03T07:01:00Z"));
    EXPECT_EQ(stays[0].end, logs::moment("2026-10-03T07:11:00Z"));
    EXPECT_EQ(stays[0].place, (geo::WaterPoint{30, 40}));
    EXPECT_EQ(stays[0].spread, units::Length());
}

TEST(FoundStay, BridgesTwentyMinutesAtOnePlaceAndTwentyMetres) {
    const auto count = [](std::chrono::seconds gap, double apart_m,
                          const rates::FindStaysSettings& settings = {}) {
        rates::Track track;
        lie(track, {0, 0}, 0s, 600s);
        lie(track, {apart_m, 0}, 600s + gap, 1200s + gap);
        return found(track, settings).size();
    };
    EXPECT_EQ(count(1200s, 0.0), 1U);
    EXPECT_EQ(count(1205s, 0.0), 2U);
    EXPECT_EQ(count(600s, 19.9), 1U);
    EXPECT_EQ(count(600s, 20.1), 2U);
    rates::FindStaysSettings settings;
    settings.bridged = 5min;
    EXPECT_EQ(count(300s, 0.0, settings), 1U);
    EXPECT_EQ(count(305s, 0.0, settings), 2U);
    settings = {};
    settings.swing = units::Length::metres(40.0);
    EXPECT_EQ(count(600s, 39.9, settings), 1U);
    EXPECT_EQ(count(600s, 40.1, settings), 2U);
}

TEST(FoundStay, IsNoDriftHoweverSlow) {
    const auto count = [](double speed_m_s) {
        rates::Track track;
        const units::Moment start = logs::moment("2026-10-03T07:00:00Z");
        for (int second = 0; second <= 1200; second += 5) {
            track.push_back({{speed_m_s * second, 0.0}, start + std::chrono::seconds(second)});
        }
        rates::FindStaysSettings settings;
        settings.swing = units::Length::metres(100.0);
        return found(track, settings).size();
    };
    EXPECT_EQ(count(0.02), 1U) << "anchors that give way a little";
    for (const double speed_m_s : {0.03, 0.05, 0.1, 0.19, 0.21, 0.31}) {
        EXPECT_EQ(count(speed_m_s), 0U) << speed_m_s;
    }
}

TEST(FoundStay, HasHalfOfItsPointsWithinItsSpread) {
    rates::Track track;
    const units::Moment start = logs::moment("2026-10-03T07:00:00Z");
    for (int i = 0; i <= 200; ++i) {
        const double off_m = i % 2 == 0 ? 0.0 : i % 4 == 1 ? 3.0 : -3.0;
        track.push_back({{100.0 + off_m, 50.0}, start + std::chrono::seconds(5 * i)});
    }
    const auto stays = found(track);
    ASSERT_EQ(stays.size(), 1U);
    EXPECT_NEAR(stays[0].place.x_m, 100.0, 1e-9);
    EXPECT_NEAR(stays[0].spread.inMetres(), 0.0, 1e-9); // 101 of 201 lie in the middle.
    track.push_back({{103.0, 50.0}, start + std::chrono::seconds(1005)});
    track.push_back({{97.0, 50.0}, start + std::chrono::seconds(1010)});
    EXPECT_NEAR(found(track)[0].spread.inMetres(), 3.0, 1e-9);
}

TEST(FoundStaySetting, IsRefusedJustBeyondItsLimits) {
    rates::Track track;
    lie(track, {0, 0}, 0s, 600s);
    base::Progress progress;
    const auto isFine = [&](auto set) {
        rates::FindStaysSettings settings;
        set(settings);
        return rates::findStays(track, settings, progress).has_value();
    };
    using Settings = rates::FindStaysSettings;
    for (const auto& [metres, fine] :
         {std::pair{5.0, true}, {4.9, false}, {100.0, true}, {100.1, false}}) {
        EXPECT_EQ(isFine([m = metres](Settings& s) { s.swing = units::Length::metres(m); }), fine);
    }
    for (const auto& [speed, fine] :
         {std::pair{0.05, true}, {0.049, false}, {0.5, true}, {0.51, false}}) {
        EXPECT_EQ(
            isFine([v = speed](Settings& s) { s.stillBelow = units::Speed::metresPerSecond(v); }),
            fine);
    }
    for (const auto& [time, fine] :
         {std::pair{10s, true}, {9s, false}, {300s, true}, {301s, false}}) {
        EXPECT_EQ(isFine([t = time](Settings& s) { s.window = t; }), fine);
    }
    for (const auto& [time, fine] :
         {std::pair{1min, true}, {0min, false}, {120min, true}, {121min, false}}) {
        EXPECT_EQ(isFine([t = time](Settings& s) { s.least = t; }), fine);
    }
    for (const auto& [time, fine] :
         {std::pair{0min, true}, {-1min, false}, {120min, true}, {121min, false}}) {
        EXPECT_EQ(isFine([t = time](Settings& s) { s.bridged = t; }), fine);
    }
}

} // namespace
