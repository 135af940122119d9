// SPDX-License-Identifier: GPL-3.0-or-later
// A water file that somebody made to do harm: what it holds is data, and nothing of it runs.
#include "core/store/statement.h"
#include "core/store/water_store.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/found_water.h"
#include "tests/support/scratch_folder.h"

#include <gmock/gmock.h>

namespace {

using base::ErrorKind;
using store::Connection;
using store::Statement;
using support::changeFile;
using support::rowsOf;
using testing::HasSubstr;

base::Progress quiet;

class HostileFile : public testing::Test {
protected:
    void SetUp() override {
        auto store = store::create(path_).value();
        ASSERT_TRUE(store->saveWhole(known_.water, known_.found, known_.told(), quiet).has_value());
    }
    /// Saves the log with one stay less.
    [[nodiscard]] base::Result<void> saveShorterLog() const {
        water::Water water = known_.water;
        water.log.erase(0);
        return store::open(path_).value()->save(water, std::array{water::Part::log}, quiet);
    }

    const support::FoundWater known_;
    const support::ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.path() / "water.gpkg";
};

TEST_F(HostileFile, RunsNoTriggerOfOthers) {
    changeFile(path_, "CREATE TRIGGER mine AFTER DELETE ON stays BEGIN DELETE FROM shoreline; END;"
                      "CREATE TRIGGER rtree_stays_geom_insert AFTER INSERT ON stays BEGIN "
                      "DELETE FROM shoreline; END");
    ASSERT_TRUE(saveShorterLog());
    EXPECT_EQ(rowsOf(path_, "count(*)", "shoreline"),
              std::vector{std::to_string(known_.water.shoreline.size())});
}

TEST_F(HostileFile, KeepsCountsAndIndexesOfOthersOfNow) {
    changeFile(path_, "CREATE TABLE gpkg_ogr_contents (table_name TEXT PRIMARY KEY, feature_count "
                      "INTEGER); INSERT INTO gpkg_ogr_contents VALUES ('stays', 99), ('places', 7);"
                      "CREATE VIRTUAL TABLE rtree_stays_geom USING rtree(id, minx, maxx, miny, "
                      "maxy); INSERT INTO rtree_stays_geom VALUES (99, 0, 0, 0, 0);"
                      "CREATE VIRTUAL TABLE rtree_places_geom USING rtree(id, minx, maxx, miny, "
                      "maxy); INSERT INTO rtree_places_geom VALUES (98, 0, 0, 0, 0)");
    ASSERT_TRUE(saveShorterLog());
    EXPECT_EQ(rowsOf(path_, "feature_count", "gpkg_ogr_contents ORDER BY table_name"),
              (std::vector<std::string>{"7", "NULL"}))
        << "the places have not changed";
    EXPECT_EQ(rowsOf(path_, "id", "rtree_stays_geom"), std::vector<std::string>{"1"});
    EXPECT_EQ(rowsOf(path_, "id", "rtree_places_geom"), std::vector<std::string>{"98"});
}

TEST_F(HostileFile, WithAViewInThePlaceOfATableIsDamagedAndAnswersAtOnce) {
    changeFile(path_, "DROP TABLE places; CREATE VIEW places AS WITH RECURSIVE r(x) AS (SELECT 1 "
                      "UNION ALL SELECT x + 1 FROM r) SELECT x AS fid, x AS geom, 'a' AS name "
                      "FROM r");
    auto store = store::open(path_);
    ASSERT_TRUE(store) << store.error().sentence();
    const auto water = (*store)->load(quiet);
    ASSERT_FALSE(water);
    EXPECT_EQ(water.error().kind, ErrorKind::damagedWater);
    EXPECT_THAT(water.error().what, HasSubstr("tables are not as they should be"));
}

TEST_F(HostileFile, IsAskedNothingThatFindsNoEnd) {
    auto connection = Connection::open(path_, Connection::Access::existing).value();
    constexpr const char* endless = "WITH RECURSIVE r(x) AS (SELECT 1 UNION ALL SELECT x + 1 FROM "
                                    "r) SELECT ";
    connection->execute(endless + std::string("count(*) FROM r"));
    const auto steps = connection->outcome();
    ASSERT_FALSE(steps);
    EXPECT_EQ(steps.error().kind, ErrorKind::damagedWater);
    EXPECT_EQ(steps.error().what, "a question to the water file finds no end");
    {
        Statement rows(*connection, endless + std::string("x FROM r"));
        rows.ask();
        while (rows.next()) {
        }
    }
    const auto rows = connection->outcome();
    ASSERT_FALSE(rows);
    EXPECT_EQ(rows.error().what,
              "a table of the water file has more rows than the file has room for");
}

TEST_F(HostileFile, LoadsTheWaterWithoutADrawingThatIsNone) {
    changeFile(path_, "UPDATE drawing SET cell_m='wide'");
    auto store = store::open(path_).value();
    EXPECT_TRUE(store->load(quiet).value() == known_.water);
    const auto drawing = store->loadDrawing(known_.made.outline);
    ASSERT_TRUE(drawing) << drawing.error().sentence();
    EXPECT_FALSE(drawing->has_value());
}

TEST_F(HostileFile, IsNeverMadeByOurselves) {
    const auto refuses = [this](const std::function<void(water::Water&)>& change,
                                const char* told) {
        SCOPED_TRACE(told);
        water::Water water = known_.water;
        change(water);
        auto store = store::open(path_).value();
        const auto saved = store->save(water, water::allParts, quiet);
        ASSERT_FALSE(saved);
        EXPECT_EQ(saved.error().kind, ErrorKind::wrongUse);
        EXPECT_THAT(saved.error().what, HasSubstr(told));
        EXPECT_TRUE(store->load(quiet).value() == known_.water);
    };
    refuses([](water::Water& w) { w.days[0].sounder.draft = units::Depth::metres(1e300); },
            "draft_m of 1e+300 cannot be kept");
    refuses(
        [](water::Water& w) { w.days[0].soundings.edit()[0].shown = units::Depth::metres(2e16); },
        "shown_depth_m of 2e+16 cannot be kept");
    refuses([](water::Water& w) { w.plan.tackle.bowRope = units::Length::metres(-1.0); },
            "bow_rope_m of -1 cannot be kept");
    refuses([](water::Water& w) { w.plan.count = 1001; }, "count of 1001 cannot be kept");
    refuses(
        [](water::Water& w) {
            w.log.edit(0).conditions.windSpeed = units::Speed::metresPerSecond(201.0);
        },
        "wind_speed_m_s of 201 cannot be kept");
}

} // namespace
