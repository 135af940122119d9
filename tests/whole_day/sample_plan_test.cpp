// SPDX-License-Identifier: GPL-3.0-or-later
// Marks and rates of the sample water: tomorrow's plan, and what the log says.
#include "tests/whole_day/sample_day.h"

namespace {

using whole_day::BatchRun;
using whole_day::expected;
using whole_day::GridFile;
using whole_day::Json;
using whole_day::readJson;
using whole_day::runBatch;
using whole_day::SampleDay;
using whole_day::sampleFile;

TEST_F(SampleDay, MarksHaveReasonsAnchorsAndRods) {
    const BatchRun run =
        runBatch({"marks", water(), "--wind-from", "225", "--wind-speed", "6", "--date",
                  "2026-11-27", "--report", at("marks.json"), "--gpx", at("marks.gpx"), "--sheet",
                  at("sheet.pdf"), "--picture", at("marks.png")});
    ASSERT_EQ(run.exitCode, 0) << run.error;
    const Json report = readJson(at("marks.json"));
    ASSERT_GE(report["marks"].size(), 5U);
    const GridFile depth(at("depth.tif"));
    double last = HUGE_VAL; // Fish per 10 rod-hours: the best first.
    for (const Json& mark : report["marks"]) {
        EXPECT_LE(mark["score"].get<double>(), last);
        last = mark["score"];
        EXPECT_NEAR(depth.at(mark["lon"], mark["lat"]), mark["depth_m"].get<double>(), 0.6);
        EXPECT_LE(mark["depth_m"].get<double>(), 9.144);
        EXPECT_GE(mark["factors"].size(), 5U);
        for (const char* anchor : {"bow", "stern"}) {
            EXPECT_GT(mark["anchors"][anchor]["rope_m"].get<double>(),
                      mark["anchors"][anchor]["depth_m"].get<double>());
            EXPECT_FALSE(std::isnan(
                depth.at(mark["anchors"][anchor]["lon"], mark["anchors"][anchor]["lat"])));
        }
        EXPECT_LE(mark["rods"].size(), 4U) << "the house rules allow four";
        EXPECT_GE(mark["rods"].size(), 1U);
    }
    EXPECT_EQ(report["day"].size(), report["marks"].size());
    for (const char* file : {"marks.gpx", "sheet.pdf", "marks.png"}) {
        EXPECT_GT(std::filesystem::file_size(at(file)), 1000U) << file;
    }
}

/// True where the place lies in the ring: a line to the east crosses it an odd number of times.
bool isInRing(const Json& ring, double lon, double lat) {
    bool isIn = false;
    for (std::size_t i = 0; i + 1 < ring.size(); ++i) {
        const double lonA = ring[i][0];
        const double latA = ring[i][1];
        const double lonB = ring[i + 1][0];
        const double latB = ring[i + 1][1];
        if ((latA > lat) != (latB > lat) &&
            lon < lonA + (lat - latA) / (latB - latA) * (lonB - lonA)) {
            isIn = !isIn;
        }
    }
    return isIn;
}

TEST_F(SampleDay, NoMarkAnchorOrBaitLiesInClosedWater) {
    ASSERT_EQ(runBatch({"marks", water(), "--wind-from", "270", "--wind-speed", "4", "--count",
                        "20", "--report", at("many.json")})
                  .exitCode,
              0);
    const Json closed = readJson(sampleFile("house-rules.json"))["closed_waters"];
    const Json& ring = closed[0]["geometry"]["coordinates"][0];
    ASSERT_TRUE(isInRing(ring, 3.1155, 55.2)) << "the strip before the dam";
    const Json report = readJson(at("many.json"));
    ASSERT_GE(report["marks"].size(), 10U);
    for (const Json& mark : report["marks"]) {
        EXPECT_FALSE(isInRing(ring, mark["lon"], mark["lat"])) << mark["rank"];
        for (const char* anchor : {"bow", "stern"}) {
            const Json& place = mark["anchors"][anchor];
            EXPECT_FALSE(isInRing(ring, place["lon"], place["lat"])) << mark["rank"] << anchor;
        }
        for (const Json& rod : mark["rods"]) {
            EXPECT_FALSE(isInRing(ring, rod["lon"], rod["lat"])) << mark["rank"] << " rod";
        }
    }
}

TEST_F(SampleDay, ReviewFindsTheRatesThatTheLogWasMadeFrom) {
    ASSERT_EQ(runBatch({"review", water(), "--by", "section", "--report", at("review.json"),
                        "--csv", at("review.csv"), "--picture", at("review.png")})
                  .exitCode,
              0);
    const Json review = readJson(at("review.json"));
    const Json truth = expected("log.json")["whole_log"];
    EXPECT_EQ(review["overall"]["fish"], truth["fish"]);
    EXPECT_EQ(review["overall"]["stays"], truth["stays"]);
    EXPECT_NEAR(review["overall"]["rod_hours"].get<double>(), truth["rod_hours"].get<double>(),
                0.01);
    double effort = 0.0;
    for (const Json& row : review["rows"]) {
        effort += row["rod_hours"].get<double>();
    }
    EXPECT_NEAR(effort, truth["rod_hours"].get<double>(), 0.01);
    ASSERT_EQ(runBatch({"review", water(), "--by", "hour", "--report", at("hours.json")}).exitCode,
              0);
    const Json hours = readJson(at("hours.json"));
    double early = 0.0;
    double noon = 0.0;
    for (const Json& row : hours["rows"]) {
        if (row["name"] == "08-10" || row["name"] == "06-08") {
            early = std::max(early, row["rate_per_10_rod_hours"].get<double>());
        }
        if (row["name"] == "12-14") {
            noon = row["rate_per_10_rod_hours"];
        }
    }
    EXPECT_GT(early, noon) << "the hidden rates are best early and worst at noon";
}

} // namespace
