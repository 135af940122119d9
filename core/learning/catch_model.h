// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/learning/feature.h"
#include "core/learning/symmetric_matrix.h"

#include <cstdint>
#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace learning {

/// What is expected of one place: the logarithm of its rate, fish per rod-hour, is normal.
struct Expectation {
    double logMean = 0.0;
    double variance = 0.0;

    /// Mean of the rate, fish per rod-hour.
    [[nodiscard]] double rate() const;
    /// Standard deviation of the rate over its mean: large where little was tried.
    [[nodiscard]] double relativeWidth() const;
    /// Lower and upper end of the interval that holds the rate with 80 %, fish per rod-hour.
    [[nodiscard]] std::pair<double, double> interval80() const;
};

/// The rate before anything was caught anywhere, fish per rod-hour: one fish in ten. Ours; it gives
/// way to the log within a few trips and is never shown.
inline constexpr double firstGuess = 0.1;

/// The weights that stays have spoken for, and how sure they are.
///
/// Fish of stay i: Poisson of rod-hours times exp(eta_i), eta = o + theta_0 + sum over groups of
/// value x weight + luck of the day; weights normal round nought, o so that every factor has a
/// prior mean of 1. A generalised linear mixed model (Breslow and Clayton 1993, JASA 88:9); which
/// groups and how large is ours.
class CatchModel {
public:
    using WeightName = std::pair<Group, std::int64_t>;

    /// Of an empty log: every place promises the same.
    CatchModel() = default;
    /// \param names ascending, of the weights from the second on; the first weight is the whole
    /// water's. \param weights, covariance of all of them.
    CatchModel(EffectSizes sizes, std::vector<WeightName> names, std::vector<double> weights,
               SymmetricMatrix covariance);

    /// True where no stay was counted.
    [[nodiscard]] bool isEmpty() const { return weights_.empty(); }
    [[nodiscard]] const EffectSizes& sizes() const { return sizes_; }
    /// Position of a weight among all, from 1 on; nothing where no stay touched it.
    [[nodiscard]] std::optional<std::size_t> positionOf(Group group, std::int64_t key) const;
    [[nodiscard]] std::span<const double> weights() const { return weights_; }
    [[nodiscard]] const SymmetricMatrix& covariance() const { return covariance_; }

    /// On a day of usual luck.
    [[nodiscard]] Expectation expect(const Features& features) const;
    /// Between the logarithms of two places.
    [[nodiscard]] double covarianceOf(const Features& a, const Features& b) const;
    /// Of a place of which nothing is known: the water's mean.
    [[nodiscard]] Expectation mean() const { return expect({}); }
    /// What these features alone multiply the rate by, as a normal logarithm; its rate() is exactly
    /// 1 where no stay touched them.
    [[nodiscard]] Expectation effect(const Features& features) const;
    /// What one part of a place's features multiplies the water's mean by, taken apart: the weights
    /// of another fit may be put in where nothing but they has changed.
    struct Effect {
        double constant = 0.0;
        std::vector<std::pair<std::size_t, double>> touched;

        [[nodiscard]] double log(std::span<const double> weights) const {
            double sum = constant;
            for (const auto& [position, value] : touched) {
                sum += value * weights[position];
            }
            return sum;
        }
    };
    /// Those behind timesOf(): the logarithms.
    [[nodiscard]] std::vector<Effect> effectsOf(std::span<const Features> parts) const;
    /// What each part of a place's features multiplies the water's mean by: their product times
    /// mean().rate() is the rate of expect() of all of them. Exactly 1 where no stay touched a
    /// part. What two parts are only known together is shared by both in equal halves; what a part
    /// shares with the whole water is the part's.
    [[nodiscard]] std::vector<double> timesOf(std::span<const Features> parts) const;

private:
    /// Features as positions among the weights, and what those that nobody touched add to the
    /// variance.
    struct Known {
        std::vector<std::pair<std::size_t, double>> touched;
        double untouchedVariance = 0.0;
    };
    [[nodiscard]] Known known(const Features& features) const;
    [[nodiscard]] Expectation summed(const Known& known, const Features& features) const;

    EffectSizes sizes_;
    std::vector<WeightName> names_;
    std::vector<double> weights_;
    SymmetricMatrix covariance_;
};

} // namespace learning
