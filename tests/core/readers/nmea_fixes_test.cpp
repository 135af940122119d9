// SPDX-License-Identifier: GPL-3.0-or-later
// Which sentences of an NMEA log give a position, and where and when a depth comes to lie.
#include "core/readers/read_nmea.h"

#include "core/readers/nmea_sentence.h"
#include "tests/support/scratch_folder.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace readers {

namespace {

std::string sentence(const std::string& body) {
    return fmt::format("${}*{:02X}\r\n", body, nmeaChecksum(body));
}

std::string depth(double metres) {
    return sentence(fmt::format("SDDPT,{:.1f},0.0", metres));
}

/// A good fix so many seconds after 07:42, that many thousandths of a minute north of 55 12'.
std::string fixAt(int second, int north) {
    return sentence(fmt::format("GPRMC,0742{:02}.00,A,5512.{:04},N,00306.0000,E,4.0,0.0,050926,,,A",
                                second, north * 10));
}

base::Result<ReadSoundings> readText(const std::string& text,
                                     const SoundingFileSettings& settings = {}) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    return readNmea(scratch.file("log.nmea", text), settings, progress);
}

struct Mode {
    const char* body; ///< Of a sentence at 07:42:01, a thousandth of a minute north.
    bool isFix;
};

std::vector<Mode> modes() {
    return {
        // Quality of GGA: 0 none, 1 GPS, 2 differential, 3 PPS, 4 and 5 RTK, 6 estimated, 7 typed
        // in by hand, 8 simulated, 9 with satellites' corrections (some makers).
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,,09,0.9,42,M,56,M,,", false},
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,0,09,0.9,42,M,56,M,,", false},
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,1,09,0.9,42,M,56,M,,", true},
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,2,09,0.9,42,M,56,M,,", true},
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,3,09,0.9,42,M,56,M,,", true},
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,4,09,0.9,42,M,56,M,,", true},
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,5,09,0.9,42,M,56,M,,", true},
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,6,09,0.9,42,M,56,M,,", false},
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,7,09,0.9,42,M,56,M,,", false},
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,8,09,0.9,42,M,56,M,,", false},
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,9,09,0.9,42,M,56,M,,", true},
        // Dilution of 10 and more.
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,1,09,,42,M,56,M,,", true},
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,1,04,9.9,42,M,56,M,,", true},
        {"GPGGA,074201.00,5512.0010,N,00306.0000,E,1,04,10.0,42,M,56,M,,", false},
        // State and mode of RMC.
        {"GPRMC,074201.00,A,5512.0010,N,00306.0000,E,4.0,0.0,050926,,", true},
        {"GPRMC,074201.00,A,5512.0010,N,00306.0000,E,4.0,0.0,050926,,,A", true},
        {"GPRMC,074201.00,A,5512.0010,N,00306.0000,E,4.0,0.0,050926,,,D", true},
        {"GPRMC,074201.00,A,5512.0010,N,00306.0000,E,4.0,0.0,050926,,,F", true},
        {"GPRMC,074201.00,A,5512.0010,N,00306.0000,E,4.0,0.0,050926,,,P", true},
        {"GPRMC,074201.00,A,5512.0010,N,00306.0000,E,4.0,0.0,050926,,,R", true},
        {"GPRMC,074201.00,V,5512.0010,N,00306.0000,E,4.0,0.0,050926,,", false},
        {"GPRMC,074201.00,V,5512.0010,N,00306.0000,E,4.0,0.0,050926,,,A", false},
        {"GPRMC,074201.00,A,5512.0010,N,00306.0000,E,4.0,0.0,050926,,,N", false},
        {"GPRMC,074201.00,A,5512.0010,N,00306.0000,E,4.0,0.0,050926,,,E", false},
        {"GPRMC,074201.00,A,5512.0010,N,00306.0000,E,4.0,0.0,050926,,,M", false},
        {"GPRMC,074201.00,A,5512.0010,N,00306.0000,E,4.0,0.0,050926,,,S", false},
        // GLL, with and without state and mode.
        {"GPGLL,5512.0010,N,00306.0000,E,074201.00", true},
        {"GPGLL,5512.0010,N,00306.0000,E,074201.00,A", true},
        {"GPGLL,5512.0010,N,00306.0000,E,074201.00,A,A", true},
        {"GPGLL,5512.0010,N,00306.0000,E,074201.00,V", false},
        {"GPGLL,5512.0010,N,00306.0000,E,074201.00,V,A", false},
        {"GPGLL,5512.0010,N,00306.0000,E,074201.00,A,N", false},
        {"GPGLL,5512.0010,N,00306.0000,E,074201.00,A,E", false},
        {"GPGLL,5512.0010,N,00306.0000,E,074201.00,A,M", false},
        {"GPGLL,5512.0010,N,00306.0000,E,074201.00,A,S", false},
    };
}

