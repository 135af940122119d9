// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/bottom.h"
#include "core/surface/solver/trend_ground.h"

#include <vector>

namespace surface::solver {

/// How uneven the bottom is around each cell: the scatter of its gradient within 40 m, plus half of
/// its root mean square, plus a floor of 1 %; never below 0.8 of its mean within 300 m, because
/// where nothing was sounded the drawing is smoother than the bottom. Metres per metre.
[[nodiscard]] Field unevennessOf(const ActiveCells& cells, const Field& depth_m);

/// How error grows with the distance to the next thing known: half-width = sqrt((1.96 x sounding
/// error)^2 + (unevenness x f(distance))^2), with half the sounding error on a water that is
/// densely sounded.
class ErrorGrowth {
public:
    /// An error at a place that was held out.
    struct Observation {
        double distance_m;
        double error_m;
        double unevenness;
        double slope; ///< Of the bottom there, metres per metre.
    };
    /// f from the 95 % quantiles of the errors over unevenness by classes of distance, made
    /// monotone, the error of the held-out sounding itself taken off (noise, and a metre of
    /// position on the slope). As the square root before the first class, as the 3/4 power beyond
    /// the last. With fewer than 40 observations a common curve.
    [[nodiscard]] static ErrorGrowth from(std::vector<Observation> observations,
                                          double soundingError_m);

    [[nodiscard]] double halfWidth_m(double distance_m, double unevenness) const;

private:
    struct Knot {
        double distance_m;
        double factor_m;
    };
    std::vector<Knot> knots_;
    double floor_m_ = 0.16; ///< Half-width at a sounding.
};

/// The distance that the trust goes by: to the nearest sounding or, the nearer, half as
/// much again as to the shore and 8 m more.
[[nodiscard]] inline double knownAt_m(double toSounding_m, double toShore_m) {
    return std::min(toSounding_m, 1.5 * std::max(toShore_m, 0.0) + 8.0);
}

/// Draws the water with stretches of 20, 60 and 150 soundings held out, so that all distances
/// occur, and gathers the errors; single soundings in six turns where there are few. Empty where
/// the user stopped it or there are too few soundings.
[[nodiscard]] std::vector<ErrorGrowth::Observation>
observeErrors(const Ground& coarse, const TrendGround& trendGround, const geo::Outline& outline,
              std::span<const soundings::KeptSounding> soundings,
              std::span<const std::size_t> positions, const BottomSettings& settings,
              base::Progress& progress);

} // namespace surface::solver
