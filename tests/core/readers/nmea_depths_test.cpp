// SPDX-License-Identifier: GPL-3.0-or-later
// What the depth sentences of an NMEA log mean. Sentences of "NMEA Revealed" 2.24 (the gpsd
// project, January 2021) where they are published there; others follow its rules.
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

const std::string fix = sentence("GPRMC,074200.00,A,5512.0000,N,00306.0000,E,4.0,0.0,050926,,,A");

/// Ends the second that `fix` began, so that all depths between have a place.
const std::string nextFix =
    sentence("GPRMC,074201.00,A,5512.0010,N,00306.0000,E,4.0,0.0,050926,,,A");

base::Result<ReadSoundings> readText(const std::string& text,
                                     const SoundingFileSettings& settings = {}) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    return readNmea(scratch.file("log.nmea", text), settings, progress);
}

struct DepthRow {
    std::string text;
    const char* source;
    double depth_m;
    DepthReference reference;
};

TEST(NmeaDepth, IsWhatEachSentenceSaysInMetresBelowWhatItCountsFrom) {
    using enum DepthReference;
    const std::vector<DepthRow> rows{
        // Offset of DPT: up to the water line, it is added; down to the keel, it is not.
        {"$SDDPT,4.20,0.35,100.0*54\r\n", "SDDPT", 4.55, belowSurface},
        {"$SDDPT,4.20,-0.25*7B\r\n", "SDDPT", 4.20, belowTransducer},
        {"$INDPT,2.3,0.0*46\r\n", "INDPT", 2.3, belowTransducer},
        {sentence("SDDPT,4.20,"), "SDDPT", 4.20, belowTransducer},
        {sentence("SDDPT,4.20"), "SDDPT", 4.20, belowTransducer},
        {sentence("SDDPT,4.20,0.01"), "SDDPT", 4.21, belowSurface},
        // Feet, metres and fathoms stand beside one another; metres count first.
        {"$SDDBT,7.8,f,2.4,M,1.3,F*0D\r\n", "SDDBT", 2.4, belowTransducer},
        {sentence("SDDBT,10.0,f,,M,,F"), "SDDBT", 3.048, belowTransducer},
        {sentence("SDDBT,10.0,f,,M,5.0,F"), "SDDBT", 3.048, belowTransducer},
        {sentence("SDDBT,,f,,M,2.0,F"), "SDDBT", 3.6576, belowTransducer},
        {"$SDDBS,,f,4.55,M,,F*35\r\n", "SDDBS", 4.55, belowSurface},
        {"$SDDBK,,f,3.95,M,,F*26\r\n", "SDDBK", 3.95, belowTransducer},
        {sentence("SDDBK,12.0,f,,M,,F"), "SDDBK", 3.6576, belowTransducer}};
    for (const DepthRow& row : rows) {
        const auto read = readText(fix + row.text);
        ASSERT_TRUE(read) << row.text;
        ASSERT_EQ(read->soundings.size(), 1U) << row.text;
        EXPECT_NEAR(read->soundings[0].shown.inMetres(), row.depth_m, 1e-12) << row.text;
        EXPECT_EQ(read->depthSource, row.source);
        EXPECT_EQ(read->reference, row.reference) << row.text;
        EXPECT_EQ(read->kind, SoundingFileKind::nmea);
        EXPECT_EQ(read->report.read, 1U) << row.text;
        EXPECT_EQ(read->report.used, 1U) << row.text;
        const bool isOfKeel = std::string(row.source) == "SDDBK";
        EXPECT_EQ(read->report.notes,
                  isOfKeel ? std::vector<std::string>{"the depths count from the keel: give the "
                                                      "keel's depth as draft"}
                           : std::vector<std::string>{})
            << row.text;
    }
}

TEST(NmeaDepth, ThatIsNoneIsCounted) {
    for (const char* none : {"SDDPT,,0.35", "SDDBT,,f,,M,,F", "SDDBS,,,,,,", "SDDBT,x,f,y,M,z,F"}) {
        const auto read = readText(fix + sentence(none) + sentence("SDDPT,5.0,0.0") +
                                   sentence("SDDPT,5.0,0.0") + nextFix);
        ASSERT_TRUE(read) << none;
        const bool isOfSameSource = std::string(none).starts_with("SDDPT");
        EXPECT_EQ(read->soundings.size(), 2U) << none;
        EXPECT_EQ(read->report.read, isOfSameSource ? 3U : 2U) << none;
        EXPECT_EQ(read->report.refused.contains("no_depth"), isOfSameSource) << none;
        EXPECT_EQ(read->depthSources.size(), isOfSameSource ? 1U : 2U) << none;
    }
}