TEST(NmeaFix, IsOneOnlyInTheModesThatMeasure) {
    for (const Mode& mode : modes()) {
        const auto read = readText(fixAt(0, 0) + depth(1.0) + sentence(mode.body) + depth(2.0) +
                                   fixAt(2, 2) + depth(3.0));
        ASSERT_TRUE(read) << mode.body;
        ASSERT_EQ(read->soundings.size(), mode.isFix ? 3U : 2U) << mode.body;
        EXPECT_DOUBLE_EQ(read->soundings.front().place.lat_deg, 55.2) << mode.body;
        EXPECT_NEAR(read->soundings.back().place.lat_deg, 55.2 + 0.002 / 60.0, 1e-12) << mode.body;
        if (mode.isFix) {
            EXPECT_NEAR(read->soundings[1].place.lat_deg, 55.2 + 0.001 / 60.0, 1e-12) << mode.body;
            EXPECT_EQ(read->report.refusedCount(), 0U) << mode.body;
        } else {
            EXPECT_EQ(read->soundings[1].shown, units::Depth::metres(3.0)) << mode.body;
            EXPECT_EQ(read->report.refused.at("void_fix").count, 1U) << mode.body;
            EXPECT_EQ(read->report.refused.at("void_fix").firstText, "SDDPT 2 m") << mode.body;
        }
    }
}

TEST(NmeaFix, ThatIsVoidTakesBackAnotherOfTheSameMoment) {
    const std::string moment = "GPGGA,074201.00,5512.0010,N,00306.0000,E,";
    for (const bool isVoidFirst : {false, true}) {
        const std::string fixed = fixAt(1, 1);
        const std::string lost = sentence(moment + "0,00,0.9,42,M,56,M,,");
        const auto read =
            readText(fixAt(0, 0) + depth(1.0) + (isVoidFirst ? lost + fixed : fixed + lost) +
                     depth(2.0) + fixAt(2, 2) + depth(3.0));
        ASSERT_TRUE(read);
        EXPECT_EQ(read->soundings.size(), 2U);
        EXPECT_EQ(read->report.refused.at("void_fix").count, 1U);
    }
}

TEST(NmeaFix, WithAPositionThatCannotBeIsCountedAndUsedForNothing) {
    for (const char* place : {"5560.0000,N,00306.0000,E", "9001.0000,N,00306.0000,E",
                              "5512.0000,N,18001.0000,E", "5512.0000,X,00306.0000,E",
                              "-5512.0000,N,00306.0000,E", "5512.0000,,00306.0000,E", ",N,,E"}) {
        const auto read =
            readText(fixAt(0, 0) + depth(1.0) +
                     sentence(std::string("GPGLL,") + place + ",074201.00,A,A") + depth(2.0));
        ASSERT_TRUE(read) << place;
        EXPECT_EQ(read->soundings.size(), 1U) << place;
        EXPECT_EQ(read->report.refused.at("bad_position").count, 1U) << place;
        EXPECT_EQ(read->report.refused.at("bad_position").firstLine, 3U) << place;
        EXPECT_EQ(read->report.refused.at("void_fix").count, 1U) << place;
    }
}

struct Angle {
    const char* fields;
    std::optional<double> degrees;
};

