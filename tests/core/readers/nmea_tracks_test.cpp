// SPDX-License-Identifier: GPL-3.0-or-later
// Positions of an NMEA log as a track: which sentences give one, and which day it was.
#include "core/readers/nmea_sentence.h"
#include "core/readers/read_track.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <fmt/format.h>

namespace readers {

namespace {

std::string summed(const std::string& body) {
    return fmt::format("${}*{:02X}\r\n", body, nmeaChecksum(body));
}

std::string rmc(const char* time, const char* date, const char* lat = "5512.000",
                const char* state = "A") {
    return summed(fmt::format("GPRMC,{},{},{},N,00306.000,E,0.0,0.0,{},,", time, state, lat, date));
}

std::string gga(const char* time, const char* lat = "5512.000") {
    return summed(fmt::format("GPGGA,{},{},N,00306.000,E,1,08,1.0,10.0,M,,M,,", time, lat));
}

base::Result<std::vector<TrackPoint>> readText(const std::string& text) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    return readTrack(scratch.file("track.txt", text), progress);
}

std::vector<std::string> timesOf(const std::vector<TrackPoint>& track) {
    std::vector<std::string> times;
    for (const TrackPoint& point : track) {
        times.push_back(units::isoText(point.time));
    }
    return times;
}

using Times = std::vector<std::string>;

TEST(NmeaTracks, TakePlaceAndTimeOfEachFixOnce) {
    const auto track =
        readText(rmc("081000", "031026") + gga("081000") + gga("081001.5", "5512.6") +
                 "$SDDPT,4.2,0.0*7F\r\n" + rmc("081002", "031026"));
    ASSERT_TRUE(track) << track.error().sentence();
    EXPECT_EQ(timesOf(*track),
              (Times{"2026-10-03T08:10:00Z", "2026-10-03T08:10:01.500Z", "2026-10-03T08:10:02Z"}));
    EXPECT_NEAR((*track)[1].place.lat_deg, 55.21, 1e-9);
    EXPECT_NEAR((*track)[1].place.lon_deg, 3.1, 1e-9);
}

TEST(NmeaTracks, KnowTheDayBeforeItIsSaidAndAfterMidnight) {
    const auto track =
        readText(gga("235958") + rmc("235959", "031026") + gga("000001") + gga("000002"));
    ASSERT_TRUE(track);
    EXPECT_EQ(timesOf(*track), (Times{"2026-10-03T23:59:58Z", "2026-10-03T23:59:59Z",
                                      "2026-10-04T00:00:01Z", "2026-10-04T00:00:02Z"}));
    const auto days = readText(rmc("120000", "031026") + rmc("090000", "101026"));
    ASSERT_TRUE(days);
    EXPECT_EQ(timesOf(*days), (Times{"2026-10-03T12:00:00Z", "2026-10-10T09:00:00Z"}))
        << "two logs in one file";
}

TEST(NmeaTracks, KnowTheDayBeforeMidnightWhenItIsSaidAfterIt) {
    const auto track = readText(gga("235958") + gga("000001") + rmc("000002", "041026"));
    ASSERT_TRUE(track);
    EXPECT_EQ(timesOf(*track),
              (Times{"2026-10-03T23:59:58Z", "2026-10-04T00:00:01Z", "2026-10-04T00:00:02Z"}));
}

TEST(NmeaTracks, TakeASentenceThatComesLateForNoOtherDay) {
    const auto track = readText(rmc("081002", "031026") + gga("081001") + gga("081003"));
    ASSERT_TRUE(track);
    EXPECT_EQ(timesOf(*track),
              (Times{"2026-10-03T08:10:01Z", "2026-10-03T08:10:02Z", "2026-10-03T08:10:03Z"}))
        << "in the order of time";
}

TEST(NmeaTracks, LeaveOutWhatIsNoFixAndSayWhatIsMissing) {
    std::string damaged = rmc("081003", "031026");
    damaged[19] = '7'; // 55 17 N instead of 55 12
    const auto track =
        readText(rmc("081000", "031026") + rmc("081001", "031026", "5512.000", "V") + damaged);
    ASSERT_TRUE(track);
    EXPECT_EQ(track->size(), 1U);
    const auto undated = readText(gga("081000") + gga("081001"));
    ASSERT_FALSE(undated);
    EXPECT_EQ(undated.error().what, "its positions have no date");
    EXPECT_FALSE(readText("nothing of the kind\n"));
}

} // namespace

} // namespace readers
