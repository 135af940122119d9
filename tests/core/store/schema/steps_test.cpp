// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/schema/steps.h"

#include "core/store/geometry_blob.h"
#include "core/store/keep_parts.h"
#include "core/store/statement.h"
#include "core/store/transaction.h"
#include "core/store/water_store.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <array>

#include <gtest/gtest.h>

namespace {

using store::Connection;
using support::ScratchFolder;

base::Progress quiet;

void addGrebes(Connection& connection) {
    connection.execute("CREATE TABLE grebes (id INTEGER PRIMARY KEY NOT NULL, name TEXT)");
}

void addAndStumble(Connection& connection) {
    connection.execute("DELETE FROM settings");
    connection.execute("INSERT INTO nowhere VALUES (1)");
}

/// The published steps, and these behind them.
std::vector<store::schema::Step> withBehind(std::initializer_list<store::schema::Step> more) {
    const auto published = store::schema::publishedSteps();
    std::vector<store::schema::Step> steps(published.begin(), published.end());
    steps.insert(steps.end(), more);
    return steps;
}

constexpr geo::LonLat markOfOld{3.1, 55.2};

/// A stay with a fish, as far as the first version knew them.
logbook::Stay stayOfOld() {
    logbook::Stay stay;
    stay.id = logbook::StayId(4);
    stay.start = units::momentFrom("2026-10-03T08:10:00Z", {}).value();
    stay.end = stay.start + std::chrono::hours(2);
    stay.place = markOfOld;
    stay.rods = 3;
    stay.bait = "roach";
    stay.note = "calm";
    logbook::Fish fish;
    fish.id = logbook::FishId(5);
    fish.time = stay.start + std::chrono::minutes(20);
    fish.species = "pike";
    fish.weight = units::Weight::kilograms(5.25);
    stay.runs = {fish};
    return stay;
}

void keepStayOfOld(Connection& connection) {
    const store::GeometryBlob place = store::blobOf(markOfOld);
    store::Statement(connection, "INSERT INTO stays (geom, number, start_time, end_time, rods, "
                                 "bait, note) VALUES (?, 4, '2026-10-03T08:10:00.000Z', "
                                 "'2026-10-03T10:10:00.000Z', 3, 'roach', 'calm')")
        .run(store::Blob(place));
    store::Statement(connection, "INSERT INTO fish (geom, stay_fid, number, time, landed, species, "
                                 "bait, weight_kg, note) VALUES (?, 1, 5, "
                                 "'2026-10-03T08:30:00.000Z', 1, 'pike', '', 5.25, '')")
        .run(store::Blob(place));
}

/// A file as the first published version left it: nothing behind step 1 is in it.
void writeByTheFirstVersion(const std::filesystem::path& path, const water::Water& water) {
    const auto connection = Connection::open(path, Connection::Access::create).value();
    const std::array<store::schema::Step, 1> first{store::schema::layStep1};
    ASSERT_TRUE(store::schema::bringUpToDate(*connection, 0, first).has_value());
    store::Transaction transaction(*connection);
    store::Statement mark(*connection,
                          "INSERT INTO marks (geom, rank, depth_m, trust_m, section, score, "
                          "fetch_m, wave_height_m, reasons) VALUES (?, 1, 4.5, 0.25, 'Heron Bay', "
                          "1.5, 420.5, 0.125, 'weed')");
    mark.run(store::Blob(store::blobOf(markOfOld)));
    store::keepDays(*connection, water, nullptr, quiet);
    for (const auto keep : {store::keepFacts, store::keepShoreline, store::keepLeadLine,
                            store::keepHouseRules, store::keepPlan}) {
        keep(*connection, water);
    }
    for (const weed::WeedNote& note : water.weedNotes) { // places alone, of no day
        store::Statement(*connection, "INSERT INTO weed_notes (geom, number, growth, height_m) "
                                      "VALUES (?,?,?,?)")
            .run(store::Blob(store::blobOf(note.place)), note.id.number(),
                 weed::nameOf(note.growth),
                 note.height ? std::optional(note.height->inMetres()) : std::nullopt);
    }
    for (const sections::SectionName& name : water.sectionNames) {
        store::Statement(*connection, "INSERT INTO section_names (geom, name) VALUES (?,?)")
            .run(store::Blob(store::blobOf(name.seed)), name.name);
    }
    keepStayOfOld(*connection);
    const auto written = transaction.commit();
    ASSERT_TRUE(written.has_value()) << written.error().sentence();
}

bool hasTable(Connection& connection, std::string_view name) {
    store::Statement row(connection, "SELECT 1 FROM sqlite_master WHERE name=?");
    row.ask(name);
    return row.next();
}

class Steps : public testing::Test {
protected:
    void SetUp() override {
        auto store = store::create(path);
        ASSERT_TRUE(store.has_value());
        ASSERT_TRUE((*store)->save(water, water::allParts, quiet).has_value());
    }
    [[nodiscard]] std::unique_ptr<Connection> opened() const {
        return Connection::open(path, Connection::Access::existing).value();
    }