TEST(NmeaSentence, ReadsAnglesOfAllFourSidesAndRefusesOthers) {
    const std::vector<Angle> angles{{"4533.35,N", 45.0 + (33.0 + 0.35) / 60.0}, // NMEA Revealed
                                    {"4533.35,S", -(45.0 + 33.35 / 60.0)},
                                    {"12118.86,E", 121.0 + 18.86 / 60.0},
                                    {"12118.86,W", -(121.0 + 18.86 / 60.0)},
                                    {"0059.9999,N", 59.9999 / 60.0},
                                    {"9000.0000,N", 90.0},
                                    {"9000.0001,N", std::nullopt},
                                    {"18000.0000,W", -180.0},
                                    {"18000.0001,W", std::nullopt},
                                    {"4560.0000,N", std::nullopt},
                                    {"4533.35,NN", std::nullopt},
                                    {"4533.35,", std::nullopt},
                                    {",N", std::nullopt}};
    for (const Angle& angle : angles) {
        NmeaSentence one;
        const std::string text = std::string("$GPGLL,") + angle.fields;
        ASSERT_TRUE(takeApart(text, one));
        const auto found = one.angle_deg(1);
        ASSERT_EQ(found.has_value(), angle.degrees.has_value()) << angle.fields;
        EXPECT_NEAR(found.value_or(0.0), angle.degrees.value_or(0.0), 1e-12) << angle.fields;
    }
}

struct Time {
    const char* text;
    std::optional<double> seconds;
};

TEST(NmeaSentence, ReadsTimesOfDayAndRefusesOthers) {
    const std::vector<Time> times{{"000000", 0.0},          {"010203.25", 3723.25},
                                  {"235959.5", 86399.5},    {"235960", 86400.0},
                                  {"235961", std::nullopt}, {"236000", std::nullopt},
                                  {"240000", std::nullopt}, {"-10000", std::nullopt},
                                  {"12345", std::nullopt},  {"", std::nullopt}};
    for (const Time& time : times) {
        NmeaSentence one;
        const std::string text = std::string("$GPZDA,") + time.text;
        ASSERT_TRUE(takeApart(text, one));
        const auto found = one.timeOfDay_s(1);
        ASSERT_EQ(found.has_value(), time.seconds.has_value()) << time.text;
        EXPECT_NEAR(found.value_or(0.0), time.seconds.value_or(0.0), 1e-9) << time.text;
    }
}

TEST(NmeaGap, PutsNoDepthBetweenFixesThatAreMoreThanFiveSecondsApart) {
    const auto between = [](int after_s) {
        return readText(fixAt(0, 0) + depth(1.0) + sentence("GPZDA,074202.00,05,09,2026,00,00") +
                        depth(2.0) + fixAt(after_s, 50) + depth(3.0));
    };
    const auto near = between(5);
    ASSERT_TRUE(near);
    ASSERT_EQ(near->soundings.size(), 3U);
    // Two of five seconds on the way of 50 thousandths of a minute.
    EXPECT_NEAR(near->soundings[1].place.lat_deg, 55.2 + 0.4 * 0.050 / 60.0, 1e-12);
    EXPECT_EQ(units::isoText(*near->soundings[1].time), "2026-09-05T07:42:02Z");
    const auto far = between(6);
    ASSERT_TRUE(far);
    ASSERT_EQ(far->soundings.size(), 2U);
    EXPECT_EQ(far->soundings[1].shown, units::Depth::metres(3.0));
    EXPECT_EQ(far->report.refused.at("no_position").count, 1U);
    EXPECT_EQ(far->report.refused.at("no_position").firstLine, 4U);
}

TEST(NmeaGap, PutsNoDepthBeforeTheFirstFixOrBehindTheLast) {
    const auto read = readText(depth(0.5) + sentence("GPZDA,074158.00,05,09,2026,00,00") +
                               depth(1.0) + fixAt(0, 0) + depth(2.0) +
                               sentence("GPZDA,074202.00,05,09,2026,00,00") + depth(3.0));
    ASSERT_TRUE(read);
    ASSERT_EQ(read->soundings.size(), 1U);
    EXPECT_EQ(read->soundings[0].shown, units::Depth::metres(2.0));
    EXPECT_EQ(read->report.refused.at("no_position").count, 3U);
    EXPECT_EQ(read->report.read, 4U);
}

