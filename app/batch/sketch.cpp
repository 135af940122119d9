// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/option_values.h"
#include "app/batch/picture_file.h"
#include "app/batch/report.h"
#include "app/batch/sketch_report.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "app/batch/water_file.h"
#include "core/outputs/write_geojson.h"
#include "core/outputs/write_geotiff.h"
#include "core/water/bring_in.h"
#include "core/water/derive.h"
#include "core/water/propose_trip.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <chrono>
#include <filesystem>
#include <memory>

namespace batch {

using base::Result;
using std::filesystem::path;

namespace {

/// The options as given.
struct SketchOptions {
    std::vector<path> soundings;
    path shore, water, weed, leadLine, surveyDays, facts, houseRules;
    path grid, trust, contours, picture, report;
    std::optional<double> cell_m, limit_m, sectionArea_m2, draft_m, level_m, chartLevel_m,
        temperature_c, soundSpeed_m_s, secchi_m;
    std::string bandEdges, columns, unit, crs;
    bool tieDays = false;
    int nextMinutes = 120;
};

double secondsSince(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// The water to draw in: what the file holds already, so that drawing anew costs no log and no
/// notes; or a new one.
Result<water::Water> waterToFill(const path& file, base::Progress& progress) {
    switch (store::stateOf(file)) {
    case store::FileState::missing: {
        water::Water fresh;
        fresh.name = file.stem().string();
        return fresh;
    }
    case store::FileState::notAWater:
        return base::fail(base::ErrorKind::unwritableOutput,
                          "there is another kind of file of that name", file.string(),
                          "choose another name for --water");
    default:
        break;
    }
    auto opened = openWater(file, progress);
    if (!opened) {
        return std::unexpected(opened.error());
    }
    opened->water.days.clear();
    return std::move(opened->water);
}

Result<void> applySettings(const SketchOptions& o, water::Water& water) {
    auto bands = bandsFrom(o.bandEdges, o.limit_m, water.settings.bands);
    if (!bands) {
        return std::unexpected(bands.error());
    }
    water.settings.bands = *bands;
    if (o.cell_m) {
        water.settings.cell = units::Length::metres(*o.cell_m);
    }
    if (o.sectionArea_m2) {
        water.settings.sectionArea = units::Area::squareMetres(*o.sectionArea_m2);
    }
    if (o.secchi_m) {
        water.settings.secchi = units::Depth::metres(*o.secchi_m);
    }
    if (o.chartLevel_m) {
        water.chartLevel = units::WaterLevel::metresOnGauge(*o.chartLevel_m);
    }
    return {};
}

/// Everything beside the soundings: facts, shore, notes, rules.
Result<void> bringInSurroundings(const SketchOptions& o, water::Water& water,
                                 base::Progress& progress) {
    if (!o.facts.empty()) {
        if (auto done = water::bringInFacts(water, o.facts); !done) {
            return done;
        }
    }
    if (auto done = applySettings(o, water); !done) {
        return done;
    }
    const auto crs = o.crs.empty() ? Result<int>(0) : epsgFrom(o.crs);
    if (!crs) {
        return std::unexpected(crs.error());
    }
    auto shore = water::bringInShoreline(water, o.shore,
                                         *crs != 0 ? std::optional(*crs) : std::nullopt, progress);
    if (!shore) {
        return std::unexpected(shore.error());
    }
    if (water.shoreline != *shore) {
        water.shoreline = std::move(*shore);
        water.frame.reset();
    }
    if (!o.weed.empty()) {
        auto notes = water::bringInWeedNotes(water, o.weed, progress);
        if (!notes) {
            return std::unexpected(notes.error());
        }
        water.weedNotes = std::move(*notes);
    }
    if (!o.leadLine.empty()) {
        auto lead = water::bringInLeadLine(water, o.leadLine, progress);
        if (!lead) {
            return std::unexpected(lead.error());
        }
        water.leadLine = std::move(*lead);
    }
    if (!o.houseRules.empty()) {
        auto rules = water::bringInHouseRules(o.houseRules);
        if (!rules) {
            return std::unexpected(rules.error());
        }
        water.houseRules = std::move(*rules);
    }
    return water::layFrame(water);
}

Result<readers::SoundingFileSettings> fileSettings(const SketchOptions& o,
                                                   const water::Water& water) {
    readers::SoundingFileSettings settings;
    settings.clock = water.clock;
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

/// What the options say of every day, on top of what the table of days says of one.
void applyOptions(const SketchOptions& o, soundings::SurveyDay& day) {
    if (o.draft_m) {
        day.sounder.draft = units::Depth::metres(*o.draft_m);
    }
    if (o.level_m) {
        day.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(*o.level_m));
    }
    if (o.temperature_c) {
        day.waterTemperature = units::Temperature::celsius(*o.temperature_c);
    }
    if (o.soundSpeed_m_s) {
        day.sounder.assumedSoundSpeed = units::Speed::metresPerSecond(*o.soundSpeed_m_s);
    }
}

Result<void> bringInDays(const SketchOptions& o, water::Water& water, SketchDone& done,
                         base::Progress& progress) {
    std::vector<readers::SurveyDayFacts> table;
    if (!o.surveyDays.empty()) {
        auto read = water::bringInDayFacts(o.surveyDays);
        if (!read) {
            return std::unexpected(read.error());
        }
        table = std::move(*read);
    }
    for (const path& file : o.soundings) {
        auto settings = fileSettings(o, water);
        if (!settings) {
            return std::unexpected(settings.error());
        }
        const auto facts =
            std::find_if(table.begin(), table.end(), [&](const readers::SurveyDayFacts& f) {
                return f.file == file.filename().string();
            });
        if (facts != table.end() && facts->unit && !settings->unit) {
            settings->unit = facts->unit;
        }
        auto brought = water::bringInDay(water, file, *settings, progress);
        if (!brought) {
            return std::unexpected(brought.error());
        }
        applyOptions(o, brought->day);
        if (facts != table.end()) {
            water::applyFacts(*facts, brought->day);
        }
        brought->day.id = soundings::SurveyDayId(water::freshId(water));
        for (const std::string& note : brought->report.notes) {
            done.notes.push_back(file.filename().string() + ": " + note);
        }
        done.files.push_back({file.filename().string(), brought->report});
        water.days.push_back(std::move(brought->day));
    }
    return {};
}

/// Takes over the offsets that the crossings ask for, for days without a gauge reading.
bool agreeOffsets(water::Water& water, const water::Derived& derived) {
    bool any = false;
    for (std::size_t i = 0; i < water.days.size(); ++i) {
        const reduction::DayTie& tie = derived.checked->tie;
        if (!tie.isHeld[i] && tie.isTied[i] && !water.days[i].gauge.isKnown()) {
            water.days[i].agreedOffset =
                tie.offsets[i] + water.days[i].agreedOffset.value_or(units::Length());
            any = true;
        }
    }
    return any;
}

Result<water::Derived> deriveAll(const SketchOptions& o, water::Water& water, SketchDone& done,
                                 base::Progress& progress) {
    if (o.tieDays) {
        auto looked = water::derive(water, {}, water::Step::reduce, progress);
        if (!looked) {
            return looked;
        }
        if (looked->checked && agreeOffsets(water, *looked)) {
            done.notes.emplace_back("days without a gauge reading were tied to the others by their "
                                    "crossings, as asked");
        }
    }
    auto derived = water::derive(water, {}, water::Step::sections, progress);
    if (!derived) {
        return derived;
    }
    if (!derived->drawn && !derived->failures.empty()) {
        base::Error error = derived->failures.begin()->second;
        if (error.where.empty() && !o.soundings.empty()) {
            error.where = o.soundings.front().string();
        }
        return std::unexpected(error);
    }
    if (o.nextMinutes > 0) {
        if (auto trip = water::proposeTrip(water, *derived, std::chrono::minutes(o.nextMinutes),
                                           progress)) {
            done.nextLines = std::move(*trip);
        } else if (trip.error().kind == base::ErrorKind::cancelled) {
            return std::unexpected(trip.error());
        }
    }
    return derived;
}

Result<void> writeAll(const SketchOptions& o, const water::Water& water,
                      const water::Derived& derived, base::Progress& progress) {
    progress.begin("Writing");
    if (auto written = writeWholeWater(o.water, water, derived, {}, progress); !written) {
        return written;
    }
    if (!o.grid.empty()) {
        if (auto written = outputs::writeDepthGeotiff(o.grid, derived.drawn->depth, *water.frame);
            !written) {
            return written;
        }
    }
    if (!o.trust.empty()) {
        if (auto written = outputs::writeTrustGeotiff(o.trust, derived.drawn->trust, *water.frame);
            !written) {
            return written;
        }
    }
    if (!o.contours.empty() && derived.form) {
        if (auto written =
                outputs::writeContoursGeojson(o.contours, derived.form->contours, *water.frame);
            !written) {
            return written;
        }
    }
    return o.picture.empty() ? Result<void>() : writePicture(o.picture, water, derived, nullptr);
}

Result<void> sketch(const SketchOptions& o) {
    TerminalProgress progress;
    SketchDone done;
    auto start = std::chrono::steady_clock::now();
    progress.begin("Reading");
    auto water = waterToFill(o.water, progress);
    if (!water) {
        return std::unexpected(water.error());
    }
    if (auto brought = bringInSurroundings(o, *water, progress); !brought) {
        return brought;
    }
    if (auto brought = bringInDays(o, *water, done, progress); !brought) {
        return brought;
    }
    done.readSeconds = secondsSince(start);
    auto derived = deriveAll(o, *water, done, progress);
    if (!derived) {
        return std::unexpected(derived.error());
    }
    start = std::chrono::steady_clock::now();
    if (auto written = writeAll(o, *water, *derived, progress); !written) {
        return written;
    }
    done.writeSeconds = secondsSince(start);
    return writeReport(o.report, sketchReport(*water, *derived, done));
}

void layReduction(CLI::App& verb, SketchOptions& o) {
    verb.add_option("--draft", o.draft_m, "Surface to transducer, metres")
        ->type_name("M")
        ->check(CLI::Range(0.0, 3.0));
    verb.add_option("--level", o.level_m, "Water level on the day, gauge reading, metres")
        ->type_name("M");
    verb.add_option("--chart-level", o.chartLevel_m,
                    "Gauge reading that depths are to refer to, metres")
        ->type_name("M");
    verb.add_option("--water-temperature", o.temperature_c, "Of the day, degrees Celsius")
        ->type_name("C")
        ->check(CLI::Range(-1.0, 40.0));
    verb.add_option("--assumed-sound-speed", o.soundSpeed_m_s,
                    "What the sounder reckons with, metres per second (default 1500)")
        ->type_name("M/S")
        ->check(CLI::Range(1300.0, 1700.0));
    verb.add_option("--survey-days", o.surveyDays, "Table with the facts of each day, by file name")
        ->type_name("FILE");
    verb.add_flag("--tie-days", o.tieDays,
                  "Tie days without a gauge reading to the others by their crossings");
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
                    "Deepest depth worth fishing, metres (default 9.144, 30 ft)")
        ->type_name("M");
    verb.add_option("--band-edges", o.bandEdges, "Edges of the bands, metres")
        ->type_name("M,M,...");
    verb.add_option("--section-area", o.sectionArea_m2,
                    "Wanted size of a section, square metres (default 40000)")
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

void laySketch(CLI::App& app, Run& run) {
    CLI::App* verb = app.add_subcommand(
        "sketch", "Soundings to a drawn water, with bands, structure, weed and sections");
    verb->footer("Example: meremark-batch sketch day.nmea --shore shore.geojson --water mere.gpkg "
                 "--picture mere.png");
    const auto options = std::make_shared<SketchOptions>();
    layReading(*verb, *options);
    layReduction(*verb, *options);
    layDrawing(*verb, *options);
    verb->callback([options, &run] { run = [options] { return sketch(*options); }; });
}

} // namespace batch
