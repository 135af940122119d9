// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
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

// What the user wants of the list and of the day: water that is never proposed, beliefs under
// names, the order of the day and stays by his own hand.
constexpr const char* whatTheUserWants = R"sql(
CREATE TABLE banned_water (fid INTEGER PRIMARY KEY NOT NULL, geom POLYGON NOT NULL,
  name TEXT NOT NULL);
CREATE TABLE belief_profiles (id INTEGER PRIMARY KEY NOT NULL, number INTEGER NOT NULL,
  name TEXT NOT NULL, factor TEXT NOT NULL, weight DOUBLE NOT NULL);
CREATE TABLE day_by_hand (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL, turn INTEGER,
  stay_s INTEGER);
)sql";

} // namespace

void layStep3(Connection& connection) {
    connection.execute(whatMayBeUnknown);
    connection.execute(whatTheUserWants);
    registerFeatures(connection, "banned_water", "POLYGON",
                     "where the user wants no mark proposed");
    registerAttributes(connection, "belief_profiles", "what the user holds to matter, by name");
    registerFeatures(
        connection, "day_by_hand", "POINT",
        "marks in the order that the user gave, and how long he wants to stay on them");
}

} // namespace store::schema
