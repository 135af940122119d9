// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/learning/catch_model.h"

#include <algorithm>
#include <cmath>

namespace learning {

namespace {

/// Of the normal distribution, 90 %.
constexpr double quantile90 = 1.2815515655446004;
/// The sizes of the effects are put in as if they were known, which makes what is said look surer
/// than it is (ours, from trials).
constexpr double wider = 1.15;
/// Beyond this the width of the lognormal says nothing more and would run away.
constexpr double mostVariance = 4.0;

} // namespace

double Expectation::rate() const {
    return std::exp(logMean + 0.5 * variance);
}

double Expectation::relativeWidth() const {
    return std::sqrt(std::expm1(std::clamp(variance, 0.0, mostVariance)));
}

std::pair<double, double> Expectation::interval80() const {
    const double half = quantile90 * wider * std::sqrt(std::max(variance, 0.0));
    return {std::exp(logMean - half), std::exp(logMean + half)};
}

CatchModel::CatchModel(EffectSizes sizes, std::vector<WeightName> names,
                       std::vector<double> weights, SymmetricMatrix covariance)
    : sizes_(sizes), names_(std::move(names)), weights_(std::move(weights)),
      covariance_(std::move(covariance)) {}

std::optional<std::size_t> CatchModel::positionOf(Group group, std::int64_t key) const {
    const WeightName name{group, key};
    const auto found = std::ranges::lower_bound(names_, name);
    if (found == names_.end() || *found != name) {
        return std::nullopt;
    }
    return static_cast<std::size_t>(found - names_.begin()) + 1;
}

CatchModel::Known CatchModel::known(const Features& features) const {
    Known out;
    out.touched.reserve(features.size() + 1);
    for (const Feature& one : features) {
        if (const auto position = positionOf(one.group, one.key)) {
            out.touched.emplace_back(*position, one.value);
        } else {
            out.untouchedVariance +=
                sizes_.of(one.group) * sizes_.of(one.group) * one.value * one.value;
        }
    }
    return out;
}

Expectation CatchModel::summed(const Known& known, const Features& features) const {
    Expectation out{-0.5 * sizes_.priorVarianceOf(features), known.untouchedVariance};
    for (const auto& [i, a] : known.touched) {
        out.logMean += a * weights_[i];
        const double* row = covariance_.row(i);
        double sum = 0.0;
        for (const auto& [j, b] : known.touched) {
            sum += b * row[j];
        }
        out.variance += a * sum;
    }
    return out;
}

Expectation CatchModel::expect(const Features& features) const {
    Known all = known(features);
    constexpr double base = EffectSizes::base() * EffectSizes::base();
    if (isEmpty()) {
        all.untouchedVariance += base;
    } else {
        all.touched.emplace_back(0, 1.0);
    }
    Expectation out = summed(all, features);
    out.logMean += std::log(firstGuess) - 0.5 * base;
    return out;
}

double CatchModel::covarianceOf(const Features& a, const Features& b) const {
    Known one = known(a);
    Known other = known(b);
    double sum = 0.0;
    if (isEmpty()) {
        sum += EffectSizes::base() * EffectSizes::base();
    } else {
        one.touched.emplace_back(0, 1.0);
        other.touched.emplace_back(0, 1.0);
    }
    for (const auto& [i, x] : one.touched) {
        const double* row = covariance_.row(i);
        for (const auto& [j, y] : other.touched) {
            sum += x * y * row[j];
        }
    }
    for (const Feature& x : a) {
        for (const Feature& y : b) {
            if (x.group == y.group && x.key == y.key && !positionOf(x.group, x.key)) {
                sum += sizes_.of(x.group) * sizes_.of(x.group) * x.value * y.value;
            }
        }
    }
    return sum;
}

Expectation CatchModel::effect(const Features& features) const {
    return summed(known(features), features);
}

std::vector<CatchModel::Effect> CatchModel::effectsOf(std::span<const Features> parts) const {
    std::vector<Effect> effects;
    std::vector<std::pair<std::size_t, double>> all;
    for (const Features& part : parts) {
        Known known = this->known(part);
        all.insert(all.end(), known.touched.begin(), known.touched.end());
        effects.push_back({0.5 * (known.untouchedVariance - sizes_.priorVarianceOf(part)),
                           std::move(known.touched)});
    }
    for (Effect& effect : effects) {
        for (const auto& [i, a] : effect.touched) {
            const double* row = covariance_.row(i);
            double shared = 2.0 * row[0];
            for (const auto& [j, b] : all) {
                shared += b * row[j];
            }
            effect.constant += 0.5 * a * shared;
        }
    }
    return effects;
}

std::vector<double> CatchModel::timesOf(std::span<const Features> parts) const {
    std::vector<double> times;
    for (const Effect& effect : effectsOf(parts)) {
        times.push_back(std::exp(effect.log(weights_)));
    }
    return times;
}

} // namespace learning
