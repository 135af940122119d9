// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/factor_values.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

namespace marks {

namespace {

constexpr double featureShare = 0.1;
constexpr double steepEnough = 0.05;
constexpr double halfWind_m_s = 3.0;
constexpr double uneasyWave_m = 0.25;
constexpr double halfTrust_m = 0.5;
constexpr double unknown = 0.5;
constexpr double noMatter_m_s = 0.05;

std::string depthBecause(const Surroundings& around, units::Depth limit) {
    if (around.fishableShare <= 0.0) {
        return fmt::format("nothing within a cast is open and no deeper than {:.1f} m",
                           limit.inMetres());
    }
    return fmt::format("{:.0f} % of the water within a cast can be fished, {:.1f} to {:.1f} m deep",
                       100.0 * around.fishableShare, around.shallowest.inMetres(),
                       around.deepest.inMetres());
}

std::string dropOffBecause(const Surroundings& around) {
    if (around.dropOff_m <= 0.0) {
        return "no drop-off within a cast";
    }
    return fmt::format("{:.0f} m of drop-off, {:.1f} to {:.1f} m, within a cast", around.dropOff_m,
                       around.dropOffTop.inMetres(), around.dropOffFoot.inMetres());
}

std::string weedEdgeBecause(const Surroundings& around) {
    return around.weedEdge_m > 0.0
               ? fmt::format("{:.0f} m of weed edge within a cast", around.weedEdge_m)
               : "no weed edge within a cast";
}

std::string featureBecause(const Surroundings& around) {
    if (!around.feature) {
        return "no hump, hole, spur or saddle within a cast";
    }
    return fmt::format("{:.0f} m² of hump, hole, spur or saddle within a cast, most of it {}",
                       around.featureArea_m2, structure::nameOf(*around.feature));
}

std::string windwardBecause(const logbook::Wind& wind, const Surroundings& around,
                            units::Speed upSlope) {
    const double v = upSlope.inMetresPerSecond();
    if (std::fabs(v) < noMatter_m_s) {
        return wind.speed.inMetresPerSecond() < noMatter_m_s
                   ? "no wind"
                   : "the wind blows neither up the slope nor down it";
    }
    return fmt::format("the wind of {:.1f} m/s blows {} a slope of {:.0f} %",
                       wind.speed.inMetresPerSecond(), v > 0.0 ? "up" : "down",
                       100.0 * std::hypot(around.riseEast, around.riseNorth));
}

std::string shelterBecause(const WaveState& waves) {
    return fmt::format("waves of {:.2f} m after {:.0f} m of open water", waves.height.inMetres(),
                       waves.fetch.inMetres());
}

std::string recordBecause(const std::optional<LogSays>& log) {
    if (!log) {
        return "the log does not tell yet";
    }
    return fmt::format("{:.1f} fish in 10 rod-hours to be expected here, {:.1f} over the whole "
                       "water",
                       log->here.per10RodHours, log->meanPer10RodHours);
}

std::string lessTriedBecause(const std::optional<LogSays>& log) {
    if (!log) {
        return "never tried";
    }
    return fmt::format("the rate here may lie between {:.1f} and {:.1f} in 10 rod-hours",
                       log->here.low, log->here.high);
}

std::string trustBecause(const Surroundings& around) {
    if (!std::isfinite(around.trust.inMetres())) {
        return "how far the depths may be off is not known";
    }
    return fmt::format("depths within a cast known to ±{:.1f} m", around.trust.inMetres());
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
    if (!(slope > 0.0)) {
        return {};
    }
    const units::Bearing goes = wind.from.opposite();
    const double cosine = (goes.east() * riseEast + goes.north() * riseNorth) / slope;
    return wind.speed * (cosine * std::min(1.0, slope / steepEnough));
}

double shelterValue(units::Length waveHeight) {
    const double h = std::max(waveHeight.inMetres(), 0.0) / uneasyWave_m;
    return 1.0 / (1.0 + h * h);
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

std::vector<Factor> factorsOf(units::Depth limit, const Surroundings& around, const Plan& plan,
                              const std::optional<WaveState>& waves,
                              const std::optional<LogSays>& log, Telling telling) {
    const units::Length cast = plan.tackle.cast;
    const logbook::Wind& wind = plan.day.wind;
    const units::Speed upSlope = windUpSlope(wind, around.riseEast, around.riseNorth);
    std::vector<Factor> factors;
    const auto add = [&](FactorKind kind, double value, const auto& because) {
        factors.push_back({kind, value, plan.weights.of(kind),
                           telling == Telling::words ? because() : std::string(), 1.0});
    };
    add(FactorKind::depth, depthValue(around.fishableShare),
        [&] { return depthBecause(around, limit); });
    add(FactorKind::dropOff, edgeValue(around.dropOff_m, cast),
        [&] { return dropOffBecause(around); });
    add(FactorKind::weedEdge, edgeValue(around.weedEdge_m, cast),
        [&] { return weedEdgeBecause(around); });
    add(FactorKind::feature, featureValue(around.featureArea_m2, cast),
        [&] { return featureBecause(around); });
    add(FactorKind::windward, windwardValue(upSlope),
        [&] { return windwardBecause(wind, around, upSlope); });
    if (waves) {
        add(FactorKind::shelter, shelterValue(waves->height),
            [&] { return shelterBecause(*waves); });
    }
    add(FactorKind::record, recordValue(log), [&] { return recordBecause(log); });
    add(FactorKind::lessTried, lessTriedValue(log), [&] { return lessTriedBecause(log); });
    add(FactorKind::trust, trustValue(around.trust), [&] { return trustBecause(around); });
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
