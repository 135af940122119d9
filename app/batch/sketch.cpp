// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/option_values.h"
#include "app/batch/picture_file.h"
#include "app/batch/report.h"
#include "app/batch/sketch_options.h"
#include "app/batch/sketch_report.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "app/batch/water_file.h"
#include "app/wording/refused_words.h"
#include "core/acts/facts.h"
#include "core/acts/notes.h"
#include "core/acts/shore.h"
#include "core/acts/survey_days.h"
#include "core/base/harmless_text.h"
#include "core/outputs/write_geojson.h"
#include "core/outputs/write_geotiff.h"
#include "core/store/write_water.h"
#include "core/water/steps/bring_in.h"
#include "core/water/steps/derive.h"
#include "core/water/steps/note_numbers.h"
#include "core/water/steps/part_days.h"
#include "core/water/steps/propose_trip.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <chrono>
#include <filesystem>
#include <memory>

#include <fmt/format.h>

namespace batch {

using base::Result;
using std::filesystem::path;

namespace {

double secondsSince(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// Takes the water as an act leaves it.
Result<void> take(water::Water& water, Result<water::Water> after) {
    if (!after) {
        return std::unexpected(after.error());
    }
    water = std::move(*after);
    return {};
}

/// The water to draw in: what the file holds already, so that drawing anew costs no log and no
/// notes, and nobody else may write it until this has; or a new one, without a store.
Result<OpenedWater> waterToFill(const path& file, double wait_s, base::Progress& progress) {
    switch (store::stateOf(file)) {
    case store::FileState::missing: {
        OpenedWater fresh;
        fresh.water.name = base::harmless(file.stem().string());
        return fresh;
    }
    case store::FileState::notAWater:
        return base::fail(base::ErrorKind::unwritableOutput,
                          "there is another kind of file of that name", file.string(),
                          "choose another name for --water");
    default:
        break;
    }
    return openWaterToChange(file, wait_s, progress);
}

Result<void> applySettings(const SketchOptions& o, water::Water& water) {
    water::Settings wanted = water.settings;
    if (auto bands = takeBands(o.bandEdges, o.limit_m, wanted); !bands) {
        return bands;
    }
    return take(water, acts::changeFacts(water, [&](water::Water& w) {
                    w.settings = wanted;
                    if (o.cell_m) {
                        w.settings.cell = units::Length::metres(*o.cell_m);
                    }
                    if (o.sectionArea_m2) {
                        w.settings.sectionArea = units::Area::squareMetres(*o.sectionArea_m2);
                    }
                    if (o.secchi_m) {
                        w.settings.secchi = units::Depth::metres(*o.secchi_m);
                    }
                    if (o.chartLevel_m) {
                        w.chartLevel = units::WaterLevel::metresOnGauge(*o.chartLevel_m);
                    }
                }));
}

/// No row of a file of notes is dropped in silence.
void tellNotUsed(const path& file, const readers::ReadingReport& report, SketchDone& done) {
    if (const QString lost = wording::notUsed(report); !lost.isEmpty()) {
        done.notes.push_back(file.filename().string() + ": " + lost.toStdString());
    }
}

Result<void> bringInNotes(const SketchOptions& o, water::Water& water, SketchDone& done,
                          base::Progress& progress) {
    if (!o.weed.empty()) {
        auto notes = water::bringInWeedNotes(water, o.weed, progress);
        if (!notes) {
            return std::unexpected(notes.error());
        }
        tellNotUsed(o.weed, notes->report, done);
        if (auto added = take(water, acts::addWeedNotes(water, std::move(notes->notes))); !added) {
            return added;
        }
    }
    if (!o.leadLine.empty()) {
        auto lead = water::bringInLeadLine(water, o.leadLine, progress);
        if (!lead) {
            return std::unexpected(lead.error());
        }
        tellNotUsed(o.leadLine, lead->report, done);
        if (auto added = take(water, acts::addLeadLine(water, std::move(lead->soundings)));
            !added) {
            return added;
        }
    }
    if (!o.houseRules.empty()) {
        const auto rules = water::bringInHouseRules(o.houseRules);
        if (!rules) {
            return std::unexpected(rules.error());
        }
        return take(water, acts::setHouseRules(water, *rules));
    }
    return {};
}

/// Everything beside the soundings: facts, shore, notes, rules.
Result<void> bringInSurroundings(const SketchOptions& o, water::Water& water, SketchDone& done,
                                 base::Progress& progress) {
    if (!o.facts.empty()) {
        if (auto facts = water::bringInFacts(water, o.facts); !facts) {
            return facts;
        }
    }
    if (auto applied = applySettings(o, water); !applied) {
        return applied;
    }
    const auto crs = o.crs.empty() ? Result<int>(0) : epsgFrom(o.crs);
    if (!crs) {
        return std::unexpected(crs.error());
    }
    water::Water undrawn = water; // the soundings there were go: the shore need not lie round them
    undrawn.days.clear();
    auto shore = water::bringInShoreline(undrawn, o.shore,
                                         *crs != 0 ? std::optional(*crs) : std::nullopt, progress);
    if (!shore) {
        return std::unexpected(shore.error());
    }
    if (auto set = take(water, acts::setShoreline(water, std::move(*shore))); !set) {
        return set;
    }
    return bringInNotes(o, water, done, progress);
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

/// Puts the day into the water. \param earlier what the file held before this run.
Result<void> addDay(water::Water& water, const std::vector<soundings::SurveyDay>& earlier,
                    soundings::SurveyDay day, SketchDone& done) {
    if (acts::takeOverVerdicts(earlier, day)) {
        const std::size_t byHand = day.setAsideByHand.size() + day.keptByHand.size();
        if (byHand > 0) {
            done.notes.push_back(
                fmt::format("{}: what was set aside or taken back by hand stays so, {} soundings",
                            day.source, byHand));
        }
    }
    return take(water, acts::addSurveyDay(water, std::move(day)));
}

Result<void> bringInDays(const SketchOptions& o, water::Water& water, SketchDone& done,
                         base::Progress& progress) {
    const std::vector<soundings::SurveyDay> earlier = water.days;
    if (auto removed = take(water, acts::removeSurveyDays(water)); !removed) {
        return removed;
    }
    std::vector<readers::SurveyDayFacts> table;
    if (!o.surveyDays.empty()) {
        auto read = water::bringInDayFacts(o.surveyDays);
        if (!read) {
            return std::unexpected(read.error());
        }
        table = std::move(*read);
    }
    for (const path& file : o.soundings) {
        auto settings = fileSettings(o, water.clock);
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
        for (const std::string& note : brought->report.notes) {
            done.notes.push_back(file.filename().string() + ": " + note);
        }
        done.files.push_back({file.filename().string(), brought->report});
        auto days = water::partedByDays(std::move(brought->day), water.clock);
        for (soundings::SurveyDay& day : days) {
            const std::string dated = day.name;
            applyOptions(o, day);
            if (facts != table.end()) {
                water::applyFacts(*facts, day);
            }
            day.name = days.size() > 1 ? dated : day.name; // Of several days no fact names one.
            if (auto added = addDay(water, earlier, std::move(day), done); !added) {
                return added;
            }
        }
    }
    return {};
}

/// Takes over the offsets that the crossings ask for, for days without a gauge reading.
bool agreeOffsets(water::Water& water, const water::Derived& derived) {
    bool any = false;
    for (std::size_t i = 0; i < water.days.size(); ++i) {
        const reduction::DayTie& tie = derived.checked->tie;
        if (!tie.isHeld[i] && tie.isTied[i] && !water.days[i].gauge.isKnown()) {
            const soundings::SurveyDay& day = water.days[i];
            const auto offset = tie.offsets[i] + day.agreedOffset.value_or(units::Length());
            any = take(water, acts::agreeOffset(water, day.id, offset)).has_value() || any;
        }
    }
    return any;
}

/// Takes over the delays that the crossings tell.
bool agreeDelays(water::Water& water, const water::Derived& derived) {
    bool any = false;
    for (std::size_t i = 0; i < water.days.size(); ++i) {
        const reduction::PositionDelay& delay = derived.checked->delays[i];
        if (delay.isWorthTaking()) {
            const soundings::SurveyDay& day = water.days[i];
            const double delay_s = delay.delay_s + day.agreedDelay_s.value_or(0.0);
            any = take(water, acts::agreeDelay(water, day.id, delay_s)).has_value() || any;
        }
    }
    return any;
}

Result<water::Derived> deriveAll(const SketchOptions& o, water::Water& water, SketchDone& done,
                                 base::Progress& progress) {
    if (o.takeDelays) {
        auto looked = water::derive(water, {}, water::Step::reduce, progress);
        if (!looked) {
            return looked;
        }
        if (looked->checked && agreeDelays(water, *looked)) {
            done.notes.emplace_back("soundings were moved along their tracks by the delay that "
                                    "their crossings tell, as asked");
        }
    }
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
        const std::string file = o.soundings.front().string();
        error.where = error.where.empty() ? file : file + ", " + error.where;
        return std::unexpected(error);
    }
    water::noteNumbers(water, *derived);
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

/// Into the file that is there, or as a new one; then the other files. Whoever waits for the water
/// has not to wait for those.
Result<void> writeAll(const SketchOptions& o, std::unique_ptr<store::WaterStore> store,
                      const water::Water& water, const water::Derived& derived,
                      base::Progress& progress) {
    progress.begin("Writing");
    auto saved = store ? store->saveWhole(water, derived, {}, progress)
                       : store::writeWater(o.water, water, derived, {}, progress);
    if (!saved) {
        return saved;
    }
    store.reset();
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
    if (auto checked = checkFiles(o); !checked) {
        return checked;
    }
    auto opened = waterToFill(o.water, o.wait_s, progress);
    if (!opened) {
        return std::unexpected(opened.error());
    }
    water::Water& water = opened->water;
    if (auto brought = bringInSurroundings(o, water, done, progress); !brought) {
        return brought;
    }
    if (auto brought = bringInDays(o, water, done, progress); !brought) {
        return brought;
    }
    done.readSeconds = secondsSince(start);
    auto derived = deriveAll(o, water, done, progress);
    if (!derived) {
        return std::unexpected(derived.error());
    }
    start = std::chrono::steady_clock::now();
    if (auto written = writeAll(o, std::move(opened->store), water, *derived, progress); !written) {
        return written;
    }
    done.writeSeconds = secondsSince(start);
    return writeReport(o.report, sketchReport(water, *derived, done));
}

} // namespace

void laySketch(CLI::App& app, Run& run) {
    CLI::App* verb = app.add_subcommand(
        "sketch", "Soundings to a drawn water, with bands, structure, weed and sections");
    verb->footer("Example: meremark-batch sketch day.nmea --shore shore.geojson --water mere.gpkg "
                 "--picture mere.png");
    const auto options = std::make_shared<SketchOptions>();
    laySketchOptions(*verb, *options);
    verb->callback([options, &run] { run = [options] { return sketch(*options); }; });
}

} // namespace batch
