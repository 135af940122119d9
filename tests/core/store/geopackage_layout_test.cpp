// SPDX-License-Identifier: GPL-3.0-or-later
// The tables that OGC GeoPackage 1.3 (12-128r17) and its extension for gridded coverages (17-066r1)
// prescribe, row by row: what any GIS goes by.
#include "core/store/geometry_blob.h"
#include "core/store/geopackage.h"
#include "core/store/statement.h"
#include "core/store/water_store.h"
#include "core/store/write_water.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/found_water.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

#include <gtest/gtest.h>

namespace {

using support::rowsOf;
using support::ScratchFolder;
using water::Part;
using Rows = std::vector<std::string>;

base::Progress quiet;

class GeoPackageLayout : public testing::Test {
protected:
    [[nodiscard]] Rows rows(std::string_view columns, std::string_view from) const {
        return rowsOf(path_, columns, from);
    }
    void write() const {
        const auto written =
            store::writeWater(path_, known_.water, known_.found, known_.told(), quiet);
        ASSERT_TRUE(written.has_value()) << written.error().sentence();
    }

    const support::FoundWater known_;
    const ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.path() / "water.gpkg";
};

TEST_F(GeoPackageLayout, NamesEveryLayerWithItsKindAndReferenceSystem) {
    write();
    EXPECT_EQ(rows("table_name, data_type, srs_id", "gpkg_contents ORDER BY table_name"),
              (Rows{"'bands'|'features'|4326",
                    "'banned_water'|'features'|4326",
                    "'belief_profiles'|'attributes'|0",
                    "'closed_water'|'features'|4326",
                    "'contours'|'features'|4326",
                    "'day_by_hand'|'features'|4326",
                    "'depth'|'2d-gridded-coverage'|900001",
                    "'division'|'attributes'|0",
                    "'drawing'|'attributes'|0",
                    "'fish'|'features'|4326",
                    "'gauge_readings'|'attributes'|0",
                    "'house_rules'|'attributes'|0",
                    "'laid_by_hand'|'features'|4326",
                    "'lead_line'|'features'|4326",
                    "'marks'|'features'|4326",
                    "'numbered_water'|'features'|4326",
                    "'passes'|'attributes'|0",
                    "'pinned_marks'|'features'|4326",
                    "'places'|'features'|4326",
                    "'plan'|'attributes'|0",
                    "'section_change_points'|'features'|4326",
                    "'section_changes'|'attributes'|0",
                    "'section_names'|'features'|4326",
                    "'sections'|'features'|4326",
                    "'settings'|'attributes'|0",
                    "'sheet_stops'|'features'|4326",
                    "'shoreline'|'features'|4326",
                    "'soundings'|'features'|4326",
                    "'stays'|'features'|4326",
                    "'step_results'|'attributes'|0",
                    "'survey_days'|'attributes'|0",
                    "'trust'|'2d-gridded-coverage'|900001",
                    "'verdicts_by_hand'|'attributes'|0",
                    "'water_file'|'attributes'|0",
                    "'weed_areas'|'features'|4326",
                    "'weed_lines'|'features'|4326",
                    "'weed_notes'|'features'|4326",
                    "'zones'|'features'|4326"}));
    EXPECT_EQ(rows("identifier", "gpkg_contents WHERE identifier != table_name"), Rows{});
    EXPECT_EQ(rows("table_name", "gpkg_contents WHERE description = ''"), Rows{});
    EXPECT_EQ(rows("table_name, column_name, geometry_type_name, srs_id, z, m",
                   "gpkg_geometry_columns ORDER BY table_name"),
              (Rows{"'bands'|'geom'|'MULTIPOLYGON'|4326|0|0",
                    "'banned_water'|'geom'|'POLYGON'|4326|0|0",
                    "'closed_water'|'geom'|'MULTIPOLYGON'|4326|0|0",
                    "'contours'|'geom'|'LINESTRING'|4326|0|0",
                    "'day_by_hand'|'geom'|'POINT'|4326|0|0",
                    "'fish'|'geom'|'POINT'|4326|0|0",
                    "'laid_by_hand'|'geom'|'POINT'|4326|0|0",
                    "'lead_line'|'geom'|'POINT'|4326|0|0",
                    "'marks'|'geom'|'POINT'|4326|0|0",
                    "'numbered_water'|'geom'|'MULTIPOLYGON'|4326|0|0",
                    "'pinned_marks'|'geom'|'POINT'|4326|0|0",
                    "'places'|'geom'|'POINT'|4326|0|0",
                    "'section_change_points'|'geom'|'POINT'|4326|0|0",
                    "'section_names'|'geom'|'POINT'|4326|0|0",
                    "'sections'|'geom'|'MULTIPOLYGON'|4326|0|0",
                    "'sheet_stops'|'geom'|'POINT'|4326|0|0",
                    "'shoreline'|'geom'|'POLYGON'|4326|0|0",
                    "'soundings'|'geom'|'POINT'|4326|0|0",
                    "'stays'|'geom'|'POINT'|4326|0|0",
                    "'weed_areas'|'geom'|'POLYGON'|4326|0|0",
                    "'weed_lines'|'geom'|'LINESTRING'|4326|0|0",
                    "'weed_notes'|'geom'|'POINT'|4326|0|0",
                    "'zones'|'geom'|'MULTIPOLYGON'|4326|0|0"}));
}

TEST_F(GeoPackageLayout, SaysWhatItIsAndKnowsTheReferenceSystemsThatAreAskedFor) {
    ASSERT_TRUE(store::create(path_).has_value());
    EXPECT_EQ(rows("application_id", "pragma_application_id"), (Rows{"1196444487"})); // "GPKG"
    EXPECT_EQ(rows("user_version", "pragma_user_version"), (Rows{"10300"}));
    EXPECT_EQ(rows("srs_id, organization, organization_coordsys_id",
                   "gpkg_spatial_ref_sys ORDER BY srs_id"),
              (Rows{"-1|'NONE'|-1", "0|'NONE'|0", "4326|'EPSG'|4326", "4979|'EPSG'|4979"}));
    const std::string wgs84 = rows("definition", "gpkg_spatial_ref_sys WHERE srs_id = 4326").at(0);
    EXPECT_EQ(wgs84.find("'GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,"
                         "298.257223563,"),
              0U);
    EXPECT_NE(wgs84.find("UNIT[\"degree\",0.0174532925199433,"), std::string::npos);
    EXPECT_EQ(rows("table_name, column_name, extension_name, scope",
                   "gpkg_extensions ORDER BY table_name"),
              (Rows{"'gpkg_2d_gridded_coverage_ancillary'|NULL|'gpkg_2d_gridded_coverage'|"
                    "'read-write'",
                    "'gpkg_2d_gridded_tile_ancillary'|NULL|'gpkg_2d_gridded_coverage'|"
                    "'read-write'"}));
}

/// The rows of one grid, worked out from its frame.
TEST_F(GeoPackageLayout, PutsTheTilesOfTheGridsWhereTheyBelong) {
    write();
    const grid::GridFrame& frame = known_.found.drawn->depth.frame();
    const auto span_m = [&](int cells) { return 256.0 * frame.cell_m() * ((cells + 255) / 256); };
    auto opened = store::Connection::open(path_, store::Connection::Access::existing).value();
    for (const char* table : {"depth", "trust"}) {
        SCOPED_TRACE(table);
        store::Statement row(
            *opened, "SELECT s.min_x, s.min_y, s.max_x, s.max_y, c.min_x, c.min_y, c.max_x, "
                     "c.max_y, m.pixel_x_size, m.pixel_y_size FROM gpkg_tile_matrix_set s JOIN "
                     "gpkg_contents c USING (table_name) JOIN gpkg_tile_matrix m USING "
                     "(table_name) WHERE s.table_name=? AND s.srs_id=900001");
        row.ask(table);
        ASSERT_TRUE(row.next());
        EXPECT_EQ(row.number(0), frame.west_m());
        EXPECT_EQ(row.number(1), frame.north_m() - span_m(frame.rows()));
        EXPECT_EQ(row.number(2), frame.west_m() + span_m(frame.cols()));
        EXPECT_EQ(row.number(3), frame.north_m());
        EXPECT_EQ(row.number(4), frame.west_m());
        EXPECT_EQ(row.number(5), frame.north_m() - frame.rows() * frame.cell_m());
        EXPECT_EQ(row.number(6), frame.west_m() + frame.cols() * frame.cell_m());
        EXPECT_EQ(row.number(7), frame.north_m());
        EXPECT_EQ(row.number(8), frame.cell_m());
        EXPECT_EQ(row.number(9), frame.cell_m());
    }
    EXPECT_EQ(rows("table_name, zoom_level, matrix_width, matrix_height, tile_width, tile_height",
                   "gpkg_tile_matrix ORDER BY table_name"),
              (Rows{"'depth'|0|1|1|256|256", "'trust'|0|1|1|256|256"}));
    EXPECT_EQ(rows("tile_matrix_set_name, datatype, scale, offset, data_null, grid_cell_encoding, "
                   "uom, field_name, quantity_definition",
                   "gpkg_2d_gridded_coverage_ancillary ORDER BY tile_matrix_set_name"),
              (Rows{"'depth'|'float'|1.0|0.0|-9999.0|'grid-value-is-area'|'m'|'depth'|"
                    "'depth below chart level, positive down'",
                    "'trust'|'float'|1.0|0.0|-9999.0|'grid-value-is-area'|'m'|'trust'|"
                    "'half-width of the 95 % band round the depth'"}));
    EXPECT_EQ(rows("tpudt_name, tpudt_id, scale, offset",
                   "gpkg_2d_gridded_tile_ancillary ORDER BY tpudt_name"),
              (Rows{"'depth'|1|1.0|0.0", "'trust'|1|1.0|0.0"}));
    EXPECT_EQ(rows("table_name, column_name, extension_name",
                   "gpkg_extensions WHERE column_name NOT NULL ORDER BY table_name"),
              (Rows{"'depth'|'tile_data'|'gpkg_2d_gridded_coverage'",
                    "'trust'|'tile_data'|'gpkg_2d_gridded_coverage'"}));
}

/// The box of a layer in the table of contents, and the one round its geometries.
TEST_F(GeoPackageLayout, SaysOfEveryLayerHowFarItReaches) {
    auto store = store::create(path_).value();
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        SCOPED_TRACE(seed);
        // Found things lie round the made-up water, the rest anywhere; now and then there is none.
        water::Water water = support::RandomWater(seed).make(20);
        water.frame = known_.made.frame;
        ASSERT_TRUE(store->save(water, water::allParts, quiet).has_value());
        ASSERT_TRUE(store
                        ->saveFound(water, seed % 2 == 0 ? known_.found : water::Derived(),
                                    known_.told(), quiet)
                        .has_value());
        auto opened = store::Connection::open(path_, store::Connection::Access::existing).value();
        for (std::string table : rows("table_name", "gpkg_geometry_columns")) {
            SCOPED_TRACE(table);
            store::LonLatBox box;
            store::Statement blobs(*opened, "SELECT geom FROM " + table);
            blobs.ask();
            while (blobs.next()) {
                const store::LonLatBox one = store::boxOf(blobs.blob(0)).value();
                if (!one.isEmpty()) {
                    box.take(geo::LonLat{one.west_deg, one.south_deg});
                    box.take(geo::LonLat{one.east_deg, one.north_deg});
                }
            }
            store::Statement said(*opened, "SELECT min_x, min_y, max_x, max_y FROM gpkg_contents "
                                           "WHERE table_name=" +
                                               table);
            said.ask();
            ASSERT_TRUE(said.next());
            const auto wanted = [&](double side) {
                return box.isEmpty() ? std::nullopt : std::optional(side);
            };
            EXPECT_EQ(said.numberIfAny(0), wanted(box.west_deg));
            EXPECT_EQ(said.numberIfAny(1), wanted(box.south_deg));
            EXPECT_EQ(said.numberIfAny(2), wanted(box.east_deg));
            EXPECT_EQ(said.numberIfAny(3), wanted(box.north_deg));
        }
    }
}

