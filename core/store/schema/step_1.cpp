// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/schema/steps.h"

#include <array>

namespace store::schema {

namespace {

// Lengths and depths in metres, positive down; times in UTC; angles in degrees.
constexpr const char* whatTheUserHas = R"sql(
CREATE TABLE water_file (id INTEGER PRIMARY KEY NOT NULL,
  key TEXT NOT NULL UNIQUE, value TEXT NOT NULL);
CREATE TABLE settings (id INTEGER PRIMARY KEY NOT NULL,
  key TEXT NOT NULL UNIQUE, value TEXT NOT NULL);
CREATE TABLE plan (id INTEGER PRIMARY KEY NOT NULL,
  key TEXT NOT NULL UNIQUE, value TEXT NOT NULL);
CREATE TABLE house_rules (id INTEGER PRIMARY KEY NOT NULL,
  key TEXT NOT NULL UNIQUE, value TEXT NOT NULL);
CREATE TABLE closed_water (fid INTEGER PRIMARY KEY NOT NULL,
  geom MULTIPOLYGON NOT NULL, name TEXT NOT NULL);
CREATE TABLE places (fid INTEGER PRIMARY KEY NOT NULL,
  geom POINT NOT NULL, name TEXT NOT NULL);
CREATE TABLE shoreline (fid INTEGER PRIMARY KEY NOT NULL, geom POLYGON NOT NULL);
CREATE TABLE survey_days (id INTEGER PRIMARY KEY NOT NULL,
  position INTEGER NOT NULL, name TEXT NOT NULL, source TEXT NOT NULL, draft_m DOUBLE NOT NULL,
  assumed_sound_speed_m_s DOUBLE NOT NULL, measures_by_sound BOOLEAN NOT NULL,
  gauge_level_m DOUBLE, water_temperature_c DOUBLE, agreed_offset_m DOUBLE, agreed_delay_s DOUBLE,
  sounding_count INTEGER NOT NULL,
  soundings_stamp INTEGER NOT NULL, reduction_stamp INTEGER);
CREATE TABLE gauge_readings (id INTEGER PRIMARY KEY NOT NULL,
  day_id INTEGER NOT NULL, time DATETIME NOT NULL, level_m DOUBLE NOT NULL);
CREATE TABLE passes (id INTEGER PRIMARY KEY NOT NULL,
  day_id INTEGER NOT NULL, first_sounding INTEGER NOT NULL);
CREATE TABLE verdicts_by_hand (id INTEGER PRIMARY KEY NOT NULL,
  day_id INTEGER NOT NULL, sounding INTEGER NOT NULL, is_kept BOOLEAN NOT NULL);
CREATE TABLE soundings (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  day_id INTEGER NOT NULL, time DATETIME, shown_depth_m DOUBLE NOT NULL,
  reduced_depth_m DOUBLE, set_aside TEXT);
CREATE INDEX soundings_by_day ON soundings (day_id);
CREATE TABLE lead_line (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  number INTEGER NOT NULL, depth_m DOUBLE NOT NULL, bottom TEXT);
CREATE TABLE weed_notes (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  number INTEGER NOT NULL, growth TEXT NOT NULL, height_m DOUBLE);
CREATE TABLE section_names (fid INTEGER PRIMARY KEY NOT NULL,
  geom POINT NOT NULL, name TEXT NOT NULL);
CREATE TABLE pinned_marks (fid INTEGER PRIMARY KEY NOT NULL,
  geom POINT NOT NULL, name TEXT NOT NULL);
CREATE TABLE stays (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  number INTEGER NOT NULL, start_time DATETIME NOT NULL, end_time DATETIME NOT NULL,
  rods INTEGER NOT NULL, bait TEXT NOT NULL, wind_from_deg DOUBLE, wind_speed_m_s DOUBLE,
  water_temperature_c DOUBLE, note TEXT NOT NULL);
CREATE TABLE fish (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  stay_fid INTEGER NOT NULL, number INTEGER NOT NULL, time DATETIME NOT NULL,
  landed BOOLEAN NOT NULL, species TEXT NOT NULL, bait TEXT NOT NULL, weight_kg DOUBLE,
  length_m DOUBLE, bait_depth_m DOUBLE, note TEXT NOT NULL);
)sql";

constexpr const char* whatWasFound = R"sql(
CREATE TABLE contours (fid INTEGER PRIMARY KEY NOT NULL,
  geom LINESTRING NOT NULL, depth_m DOUBLE NOT NULL);
CREATE TABLE bands (fid INTEGER PRIMARY KEY NOT NULL,
  geom MULTIPOLYGON NOT NULL, from_m DOUBLE NOT NULL, to_m DOUBLE);
CREATE TABLE zones (fid INTEGER PRIMARY KEY NOT NULL,
  geom MULTIPOLYGON NOT NULL, kind TEXT NOT NULL, name TEXT NOT NULL, area_m2 DOUBLE NOT NULL,
  shallowest_m DOUBLE NOT NULL, deepest_m DOUBLE NOT NULL);
CREATE TABLE sections (fid INTEGER PRIMARY KEY NOT NULL,
  geom MULTIPOLYGON NOT NULL, name TEXT NOT NULL, area_m2 DOUBLE NOT NULL,
  mean_depth_m DOUBLE NOT NULL, max_depth_m DOUBLE NOT NULL, shoreline_m DOUBLE NOT NULL,
  weed_share DOUBLE NOT NULL, drop_off_m DOUBLE NOT NULL);
CREATE TABLE marks (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  rank INTEGER NOT NULL, depth_m DOUBLE NOT NULL, trust_m DOUBLE NOT NULL,
  section TEXT NOT NULL, score DOUBLE NOT NULL, fetch_m DOUBLE NOT NULL,
  wave_height_m DOUBLE NOT NULL, reasons TEXT NOT NULL);
CREATE TABLE drawing (id INTEGER PRIMARY KEY NOT NULL, stamp INTEGER NOT NULL,
  west_m DOUBLE NOT NULL, north_m DOUBLE NOT NULL, cell_m DOUBLE NOT NULL,
  cols INTEGER NOT NULL, rows INTEGER NOT NULL, trust_names BLOB NOT NULL, report TEXT NOT NULL);
CREATE TABLE depth (id INTEGER PRIMARY KEY NOT NULL, zoom_level INTEGER NOT NULL,
  tile_column INTEGER NOT NULL, tile_row INTEGER NOT NULL, tile_data BLOB NOT NULL,
  UNIQUE (zoom_level, tile_column, tile_row));
CREATE TABLE trust (id INTEGER PRIMARY KEY NOT NULL, zoom_level INTEGER NOT NULL,
  tile_column INTEGER NOT NULL, tile_row INTEGER NOT NULL, tile_data BLOB NOT NULL,
  UNIQUE (zoom_level, tile_column, tile_row));
)sql";

