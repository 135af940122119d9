// SPDX-License-Identifier: GPL-3.0-or-later
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

std::string fix(const std::string& time, const std::string& minutes, const std::string& date) {
    return sentence("GPRMC," + time + ",A,5512." + minutes + ",N,00306.0000,E,4.0,0.0," + date +
                    ",,,A");
}

base::Result<ReadSoundings> readText(const std::string& text,
                                     const SoundingFileSettings& settings = {}) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    return readNmea(scratch.file("log.nmea", text), settings, progress);
}

TEST(ReadNmea, PlacesADepthAtTheFixOfItsTime) {
    const auto read = readText(fix("074200.00", "0000", "050926") + sentence("SDDPT,3.7,0.0") +
                               fix("074201.00", "0010", "050926") + sentence("SDDPT,3.9,0.0"));
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->soundings.size(), 2U);
    EXPECT_DOUBLE_EQ(read->soundings[0].place.lat_deg, 55.2);
    EXPECT_DOUBLE_EQ(read->soundings[0].place.lon_deg, 3.1);
    EXPECT_EQ(read->soundings[1].shown, units::Depth::metres(3.9));
    EXPECT_EQ(units::isoText(*read->soundings[0].time), "2026-09-05T07:42:00Z");
    EXPECT_EQ(read->reference, DepthReference::belowTransducer);
}

TEST(ReadNmea, SpreadsSeveralDepthsEvenlyBetweenTwoFixes) {
    const auto read = readText(fix("074200.00", "0000", "050926") + sentence("SDDPT,1.0,0.0") +
                               sentence("SDDPT,2.0,0.0") + sentence("SDDPT,3.0,0.0") +
                               sentence("SDDPT,4.0,0.0") + fix("074202.00", "0400", "050926"));
    ASSERT_TRUE(read);
    ASSERT_EQ(read->soundings.size(), 4U);
    for (int i = 0; i < 4; ++i) {
        EXPECT_NEAR(read->soundings[static_cast<std::size_t>(i)].place.lat_deg,
                    55.2 + 0.01 * i / 60.0, 1e-12);
    }
    EXPECT_EQ(units::isoText(*read->soundings[1].time), "2026-09-05T07:42:00.500Z");
}

TEST(ReadNmea, PlacesNoDepthAcrossAGap) {
    const auto read = readText(fix("074200.00", "0000", "050926") + sentence("SDDPT,1.0,0.0") +
                               sentence("SDDPT,2.0,0.0") + fix("074230.00", "0400", "050926") +
                               sentence("SDDPT,3.0,0.0"));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->soundings.size(), 2U);
    EXPECT_EQ(read->report.refused.at("no_position").count, 1U);
    EXPECT_EQ(read->passStarts, (std::vector<std::size_t>{0, 1}));
}

TEST(ReadNmea, UsesNoDepthWhileTheReceiverIsLost) {
    const auto read =
        readText(fix("074200.00", "0000", "050926") + sentence("SDDPT,1.0,0.0") +
                 sentence("GPRMC,074201.00,V,,,,,,,050926,,,N") + sentence("SDDPT,2.0,0.0") +
                 fix("074202.00", "0020", "050926") + sentence("SDDPT,3.0,0.0"));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->soundings.size(), 2U);
    EXPECT_EQ(read->report.refused.at("void_fix").count, 1U);
}

TEST(ReadNmea, GoesOverMidnightAndTheYearWithGgaAlone) {
    // The rows of check-values for the roll-over: GGA has no date of its own.
    const auto gga = [](const std::string& time) {
        return sentence("GPGGA," + time + ",5330.1234,N,00805.4321,W,2,09,0.9,42.1,M,56.3,M,,");
    };
    const auto read = readText(
        "$GPRMC,235959.50,A,5330.1234,N,00805.4321,W,1.2,270.0,311224,,,D*44\r\n" +
        sentence("SDDPT,4.20,0.35,100.0") + gga("000000.50") + sentence("SDDPT,4.30,0.35,100.0"));
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->soundings.size(), 2U);
    EXPECT_EQ(units::isoText(*read->soundings[0].time), "2024-12-31T23:59:59.500Z");
    EXPECT_EQ(units::isoText(*read->soundings[1].time), "2025-01-01T00:00:00.500Z");
    EXPECT_NEAR(read->soundings[0].shown.inMetres(), 4.55, 1e-12);
    EXPECT_EQ(read->reference, DepthReference::belowSurface);
    EXPECT_NEAR(read->soundings[0].place.lon_deg, -8.090535, 1e-9);
}

