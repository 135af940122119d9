// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/factor_values.h"

#include "core/marks/beliefs.h"
#include "core/marks/winds_of_day.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace marks {

namespace {

constexpr double featureShare = 0.1;
constexpr double steepEnough = 0.05;
constexpr double halfWind_m_s = 3.0;
constexpr double uneasyWave_m = 0.25;
constexpr double bestRipple_m = 0.2;
constexpr double halfTrust_m = 0.5;
constexpr double unknown = 0.5;
constexpr double noMatter_m_s = 0.05;

WindReason windwardReason(const logbook::Wind& wind, const Surroundings& around) {
    using Way = WindOnSlope::Way;
    if (wind.speed && wind.speed->inMetresPerSecond() < noMatter_m_s) {
        return NoWind{};
    }
    if (!wind.speed || !wind.from) {
        return WindNotKnown{};
    }
    const double v = windUpSlope(wind, around.riseEast, around.riseNorth).inMetresPerSecond();
    const Way way = std::fabs(v) < noMatter_m_s ? Way::neither : v > 0.0 ? Way::up : Way::down;
    return WindOnSlope{*wind.speed, way, std::hypot(around.riseEast, around.riseNorth)};
}

Reason oneOrBoth(const std::vector<WindOfHours>& winds, const WindReason& first,
                 const WindReason& last) {
    if (winds.size() > 1) {
        return InTwoWinds{winds.back().from, first, last};
    }
    return std::visit([](const auto& reason) { return Reason(reason); }, first);
}

WindReason waveReason(const std::optional<WaveState>& waves) {
    return waves ? WindReason(*waves) : WindReason(WavesNotKnown{});
}

Reason trustReason(units::Length halfWidth) {
    return std::isfinite(halfWidth.inMetres()) ? DepthsKnownTo{halfWidth} : DepthsKnownTo{};
}

} // namespace

double depthValue(double fishableShare) {
    return std::clamp(fishableShare, 0.0, 1.0);
}

double edgeValue(double edge_m, units::Length cast) {
    return 1.0 - std::exp(-std::max(edge_m, 0.0) / cast.inMetres());
}

double featureValue(double area_m2, units::Length cast) {
    const double circle_m2 = std::numbers::pi * cast.inMetres() * cast.inMetres();
    return 1.0 - std::exp(-std::max(area_m2, 0.0) / (featureShare * circle_m2));
}

double windwardValue(units::Speed upSlope) {
    const double v = upSlope.inMetresPerSecond();
    return 0.5 * (1.0 + v / (std::fabs(v) + halfWind_m_s));
}

units::Speed windUpSlope(const logbook::Wind& wind, double riseEast, double riseNorth) {
    const double slope = std::hypot(riseEast, riseNorth);
    if (!(slope > 0.0) || !wind.from || !wind.speed) {
        return {};
    }
    const units::Bearing goes = wind.from->opposite();
    const double cosine = (goes.east() * riseEast + goes.north() * riseNorth) / slope;
    return *wind.speed * (cosine * std::min(1.0, slope / steepEnough));
}

double windwardValue(const ExpectedDay& day, double riseEast, double riseNorth) {
    double value = 0.0;
    for (const WindOfHours& part : windsOf(day)) {
        value += part.share * windwardValue(windUpSlope(part.wind, riseEast, riseNorth));
    }
    return value;
}

units::Length bestWaves(double ripple) {
    return units::Length::metres(std::clamp(ripple, 0.0, 1.0) * bestRipple_m);
}

double waveValue(units::Length waveHeight, double ripple) {
    const double width_m = (1.0 - 0.5 * std::clamp(ripple, 0.0, 1.0)) * uneasyWave_m;
    const double h =
        (std::max(waveHeight.inMetres(), 0.0) - bestWaves(ripple).inMetres()) / width_m;
    return 1.0 / (1.0 + h * h);
}

std::optional<double> waveValue(const ExpectedDay& day, const WavesOfDay& waves, double ripple) {
    const auto winds = windsOf(day);
    const std::array of{waves.first, waves.later};
    double value = 0.0;
    for (std::size_t k = 0; k < winds.size(); ++k) {
        if (!of[k] && winds[k].wind.speed) {
            return std::nullopt;
        }
        value += winds[k].share * (of[k] ? waveValue(of[k]->height, ripple) : waveOfUnknownWind);
    }
    return value;
}

double recordValue(const std::optional<LogSays>& log) {
    if (!log) {
        return unknown;
    }
    const double sum = log->here.per10RodHours + log->meanPer10RodHours;
    return sum > 0.0 ? log->here.per10RodHours / sum : unknown;
}

double lessTriedValue(const std::optional<LogSays>& log) {
    if (!log) {
        return 1.0;
    }
    const double c = std::max(log->relativeWidth, 0.0);
    return c / (1.0 + c);
}

double trustValue(units::Length halfWidth) {
    const double t = halfWidth.inMetres() / halfTrust_m;
    return std::isfinite(t) ? 1.0 / (1.0 + t * t) : 0.0;
}

Reason recordReason(const std::optional<LogSays>& log) {
    if (!log) {
        return LogIsSilent{};
    }
    return CatchHere{log->here.per10RodHours, log->meanPer10RodHours};
}

Reason lessTriedReason(const std::optional<LogSays>& log) {
    if (!log) {
        return NeverTried{};
    }
    return RateBetween{log->here.low, log->here.high};
}

std::vector<Factor> factorsOf(units::Depth limit, const Surroundings& around, const Plan& plan,
                              const WavesOfDay& waves, const std::optional<LogSays>& log) {
    using units::Length;
    const Length cast = plan.tackle.cast;
    const auto winds = windsOf(plan.day);
    std::vector<Factor> factors;
    const auto add = [&](FactorKind kind, double value, Reason because) {
        factors.push_back({kind, value, countingWeight(plan.weights, kind), because, 1.0});
    };
    add(FactorKind::depth, depthValue(around.fishableShare),
        FishableWater{around.fishableShare, around.shallowest, around.deepest, limit});
    add(FactorKind::dropOff, edgeValue(around.dropOff_m, cast),
        DropOffNear{Length::metres(around.dropOff_m), around.dropOffTop, around.dropOffFoot});
    add(FactorKind::weedEdge, edgeValue(around.weedEdge_m, cast),
        WeedEdgeNear{Length::metres(around.weedEdge_m)});
    add(FactorKind::feature, featureValue(around.featureArea_m2, cast),
        FeaturesNear{units::Area::squareMetres(around.featureArea_m2), around.feature});
    add(FactorKind::windward, windwardValue(plan.day, around.riseEast, around.riseNorth),
        oneOrBoth(winds, windwardReason(winds.front().wind, around),
                  windwardReason(winds.back().wind, around)));
    if (const auto liked = waveValue(plan.day, waves, waveLikingOf(plan.weights).ripple)) {
        add(FactorKind::shelter, *liked,
            oneOrBoth(winds, waveReason(waves.first), waveReason(waves.later)));
    }
    add(FactorKind::record, recordValue(log), recordReason(log));
    add(FactorKind::lessTried, lessTriedValue(log), lessTriedReason(log));
    add(FactorKind::trust, trustValue(around.trust), trustReason(around.trust));
    return factors;
}

double scoreOf(const std::vector<Factor>& factors) {
    double product = 1.0;
    for (const Factor& factor : factors) {
        product *= factor.times;
    }
    return product;
}

} // namespace marks
