// SPDX-License-Identifier: GPL-3.0-or-later
// What a file manager shows of a water, whatever file it meets.
#include "app/batch/time_limit.h"
#include "core/store/connection.h"
#include "core/store/write_water.h"
#include "tests/app/batch/batch_call.h"
#include "tests/app/batch/dish_files.h"

#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>

#include <QImage>
#include <gmock/gmock.h>
#include <unistd.h>

namespace {

using batch_tests::Call;
using batch_tests::call;
using batch_tests::DishFolder;
using batch_tests::expectRefused;

std::string bytesOf(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// What follows `key=` in a file of the desktop's; empty where it is not there.
std::string entryOf(const std::string& name, const std::string& key) {
    std::ifstream file(std::filesystem::path(MEREMARK_SOURCE_DIR) / "resources/install" / name);
    for (std::string line; std::getline(file, line);) {
        if (line.starts_with(key + "=")) {
            return line.substr(key.size() + 1);
        }
    }
    return {};
}

TEST(PictureVerb, ShowsShoreAndDepthsAndLeavesTheWaterAlone) {
    const DishFolder folder;
    ASSERT_EQ(call(folder.sketchWords()).exitCode, 0);
    const std::string before = bytesOf(folder.at("dish.gpkg"));
    const std::vector<std::string> names = folder.names();
    const Call drawn =
        call({"picture", folder.at("dish.gpkg"), "--to", folder.at("dish.png"), "--size", "96"});
    ASSERT_EQ(drawn.exitCode, 0) << drawn.error;
    EXPECT_EQ(drawn.out + drawn.error, "");
    EXPECT_EQ(bytesOf(folder.at("dish.gpkg")), before);
    EXPECT_EQ(folder.names().size(), names.size() + 1);
    const QImage picture(QString::fromStdString(folder.at("dish.png")));
    ASSERT_EQ(picture.size(), QSize(96, 96));
    // A dish: darkest in the middle, lighter towards the shore, paper in the corners.
    const auto lightness = [&picture](int x, int y) {
        return picture.pixelColor(x, y).lightness();
    };
    EXPECT_LT(lightness(48, 48) + 15, lightness(48, 16));
    EXPECT_LT(lightness(48, 48) + 15, lightness(80, 48));
    EXPECT_LT(lightness(48, 48) + 40, lightness(1, 1));
    EXPECT_EQ(picture.pixel(1, 1), picture.pixel(94, 94));
}

TEST(PictureVerb, IsWhatTheThumbnailerCalls) {
    const DishFolder folder;
    ASSERT_EQ(call(folder.sketchWords()).exitCode, 0);
    std::istringstream entry(entryOf("meremark.thumbnailer", "Exec"));
    std::vector<std::string> words{std::istream_iterator<std::string>(entry), {}};
    ASSERT_FALSE(words.empty());
    EXPECT_EQ(words.front(), "meremark-batch");
    EXPECT_EQ(words.front(), entryOf("meremark.thumbnailer", "TryExec"));
    words.erase(words.begin());
    // However hostile the file. Not within this process, which has other tests to run.
    const auto within = std::ranges::find(words, "--within");
    ASSERT_GE(std::distance(within, words.end()), 2);
    EXPECT_EQ(*std::next(within), "5");
    words.erase(within, within + 2);
    std::ranges::replace(words, std::string("%i"), folder.at("dish.gpkg"));
    std::ranges::replace(words, std::string("%o"), folder.write("thumb", "")); // Made by who asks.
    std::ranges::replace(words, std::string("%s"), std::string("128"));
    const Call drawn = call(words);
    ASSERT_EQ(drawn.exitCode, 0) << drawn.error;
    EXPECT_EQ(QImage(QString::fromStdString(folder.at("thumb")), "PNG").width(), 128);
    EXPECT_EQ(entryOf("meremark.thumbnailer", "MimeType"),
              entryOf("org.meremark.Meremark.desktop", "MimeType"));
}

TEST(PictureVerb, GivesNoPictureOfWhatHasNone) {
    const DishFolder folder;
    const std::string to = folder.at("thumb.png");
    water::Water water;
    water.name = "Empty";
    base::Progress quiet;
    ASSERT_TRUE(store::writeWater(folder.at("empty.gpkg"), water, {}, {}, quiet).has_value());
    expectRefused(call({"picture", folder.at("empty.gpkg"), "--to", to}), 3, {"empty.gpkg"});
    expectRefused(call({"picture", folder.write("text.gpkg", "lon,lat\n"), "--to", to}), 3,
                  {"text.gpkg"});
    expectRefused(call({"picture", folder.at("nowhere.gpkg"), "--to", to}), 3, {"nowhere.gpkg"});
    EXPECT_FALSE(std::filesystem::exists(to));
}

TEST(PictureVerb, OfAHostileFileIsWholeOrNone) {
    const DishFolder folder;
    const std::filesystem::path corpus =
        std::filesystem::path(MEREMARK_SOURCE_DIR) / "tests/fuzz/corpus/water_file";
    int files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(corpus)) {
        const std::string to = folder.at(entry.path().filename().string() + ".png");
        const Call drawn = call({"picture", entry.path().string(), "--to", to});
        EXPECT_EQ(drawn.exitCode == 0, std::filesystem::exists(to)) << entry.path();
        EXPECT_TRUE(drawn.exitCode == 0 || drawn.exitCode == 3 || drawn.exitCode == 5)
            << entry.path() << drawn.error;
        ++files;
    }
    EXPECT_GT(files, 5);
}

TEST(PictureVerb, IsNeverLaidOverTheWater) {
    const DishFolder folder;
    ASSERT_EQ(call(folder.sketchWords()).exitCode, 0);
    expectRefused(call({"picture", folder.at("dish.gpkg"), "--to", folder.at("dish.gpkg")}), 4,
                  {"--to"});
}

TEST(PictureVerb, HoldsSizeAndTimeToTheirRange) {
    for (const char* wrong : {"15", "2049", "nan", "-96"}) {
        EXPECT_EQ(call({"picture", "a.gpkg", "--to", "a.png", "--size", wrong}).exitCode, 2);
    }
    for (const char* wrong : {"0", "3601", "nan", "-1"}) {
        EXPECT_EQ(call({"picture", "a.gpkg", "--to", "a.png", "--within", wrong}).exitCode, 2);
    }
}

TEST(PictureVerbDeathTest, EndsWithinItsTimeHoweverLongTheFileKeepsIt) {
    const DishFolder folder;
    ASSERT_EQ(call(folder.sketchWords()).exitCode, 0);
    const auto other =
        store::Connection::open(folder.at("dish.gpkg"), store::Connection::Access::existing)
            .value();
    other->execute("BEGIN EXCLUSIVE"); // Whoever reads waits for seconds.
    ASSERT_TRUE(other->outcome().has_value());
    EXPECT_EXIT(
        {
            call({"picture", folder.at("dish.gpkg"), "--to", folder.at("a.png"), "--within",
                  "0.05"});
            _exit(0);
        },
        testing::ExitedWithCode(6), "took longer than --within");
}

TEST(TimeLimitDeathTest, EndsWhateverIsDone) {
    EXPECT_EXIT(
        {
            const batch::TimeLimit limit(0.02);
            for (;;) {
                pause();
            }
        },
        testing::ExitedWithCode(6), "took longer");
}

TEST(TimeLimitDeathTest, EndsWithItsScope) {
    EXPECT_EXIT(
        {
            std::signal(SIGALRM, [](int) { _exit(7); });
            { const batch::TimeLimit limit(0.02); }
            ualarm(200000, 0); // Long after the limit would have struck.
            for (;;) {
                pause();
            }
        },
        testing::ExitedWithCode(7), "");
}

TEST(TimeLimit, IsNoneWhereNoneIsAskedFor) {
    EXPECT_FALSE(batch::TimeLimit(0.0).isSet());
    EXPECT_TRUE(batch::TimeLimit(90.0).isSet());
}

} // namespace
