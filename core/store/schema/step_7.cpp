// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/schema/steps.h"

namespace store::schema {

namespace {

// The stops of the sheets that were made for the boat, so that a day can be written up once the
// plan has gone on to another.
constexpr const char* sheetStops = R"sql(
CREATE TABLE sheet_stops (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  day DATE NOT NULL, rank INTEGER NOT NULL, called TEXT NOT NULL, from_time DATETIME NOT NULL,
  to_time DATETIME NOT NULL);
)sql";

} // namespace

void layStep7(Connection& connection) {
    connection.execute(sheetStops);
    registerFeatures(connection, "sheet_stops", "POINT",
                     "stops on the sheets made for the boat, by day");
}

} // namespace store::schema
