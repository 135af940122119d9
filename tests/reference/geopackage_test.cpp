// SPDX-License-Identifier: GPL-3.0-or-later
// The water file against the OGC GeoPackage Encoding Standard 1.3 (12-128r17; tag v1.3.0 of
// opengeospatial/geopackage, clauses 1.1.1 and 2.1.3) and against GDAL, which did not write it.
#include "core/gdal/raster_file.h"
#include "core/gdal/vector_source.h"
#include "core/store/geometry_blob.h"
#include "core/store/geopackage.h"
#include "core/store/write_water.h"
#include "tests/support/found_water.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <memory>
#include <optional>
#include <string>

#include <gtest/gtest.h>

namespace {

using support::FoundWater;
using support::ScratchFolder;

base::Progress quiet;

std::string hexOf(const store::GeometryBlob& blob) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string hex;
    for (const std::byte b : blob) {
        hex += digits[std::to_integer<std::size_t>(b) >> 4U];
        hex += digits[std::to_integer<std::size_t>(b) & 15U];
    }
    return hex;
}

/// What a command says on both channels; nothing where the machine has no such command.
std::optional<std::string> saidBy(const std::string& program, const std::string& arguments) {
    if (std::system(("command -v " + program + " >/dev/null 2>&1").c_str()) != 0) {
        return std::nullopt;
    }
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(
        popen((program + " " + arguments + " 2>&1").c_str(), "r"), pclose);
    std::string said;
    std::array<char, 4096> buffer{};
    while (const std::size_t size = fread(buffer.data(), 1, buffer.size(), pipe.get())) {
        said.append(buffer.data(), size);
    }
    return said;
}

class GeoPackage : public testing::Test {
protected:
    void SetUp() override {
        const auto written = store::writeWater(path, known.water, known.found, known.told(), quiet);
        ASSERT_TRUE(written.has_value()) << written.error().sentence();
    }

    const FoundWater known;
    const ScratchFolder folder;
    const std::filesystem::path path = folder.path() / "water.gpkg";
};

TEST(GeoPackageBlob, IsWhatGdalWritesForAPoint) {
    // POINT (-8 53.5) in EPSG:4326, little-endian, no envelope: GDAL 3.6.2.
    EXPECT_EQ(hexOf(store::blobOf(geo::LonLat{-8.0, 53.5})),
              "47500001E6100000010100000000000000000020C00000000000C04A40");
}

TEST_F(GeoPackage, SaysSoInItsHead) {
    const std::string bytes = ScratchFolder::textOf(path);
    ASSERT_GT(bytes.size(), 100U);
    EXPECT_EQ(bytes.substr(0, 16), std::string("SQLite format 3\0", 16));
    // application_id at byte 68 and user_version at byte 60, both big-endian (SQLite file format).
    EXPECT_EQ(bytes.substr(68, 4), "GPKG");
    EXPECT_EQ(bytes.substr(60, 4), std::string("\0\0\x28\x3C", 4)); // 10300
    // Rollback journal: both version numbers 1, so that any reader opens it, read-only media too.
    EXPECT_EQ(bytes.substr(18, 2), "\x01\x01");
}

TEST_F(GeoPackage, HoldsEveryLayerForGdal) {
    auto source = gdal::VectorSource::open(path);
    ASSERT_TRUE(source.has_value()) << source.error().sentence();
    EXPECT_EQ(source->format(), "GPKG");
    std::map<std::string, std::size_t> counts;
    for (std::size_t layer = 0; layer < source->layers().size(); ++layer) {
        std::size_t& count = counts[source->layers()[layer].name];
        const auto read = source->forEach(
            layer,
            [&](const gdal::Feature& feature) {
                EXPECT_FALSE(feature.offEarth);
                ++count;
                return true;
            },
            quiet);
        EXPECT_TRUE(read.has_value()) << read.error().sentence();
    }
    EXPECT_EQ(counts["soundings"], 200U);
    EXPECT_EQ(counts["shoreline"], 1U);
    EXPECT_EQ(counts["stays"], 2U);
    EXPECT_EQ(counts["fish"], 2U);
    EXPECT_EQ(counts["contours"], 2U);
    EXPECT_EQ(counts["bands"], 2U);
    EXPECT_EQ(counts["zones"], 2U);
    EXPECT_EQ(counts["sections"], 1U);
    EXPECT_EQ(counts["marks"], 1U);
    EXPECT_EQ(counts["survey_days"], 1U);
    EXPECT_EQ(counts["closed_water"], 1U);
    EXPECT_EQ(counts["weed_notes"], 1U);
    EXPECT_EQ(counts["lead_line"], 1U);
}

