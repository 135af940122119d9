// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/rate.h"
#include "core/units/moment.h"

#include <map>
#include <span>

namespace rates {

// Fish of one day come together: wind, light and luck are the same for all of them. So days are the
// sample, and not fish: what spans several days scatters by more than chance makes a count scatter.

/// Fish and effort of one row, day by day.
using ByDay = std::map<units::Day, Tally>;

/// How much one day differs from another by what all its fish have in common: the variance of a
/// factor of mean 1. From the scatter of the days within each row, so that rows that differ are no
/// scatter; drawn towards a third, as if twelve days had shown that much (our choice, no source:
/// in simulated seasons of 12 to 60 days it keeps 95 % intervals at 93 to 97 %, with a day effect
/// of a third and without one). 0 or more.
/// Source of the estimate: method of moments, as for a negative binomial (Anscombe 1950, Biometrika
/// 37:358), with the row's own rate fitted.
[[nodiscard]] double dayVariance(std::span<const ByDay> rows);

/// Variance of the fish of these days over their mean: 1 where there is but one day, or where all
/// days are alike. \param perRodHour the rate that is expected.
[[nodiscard]] double dispersionOf(const ByDay& days, double perRodHour, double dayVariance);

/// What fish and effort are worth as independent counts: both divided by the dispersion.
/// Source: quasi-likelihood (Wedderburn 1974, Biometrika 61:439).
[[nodiscard]] Tally worthOf(const Tally& tally, double dispersion);

} // namespace rates
