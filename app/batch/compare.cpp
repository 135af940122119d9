// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/output_paths.h"
#include "app/batch/report.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "app/batch/water_file.h"
#include "app/wording/year_words.h"
#include "core/outputs/write_geotiff.h"
#include "core/water/questions/compare_years.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <memory>

namespace batch {

using base::Result;
using Json = nlohmann::ordered_json;
using std::filesystem::path;

namespace {

struct CompareOptions {
    path later, earlier, grid, trust, report;
    bool isLevel = false;
};

Json marksPart(const std::vector<water::MarkThen>& marks) {
    Json part = Json::array();
    for (const water::MarkThen& mark : marks) {
        const auto metres = [&mark](units::Length length) {
            return mark.rise ? rounded(length.inMetres(), 3) : Json();
        };
        part.push_back({{"name", mark.name},
                        {"place", {rounded(mark.place.lon_deg, 7), rounded(mark.place.lat_deg, 7)}},
                        {"rise_m", metres(mark.rise.value_or(units::Length()))},
                        {"trust_m", metres(mark.halfWidth)},
                        {"is_sure", mark.isSure()}});
    }
    return part;
}

Json reportOf(const OpenedWater& later, const OpenedWater& earlier,
              const water::YearsCompared& years) {
    const surface::ChangeSums& sums = years.sums;
    Json notes = Json::array();
    for (const QString& note : wording::doubtsOfYears(years, wording::Words())) {
        notes.push_back(note.toStdString());
    }
    return {{"later", later.water.name},
            {"earlier", earlier.water.name},
            {"level_rise_m",
             rounded((later.water.chartLevel - earlier.water.chartLevel).inMetres(), 3)},
            {"taken_off_m", years.takenOff ? rounded(years.takenOff->inMetres(), 3) : Json()},
            {"compared_m2", rounded(sums.compared.inSquareMetres(), 0)},
            {"median_rise_m", rounded(sums.middle.inMetres(), 3)},
            {"risen_m2", rounded(sums.risen.inSquareMetres(), 0)},
            {"fallen_m2", rounded(sums.fallen.inSquareMetres(), 0)},
            {"filled_m3", rounded(sums.filled.inCubicMetres(), 0)},
            {"lost_m3", rounded(sums.lost.inCubicMetres(), 0)},
            {"marks", marksPart(years.marks)},
            {"notes", notes}};
}

Result<void> writeGrids(const CompareOptions& o, const water::Water& later,
                        const surface::BottomChange& change) {
    if (!o.grid.empty()) {
        if (auto written = outputs::writeRiseGeotiff(o.grid, change, *later.frame); !written) {
            return written;
        }
    }
    return o.trust.empty() ? Result<void>()
                           : outputs::writeRiseTrustGeotiff(o.trust, change, *later.frame);
}

Result<void> compare(const CompareOptions& o) {
    if (auto checked =
            checkOutputs({{"--grid", o.grid}, {"--trust", o.trust}, {"--report", o.report}},
                         {{"the later water", o.later}, {"the earlier water", o.earlier}});
        !checked) {
        return checked;
    }
    TerminalProgress progress;
    const auto later = openDrawnWater(o.later, progress);
    if (!later) {
        return std::unexpected(later.error());
    }
    const auto earlier = openDrawnWater(o.earlier, progress);
    if (!earlier) {
        return std::unexpected(earlier.error());
    }
    progress.begin("Comparing");
    const auto years = water::compareYears(
        later->water, later->derived, earlier->water, *earlier->derived.drawn,
        o.isLevel ? water::CommonRise::isOfLevel : water::CommonRise::isChange, progress);
    if (!years) {
        return std::unexpected(years.error());
    }
    if (auto written = writeGrids(o, later->water, years->change); !written) {
        return written;
    }
    return writeReport(o.report, reportOf(*later, *earlier, *years));
}

} // namespace

void layCompare(CLI::App& app, Run& run) {
    CLI::App* verb = app.add_subcommand(
        "compare", "What the bottom of a water has done since an earlier survey");
    verb->footer("Example: meremark-batch compare mere-2031.gpkg mere-2026.gpkg --grid rise.tif");
    const auto options = std::make_shared<CompareOptions>();
    verb->add_option("later", options->later, "Water file of the later survey")
        ->required()
        ->type_name("LATER.gpkg");
    verb->add_option("earlier", options->earlier, "Water file of the earlier survey")
        ->required()
        ->type_name("EARLIER.gpkg");
    verb->add_flag("--is-level", options->isLevel,
                   "What all of the bottom has in common is a level noted wrongly: take it off");
    verb->add_option("--grid", options->grid,
                     "Rise of the bottom on the later grid, float32 GeoTIFF, metres")
        ->type_name("OUT.tif");
    verb->add_option("--trust", options->trust, "Its 95 % half-widths")->type_name("OUT.tif");
    verb->add_option("--report", options->report, "Report; to standard output if not given")
        ->type_name("OUT.json");
    verb->callback([options, &run] { run = [options] { return compare(*options); }; });
}

} // namespace batch
