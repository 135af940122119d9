// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/bottom.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

namespace {

constexpr double firstTolerance_m = 0.02;
constexpr double lastTolerance_m = 0.004;
constexpr double huber = 8.0;
constexpr double leastSlope = 0.02;
constexpr double shoreError_m = 0.05;
constexpr double lastBlur = 0.5;
/// So much shore counts as one observation, whatever the cell.
constexpr double shoreMetresEach = 5.0;

} // namespace

BottomDrawer::BottomDrawer(const ActiveCells& cells, std::vector<ShorePull> shore, int threads)
    : cells_(&cells), shore_(std::move(shore)), matrix_(cells), multigrid_(cells, threads),
      right_(cells.places(), 0.0) {}

void BottomDrawer::assemble(const Field& trend, const std::vector<Sample>& samples,
                            const BottomSettings& settings, const Bottom& before, bool isFirst,
                            const base::Progress& progress) {
    const double a = settings.stiffness;
    matrix_.clear();
    addBending(*cells_, a, matrix_);
    multiply(*cells_, matrix_, trend, right_, settings.threads);
    for (double& value : right_) {
        value *= settings.trendBends - 1.0;
    }
    addMembrane(*cells_, a / (settings.reach_m * settings.reach_m), matrix_);
    if (progress.stopAsked()) {
        return;
    }
    if (!isFirst) {
        addContourBending(*cells_, before.lay.contours, a * settings.contourStiffness, matrix_);
    }
    for (const Sample& sample : samples) {
        const double error_m =
            std::hypot(settings.soundingError_m, settings.soundingErrorShare * sample.depth_m);
        const double off_m = std::abs(sample.at.of(before.depth_m) - sample.depth_m);
        const double trusted =
            isFirst ? 1.0 : std::min(1.0, huber * error_m / std::max(off_m, 1e-9));
        addPull(*cells_, sample.at, sample.depth_m - sample.at.of(trend),
                trusted / (error_m * error_m), matrix_, right_);
    }
    if (progress.stopAsked()) {
        return;
    }
    for (const ShorePull& pull : shore_) {
        const double slope = std::max(leastSlope, before.lay.slope[pull.place]);
        const double error_m = std::hypot(shoreError_m, settings.shoreOffset_m * slope);
        const double weight =
            cells_->cell_m() / (shoreMetresEach * shorePointsPerCell * error_m * error_m);
        for (const Footprint& at : pull.footprints) {
            addPull(*cells_, at, -at.of(trend), weight, matrix_, right_);
        }
    }
    if (!progress.stopAsked()) {
        multigrid_.setMatrix(matrix_);
    }
}

Bottom BottomDrawer::draw(const Field& trend, const std::vector<Sample>& samples,
                          const BottomSettings& settings, const Bottom* start,
                          const base::Progress& progress) {
    Bottom bottom;
    bottom.depth_m = start != nullptr ? start->depth_m : trend;
    bottom.lay = start != nullptr ? start->lay : layOf(*cells_, trend, settings.blur_m);
    Field rest(cells_->places(), 0.0);
    for (int pass = start != nullptr ? 1 : 0; pass < settings.passes; ++pass) {
        assemble(trend, samples, settings, bottom, pass == 0, progress);
        cells_->forEach(
            [&](std::size_t p, std::size_t) { rest[p] = bottom.depth_m[p] - trend[p]; });
        const bool isLast = pass + 1 == settings.passes;
        const Ended ended = conjugateGradients(*cells_, matrix_, multigrid_, right_, rest,
                                               isLast ? lastTolerance_m : firstTolerance_m,
                                               settings.threads, progress);
        bottom.iterations += ended.iterations;
        bottom.wasStopped = ended.wasStopped;
        cells_->forEach(
            [&](std::size_t p, std::size_t) { bottom.depth_m[p] = trend[p] + rest[p]; });
        if (ended.wasStopped) {
            break;
        }
        const double done = (pass + 1.0) / settings.passes;
        bottom.lay = layOf(*cells_, bottom.depth_m, settings.blur_m * std::pow(lastBlur, done));
    }
    return bottom;
}

} // namespace surface::solver
