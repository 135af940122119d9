// SPDX-License-Identifier: GPL-3.0-or-later
// What a path leads to, what is said of it, and that a file is brought into the state that the
// program counts on before anything is kept in it.
#include "core/store/geopackage.h"
#include "core/store/schema/steps.h"
#include "core/store/water_store.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/failing_disk.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>

#include <gmock/gmock.h>

namespace {

using base::ErrorKind;
using store::Connection;
using store::FileState;
using support::ScratchFolder;

base::Progress quiet;

class AFile : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(store::create(path_).value()->save(water_, water::allParts, quiet).has_value());
    }
    void change(const std::string& sql) const { support::changeFile(path_, sql); }
    /// The file in this state is refused in these words, and left as it is.
    void expectRefused(const std::filesystem::path& path, FileState state, ErrorKind kind,
                       std::string_view what, std::string_view whatToDo) const {
        const std::string bytes = ScratchFolder::textOf(path);
        EXPECT_EQ(store::stateOf(path), state);
        const auto opened = store::open(path);
        ASSERT_FALSE(opened.has_value());
        EXPECT_EQ(opened.error().kind, kind);
        EXPECT_EQ(opened.error().what, what);
        EXPECT_EQ(opened.error().whatToDo, whatToDo);
        EXPECT_EQ(opened.error().where, path.string());
        EXPECT_TRUE(ScratchFolder::textOf(path) == bytes);
    }
    void expectOther(const std::filesystem::path& path) const {
        expectRefused(path, FileState::notAWater, ErrorKind::unusableInput, "this is no water file",
                      "give a file that Meremark made, or bring its soundings in as survey days");
    }
    void expectDamaged() const {
        expectRefused(path_, FileState::damaged, ErrorKind::damagedWater,
                      "the water file is damaged", "take a copy that is whole");
    }

    const water::Water water_ = support::RandomWater(4).make(20);
    const ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.path() / "water.gpkg";
};

TEST_F(AFile, StatesHaveNames) {
    EXPECT_EQ(store::nameOf(FileState::missing), "missing");
    EXPECT_EQ(store::nameOf(FileState::unreadable), "unreadable");
    EXPECT_EQ(store::nameOf(FileState::notAWater), "not a water");
    EXPECT_EQ(store::nameOf(FileState::damaged), "damaged");
    EXPECT_EQ(store::nameOf(FileState::newer), "newer");
    EXPECT_EQ(store::nameOf(FileState::older), "older");
    EXPECT_EQ(store::nameOf(FileState::inUse), "in use");
    EXPECT_EQ(store::nameOf(FileState::current), "current");
}

TEST_F(AFile, ThatIsNoneOfOursIsRefusedByItsHead) {
    expectRefused(folder_.path() / "nowhere.gpkg", FileState::missing, ErrorKind::unusableInput,
                  "there is no such water file", "check the name");
    expectRefused(folder_.path(), FileState::unreadable, ErrorKind::unusableInput,
                  "the file cannot be read", "check that you may read it");
    expectOther(folder_.file("text.gpkg", "lon,lat,depth_m\n"));
    expectOther(folder_.file("head.gpkg", "SQLite format 2" + std::string(200, '\0')));
    change("PRAGMA application_id=1196444486"); // One less than "GPKG".
    expectOther(path_);
}

TEST_F(AFile, ThatSaysNothingOfAWaterIsNone) {
    change("DELETE FROM water_file");
    expectOther(path_);
    change("DROP TABLE water_file");
    expectOther(path_);
}

TEST_F(AFile, SaysByItsStepWhichVersionItIsOf) {
    const auto setStep = [this](const std::string& step) {
        change("UPDATE water_file SET value='" + step + "' WHERE key='schema_step'");
    };
    const std::int64_t newest = store::schema::newestStep();
    EXPECT_EQ(newest, 10);
    EXPECT_EQ(store::stateOf(path_), FileState::current);
    setStep(std::to_string(newest - 1));
    EXPECT_EQ(store::stateOf(path_), FileState::older);
    setStep(std::to_string(newest + 1));
    EXPECT_EQ(store::stateOf(path_), FileState::newer);
    for (const char* none : {"0", "-1", "2.5", "two", ""}) {
        setStep(none);
        expectDamaged();
    }
}

