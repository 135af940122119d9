// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/bottom.h"
#include "core/surface/solver/trend_ground.h"
#include "core/surface/trust_curve.h"

#include <algorithm>
#include <vector>

namespace surface::solver {

/// How uneven the bottom is around each cell: the root mean square of its gradient within 40 m,
/// plus half of the gradient's scatter there, plus a floor of 1 %; never below half of its mean
/// within 300 m, because where nothing was sounded the drawing is smoother than the bottom. Metres
/// per metre.
[[nodiscard]] Field unevennessOf(const ActiveCells& cells, const Field& depth_m, int threads);

/// What the half-width of a place goes by.
struct TrustFacts {
    double distance_m = 0.0; ///< See knownAt_m().
    double unevenness = 0.0;
    double slope = 0.0; ///< Of the bottom there, metres per metre.
};

/// How error grows with the distance to the next thing known:
/// half-width^2 = (1.96 x sounding error)^2 + (2 m x slope)^2 + (c x distance^p x unevenness^a)^2.
/// The first counts half on a water that is densely sounded, where many soundings share a cell; the
/// second is for positions that are off by a metre or two.
class ErrorGrowth {
public:
    /// An error at a place that was held out.
    struct Observation {
        TrustFacts facts;
        double error_m = 0.0;
    };
    /// p of 0.2 to 1 and a of 0.5 to 1.25 by the least pinball loss at 0.95, c so that 95 of 100
    /// errors lie below, the error of the held-out soundings themselves taken off: one curve for
    /// all distances, where quantiles by classes of distance would each be a matter of few
    /// soundings. In proportion to the distance, and half a percent of it more, beyond what nine in
    /// ten were held out at: nobody knows. With fewer than 40 observations a common curve.
    [[nodiscard]] static ErrorGrowth from(const std::vector<Observation>& observations,
                                          double soundingError_m);

    explicit ErrorGrowth(const TrustCurve& curve) : curve_(curve) {}

    [[nodiscard]] double halfWidth_m(const TrustFacts& facts) const;
    [[nodiscard]] const TrustCurve& curve() const { return curve_; }

private:
    TrustCurve curve_;
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
