// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/prospect.h"

#include "core/marks/beliefs.h"
#include "core/marks/factor_values.h"
#include "core/marks/judgement.h"
#include "core/marks/place_features.h"
#include "core/marks/winds_of_day.h"

#include <array>
#include <cmath>

namespace marks {

Prospect::Prospect(const MarkInput& input, const LookedAt& at, const Plan& plan) {
    for (const Factor& factor :
         factorsOf(input.ground.limit(), at.around, plan, std::nullopt, std::nullopt)) {
        if (factor.kind != FactorKind::shelter) {
            values_.emplace_back(factor.kind, factor.value);
        }
    }
    takeWaves(input, at.place, plan.day);
    const units::Length halfWidth = trustAt(input, at.around, at.place);
    ofOtherDepth_ = chanceOfOtherDepth(at.around.depth, halfWidth);
    withinReach_ = chanceOfReach(input, at.around, halfWidth);
    if (input.learned == nullptr || input.learned->model.isEmpty()) {
        return;
    }
    const learning::CatchModel& model = input.learned->model;
    const auto parts =
        placeFeaturesOf(input, at.around, at.place, tomorrow(*input.learned, at.around, plan));
    std::vector<learning::Features> features;
    for (const FeaturePart& part : parts) {
        features.push_back(part.features);
    }
    auto effects = model.effectsOf(features);
    for (std::size_t k = 0; k < parts.size(); ++k) {
        parts_.push_back({parts[k].kind, std::move(effects[k])});
    }
    toFindOut_ = model.expect(joined(parts)).relativeWidth() * (1.0 - ofOtherDepth_);
}

void Prospect::takeWaves(const MarkInput& input, geo::WaterPoint place, const ExpectedDay& day) {
    if (!input.wavesNear) {
        return;
    }
    const WavesOfDay near = input.wavesNear(place);
    const auto winds = windsOf(day);
    const std::array of{near.first, near.later};
    for (std::size_t k = 0; k < winds.size(); ++k) {
        waves_.emplace_back(winds[k].share, of[k] ? std::optional(of[k]->height) : std::nullopt);
    }
}

std::optional<double> Prospect::likedWaves(const Weights& weights) const {
    if (waves_.empty()) {
        return std::nullopt;
    }
    const double ripple = waveLikingOf(weights).ripple;
    double value = 0.0;
    for (const auto& [share, height] : waves_) {
        value += share * (height ? waveValue(*height, ripple) : waveOfUnknownWind);
    }
    return value;
}

double Prospect::worth(const learning::CatchModel* model, const Weights& weights,
                       double eagerness) const {
    if (model != nullptr && !parts_.empty()) {
        return worthByLog(*model, weights, eagerness);
    }
    double sum = 0.0;
    double ofBottom = 0.0;
    for (const auto& [kind, value] : values_) {
        sum += countingWeight(weights, kind) * value;
        ofBottom += isOfTheBottom(kind) ? believedAlone(weights, kind, value) : 0.0;
    }
    sum += takenAlone(leftByTrust(ofOtherDepth_, withinReach_, std::exp(ofBottom)));
    const auto liked = likedWaves(weights);
    return liked ? sum + countingWeight(weights, FactorKind::shelter) * *liked : sum;
}

double Prospect::worthByLog(const learning::CatchModel& model, const Weights& weights,
                            double eagerness) const {
    double believed = 0.0;
    double believedOfBottom = 0.0;
    for (const auto& [kind, value] : values_) {
        const double one = believedBesideLog(weights, kind, value);
        believed += one;
        believedOfBottom += isOfTheBottom(kind) ? one : 0.0;
    }
    if (const auto liked = likedWaves(weights)) {
        believed += believedBesideLog(weights, FactorKind::shelter, *liked);
    }
    double log = 0.0;
    double logOfBottom = 0.0;
    for (const Part& part : parts_) {
        const double one = part.effect.log(model.weights());
        log += one;
        logOfBottom += isOfTheBottom(part.kind) ? one : 0.0;
    }
    return std::exp(log + believed) *
           leftByTrust(ofOtherDepth_, withinReach_, std::exp(logOfBottom + believedOfBottom)) *
           (1.0 + eagerness * toFindOut_);
}

} // namespace marks
