// SPDX-License-Identifier: GPL-3.0-or-later
// What no water can hold, no program can put into its file.
#include "core/store/water_store.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/found_water.h"
#include "tests/support/scratch_folder.h"

#include <gmock/gmock.h>

namespace {

base::Progress quiet;

class Constraints : public testing::Test {
protected:
    void SetUp() override {
        auto store = store::create(path_).value();
        ASSERT_TRUE(store->saveWhole(known_.water, known_.found, known_.told(), quiet).has_value());
    }
    /// What the database says to this change by another program; "" where it takes it.
    [[nodiscard]] std::string answerTo(const std::string& sql) const {
        sqlite3* file = nullptr;
        EXPECT_EQ(sqlite3_open(path_.c_str(), &file), SQLITE_OK);
        sqlite3_exec(file, "PRAGMA foreign_keys = TRUE", nullptr, nullptr, nullptr);
        char* said = nullptr;
        sqlite3_exec(file, sql.c_str(), nullptr, nullptr, &said);
        std::string answer = said == nullptr ? "" : said;
        sqlite3_free(said);
        sqlite3_close(file);
        return answer;
    }

    const support::FoundWater known_;
    const support::ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.path() / "water.gpkg";
};

TEST_F(Constraints, KeepOutNumbersThatCannotBe) {
    for (const char* change :
         {"UPDATE soundings SET shown_depth_m = 2e16", "UPDATE soundings SET shown_depth_m = 9e999",
          "UPDATE soundings SET shown_depth_m = 'deep'", "UPDATE survey_days SET draft_m = -1e9",
          "UPDATE stays SET wind_speed_m_s = -1", "UPDATE stays SET rods = 1e12",
          "UPDATE fish SET weight_kg = -3", "UPDATE lead_line SET depth_m = 9e99",
          "UPDATE passes SET first_sounding = -1"}) {
        EXPECT_THAT(answerTo(change), testing::HasSubstr("CHECK constraint failed")) << change;
    }
    EXPECT_EQ(answerTo("UPDATE soundings SET shown_depth_m = 4.5"), "");
}

TEST_F(Constraints, KeepOutRowsThatBelongToNothing) {
    for (const char* change :
         {"UPDATE soundings SET day_id = 4711", "UPDATE fish SET stay_fid = 4711",
          "DELETE FROM stays", "DELETE FROM survey_days"}) {
        EXPECT_THAT(answerTo(change), testing::HasSubstr("FOREIGN KEY constraint failed"))
            << change;
    }
}

TEST_F(Constraints, AreThereInAFileThatWasBroughtUpToDateWhateverItHeld) {
    support::changeFile(path_, "UPDATE water_file SET value='9' WHERE key='schema_step';"
                               "DROP INDEX fish_by_stay;"
                               "UPDATE fish SET stay_fid = 4711 WHERE fid = 1");
    ASSERT_TRUE(store::open(path_).has_value());
    EXPECT_THAT(answerTo("UPDATE stays SET wind_speed_m_s = -1"),
                testing::HasSubstr("CHECK constraint failed"));
    const auto report = store::open(path_).value()->check(quiet);
    ASSERT_TRUE(report.has_value());
    EXPECT_THAT(report->faults, testing::Contains("the log holds a fish without a stay"))
        << "what was wrong before is told, and not dropped";
}

} // namespace
