// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/trust_calibration.h"

#include "core/geo/nearest_points.h"
#include "core/surface/solver/blur.h"
#include "core/surface/solver/gradient.h"
#include "core/surface/solver/held_out.h"
#include "core/surface/solver/parallel_for.h"

#include <algorithm>
#include <atomic>
#include <cmath>

namespace surface::solver {

namespace {

constexpr double around_m = 40.0;
constexpr double widely_m = 300.0;
constexpr double shareOfWide = 0.5;
/// Soundings from which on a water counts as densely sounded.
constexpr std::size_t dense = 1800;
constexpr double positionError_m = 2.0;
constexpr double noneNear_m = 1e6;
constexpr double floorOfUnevenness = 0.01;
/// However even the bottom is where it was sounded, this may be missed for each metre beyond.
constexpr double unseen = 0.005;
constexpr double quantile = 0.95;
constexpr double sigmas = 1.96; ///< Within which 95 of 100 of a normal distribution lie.
constexpr std::size_t leastObservations = 40;
constexpr int folds = 6;
constexpr std::array<int, 3> stretches{20, 60, 150};
constexpr std::array<double, 8> powersOfDistance{0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 1.0};
constexpr std::array<double, 4> powersOfUnevenness{0.5, 0.75, 1.0, 1.25};

/// How the error would grow for these powers, but for the factor.
double growthOf(const TrustFacts& facts, double ofDistance, double ofUnevenness) {
    return std::pow(std::max(facts.distance_m, 1.0), ofDistance) *
           std::pow(facts.unevenness, ofUnevenness);
}

/// What is left of the error when that of the held-out sounding itself is taken off, at the size
/// that it has in 95 of 100.
double beyondNoise_m(const ErrorGrowth::Observation& o, double soundingError_m) {
    return std::sqrt(std::max(0.0, o.error_m * o.error_m - std::pow(sigmas * soundingError_m, 2) -
                                       std::pow(positionError_m * o.facts.slope, 2)));
}

/// The value that leaves 1 in 20 of what is to come above it.
double upperOf(std::vector<double> values) {
    const auto rank =
        static_cast<std::ptrdiff_t>(std::ceil(quantile * static_cast<double>(values.size() + 1)));
    const auto at = values.begin() + std::min(rank, std::ssize(values)) - 1;
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

/// The distance that nine in ten of the observations keep within, in metres, at least 1.
double farthestOf(const std::vector<ErrorGrowth::Observation>& observations) {
    std::vector<double> distances_m;
    for (const ErrorGrowth::Observation& o : observations) {
        distances_m.push_back(o.facts.distance_m);
    }
    const auto at = distances_m.begin() + std::ssize(distances_m) * 9 / 10;
    std::nth_element(distances_m.begin(), at, distances_m.end());
    return std::max(*at, 1.0);
}

/// Least where 95 of 100 errors lie below their half-widths and these are no wider than need be
/// (Koenker and Bassett 1978, Econometrica 46 (1)).
double pinballLoss(const std::vector<double>& errors_m, const std::vector<double>& growth,
                   double factor) {
    double sum = 0.0;
    for (std::size_t i = 0; i < errors_m.size(); ++i) {
        const double beyond_m = errors_m[i] - factor * growth[i];
        sum += beyond_m > 0.0 ? quantile * beyond_m : (quantile - 1.0) * beyond_m;
    }
    return sum;
}

} // namespace

Field unevennessOf(const ActiveCells& cells, const Field& depth_m, int threads) {
    Gradient gradient = gradientOf(cells, depth_m);
    Field uneven(cells.places(), 0.0);
    cells.forEach([&](std::size_t p, std::size_t) {
        uneven[p] = gradient.east[p] * gradient.east[p] + gradient.north[p] * gradient.north[p];
    });
    const Field& east = gradient.east;
    const Field& north = gradient.north;
    Blur(cells, around_m / 2.0).replace({&gradient.east, &gradient.north, &uneven}, threads);
    cells.forEach([&](std::size_t p, std::size_t) {
        const double scatter =
            std::sqrt(std::max(0.0, uneven[p] - east[p] * east[p] - north[p] * north[p]));
        uneven[p] = std::sqrt(uneven[p]) + 0.5 * scatter + floorOfUnevenness;
    });
    const Field wide = Blur(cells, widely_m / 2.0).of(uneven);
    cells.forEach([&](std::size_t p, std::size_t) {
        uneven[p] = std::max(uneven[p], shareOfWide * wide[p]);
    });
    return uneven;
}

namespace {

/// What was held out against what was drawn without it.
std::vector<ErrorGrowth::Observation>
observationsOf(const Ground& coarse, const geo::Outline& outline,
               std::span<const soundings::KeptSounding> soundings, const Fold& fold,
               const Bottom& bottom) {
    const Field uneven = unevennessOf(coarse.cells, bottom.depth_m, 1);
    std::vector<geo::WaterPoint> kept;
    for (const std::size_t i : fold.kept) {
        kept.push_back({soundings[i].x_m, soundings[i].y_m});
    }
    const geo::NearestPoints nearest(kept);
    std::vector<ErrorGrowth::Observation> observations;
    for (const Sample& sample : samplesOf(coarse, soundings, fold.heldOut)) {
        const auto next = nearest.nearest(sample.point);
        observations.push_back(
            {{knownAt_m(next ? next->distance_m : noneNear_m,
                        outline.distanceToShore_m(sample.point)),
              sample.at.of(uneven), sample.at.of(bottom.lay.slope)},
             std::abs(std::max(0.0, sample.at.of(bottom.depth_m)) - sample.depth_m)});
    }
    return observations;
}

} // namespace

ErrorGrowth ErrorGrowth::from(const std::vector<Observation>& observations,
                              double soundingError_m) {
    TrustCurve growth;
    growth.floor_m = sigmas * soundingError_m * (observations.size() < dense ? 1.0 : 0.5);
    if (observations.size() < leastObservations) {
        return ErrorGrowth(growth);
    }
    std::vector<double> errors_m;
    for (const Observation& o : observations) {
        errors_m.push_back(beyondNoise_m(o, soundingError_m));
    }
    growth.farthest_m = farthestOf(observations);
    double least = INFINITY;
    std::vector<double> shape(observations.size());
    std::vector<double> ratios(observations.size());
    for (const double p : powersOfDistance) {
        for (const double a : powersOfUnevenness) {
            for (std::size_t i = 0; i < observations.size(); ++i) {
                shape[i] = growthOf(observations[i].facts, p, a);
                ratios[i] = errors_m[i] / shape[i];
            }
            const double factor = upperOf(ratios);
            const double loss = pinballLoss(errors_m, shape, factor);
            if (loss < least) {
                least = loss;
                growth.factor = factor;
                growth.ofDistance = p;
                growth.ofUnevenness = a;
            }
        }
    }
    return ErrorGrowth(growth);
}

double ErrorGrowth::halfWidth_m(const TrustFacts& facts) const {
    const double beyond = std::max(facts.distance_m / curve_.farthest_m, 1.0);
    return std::hypot(curve_.floor_m, positionError_m * facts.slope,
                      curve_.factor * growthOf(facts, curve_.ofDistance, curve_.ofUnevenness) *
                              std::pow(beyond, 1.0 - curve_.ofDistance) +
                          unseen * curve_.farthest_m * (beyond - 1.0));
}

std::vector<ErrorGrowth::Observation>
observeErrors(const Ground& coarse, const TrendGround& trendGround, const geo::Outline& outline,
              std::span<const soundings::KeptSounding> soundings,
              std::span<const std::size_t> positions, const BottomSettings& settings,
              base::Progress& progress) {
    const bool isDense = positions.size() >= dense;
    const std::size_t turns = isDense ? stretches.size() : folds;
    std::vector<std::vector<ErrorGrowth::Observation>> ofTurn(turns);
    BottomSettings each = settings;
    each.threads = 1; // on such cells a thread for each turn is worth more
    const auto parts = positions.size() < leastObservations ? 0 : turns;
    std::atomic<bool> wasStopped = false;
    parallelFor(settings.threads, parts, 1, [&](std::size_t first, std::size_t last) {
        BottomDrawer drawer(coarse.cells, shorePullsOf(outline, coarse.cells, coarse.frame()), 1);
        for (std::size_t k = first; k < last; ++k) {
            const Fold fold = foldOf(soundings, positions, isDense ? stretches[k] : 1, folds,
                                     static_cast<int>(isDense ? 2 * k : k));
            const Field trend =
                trendGround.onto(coarse, trendGround.trendFrom(soundings, fold.kept, progress));
            const Bottom bottom = drawer.draw(trend, mergedSamplesOf(coarse, soundings, fold.kept),
                                              each, std::nullopt, progress);
            if (bottom.wasStopped) {
                wasStopped = true;
                return;
            }
            ofTurn[k] = observationsOf(coarse, outline, soundings, fold, bottom);
        }
    });
    std::vector<ErrorGrowth::Observation> observations;
    for (const auto& some : ofTurn) {
        observations.insert(observations.end(), some.begin(), some.end());
    }
    return wasStopped ? std::vector<ErrorGrowth::Observation>() : observations;
}

} // namespace surface::solver
