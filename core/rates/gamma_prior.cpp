// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/gamma_prior.h"

#include "core/rates/chance.h"

#include <boost/math/tools/roots.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
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

namespace {

/// Gamma posteriors, each with its weight.
class Mixture {
public:
    Mixture(const MixedPrior& prior, const Tally& tally) {
        constexpr double negligible = 1e-3;
        for (const MixedPrior::Part& part : prior.parts) {
            if (part.weight >= negligible) {
                parts_.push_back({part.prior.shape + tally.fish,
                                  part.prior.rodHours + tally.rodHours, part.weight});
                sum_ += part.weight;
            }
        }
    }

    /// The rate below which the share `p` lies. It lies between the least and the greatest of the
    /// parts' own.
    [[nodiscard]] double quantile(double p) const {
        double low = HUGE_VAL;
        double high = 0.0;
        for (const Part& part : parts_) {
            const double own = gammaQuantile(part.shape, p) / part.rodHours;
            low = std::min(low, own);
            high = std::max(high, own);
        }
        if (!(low < high)) {
            return parts_.empty() ? 0.0 : high;
        }
        const auto off = [&](double rate) { return below(rate) - p; };
        constexpr int bits = 20;
        std::uintmax_t most = 60;
        const auto found = boost::math::tools::toms748_solve(
            off, low, high, boost::math::tools::eps_tolerance<double>(bits), most);
        return 0.5 * (found.first + found.second);
    }

private:
    struct Part {
        double shape;
        double rodHours;
        double weight;
    };

    [[nodiscard]] double below(double rate) const {
        double chance = 0.0;
        for (const Part& part : parts_) {
            chance += part.weight * gammaBelow(part.shape, rate * part.rodHours);
        }
        return chance / sum_;
    }

    std::vector<Part> parts_;
    double sum_ = 0.0;
};

} // namespace

Rate rateAfter(const MixedPrior& prior, const Tally& tally) {
    constexpr double tail = 0.025;
    const Mixture mixture(prior, tally);
    return {10.0 * beliefAfter(prior, tally).mean, 10.0 * mixture.quantile(tail),
            10.0 * mixture.quantile(1.0 - tail)};
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
