// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"

#include "core/store/statement.h"

#include <fmt/format.h>

namespace store {

namespace {

// Annex C of the standard, and of its extension for tiled gridded coverages (17-066r1).
constexpr const char* coreTables = R"sql(
CREATE TABLE gpkg_spatial_ref_sys (
  srs_name TEXT NOT NULL,
  srs_id INTEGER NOT NULL PRIMARY KEY,
  organization TEXT NOT NULL,
  organization_coordsys_id INTEGER NOT NULL,
  definition TEXT NOT NULL,
  description TEXT);
CREATE TABLE gpkg_contents (
  table_name TEXT NOT NULL PRIMARY KEY,
  data_type TEXT NOT NULL,
  identifier TEXT UNIQUE,
  description TEXT DEFAULT '',
  last_change DATETIME NOT NULL DEFAULT (strftime('%Y-%m-%dT%H:%M:%fZ','now')),
  min_x DOUBLE,
  min_y DOUBLE,
  max_x DOUBLE,
  max_y DOUBLE,
  srs_id INTEGER,
  CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys(srs_id));
CREATE TABLE gpkg_geometry_columns (
  table_name TEXT NOT NULL,
  column_name TEXT NOT NULL,
  geometry_type_name TEXT NOT NULL,
  srs_id INTEGER NOT NULL,
  z TINYINT NOT NULL,
  m TINYINT NOT NULL,
  CONSTRAINT pk_geom_cols PRIMARY KEY (table_name, column_name),
  CONSTRAINT uk_gc_table_name UNIQUE (table_name),
  CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name),
  CONSTRAINT fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys (srs_id));
CREATE TABLE gpkg_extensions (
  table_name TEXT,
  column_name TEXT,
  extension_name TEXT NOT NULL,
  definition TEXT NOT NULL,
  scope TEXT NOT NULL,
  CONSTRAINT ge_tce UNIQUE (table_name, column_name, extension_name));
CREATE TABLE gpkg_tile_matrix_set (
  table_name TEXT NOT NULL PRIMARY KEY,
  srs_id INTEGER NOT NULL,
  min_x DOUBLE NOT NULL,
  min_y DOUBLE NOT NULL,
  max_x DOUBLE NOT NULL,
  max_y DOUBLE NOT NULL,
  CONSTRAINT fk_gtms_table_name FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name),
  CONSTRAINT fk_gtms_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys (srs_id));
CREATE TABLE gpkg_tile_matrix (
  table_name TEXT NOT NULL,
  zoom_level INTEGER NOT NULL,
  matrix_width INTEGER NOT NULL,
  matrix_height INTEGER NOT NULL,
  tile_width INTEGER NOT NULL,
  tile_height INTEGER NOT NULL,
  pixel_x_size DOUBLE NOT NULL,
  pixel_y_size DOUBLE NOT NULL,
  CONSTRAINT pk_ttm PRIMARY KEY (table_name, zoom_level),
  CONSTRAINT fk_tmm_table_name FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name));
CREATE TABLE gpkg_2d_gridded_coverage_ancillary (
  id INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL,
  tile_matrix_set_name TEXT NOT NULL UNIQUE,
  datatype TEXT NOT NULL DEFAULT 'integer',
  scale REAL NOT NULL DEFAULT 1.0,
  offset REAL NOT NULL DEFAULT 0.0,
  precision REAL DEFAULT 1.0,
  data_null REAL,
  grid_cell_encoding TEXT DEFAULT 'grid-value-is-center',
  uom TEXT,
  field_name TEXT DEFAULT 'Height',
  quantity_definition TEXT DEFAULT 'Height',
  CONSTRAINT fk_g2dgtct_name FOREIGN KEY(tile_matrix_set_name)
    REFERENCES gpkg_tile_matrix_set (table_name),
  CHECK (datatype in ('integer','float')));
CREATE TABLE gpkg_2d_gridded_tile_ancillary (
  id INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL,
  tpudt_name TEXT NOT NULL,
  tpudt_id INTEGER NOT NULL,
  scale REAL NOT NULL DEFAULT 1.0,
  offset REAL NOT NULL DEFAULT 0.0,
  min REAL DEFAULT NULL,
  max REAL DEFAULT NULL,
  mean REAL DEFAULT NULL,
  std_dev REAL DEFAULT NULL,
  CONSTRAINT fk_g2dgtat_name FOREIGN KEY (tpudt_name) REFERENCES gpkg_contents(table_name),
  UNIQUE (tpudt_name, tpudt_id));
)sql";

constexpr const char* wgs84Wkt =
    R"wkt(GEOGCS["WGS 84",DATUM["WGS_1984",SPHEROID["WGS 84",6378137,298.257223563,AUTHORITY["EPSG","7030"]],AUTHORITY["EPSG","6326"]],PRIMEM["Greenwich",0,AUTHORITY["EPSG","8901"]],UNIT["degree",0.0174532925199433,AUTHORITY["EPSG","9122"]],AXIS["Latitude",NORTH],AXIS["Longitude",EAST],AUTHORITY["EPSG","4326"]])wkt";

