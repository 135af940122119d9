// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/samples.h"

#include <vector>

namespace surface::solver {

/// How positions drift along a track: the same error for the next sounding, less and less alike the
/// farther the boat goes (an Ornstein-Uhlenbeck process for each axis).
struct PositionDrift {
    double deviation_m = 0.0; ///< Of each axis; 0: positions are exact.
    double reach_m = 35.0;    ///< Along the track, after which errors are alike by 1 / e.
};

/// How much of a sounding is believed, and how the bottom lies where it was made.
struct TrackPull {
    double weight = 0.0;            ///< 1 / (standard error of the depth)^2.
    double east = 0.0, north = 0.0; ///< Gradient of the bottom, metres per metre.
};

/// The pulls of soundings whose positions drift along the track. A sounding at x_i that is off by
/// p_i says z(x_i + p_i) = d_i, to first order z(x_i) + g_i' p_i = d_i. With C the covariance of p
/// and S that of the depths, the p are eliminated: what is left of the energy is
/// (z - d)' N^-1 (z - d), N = S + G C G', where by Woodbury's formula
/// N^-1 = W - W G (C^-1 + G' W G)^-1 G' W, W = S^-1.
/// C^-1 is block tridiagonal with blocks of 2 x 2, as the process has no memory but its last value:
/// time and memory in proportion to the soundings.
class TrackPulls {
public:
    /// Pulls on samples in the order of the track, which must outlive this. Distance alone parts
    /// one pass from the next.
    void set(const std::vector<Sample>& samples, std::vector<TrackPull> pulls,
             const PositionDrift& drift);
    void clear();
    /// y += P' N^-1 P x, with P the footprints.
    void addTimes(const Field& x, Field& y);
    /// right += P' N^-1 values, one for each sample.
    void addRight(std::vector<double> values, Field& right);

private:
    /// Of C^-1 + G' W G after those before it have been eliminated.
    struct Pivot {
        double off = 0.0;                    ///< To the one before, on both axes.
        double xx = 0.0, xy = 0.0, yy = 0.0; ///< Inverse of the block.
    };
    struct Shift {
        double east = 0.0, north = 0.0;
    };
    void factorize(const PositionDrift& drift);
    /// values = N^-1 values.
    void weigh(std::vector<double>& values);
    void spread(const std::vector<double>& values, Field& y) const;

    const std::vector<Sample>* samples_ = nullptr;
    std::vector<TrackPull> pulls_;
    std::vector<Pivot> pivots_;  ///< None where positions are exact.
    std::vector<double> values_; ///< Kept between calls, and so is the next.
    std::vector<Shift> shifts_;
};

} // namespace surface::solver
