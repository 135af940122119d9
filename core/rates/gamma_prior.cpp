// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/gamma_prior.h"

#include "core/rates/chance.h"

#include <cmath>

namespace rates {

double Belief::relativeWidth() const {
    return mean > 0.0 ? std::sqrt(variance) / mean : 0.0;
}

Rate Belief::rate() const {
    if (!(mean > 0.0) || !(variance > 0.0)) {
        return {10.0 * mean, 10.0 * mean, 10.0 * mean};
    }
    const double shape = mean * mean / variance;
    const double scale = variance / mean;
    return {10.0 * mean, 10.0 * scale * gammaQuantile(shape, 0.025),
            10.0 * scale * gammaQuantile(shape, 0.975)};
}

Belief beliefAfter(const GammaPrior& prior, const Tally& tally) {
    const double shape = prior.shape + tally.fish;
    const double rodHours = prior.rodHours + tally.rodHours;
    if (!(rodHours > 0.0)) {
        return {};
    }
    return {shape / rodHours, shape / (rodHours * rodHours)};
}

Belief beliefAfter(const MixedPrior& prior, const Tally& tally) {
    double mean = 0.0;
    double square = 0.0;
    for (const MixedPrior::Part& part : prior.parts) {
        const Belief belief = beliefAfter(part.prior, tally);
        mean += part.weight * belief.mean;
        square += part.weight * (belief.variance + belief.mean * belief.mean);
    }
    return {mean, std::fmax(0.0, square - mean * mean)};
}

} // namespace rates
