// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/report.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "core/store/copies.h"
#include "core/store/water_store.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <memory>

namespace batch {

using base::Result;

namespace {

Result<void> check(const std::filesystem::path& path) {
    TerminalProgress progress;
    auto store = store::openWithCopy(path, store::Purpose::looking);
    if (!store) {
        return std::unexpected(store.error());
    }
    const auto found = (*store)->check(progress);
    if (!found) {
        return std::unexpected(found.error());
    }
    const nlohmann::ordered_json report{
        {"whole", found->isWhole()},     {"survey_days", found->surveyDays},
        {"soundings", found->soundings}, {"stays", found->stays},
        {"runs", found->fish},           {"has_drawing", found->hasDrawing},
        {"faults", found->faults}};
    if (auto written = writeReport("", report); !written) {
        return written;
    }
    if (!found->isWhole()) {
        return base::fail(base::ErrorKind::damagedWater, found->faults.front(), path.string(),
                          "go back to a copy, or open it at the desk and bring in what is missing");
    }
    return {};
}

} // namespace

void layCheck(CLI::App& app, Run& run) {
    CLI::App* verb =
        app.add_subcommand("check", "Is this file whole, and does it agree with itself");
    verb->footer("Example: meremark-batch check mere.gpkg");
    const auto path = std::make_shared<std::filesystem::path>();
    verb->add_option("water", *path, "Water file")->required()->type_name("WATER.gpkg");
    verb->callback([path, &run] { run = [path] { return check(*path); }; });
}

} // namespace batch
