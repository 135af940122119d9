// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/factor.h"

namespace marks {

// What the user's weights say of a place, as something added to the logarithm of its expected
// catch. The scales are ours (no source): in trials a strong belief cost more when it was wrong
// than it gained when it was right.

/// How the user likes the water that he lies on. Two weights speak of it, and make one curve: their
/// balance says where it peaks, and their sum how much it counts.
struct WaveLiking {
    /// From 0, as calm as can be, to 1, well rippled: the share of windward in the sum of windward
    /// and shelter; a half where both are nought.
    double ripple = 0.5;
    double weight = 0.0; ///< Their sum.
};
[[nodiscard]] WaveLiking waveLikingOf(const Weights& weights);

/// What a factor's value counts with where there is no log: its weight; for shelter, which stands
/// for the waves, the weight of WaveLiking; nought for windward, of which the log alone tells.
[[nodiscard]] double countingWeight(const Weights& weights, FactorKind kind);

/// Before the log has a stay: 0.4 x counting weight x (value - 1/2). Nought for the record and for
/// what is less tried, of which nothing is known.
[[nodiscard]] double believedAlone(const Weights& weights, FactorKind kind, double value);

/// What a share that is left of a place takes off the sum of weights times values, by which places
/// are ordered where there is no log, so that the sum still orders them as the product does: its
/// logarithm over 0.4.
[[nodiscard]] double takenAlone(double left);

/// Beside a log: 0.2 x (weight over its usual weight - 1, held to 1 either way) x (2 value - 1), so
/// that the usual weights hold nothing against what was caught. The weight of the record says how
/// much the log counts: at nought beliefs count double, at twice the usual not at all. Of the waves
/// the stronger of both weights counts in this way, and never below nought: who weighs neither
/// likes no height best. Nought for windward, for the record and for what is less tried.
[[nodiscard]] double believedBesideLog(const Weights& weights, FactorKind kind, double value);

/// How much a place that might give more counts for more than it promises: 2 x the slider, and in
/// proportion to the weight of what is less tried (up to double its usual).
[[nodiscard]] double eagernessToTry(double tryNew, const Weights& weights);

} // namespace marks
