// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/factor.h"

namespace marks {

// What the user's weights say of a place, as something added to the logarithm of its expected
// catch. The scales are ours (no source): in trials a strong belief cost more when it was wrong
// than it gained when it was right.

/// Before the log has a stay: 0.4 x weight x (value - 1/2). Nought for the record and for what is
/// less tried, of which nothing is known.
[[nodiscard]] double believedAlone(const Weights& weights, FactorKind kind, double value);

/// Beside a log: 0.2 x (weight over its usual weight - 1, held to 1 either way) x (2 value - 1), so
/// that the usual weights hold nothing against what was caught. The weight of the record says how
/// much the log counts: at nought beliefs count double, at twice the usual not at all. Nought for
/// the record and for what is less tried.
[[nodiscard]] double believedBesideLog(const Weights& weights, FactorKind kind, double value);

/// How much a place that might give more counts for more than it promises: 2 x the slider, and in
/// proportion to the weight of what is less tried (up to double its usual).
[[nodiscard]] double eagernessToTry(double tryNew, const Weights& weights);

} // namespace marks
