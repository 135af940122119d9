// SPDX-License-Identifier: GPL-3.0-or-later
// The drawing against general-purpose gridders, on lakes whose bottoms are known: the cases in
// ../shared/bench and the best of nine methods there (Delaunay linear, inverse distance, gmt
// surface, near and natural neighbour, thin plate, kriging), metric by metric, in peers.json.
#include "core/gdal/coordinates.h"
#include "core/gdal/raster_file.h"
#include "core/surface/draw_water.h"

#include "tests/support/gridding_case.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace {

using std::filesystem::path;

const path folder = path(MEREMARK_SHARED_DIR) / "bench";

struct Score {
    double rmse_m = 0.0;
    double p95_m = 0.0; ///< 95th percentile of the errors.
    std::size_t cells = 0;
    std::size_t covered = 0; ///< Cells whose error lies within the stated half-width.
};

/// Between the four cells around p where all hold a depth; else that of its own cell.
double depthAt_m(const grid::DepthGrid& depth, geo::WaterPoint p) {
    const grid::GridFrame& f = depth.frame();
    const double col = (p.x_m - f.west_m()) / f.cell_m() - 0.5;
    const double row = (f.north_m() - p.y_m) / f.cell_m() - 0.5;
    const grid::Cell nw{static_cast<int>(std::floor(col)), static_cast<int>(std::floor(row))};
    const auto at = [&](int east, int south) {
        const auto d = depth.at(grid::Cell{nw.col + east, nw.row + south});
        return d ? d->inMetres() : std::nan("");
    };
    const double x = col - nw.col;
    const double between =
        std::lerp(std::lerp(at(0, 0), at(1, 0), x), std::lerp(at(0, 1), at(1, 1), x), row - nw.row);
    const auto own = depth.at(p);
    return std::isfinite(between) ? between : own ? own->inMetres() : 0.0;
}

Score scoreOf(const std::string& lake, const std::string& survey) {
    const auto given =
        support::readGriddingCase((folder / "cases" / (lake + "-" + survey)).string()).value();
    surface::DrawSettings settings;
    settings.cell = units::Length::metres(5.0);
    base::Progress quiet;
    const auto drawn = surface::drawWater(given.outline, given.soundings, settings, quiet).value();
    const auto truth = gdal::readRasterFile(folder / ("truth-" + lake + ".tif")).value();
    const auto coordinates = gdal::Coordinates::ofWkt(truth.wkt).value();
    Score score;
    std::vector<double> errors_m;
    double squares = 0.0;
    for (std::size_t i = 0; i < truth.bands.front().size(); ++i) {
        const auto true_m = static_cast<double>(truth.bands.front()[i]);
        if (std::isnan(true_m)) {
            continue;
        }
        const auto col = static_cast<double>(i % static_cast<std::size_t>(truth.cols));
        const std::size_t row = i / static_cast<std::size_t>(truth.cols);
        const auto place = coordinates.toEarth(
            {truth.transform[0] + (col + 0.5) * truth.transform[1],
             truth.transform[3] + (static_cast<double>(row) + 0.5) * truth.transform[5]});
        const geo::WaterPoint p = given.frame.toWater(*place);
        const double error_m = std::abs(depthAt_m(drawn.depth, p) - true_m);
        squares += error_m * error_m;
        errors_m.push_back(error_m);
        if (const auto half = drawn.trust.halfWidthAt(p)) {
            ++score.cells;
            score.covered += error_m <= half->inMetres() ? 1 : 0;
        }
    }
    score.rmse_m = std::sqrt(squares / static_cast<double>(errors_m.size()));
    const auto at = errors_m.begin() + std::ssize(errors_m) * 95 / 100;
    std::nth_element(errors_m.begin(), at, errors_m.end());
    score.p95_m = *at;
    return score;
}

/// What the geometric means over the four lakes, of ours to the best of the others', must keep to.
struct Survey {
    const char* name;
    double rmse;
    double p95;
};

class GriddingReference : public testing::TestWithParam<Survey> {};

TEST_P(GriddingReference, IsNearerTheTruthThanTheBestGeneralPurposeGridder) {
    if (!std::filesystem::exists(folder / "peers.json")) {
        GTEST_SKIP() << "needs the gridding bench in " MEREMARK_SHARED_DIR;
    }
    const auto peers = nlohmann::json::parse(std::ifstream(folder / "peers.json"));
    double rmse = 0.0;
    double p95 = 0.0;
    Score all;
    for (const std::string lake : {"A", "B", "C", "D"}) {
        const Score score = scoreOf(lake, GetParam().name);
        const auto& best = peers.at(lake + "-" + GetParam().name);
        rmse += 0.25 * std::log(score.rmse_m / best.at("rmse").get<double>());
        p95 += 0.25 * std::log(score.p95_m / best.at("p95").get<double>());
        const double covered =
            static_cast<double>(score.covered) / static_cast<double>(score.cells);
        EXPECT_GE(covered, 0.90) << lake;
        EXPECT_LE(covered, 0.99) << lake;
        all.cells += score.cells;
        all.covered += score.covered;
    }
    EXPECT_LE(std::exp(rmse), GetParam().rmse);
    EXPECT_LE(std::exp(p95), GetParam().p95);
    const double covered = static_cast<double>(all.covered) / static_cast<double>(all.cells);
    EXPECT_GE(covered, 0.93);
    EXPECT_LE(covered, 0.98);
}

INSTANTIATE_TEST_SUITE_P(Surveys, GriddingReference,
                         testing::Values(Survey{"lines", 0.72, 0.74}, Survey{"irreg", 0.55, 0.63},
                                         Survey{"sparse", 0.65, 0.70}),
                         [](const auto& survey) { return std::string(survey.param.name); });

} // namespace