TEST_F(GeoPackageLayout, TellsWhichLayersASaveHasChanged) {
    const std::map<Part, Rows> changed{
        {Part::facts, {"'places'", "'settings'"}},
        {Part::shoreline, {"'shoreline'"}},
        {Part::days,
         {"'gauge_readings'", "'passes'", "'soundings'", "'survey_days'", "'verdicts_by_hand'"}},
        {Part::leadLine, {"'lead_line'"}},
        {Part::weedNotes, {"'weed_areas'", "'weed_lines'", "'weed_notes'"}},
        {Part::houseRules, {"'closed_water'", "'house_rules'"}},
        {Part::sections, {"'section_change_points'", "'section_changes'", "'section_names'"}},
        {Part::plan,
         {"'banned_water'", "'belief_profiles'", "'day_by_hand'", "'laid_by_hand'",
          "'pinned_marks'", "'plan'"}},
        {Part::sheets, {"'sheet_stops'"}},
        {Part::log, {"'fish'", "'stays'"}}};
    auto store = store::create(path_).value();
    const auto age = [&] {
        support::changeFile(path_,
                            "UPDATE gpkg_contents SET last_change='2001-01-01T00:00:00.000Z'");
    };
    const auto young = [&] {
        return rows("table_name",
                    "gpkg_contents WHERE last_change GLOB '20[2-9][0-9]-[0-1][0-9]-[0-3][0-9]T"
                    "[0-2][0-9]:[0-5][0-9]:[0-5][0-9].[0-9][0-9][0-9]Z' ORDER BY table_name");
    };
    for (const auto& [part, tables] : changed) {
        SCOPED_TRACE(static_cast<int>(part));
        age();
        ASSERT_TRUE(store->save(known_.water, std::array{part}, quiet).has_value());
        EXPECT_EQ(young(), tables);
    }
    age();
    ASSERT_TRUE(
        store->saveDrawing(*known_.found.drawn, known_.made.frame, water::Stamp(1)).has_value());
    EXPECT_EQ(young(), (Rows{"'depth'", "'drawing'", "'trust'"}));
    age();
    ASSERT_TRUE(store->saveFound(known_.water, known_.found, known_.told(), quiet).has_value());
    EXPECT_EQ(young(), (Rows{"'bands'", "'contours'", "'marks'", "'sections'", "'zones'"}));
}

} // namespace
