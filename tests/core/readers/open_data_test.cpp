// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/outline.h"
#include "core/geo/water_frame.h"
#include "core/readers/read_shoreline.h"
#include "core/readers/read_soundings.h"

#include <cmath>
#include <ostream>

#include <gtest/gtest.h>

namespace readers {

namespace {

std::filesystem::path openData(const std::string& name) {
    return std::filesystem::path(MEREMARK_SHARED_DIR) / "data" / name;
}

struct OpenFile {
    const char* name;
    SoundingFileKind kind;
    std::size_t read;
    std::size_t used;
    std::map<std::string, std::size_t> refused;
    double deepest_m;
    DepthReference reference = DepthReference::unknown;
};

void PrintTo(const OpenFile& file, std::ostream* out) {
    *out << file.name;
}

class ReadOpenData : public testing::TestWithParam<OpenFile> {};

TEST_P(ReadOpenData, CountsEveryRow) {
    const OpenFile& expected = GetParam();
    const auto path = openData(expected.name);
    if (!std::filesystem::exists(path)) {
        GTEST_SKIP() << "no open data at " << path;
    }
    base::Progress progress;
    const auto read = readSoundings(path, {}, progress);
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->kind, expected.kind);
    EXPECT_EQ(read->report.read, expected.read);
    EXPECT_EQ(read->report.used, expected.used);
    EXPECT_EQ(read->soundings.size(), expected.used);
    std::map<std::string, std::size_t> refused;
    for (const auto& [reason, rows] : read->report.refused) {
        refused[reason] = rows.count;
    }
    EXPECT_EQ(refused, expected.refused) << read->report.refusedText();
    double deepest_m = 0.0;
    for (const soundings::Sounding& sounding : read->soundings) {
        deepest_m = std::fmax(deepest_m, sounding.shown.inMetres());
    }
    EXPECT_NEAR(deepest_m, expected.deepest_m, 0.005);
    EXPECT_EQ(read->reference, expected.reference);
    ASSERT_FALSE(read->passStarts.empty());
    EXPECT_EQ(read->passStarts.front(), 0U);
}

// Rows and depths as the SOURCE.md of each folder states them.
INSTANTIATE_TEST_SUITE_P(
    All, ReadOpenData,
    testing::Values(
        OpenFile{
            "caputh_de/soundings_2025-01-17.csv", SoundingFileKind::table, 2832, 2832, {}, 9.23},
        OpenFile{
            "caputh_de/soundings_2025-01-22.csv", SoundingFileKind::table, 12224, 12224, {}, 8.05},
        OpenFile{
            "caputh_de/soundings_2025-01-23.csv", SoundingFileKind::table, 8541, 8541, {}, 9.26},
        OpenFile{
            "caputh_de/soundings_2025-01-30.csv", SoundingFileKind::table, 7386, 7386, {}, 9.22},
        OpenFile{"ela227/soundings.csv", SoundingFileKind::table, 1039, 1039, {}, 11.07},
        OpenFile{
            "harbour_public_domain/soundings.csv", SoundingFileKind::table, 3665, 3665, {}, 32.6},
        OpenFile{
            "harbour_public_domain/raw_261005.csv", SoundingFileKind::table, 724, 724, {}, 1.4},
        OpenFile{
            "harbour_public_domain/raw_261033.csv", SoundingFileKind::table, 1701, 1701, {}, 32.6},
        OpenFile{"caputh_de/shore_points.csv", SoundingFileKind::table, 44, 44, {}, 1.5},
        OpenFile{"nmea_logs/underway_decoded.csv", SoundingFileKind::table, 7250, 7250, {}, 38.05},
        OpenFile{"pensacola_bay/soundings.csv",
                 SoundingFileKind::table,
                 2500,
                 2440,
                 {{"negative_depth", 60}},
                 16.71},
        OpenFile{"gpx_made/harbour_depth_ext.gpx", SoundingFileKind::gpx, 917, 917, {}, 26.3},
        OpenFile{"gpx_made/harbour_negative_ele.gpx",
                 SoundingFileKind::gpx,
                 918,
                 917,
                 {{"no_depth", 1}},
                 26.3},
        OpenFile{"nmea_logs/moored_gga_rmc_dbt_dpt_mtw_ais.nmea",
                 SoundingFileKind::nmea,
                 142,
                 142,
                 {},
                 1.1,
                 DepthReference::belowSurface},
        OpenFile{"nmea_logs/underway_gll_zda_dbt.nmea",
                 SoundingFileKind::nmea,
                 1200,
                 1200,
                 {},
                 32.24,
                 DepthReference::belowTransducer},
        OpenFile{"b12_csb/11f79484.geojson", SoundingFileKind::b12, 975, 975, {}, 129.5},
        OpenFile{"b12_csb/650436ee.geojson", SoundingFileKind::b12, 1231, 1231, {}, 4.64},
        OpenFile{"b12_csb/da599ce9.geojson", SoundingFileKind::b12, 1268, 1268, {}, 9.8},
        OpenFile{"b12_csb/11f79484_made.csv", SoundingFileKind::b12, 975, 975, {}, 129.5}));

TEST(OpenData, DecodesALogWithoutDateAsTheExpectedAnswerHasIt) {
    const auto path = openData("nmea_logs/underway_gll_zda_dbt.nmea");
    if (!std::filesystem::exists(path)) {
        GTEST_SKIP() << "no open data at " << path;
    }
    base::Progress progress;
    const auto log = readSoundings(path, {}, progress);
    const auto decoded = readSoundings(openData("nmea_logs/underway_decoded.csv"), {}, progress);
    ASSERT_TRUE(log);
    ASSERT_TRUE(decoded);
    ASSERT_GE(decoded->soundings.size(), log->soundings.size());
    // Where ZDA and GLL tell times a second apart, we place the depth by ZDA's time between two
    // fixes and the answer at the next fix: up to 4 m at its 7 knots.
    std::size_t same = 0;
    for (std::size_t i = 0; i < log->soundings.size(); ++i) {
        const double apart_m =
            geo::courseBetween(log->soundings[i].place, decoded->soundings[i].place)
                .distance.inMetres();
        EXPECT_LT(apart_m, 4.5) << i;
        same += apart_m < 0.1 ? 1U : 0U;
        EXPECT_EQ(log->soundings[i].shown, decoded->soundings[i].shown);
        EXPECT_FALSE(log->soundings[i].time);
    }
    EXPECT_GT(same, log->soundings.size() / 2);
}

TEST(OpenData, SaysThatALogOfPositionsHasNoDepth) {
    const auto path = openData("nmea_logs/gps_only_gga_rmc.nmea");
    if (!std::filesystem::exists(path)) {
        GTEST_SKIP() << "no open data at " << path;
    }
    base::Progress progress;
    const auto read = readSoundings(path, {}, progress);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, base::ErrorKind::unusableInput);
    EXPECT_NE(read.error().what.find("no depth"), std::string::npos);
    EXPECT_EQ(read.error().where, "gps_only_gga_rmc.nmea");
}

