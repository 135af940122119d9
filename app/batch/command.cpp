// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/command.h"

#include "app/batch/exit_code.h"
#include "app/batch/verbs.h"
#include "core/base/caught.h"
#include "core/gdal/version.h"
#include "core/geo/water_frame.h"
#include "core/store/water_store.h"

#include <CLI/CLI.hpp>
#include <QtGlobal>

#include <algorithm>

#include <iostream>

namespace batch {

namespace {

constexpr int wrongUse = 2;

std::string versionText() {
    return std::string("meremark-batch ") + MEREMARK_VERSION + "\nQt " + std::string(qVersion()) +
           "\nGDAL " + gdal::gdalVersion() + "\nPROJ " + geo::projVersion() + "\nSQLite " +
           store::sqliteVersion();
}

/// One line on standard error, as scripts expect.
int complain(const CLI::ParseError& error) {
    std::string line = error.what();
    std::replace(line.begin(), line.end(), '\n', ' ');
    std::cerr << "meremark-batch: " << line << "; try meremark-batch --help\n";
    return wrongUse;
}

} // namespace

int runCommand(int argc, char** argv) {
    CLI::App app("Meremark's main job without a window: soundings to a drawn water, anchor marks, "
                 "log and rates.",
                 "meremark-batch");
    app.require_subcommand(1);
    app.set_version_flag("--version", versionText());
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
        return complain(error);
    }
    const auto done = base::caught([&run] { return run(); });
    if (!done) {
        std::cerr << "meremark-batch: " << done.error().sentence() << '\n';
        return exitCodeOf(done.error().kind);
    }
    return 0;
}

} // namespace batch
