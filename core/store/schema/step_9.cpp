// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/schema/steps.h"

namespace store::schema {

namespace {

// When weed was seen, and the lines and areas along and over which it was; each belongs to the note
// of that row, whose own place is its first corner.
constexpr const char* weedAsDrawn = R"sql(
ALTER TABLE weed_notes ADD COLUMN seen DATE;
CREATE TABLE weed_lines (fid INTEGER PRIMARY KEY NOT NULL, geom LINESTRING NOT NULL,
  note INTEGER NOT NULL);
CREATE TABLE weed_areas (fid INTEGER PRIMARY KEY NOT NULL, geom POLYGON NOT NULL,
  note INTEGER NOT NULL);
)sql";

} // namespace

void layStep9(Connection& connection) {
    connection.execute(weedAsDrawn);
    registerFeatures(connection, "weed_lines", "LINESTRING",
                     "lines along which weed was met, each of a note in weed_notes");
    registerFeatures(connection, "weed_areas", "POLYGON",
                     "areas over which weed was met, each of a note in weed_notes");
}

} // namespace store::schema
