// SPDX-License-Identifier: GPL-3.0-or-later
// One row for each kind of damage that a water file can have, and what is said of it.
#include "core/store/transaction.h"
#include "core/store/water_store.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/found_water.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>

#include <gmock/gmock.h>

namespace {

using support::ScratchFolder;
using testing::ElementsAre;
using testing::HasSubstr;

base::Progress quiet;

struct Damage {
    const char* what;
    const char* sql;
    const char* told;
};

const std::array damages{
    Damage{"pages that nothing points to",
           "PRAGMA writable_schema=ON; DELETE FROM sqlite_master WHERE name='soundings_by_day'; "
           "PRAGMA "
           "schema_version=4711",
           "never used"},
    Damage{"a reference to nothing",
           "INSERT INTO gpkg_tile_matrix_set VALUES ('no such layer', 4326, 0, 0, 1, 1)",
           "a row of gpkg_tile_matrix_set points to nothing"},
    Damage{"another program's mark", "PRAGMA application_id=7",
           "the file no longer says that it is a GeoPackage 1.3"},
    Damage{"another version", "PRAGMA user_version=10200",
           "the file no longer says that it is a GeoPackage 1.3"},
    Damage{"a layer that is gone", "DROP TABLE bands", "the layer bands is gone"},
    Damage{"a setting that is no number", "UPDATE settings SET value='deep' WHERE key='weed_left'",
           "the value of weed_left is no number"},
    Damage{"bands that cannot be", "UPDATE settings SET value='4 2' WHERE key='band_edges_m'",
           "the bands cannot be: "},
    Damage{"bands that are no numbers",
           "UPDATE settings SET value='2 four' WHERE key='band_edges_m'",
           "the value of band_edges_m is no number"},
    Damage{"a frame that cannot be",
           "UPDATE settings SET value='95' WHERE key='frame_centre_lat_deg'",
           "the water's frame cannot be: "},
    Damage{"a time zone that nobody knows",
           "UPDATE settings SET value='Middle/Earth' WHERE key='clock_zone'",
           "this machine knows no time zone 'Middle/Earth'"},
    Damage{"a place that is none", "UPDATE places SET geom=x'00'", "a geometry cannot be read"},
    Damage{"a shore that is none", "UPDATE shoreline SET geom='here'",
           "column geom holds something that is no row of bytes"},
    Damage{"soundings lost", "DELETE FROM soundings WHERE fid=9",
           "survey day '2026-09-05, \"windy\"' holds 199 soundings instead of 200"},
    Damage{"a depth that is none", "UPDATE soundings SET shown_depth_m='deep' WHERE fid=9",
           "column shown_depth_m holds something that is no number"},
    Damage{"a time that is none", "UPDATE soundings SET time='noon' WHERE fid=9",
           "'noon' is no time"},
    Damage{"a pass beyond the end", "UPDATE passes SET first_sounding=200 WHERE first_sounding=90",
           "speaks of sounding 201 of 200"},
    Damage{"a verdict beyond the end", "UPDATE verdicts_by_hand SET sounding=200",
           "speaks of sounding 201 of 200"},
    Damage{"a kept sounding beyond the end", "UPDATE verdicts_by_hand SET sounding=1000, is_kept=1",
           "speaks of sounding 1001 of 200"},
    Damage{"a position below 0", "UPDATE passes SET first_sounding=-1", "-1 is no position"},
    Damage{"a gauge reading without a level", "UPDATE gauge_readings SET level_m='low'",
           "column level_m holds something that is no number"},
    Damage{"soundings of no day",
           "INSERT INTO soundings (geom, day_id, shown_depth_m) SELECT geom, 4711, 1.0 FROM "
           "soundings LIMIT 3",
           "3 soundings belong to no survey day"},
    Damage{"a bottom that nobody knows", "UPDATE lead_line SET bottom='cheese'",
           "there is no bottom named 'cheese'"},
    Damage{"weed that nobody knows", "UPDATE weed_notes SET growth='tall'",
           "there is no weed growth named 'tall'"},
    Damage{"a rod limit that is none", "UPDATE house_rules SET value='some' WHERE key='rod_limit'",
           "the value of rod_limit is no number"},
    Damage{"closed water that is none", "UPDATE closed_water SET geom=x'4750'",
           "a geometry cannot be read"},
    Damage{"a section's name without a place", "UPDATE section_names SET geom=x'4750'",
           "a geometry cannot be read"},
    Damage{"a change of sections that nobody knows", "UPDATE section_changes SET kind='melt'",
           "there is no change of sections named 'melt'"},
    Damage{"two sections of one number", "UPDATE numbered_water SET number=3",
           "two sections numbered 3"},
    Damage{"a number without water", "UPDATE numbered_water SET geom=x'4750' WHERE number=5",
           "a geometry cannot be read"},
    Damage{"a plan for no day", "UPDATE plan SET value='someday' WHERE key='day'",
           "the plan's day 'someday' is no day"},
    Damage{"a launch that is nowhere",
           "INSERT OR REPLACE INTO plan (key, value) VALUES ('launch_lon_deg', "
           "'100000'), ('launch_lat_deg', '55')",
           "a place of 100000, 55 is not on the Earth"},
    Damage{"a rope that is none", "UPDATE plan SET value='long' WHERE key='bow_rope_m'",
           "the value of bow_rope_m is no number"},
    Damage{"a whole number that is none", "UPDATE plan SET value='2.5' WHERE key='rods'",
           "the value of rods is no number"},
    Damage{"a pinned mark without a place", "UPDATE pinned_marks SET geom=x'4750'",
           "a geometry cannot be read"},
    Damage{"banned water that is none", "UPDATE banned_water SET geom=x'4750'",
           "a geometry cannot be read"},
    Damage{"a belief that nobody knows", "UPDATE belief_profiles SET factor='luck'",
           "there is no belief named 'luck'"},
    Damage{"a stay of the day that is no time",
           "UPDATE day_by_hand SET stay_s='long' WHERE turn IS NULL",
           "column stay_s holds something that is no whole number"},
    Damage{"more rods than there are numbers", "UPDATE stays SET rods=9000000000 WHERE fid=1",
           "rods is 9e+09, and -1000 to 1000 can be"},
    Damage{"a stay backwards", "UPDATE stays SET end_time='2026-09-27T09:06:39.000Z' WHERE fid=1",
           "the stay of 2026-09-27T09:06:40Z ends before it starts"},
    Damage{"a stay without a rod", "UPDATE stays SET rods=0 WHERE fid=2",
           "the stay of 2026-09-27T12:06:40Z has no rod"},
    Damage{"a fish without a stay", "UPDATE fish SET stay_fid=9 WHERE fid=2",
           "the log holds a fish without a stay"},
    Damage{"a grid that is cut", "UPDATE depth SET tile_data=substr(tile_data, 2)",
           "the kept drawing is not whole; it will be made again"},
    Damage{"a trust that is cut", "UPDATE trust SET tile_column=5",
           "the kept drawing is not whole; it will be made again"},
    Damage{"a depth beyond all water",
           "UPDATE depth SET tile_data=CAST(substr(tile_data, 1, length(tile_data) - 262144) || "
           "x'ca1b8e5a' || substr(tile_data, length(tile_data) - 262139) AS BLOB)",
           "the kept drawing is not whole; it will be made again"},
    Damage{"a drawing with a stiffness beyond all",
           "UPDATE drawing SET report=json_set(report, '$.stiffness', 1e300)",
           "the kept drawing is not whole; it will be made again"},
    Damage{"a draft beyond all boats", "UPDATE survey_days SET draft_m=2e16",
           "draft_m is 2e+16, and -100 to 100 can be"},
    Damage{"a level without end", "UPDATE survey_days SET gauge_level_m=-9e999",
           "gauge_level_m is -inf, and -12000 to 12000 can be"},
    Damage{
        "a sounding off the Earth",
        "UPDATE soundings SET geom=x'47500001e610000001010000000000000000c072400000000000000000' "
        "WHERE fid=9",
        "a place of 300, 0 is not on the Earth"},
    Damage{"a cell beyond all waters", "UPDATE settings SET value='1e300' WHERE key='weed_left'",
           "weed_left is 1e+300"},
    Damage{"a setting out of its range", "UPDATE settings SET value='7' WHERE key='weed_left'",
           "a setting cannot be: the share of weed left must be between 0 and 1"},
    Damage{"more marks than anybody wants", "UPDATE plan SET value='1000000000' WHERE key='count'",
           "count is 1e+09, and 0 to 1000 can be"},
    Damage{"a day of no year",
           "INSERT OR REPLACE INTO house_rules (key, value) VALUES ('season_first_month_day', '0')",
           "season_first_month_day is 0, and 101 to 1231 can be"},
    Damage{"a table that is a view",
           "ALTER TABLE places RENAME TO other; CREATE VIEW places AS WITH RECURSIVE r(x) AS "
           "(SELECT 1 UNION ALL SELECT x + 1 FROM r) SELECT x AS fid, x AS geom, 'a' AS name FROM "
           "r",
           "the water file's tables are not as they should be"},
    Damage{"a grid without cells", "UPDATE drawing SET cols=0",
           "the kept drawing is not whole; it will be made again"},
};

class CheckFile : public testing::Test {
protected:
    void SetUp() override {
        known_.water.sectionChanges = {
            {sections::SectionChange::Kind::split, {}, {known_.at(0, 0), known_.at(90, 0)}}};
        known_.water.settings.bands = contours::Bands();
        const std::vector<geo::LonLatPiece> somewhere{
            {{known_.at(0, 0), known_.at(90, 0), known_.at(90, 50)}, {}}};
        known_.water.numbering.waters = {{2, true, somewhere}, {5, false, somewhere}};
        known_.water.banned = {{"snags", {known_.at(0, 0), known_.at(90, 0), known_.at(90, 50)}}};
        known_.water.beliefProfiles = {{"autumn", {}}};
        known_.water.dayByHand = {{known_.at(0, 0)}, {{known_.at(0, 0), std::chrono::minutes(40)}}};
        auto store = store::create(whole_).value();
        ASSERT_TRUE(store->saveWhole(known_.water, known_.found, known_.told(), quiet).has_value());
    }
    [[nodiscard]] static store::CheckReport checked(const std::filesystem::path& path) {
        // Not by store::open(): it refuses some of the damage before it can be looked into.
        auto store = store::open(path);
        EXPECT_TRUE(store.has_value()) << store.error().sentence();
        return store ? (*store)->check(quiet).value() : store::CheckReport();
    }

