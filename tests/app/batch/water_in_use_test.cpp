// SPDX-License-Identifier: GPL-3.0-or-later
// What the verbs do while another program has the water, and which files they will not write over.
#include "tests/app/batch/batch_call.h"
#include "tests/app/batch/dish_files.h"
#include "tests/app/batch/opened_water.h"

#include "app/batch/water_file.h"

#include <chrono>

namespace {

using batch_tests::call;
using batch_tests::Call;
using batch_tests::DishFolder;
using batch_tests::loadedWater;
using support::ScratchFolder;

constexpr const char* oneStay = "kind,stay,start,end,lon,lat,rods,bait\n"
                                "stay,1,2026-10-03T08:00Z,2026-10-03T11:00Z,3.1,55.2,2,roach\n";

class WaterInUse : public testing::Test {
protected:
    void SetUp() override { ASSERT_EQ(call(folder.sketchWords()).exitCode, 0); }

    DishFolder folder;
    std::string path = folder.at("dish.gpkg");
    std::string stays = folder.write("log.csv", oneStay);
};

TEST_F(WaterInUse, IsNotChangedAndWhoHasItIsTold) {
    const std::string bytes = ScratchFolder::textOf(path);
    const auto other = store::open(path).value();
    ASSERT_FALSE(other->isReadOnly());
    for (const auto& words : {std::vector<std::string>{"log", path, "--add", stays},
                              {"log", path, "--add", stays, "--wait", "0"},
                              folder.sketchWords()}) {
        expectRefused(call(words), 4,
                      {path, "test_app_batch (process", "has this water open", "--wait SECONDS"});
    }
    EXPECT_TRUE(ScratchFolder::textOf(path) == bytes);
}

TEST_F(WaterInUse, IsWaitedForAsLongAsAsked) {
    const auto other = store::open(path).value();
    const auto start = std::chrono::steady_clock::now();
    const Call waited = call({"log", path, "--add", stays, "--wait", "0.3"});
    EXPECT_GE(std::chrono::steady_clock::now() - start, std::chrono::milliseconds(300));
    EXPECT_EQ(waited.exitCode, 4);
    EXPECT_EQ(waited.out, "");
    EXPECT_TRUE(waited.error.starts_with("meremark-batch: waiting: test_app_batch (process "))
        << waited.error;
    EXPECT_EQ(std::ranges::count(waited.error, '\n'), 2) << "told once, then refused";
    EXPECT_TRUE(loadedWater(path).log.empty());
}

TEST_F(WaterInUse, IsWaitedForNeitherTooLongNorLessThanNothing) {
    for (const char* wait : {"-1", "86401", "soon"}) {
        expectRefused(call({"log", path, "--add", stays, "--wait", wait}), 2, {"--wait"});
        expectRefused(call(folder.sketchWords({"--wait", wait})), 2, {"--wait"});
    }
}

TEST_F(WaterInUse, MayBeLookedAt) {
    const auto other = store::open(path).value();
    EXPECT_EQ(call({"check", path}).exitCode, 0);
    EXPECT_EQ(call({"log", path, "--out", folder.at("out.csv")}).exitCode, 0);
    EXPECT_EQ(call({"review", path, "--by", "bait"}).exitCode, 0);
    base::Progress quiet;
    EXPECT_FALSE(other->isReadOnly());
    EXPECT_TRUE(other->save({}, water::allParts, quiet).has_value()) << "and nobody was kept out";
}

TEST_F(WaterInUse, IsKeptFromNobodyWhileItIsLookedAt) {
    base::Progress quiet;
    const auto looking = batch::openWater(path, quiet);
    ASSERT_TRUE(looking) << looking.error().sentence();
    const auto writing = store::open(path);
    ASSERT_TRUE(writing) << writing.error().sentence();
    EXPECT_FALSE((*writing)->isReadOnly()) << "a report must not keep the desk from saving";
}

TEST_F(WaterInUse, IsKeptFromOthersWhileAVerbChangesIt) {
    base::Progress quiet;
    const auto opened = batch::openWaterToChange(path, 0.0, quiet);
    ASSERT_TRUE(opened.has_value());
    EXPECT_TRUE(store::open(path).value()->isReadOnly());
    const auto looking = batch::openWater(path, quiet);
    EXPECT_TRUE(looking.has_value());
}

TEST_F(WaterInUse, IsDrawnAnewInTheFileThatIsThere) {
    const auto looker = store::open(path, store::Purpose::looking).value();
    const std::string link = folder.at("link.gpkg");
    std::filesystem::create_symlink("dish.gpkg", link);
    std::filesystem::permissions(path, std::filesystem::perms(0640));
    ASSERT_EQ(call({"log", path, "--add", stays}).exitCode, 0);
    base::Progress quiet;
    ASSERT_EQ(looker->load(quiet).value().log.size(), 1U);
    std::vector<std::string> words = folder.sketchWords({"--draft", "0.5"});
    *std::ranges::find(words, path) = link;
    const Call drawn = call(words);
    ASSERT_EQ(drawn.exitCode, 0) << drawn.error;
    EXPECT_TRUE(std::filesystem::is_symlink(link));
    EXPECT_EQ(std::filesystem::status(path).permissions(), std::filesystem::perms(0640));
    EXPECT_TRUE(looker->hasChanged().value()) << "whoever looks is not left with a dead file";
    const water::Water water = looker->load(quiet).value();
    EXPECT_EQ(water.days.front().sounder.draft, units::Depth::metres(0.5));
    EXPECT_EQ(water.log.size(), 1U);
}

TEST_F(WaterInUse, AndWhatIsReadAreNotWrittenOver) {
    const std::string link = folder.at("link");
    std::filesystem::create_symlink("dish.gpkg", link);
    std::filesystem::create_directory(folder.at("folder"));
    const std::string twin = folder.at("twin.gpkg");
    std::filesystem::create_hard_link(path, twin);
    const std::string aside = folder.at(".") + "/dish.gpkg";
    const std::vector<std::string> wind{"marks", path, "--wind-from", "300", "--wind-speed", "5"};
    const std::vector<std::string> by{"review", path, "--by", "bait"};
    const auto with = [](std::vector<std::string> words, const std::vector<std::string>& more) {
        words.insert(words.end(), more.begin(), more.end());
        return words;
    };
    std::vector<std::vector<std::string>> calls;
    for (const std::string& name : {path, link, twin, aside, folder.at("folder")}) {
        calls.push_back({"log", path, "--out", name});
        for (const char* option : {"--report", "--csv", "--picture"}) {
            calls.push_back(with(by, {option, name}));
        }
        for (const char* option : {"--report", "--gpx", "--sheet", "--picture"}) {
            calls.push_back(with(wind, {option, name}));
        }
        for (const char* option : {"--report", "--grid", "--trust", "--contours", "--picture"}) {
            calls.push_back(folder.sketchWords({option, name}));
        }
    }
    for (const char* input : {"shore.geojson", "true.csv"}) {
        calls.push_back(folder.sketchWords({"--report", folder.at(input)}));
    }
    calls.push_back(folder.sketchWords({"--facts", stays, "--grid", stays}));
    calls.push_back(folder.sketchWords({"--grid", link + ".tif", "--trust", link + ".tif"}));
    const auto before = folder.names();
    const std::string bytes = ScratchFolder::textOf(path);
    for (const auto& words : calls) {
        SCOPED_TRACE(testing::PrintToString(words));
        const Call refused = call(words);
        expectRefused(refused, 4, {words.back(), words[words.size() - 2]});
    }
    EXPECT_EQ(folder.names(), before);
    EXPECT_TRUE(ScratchFolder::textOf(path) == bytes);
    EXPECT_EQ(ScratchFolder::textOf(stays), oneStay);
}

TEST_F(WaterInUse, OutputsThatAreThereAlreadyAreReplacedAsBefore) {
    const std::string report = folder.write("report.json", "old");
    EXPECT_EQ(call({"review", path, "--by", "bait", "--report", report}).exitCode, 0);
    EXPECT_NE(ScratchFolder::textOf(report).find("\"rows\""), std::string::npos);
    EXPECT_EQ(call({"review", path, "--by", "bait", "--report", "-"}).exitCode, 0);
}

} // namespace