TEST_F(AFile, OfANewerVersionOpensToBeLookedAtAndNothingIsSavedIntoIt) {
    change("UPDATE water_file SET value='99' WHERE key='schema_step';"
           "ALTER TABLE stays ADD COLUMN moon TEXT NOT NULL DEFAULT 'full'");
    const std::string bytes = ScratchFolder::textOf(path_);
    for (const store::Purpose purpose : {store::Purpose::writing, store::Purpose::looking}) {
        const auto opened = store::open(path_, purpose);
        ASSERT_TRUE(opened.has_value()) << opened.error().sentence();
        EXPECT_EQ((*opened)->opening(), store::Opening::newer);
        EXPECT_TRUE((*opened)->isReadOnly());
        EXPECT_FALSE((*opened)->owner().has_value());
        EXPECT_TRUE((*opened)->load(quiet).value() == water_);
        const auto saved = (*opened)->save(water_, water::allParts, quiet);
        ASSERT_FALSE(saved.has_value());
        EXPECT_EQ(saved.error().kind, ErrorKind::unwritableOutput);
        EXPECT_EQ(saved.error().what, "a newer version of Meremark keeps this water file");
    }
    EXPECT_TRUE(ScratchFolder::textOf(path_) == bytes);
}

TEST_F(AFile, OfANewerVersionThatCannotBeReadIsNotCalledDamaged) {
    change("UPDATE water_file SET value='99' WHERE key='schema_step';"
           "ALTER TABLE stays RENAME TO outings");
    const auto opened = store::open(path_);
    ASSERT_TRUE(opened.has_value());
    const auto water = (*opened)->load(quiet);
    ASSERT_FALSE(water.has_value());
    EXPECT_EQ(water.error().kind, ErrorKind::unusableInput);
    EXPECT_THAT(water.error().what, testing::StartsWith("a newer version of Meremark"));
}

TEST_F(AFile, ThatAnotherProgramIsWritingIsNotCalledDamaged) {
    const auto other = Connection::open(path_, Connection::Access::existing).value();
    other->execute("BEGIN EXCLUSIVE");
    ASSERT_TRUE(other->outcome().has_value());
    const auto opened = store::open(path_); // Waits its three seconds.
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error().kind, ErrorKind::waterInUse);
    EXPECT_EQ(opened.error().what, "another program has this water open");
}

TEST_F(AFile, ThatIsShorterThanItsHeadSaysIsDamagedWhateverItsPages) {
    for (const char* size : {"4096", "65536", "512"}) {
        SCOPED_TRACE(size);
        std::filesystem::remove(path_);
        {
            auto connection = Connection::open(path_, Connection::Access::create).value();
            connection->execute(std::string("PRAGMA page_size=") + size);
            ASSERT_TRUE(store::schema::bringUpToDate(*connection, 0).has_value());
        }
        EXPECT_EQ(store::stateOf(path_), FileState::current);
        std::filesystem::resize_file(path_, std::filesystem::file_size(path_) - 1);
        expectDamaged();
    }
}

TEST_F(AFile, WithALogThatIsWrittenAheadGoesBackToItsJournal) {
    change("PRAGMA journal_mode=WAL");
    ASSERT_EQ(ScratchFolder::textOf(path_).substr(18, 2), "\x02\x02");
    auto store = store::open(path_);
    ASSERT_TRUE(store.has_value()) << store.error().sentence();
    EXPECT_EQ(ScratchFolder::textOf(path_).substr(18, 2), "\x01\x01");
    EXPECT_TRUE((*store)->load(quiet).value() == water_);
}

TEST_F(AFile, WithALogThatIsWrittenAheadIsLeftAsItIsByWhoLooks) {
    change("PRAGMA journal_mode=WAL");
    auto store = store::open(path_, store::Purpose::looking);
    ASSERT_TRUE(store.has_value()) << store.error().sentence();
    EXPECT_TRUE((*store)->load(quiet).value() == water_);
    EXPECT_EQ(ScratchFolder::textOf(path_).substr(18, 2), "\x02\x02");
}

