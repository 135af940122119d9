// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/schema/steps.h"

namespace store::schema {

// What the user changed about the division into sections: joined, split, borders moved.
void layStep2(Connection& connection) {
    connection.execute(R"sql(
CREATE TABLE section_changes (id INTEGER PRIMARY KEY NOT NULL, kind TEXT NOT NULL);
CREATE TABLE section_change_points (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  change_id INTEGER NOT NULL, is_on_line BOOLEAN NOT NULL);
CREATE INDEX section_change_points_by_change ON section_change_points (change_id);
)sql");
    registerAttributes(connection, "section_changes",
                       "sections that the user joined, split, or gave another border");
    registerFeatures(connection, "section_change_points", "POINT",
                     "places and lines of those changes, each in its order");
}

} // namespace store::schema