TEST(ReadNmea, AddsNoOffsetDownToTheKeel) {
    const auto read = readText(fix("074200", "0000", "050926") + "$SDDPT,4.20,-0.25*7B\r\n");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->soundings[0].shown, units::Depth::metres(4.20));
    EXPECT_EQ(read->reference, DepthReference::belowTransducer);
}

TEST(ReadNmea, TakesFeetOrFathomsWhereMetresAreMissing) {
    const auto read = readText(fix("074200", "0000", "050926") + sentence("SDDBT,10.0,f,,M,,F") +
                               fix("074201", "0010", "050926") + sentence("SDDBT,,f,,M,2.0,F"));
    ASSERT_TRUE(read);
    EXPECT_DOUBLE_EQ(read->soundings[0].shown.inMetres(), 3.048);
    EXPECT_DOUBLE_EQ(read->soundings[1].shown.inMetres(), 3.6576);
}

TEST(ReadNmea, TakesTheRichestSourceAndLetsTheUserChoose) {
    const std::string text = fix("074200", "0000", "050926") + sentence("SDDBT,,f,4.0,M,,F") +
                             sentence("IIDPT,4.4,0.0") + fix("074201", "0010", "050926") +
                             sentence("IIDPT,4.5,0.0");
    const auto richest = readText(text);
    ASSERT_TRUE(richest);
    EXPECT_EQ(richest->depthSource, "IIDPT");
    ASSERT_EQ(richest->depthSources.size(), 2U);
    EXPECT_EQ(richest->depthSources[1], (DepthSource{"SDDBT", 1}));
    SoundingFileSettings settings;
    settings.depthSource = "SDDBT";
    const auto chosen = readText(text, settings);
    ASSERT_TRUE(chosen);
    EXPECT_EQ(chosen->soundings.size(), 1U);
    settings.depthSource = "XXDPT";
    const auto wrong = readText(text, settings);
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().kind, base::ErrorKind::wrongUse);
    EXPECT_NE(wrong.error().whatToDo.find("IIDPT"), std::string::npos);
}

TEST(ReadNmea, CountsBadSumsAndCutSentencesAndQuotesTheFirst) {
    const auto read =
        readText(fix("074200", "0000", "050926") + "$SDDPT,3.7,0.0*00\r\n" + "$SDDPT,9\r\n" +
                 sentence("SDDPT,,0.0") + sentence("SDDPT,3.9,0.0") + "$SDDPT,4.");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->soundings.size(), 1U);
    const RefusedRows& bad = read->report.refused.at("bad_checksum");
    EXPECT_EQ(bad.count, 1U);
    EXPECT_EQ(bad.firstLine, 2U);
    EXPECT_EQ(bad.firstText, "$SDDPT,3.7,0.0*00");
    EXPECT_EQ(read->report.refused.at("truncated").count, 2U);
    EXPECT_EQ(read->report.refused.at("no_depth").count, 1U);
    EXPECT_EQ(read->report.read, 5U);
    EXPECT_EQ(read->report.used, 1U);
}

TEST(ReadNmea, BelievesALogThatHasNoSumsAtAll) {
    const auto read = readText("$GPRMC,074200,A,5512.0,N,00306.0,E,4.0,0.0,050926,,\n"
                               "$SDDPT,3.7,0.0\n");
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->soundings.size(), 1U);
}

