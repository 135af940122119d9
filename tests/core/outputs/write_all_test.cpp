// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_all.h"

#include "core/gdal/raster_file.h"
#include "tests/support/found_water.h"
#include "tests/support/scratch_folder.h"

#include <cmath>
#include <set>

#include <gtest/gtest.h>

namespace {

using support::FoundWater;
using support::ScratchFolder;

base::Progress quiet;

std::set<std::string> namesIn(const std::filesystem::path& folder) {
    std::set<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        names.insert(entry.path().filename().string());
    }
    return names;
}

TEST(WriteAll, WritesEveryFileOfTheContractAndNothingElse) {
    const ScratchFolder folder;
    const FoundWater known;
    const auto to = folder.path() / "a" / "b";
    const auto written = outputs::writeAll(known.water, known.found, known.told(), to, quiet);
    ASSERT_TRUE(written.has_value()) << written.error().sentence();
    EXPECT_EQ(namesIn(to), (std::set<std::string>{
                               "bands.geojson", "contours.geojson", "hypsography.csv", "depth.tif",
                               "log.csv", "marks.gpx", "read-me.txt", "sections.geojson",
                               "shoreline.geojson", "soundings-b12.csv", "soundings-b12.geojson",
                               "soundings.csv", "trust.tif", "zones.geojson"}));
}

TEST(WriteAll, WritesTheDepthGridAsItIs) {
    const ScratchFolder folder;
    const FoundWater known;
    ASSERT_TRUE(outputs::writeAll(known.water, known.found, known.told(), folder.path(), quiet)
                    .has_value());
    const auto raster = gdal::readRasterFile(folder.path() / "depth.tif");
    ASSERT_TRUE(raster.has_value()) << raster.error().sentence();
    const grid::DepthGrid& depth = known.found.drawn->depth;
    ASSERT_EQ(raster->cols, depth.frame().cols());
    ASSERT_EQ(raster->rows, depth.frame().rows());
    EXPECT_EQ(raster->transform[0], depth.frame().west_m());
    EXPECT_EQ(raster->transform[3], depth.frame().north_m());
    EXPECT_NE(raster->wkt.find("Transverse_Mercator"), std::string::npos) << raster->wkt;
    for (std::size_t i = 0; i < depth.size(); ++i) {
        ASSERT_EQ(std::isnan(raster->bands[0][i]), !depth.has(i));
        if (depth.has(i)) {
            ASSERT_EQ(raster->bands[0][i], depth.raw_m()[i]);
        }
    }
}

TEST(WriteAll, GivesNoFileForWhatWasNotDerived) {
    const ScratchFolder folder;
    const FoundWater known;
    ASSERT_TRUE(outputs::writeAll(known.water, {}, {}, folder.path(), quiet).has_value());
    EXPECT_EQ(
        namesIn(folder.path()),
        (std::set<std::string>{"log.csv", "marks.gpx", "read-me.txt", "shoreline.geojson",
                               "soundings-b12.csv", "soundings-b12.geojson", "soundings.csv"}));
}

TEST(WriteAll, SaysWhatKeepsItFromWriting) {
    const ScratchFolder folder;
    const FoundWater known;
    const auto blocked = folder.file("file", "x") / "inside";
    const auto written = outputs::writeAll(known.water, known.found, known.told(), blocked, quiet);
    ASSERT_FALSE(written.has_value());
    EXPECT_EQ(written.error().kind, base::ErrorKind::unwritableOutput);
    const auto nowhere = outputs::writeAll({}, {}, {}, folder.path() / "new", quiet);
    ASSERT_FALSE(nowhere.has_value());
    EXPECT_EQ(nowhere.error().kind, base::ErrorKind::wrongUse);
}

} // namespace
