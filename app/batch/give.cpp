// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "app/batch/water_file.h"
#include "app/wording/reasons.h"
#include "core/outputs/write_all.h"
#include "core/water/steps/plan_day.h"

#include <CLI/CLI.hpp>

#include <iostream>
#include <memory>

namespace batch {

using base::Result;
using std::filesystem::path;

namespace {

struct GiveOptions {
    path water, folder;
};

Result<void> give(const GiveOptions& o) {
    TerminalProgress progress;
    // The water may lie in the folder, but not under a name that is given there.
    for (const std::string_view name : outputs::givenNames) {
        std::error_code fault;
        if (std::filesystem::equivalent(o.folder / name, o.water, fault)) {
            return base::fail(base::ErrorKind::unwritableOutput,
                              "the water itself would be written over", (o.folder / name).string(),
                              "name another folder for --to");
        }
    }
    auto opened = openDrawnWater(o.water, progress);
    if (!opened) {
        return std::unexpected(opened.error());
    }
    // The marks of the plan that the water holds; a water where none can be anchored on is given
    // without them.
    std::vector<marks::Mark> marks;
    if (auto planned =
            water::planDay(opened->water, opened->derived, opened->water.plan, progress)) {
        marks = std::move(planned->marks);
    } else if (planned.error().kind == base::ErrorKind::cancelled) {
        return std::unexpected(planned.error());
    } else {
        std::cerr << "meremark-batch: without marks: " << planned.error().sentence() << '\n';
    }
    return outputs::writeAll(opened->water, opened->derived, wording::told(marks), o.folder,
                             progress);
}

} // namespace

void layGive(CLI::App& app, Run& run) {
    CLI::App* verb = app.add_subcommand("give", "The water in open formats");
    verb->footer("Example: meremark-batch give mere.gpkg --to mere-open");
    const auto options = std::make_shared<GiveOptions>();
    verb->add_option("water", options->water, "Water file")->required()->type_name("WATER.gpkg");
    verb->add_option("--to", options->folder,
                     "Folder, made where it is not there; all files appear in it together")
        ->required()
        ->type_name("DIR");
    verb->callback([options, &run] { run = [options] { return give(*options); }; });
}

} // namespace batch
