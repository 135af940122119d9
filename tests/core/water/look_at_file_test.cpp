// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/look_at_file.h"

#include <gtest/gtest.h>

#include <fstream>
#include <string>
#include <string_view>
#include <unistd.h>

namespace {

using water::FileContent;

class LookAtFile : public testing::Test {
protected:
    void SetUp() override {
        path_ = std::filesystem::temp_directory_path() /
                ("meremark_look_" + std::to_string(::getpid()) + ".any");
    }
    void TearDown() override { std::filesystem::remove(path_); }

    FileContent contentOf(std::string_view text) {
        std::ofstream(path_, std::ios::binary) << text;
        const auto content = water::lookAtFile(path_);
        EXPECT_TRUE(content.has_value());
        return content.value_or(FileContent::waterFile);
    }

    std::filesystem::path path_;
};

TEST_F(LookAtFile, KnowsEveryFileOfTheSampleSurvey) {
    const std::filesystem::path files = std::filesystem::path(MEREMARK_SAMPLE_DIR) / "files";
    const std::pair<const char*, FileContent> expected[] = {
        {"shoreline.geojson", FileContent::shoreline},
        {"survey-2026-09-05.nmea", FileContent::soundings},
        {"survey-2026-09-12.gpx", FileContent::soundings},
        {"survey-2026-09-19.csv", FileContent::soundings},
        {"survey-days.csv", FileContent::surveyDayFacts},
        {"weed-notes.csv", FileContent::weedNotes},
        {"lead-line.csv", FileContent::leadLine},
        {"water.json", FileContent::waterFacts},
        {"house-rules.json", FileContent::houseRules},
        {"log.csv", FileContent::log},
        {"day-track.gpx", FileContent::line},
    };
    for (const auto& [name, content] : expected) {
        const auto found = water::lookAtFile(files / name);
        ASSERT_TRUE(found.has_value()) << name;
        EXPECT_EQ(*found, content) << name;
    }
}

TEST_F(LookAtFile, GoesByWhatItHoldsAndNotByItsName) {
    EXPECT_EQ(contentOf("\xEF\xBB\xBF \"Lon\";\"Lat\";\"Kind\"\r\n1;2;thin\r\n"),
              FileContent::weedNotes);
    EXPECT_EQ(contentOf(R"({"type": "Point", "coordinates": [1, 2]})"), FileContent::soundings);
    EXPECT_EQ(contentOf("$GPGGA,1\n"), FileContent::soundings);
    EXPECT_EQ(contentOf(std::string_view("SQLite format 3\0and more", 24)), FileContent::waterFile);
}

TEST_F(LookAtFile, SaysWhatIsWrongWithAnEmptyOrMissingFile) {
    const auto missing = water::lookAtFile(path_);
    ASSERT_FALSE(missing.has_value());
    EXPECT_EQ(missing.error().what, "there is no such file");
    std::ofstream(path_, std::ios::binary).flush();
    const auto empty = water::lookAtFile(path_);
    ASSERT_FALSE(empty.has_value());
    EXPECT_EQ(empty.error().what, "the file is empty");
}

} // namespace
