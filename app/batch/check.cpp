// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/output_paths.h"
#include "app/batch/report.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "core/store/copies.h"
#include "core/store/rescue.h"
#include "core/store/water_store.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <iostream>
#include <memory>

namespace batch {

using base::Result;

namespace {

struct CheckOptions {
    std::filesystem::path water;
    std::filesystem::path rescued; ///< Empty where nothing is to be rescued.
};

nlohmann::ordered_json reportOf(const store::CheckReport& found) {
    return {{"whole", found.isWhole()},     {"survey_days", found.surveyDays},
            {"soundings", found.soundings}, {"stays", found.stays},
            {"runs", found.fish},           {"has_drawing", found.hasDrawing},
            {"faults", found.faults},       {"problems", found.problems}};
}

Result<void> check(const std::filesystem::path& path, base::Progress& progress) {
    auto store = store::openWithCopy(path, store::Purpose::looking);
    if (!store) {
        return std::unexpected(store.error());
    }
    const auto found = (*store)->check(progress);
    if (!found) {
        return std::unexpected(found.error());
    }
    if (auto written = writeReport("", reportOf(*found)); !written) {
        return written;
    }
    if (!found->isWhole()) {
        return base::fail(base::ErrorKind::damagedWater, found->faults.front(), path.string(),
                          "go back to a copy, or lay what can be read into a new file with "
                          "--rescue OUT.gpkg");
    }
    if (!found->problems.empty()) {
        return base::fail(base::ErrorKind::unusableInput, found->problems.front(), path.string(),
                          "the file is whole: correct this at the desk");
    }
    return {};
}

/// What is not whole ends in a new file that is; what was lost on the way is told on both ways out.
Result<void> rescue(const CheckOptions& o, base::Progress& progress) {
    if (auto may = checkOutputs({{"--rescue", o.rescued}}, {{"the water", o.water}}); !may) {
        return may;
    }
    const auto rescued = store::rescue(o.water, o.rescued, progress);
    if (!rescued) {
        return std::unexpected(rescued.error());
    }
    nlohmann::ordered_json report = reportOf(rescued->held);
    report["rescued_to"] = o.rescued.string();
    report["lost"] = rescued->lost;
    if (auto written = writeReport("", report); !written) {
        return written;
    }
    if (!rescued->lost.empty()) {
        std::cerr << "meremark-batch: " << o.rescued.string() << ": not everything could be read; "
                  << "the report says what is missing\n";
    }
    return {};
}

} // namespace

void layCheck(CLI::App& app, Run& run) {
    CLI::App* verb =
        app.add_subcommand("check", "Is this file whole, and does it agree with itself");
    verb->footer("Example: meremark-batch check mere.gpkg");
    const auto options = std::make_shared<CheckOptions>();
    verb->add_option("water", options->water, "Water file")->required()->type_name("WATER.gpkg");
    verb->add_option("--rescue", options->rescued,
                     "Lay what can be read of a damaged file into this new one, and say what not")
        ->type_name("OUT.gpkg");
    verb->callback([options, &run] {
        run = [options] {
            TerminalProgress progress;
            return options->rescued.empty() ? check(options->water, progress)
                                            : rescue(*options, progress);
        };
    });
}

} // namespace batch