    const water::Water water = support::RandomWater(5).make(50);
    const ScratchFolder folder;
    const std::filesystem::path path = folder.path() / "water.gpkg";
};

TEST_F(Steps, RunOnlyThoseThatTheFileHasNotSeen) {
    const auto steps = withBehind({addGrebes});
    const auto connection = opened();
    const std::int64_t newest = store::schema::newestStep();
    EXPECT_EQ(store::schema::stepOf(*connection), newest);
    const auto upgraded = store::schema::bringUpToDate(*connection, newest, steps);
    ASSERT_TRUE(upgraded.has_value()) << upgraded.error().sentence();
    EXPECT_EQ(store::schema::stepOf(*connection), newest + 1);
    EXPECT_TRUE(hasTable(*connection, "grebes"));
    // This program does not know the step: it leaves the file alone from now on.
    EXPECT_EQ(store::stateOf(path), store::FileState::newer);
}

TEST_F(Steps, LeaveTheFileWhereItStoodWhenOneFails) {
    const auto steps = withBehind({addGrebes, addAndStumble});
    {
        const auto connection = opened();
        const std::int64_t newest = store::schema::newestStep();
        ASSERT_FALSE(store::schema::bringUpToDate(*connection, newest, steps).has_value());
        EXPECT_EQ(store::schema::stepOf(*connection), newest);
        EXPECT_FALSE(hasTable(*connection, "grebes"));
    }
    auto store = store::open(path);
    ASSERT_TRUE(store.has_value()) << store.error().sentence();
    EXPECT_TRUE((*store)->load(quiet).value() == water);
}

TEST_F(Steps, AreAllDoneInAFreshFile) {
    const auto connection = opened();
    EXPECT_EQ(store::schema::stepOf(*connection), store::schema::newestStep());
}

TEST_F(Steps, BringAFileOfTheFirstVersionUpToDateWithAllThatItHolds) {
    water::Water old = water;
    old.sectionChanges.clear();
    old.numbering = {};
    for (sections::SectionName& name : old.sectionNames) {
        name.number = 0;
    }
    old.banned.clear();
    old.beliefProfiles.clear();
    old.dayByHand = {};
    old.sheets.clear();
    old.log = {stayOfOld()};
    old.plan.tackle.toOneAnchor = false;
    for (water::PinnedMark& mark : old.pinnedMarks) {
        mark.laid = {};
    }
    const auto oldPath = folder.path() / "old.gpkg";
    writeByTheFirstVersion(oldPath, old);
    ASSERT_EQ(store::stateOf(oldPath), store::FileState::older);
    {
        auto store = store::open(oldPath);
        ASSERT_TRUE(store.has_value()) << store.error().sentence();
        EXPECT_EQ((*store)->opening(), store::Opening::upgraded);
        EXPECT_TRUE((*store)->load(quiet).value() == old);
        old.sectionChanges = {{sections::SectionChange::Kind::split, {}, {{3.1, 55.2}, {3.2, 55}}}};
        ASSERT_TRUE((*store)->save(old, std::array{water::Part::sections}, quiet).has_value());
        old.banned = {{"snags", {{3.1, 55.2}, {3.2, 55}, {3.2, 55.2}}}};
        old.beliefProfiles = {{"autumn", {}}};
        old.dayByHand = {{{3.1, 55.2}}, {{{3.1, 55.2}, std::chrono::minutes(20)}}};
        old.pinnedMarks.push_back({"laid", {3.1, 55.2}, {geo::LonLat{3.1, 55.2}, {}, {}, {}}});
        ASSERT_TRUE((*store)->save(old, std::array{water::Part::plan}, quiet).has_value());
    }
    EXPECT_EQ(support::rowsOf(oldPath,
                              "rank, depth_m, trust_m, section, score, fetch_m, wave_height_m, "
                              "reasons, length(geom)",
                              "marks"),
              std::vector<std::string>{"1|4.5|0.25|'Heron Bay'|1.5|420.5|0.125|'weed'|" +
                                       std::to_string(store::blobOf(markOfOld).size())});
    EXPECT_EQ(store::stateOf(oldPath), store::FileState::current);
    auto again = store::open(oldPath);
    ASSERT_TRUE(again.has_value()) << again.error().sentence();
    EXPECT_TRUE((*again)->load(quiet).value() == old);
    EXPECT_TRUE((*again)->check(quiet).value().faults.empty());
}

} // namespace