struct Layer {
    const char* table;
    const char* type; ///< Null for a table without geometry.
    const char* description;
};

constexpr std::array layers{
    Layer{"soundings", "POINT", "soundings as shown, and as last reduced to chart level"},
    Layer{"shoreline", "POLYGON", "the shoreline at chart level, with islands"},
    Layer{"closed_water", "MULTIPOLYGON", "where the fishery forbids boats or fishing"},
    Layer{"places", "POINT", "places with a name"},
    Layer{"lead_line", "POINT", "soundings by hand, below chart level"},
    Layer{"weed_notes", "POINT", "where weed was met, and where there was none"},
    Layer{"section_names", "POINT", "names that the user gave to sections"},
    Layer{"pinned_marks", "POINT", "marks that the user set by hand"},
    Layer{"stays", "POINT", "times anchored on one mark"},
    Layer{"fish", "POINT", "fish landed and runs lost, at the place of their stay"},
    Layer{"contours", "LINESTRING", "lines of equal depth, as last drawn"},
    Layer{"bands", "MULTIPOLYGON", "ranges of depth, as last drawn"},
    Layer{"zones", "MULTIPOLYGON", "structure and weed, as last found"},
    Layer{"sections", "MULTIPOLYGON", "sections of the fishable water, as last divided"},
    Layer{"marks", "POINT", "anchor marks, as last ranked"},
    Layer{"water_file", nullptr, "which version of the program keeps this file"},
    Layer{"settings", nullptr, "facts about the water, and settings of the drawing"},
    Layer{"plan", nullptr, "tomorrow: conditions, boat, rods, weights"},
    Layer{"house_rules", nullptr, "the fishery's rules"},
    Layer{"survey_days", nullptr, "one day's soundings and what was true that day"},
    Layer{"gauge_readings", nullptr, "water levels read on the gauge"},
    Layer{"passes", nullptr, "where each stretch of track begins, counted from 0"},
    Layer{"verdicts_by_hand", nullptr, "soundings set aside or taken back by the user"},
    Layer{"drawing", nullptr, "how the depth grid was drawn, and from what"},
};

} // namespace

void layStep1(Connection& connection) {
    layGeoPackage(connection);
    connection.execute(whatTheUserHas);
    connection.execute(whatWasFound);
    for (const Layer& layer : layers) {
        if (layer.type == nullptr) {
            registerAttributes(connection, layer.table, layer.description);
        } else {
            registerFeatures(connection, layer.table, layer.type, layer.description);
        }
    }
}

} // namespace store::schema
