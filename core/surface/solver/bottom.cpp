// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/bottom.h"

#include "core/surface/solver/blur.h"
#include "core/surface/solver/gradient.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

namespace {

constexpr double firstTolerance_m = 0.05;
constexpr double lastTolerance_m = 0.015;
constexpr double huber = 8.0;
constexpr double shoreError_m = 0.05;
constexpr double lastBlur = 0.5;
/// Over which the slopes are taken that drift goes by: narrower, what is a bank would be taken for
/// positions that are off.
constexpr double driftBlur_m = 40.0;
/// The preconditioner knows nothing of neighbours on the track: so many times its own drift, each
/// sounding is believed as little as they together believe it.
constexpr double driftAlone = 3.0;
/// So much shore counts as one observation, whatever the cell.
constexpr double shoreMetresEach = 5.0;

double errorOf_m(const Sample& sample, const BottomSettings& settings) {
    const double share_m = settings.soundingErrorShare * sample.depth_m;
    return std::sqrt(settings.soundingError_m * settings.soundingError_m + share_m * share_m);
}

/// What the drift of the position does to the depth.
double driftOf_m(const TrackPull& pull, const BottomSettings& settings) {
    return settings.drift.deviation_m * std::sqrt(pull.east * pull.east + pull.north * pull.north);
}

std::size_t soundingsIn(const std::vector<Sample>& samples) {
    double count = 0.0;
    for (const Sample& sample : samples) {
        count += sample.soundings;
    }
    return static_cast<std::size_t>(std::lround(count));
}

/// True where the sounding before or after it is near enough to share its drift. What lone
/// soundings are off by nobody can tell from the bottom: to allow for it made the drawing worse.
bool isOnTrack(const std::vector<Sample>& samples, std::size_t i, double reach_m) {
    const auto isNear = [&](std::size_t other) {
        return geo::distance_m(samples[i].point, samples[other].point) <= reach_m;
    };
    return (i > 0 && isNear(i - 1)) || (i + 1 < samples.size() && isNear(i + 1));
}

/// How far the bottom misses the sample, in parts of what is held against neither.
double misfitOf(const Sample& sample, const TrackPull& pull, const Bottom& bottom,
                const BottomSettings& settings) {
    const double error_m = errorOf_m(sample, settings);
    const double drift_m = driftOf_m(pull, settings);
    const double mayBeOff_m = std::sqrt(error_m * error_m + drift_m * drift_m);
    return std::abs(sample.at.of(bottom.depth_m) - sample.depth_m) / (huber * mayBeOff_m);
}

} // namespace

BottomDrawer::BottomDrawer(const ActiveCells& cells, std::vector<ShorePull> shore, int threads)
    : cells_(&cells), shore_(std::move(shore)), operator_(cells), multigrid_(cells, threads) {}

/// The slopes of the bottom at the samples, for pulls that are not weighed yet.
void BottomDrawer::takeSlopes(const std::vector<Sample>& samples, const BottomSettings& settings,
                              const Field& depth_m) {
    pulls_.assign(samples.size(), {});
    if (!(settings.drift.deviation_m > 0.0)) {
        return;
    }
    // one after the other: on large waters there is no room for both
    const Blur blur(*cells_, driftBlur_m);
    for (double TrackPull::*part : {&TrackPull::east, &TrackPull::north}) {
        const Field change = blur.of(part == &TrackPull::east ? changeEast(*cells_, depth_m)
                                                              : changeNorth(*cells_, depth_m));
        for (std::size_t i = 0; i < samples.size(); ++i) {
            pulls_[i].*part =
                isOnTrack(samples, i, settings.drift.reach_m) ? samples[i].at.of(change) : 0.0;
        }
    }
}

/// Lets go of the contours round every sample that the bottom does not know yet: they run as if it
/// were not there.
void BottomDrawer::forgetContours(const std::vector<Sample>& samples,
                                  const BottomSettings& settings, Bottom& bottom) const {
    const int reach = static_cast<int>(std::ceil(settings.blur_m / cells_->cell_m()));
    const int cols = cells_->cols();
    for (std::size_t i = 0; i < samples.size(); ++i) {
        if (misfitOf(samples[i], pulls_[i], bottom, settings) <= 1.0) {
            continue;
        }
        const int place = static_cast<int>(samples[i].at.places.front());
        const int west = std::max(place % cols - reach, 0);
        const int east = std::min(place % cols + reach, cols - 1);
        for (int row = std::max(place / cols - reach, 0);
             row <= std::min(place / cols + reach, cells_->rows() - 1); ++row) {
            for (std::vector<float>* part :
                 {&bottom.lay.contours.xx, &bottom.lay.contours.xy, &bottom.lay.contours.yy}) {
                std::fill(part->begin() + static_cast<std::ptrdiff_t>(cells_->place(west, row)),
                          part->begin() + static_cast<std::ptrdiff_t>(cells_->place(east, row)) + 1,
                          0.0F);
            }
        }
    }
}

void BottomDrawer::assemble(const Field& trend, const std::vector<Sample>& samples,
                            const BottomSettings& settings, const Bottom& before, Pass pass,
                            const base::Progress& progress) {
    const double a = settings.stiffness;
    const double membrane = a / (settings.reach_m * settings.reach_m);
    const double alongContours = pass.goesAlongContours ? a * settings.contourStiffness : 0.0;
    right_.assign(cells_->places(), 0.0);
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
    pullToSamples(trend, samples, settings, before, pass);
    if (progress.stopAsked()) {
        return;
    }
    pullToShore(trend, settings, before);
    if (!progress.stopAsked()) {
        multigrid_.coarsen();
    }
}

