// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/spatial_functions.h"

#include "core/store/geometry_blob.h"
#include "core/store/statement.h"
#include "core/store/water_store.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace {

using store::Connection;
using support::ScratchFolder;

base::Progress quiet;

// The spatial index of GeoPackage 1.3, annex F.3, as other programs lay it.
constexpr const char* index = R"sql(
CREATE VIRTUAL TABLE rtree_soundings_geom USING rtree(id, minx, maxx, miny, maxy);
INSERT OR REPLACE INTO rtree_soundings_geom
  SELECT fid, ST_MinX(geom), ST_MaxX(geom), ST_MinY(geom), ST_MaxY(geom) FROM soundings
  WHERE geom NOTNULL AND NOT ST_IsEmpty(geom);
CREATE TRIGGER rtree_soundings_geom_insert AFTER INSERT ON soundings
  WHEN (new.geom NOT NULL AND NOT ST_IsEmpty(new.geom)) BEGIN
  INSERT OR REPLACE INTO rtree_soundings_geom VALUES (new.fid, ST_MinX(new.geom),
    ST_MaxX(new.geom), ST_MinY(new.geom), ST_MaxY(new.geom)); END;
CREATE TRIGGER rtree_soundings_geom_delete AFTER DELETE ON soundings WHEN old.geom NOT NULL BEGIN
  DELETE FROM rtree_soundings_geom WHERE id = old.fid; END;
)sql";

TEST(SpatialFunctions, LetAWaterBeSavedUnderAnotherProgramsIndex) {
    const ScratchFolder folder;
    const auto path = folder.path() / "water.gpkg";
    support::RandomWater random(3);
    auto store = store::create(path);
    ASSERT_TRUE(store.has_value());
    ASSERT_TRUE((*store)->save(random.make(100), water::allParts, quiet).has_value());
    {
        auto connection = Connection::open(path, Connection::Access::existing).value();
        store::addSpatialFunctions(*connection);
        connection->execute(index);
        const auto laid = connection->outcome();
        ASSERT_TRUE(laid.has_value()) << laid.error().sentence();
    }
    water::Water water = random.make(100);
    while (water.days.empty() || water.days[0].soundings.empty()) {
        water = random.make(100);
    }
    const auto saved = (*store)->save(water, water::allParts, quiet);
    ASSERT_TRUE(saved.has_value()) << saved.error().sentence();
    EXPECT_TRUE((*store)->load(quiet).value() == water);
    auto connection = Connection::open(path, Connection::Access::existing).value();
    store::Statement counts(*connection, "SELECT (SELECT count(*) FROM rtree_soundings_geom), "
                                         "(SELECT count(*) FROM soundings)");
    counts.ask();
    ASSERT_TRUE(counts.next());
    EXPECT_EQ(counts.wholeNumber(0), counts.wholeNumber(1));
    EXPECT_GT(counts.wholeNumber(0), 0);
}

TEST(SpatialFunctions, TellTheSidesOfAGeometry) {
    const ScratchFolder folder;
    auto connection = Connection::open(folder.path() / "a.db", Connection::Access::create).value();
    store::addSpatialFunctions(*connection);
    store::Statement ask(*connection, "SELECT ST_MinX(?1), ST_MaxX(?1), ST_MinY(?1), ST_MaxY(?1), "
                                      "ST_IsEmpty(?1)");
    const geo::LonLatPiece piece{{{1.0, 2.0}, {3.0, 2.0}, {3.0, 5.0}}, {}};
    ask.ask(store::Blob(store::blobOf(piece)));
    ASSERT_TRUE(ask.next());
    EXPECT_EQ(ask.number(0), 1.0);
    EXPECT_EQ(ask.number(1), 3.0);
    EXPECT_EQ(ask.number(2), 2.0);
    EXPECT_EQ(ask.number(3), 5.0);
    EXPECT_EQ(ask.wholeNumber(4), 0);
    const std::vector<geo::LonLatPiece> none;
    ask.ask(store::Blob(store::blobOf(std::span(none))));
    ASSERT_TRUE(ask.next());
    EXPECT_TRUE(ask.isEmpty(0));
    EXPECT_EQ(ask.wholeNumber(4), 1);
    ask.ask("no geometry");
    ASSERT_TRUE(ask.next());
    EXPECT_TRUE(ask.isEmpty(0));
    EXPECT_TRUE(ask.isEmpty(4));
}

} // namespace