TEST(OpenData, TellsLongitudeFromLatitudeByAPlaceNearby) {
    const auto path = openData("harbour_public_domain/raw_261033.csv"); // lat before lon, no header
    if (!std::filesystem::exists(path)) {
        GTEST_SKIP() << "no open data at " << path;
    }
    base::Progress progress;
    SoundingFileSettings settings;
    settings.near = geo::LonLat{8.64, 53.16};
    const auto read = readSoundings(path, settings, progress);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->soundings.front().place, (geo::LonLat{8.639546, 53.161888}));
    EXPECT_EQ(units::isoText(*read->soundings.front().time), "2021-08-26T10:33:57Z");
}

TEST(OpenData, ReadsTheShoreOfARealLake) {
    const auto path = openData("caputh_de/shore.geojson");
    if (!std::filesystem::exists(path)) {
        GTEST_SKIP() << "no open data at " << path;
    }
    base::Progress progress;
    const auto shore = readShoreline(path, std::nullopt, progress);
    ASSERT_TRUE(shore) << shore.error().sentence();
    ASSERT_EQ(shore->size(), 1U);
    const auto frame = geo::WaterFrame::around(shore->front().outer);
    ASSERT_TRUE(frame);
    const auto outline = geo::Outline::make(*shore, *frame);
    ASSERT_TRUE(outline) << outline.error().sentence();
    EXPECT_NEAR(outline->area().inHectares(), 49.44, 0.05); // its SOURCE.md, from UTM
}

} // namespace

} // namespace readers
