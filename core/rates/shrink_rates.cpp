// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/shrink_rates.h"

#include "core/rates/chance.h"

#include <algorithm>
#include <cmath>

namespace rates {

namespace {

constexpr int spreadNodes = 24;
constexpr double spreadReach = 3.0; // in scales of the half-normal prior
constexpr int meanNodes = 41;
constexpr double meanReach = 3.5; // in standard deviations of the logarithm
constexpr double meanMayDiffer =
    0.4; // of the groups' mean from the rate of all together, logarithm
constexpr double negligible = 1e-7;

bool hasEffort(const Tally& tally) {
    return tally.rodHours > 0.0;
}

/// Logarithm of the chance of these counts, up to what no prior changes (negative binomial).
double logLikelihood(std::span<const Tally> rows, const GammaPrior& prior) {
    double sum = 0.0;
    const double logGammaOfShape = logGamma(prior.shape);
    for (const Tally& row : rows) {
        if (hasEffort(row)) {
            sum += logGamma(prior.shape + row.fish) - logGammaOfShape -
                   prior.shape * std::log1p(row.rodHours / prior.rodHours) -
                   row.fish * std::log(prior.rodHours + row.rodHours);
        }
    }
    return sum;
}

Tally sumOf(std::span<const Tally> rows) {
    Tally sum;
    for (const Tally& row : rows) {
        if (hasEffort(row)) {
            sum.fish += row.fish;
            sum.rodHours += row.rodHours;
        }
    }
    return sum;
}

/// A prior and the logarithm of its weight, not yet scaled.
struct Candidate {
    GammaPrior prior;
    double spread;
    double logWeight;
};

/// Priors over a grid of the coefficient of variation between groups (half-normal) and of their
/// mean (log-normal round the rate of all together, since the groups make up the whole), each
/// weighed by the likelihood of the rows.
std::vector<Candidate> candidates(std::span<const Tally> rows, double differ) {
    const Tally sum = sumOf(rows);
    const double middle = std::log((sum.fish + 1.0) / sum.rodHours);
    // Wider than what chance makes of the sum: the likelihood, not the prior, is to say it.
    const double deviation = std::hypot(meanMayDiffer, 1.5 / std::sqrt(sum.fish + 1.0));
    std::vector<Candidate> out;
    for (int i = 0; i < spreadNodes; ++i) {
        const double spread = (i + 0.5) / spreadNodes * spreadReach * differ;
        const double shape = 1.0 / (spread * spread);
        for (int k = 0; k < meanNodes; ++k) {
            const double off = meanReach * (2.0 * k / (meanNodes - 1) - 1.0);
            const GammaPrior prior{shape, shape / std::exp(middle + off * deviation)};
            const double logPrior = -0.5 * (spread / differ) * (spread / differ) - 0.5 * off * off;
            out.push_back({prior, spread, logPrior + logLikelihood(rows, prior)});
        }
    }
    return out;
}

} // namespace

base::Result<ShrunkRates> shrinkRates(std::span<const Tally> rows, const ShrinkSettings& settings,
                                      base::Progress& progress) {
    if (!(settings.differ >= 0.1 && settings.differ <= 3.0)) {
        return base::fail(base::ErrorKind::wrongUse,
                          "how much groups are thought to differ is out of its range", "",
                          "set it between 0.1 and 3");
    }
    if (std::ranges::none_of(rows, hasEffort)) {
        return base::fail(base::ErrorKind::unusableInput, "nothing has been fished yet", "",
                          "enter a stay first");
    }
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    const std::vector<Candidate> all = candidates(rows, settings.differ);
    const double best = std::ranges::max(all, {}, &Candidate::logWeight).logWeight;
    ShrunkRates out;
    double sum = 0.0;
    for (const Candidate& candidate : all) {
        const double weight = std::exp(candidate.logWeight - best);
        if (weight > negligible) {
            out.prior.parts.push_back({candidate.prior, weight});
            out.between += weight * candidate.spread;
            sum += weight;
        }
    }
    for (MixedPrior::Part& part : out.prior.parts) {
        part.weight /= sum;
    }
    out.between /= sum;
    for (const Tally& row : rows) {
        out.beliefs.push_back(beliefAfter(out.prior, hasEffort(row) ? row : Tally{}));
    }
    return out;
}

} // namespace rates