    support::FoundWater known_;
    const ScratchFolder folder_;
    const std::filesystem::path whole_ = folder_.path() / "whole.gpkg";
    const std::filesystem::path path_ = folder_.path() / "water.gpkg";
};

TEST_F(CheckFile, CountsWhatAWholeFileHolds) {
    const store::CheckReport report = checked(whole_);
    EXPECT_THAT(report.faults, ElementsAre());
    EXPECT_TRUE(report.isWhole());
    EXPECT_EQ(report.surveyDays, 1U);
    EXPECT_EQ(report.soundings, 200U);
    EXPECT_EQ(report.stays, 2U);
    EXPECT_EQ(report.fish, 2U);
    EXPECT_TRUE(report.hasDrawing);
}

TEST_F(CheckFile, FindsEachKindOfDamage) {
    for (const Damage& damage : damages) {
        SCOPED_TRACE(damage.what);
        std::filesystem::copy_file(whole_, path_,
                                   std::filesystem::copy_options::overwrite_existing);
        auto store = store::open(path_).value();
        support::changeFile(path_, damage.sql);
        const auto report = store->check(quiet);
        ASSERT_TRUE(report.has_value()) << report.error().sentence();
        EXPECT_THAT(report->faults, testing::Contains(HasSubstr(damage.told)));
        EXPECT_FALSE(report->isWhole());
    }
}

TEST_F(CheckFile, TellsOfEachFaultOnce) {
    std::filesystem::copy_file(whole_, path_);
    support::changeFile(path_, "UPDATE stays SET rods=0; UPDATE fish SET stay_fid=9 WHERE fid=2;"
                               "DELETE FROM drawing; UPDATE weed_notes SET growth='tall'");
    const store::CheckReport report = checked(path_);
    EXPECT_THAT(report.faults, ElementsAre("there is no weed growth named 'tall'",
                                           "the log holds a fish without a stay",
                                           "the stay of 2026-09-27T09:06:40Z has no rod",
                                           "the stay of 2026-09-27T12:06:40Z has no rod"));
    EXPECT_FALSE(report.hasDrawing);
    EXPECT_EQ(report.stays, 2U);
    EXPECT_EQ(report.fish, 1U);
}

TEST_F(CheckFile, TellsOfNoMoreThanTwentyFaults) {
    logbook::Stay backwards = known_.water.log[1];
    backwards.end = backwards.start - std::chrono::seconds(1);
    for (const int stays : {20, 21, 40}) {
        known_.water.log = logbook::Log(static_cast<std::size_t>(stays), backwards);
        auto store = store::open(whole_).value();
        ASSERT_TRUE(store->save(known_.water, water::allParts, quiet).has_value());
        EXPECT_EQ(store->check(quiet).value().faults.size(), 20U) << stays;
    }
}

/// Tries to write into the file whenever it is asked whether to stop.
class WritingMeanwhile : public base::Progress {
public:
    explicit WritingMeanwhile(const std::filesystem::path& path, bool stops)
        : other_(store::Connection::open(path, store::Connection::Access::existing).value()),
          stops_(stops) {
        other_->execute("PRAGMA busy_timeout=0");
    }
    [[nodiscard]] bool stopAsked() const override {
        other_->execute("UPDATE stays SET rods=0");
        refused_ += other_->outcome() ? 0 : 1;
        written_ += refused_ == 0 ? 1 : 0;
        return stops_;
    }
    [[nodiscard]] bool isKeptOut() const { return refused_ > 0 && written_ == 0; }

private:
    std::unique_ptr<store::Connection> other_;
    bool stops_;
    mutable int refused_ = 0;
    mutable int written_ = 0;
};

TEST_F(CheckFile, LooksAtOneStateOfTheFileWhateverOthersWrite) {
    WritingMeanwhile other(whole_, false);
    const auto report = store::open(whole_).value()->check(other);
    ASSERT_TRUE(report.has_value());
    EXPECT_TRUE(other.isKeptOut());
    EXPECT_THAT(report->faults, ElementsAre());
}

TEST_F(CheckFile, StopsWhenAskedAndLetsGoOfTheFile) {
    auto store = store::open(whole_).value();
    WritingMeanwhile other(whole_, true);
    const auto report = store->check(other);
    ASSERT_FALSE(report.has_value());
    EXPECT_EQ(report.error().kind, base::ErrorKind::cancelled);
    EXPECT_TRUE(store->save(known_.water, water::allParts, quiet).has_value());
    EXPECT_TRUE(store->check(quiet).value().isWhole());
}

} // namespace
