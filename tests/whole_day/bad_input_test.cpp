// SPDX-License-Identifier: GPL-3.0-or-later
// Bad input: each gets one line that says what and where and what to do, the exit code of the
// contract, and costs nothing that was saved.
#include "tests/whole_day/batch_run.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include <algorithm>

namespace {

using whole_day::BatchRun;
using whole_day::runBatch;
using whole_day::writeText;

/// A square water of 400 m with a bowl in it.
constexpr const char* shore =
    R"({"type":"Polygon","coordinates":[[[3.097,55.1982],[3.1033,55.1982],[3.1033,55.2018],[3.097,55.2018],[3.097,55.1982]]]})";

std::string bowl(double scale = 1.0, bool swapped = false) {
    std::string text = "lon,lat,depth_m\n";
    for (int i = 0; i < 1600; ++i) {
        const int row = i / 40;
        const double x = -1.0 + 2.0 * (i % 40) / 39.0;
        const double y = -1.0 + 2.0 * row / 39.0;
        std::string first = std::to_string(3.10015 + 0.003 * x);
        std::string second = std::to_string(55.2 + 0.0017 * y);
        if (swapped) {
            std::swap(first, second);
        }
        for (const std::string& part :
             {first, std::string(","), second, std::string(","),
              std::to_string(scale * (8.0 - 3.0 * (x * x + y * y))), std::string("\n")}) {
            text += part;
        }
    }
    return text;
}

class BadInput : public testing::Test {
protected:
    void SetUp() override {
        folder_ = whole_day::freshFolder("bad-input");
        writeText(at("shore.geojson"), shore);
        writeText(at("good.csv"), bowl());
    }
    std::string at(const std::string& name) const { return (folder_ / name).string(); }
    BatchRun sketch(const std::string& soundings, const std::string& shoreName = "shore.geojson",
                    std::vector<std::string> more = {}) const {
        std::vector<std::string> arguments{
            "sketch",  at(soundings),  "--shore",        at(shoreName),
            "--water", at("out.gpkg"), "--next-minutes", "0"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return runBatch(arguments);
    }
    /// Exit code, exactly one line, the file named in it, and nothing written.
    void expectRefused(const BatchRun& run, int exitCode, const std::string& names) const {
        EXPECT_EQ(run.exitCode, exitCode) << run.error;
        EXPECT_EQ(std::count(run.error.begin(), run.error.end(), '\n'), 1) << run.error;
        EXPECT_NE(run.error.find(names), std::string::npos) << run.error;
        EXPECT_FALSE(std::filesystem::exists(at("out.gpkg")));
    }
    std::filesystem::path folder_;
};

TEST_F(BadInput, GoodFileIsDrawn) {
    EXPECT_EQ(sketch("good.csv").exitCode, 0);
}

TEST_F(BadInput, EmptyFileIsNamed) {
    writeText(at("empty.nmea"), "");
    expectRefused(sketch("empty.nmea"), 3, "empty.nmea");
}

/// A good file with bad rows in it: drawn all the same, each kind of bad row counted in the report.
TEST_F(BadInput, BadRowsInAGoodFileAreCountedInTheReport) {
    std::string text = bowl();
    text += "3.1,55.2\n3.1,55.2,4,5\n0,0,4\n3.1,55.2,nan\n"
            "3.1,55.2,inf\n3.1,55.2,-4\n3.1,95.2,4\n3.1,55.2,4e9\n";
    text.append(10'000'000, 'x') += '\n';
    text.append(3000, '\0') += "\n3.1,55.";
    writeText(at("mixed.csv"), text);
    const BatchRun run = sketch("mixed.csv");
    ASSERT_EQ(run.exitCode, 0) << run.error;
    const auto report = nlohmann::json::parse(run.out);
    const auto& refused = report["soundings"]["bad_rows"];
    EXPECT_EQ(report["soundings"]["first_bad_rows"]["wrong_columns"]["text"], "3.1,55.2");
    EXPECT_EQ(refused["wrong_columns"], 5) << refused;
    EXPECT_EQ(refused["zero_position"], 1);
    EXPECT_EQ(refused["not_a_number"], 2);
    EXPECT_EQ(refused["negative_depth"], 1);
    EXPECT_EQ(refused["off_earth"], 1);
    EXPECT_EQ(refused["impossible_depth"], 1);
}

TEST_F(BadInput, Utf16TablesAreDrawnLikeOthers) {
    std::string wide;
    for (const char c : bowl()) {
        wide += std::string{c, '\0'};
    }
    writeText(at("wide.csv"), wide);
    writeText(at("marked.csv"), "\xFF\xFE" + wide);
    const auto waterOf = [this](const std::string& soundings) {
        const BatchRun run = sketch(soundings);
        EXPECT_EQ(run.exitCode, 0) << run.error;
        return nlohmann::json::parse(run.out)["water"];
    };
    const auto good = waterOf("good.csv");
    EXPECT_EQ(waterOf("wide.csv"), good);
    EXPECT_EQ(waterOf("marked.csv"), good);
}

TEST_F(BadInput, TracksThatBlowUpAreRefusedOrReadUpToThere) {
    std::string bomb = "<?xml version=\"1.0\"?><!DOCTYPE gpx [<!ENTITY a0 \"aaaaaaaaaa\">";
    for (int i = 1; i < 10; ++i) {
        bomb += "<!ENTITY a" + std::to_string(i) + " \"";
        for (int k = 0; k < 10; ++k) {
            bomb += "&a" + std::to_string(i - 1) + ";";
        }
        bomb += "\">";
    }
    writeText(at("bomb.gpx"),
              bomb + "]><gpx><wpt lat=\"55.2\" lon=\"3.1\"><name>&a9;</name></wpt></gpx>");
    expectRefused(sketch("bomb.gpx"), 3, "bomb.gpx");
    std::string nested = "<gpx><wpt lat=\"55.2\" lon=\"3.1\">";
    for (int i = 0; i < 1000000; ++i) {
        nested += "<a>";
    }
    writeText(at("nested.gpx"), nested);
    expectRefused(sketch("nested.gpx"), 3, "nested.gpx");
}

TEST_F(BadInput, MissingFileIsNamed) {
    expectRefused(sketch("not-there.nmea"), 3, "not-there.nmea");
}

TEST_F(BadInput, BinaryJunkIsNamed) {
    std::string junk;
    unsigned state = 12345;
    for (int i = 0; i < 50000; ++i) {
        state = state * 1664525U + 1013904223U;
        junk += static_cast<char>(state >> 24U);
    }
    writeText(at("junk.bin"), junk);
    expectRefused(sketch("junk.bin"), 3, "junk.bin");
}

TEST_F(BadInput, LogWithoutDepthIsNamed) {
    writeText(at("position.nmea"),
              "$GPRMC,235959.50,A,5330.1234,N,00805.4321,W,1.2,270.0,311224,,,D*44\r\n"
              "$GPRMC,000000.50,A,5330.1230,N,00805.4330,W,1.2,270.0,010125,,,D*41\r\n");
    expectRefused(sketch("position.nmea"), 3, "position.nmea");
}

TEST_F(BadInput, PositionsWithoutDepthAreNamed) {
    writeText(at("places.csv"), "lon,lat,depth_m\n3.1,55.2,\n3.1001,55.2001,\n");
    expectRefused(sketch("places.csv"), 3, "places.csv");
}

TEST_F(BadInput, SwappedCoordinatesAreReadRightOrRefused) {
    writeText(at("swapped.csv"), [] {
        std::string text = bowl(1.0, true);
        return text.replace(0, text.find('\n'), "a,b,depth_m");
    }());
    const BatchRun run =
        sketch("swapped.csv", "shore.geojson", {"--columns", "x=a,y=b,depth=depth_m"});
    if (run.exitCode == 0) {
        EXPECT_NE(run.out.find("swapped"), std::string::npos)
            << "the report must say that they were swapped";
    } else {
        expectRefused(run, 3, "swapped");
    }
}

TEST_F(BadInput, FeetTakenForMetresAreToldFromTheOtherDays) {
    writeText(at("feet.csv"), bowl(1.0 / 0.3048));
    const BatchRun run =
        runBatch({"sketch", at("good.csv"), at("feet.csv"), "--shore", at("shore.geojson"),
                  "--water", at("out.gpkg"), "--next-minutes", "0"});
    expectRefused(run, 3, "feet.csv");
    EXPECT_NE(run.error.find("feet"), std::string::npos);
}

TEST_F(BadInput, DepthsThatCannotBeAreTold) {
    writeText(at("deep.csv"), bowl(50.0));
    expectRefused(sketch("deep.csv"), 3, "deep.csv");
}

TEST_F(BadInput, ShoreThatCrossesItselfIsToldWhere) {
    writeText(
        at("crossed.geojson"),
        R"({"type":"Polygon","coordinates":[[[3.097,55.1982],[3.1033,55.2018],[3.1033,55.1982],[3.0972,55.2018],[3.097,55.1982]]]})");
    expectRefused(sketch("good.csv", "crossed.geojson"), 3, "crossed.geojson");
}

TEST_F(BadInput, ShoreElsewhereOnTheGlobeIsTold) {
    writeText(
        at("far.geojson"),
        R"({"type":"Polygon","coordinates":[[[-70,45],[-69.99,45],[-69.99,45.01],[-70,45.01],[-70,45]]]})");
    expectRefused(sketch("good.csv", "far.geojson"), 3, "good.csv");
}

TEST_F(BadInput, SoundingsAllOutsideTheShoreAreTold) {
    writeText(
        at("beside.geojson"),
        R"({"type":"Polygon","coordinates":[[[3.12,55.1982],[3.125,55.1982],[3.125,55.2018],[3.12,55.2018],[3.12,55.1982]]]})");
    expectRefused(sketch("good.csv", "beside.geojson"), 3, "good.csv");
}

TEST_F(BadInput, ThreeSoundingsAndOneStillGiveAWater) {
    for (const int count : {3, 1}) {
        std::string text = "lon,lat,depth_m\n";
        for (int i = 0; i < count; ++i) {
            text += std::to_string(3.0995 + 0.0005 * i) + ",55.2,6.5\n";
        }
        writeText(at("few.csv"), text);
        const BatchRun run = sketch("few.csv");
        EXPECT_EQ(run.exitCode, 0) << run.error;
        const auto report = nlohmann::json::parse(run.out);
        EXPECT_EQ(report["soundings"]["kept"], count);
        EXPECT_GT(report["water"]["max_depth_m"].get<double>(), 3.0);
        EXPECT_LT(report["water"]["max_depth_m"].get<double>(), 9.0);
    }
}

TEST_F(BadInput, LimitAboveAllWaterKeepsTheMap) {
    const BatchRun run = sketch("good.csv", "shore.geojson", {"--limit-depth", "0.001"});
    EXPECT_EQ(run.exitCode, 0) << run.error;
    const auto report = nlohmann::json::parse(run.out);
    EXPECT_TRUE(report["sections"].empty());
    EXPECT_FALSE(report["notes"].empty());
    EXPECT_GT(report["water"]["area_m2"].get<double>(), 100000.0);
}

TEST_F(BadInput, ACellThatWouldNeedABillionIsRefused) {
    const BatchRun run = sketch("good.csv", "shore.geojson", {"--cell", "0.01"});
    EXPECT_EQ(run.exitCode, 2) << run.error;
}

TEST_F(BadInput, WrongUseIsToldInOneLine) {
    for (const std::vector<std::string>& wrong :
         {std::vector<std::string>{},
          {"fish"},
          {"sketch"},
          {"marks", "x.gpkg", "--wind-from", "far"},
          {"sketch", "a", "--shore", "b", "--water", "c", "--draft", "deep"},
          {"review", "x.gpkg", "--by", "moon"},
          {"log", "x.gpkg"}}) {
        const BatchRun run = runBatch(wrong);
        EXPECT_EQ(run.exitCode, 2) << run.error;
        EXPECT_EQ(std::count(run.error.begin(), run.error.end(), '\n'), 1) << run.error;
    }
}

TEST_F(BadInput, FailedSketchLeavesTheWaterAsItWas) {
    ASSERT_EQ(sketch("good.csv").exitCode, 0);
    const auto before = std::filesystem::file_size(at("out.gpkg"));
    writeText(at("empty.nmea"), "");
    EXPECT_EQ(sketch("empty.nmea").exitCode, 3);
    EXPECT_EQ(std::filesystem::file_size(at("out.gpkg")), before);
    EXPECT_EQ(runBatch({"check", at("out.gpkg")}).exitCode, 0);
}

TEST_F(BadInput, AnotherFileOfThatNameIsNotOverwritten) {
    writeText(at("out.gpkg"), "my only copy of something else");
    const BatchRun run = sketch("good.csv");
    EXPECT_EQ(run.exitCode, 4) << run.error;
    EXPECT_EQ(std::filesystem::file_size(at("out.gpkg")), 30U);
}

TEST_F(BadInput, TruncatedWaterIsToldAsDamaged) {
    ASSERT_EQ(sketch("good.csv").exitCode, 0);
    std::filesystem::resize_file(at("out.gpkg"), std::filesystem::file_size(at("out.gpkg")) / 2);
    const BatchRun run = runBatch({"check", at("out.gpkg")});
    EXPECT_EQ(run.exitCode, 5) << run.error;
}

TEST_F(BadInput, FolderThatCannotBeWrittenIsTold) {
    const BatchRun run =
        runBatch({"sketch", at("good.csv"), "--shore", at("shore.geojson"), "--water",
                  at("no/such/folder/out.gpkg"), "--next-minutes", "0"});
    EXPECT_EQ(run.exitCode, 4) << run.error;
}

} // namespace
