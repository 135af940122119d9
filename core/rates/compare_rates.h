// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/rates/rate.h"

#include <span>

namespace rates {

/// The rate of one tally over that of another.
struct Comparison {
    std::optional<double> ratio; ///< Nothing where the second has no fish.
    double low = 0.0;            ///< 95 %.
    std::optional<double> high;  ///< Nothing where there is no upper limit.
    double p = 1.0;              ///< Central: twice the smaller tail, at most 1.
};

/// Exact test given the sum of fish: fish of the first ~ Binomial(sum, its share of the effort).
/// The central p is used, because it alone agrees with the interval (Fay 2010, R Journal 2:53).
/// Of counts that scatter by more than chance, what they are worth is to be given (worthOf()).
/// \return unusableInput where either has no effort.
[[nodiscard]] base::Result<Comparison> compareRates(const Tally& first, const Tally& second);

/// p values made safe for looking at all of them at once, in the order given.
/// Source: Holm 1979, Scand. J. Statistics 6:65.
[[nodiscard]] std::vector<double> adjustedByHolm(std::span<const double> p);

} // namespace rates