// The extension for gridded coverages wants EPSG:4979 to be there.
constexpr const char* wgs84HeightWkt =
    R"wkt(GEODCRS["WGS 84",DATUM["World Geodetic System 1984",ELLIPSOID["WGS 84",6378137,298.257223563,LENGTHUNIT["metre",1]]],PRIMEM["Greenwich",0,ANGLEUNIT["degree",0.0174532925199433]],CS[ellipsoidal,3],AXIS["geodetic latitude (Lat)",north,ORDER[1],ANGLEUNIT["degree",0.0174532925199433]],AXIS["geodetic longitude (Lon)",east,ORDER[2],ANGLEUNIT["degree",0.0174532925199433]],AXIS["ellipsoidal height (h)",up,ORDER[3],LENGTHUNIT["metre",1]],ID["EPSG",4979]])wkt";

void layReferenceSystems(Connection& connection) {
    Statement insert(connection,
                     "INSERT INTO gpkg_spatial_ref_sys (srs_name, srs_id, organization, "
                     "organization_coordsys_id, definition, description) VALUES (?,?,?,?,?,?)");
    insert.run("WGS 84 geodetic", wgs84Srs, "EPSG", wgs84Srs, wgs84Wkt,
               "longitude and latitude in degrees on the WGS 84 spheroid");
    insert.run("WGS 84 3D", 4979, "EPSG", 4979, wgs84HeightWkt,
               "longitude, latitude and height above the WGS 84 spheroid");
    insert.run("Undefined cartesian SRS", -1, "NONE", -1, "undefined",
               "undefined cartesian coordinate reference system");
    insert.run("Undefined geographic SRS", 0, "NONE", 0, "undefined",
               "undefined geographic coordinate reference system");
}

} // namespace

void layGeoPackage(Connection& connection) {
    connection.execute(fmt::format("PRAGMA application_id = {}", geoPackageId));
    connection.execute(fmt::format("PRAGMA user_version = {}", geoPackageVersion));
    connection.execute(coreTables);
    layReferenceSystems(connection);
    Statement extension(connection,
                        "INSERT INTO gpkg_extensions (table_name, column_name, extension_name, "
                        "definition, scope) VALUES (?,?,'gpkg_2d_gridded_coverage',"
                        "'http://docs.opengeospatial.org/is/17-066r1/17-066r1.html','read-write')");
    extension.run("gpkg_2d_gridded_coverage_ancillary", std::nullopt);
    extension.run("gpkg_2d_gridded_tile_ancillary", std::nullopt);
}

void registerFeatures(Connection& connection, std::string_view table, std::string_view type,
                      std::string_view description) {
    Statement contents(connection,
                       "INSERT INTO gpkg_contents (table_name, data_type, identifier, description, "
                       "srs_id) VALUES (?,'features',?,?,?)");
    contents.run(table, table, description, wgs84Srs);
    Statement geometry(connection, "INSERT INTO gpkg_geometry_columns (table_name, column_name, "
                                   "geometry_type_name, srs_id, z, m) VALUES (?,'geom',?,?,0,0)");
    geometry.run(table, type, wgs84Srs);
}

void registerAttributes(Connection& connection, std::string_view table,
                        std::string_view description) {
    Statement contents(connection,
                       "INSERT INTO gpkg_contents (table_name, data_type, identifier, description, "
                       "srs_id) VALUES (?,'attributes',?,?,0)");
    contents.run(table, table, description);
}

void setExtent(Connection& connection, std::string_view table, const LonLatBox& box) {
    Statement update(connection, "UPDATE gpkg_contents SET min_x=?, min_y=?, max_x=?, max_y=? "
                                 "WHERE table_name=?");
    if (box.isEmpty()) {
        update.run(std::nullopt, std::nullopt, std::nullopt, std::nullopt, table);
    } else {
        update.run(box.west_deg, box.south_deg, box.east_deg, box.north_deg, table);
    }
    setChanged(connection, table);
}

void setChanged(Connection& connection, std::string_view table) {
    connection.noteChanged(table);
    Statement update(connection,
                     "UPDATE gpkg_contents SET last_change=strftime('%Y-%m-%dT%H:%M:%fZ','now') "
                     "WHERE table_name=?");
    update.run(table);
}

void setFrame(Connection& connection, const geo::WaterFrame& frame) {
    Statement insert(connection,
                     "INSERT OR REPLACE INTO gpkg_spatial_ref_sys (srs_name, srs_id, organization, "
                     "organization_coordsys_id, definition, description) VALUES (?,?,?,?,?,?)");
    insert.run("Frame of this water", frameSrs, "NONE", frameSrs, frame.wkt(),
               "transverse Mercator projection of WGS 84 centred on the water, metres");
}

} // namespace store
