// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/schema/steps.h"

namespace store::schema {

// What else a log says of a stay and of a fish, all of it optional; and a fish may have no time,
// where the middle of its stay stood before.
void layStep4(Connection& connection) {
    connection.execute(R"sql(
ALTER TABLE stays ADD COLUMN level_m DOUBLE;
ALTER TABLE stays ADD COLUMN sky TEXT NOT NULL DEFAULT '';
ALTER TABLE stays ADD COLUMN who TEXT NOT NULL DEFAULT '';
ALTER TABLE stays ADD COLUMN bait_lon DOUBLE;
ALTER TABLE stays ADD COLUMN bait_lat DOUBLE;
ALTER TABLE stays ADD COLUMN photograph TEXT NOT NULL DEFAULT '';
ALTER TABLE stays ADD COLUMN other_fields TEXT NOT NULL DEFAULT '';
CREATE TABLE fish_of_step_4 (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  stay_fid INTEGER NOT NULL, number INTEGER NOT NULL, time DATETIME,
  landed BOOLEAN NOT NULL, species TEXT NOT NULL, bait TEXT NOT NULL, weight_kg DOUBLE,
  length_m DOUBLE, bait_depth_m DOUBLE, note TEXT NOT NULL, who TEXT NOT NULL DEFAULT '',
  hooked TEXT NOT NULL DEFAULT '', returned BOOLEAN, bait_lon DOUBLE, bait_lat DOUBLE,
  photograph TEXT NOT NULL DEFAULT '', other_fields TEXT NOT NULL DEFAULT '');
INSERT INTO fish_of_step_4 (fid, geom, stay_fid, number, time, landed, species, bait, weight_kg,
  length_m, bait_depth_m, note) SELECT fid, geom, stay_fid, number, time, landed, species, bait,
  weight_kg, length_m, bait_depth_m, note FROM fish;
DROP TABLE fish;
ALTER TABLE fish_of_step_4 RENAME TO fish;
)sql");
}

} // namespace store::schema
