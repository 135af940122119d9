// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/schema/steps.h"

namespace store::schema {

// A stay whose rods nobody noted has none in its row, where a 1 was made up before. A column is not
// made optional in place, so the table is laid once more and takes over the name.
void layStep3(Connection& connection) {
    connection.execute(R"sql(
CREATE TABLE stays_of_step_3 (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  number INTEGER NOT NULL, start_time DATETIME NOT NULL, end_time DATETIME NOT NULL,
  rods INTEGER, bait TEXT NOT NULL, wind_from_deg DOUBLE, wind_speed_m_s DOUBLE,
  water_temperature_c DOUBLE, note TEXT NOT NULL);
INSERT INTO stays_of_step_3 SELECT fid, geom, number, start_time, end_time, rods, bait,
  wind_from_deg, wind_speed_m_s, water_temperature_c, note FROM stays;
DROP TABLE stays;
ALTER TABLE stays_of_step_3 RENAME TO stays;
)sql");
}

} // namespace store::schema