TEST(ReadNmea, SkipsTagBlocksTimesOtherSentencesAndJunk) {
    using namespace std::string_literals;
    const auto read = readText(
        "\\\\s:yx,c:1788594120*5D\\\\"s + fix("074200", "0000", "050926") +
        "\x00\x01\xff\xfe junk\r\n"s + "!AIVDM,1,1,,A,13aI8e?P00PGpU:NR6s00?vT2000,0*00\r\n" +
        "$PXYZ,TEST,1,2.5*29\r\n" + "2026-09-05 07:42:00.3 " + sentence("SDDPT,3.7,0.0"));
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->soundings.size(), 1U);
    EXPECT_EQ(read->report.refusedCount(), 0U);
}

TEST(ReadNmea, PassesOverTagBlocksAlsoOfGroupsAndWithADollarInThem) {
    const auto read =
        readText("\\g:1-2-77,s:r3669961,c:1788594120*5D\\" + fix("074200", "0000", "050926") +
                 "\\g:2-2-77*5B\\" + sentence("SDDPT,3.7,0.0") + "\\s:$GPRMC,d:$SDDPT*00\\" +
                 fix("074201", "0010", "050926") + "\\c:1788594121*00\\" +
                 sentence("SDDPT,3.9,0.0") + "\\s:cut off\r\n" + fix("074202", "0020", "050926") +
                 "junk \\ " + sentence("SDDPT,4.1,0.0"));
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->soundings.size(), 3U);
    EXPECT_EQ(read->report.refusedCount(), 0U) << read->report.refusedText();
}

TEST(ReadNmea, PassesOverTheTimeThatALoggerPutsBefore) {
    for (const char* prefix : {"2026-09-05T07:42:00.3Z ", "[1788594120.123] ", "07:42:00,",
                               "A;1788594120;", "12345\t"}) {
        const auto read =
            readText(prefix + fix("074200", "0000", "050926") + prefix + sentence("SDDPT,3.7,0.0"));
        ASSERT_TRUE(read) << prefix;
        EXPECT_EQ(read->soundings.size(), 1U) << prefix;
        EXPECT_EQ(read->report.refusedCount(), 0U) << prefix;
    }
}

TEST(ReadNmea, PassesOverSentencesThatSayNothingOfUse) {
    const auto read = readText(fix("074200", "0000", "050926") +
                               "$GPVTG,220.86,T,,M,2.550,N,4.724,K,A*34\r\n"
                               "$GPVTG,220.86,T,,M,2.550,N,4.724,K,A*00\r\n" +
                               sentence("GPVTG,270.0,,,") + sentence("SDDPT,3.7,0.0"));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->soundings.size(), 1U);
    EXPECT_EQ(read->report.read, 1U);
}

TEST(ReadNmea, SurvivesEveryByteBetweenTwoSentences) {
    for (int c = 0; c < 256; ++c) {
        const std::string junk(7, static_cast<char>(c));
        std::string text = fix("074200", "0000", "050926");
        text.append(junk).append(sentence("SDDPT,3.7,0.0"));
        text.append(junk).append(fix("074201", "0010", "050926"));
        const auto read = readText(text);
        ASSERT_TRUE(read) << c;
        EXPECT_EQ(read->soundings.size(), 1U) << c;
    }
}

TEST(ReadNmea, GoesOverTheEndsOfMonthsByEachSentenceWithADate) {
    struct RollOver {
        const char* dayBefore; ///< ddmmyy
        const char* iso;       ///< Of the day after.
    };
    for (const RollOver& over :
         {RollOver{"280226", "2026-03-01"}, RollOver{"280228", "2028-02-29"},
          RollOver{"300926", "2026-10-01"}, RollOver{"311226", "2027-01-01"}}) {
        // By RMC for the day before, and nothing but the time of day after it.
        const auto read = readText(
            fix("235959.50", "0000", over.dayBefore) + sentence("SDDPT,3.7,0.0") +
            sentence("GPGLL,5512.0010,N,00306.0000,E,000000.50,A,A") + sentence("SDDPT,3.8,0.0"));
        ASSERT_TRUE(read) << over.iso;
        ASSERT_EQ(read->soundings.size(), 2U) << over.iso;
        EXPECT_EQ(units::isoText(*read->soundings[1].time),
                  std::string(over.iso) + "T00:00:00.500Z");
        EXPECT_EQ(read->passStarts.size(), 1U) << over.iso;
    }
}

