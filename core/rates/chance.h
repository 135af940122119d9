// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace rates {

/// Value below which a gamma variable of scale 1 falls with chance `p`. Zero for a shape that is
/// not positive. \param p above 0 and below 1.
[[nodiscard]] double gammaQuantile(double shape, double p);

/// Chance that a gamma variable of scale 1 is below `x`, which is not negative; `shape` positive.
[[nodiscard]] double gammaBelow(double shape, double x);

/// Value below which a beta variable falls with chance `p`. 0 where a is not positive, 1 where b is
/// not. \param p above 0 and below 1.
[[nodiscard]] double betaQuantile(double a, double b, double p);

/// Chance of at most `most` hits in `tries` that each hit with chance `share`. Numbers need not be
/// whole: the beta function that the sum comes to knows what lies between.
[[nodiscard]] double binomialAtMost(double most, double tries, double share);
/// Chance of at least `least` hits, exact where it is tiny too.
[[nodiscard]] double binomialAtLeast(double least, double tries, double share);

/// Natural logarithm of the gamma function of a positive number.
[[nodiscard]] double logGamma(double x);

/// 95 % limits of the mean of a Poisson count.
struct CountLimits {
    double low = 0.0;
    double high = 0.0;
};

/// Exact limits (Garwood 1936, Biometrika 28:437): quantiles of chi-squared with 2 n and 2 n + 2
/// degrees of freedom, halved. \param count not negative; it need not be whole.
[[nodiscard]] CountLimits countLimits(double count);

} // namespace rates
