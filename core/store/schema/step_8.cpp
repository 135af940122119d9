// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/schema/steps.h"

namespace store::schema {

namespace {

// The numbers that sections have and had with their water, the parts of a division before the user
// changed it as number 0, and the size that it was for; of names, which number they were given to.
constexpr const char* whatHasNumbers = R"sql(
CREATE TABLE numbered_water (fid INTEGER PRIMARY KEY NOT NULL, geom MULTIPOLYGON NOT NULL,
  number INTEGER NOT NULL, is_on_map BOOLEAN NOT NULL);
CREATE TABLE division (id INTEGER PRIMARY KEY NOT NULL, wanted_area_m2 DOUBLE NOT NULL);
ALTER TABLE section_names ADD COLUMN number INTEGER NOT NULL DEFAULT 0;
ALTER TABLE sections ADD COLUMN number INTEGER NOT NULL DEFAULT 0;
)sql";

// Bands, limit and size of sections that nobody had set stood in every file as if somebody had; now
// what is not set is chosen for the water.
constexpr const char* whatNobodySet = R"sql(
DELETE FROM settings WHERE key='section_area_m2' AND value='40000';
DELETE FROM settings WHERE key IN ('band_edges_m', 'limit_depth_m') AND 2 =
  (SELECT count(*) FROM settings WHERE (key='band_edges_m' AND value='2 4 6 9.144 14 20')
    OR (key='limit_depth_m' AND value='9.144'));
)sql";

} // namespace

void layStep8(Connection& connection) {
    connection.execute(whatHasNumbers);
    connection.execute(whatNobodySet);
    registerFeatures(connection, "numbered_water", "MULTIPOLYGON",
                     "the numbers that sections have and had, and their water");
    registerAttributes(connection, "division", "the size of section that the water is divided for");
}

} // namespace store::schema
