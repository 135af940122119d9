// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/bottom.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

namespace {

constexpr double firstTolerance_m = 0.02;
constexpr double lastTolerance_m = 0.004;
constexpr double huber = 8.0;
constexpr double shoreError_m = 0.05;
constexpr double lastBlur = 0.5;
/// So much shore counts as one observation, whatever the cell.
constexpr double shoreMetresEach = 5.0;

double errorOf_m(const Sample& sample, const BottomSettings& settings) {
    return std::hypot(settings.soundingError_m, settings.soundingErrorShare * sample.depth_m);
}

/// How far the bottom misses the sample, in parts of what is held against neither.
double misfitOf(const Sample& sample, const Bottom& bottom, const BottomSettings& settings) {
    return std::abs(sample.at.of(bottom.depth_m) - sample.depth_m) /
           (huber * errorOf_m(sample, settings));
}

/// Lets go of the contours round every sample that the bottom does not know yet: they run as if it
/// were not there.
void forgetContours(const ActiveCells& cells, const std::vector<Sample>& samples,
                    const BottomSettings& settings, Bottom& bottom) {
    const int reach = static_cast<int>(std::ceil(settings.blur_m / cells.cell_m()));
    const int cols = cells.cols();
    for (const Sample& sample : samples) {
        if (misfitOf(sample, bottom, settings) <= 1.0) {
            continue;
        }
        const int place = static_cast<int>(sample.at.places.front());
        const int west = std::max(place % cols - reach, 0);
        const int east = std::min(place % cols + reach, cols - 1);
        for (int row = std::max(place / cols - reach, 0);
             row <= std::min(place / cols + reach, cells.rows() - 1); ++row) {
            for (Field* part :
                 {&bottom.lay.contours.xx, &bottom.lay.contours.xy, &bottom.lay.contours.yy}) {
                std::fill(part->begin() + static_cast<std::ptrdiff_t>(cells.place(west, row)),
                          part->begin() + static_cast<std::ptrdiff_t>(cells.place(east, row)) + 1,
                          0.0);
            }
        }
    }
}

} // namespace

BottomDrawer::BottomDrawer(const ActiveCells& cells, std::vector<ShorePull> shore, int threads)
    : cells_(&cells), shore_(std::move(shore)), operator_(cells), multigrid_(cells, threads),
      right_(cells.places(), 0.0) {}

void BottomDrawer::assemble(const Field& trend, const std::vector<Sample>& samples,
                            const BottomSettings& settings, const Bottom& before, Pass pass,
                            const base::Progress& progress) {
    const double a = settings.stiffness;
    const double membrane = a / (settings.reach_m * settings.reach_m);
    const double alongContours = pass.goesAlongContours ? a * settings.contourStiffness : 0.0;
    std::ranges::fill(right_, 0.0);
    operator_.setBends(a, membrane, alongContours,
                       pass.goesAlongContours ? &before.lay.contours : nullptr);
    StencilMatrix<float>& matrix = multigrid_.finest();
    matrix.clear();
    addBending(*cells_, a, matrix);
    if (progress.stopAsked()) {
        return;
    }
    addMembrane(*cells_, membrane, matrix);
    if (progress.stopAsked()) {
        return;
    }
    if (pass.goesAlongContours) {
        addContourBending(*cells_, before.lay.contours, alongContours, matrix);
    }
    const auto pull = [&](const Footprint& at, double value, double weight) {
        operator_.addPull(at, weight);
        addPull(*cells_, at, value, weight, matrix, right_);
    };
    for (const Sample& sample : samples) {
        const double error_m = errorOf_m(sample, settings);
        const double trusted =
            pass.weighsMisfits
                ? std::min(1.0, 1.0 / std::max(misfitOf(sample, before, settings), 1e-9))
                : 1.0;
        pull(sample.at, sample.depth_m - sample.at.of(trend), trusted / (error_m * error_m));
    }
    if (progress.stopAsked()) {
        return;
    }
    for (std::size_t k = 0; k < shore_.size(); ++k) {
        const ShorePull& shore = shore_[k];
        const double slope = shoreSlopeOf(before.lay.slope[shore.place], wallSlopes_[k]);
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

void BottomDrawer::solve(const Field& trend, const std::vector<Sample>& samples,
                         const BottomSettings& settings, Pass pass, Bottom& bottom,
                         const base::Progress& progress) {
    assemble(trend, samples, settings, bottom, pass, progress);
    Field& rest = bottom.depth_m; // for the while of the solution
    cells_->forEach([&](std::size_t p, std::size_t) { rest[p] -= trend[p]; });
    const Ended ended = conjugateGradients(
        *cells_, [&](const Field& x, Field& y) { operator_.multiply(x, y, settings.threads); },
        multigrid_, right_, rest, pass.isLast ? lastTolerance_m : firstTolerance_m, progress);
    bottom.iterations += ended.iterations;
    bottom.wasStopped = ended.wasStopped;
    cells_->forEach([&](std::size_t p, std::size_t) { rest[p] += trend[p]; });
}

double lastBlur_m(const BottomSettings& settings) {
    return settings.blur_m * lastBlur;
}

Bottom BottomDrawer::draw(const Field& trend, const std::vector<Sample>& samples,
                          const BottomSettings& settings, const Bottom* start,
                          const base::Progress& progress) {
    Bottom bottom;
    bottom.depth_m = start != nullptr ? start->depth_m : trend;
    bottom.wasStopped = progress.stopAsked();
    if (bottom.wasStopped) {
        return bottom;
    }
    bottom.lay =
        start != nullptr ? start->lay : layOf(*cells_, trend, settings.blur_m, settings.threads);
    bottom.samples = samples.size();
    wallSlopes_ = wallSlopesOf(shore_, samples);
    for (int pass = start != nullptr ? 1 : 0; pass < settings.passes; ++pass) {
        solve(trend, samples, settings, {pass > 0, pass > 0, pass + 1 == settings.passes}, bottom,
              progress);
        if (bottom.wasStopped) {
            break;
        }
        const double done = (pass + 1.0) / settings.passes;
        bottom.lay = {};
        bottom.lay = layOf(*cells_, bottom.depth_m, settings.blur_m * std::pow(lastBlur, done),
                           settings.threads);
    }
    return bottom;
}

Bottom BottomDrawer::redraw(const Field& trend, const std::vector<Sample>& samples,
                            const BottomSettings& settings, Bottom before,
                            const base::Progress& progress) {
    Bottom bottom = std::move(before);
    bottom.samples = samples.size();
    bottom.iterations = 0;
    wallSlopes_ = wallSlopesOf(shore_, samples);
    forgetContours(*cells_, samples, settings, bottom);
    for (const bool isLast : {false, true}) {
        solve(trend, samples, settings, {true, isLast, isLast}, bottom, progress);
        if (bottom.wasStopped) {
            break;
        }
        bottom.lay = {};
        bottom.lay = layOf(*cells_, bottom.depth_m, lastBlur_m(settings), settings.threads);
    }
    return bottom;
}

} // namespace surface::solver
