// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/sketch_options.h"

#include "app/batch/number_between.h"
#include "app/batch/option_values.h"
#include "app/batch/output_paths.h"
#include "app/batch/wait_option.h"

#include <CLI/CLI.hpp>

namespace batch {

namespace {

void layReduction(CLI::App& verb, SketchOptions& o) {
    verb.add_option("--draft", o.draft_m, "Surface to transducer, metres")
        ->type_name("M")
        ->check(numberBetween(0.0, 3.0));
    verb.add_option("--level", o.level_m, "Water level on the day, gauge reading, metres")
        ->type_name("M")
        ->check(numberBetween(-10000.0, 10000.0));
    verb.add_option("--chart-level", o.chartLevel_m,
                    "Gauge reading that depths are to refer to, metres")
        ->type_name("M")
        ->check(numberBetween(-10000.0, 10000.0));
    verb.add_option("--water-temperature", o.temperature_c, "Of the day, degrees Celsius")
        ->type_name("C")
        ->check(numberBetween(-1.0, 40.0));
    verb.add_option("--assumed-sound-speed", o.soundSpeed_m_s,
                    "What the sounder reckons with, metres per second (default 1500)")
        ->type_name("M/S")
        ->check(numberBetween(1300.0, 1700.0));
    verb.add_option("--survey-days", o.surveyDays, "Table with the facts of each day, by file name")
        ->type_name("FILE");
    verb.add_flag("--tie-days", o.tieDays,
                  "Tie days without a gauge reading to the others by their crossings");
    verb.add_flag("--take-delays", o.takeDelays,
                  "Move the soundings of each day by the delay that its crossings tell");
}

void layReading(CLI::App& verb, SketchOptions& o) {
    verb.add_option("soundings", o.soundings,
                    "NMEA 0183 logs, GPX, delimited text, or any vector source with depths")
        ->required();
    verb.add_option("--shore", o.shore, "Shoreline; rings inside the outer ring are islands")
        ->required()
        ->type_name("SHORE");
    verb.add_option("--water", o.water,
                    "Water file to write; what it holds beside soundings and shore stays")
        ->required()
        ->type_name("OUT.gpkg");
    layWait(verb, o.wait_s);
    verb.add_option("--columns", o.columns, "Columns of text files, by name or number")
        ->type_name("x=COL,y=COL,depth=COL,time=COL");
    verb.add_option("--unit", o.unit, "Unit of the depths in text files")->type_name("m|ft|fathom");
    verb.add_option("--crs", o.crs, "Coordinate system of the files")->type_name("EPSG:N");
    verb.add_option("--weed", o.weed, "Weed notes: a table lon, lat, kind, height_m")
        ->type_name("WEED");
    verb.add_option("--lead-line", o.leadLine,
                    "Soundings by hand: a table lon, lat, depth_m, bottom")
        ->type_name("FILE");
    verb.add_option("--facts", o.facts, "Name, clock, launch and places of the water (JSON)")
        ->type_name("FILE");
    verb.add_option("--house-rules", o.houseRules, "The fishery's rules (JSON)")->type_name("FILE");
}

void layDrawing(CLI::App& verb, SketchOptions& o) {
    verb.add_option("--cell", o.cell_m,
                    "Side of a cell, metres; chosen from the soundings if not given")
        ->type_name("M");
    verb.add_option("--limit-depth", o.limit_m,
                    "Deepest depth worth fishing, metres; chosen from the depths if not given")
        ->type_name("M");
    verb.add_option("--band-edges", o.bandEdges, "Edges of the bands, metres")
        ->type_name("M,M,...");
    verb.add_option("--section-area", o.sectionArea_m2,
                    "Wanted size of a section, square metres; chosen from the water if not given")
        ->type_name("M2");
    verb.add_option("--secchi-depth", o.secchi_m, "Depth at which a Secchi disc vanishes, metres")
        ->type_name("M");
    verb.add_option("--next-minutes", o.nextMinutes,
                    "Time for the proposed lines, minutes; 0 for none")
        ->type_name("MIN");
    verb.add_option("--grid", o.grid, "Depth grid, float32 GeoTIFF, positive down")
        ->type_name("OUT.tif");
    verb.add_option("--trust", o.trust, "Its 95 % half-widths")->type_name("OUT.tif");
    verb.add_option("--contours", o.contours, "Contours")->type_name("OUT.geojson");
    verb.add_option("--picture", o.picture, "The chart as a picture")->type_name("OUT.png");
    verb.add_option("--report", o.report, "Report; to standard output if not given")
        ->type_name("OUT.json");
}

} // namespace

void laySketchOptions(CLI::App& verb, SketchOptions& options) {
    layReading(verb, options);
    layReduction(verb, options);
    layDrawing(verb, options);
}

base::Result<void> checkFiles(const SketchOptions& o) {
    std::vector<NamedPath> inputs{{"--shore", o.shore},        {"--weed", o.weed},
                                  {"--lead-line", o.leadLine}, {"--survey-days", o.surveyDays},
                                  {"--facts", o.facts},        {"--house-rules", o.houseRules}};
    for (const SketchOptions::Path& file : o.soundings) {
        inputs.push_back({"a file of soundings", file});
    }
    return checkOutputs({{"--water", o.water},
                         {"--grid", o.grid},
                         {"--trust", o.trust},
                         {"--contours", o.contours},
                         {"--picture", o.picture},
                         {"--report", o.report}},
                        inputs);
}

base::Result<readers::SoundingFileSettings> fileSettings(const SketchOptions& o,
                                                         const units::Clock& clock) {
    readers::SoundingFileSettings settings;
    settings.clock = clock;
    if (!o.columns.empty()) {
        auto columns = columnsFrom(o.columns);
        if (!columns) {
            return std::unexpected(columns.error());
        }
        settings.columns = *columns;
    }
    if (!o.unit.empty()) {
        auto unit = unitFrom(o.unit);
        if (!unit) {
            return std::unexpected(unit.error());
        }
        settings.unit = *unit;
    }
    if (!o.crs.empty()) {
        auto crs = epsgFrom(o.crs);
        if (!crs) {
            return std::unexpected(crs.error());
        }
        settings.epsg = *crs;
    }
    return settings;
}

} // namespace batch