TEST(NmeaGap, ABreakOfMoreThanTenSecondsBeginsAPass) {
    const auto starts = [](int second) {
        const auto read = readText(fixAt(0, 0) + depth(1.0) + fixAt(second, 1) + depth(2.0));
        return read ? read->passStarts : std::vector<std::size_t>{};
    };
    EXPECT_EQ(starts(10), (std::vector<std::size_t>{0}));
    EXPECT_EQ(starts(11), (std::vector<std::size_t>{0, 1}));
}

TEST(NmeaClock, PassesOverAMomentThatWasBeforeAndBeginsAnewAfterALongStepBack) {
    const auto back = [](int second) {
        return readText(fixAt(20, 0) + depth(1.0) + fixAt(second, 9) + depth(2.0) + fixAt(22, 2) +
                        depth(3.0));
    };
    const auto little = back(19); // Its fix is not used: both depths lie between 20 s and 22 s.
    ASSERT_TRUE(little);
    ASSERT_EQ(little->soundings.size(), 3U);
    EXPECT_DOUBLE_EQ(little->soundings[0].place.lat_deg, 55.2);
    EXPECT_NEAR(little->soundings[1].place.lat_deg, 55.2 + 0.001 / 60.0, 1e-12);
    EXPECT_EQ(little->passStarts.size(), 1U);
    const auto far = back(15);
    ASSERT_TRUE(far);
    ASSERT_EQ(far->soundings.size(), 3U);
    EXPECT_NEAR(far->soundings[1].place.lat_deg, 55.2 + 0.009 / 60.0, 1e-12);
    EXPECT_EQ(far->passStarts, (std::vector<std::size_t>{0, 1}));
}

TEST(NmeaClock, AFixWithoutATimeTicksByASecondAndGivesNoTime) {
    const auto gll = [](const char* minutes) {
        return sentence(std::string("GPGLL,5512.") + minutes + ",N,00306.0000,E,,A");
    };
    const auto read = readText(gll("0000") + depth(1.0) + depth(2.0) + gll("0010") + depth(3.0));
    ASSERT_TRUE(read);
    ASSERT_EQ(read->soundings.size(), 3U);
    EXPECT_NEAR(read->soundings[1].place.lat_deg, 55.2 + 0.0005 / 60.0, 1e-12);
    EXPECT_FALSE(read->soundings[0].time);
    ASSERT_EQ(read->report.notes.size(), 1U);
    EXPECT_EQ(read->report.notes[0], "the log has no date: its soundings are without time");
}

TEST(NmeaClock, WeeksRunOverAreSaidOfDatesBefore2010Only) {
    const auto notesOf = [](const std::string& date) {
        const auto read = readText(
            sentence("GPRMC,074200.00,A,5512.0000,N,00306.0000,E,4.0,0.0," + date + ",,,A") +
            depth(1.0));
        return read ? read->report.notes : std::vector<std::string>{"not read"};
    };
    EXPECT_EQ(notesOf("311209"),
              (std::vector<std::string>{
                  "the log begins on 2009-12-31: if that should be 2029-08-16, the receiver's "
                  "count of GPS weeks has run over (1024 weeks); times were left as they are"}));
    EXPECT_TRUE(notesOf("010110").empty());
}

TEST(NmeaClock, TakesTwoFiguresOfAYearFrom1980To2079) {
    const auto dayOf = [](const std::string& date) {
        const auto read = readText(
            sentence("GPRMC,074200.00,A,5512.0000,N,00306.0000,E,4.0,0.0," + date + ",,,A") +
            depth(1.0));
        return read && read->soundings[0].time ? units::isoText(*read->soundings[0].time)
                                               : std::string("none");
    };
    EXPECT_EQ(dayOf("311279"), "2079-12-31T07:42:00Z");
    EXPECT_EQ(dayOf("010181"), "1981-01-01T07:42:00Z");
    EXPECT_EQ(dayOf("311280"), "none"); // A receiver that never had a fix.
    EXPECT_EQ(dayOf("300226"), "none"); // No such day: a log without date.
}

} // namespace

} // namespace readers