void BottomDrawer::pullToSamples(const Field& trend, const std::vector<Sample>& samples,
                                 const BottomSettings& settings, const Bottom& before, Pass pass) {
    std::vector<double> values;
    values.reserve(samples.size());
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const Sample& sample = samples[i];
        const double error_m = errorOf_m(sample, settings);
        const double trusted =
            pass.weighsMisfits
                ? std::min(1.0, 1.0 / std::max(misfitOf(sample, pulls_[i], before, settings), 1e-9))
                : 1.0;
        pulls_[i].weight = sample.soundings * trusted / (error_m * error_m);
        const double drift_m = driftOf_m(pulls_[i], settings);
        addPull(*cells_, sample.at, 0.0,
                1.0 / (1.0 / pulls_[i].weight + driftAlone * drift_m * drift_m),
                multigrid_.finest(), right_);
        values.push_back(sample.depth_m - sample.at.of(trend));
    }
    operator_.tracks().set(samples, std::move(pulls_), settings.drift);
    operator_.tracks().addRight(std::move(values), right_);
}

void BottomDrawer::pullToShore(const Field& trend, const BottomSettings& settings,
                               const Bottom& before) {
    for (std::size_t k = 0; k < shore_.size(); ++k) {
        const ShorePull& shore = shore_[k];
        const double slope = shoreSlopeOf(before.lay.slope[shore.place], wallSlopes_[k]);
        const double error_m = std::hypot(shoreError_m, settings.shoreOffset_m * slope);
        const double weight =
            cells_->cell_m() / (shoreMetresEach * shorePointsPerCell * error_m * error_m);
        for (const Footprint& at : shore.footprints) {
            operator_.addPull(at, weight);
            addPull(*cells_, at, -at.of(trend), weight, multigrid_.finest(), right_);
        }
    }
}

void BottomDrawer::solve(const Field& trend, const std::vector<Sample>& samples,
                         const BottomSettings& settings, Pass pass, Bottom& bottom,
                         const base::Progress& progress) {
    assemble(trend, samples, settings, bottom, pass, progress);
    bottom.lay.slope = {};        // as large as any field, and asked no more
    Field& rest = bottom.depth_m; // for the while of the solution
    cells_->forEach([&](std::size_t p, std::size_t) { rest[p] -= trend[p]; });
    const Ended ended = conjugateGradients(
        *cells_, [&](const Field& x, Field& y) { operator_.multiply(x, y, settings.threads); },
        multigrid_, right_, rest, pass.isLast ? lastTolerance_m : firstTolerance_m, progress);
    right_ = {}; // what follows needs as much for itself
    bottom.iterations += ended.iterations;
    bottom.wasStopped = ended.wasStopped;
    cells_->forEach([&](std::size_t p, std::size_t) { rest[p] += trend[p]; });
}

namespace {

/// After how many of the passes: narrower from one to the next.
double blurAfter_m(const BottomSettings& settings, int passes) {
    return settings.blur_m * std::pow(lastBlur, static_cast<double>(passes) / settings.passes);
}

} // namespace

double firstBlur_m(const BottomSettings& settings) {
    return blurAfter_m(settings, 1);
}

double lastBlur_m(const BottomSettings& settings) {
    return settings.blur_m * lastBlur;
}

Bottom BottomDrawer::draw(const Field& trend, const std::vector<Sample>& samples,
                          const BottomSettings& settings, std::optional<Bottom> start,
                          const base::Progress& progress) {
    const bool isFirst = !start;
    Bottom bottom = start ? std::move(*start) : Bottom();
    bottom.iterations = 0;
    bottom.wasStopped = progress.stopAsked();
    if (bottom.wasStopped) {
        return bottom;
    }
    if (isFirst) {
        bottom.depth_m = trend;
        bottom.lay = layOf(*cells_, trend, settings.blur_m, settings.threads);
    }
    bottom.soundings = soundingsIn(samples);
    wallSlopes_ = wallSlopesOf(shore_, samples);
    for (int pass = isFirst ? 0 : 1; pass < settings.passes; ++pass) {
        if (pass == 0) {
            pulls_.assign(samples.size(), {}); // the slopes are not known yet
        } else {
            takeSlopes(samples, settings, bottom.depth_m);
        }
        solve(trend, samples, settings, {pass > 0, pass > 0, pass + 1 == settings.passes}, bottom,
              progress);
        if (bottom.wasStopped) {
            break;
        }
        bottom.lay = {};
        bottom.lay =
            layOf(*cells_, bottom.depth_m, blurAfter_m(settings, pass + 1), settings.threads);
    }
    return bottom;
}

Bottom BottomDrawer::redraw(const Field& trend, const std::vector<Sample>& samples,
                            const BottomSettings& settings, Bottom before,
                            const base::Progress& progress) {
    Bottom bottom = std::move(before);
    bottom.soundings = soundingsIn(samples);
    bottom.iterations = 0;
    wallSlopes_ = wallSlopesOf(shore_, samples);
    takeSlopes(samples, settings, bottom.depth_m);
    forgetContours(samples, settings, bottom);
    for (const bool isLast : {false, true}) {
        if (isLast) {
            takeSlopes(samples, settings, bottom.depth_m);
        }
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