TEST(ReadNmea, TakesTheDateThatComesLateForAllThatWasBefore) {
    const auto read =
        readText(sentence("GPGLL,5512.0000,N,00306.0000,E,235959,A,A") + sentence("SDDPT,3.7,0.0") +
                 sentence("GPGLL,5512.0010,N,00306.0000,E,000000,A,A") + sentence("SDDPT,3.8,0.0") +
                 sentence("GPZDA,000001,01,01,2027,00,00") +
                 sentence("GPGLL,5512.0020,N,00306.0000,E,000001,A,A"));
    ASSERT_TRUE(read);
    ASSERT_EQ(read->soundings.size(), 2U);
    EXPECT_EQ(units::isoText(*read->soundings[0].time), "2026-12-31T23:59:59Z");
    EXPECT_EQ(units::isoText(*read->soundings[1].time), "2027-01-01T00:00:00Z");
}

TEST(ReadNmea, SaysThatAReceiverMayBe1024WeeksBehindAndChangesNothing) {
    // 2026-09-05 less 7168 days.
    const auto behind = readText(fix("074200", "0000", "200107") + sentence("SDDPT,3.7,0.0"));
    ASSERT_TRUE(behind);
    EXPECT_EQ(units::isoText(*behind->soundings[0].time), "2007-01-20T07:42:00Z");
    ASSERT_EQ(behind->report.notes.size(), 1U);
    EXPECT_NE(behind->report.notes[0].find("2026-09-05"), std::string::npos);
    const auto right = readText(fix("074200", "0000", "050926") + sentence("SDDPT,3.7,0.0"));
    ASSERT_TRUE(right);
    EXPECT_TRUE(right->report.notes.empty());
}

TEST(ReadNmea, PlacesUpToFiveSecondsBetweenFixesAndNoFarther) {
    const auto between = [](const std::string& second) {
        return readText(fix("074200", "0000", "050926") + sentence("SDDPT,1.0,0.0") +
                        sentence("SDDPT,2.0,0.0") + fix(second, "0500", "050926"));
    };
    const auto near = between("074205");
    const auto far = between("074206");
    ASSERT_TRUE(near && far);
    EXPECT_EQ(near->soundings.size(), 2U);
    EXPECT_EQ(far->soundings.size(), 1U);
    EXPECT_EQ(far->report.refused.at("no_position").count, 1U);
}

TEST(ReadNmea, ReadsALogOfThousandsOfTalkersInOneGo) {
    std::string text = fix("074200", "0000", "050926");
    const std::string letters = "ABCDEFGHIJKLMNOQRSTUVWXYZ0123456789"; // P is proprietary.
    for (const char a : letters) {
        for (const char b : letters) {
            text += sentence(std::string{a, b} + "DPT,3.7,0.0");
        }
    }
    const auto read = readText(text);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->depthSources.size(), letters.size() * letters.size());
    EXPECT_EQ(read->soundings.size(), 1U);
}

TEST(ReadNmea, MeansTheWaterTemperature) {
    const auto read = readText(fix("074200", "0000", "050926") + sentence("YXMTW,17.0,C") +
                               sentence("SDDPT,3.7,0.0") + sentence("YXMTW,18.0,C"));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->waterTemperature, units::Temperature::celsius(17.5));
}

TEST(ReadNmea, LeavesOutFixesThatAreEstimatedOrSpreadWide) {
    const auto gga = [](const std::string& rest) {
        return sentence("GPGGA,074200,5512.0,N,00306.0,E," + rest + ",42.1,M,56.3,M,,") +
               sentence("SDDPT,3.7,0.0");
    };
    EXPECT_TRUE(readText(gga("1,09,0.9")));
    EXPECT_FALSE(readText(gga("6,09,0.9"))); // dead reckoning
    EXPECT_FALSE(readText(gga("0,00,0.9")));
    EXPECT_FALSE(readText(gga("1,03,25.0")));
}

} // namespace

} // namespace readers
