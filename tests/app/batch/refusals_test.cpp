// SPDX-License-Identifier: GPL-3.0-or-later
// What sketch refuses: one line that names the file or the option, and nothing left behind.
#include "tests/app/batch/batch_call.h"
#include "tests/app/batch/dish_files.h"
#include "tests/app/batch/opened_water.h"

namespace {

using batch_tests::call;
using batch_tests::Call;
using batch_tests::DishFolder;

TEST(SketchRefusals, OfOptionsNameTheOption) {
    const DishFolder folder;
    const auto before = folder.names();
    struct Row {
        const char* option;
        const char* given;
        const char* named;
    };
    for (const Row& row : {Row{"--columns", "x", "--columns"},
                           {"--columns", "q=lon", "--columns"},
                           {"--unit", "cubit", "--unit"},
                           {"--crs", "EPSG:7", "--crs"},
                           {"--band-edges", "4,2", "--band-edges"},
                           {"--band-edges", "a", "--band-edges"},
                           {"--limit-depth", "0", "--limit-depth"},
                           {"--limit-depth", "-3", "--limit-depth"},
                           {"--section-area", "999", "section"},
                           {"--secchi-depth", "0.09", "Secchi"},
                           {"--secchi-depth", "40.1", "Secchi"}}) {
        SCOPED_TRACE(std::string(row.option) + ' ' + row.given);
        expectRefused(call(folder.sketchWords({row.option, row.given})), 2, {row.named});
    }
    for (const char* cell : {"0", "0.49", "100.1", "-6"}) {
        std::vector<std::string> words = folder.sketchWords();
        *(std::ranges::find(words, "--cell") + 1) = cell;
        expectRefused(call(words), 2, {"cell"});
    }
    EXPECT_EQ(folder.names(), before) << "nothing was left behind";
}

TEST(SketchRefusals, OfFilesNameTheFile) {
    const DishFolder folder;
    const std::string junk = folder.write("junk.txt", "neither here nor there\n");
    const auto before = folder.names();
    for (const char* option :
         {"--weed", "--lead-line", "--facts", "--house-rules", "--survey-days"}) {
        SCOPED_TRACE(option);
        const std::string missing = folder.at("missing.file");
        expectRefused(call(folder.sketchWords({option, missing})), 3, {"missing.file"});
        expectRefused(call(folder.sketchWords({option, junk})), 3, {"junk.txt"});
    }
    expectRefused(call(folder.sketchWords({}, "missing.nmea")), 3, {folder.at("missing.nmea")});
    expectRefused(call(folder.sketchWords({}, "junk.txt")), 3, {"junk.txt"});
    expectRefused(call(folder.sketchWords({folder.at("missing.gpx")})), 3, {"missing.gpx"});
    for (const std::string& shore : {folder.at("missing.geojson"), junk}) {
        std::vector<std::string> words = folder.sketchWords();
        words[3] = shore;
        expectRefused(call(words), 3, {shore});
    }
    EXPECT_EQ(folder.names(), before) << "nothing was left behind";
}

TEST(SketchRefusals, OfFoldersThatAreNotThereComeBeforeAnyWork) {
    const DishFolder folder;
    const std::string closed = folder.at("no/such/file");
    std::vector<std::string> words = folder.sketchWords();
    words[5] = closed;
    const auto before = folder.names();
    expectRefused(call(words), 4, {closed});
    EXPECT_EQ(folder.names(), before);
    for (const char* option : {"--grid", "--trust", "--contours", "--picture", "--report"}) {
        SCOPED_TRACE(option);
        expectRefused(call(folder.sketchWords({option, closed})), 4, {closed});
    }
    EXPECT_EQ(folder.names(), before);
}

TEST(SketchRefusals, OfSoundingsOnLandNameTheFile) {
    const DishFolder folder;
    std::string table = "lon,lat,depth_m\n";
    for (int i = 0; i < 20; ++i) {
        table += batch_tests::dish::placeText(400.0 + i, 0.0) + ",4\n";
    }
    folder.write("land.csv", table);
    expectRefused(call(folder.sketchWords({}, "land.csv")), 3, {"land.csv"});
    EXPECT_FALSE(std::filesystem::exists(folder.at("dish.gpkg")));
}

/// Rows that are bad are counted over all files, and the first of each reason is quoted.
TEST(SketchRefusals, OfSingleRowsAreCountedInTheReport) {
    const DishFolder folder;
    const std::string bad = "3.1,55.2,-4,2026-09-05T07:00:00Z\n3.1,95.2,4,2026-09-05T07:00:00Z\n";
    folder.write("mixed.csv", batch_tests::dish::trueSoundings() + bad);
    folder.write("more.csv", batch_tests::dish::soundings("2026-09-12", true, [](double m) {
                                 return m + 0.1;
                             }) + bad);
    const Call done = call(folder.sketchWords({folder.at("more.csv")}, "mixed.csv"));
    ASSERT_EQ(done.exitCode, 0) << done.error;
    const nlohmann::json found = done.report()["soundings"];
    EXPECT_EQ(found["bad_rows"], (nlohmann::json{{"negative_depth", 2}, {"off_earth", 2}}));
    EXPECT_EQ(found["first_bad_rows"]["off_earth"]["file"], "mixed.csv");
    EXPECT_NE(found["first_bad_rows"]["off_earth"]["text"].get<std::string>().find("95.2"),
              std::string::npos);
}

} // namespace
