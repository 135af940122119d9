// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/beliefs.h"

#include <algorithm>
#include <cmath>

namespace marks {

namespace {

constexpr double aloneScale = 0.4;
constexpr double besideLogScale = 0.2;
constexpr double tryScale = 2.0;

bool isOfTheLog(FactorKind kind) {
    return kind == FactorKind::record || kind == FactorKind::lessTried ||
           kind == FactorKind::windward;
}

/// A weight in units of its usual weight.
double timesUsual(const Weights& weights, FactorKind kind) {
    const double usual = Weights().of(kind);
    return usual > 0.0 ? weights.of(kind) / usual : 0.0;
}

/// From -1, not at all, over 0, as usual, to 1.
double saidOf(const Weights& weights, FactorKind kind) {
    const auto beyondUsual = [&](FactorKind one) {
        return std::clamp(timesUsual(weights, one) - 1.0, -1.0, 1.0);
    };
    return kind == FactorKind::shelter ? std::max({beyondUsual(FactorKind::shelter),
                                                   beyondUsual(FactorKind::windward), 0.0})
                                       : beyondUsual(kind);
}

} // namespace

WaveLiking waveLikingOf(const Weights& weights) {
    WaveLiking liking;
    const double rippled = weights.of(FactorKind::windward);
    liking.weight = rippled + weights.of(FactorKind::shelter);
    if (liking.weight > 0.0) {
        liking.ripple = rippled / liking.weight;
    }
    return liking;
}

double countingWeight(const Weights& weights, FactorKind kind) {
    if (kind == FactorKind::windward) {
        return 0.0;
    }
    return kind == FactorKind::shelter ? waveLikingOf(weights).weight : weights.of(kind);
}

double believedAlone(const Weights& weights, FactorKind kind, double value) {
    return isOfTheLog(kind) ? 0.0 : aloneScale * countingWeight(weights, kind) * (value - 0.5);
}

double takenAlone(double left) {
    return std::log(left) / aloneScale;
}

double believedBesideLog(const Weights& weights, FactorKind kind, double value) {
    if (isOfTheLog(kind) || !(Weights().of(kind) > 0.0)) {
        return 0.0;
    }
    const double said = saidOf(weights, kind);
    const double againstLog = std::clamp(2.0 - timesUsual(weights, FactorKind::record), 0.0, 2.0);
    return besideLogScale * againstLog * said * (2.0 * value - 1.0);
}

double eagernessToTry(double tryNew, const Weights& weights) {
    return tryScale * std::clamp(tryNew, 0.0, 1.0) *
           std::clamp(timesUsual(weights, FactorKind::lessTried), 0.0, 2.0);
}

} // namespace marks
