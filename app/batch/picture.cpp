// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/number_between.h"
#include "app/batch/output_paths.h"
#include "app/batch/picture_file.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/time_limit.h"
#include "app/batch/verbs.h"
#include "app/open_water/water_file.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace batch {

using base::Result;

namespace {

struct PictureOptions {
    std::filesystem::path water, to;
    double side = 256.0;   ///< Pixels; 256 as the freedesktop thumbnail specification's "large".
    double within_s = 0.0; ///< 0: however long it takes.
};

/// Of shore and drawing as they are kept, so that it costs the same however long the water's lists
/// are, and neither changes the file nor works anything out.
Result<void> picture(const PictureOptions& o) {
    const TimeLimit limit(o.within_s);
    if (auto may = checkOutputs({{"--to", o.to}}, {{"the water", o.water}}); !may) {
        return may;
    }
    TerminalProgress progress;
    const auto look = open_water::firstLookAt(o.water, progress);
    if (!look) {
        return std::unexpected(look.error());
    }
    if (!look->kept.drawn) {
        return base::fail(base::ErrorKind::unusableInput, "no drawing is kept in this water yet",
                          o.water.string(), "draw it with sketch or at the desk");
    }
    return writeSmallPicture(o.to, look->water, look->kept, static_cast<int>(o.side));
}

} // namespace

void layPicture(CLI::App& app, Run& run) {
    constexpr double leastSide = 16.0;
    constexpr double mostSide = 2048.0;
    constexpr double shortest_s = 0.01;
    constexpr double longest_s = 3600.0;
    CLI::App* verb =
        app.add_subcommand("picture", "A small picture of a water, as file managers show");
    verb->footer("Example: meremark-batch picture mere.gpkg --to mere.png --size 256");
    const auto options = std::make_shared<PictureOptions>();
    verb->add_option("water", options->water, "Water file")->required()->type_name("WATER.gpkg");
    verb->add_option("--to", options->to, "The picture, PNG")->required()->type_name("OUT.png");
    verb->add_option("--size", options->side, "Width and height in pixels (default 256)")
        ->type_name("PIXELS")
        ->check(numberBetween(leastSide, mostSide));
    verb->add_option("--within", options->within_s,
                     "End with exit code 6 where it takes longer, seconds")
        ->type_name("SECONDS")
        ->check(numberBetween(shortest_s, longest_s));
    verb->callback([options, &run] { run = [options] { return picture(*options); }; });
}

} // namespace batch
