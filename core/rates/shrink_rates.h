// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/rates/gamma_prior.h"

#include <span>

namespace rates {

struct ShrinkSettings {
    /// How much groups of one water are thought to differ before looking: scale of the half-normal
    /// prior on the coefficient of variation between them; 0.1 to 3. Half as much again or half as
    /// much is usual.
    double differ = 0.6;
};

struct ShrunkRates {
    MixedPrior prior;            ///< Fitted to all rows: what an untried row gets.
    double between = 0.0;        ///< Expected coefficient of variation between the groups.
    std::vector<Belief> beliefs; ///< One for each tally.
};

/// Draws each rate towards what all have in common, the more the less effort it has. The gamma
/// prior's mean and spread are weighed by their marginal (negative binomial) likelihood over the
/// rows, not set to the most likely one: with few rows that would often be "no difference at all".
/// \return wrongUse for a setting out of range; unusableInput where no row has effort.
[[nodiscard]] base::Result<ShrunkRates>
shrinkRates(std::span<const Tally> rows, const ShrinkSettings& settings, base::Progress& progress);

} // namespace rates