TEST_F(GeoPackage, PutsASoundingWhereItIs) {
    auto source = gdal::VectorSource::open(path);
    ASSERT_TRUE(source.has_value());
    const auto& layers = source->layers();
    const auto soundings = std::ranges::find(layers, "soundings", &gdal::Layer::name);
    ASSERT_NE(soundings, layers.end());
    std::vector<geo::LonLat> places;
    ASSERT_TRUE(source
                    ->forEach(
                        static_cast<std::size_t>(soundings - layers.begin()),
                        [&](const gdal::Feature& feature) {
                            places.push_back(feature.points.at(0).place);
                            return true;
                        },
                        quiet)
                    .has_value());
    ASSERT_EQ(places.size(), known.water.days[0].soundings.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        EXPECT_EQ(places[i], known.water.days[0].soundings[i].place);
    }
}

TEST_F(GeoPackage, ShowsTheDepthGridAsARaster) {
    for (const auto& [table, values] :
         {std::pair("depth", known.found.drawn->depth.raw_m()),
          std::pair("trust", known.found.drawn->trust.halfWidths_m().values())}) {
        const auto copy = folder.path() / (std::string(table) + ".tif");
        const auto said = saidBy("gdal_translate", "-q 'GPKG:" + path.string() + ":" + table +
                                                       "' '" + copy.string() + "'");
        if (!said) {
            GTEST_SKIP() << "gdal_translate is not installed";
        }
        EXPECT_EQ(*said, "");
        const auto raster = gdal::readRasterFile(copy);
        ASSERT_TRUE(raster.has_value()) << raster.error().sentence();
        const grid::GridFrame& frame = known.found.drawn->depth.frame();
        ASSERT_EQ(raster->cols, frame.cols());
        ASSERT_EQ(raster->rows, frame.rows());
        EXPECT_NEAR(raster->transform[0], frame.west_m(), 1e-9);
        EXPECT_NEAR(raster->transform[3], frame.north_m(), 1e-9);
        EXPECT_NEAR(raster->transform[1], frame.cell_m(), 1e-12);
        for (std::size_t i = 0; i < values.size(); ++i) {
            ASSERT_EQ(std::isnan(raster->bands[0][i]), std::isnan(values[i])) << i;
            if (!std::isnan(values[i])) {
                ASSERT_EQ(raster->bands[0][i], values[i]) << i;
            }
        }
    }
}

TEST_F(GeoPackage, OpensInOgrinfoAndGdalinfoWithoutAWarning) {
    for (const auto& [program, arguments] :
         {std::pair("ogrinfo", "-ro -so -al '" + path.string() + "'"),
          std::pair("ogrinfo", "-ro -q -al '" + path.string() + "'"),
          std::pair("gdalinfo", "'" + path.string() + "'"),
          std::pair("gdalinfo", "-stats 'GPKG:" + path.string() + ":depth'")}) {
        const auto said = saidBy(program, arguments);
        if (!said) {
            GTEST_SKIP() << program << " is not installed";
        }
        EXPECT_EQ(said->find("Warning"), std::string::npos) << *said;
        EXPECT_EQ(said->find("ERROR"), std::string::npos) << *said;
        EXPECT_FALSE(said->empty());
    }
}

} // namespace