TEST_F(AFile, OfAnOlderVersionThatMayOnlyBeReadSaysSoAndStaysAsItIs) {
    change(
        "DROP TABLE section_changes; DROP TABLE section_change_points; DROP TABLE banned_water;"
        "DROP TABLE belief_profiles; DROP TABLE day_by_hand; DROP TABLE laid_by_hand;"
        "DROP TABLE step_results; DROP TABLE sheet_stops;"
        "DROP TABLE numbered_water; DROP TABLE division;"
        "ALTER TABLE section_names DROP COLUMN number;"
        "ALTER TABLE sections DROP COLUMN number;"
        "DROP TABLE weed_lines; DROP TABLE weed_areas;"
        "ALTER TABLE weed_notes DROP COLUMN seen;"
        "DELETE FROM gpkg_geometry_columns WHERE table_name LIKE 'section_change%' OR "
        "table_name IN ('banned_water', 'day_by_hand', 'laid_by_hand', 'sheet_stops', "
        "'numbered_water', 'weed_lines', 'weed_areas');"
        "DELETE FROM gpkg_contents WHERE table_name LIKE 'section_change%' OR "
        "table_name IN ('banned_water', 'belief_profiles', 'day_by_hand', 'laid_by_hand', "
        "'step_results', 'sheet_stops', 'numbered_water', 'division', 'weed_lines', 'weed_areas');"
        "UPDATE water_file SET value='1' WHERE key='schema_step'");
    const std::string bytes = ScratchFolder::textOf(path_);
    {
        support::FailingDisk disk;
        disk.forbidWriting();
        const auto opened = store::open(path_);
        ASSERT_FALSE(opened.has_value());
        EXPECT_EQ(opened.error().kind, ErrorKind::unwritableOutput);
        EXPECT_EQ(opened.error().what, "the water file may only be read");
    }
    EXPECT_TRUE(ScratchFolder::textOf(path_) == bytes);
    auto opened = store::open(path_);
    ASSERT_TRUE(opened.has_value()) << opened.error().sentence();
    EXPECT_EQ((*opened)->opening(), store::Opening::upgraded);
    EXPECT_EQ(store::stateOf(path_), FileState::current);
}

TEST_F(AFile, WithAnotherProgramsIndexCanBeSavedOnceOpened) {
    change("CREATE VIRTUAL TABLE rtree_stays_geom USING rtree(id, minx, maxx, miny, maxy);"
           "CREATE TRIGGER rtree_stays_geom_insert AFTER INSERT ON stays WHEN (new.geom NOT NULL "
           "AND NOT ST_IsEmpty(new.geom)) BEGIN INSERT OR REPLACE INTO rtree_stays_geom VALUES "
           "(new.fid, ST_MinX(new.geom), ST_MaxX(new.geom), ST_MinY(new.geom), "
           "ST_MaxY(new.geom)); END");
    auto store = store::open(path_).value();
    water::Water water = water_;
    water.log = logbook::Log(2);
    water.log.edit(1).place = {3.25, 55.5};
    const auto saved = store->save(water, water::allParts, quiet);
    ASSERT_TRUE(saved.has_value()) << saved.error().sentence();
    EXPECT_EQ(support::rowsOf(path_, "minx, maxx, miny, maxy", "rtree_stays_geom WHERE id=2"),
              std::vector<std::string>{"3.25|3.25|55.5|55.5"});
}

TEST_F(AFile, ThatIsNewStandsAloneInItsFolder) {
    const auto path = folder_.path() / "new.gpkg";
    auto store = store::create(path).value();
    EXPECT_EQ(store->path(), path);
    EXPECT_FALSE(store->isReadOnly());
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder_.path()), {}), 3)
        << "with the lock that says who has it";
    const auto again = store::create(path);
    ASSERT_FALSE(again.has_value());
    EXPECT_EQ(again.error().what, "a file of this name is there already");
    EXPECT_EQ(again.error().where, path.string());
    EXPECT_EQ(again.error().whatToDo, "choose another name, or remove it first");
    const auto nowhere = store::create(folder_.path() / "no" / "folder.gpkg");
    ASSERT_FALSE(nowhere.has_value());
    EXPECT_EQ(nowhere.error().kind, ErrorKind::unwritableOutput);
    EXPECT_EQ(nowhere.error().where, (folder_.path() / "no" / "folder.gpkg").string());
}

} // namespace
