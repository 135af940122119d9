// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/output_paths.h"
#include "app/batch/report.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "app/batch/wait_option.h"
#include "app/batch/water_file.h"
#include "app/wording/doubts.h"
#include "core/acts/stays.h"
#include "core/outputs/write_table.h"
#include "core/water/steps/bring_in.h"

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
    std::optional<int> rods;
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

Result<void> keepLog(OpenedWater& opened, const logbook::Log& stays, base::Progress& progress) {
    if (stays.empty()) {
        return {};
    }
    auto added = acts::addStays(opened.water, stays);
    if (!added) {
        return std::unexpected(added.error());
    }
    opened.water = std::move(*added);
    return opened.store->save(opened.water, std::array{water::Part::log}, progress);
}

Result<void> add(const LogOptions& o, OpenedWater& opened, base::Progress& progress) {
    auto brought = water::bringInLog(opened.water, o.add, progress);
    if (!brought) {
        return std::unexpected(brought.error());
    }
    if (auto kept = keepLog(opened, brought->stays, progress); !kept) {
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
    if (auto kept = keepLog(opened, found->stays, progress); !kept) {
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
        return add(o, *opened, progress);
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
    what->add_option("--add", options->add, "Stays, lost runs and fish to add")
        ->type_name("LOG.csv");
    what->add_option("--from-track", options->fromTrack,
                     "Stays to find in the track of a fishing day")
        ->type_name("TRACK.gpx");
    what->add_option("--out", options->out, "The whole log")->type_name("OUT.csv");
    what->require_option(1);
    verb->add_option("--rods", options->rods,
                     "Rods in the water during the stays of the track; not known without")
        ->type_name("N")
        ->check(CLI::Range(1, 8));
    layWait(*verb, options->wait_s);
    verb->callback([options, &run] { run = [options] { return logVerb(*options); }; });
}

} // namespace batch
