// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/trust_calibration.h"

#include "core/geo/nearest_points.h"
#include "core/surface/solver/blur.h"
#include "core/surface/solver/gradient.h"
#include "core/surface/solver/held_out.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

namespace {

constexpr double around_m = 40.0;
constexpr double widely_m = 300.0;
constexpr double shareOfWide = 0.8;
/// Soundings from which on a water counts as densely sounded.
constexpr std::size_t dense = 1800;
constexpr double positionError_m = 1.0;
constexpr double noneNear_m = 1e6;
constexpr double growthBeyond = 0.75;
constexpr double floorOfUnevenness = 0.01;
constexpr double quantile = 0.95;
constexpr std::size_t leastObservations = 40;
constexpr std::size_t leastInClass = 60;
constexpr int folds = 6;
constexpr std::array<int, 3> stretches{20, 60, 150};

} // namespace

Field unevennessOf(const ActiveCells& cells, const Field& depth_m) {
    const Gradient gradient = gradientOf(cells, depth_m);
    Field squares(cells.places(), 0.0);
    cells.forEach([&](std::size_t p, std::size_t) {
        squares[p] = gradient.east[p] * gradient.east[p] + gradient.north[p] * gradient.north[p];
    });
    const Blur blur(cells, around_m / 2.0);
    const Field east = blur.of(gradient.east);
    const Field north = blur.of(gradient.north);
    Field uneven = blur.of(squares);
    cells.forEach([&](std::size_t p, std::size_t) {
        const double scatter =
            std::sqrt(std::max(0.0, uneven[p] - east[p] * east[p] - north[p] * north[p]));
        uneven[p] = scatter + 0.5 * std::sqrt(uneven[p]) + floorOfUnevenness;
    });
    const Field wide = Blur(cells, widely_m / 2.0).of(uneven);
    cells.forEach([&](std::size_t p, std::size_t) {
        uneven[p] = std::max(uneven[p], shareOfWide * wide[p]);
    });
    return uneven;
}

ErrorGrowth ErrorGrowth::from(std::vector<Observation> observations, double soundingError_m) {
    ErrorGrowth growth;
    growth.floor_m_ = 1.96 * soundingError_m * (observations.size() < dense ? 1.0 : 0.5);
    growth.knots_ = {{0.0, 0.0}};
    if (observations.size() < leastObservations) {
        growth.knots_.push_back({100.0, 60.0});
        return growth;
    }
    std::stable_sort(
        observations.begin(), observations.end(),
        [](const Observation& a, const Observation& b) { return a.distance_m < b.distance_m; });
    const std::size_t classes = std::clamp<std::size_t>(observations.size() / leastInClass, 1, 12);
    std::vector<double> ratios;
    for (std::size_t k = 0; k < classes; ++k) {
        const std::size_t first = k * observations.size() / classes;
        const std::size_t last = (k + 1) * observations.size() / classes;
        ratios.clear();
        double distance_m = 0.0;
        for (std::size_t i = first; i < last; ++i) {
            const Observation& o = observations[i];
            const double beyondNoise = o.error_m * o.error_m - soundingError_m * soundingError_m -
                                       std::pow(positionError_m * o.slope, 2);
            ratios.push_back(std::sqrt(std::max(0.0, beyondNoise)) / o.unevenness);
            distance_m += o.distance_m / static_cast<double>(last - first);
        }
        // the rank that leaves 1 in 20 of what is to come above it, too
        const auto rank = static_cast<std::ptrdiff_t>(
            std::ceil(quantile * static_cast<double>(ratios.size() + 1)));
        const auto at = ratios.begin() + std::min(rank, std::ssize(ratios)) - 1;
        std::nth_element(ratios.begin(), at, ratios.end());
        growth.knots_.push_back({distance_m, std::max(*at, growth.knots_.back().factor_m)});
    }
    return growth;
}

double ErrorGrowth::halfWidth_m(double distance_m, double unevenness) const {
    double factor_m = 0.0;
    const Knot& last = knots_.back();
    if (distance_m >= last.distance_m) {
        factor_m =
            last.factor_m * std::pow(distance_m / std::max(last.distance_m, 1.0), growthBeyond);
    } else if (distance_m < knots_[1].distance_m) {
        factor_m = knots_[1].factor_m * std::sqrt(distance_m / knots_[1].distance_m);
    } else {
        const auto next = std::find_if(knots_.begin(), knots_.end(), [&](const Knot& knot) {
            return knot.distance_m > distance_m;
        });
        const Knot& before = *std::prev(next);
        const double share =
            (distance_m - before.distance_m) / (next->distance_m - before.distance_m);
        factor_m = before.factor_m + share * (next->factor_m - before.factor_m);
    }
    return std::hypot(floor_m_, unevenness * factor_m);
}

std::vector<ErrorGrowth::Observation>
observeErrors(const Ground& coarse, const TrendGround& trendGround, const geo::Outline& outline,
              std::span<const soundings::KeptSounding> soundings,
              std::span<const std::size_t> positions, const BottomSettings& settings,
              base::Progress& progress) {
    std::vector<ErrorGrowth::Observation> observations;
    if (positions.size() < leastObservations) {
        return observations;
    }
    BottomDrawer drawer(coarse.cells, shorePullsOf(outline, coarse.cells, coarse.frame()),
                        settings.threads);
    const bool isDense = positions.size() >= dense;
    const std::size_t turns = isDense ? stretches.size() : folds;
    for (std::size_t k = 0; k < turns; ++k) {
        const Fold fold = foldOf(soundings, positions, isDense ? stretches[k] : 1, folds,
                                 static_cast<int>(isDense ? 2 * k : k));
        const Field trend =
            trendGround.onto(coarse, trendGround.trendFrom(soundings, fold.kept, progress));
        const Bottom bottom = drawer.draw(trend, samplesOf(coarse, soundings, fold.kept), settings,
                                          nullptr, progress);
        if (bottom.wasStopped) {
            return {};
        }
        const Field uneven = unevennessOf(coarse.cells, bottom.depth_m);
        std::vector<geo::WaterPoint> kept;
        for (const std::size_t i : fold.kept) {
            kept.push_back({soundings[i].x_m, soundings[i].y_m});
        }
        const geo::NearestPoints nearest(kept);
        for (const Sample& sample : samplesOf(coarse, soundings, fold.heldOut)) {
            const auto next = nearest.nearest(sample.point);
            observations.push_back(
                {knownAt_m(next ? next->distance_m : noneNear_m,
                           outline.distanceToShore_m(sample.point)),
                 std::abs(std::max(0.0, sample.at.of(bottom.depth_m)) - sample.depth_m),
                 sample.at.of(uneven), sample.at.of(bottom.lay.slope)});
        }
        progress.tell(static_cast<double>(k + 1) / static_cast<double>(turns + 1));
    }
    return observations;
}

} // namespace surface::solver
