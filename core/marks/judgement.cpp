// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/judgement.h"

#include "core/base/normal_distribution.h"
#include "core/marks/beliefs.h"
#include "core/rods/rod_settings.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace marks {

namespace {

using base::normal95;
using base::normalBelow;

/// Depths nearer to each other than this, or than this share, are one to an angler.
constexpr double sameDepth_m = 0.5;
constexpr double sameDepth = 0.2;
constexpr double perTen = 10.0;
constexpr double leftOfBest = 0.9;
/// So that a logarithm can be taken of what is out of reach.
constexpr double leastLeft = 1e-6;

/// Takes away what a depth that is not known for sure takes. \return the share that is left.
double takeByTrust(std::vector<Factor>& factors, const MarkInput& input, const Surroundings& around,
                   units::Length halfWidth) {
    double ofBottom = 1.0;
    for (const Factor& factor : factors) {
        ofBottom *= isOfTheBottom(factor.kind) ? factor.times : 1.0;
    }
    const double left = leftByTrust(chanceOfOtherDepth(around.depth, halfWidth),
                                    chanceOfReach(input, around, halfWidth), ofBottom);
    std::ranges::find(factors, FactorKind::trust, &Factor::kind)->times *= left;
    return left;
}

Judgement believedAlone(const MarkInput& input, const Surroundings& around, geo::WaterPoint place,
                        const Plan& plan, const WavesOfDay& waves) {
    Judgement out;
    out.factors = factorsOf(input.ground.limit(), around, plan, waves, std::nullopt);
    for (Factor& factor : out.factors) {
        factor.times = std::exp(believedAlone(plan.weights, factor.kind, factor.value));
    }
    out.leftByTrust = takeByTrust(out.factors, input, around, trustAt(input, around, place));
    out.score = scoreOf(out.factors);
    return out;
}

/// What the log and the beliefs beside it multiply by, filled into the factors.
void multiply(std::vector<Factor>& factors, const std::vector<FeaturePart>& parts,
              const learning::CatchModel& model, const Plan& plan) {
    std::vector<learning::Features> features;
    for (const FeaturePart& part : parts) {
        features.push_back(part.features);
    }
    const std::vector<double> times = model.timesOf(features);
    for (Factor& factor : factors) {
        factor.times = std::exp(believedBesideLog(plan.weights, factor.kind, factor.value));
        const auto part = std::ranges::find(parts, factor.kind, &FeaturePart::kind);
        if (part != parts.end()) {
            factor.times *= times[static_cast<std::size_t>(part - parts.begin())];
        }
    }
}

/// Values and reasons of record and less tried, which stand on what is expected, and the reasons
/// that the log alone speaks of.
void tell(Judgement& judgement, const MarkInput& input, geo::WaterPoint place) {
    const learning::Expectation& here = *judgement.expected;
    const auto [low, high] = here.interval80();
    const LogSays log{{perTen * here.rate(), perTen * low, perTen * high},
                      perTen * input.learned->model.mean().rate(),
                      here.relativeWidth()};
    const auto of = [&](FactorKind kind) -> Factor& {
        return *std::ranges::find(judgement.factors, kind, &Factor::kind);
    };
    of(FactorKind::record).value = recordValue(log);
    of(FactorKind::record).because = recordReason(log);
    of(FactorKind::lessTried).value = lessTriedValue(log);
    of(FactorKind::lessTried).because = lessTriedReason(log);
    of(FactorKind::bottom).because = UnderTheBoat{input.ground.kindAt(place)};
}

} // namespace

units::Length trustAt(const MarkInput& input, const Surroundings& around, geo::WaterPoint place) {
    const grid::Cell c = input.trust_m.frame().cellOf(place);
    if (!input.trust_m.frame().holds(c)) {
        return around.trust;
    }
    const auto here_m = static_cast<double>(input.trust_m[c]);
    return std::isnan(here_m) ? around.trust : units::Length::metres(here_m);
}

