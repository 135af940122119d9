// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/command.h"

#include "app/batch/exit_code.h"
#include "app/batch/verbs.h"
#include "core/base/caught.h"
#include "core/base/harmless_text.h"
#include "core/gdal/version.h"
#include "core/geo/water_frame.h"
#include "core/store/water_store.h"

#include <CLI/CLI.hpp>
#include <QtGlobal>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <iostream>
#include <string_view>

namespace batch {

namespace {

std::string versionText() {
    return std::string("meremark-batch ") + MEREMARK_VERSION + "\nQt " + std::string(qVersion()) +
           "\nGDAL " + gdal::gdalVersion() + "\nPROJ " + geo::projVersion() + "\nSQLite " +
           store::sqliteVersion();
}

/// One line on standard error, as scripts expect; the last of a run. \return the exit code.
int complain(const base::Error& error, bool isJson) {
    const int code = exitCodeOf(error.kind);
    if (!isJson) {
        std::cerr << "meremark-batch: " << error.sentence() << '\n';
        return code;
    }
    const nlohmann::ordered_json told{{"error", keyOf(error.kind)},
                                      {"exit_code", code},
                                      {"where", base::harmless(error.where)},
                                      {"what", base::harmless(error.what)},
                                      {"what_to_do", base::harmless(error.whatToDo)}};
    // Names of files may be in any coding.
    std::cerr << told.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace) << '\n';
    return code;
}

base::Error wrongUseOf(const CLI::ParseError& error) {
    std::string line = error.what();
    std::replace(line.begin(), line.end(), '\n', ' ');
    return {base::ErrorKind::wrongUse, std::move(line), {}, "try meremark-batch --help"};
}

} // namespace

int runCommand(int argc, char** argv) {
    CLI::App app("Meremark's main job without a window: soundings to a drawn water, anchor marks, "
                 "log and rates.",
                 "meremark-batch");
    app.require_subcommand(1);
    app.set_version_flag("--version", versionText());
    app.fallthrough(); // --json may follow the verb.
    bool isJson = false;
    app.add_flag("--json", isJson,
                 "What goes wrong is told as one line of JSON, the last on standard error");
    Run run;
    laySketch(app, run);
    layMarks(app, run);
    layLog(app, run);
    layReview(app, run);
    layCompare(app, run);
    layPicture(app, run);
    layCheck(app, run);
    layGive(app, run);
    try {
        app.parse(argc, argv);
    } catch (const CLI::Success& asked) {
        return app.exit(asked);
    } catch (const CLI::ParseError& error) {
        // What cannot be read may have hidden that it was asked for.
        isJson = isJson || std::any_of(argv, argv + argc, [](const char* word) {
                     return std::string_view(word) == "--json";
                 });
        return complain(wrongUseOf(error), isJson);
    }
    const auto done = base::caught([&run] { return run(); });
    if (!done) {
        return complain(done.error(), isJson);
    }
    return 0;
}

} // namespace batch
