// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/gdal/coordinates.h"
#include "core/gdal/raster_file.h"
#include "tests/whole_day/batch_run.h"

#include <cmath>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace whole_day {

using Json = nlohmann::json;

inline Json expected(const std::string& name) {
    return readJson(std::filesystem::path(MEREMARK_SAMPLE_DIR) / "expected" / name);
}

/// Drawn once; every claim looks at what is left.
class SampleDay : public testing::Test {
protected:
    static void SetUpTestSuite() {
        scratch = whole_day::freshFolder("sample-day");
        sketchRun = runBatch({"sketch",
                              sampleFile("survey-2026-09-05.nmea"),
                              sampleFile("survey-2026-09-12.gpx"),
                              sampleFile("survey-2026-09-19.csv"),
                              "--survey-days",
                              sampleFile("survey-days.csv"),
                              "--tie-days",
                              "--shore",
                              sampleFile("shoreline.geojson"),
                              "--facts",
                              sampleFile("water.json"),
                              "--weed",
                              sampleFile("weed-notes.csv"),
                              "--lead-line",
                              sampleFile("lead-line.csv"),
                              "--house-rules",
                              sampleFile("house-rules.json"),
                              "--water",
                              water(),
                              "--grid",
                              at("depth.tif"),
                              "--trust",
                              at("trust.tif"),
                              "--contours",
                              at("contours.geojson"),
                              "--picture",
                              at("chart.png"),
                              "--report",
                              at("sketch.json")});
        if (sketchRun.exitCode == 0) {
            sketched = readJson(at("sketch.json"));
            logRun = runBatch({"log", water(), "--add", sampleFile("log.csv")});
        }
    }
    void SetUp() override { ASSERT_EQ(sketchRun.exitCode, 0) << sketchRun.error; }

    static std::string at(const std::string& name) { return (scratch / name).string(); }
    static std::string water() { return at("water.gpkg"); }

    static inline std::filesystem::path scratch;
    static inline BatchRun sketchRun, logRun;
    static inline Json sketched;
};

/// Depth of the grid in the cell of a place.
class GridFile {
public:
    explicit GridFile(const std::string& path)
        : raster_(gdal::readRasterFile(path).value()),
          coordinates_(gdal::Coordinates::ofWkt(raster_.wkt).value()) {}
    double at(double lon, double lat) const {
        const auto p = coordinates_.fromEarth({lon, lat}).value();
        const int col =
            static_cast<int>(std::floor((p.x - raster_.transform[0]) / raster_.transform[1]));
        const int row =
            static_cast<int>(std::floor((p.y - raster_.transform[3]) / raster_.transform[5]));
        if (col < 0 || row < 0 || col >= raster_.cols || row >= raster_.rows) {
            return NAN;
        }
        return static_cast<double>(raster_.bands[0][static_cast<std::size_t>(row) *
                                                        static_cast<std::size_t>(raster_.cols) +
                                                    static_cast<std::size_t>(col)]);
    }

private:
    gdal::Raster raster_;
    gdal::Coordinates coordinates_;
};

} // namespace whole_day
