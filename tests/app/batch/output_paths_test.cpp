// SPDX-License-Identifier: GPL-3.0-or-later
// What an output may be called: refused before any work, with every input left as it was.
#include "tests/app/batch/batch_call.h"
#include "tests/app/batch/dish_files.h"
#include "tests/support/power_cut.h"

#include <sys/stat.h>
#include <unistd.h>

#include <fstream>

namespace {

using batch_tests::call;
using batch_tests::DishFolder;
using support::filesIn;
using support::ScratchFolder;

/// A dish that is sketched, with a log, and links to its files.
class OutputPaths : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_EQ(call(folder_.sketchWords()).exitCode, 0);
        std::filesystem::create_symlink("dish.gpkg", at("link.gpkg"));
        std::filesystem::create_hard_link(at("dish.gpkg"), at("hard.txt"));
    }
    [[nodiscard]] std::string at(const std::string& name) const { return folder_.at(name); }
    /// Refused, and no file is other than before.
    void refuses(const std::vector<std::string>& words, const std::vector<std::string>& named) {
        SCOPED_TRACE(words[0] + ' ' + words.back());
        const auto before = filesIn(std::filesystem::path(at("")).parent_path());
        expectRefused(call(words), 4, named);
        EXPECT_TRUE(filesIn(std::filesystem::path(at("")).parent_path()) == before);
    }

    const DishFolder folder_;
};

TEST_F(OutputPaths, AreNeverTheWaterByAnyName) {
    const std::string water = at("dish.gpkg");
    for (const char* other : {"dish.gpkg", "link.gpkg", "hard.txt", "../dish.gpkg"}) {
        const std::string named =
            std::string(other) == "../dish.gpkg"
                ? at("./../") + std::filesystem::path(at("")).parent_path().filename().string() +
                      "/dish.gpkg"
                : at(other);
        refuses({"log", water, "--out", named}, {"--out", "the water"});
        refuses({"review", water, "--by", "bait", "--csv", named}, {"--csv", "the water"});
        refuses({"review", water, "--by", "bait", "--report", named}, {"--report", "the water"});
        for (const char* option : {"--report", "--gpx", "--sheet", "--picture"}) {
            refuses({"marks", water, option, named}, {option, "the water"});
        }
        for (const char* option : {"--report", "--grid", "--trust", "--contours", "--picture"}) {
            refuses(folder_.sketchWords({option, named}), {option, "--water"});
        }
    }
    refuses({"log", at("link.gpkg"), "--out", water}, {"--out", "the water"});
}

TEST_F(OutputPaths, AreNeverAnInput) {
    for (const char* input : {"true.csv", "shore.geojson"}) {
        refuses(folder_.sketchWords({"--report", at(input)}), {"--report"});
    }
    std::vector<std::string> words = folder_.sketchWords();
    words[5] = at("shore.geojson");
    refuses(words, {"--water", "--shore"});
}

TEST_F(OutputPaths, AreNeverWhatBelongsToAWaterOrAnInput) {
    for (const char* suffix : {"-journal", "-wal", "-shm"}) {
        refuses({"log", at("dish.gpkg"), "--out", at("dish.gpkg") + suffix},
                {"--out", "belongs to the water"});
        refuses(folder_.sketchWords({"--report", at("dish.gpkg") + suffix}),
                {"belongs to --water"});
    }
    refuses({"log", at("dish.gpkg"), "--out", at(".dish.gpkg.owner")}, {"belongs to the water"});
    std::vector<std::string> words = folder_.sketchWords({"--report", at("lake.dbf")});
    words[3] = at("lake.SHP");
    refuses(words, {"belongs to --shore"});
}

TEST_F(OutputPaths, AreNeverEachOther) {
    std::filesystem::create_symlink("new.txt", at("to-new"));
    refuses({"marks", at("dish.gpkg"), "--gpx", at("new.txt"), "--report", at("to-new")},
            {"--gpx", "--report"});
    refuses(folder_.sketchWords({"--grid", at("a.tif"), "--trust", at("./a.tif")}), {"--trust"});
}

TEST_F(OutputPaths, AreRegularFilesInFoldersThatAreThere) {
    ASSERT_EQ(::mkfifo(at("pipe").c_str(), 0600), 0);
    std::filesystem::create_directory(at("folder"));
    for (const char* place : {"pipe", "folder", "folder/", "no/such/file", "true.csv/file"}) {
        refuses({"log", at("dish.gpkg"), "--out", at(place)}, {at(place)});
        refuses(folder_.sketchWords({"--report", at(place)}), {at(place)});
    }
    expectRefused(call({"log", at("dish.gpkg"), "--out", "/dev/null"}), 4, {"/dev/null"});
}

TEST_F(OutputPaths, OfGivingAreNeverTheWater) {
    std::filesystem::create_directory(at("given"));
    std::filesystem::rename(at("dish.gpkg"), at("given/log.csv"));
    const std::string bytes = ScratchFolder::textOf(at("given/log.csv"));
    expectRefused(call({"give", at("given/log.csv"), "--to", at("given")}), 4,
                  {at("given/log.csv")});
    EXPECT_EQ(ScratchFolder::textOf(at("given/log.csv")), bytes);
    EXPECT_EQ(call({"give", at("given/log.csv"), "--to", at("other")}).exitCode, 0);
}

TEST_F(OutputPaths, AreWrittenThroughALinkWithTheModeOfTheOlderFile) {
    std::ofstream(at("old.csv")) << "old";
    std::filesystem::permissions(at("old.csv"), std::filesystem::perms(0600));
    std::filesystem::create_symlink("old.csv", at("link.csv"));
    ASSERT_EQ(call({"log", at("dish.gpkg"), "--out", at("link.csv")}).exitCode, 0);
    EXPECT_TRUE(std::filesystem::is_symlink(at("link.csv")));
    EXPECT_TRUE(ScratchFolder::textOf(at("old.csv")).starts_with("kind,"));
    EXPECT_EQ(std::filesystem::status(at("old.csv")).permissions(), std::filesystem::perms(0600));
}

} // namespace
