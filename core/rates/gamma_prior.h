// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/rate.h"

#include <vector>

namespace rates {

/// What is held of a group's rate before its own fish are counted: a gamma distribution, worth
/// `shape` fish in `rodHours`.
struct GammaPrior {
    double shape = 0.0;
    double rodHours = 0.0;
};

/// Mean and spread of a rate, fish per rod-hour.
struct Belief {
    double mean = 0.0;
    double variance = 0.0;
    /// Standard deviation over mean; the less-tried measure. Zero for a mean of zero.
    [[nodiscard]] double relativeWidth() const;
    /// Per 10 rod-hours, with the 95 % interval of the gamma of this mean and variance.
    [[nodiscard]] Rate rate() const;
};

/// The belief after `tally`: Gamma(shape + fish, rodHours + rodHours). Source: Clayton and Kaldor
/// 1987, Biometrics 43:671.
[[nodiscard]] Belief beliefAfter(const GammaPrior& prior, const Tally& tally);

/// Several priors, each with its weight (sum 1): how much groups differ is itself uncertain.
struct MixedPrior {
    struct Part {
        GammaPrior prior;
        double weight = 0.0;
    };
    std::vector<Part> parts;
};

/// Exact mean and variance over the parts.
[[nodiscard]] Belief beliefAfter(const MixedPrior& prior, const Tally& tally);

/// The mean over the parts, per 10 rod-hours, with the 95 % interval of the mixture itself: it is
/// skewed and heavy-tailed, and a gamma of its mean and variance would be too narrow. Parts of less
/// than a thousandth of the weight are passed over.
[[nodiscard]] Rate rateAfter(const MixedPrior& prior, const Tally& tally);

} // namespace rates
