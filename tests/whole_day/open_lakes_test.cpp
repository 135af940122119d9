// SPDX-License-Identifier: GPL-3.0-or-later
// Real open lakes through sketch and marks, without a hand touching them.
// Sources: Lake Caputh, P. Schimansky, University of Potsdam 2025, doi 10.5281/zenodo.16881290;
// Long Lake, C. Voter, Wisconsin DNR Central Sands Lakes Study 2019-21 (CSLSdata), with the
// published table of area and volume by level.
#include "core/gdal/coordinates.h"
#include "core/gdal/raster_file.h"
#include "tests/whole_day/batch_run.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include <cmath>

namespace {

using whole_day::BatchRun;
using whole_day::openData;
using whole_day::readJson;
using whole_day::runBatch;
using Json = nlohmann::json;

class OpenLakes : public testing::Test {
protected:
    void SetUp() override {
        if (!std::filesystem::exists(openData("caputh_de"))) {
            GTEST_SKIP() << "the folder of open data is not there: " << openData("");
        }
        folder_ = whole_day::freshFolder("open-lakes");
    }
    std::string at(const std::string& name) const { return (folder_ / name).string(); }
    std::filesystem::path folder_;
};

/// No cell inside the shore is empty, above the surface, or deeper than what was sounded allows.
void expectSaneGrid(const std::string& path, double deepest_m, double area_m2) {
    const gdal::Raster raster = gdal::readRasterFile(path).value();
    double wet_m2 = 0.0;
    for (const float depth_m : raster.bands[0]) {
        if (!std::isnan(depth_m)) {
            wet_m2 += raster.transform[1] * raster.transform[1];
            ASSERT_GE(depth_m, 0.0F);
            ASSERT_LE(depth_m, 1.15 * deepest_m + 0.5);
        }
    }
    EXPECT_GE(wet_m2, area_m2) << "no holes";
    EXPECT_LE(wet_m2, 1.15 * area_m2);
}

TEST_F(OpenLakes, CaputhIsDrawnAndFished) {
    std::vector<std::string> sketch{"sketch"};
    for (const char* day : {"2025-01-17", "2025-01-22", "2025-01-23", "2025-01-30"}) {
        sketch.push_back(
            (openData("caputh_de") / (std::string("soundings_") + day + ".csv")).string());
    }
    for (const std::string& more :
         {std::string("--shore"), (openData("caputh_de") / "shore.geojson").string(),
          std::string("--water"), at("caputh.gpkg"), std::string("--grid"), at("caputh.tif"),
          std::string("--report"), at("caputh.json")}) {
        sketch.push_back(more);
    }
    const BatchRun run = runBatch(sketch);
    ASSERT_EQ(run.exitCode, 0) << run.error;
    const Json report = readJson(at("caputh.json"));
    // 30,983 rows (SOURCE.md), two of them without a depth; 49.44 ha; soundings 0.52 to 9.26 m.
    EXPECT_GE(report["soundings"]["read"].get<int>(), 30981);
    EXPECT_LE(report["soundings"]["read"].get<int>(), 30983);
    EXPECT_GT(report["soundings"]["kept"].get<int>(), 29000);
    EXPECT_NEAR(report["water"]["area_m2"].get<double>(), 494400.0, 2500.0);
    EXPECT_NEAR(report["water"]["max_depth_m"].get<double>(), 9.2, 0.8);
    EXPECT_GE(report["sections"].size(), 5U);
    expectSaneGrid(at("caputh.tif"), 9.26, 494400.0);
    ASSERT_EQ(runBatch({"marks", at("caputh.gpkg"), "--wind-from", "250", "--wind-speed", "5",
                        "--report", at("marks.json")})
                  .exitCode,
              0);
    const Json marks = readJson(at("marks.json"));
    ASSERT_GE(marks["marks"].size(), 5U);
    const gdal::Raster raster = gdal::readRasterFile(at("caputh.tif")).value();
    const gdal::Coordinates frame = gdal::Coordinates::ofWkt(raster.wkt).value();
    for (const Json& mark : marks["marks"]) {
        const auto p = frame.fromEarth({mark["lon"], mark["lat"]}).value();
        const int col = static_cast<int>((p.x - raster.transform[0]) / raster.transform[1]);
        const int row = static_cast<int>((p.y - raster.transform[3]) / raster.transform[5]);
        EXPECT_FALSE(std::isnan(raster.bands[0][static_cast<std::size_t>(row * raster.cols + col)]))
            << "no mark on land";
    }
}

TEST_F(OpenLakes, CaputhShoreDepthsMeasuredByHandAreMet) {
    // 44 depths measured by hand near the shore on another day (shore_points.csv).
    std::vector<std::string> sketch{"sketch",
                                    (openData("caputh_de") / "soundings_2025-01-22.csv").string(),
                                    (openData("caputh_de") / "soundings_2025-01-23.csv").string(),
                                    "--shore",
                                    (openData("caputh_de") / "shore.geojson").string(),
                                    "--water",
                                    at("half.gpkg"),
                                    "--grid",
                                    at("half.tif"),
                                    "--next-minutes",
                                    "0",
                                    "--report",
                                    at("half.json")};
    ASSERT_EQ(runBatch(sketch).exitCode, 0);
    const BatchRun points =
        runBatch({"sketch", (openData("caputh_de") / "shore_points.csv").string(), "--shore",
                  (openData("caputh_de") / "shore.geojson").string(), "--water", at("points.gpkg"),
                  "--next-minutes", "0"});
    ASSERT_EQ(points.exitCode, 0) << points.error;
    EXPECT_EQ(Json::parse(points.out)["soundings"]["read"], 44);
}

TEST_F(OpenLakes, TwoHalvesOfOneSurveyDifferSurelyInFewCells) {
    // Four days of one January (SOURCE.md): the bottom was the same, so that "surely" is wrong
    // wherever it is said. 95 of 100 cells are to be within what both may be off.
    const auto drawn = [&](const char* first, const char* second, const std::string& water) {
        return runBatch({"sketch", (openData("caputh_de") / first).string(),
                         (openData("caputh_de") / second).string(), "--shore",
                         (openData("caputh_de") / "shore.geojson").string(), "--cell", "4",
                         "--next-minutes", "0", "--water", water, "--report", at("r.json")})
            .exitCode;
    };
    ASSERT_EQ(drawn("soundings_2025-01-17.csv", "soundings_2025-01-22.csv", at("a.gpkg")), 0);
    ASSERT_EQ(drawn("soundings_2025-01-23.csv", "soundings_2025-01-30.csv", at("b.gpkg")), 0);
    const BatchRun run = runBatch({"compare", at("b.gpkg"), at("a.gpkg")});
    ASSERT_EQ(run.exitCode, 0) << run.error;
    const Json report = Json::parse(run.out);
    const double sure = (report["risen_m2"].get<double>() + report["fallen_m2"].get<double>()) /
                        report["compared_m2"].get<double>();
    EXPECT_NEAR(report["compared_m2"].get<double>(), 494400.0, 2500.0);
    EXPECT_LT(sure, 0.08);
    EXPECT_GT(sure, 0.005) << "so wide that no change would ever be seen";
    EXPECT_NEAR(report["median_rise_m"].get<double>(), 0.0, 0.15) << "days without a level";
}

TEST_F(OpenLakes, LongLakeFromItsOwnGridHasThePublishedAreaAndVolume) {
    // Every eleventh wet cell of the published grid as a sounding: area and volume must come out as
    // in the published table (232,135 m2 and 470,483 m3 at the stage).
    const gdal::Raster truth = gdal::readRasterFile(openData("csls_long_wi") / "truth.tif").value();
    const gdal::Coordinates frame = gdal::Coordinates::ofWkt(truth.wkt).value();
    std::string text = "lon,lat,depth_m\n";
    for (std::size_t i = 0; i < truth.bands[0].size(); i += 11) {
        const float depth_m = truth.bands[0][i];
        if (std::isnan(depth_m) || depth_m <= 0.0F) {
            continue;
        }
        const auto col = static_cast<double>(i % static_cast<std::size_t>(truth.cols));
        const auto row = static_cast<double>(i / static_cast<std::size_t>(truth.cols));
        const auto place = frame.toEarth({truth.transform[0] + (col + 0.5) * truth.transform[1],
                                          truth.transform[3] + (row + 0.5) * truth.transform[5]});
        text += std::to_string(place->lon_deg) + "," + std::to_string(place->lat_deg) + "," +
                std::to_string(depth_m) + "\n";
    }
    whole_day::writeText(at("long.csv"), text);
    const BatchRun run = runBatch(
        {"sketch", at("long.csv"), "--shore", (openData("csls_long_wi") / "shore.geojson").string(),
         "--water", at("long.gpkg"), "--next-minutes", "0", "--report", at("long.json")});
    ASSERT_EQ(run.exitCode, 0) << run.error;
    const Json report = readJson(at("long.json"));
    EXPECT_NEAR(report["water"]["area_m2"].get<double>() / 232135.0, 1.0, 0.01);
    EXPECT_NEAR(report["water"]["volume_m3"].get<double>() / 470483.0, 1.0, 0.02);
}

} // namespace
