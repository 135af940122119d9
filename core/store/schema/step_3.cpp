// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/schema/steps.h"

namespace store::schema {

namespace {

// What nobody said is not made up: a stay may have no rods, where a 1 stood before, and a mark no
// waves, where no wind was said. A column is not made optional in place, so each table is laid once
// more and takes over the name.
constexpr const char* whatMayBeUnknown = R"sql(
CREATE TABLE stays_of_step_3 (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  number INTEGER NOT NULL, start_time DATETIME NOT NULL, end_time DATETIME NOT NULL,
  rods INTEGER, bait TEXT NOT NULL, wind_from_deg DOUBLE, wind_speed_m_s DOUBLE,
  water_temperature_c DOUBLE, note TEXT NOT NULL);
INSERT INTO stays_of_step_3 SELECT fid, geom, number, start_time, end_time, rods, bait,
  wind_from_deg, wind_speed_m_s, water_temperature_c, note FROM stays;
DROP TABLE stays;
ALTER TABLE stays_of_step_3 RENAME TO stays;
CREATE TABLE marks_of_step_3 (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  rank INTEGER NOT NULL, depth_m DOUBLE NOT NULL, trust_m DOUBLE NOT NULL,
  section TEXT NOT NULL, score DOUBLE NOT NULL, fetch_m DOUBLE, wave_height_m DOUBLE,
  reasons TEXT NOT NULL);
INSERT INTO marks_of_step_3 SELECT fid, geom, rank, depth_m, trust_m, section, score, fetch_m,
  wave_height_m, reasons FROM marks;
DROP TABLE marks;
ALTER TABLE marks_of_step_3 RENAME TO marks;
)sql";

} // namespace

void layStep3(Connection& connection) {
    connection.execute(whatMayBeUnknown);
}

} // namespace store::schema
