// SPDX-License-Identifier: GPL-3.0-or-later
// Grids that somebody already has, brought in as soundings.
#include "core/gdal/coordinates.h"
#include "core/gdal/raster_file.h"
#include "core/readers/read_soundings.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace {

using namespace readers;

base::Progress quiet;
const support::ScratchFolder folder;
const float none = std::numeric_limits<float>::quiet_NaN();

/// Three columns and two rows of 0.001 degrees, the corner at 3 E 55 N.
std::filesystem::path asciiGrid(const std::string& name, const std::string& values) {
    return folder.file(name, "ncols 3\nnrows 2\nxllcorner 3.0\nyllcorner 55.0\ncellsize 0.001\n"
                             "NODATA_value -9999\n" +
                                 values);
}

std::vector<double> depthsOf(const ReadSoundings& read) {
    std::vector<double> depths_m;
    for (const soundings::Sounding& sounding : read.soundings) {
        depths_m.push_back(std::round(sounding.shown.inMetres() * 1e4) / 1e4);
    }
    return depths_m;
}

void expectRefused(const std::filesystem::path& path, const char* what) {
    const auto read = readSoundings(path, {}, quiet);
    ASSERT_FALSE(read.has_value()) << what;
    EXPECT_EQ(read.error().kind, base::ErrorKind::unusableInput);
    EXPECT_NE(read.error().what.find(what), std::string::npos) << read.error().what;
    EXPECT_FALSE(read.error().whatToDo.empty());
}

TEST(ReadGrid, EachCellIsASoundingInItsMiddleAndAPassOfItsOwn) {
    const auto path = asciiGrid("down.asc", "1.5 2.5 -9999\n0.25 3.0 4.0\n");
    EXPECT_EQ(readKindOf(path).value(), SoundingFileKind::grid);
    const auto read = readSoundings(path, {}, quiet);
    ASSERT_TRUE(read.has_value()) << read.error().sentence();
    EXPECT_EQ(depthsOf(*read), (std::vector{1.5, 2.5, 0.25, 3.0, 4.0}));
    EXPECT_NEAR(read->soundings[0].place.lon_deg, 3.0005, 1e-9);
    EXPECT_NEAR(read->soundings[0].place.lat_deg, 55.0015, 1e-9);
    EXPECT_NEAR(read->soundings[4].place.lon_deg, 3.0025, 1e-9);
    EXPECT_EQ(read->passStarts, (std::vector<std::size_t>{0, 1, 2, 3, 4}));
    EXPECT_FALSE(read->soundings[0].time);
}

TEST(ReadGrid, HeightsBelowTheSurfaceAreTurnedAndLandIsRefused) {
    const auto read =
        readSoundings(asciiGrid("up.asc", "-1.5 -2.5 0.75\n-0.25 -3.0 -4.0\n"), {}, quiet);
    ASSERT_TRUE(read.has_value()) << read.error().sentence();
    EXPECT_EQ(depthsOf(*read), (std::vector{1.5, 2.5, 0.25, 3.0, 4.0}));
    EXPECT_EQ(read->report.refused.at("above_surface").count, 1U);
}

TEST(ReadGrid, HeightsAboveTheSeaAreNoDepths) {
    expectRefused(asciiGrid("sea.asc", "291.5 292.5 290.2\n294.25 293.0 290.1\n"),
                  "heights of the bottom");
    expectRefused(asciiGrid("under.asc", "-24.5 -25.5 -24.2\n-24.9 -25.0 -24.1\n"),
                  "heights of the bottom");
    const auto pond = asciiGrid("pond.asc", "1.5 1.6 1.7\n1.5 1.6 1.8\n");
    EXPECT_TRUE(readSoundings(pond, {}, quiet).has_value()) << "a level pond is no mountain";
    expectRefused(asciiGrid("empty.asc", "-9999 -9999 -9999\n-9999 -9999 -9999\n"), "no depths");
}

TEST(ReadGrid, FeetAreFeetWhereTheUserSaysSo) {
    SoundingFileSettings settings;
    settings.unit = DepthUnit::feet;
    const auto read = readSoundings(asciiGrid("feet.asc", "10 2 -9999\n3 4 5\n"), settings, quiet);
    ASSERT_TRUE(read.has_value());
    EXPECT_NEAR(read->soundings[0].shown.inMetres(), 3.048, 1e-5);
}

TEST(ReadGrid, AGeoTiffInAProjectionComesToItsPlaceOnTheEarth) {
    const std::vector<float> values{1.0F, 2.0F, 3.0F, none};
    const auto path = folder.path() / "utm.tif";
    // UTM zone 33 N (EPSG 32633).
    ASSERT_TRUE(gdal::writeRasterFile(path, {.west_m = 360000.0,
                                             .north_m = 5800000.0,
                                             .cell_m = 10.0,
                                             .cols = 2,
                                             .rows = 2,
                                             .values = values,
                                             .wkt = "EPSG:32633",
                                             .description = "depth"}));
    const auto read = readSoundings(path, {}, quiet);
    ASSERT_TRUE(read.has_value()) << read.error().sentence();
    ASSERT_EQ(read->soundings.size(), 3U);
    const auto place = gdal::Coordinates::ofEpsg(32633).value().toEarth({360005.0, 5799995.0});
    EXPECT_NEAR(read->soundings[0].place.lon_deg, place->lon_deg, 1e-9);
    EXPECT_NEAR(read->soundings[0].place.lat_deg, place->lat_deg, 1e-9);
}

TEST(ReadGrid, WithoutASystemOfCoordinatesOnlyDegreesCanBe) {
    const auto path =
        folder.file("nowhere.asc", "ncols 2\nnrows 1\nxllcorner 360000\nyllcorner 5800000\n"
                                   "cellsize 10\n1.5 2.5\n");
    expectRefused(path, "in which system");
    SoundingFileSettings settings;
    settings.epsg = 32633;
    EXPECT_TRUE(readSoundings(path, settings, quiet).has_value());
}

TEST(ReadGrid, OfAGreatOneSomeCellsAreTakenAndItSaysSo) {
    const int side = 1100;
    std::vector<float> values(static_cast<std::size_t>(side) * static_cast<std::size_t>(side));
    for (std::size_t i = 0; i < values.size(); ++i) {
        values[i] = 0.5F + 0.001F * static_cast<float>(i % 4000);
    }
    const auto path = folder.path() / "great.tif";
    ASSERT_TRUE(gdal::writeRasterFile(path, {.west_m = 360000.0,
                                             .north_m = 5800000.0,
                                             .cell_m = 1.0,
                                             .cols = side,
                                             .rows = side,
                                             .values = values,
                                             .wkt = "EPSG:32633",
                                             .description = "depth"}));
    const auto read = readSoundings(path, {}, quiet);
    ASSERT_TRUE(read.has_value()) << read.error().sentence();
    EXPECT_LE(read->soundings.size(), 250'000U);
    EXPECT_GT(read->soundings.size(), 100'000U);
    ASSERT_EQ(read->report.notes.size(), 1U);
    EXPECT_NE(read->report.notes[0].find("one cell in 3"), std::string::npos);
}

} // namespace
