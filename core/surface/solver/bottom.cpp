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
    : cells_(&cells), shore_(std::move(shore)), operator_(cells), multigrid_(cells, threads),
      right_(cells.places(), 0.0) {}

void BottomDrawer::assemble(const Field& trend, const std::vector<Sample>& samples,
                            const BottomSettings& settings, const Bottom& before, bool isFirst,
                            const base::Progress& progress) {
    const double a = settings.stiffness;
    const double membrane = a / (settings.reach_m * settings.reach_m);
    const double alongContours = isFirst ? 0.0 : a * settings.contourStiffness;
    operator_.setBends(a, 0.0, 0.0, nullptr);
    operator_.multiply(trend, right_, settings.threads);
    for (double& value : right_) {
        value *= settings.trendBends - 1.0;
    }
    operator_.setBends(a, membrane, alongContours, isFirst ? nullptr : &before.lay.contours);
    StencilMatrix<float>& matrix = multigrid_.finest();
    matrix.clear();
    addBending(*cells_, a, matrix);
    addMembrane(*cells_, membrane, matrix);
    if (progress.stopAsked()) {
        return;
    }
    if (!isFirst) {
        addContourBending(*cells_, before.lay.contours, alongContours, matrix);
    }
    const auto pull = [&](const Footprint& at, double value, double weight) {
        operator_.addPull(at, weight);
        addPull(*cells_, at, value, weight, matrix, right_);
    };
    for (const Sample& sample : samples) {
        const double error_m =
            std::hypot(settings.soundingError_m, settings.soundingErrorShare * sample.depth_m);
        const double off_m = std::abs(sample.at.of(before.depth_m) - sample.depth_m);
        const double trusted =
            isFirst ? 1.0 : std::min(1.0, huber * error_m / std::max(off_m, 1e-9));
        pull(sample.at, sample.depth_m - sample.at.of(trend), trusted / (error_m * error_m));
    }
    if (progress.stopAsked()) {
        return;
    }
    for (const ShorePull& shore : shore_) {
        const double slope = std::max(leastSlope, before.lay.slope[shore.place]);
        const double error_m = std::hypot(shoreError_m, settings.shoreOffset_m * slope);
        const double weight =
            cells_->cell_m() / (shoreMetresEach * shorePointsPerCell * error_m * error_m);
        for (const Footprint& at : shore.footprints) {
            pull(at, -at.of(trend), weight);
        }
    }
    if (!progress.stopAsked()) {
        multigrid_.coarsen();
    }
}

Bottom BottomDrawer::draw(const Field& trend, const std::vector<Sample>& samples,
                          const BottomSettings& settings, const Bottom* start,
                          const base::Progress& progress) {
    Bottom bottom;
    bottom.depth_m = start != nullptr ? start->depth_m : trend;
    bottom.lay = start != nullptr ? start->lay : layOf(*cells_, trend, settings.blur_m);
    bottom.samples = samples.size();
    for (int pass = start != nullptr ? 1 : 0; pass < settings.passes; ++pass) {
        assemble(trend, samples, settings, bottom, pass == 0, progress);
        Field& rest = bottom.depth_m; // for the while of the solution
        cells_->forEach([&](std::size_t p, std::size_t) { rest[p] -= trend[p]; });
        const bool isLast = pass + 1 == settings.passes;
        const Ended ended = conjugateGradients(
            *cells_, [&](const Field& x, Field& y) { operator_.multiply(x, y, settings.threads); },
            multigrid_, right_, rest, isLast ? lastTolerance_m : firstTolerance_m, progress);
        bottom.iterations += ended.iterations;
        bottom.wasStopped = ended.wasStopped;
        cells_->forEach([&](std::size_t p, std::size_t) { rest[p] += trend[p]; });
        if (ended.wasStopped) {
            break;
        }
        const double done = (pass + 1.0) / settings.passes;
        bottom.lay = {};
        bottom.lay = layOf(*cells_, bottom.depth_m, settings.blur_m * std::pow(lastBlur, done));
    }
    return bottom;
}

} // namespace surface::solver