TEST(NmeaDepth, OfSeveralSourcesWithAsManyTheOneIsTakenThatSaysMost) {
    const std::string dpt = sentence("SDDPT,1.0,0.0");
    const std::string dbs = sentence("SDDBS,,f,2.0,M,,F");
    const std::string dbt = sentence("SDDBT,,f,3.0,M,,F");
    const std::string dbk = sentence("SDDBK,,f,4.0,M,,F");
    const auto takes = [](const std::string& text) {
        const auto read = readText(fix + text + nextFix);
        return read ? read->depthSource : std::string("none");
    };
    EXPECT_EQ(takes(dbk + dbt + dbs + dpt), "SDDPT");
    EXPECT_EQ(takes(dbk + dbt + dbs), "SDDBS");
    EXPECT_EQ(takes(dbk + dbt), "SDDBT");
    EXPECT_EQ(takes(dbk + dbt + dbk + dpt), "SDDBK"); // Twice as many.
}

TEST(NmeaDepth, OfTwoTalkersAreNotMixed) {
    SoundingFileSettings settings;
    settings.depthSource = "IIDPT";
    const auto read = readText(fix + sentence("SDDPT,1.0,0.5") + sentence("IIDPT,2.0,0.0") +
                                   sentence("SDDPT,3.0,0.5") + nextFix,
                               settings);
    ASSERT_TRUE(read);
    ASSERT_EQ(read->soundings.size(), 1U);
    EXPECT_EQ(read->soundings[0].shown, units::Depth::metres(2.0));
    EXPECT_EQ(read->reference, DepthReference::belowTransducer);
    EXPECT_EQ(read->depthSources, (std::vector<DepthSource>{{"SDDPT", 2}, {"IIDPT", 1}}));
}

struct WaterRow {
    const char* first_c;
    const char* second_c;
    std::optional<double> mean_c;
};

TEST(NmeaTemperature, IsTheMeanOfWhatAWaterCanBe) {
    const std::vector<WaterRow> rows{{"17.9", "17.9", 17.9},         {"0.0", "4.0", 2.0},
                                     {"-2.9", "-2.9", -2.9},         {"-3.0", "8.0", 8.0},
                                     {"44.9", "44.9", 44.9},         {"45.0", "8.0", 8.0},
                                     {"-3.0", "45.0", std::nullopt}, {"", "x", std::nullopt}};
    for (const WaterRow& row : rows) {
        const auto read = readText(fix + sentence(std::string("INMTW,") + row.first_c + ",C") +
                                   sentence("SDDPT,5.0,0.0") +
                                   sentence(std::string("INMTW,") + row.second_c + ",C"));
        ASSERT_TRUE(read) << row.first_c;
        ASSERT_EQ(read->waterTemperature.has_value(), row.mean_c.has_value()) << row.first_c;
        if (row.mean_c) {
            EXPECT_NEAR(read->waterTemperature->inCelsius(), *row.mean_c, 1e-9) << row.first_c;
        }
    }
    EXPECT_NEAR(
        readText(fix + "$INMTW,17.9,C*1B\r\n$INDPT,2.3,0.0*46\r\n")->waterTemperature->inCelsius(),
        17.9, 1e-12);
}

TEST(NmeaSum, ThatIsWrongTakesNeitherDepthNorPlaceNorTemperature) {
    // Printed with these sums in documents; the right ones are 64, 30 and 78.
    for (const char* misprint :
         {"$SDDPT,15.2,0.5*68", "$SDDBT,12.3,f,3.7,M,2.0,F*35", "$SDDPT,4.2,0.5,*4F"}) {
        const auto read =
            readText(fix + misprint + "\r\n" + sentence("SDDPT,5.0,0.0") + "$SDMTW,12.4,C*04\r\n");
        ASSERT_TRUE(read) << misprint;
        ASSERT_EQ(read->soundings.size(), 1U) << misprint;
        EXPECT_EQ(read->soundings[0].shown, units::Depth::metres(5.0));
        EXPECT_FALSE(read->waterTemperature);
        EXPECT_EQ(read->report.refused.at("bad_checksum"), (RefusedRows{2, 2, misprint}));
        EXPECT_EQ(read->report.read, 3U);
        EXPECT_EQ(read->report.refusedText(),
                  std::string("2 x bad_checksum (first: line 2 '") + misprint + "')");
    }
}

TEST(NmeaSum, TakesSmallHexFiguresAndNoOthers) {
    const std::string body = "SDDPT,4.2,0.5,"; // Sum 78 as NMEA Revealed has it.
    EXPECT_EQ(nmeaChecksum(body), 0x78);
    const auto sumOf = [](std::string_view text) {
        NmeaSentence one;
        return takeApart(text, one) ? one.sum : NmeaSentence::Sum::absent;
    };
    using enum NmeaSentence::Sum;
    EXPECT_EQ(sumOf("$SDDBT,7.8,f,2.4,M,1.3,F*0d"), right);
    EXPECT_EQ(sumOf("$SDDBT,7.8,f,2.4,M,1.3,F*0D"), right);
    EXPECT_EQ(sumOf("$SDDBT,7.8,f,2.4,M,1.3,F*0G"), wrong);
    EXPECT_EQ(sumOf("$SDDBT,7.8,f,2.4,M,1.3,F*0"), wrong);
    EXPECT_EQ(sumOf("$SDDBT,7.8,f,2.4,M,1.3,F*"), wrong);
    EXPECT_EQ(sumOf("$SDDBT,7.8,f,2.4,M,1.3,F"), absent);
}

} // namespace

} // namespace readers
