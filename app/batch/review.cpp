// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/number_between.h"
#include "app/batch/option_values.h"
#include "app/batch/output_paths.h"
#include "app/batch/picture_file.h"
#include "app/batch/report.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "app/batch/water_file.h"
#include "app/wording/sayings.h"
#include "core/outputs/write_rates.h"
#include "core/water/questions/review_log.h"
#include "core/water/questions/sum_up_log.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <memory>

namespace batch {

using base::Result;
using std::filesystem::path;
using Json = nlohmann::ordered_json;

namespace {

struct ReviewOptions {
    path water, report, csv, picture;
    std::string by, from, to, species;
    std::optional<double> minWeight_kg;
    std::vector<std::string> compare;
};

Json rowPart(const rates::RateRow& row) {
    Json part{{"name", row.name},   {"rod_hours", rounded(row.rodHours, 3)},
              {"stays", row.stays}, {"blanks", row.blanks},
              {"runs", row.runs},   {"fish", row.fish}};
    part["best_kg"] = row.best ? rounded(row.best->inKilograms(), 3) : Json(nullptr);
    part["rate_per_10_rod_hours"] = row.rate ? rounded(row.rate->per10RodHours, 4) : Json(nullptr);
    part["rate_low"] = row.rate ? rounded(row.rate->low, 4) : Json(nullptr);
    part["rate_high"] = row.rate ? rounded(row.rate->high, 4) : Json(nullptr);
    part["shrunk_rate"] = row.shrunk ? rounded(row.shrunk->per10RodHours, 4) : Json(nullptr);
    part["shrunk_low"] = row.shrunk ? rounded(row.shrunk->low, 4) : Json(nullptr);
    part["shrunk_high"] = row.shrunk ? rounded(row.shrunk->high, 4) : Json(nullptr);
    // The word of the desk; both names stay.
    part["steadied_rate"] = part["shrunk_rate"];
    part["steadied_low"] = part["shrunk_low"];
    part["steadied_high"] = part["shrunk_high"];
    part["share_of_effort"] = rounded(row.shareOfEffort, 4);
    if (row.place) {
        part["lon"] = rounded(row.place->lon_deg, 7);
        part["lat"] = rounded(row.place->lat_deg, 7);
    }
    return part;
}

Result<water::ReviewQuestion> questionOf(const ReviewOptions& o) {
    water::ReviewQuestion question;
    question.by = *water::reviewByNamed(o.by);
    question.species = o.species;
    if (o.minWeight_kg) {
        question.leastWeight = units::Weight::kilograms(*o.minWeight_kg);
    }
    if (!o.from.empty()) {
        const auto day = dayFrom("--from", o.from);
        if (!day) {
            return std::unexpected(day.error());
        }
        question.from = *day;
    }
    if (!o.to.empty()) {
        const auto day = dayFrom("--to", o.to);
        if (!day) {
            return std::unexpected(day.error());
        }
        question.to = *day;
    }
    return question;
}

bool needsDrawing(water::ReviewBy by) {
    return by == water::ReviewBy::section || by == water::ReviewBy::zone ||
           by == water::ReviewBy::band;
}

Json comparisonPart(const rates::RowComparison& comparison) {
    return {{"first", comparison.first},
            {"second", comparison.second},
            {"ratio", comparison.ratio ? rounded(*comparison.ratio, 4) : Json(nullptr)},
            {"ratio_low", rounded(comparison.low, 4)},
            {"ratio_high", comparison.high ? rounded(*comparison.high, 4) : Json(nullptr)},
            {"p", rounded(comparison.p, 6)},
            {"beyond_chance", comparison.isBeyondChance()},
            {"says", wording::said(comparison).toStdString()}};
}

/// What the page comes to first, then what its counts cannot bear.
Result<Json> notesPart(const OpenedWater& opened, const water::ReviewQuestion& question,
                       const rates::RateTable& table, base::Progress& progress) {
    auto hours = water::reviewHours(opened.water, question, progress);
    if (!hours) {
        return std::unexpected(hours.error());
    }
    Json notes = Json::array();
    for (const rates::Saying& saying : water::sumUpLog(table, *hours)) {
        notes.push_back(wording::said(saying, question.by).toStdString());
    }
    for (const std::string& note : table.notes) {
        notes.push_back(note);
    }
    return notes;
}

Result<void> review(const ReviewOptions& o) {
    TerminalProgress progress;
    if (auto checked =
            checkOutputs({{"--report", o.report}, {"--csv", o.csv}, {"--picture", o.picture}},
                         {{"the water", o.water}});
        !checked) {
        return checked;
    }
    const auto question = questionOf(o);
    if (!question) {
        return std::unexpected(question.error());
    }
    auto opened = needsDrawing(question->by) ? openDrawnWater(o.water, progress)
                                             : openWater(o.water, progress);
    if (!opened) {
        return std::unexpected(opened.error());
    }
    auto table = water::reviewLog(opened->water, opened->derived, *question, progress);
    if (!table) {
        return std::unexpected(table.error());
    }
    const auto notes = notesPart(*opened, *question, *table, progress);
    if (!notes) {
        return std::unexpected(notes.error());
    }
    std::optional<Json> comparison;
    if (!o.compare.empty()) {
        const auto compared = water::compareRows(*table, o.compare[0], o.compare[1]);
        if (!compared) {
            return std::unexpected(compared.error());
        }
        comparison = comparisonPart(*compared);
    }
    const rates::RateTable inOwnOrder = *table; // hours and months are looked at in theirs
    rates::sortByExpected(*table);
    if (!o.csv.empty()) {
        if (auto written = outputs::writeRatesTable(o.csv, *table); !written) {
            return written;
        }
    }
    if (!o.picture.empty()) {
        if (auto written =
                writeRatesPicture(o.picture, inOwnOrder, opened->water.name + ", by " + o.by);
            !written) {
            return written;
        }
    }
    Json report{{"by", o.by},
                {"rows", Json::array()},
                {"overall", rowPart(table->overall)},
                {"dispersion", rounded(table->overall.dispersion, 4)},
                {"effort_unknown", {{"stays", table->effortUnknown}}},
                {"notes", *notes}};
    for (const rates::RateRow& row : table->rows) {
        report["rows"].push_back(rowPart(row));
    }
    if (comparison) {
        report["comparison"] = *comparison;
    }
    return writeReport(o.report, report);
}

} // namespace

void layReview(CLI::App& app, Run& run) {
    CLI::App* verb =
        app.add_subcommand("review", "What produced fish, with what the counts can bear");
    verb->footer("Example: meremark-batch review mere.gpkg --by section --species pike");
    const auto options = std::make_shared<ReviewOptions>();
    std::vector<std::string> ways;
    for (const water::ReviewBy by : water::allReviewBy) {
        ways.emplace_back(water::nameOf(by));
    }
    verb->add_option("water", options->water, "Water file")->required()->type_name("WATER.gpkg");
    verb->add_option("--by", options->by, "What to sort by")
        ->required()
        ->check(CLI::IsMember(ways));
    verb->add_option("--from", options->from, "First day")->type_name("DATE");
    verb->add_option("--to", options->to, "Last day")->type_name("DATE");
    verb->add_option("--species", options->species, "Only this one")->type_name("NAME");
    verb->add_option("--min-weight", options->minWeight_kg, "Only fish at least this heavy")
        ->type_name("KG")
        ->check(numberBetween(0.001, 1000.0));
    verb->add_option("--compare", options->compare, "Two rows, by name, side by side")
        ->expected(2)
        ->type_name("NAME");
    verb->add_option("--report", options->report, "Report; to standard output if not given")
        ->type_name("OUT.json");
    verb->add_option("--csv", options->csv, "The rows as a table")->type_name("OUT.csv");
    verb->add_option("--picture", options->picture, "Bars with their intervals")
        ->type_name("OUT.png");
    verb->callback([options, &run] { run = [options] { return review(*options); }; });
}

} // namespace batch