bool isOfTheBottom(FactorKind kind) {
    return kind == FactorKind::depth || kind == FactorKind::dropOff ||
           kind == FactorKind::weedEdge || kind == FactorKind::feature ||
           kind == FactorKind::bottom;
}

double chanceOfReach(const MarkInput& input, const Surroundings& around, units::Length halfWidth) {
    return chanceOfDepthBetween(rods::RodSettings().shallowest, input.ground.limit(), around.depth,
                                halfWidth);
}

double leftByTrust(double chanceOfOther, double chanceOfReach, double ofBottom) {
    const double known = std::min(1.0, 1.0 - chanceOfOther + chanceOfOther / ofBottom);
    return std::max(chanceOfReach * known, leastLeft);
}

Circumstances tomorrow(const LearnedCatch& learned, const Surroundings& around, const Plan& plan) {
    return {windwardValue(plan.day, around.riseEast, around.riseNorth), learned.waterTemperature,
            learned.season, learned.hours};
}

double chanceOfOtherDepth(units::Depth depth, units::Length halfWidth) {
    const double half_m = halfWidth.inMetres();
    const double same_m = std::max(sameDepth_m, sameDepth * depth.inMetres());
    if (!std::isfinite(half_m)) {
        return 1.0;
    }
    return half_m > 0.0 ? 2.0 * normalBelow(-same_m * normal95 / half_m) : 0.0;
}

double chanceOfDepthBetween(units::Depth least, units::Depth most, units::Depth depth,
                            units::Length halfWidth) {
    const double above_m = most.inMetres() + sameDepth_m - depth.inMetres();
    const double below_m = least.inMetres() - sameDepth_m - depth.inMetres();
    const double sigma_m = std::max(halfWidth.inMetres(), 1e-6) / normal95;
    if (!std::isfinite(sigma_m)) {
        return above_m >= 0.0 && below_m <= 0.0 ? 1.0 : 0.0;
    }
    return normalBelow(above_m / sigma_m) - normalBelow(below_m / sigma_m);
}

double Judgement::worth(double eagerness) const {
    if (expected) {
        return score * (1.0 + eagerness * toFindOut);
    }
    double sum = 0.0;
    for (const Factor& factor : factors) {
        sum += factor.weight * factor.value;
    }
    return sum + takenAlone(leftByTrust);
}

Judgement judgementOf(const MarkInput& input, const Surroundings& around, geo::WaterPoint place,
                      const Plan& plan, const WavesOfDay& waves, ChosenBy chosenBy) {
    if (input.learned == nullptr || input.learned->model.isEmpty()) {
        return believedAlone(input, around, place, plan, waves);
    }
    const learning::CatchModel& model = input.learned->model;
    const auto parts =
        placeFeaturesOf(input, around, place, tomorrow(*input.learned, around, plan));
    const units::Length halfWidth = trustAt(input, around, place);
    Judgement out;
    out.factors = factorsOf(input.ground.limit(), around, plan, waves, std::nullopt);
    out.factors.push_back({FactorKind::bottom, 0.0, 0.0, {}, 1.0});
    out.factors.push_back({FactorKind::hour, 0.0, 0.0, HoursPlanned{}, 1.0});
    multiply(out.factors, parts, model, plan);
    out.leftByTrust = takeByTrust(out.factors, input, around, halfWidth);
    if (chosenBy == ChosenBy::program) {
        out.factors.push_back({FactorKind::bestOfMany, 0.0, 0.0, BestOfMany{}, leftOfBest});
    }
    out.score = scoreOf(out.factors);
    out.features = joined(parts);
    learning::Expectation here = model.expect(out.features);
    out.toFindOut = here.relativeWidth() * (1.0 - chanceOfOtherDepth(around.depth, halfWidth));
    here.logMean += std::log(out.score * model.mean().rate() / here.rate());
    out.expected = here;
    tell(out, input, place);
    return out;
}

} // namespace marks
