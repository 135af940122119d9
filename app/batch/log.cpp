// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/output_paths.h"
#include "app/batch/report.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "app/batch/wait_option.h"
#include "app/batch/water_file.h"
#include "app/wording/doubts.h"
#include "app/wording/log_words.h"
#include "core/acts/partner.h"
#include "core/acts/stays.h"
#include "core/base/number_text.h"
#include "core/outputs/write_table.h"
#include "core/water/document/swap_parts.h"
#include "core/water/steps/bring_in_log.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <array>
#include <memory>
#include <optional>

namespace batch {

using base::Result;
using std::filesystem::path;
using Json = nlohmann::ordered_json;

namespace {

struct LogOptions {
    path water, add, fromTrack, out;
    std::vector<path> photographs;
    std::optional<int> rods;
    std::string others = "ask";
    std::string who;
    double wait_s = 0.0;
};

Json refusedPart(const readers::ReadingReport& report) {
    Json rows = Json::object();
    for (const auto& [reason, refused] : report.refused) {
        rows[reason] = {{"count", refused.count},
                        {"first_line", refused.firstLine},
                        {"first_text", refused.firstText}};
    }
    return rows;
}

Json badFieldsPart(const readers::ReadingReport& report) {
    Json fields = Json::array();
    for (const readers::BadField& field : report.badFields) {
        fields.push_back({{"row", field.line}, {"column", field.column}, {"text", field.text}});
    }
    return fields;
}

/// How many stays were added and so on, and what only the user can answer.
Json countsPart(const water::LogBroughtIn& brought, const water::Water& water) {
    Json questions = Json::array();
    for (const water::LogBroughtIn::Doubtful& doubtful : brought.doubtful) {
        Json question = Json::object();
        if (doubtful.row > 0) {
            question["row"] = doubtful.row;
        }
        question["what"] =
            wording::saidOfDoubtful(doubtful.stay, doubtful.meets, water).toStdString();
        questions.push_back(std::move(question));
    }
    return {{"added", brought.stays.size() - brought.updates},
            {"updated", brought.updates},
            {"known", brought.known},
            {"questions", std::move(questions)},
            {"added_stays", brought.stays.size() - brought.updates},
            {"known_stays", brought.known}};
}

water::Sharing sharingOf(const LogOptions& o) {
    using water::OtherAngler;
    water::Sharing sharing;
    if (o.others == "separate") {
        sharing.other = OtherAngler::separateRods;
    } else if (o.others == "same") {
        sharing.other = OtherAngler::sameRods;
    }
    return sharing;
}

bool isWaterFile(const path& file) {
    return base::lowerCase(file.extension().string()) == ".gpkg";
}

Result<void> keepLog(OpenedWater& opened, const logbook::Log& stays, water::Sharing sharing,
                     base::Progress& progress) {
    if (stays.empty()) {
        return {};
    }
    auto added = acts::addStays(opened.water, stays, sharing);
    if (!added) {
        return std::unexpected(added.error());
    }
    opened.water = std::move(*added);
    return opened.store->save(opened.water, std::array{water::Part::log}, progress);
}

Result<void> add(const LogOptions& o, OpenedWater& opened, base::Progress& progress) {
    auto brought = water::bringInLog(opened.water, o.add, progress, sharingOf(o));
    if (!brought) {
        return std::unexpected(brought.error());
    }
    if (auto kept = keepLog(opened, brought->stays, sharingOf(o), progress); !kept) {
        return kept;
    }
    Json report = countsPart(*brought, opened.water);
    report["bad_fields"] = badFieldsPart(brought->report);
    report["bad_rows"] = refusedPart(brought->report);
    report["notes"] = brought->report.notes;
    return writeReport("", report);
}

Result<void> addFromTrack(const LogOptions& o, OpenedWater& opened, base::Progress& progress) {
    auto found = water::bringInTrackStays(opened.water, o.fromTrack, o.rods, progress);
    if (!found) {
        return std::unexpected(found.error());
    }
    if (auto kept = keepLog(opened, found->stays, sharingOf(o), progress); !kept) {
        return kept;
    }
    Json rows = Json::array();
    for (const logbook::Stay& stay : found->stays) {
        rows.push_back({{"start", units::isoLocalText(stay.start, opened.water.clock)},
                        {"end", units::isoLocalText(stay.end, opened.water.clock)},
                        {"lon", rounded(stay.place.lon_deg, 7)},
                        {"lat", rounded(stay.place.lat_deg, 7)},
                        {"rods", stay.rods ? Json(*stay.rods) : Json()}});
    }
    Json report = countsPart(*found, opened.water);
    report["stays"] = rows;
    return writeReport("", report);
}

/// Another water file of the same water: its soundings, notes and stays.
Result<void> addPartner(const LogOptions& o, OpenedWater& opened, base::Progress& progress) {
    const auto other = openWater(o.add, progress);
    if (!other) {
        return std::unexpected(other.error());
    }
    water::PartnerSettings settings;
    settings.sharing.other = sharingOf(o).other;
    settings.who = o.who;
    const auto brought =
        water::bringInPartner(opened.water, other->water, settings, o.add.string(), progress);
    if (!brought) {
        return std::unexpected(brought.error());
    }
    auto added = acts::addPartner(opened.water, *brought, settings.sharing);
    if (!added) {
        return std::unexpected(added.error());
    }
    const auto parts = water::differingParts(opened.water, *added);
    opened.water = std::move(*added);
    if (auto kept = opened.store->save(opened.water, parts, progress); !kept) {
        return kept;
    }
    Json report = countsPart(brought->log, opened.water);
    report["survey_days"] = {{"added", brought->days.size()},
                             {"known", brought->knownDays},
                             {"mixed", brought->mixedDays}};
    report["lead_line_added"] = brought->leadLine.size();
    report["weed_notes_added"] = brought->weedNotes.size();
    report["chart_level_above_m"] = rounded(brought->chartLevelAbove.inMetres(), 3);
    report["notes"] = Json::array();
    for (const QString& note : wording::notesOn(*brought)) {
        report["notes"].push_back(note.toStdString());
    }
    return writeReport("", report);
}

const char* nameOf(water::PlacedPhotograph::Is is) {
    using Is = water::PlacedPhotograph::Is;
    switch (is) {
    case Is::ofFish:
        return "fish";
    case Is::ofStay:
        return "stay";
    case Is::known:
        return "known";
    case Is::taken:
        return "stay has another";
    case Is::elsewhere:
        return "at no stay";
    case Is::undated:
        return "without a time";
    }
    return "";
}

Result<void> addPhotographs(const LogOptions& o, OpenedWater& opened, base::Progress& progress) {
    const auto placed =
        water::placePhotographs(opened.water, o.photographs, o.water.parent_path(), progress);
    if (!placed) {
        return std::unexpected(placed.error());
    }
    auto added = acts::addPhotographs(opened.water, *placed);
    if (!added) {
        return std::unexpected(added.error());
    }
    opened.water = std::move(*added);
    if (auto kept = opened.store->save(opened.water, std::array{water::Part::log}, progress);
        !kept) {
        return kept;
    }
    Json rows = Json::array();
    for (const water::PlacedPhotograph& one : *placed) {
        Json row{
            {"photograph", one.path},
            {"time", one.time ? Json(units::isoLocalText(*one.time, opened.water.clock)) : Json()},
            {"belongs_to", nameOf(one.is)}};
        if (one.stay.isGiven()) {
            row["stay"] = one.stay.number();
        }
        rows.push_back(std::move(row));
    }
    return writeReport("", Json{{"photographs", rows}});
}

Result<void> logVerb(const LogOptions& o) {
    TerminalProgress progress;
    if (auto checked = checkOutputs({{"--out", o.out}}, {{"the water", o.water}}); !checked) {
        return checked;
    }
    auto opened = o.out.empty() ? openWaterToChange(o.water, o.wait_s, progress)
                                : openWater(o.water, progress);
    if (!opened) {
        return std::unexpected(opened.error());
    }
    if (!o.add.empty()) {
        return isWaterFile(o.add) ? addPartner(o, *opened, progress) : add(o, *opened, progress);
    }
    if (!o.photographs.empty()) {
        return addPhotographs(o, *opened, progress);
    }
    if (!o.fromTrack.empty()) {
        return addFromTrack(o, *opened, progress);
    }
    return outputs::writeLogTable(o.out, opened->water.log, opened->water.clock);
}

} // namespace

void layLog(CLI::App& app, Run& run) {
    CLI::App* verb = app.add_subcommand("log", "Trips, stays and fish in and out");
    verb->footer("Example: meremark-batch log mere.gpkg --add season.csv");
    const auto options = std::make_shared<LogOptions>();
    verb->add_option("water", options->water, "Water file")->required()->type_name("WATER.gpkg");
    CLI::Option_group* what = verb->add_option_group("what", "One of these");
    what->add_option(
            "--add", options->add,
            "Stays, lost runs and fish to add, from a table or from somebody else's file of "
            "this water, whose soundings come along")
        ->type_name("LOG.csv|WATER.gpkg");
    what->add_option("--from-track", options->fromTrack,
                     "Stays to find in the track of a fishing day")
        ->type_name("TRACK.gpx|TRACK.nmea");
    what->add_option("--photographs", options->photographs,
                     "Photographs to put to the stays and fish that they were taken at")
        ->type_name("PICTURE.jpg");
    what->add_option("--out", options->out, "The whole log")->type_name("OUT.csv");
    what->require_option(1);
    verb->add_option("--rods", options->rods,
                     "Rods in the water during the stays of the track; not known without")
        ->type_name("N")
        ->check(CLI::Range(1, 8));
    verb->add_option(
            "--others-rods", options->others,
            "Whether somebody else's stay at a place and time of the log's was fished with "
            "rods of its own: separate counts both, same counts one, ask leaves it out")
        ->check(CLI::IsMember({"ask", "separate", "same"}));
    layWait(*verb, options->wait_s);
    verb->callback([options, &run] { run = [options] { return logVerb(*options); }; });
}

} // namespace batch
