// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/rope.h"

#include <cmath>
#include <numbers>

namespace anchoring {

namespace {

constexpr double airDensity_kg_m3 = 1.225; // standard atmosphere, sea level

} // namespace

units::Length riseOf(units::Depth depthAtAnchor, units::Length cleatHeight) {
    return depthAtAnchor.asLength() + cleatHeight;
}

units::Length ropeForScope(double scope, units::Depth depthAtAnchor, units::Length cleatHeight) {
    return scope * riseOf(depthAtAnchor, cleatHeight);
}

std::optional<double> scopeOf(units::Length rope, units::Depth depthAtAnchor,
                              units::Length cleatHeight) {
    const units::Length rise = riseOf(depthAtAnchor, cleatHeight);
    return rise > units::Length() ? std::optional(rope / rise) : std::nullopt;
}

std::optional<units::Length> runOf(units::Length rope, units::Depth depthAtAnchor,
                                   units::Length cleatHeight) {
    const double rope_m = rope.inMetres();
    const double rise_m = riseOf(depthAtAnchor, cleatHeight).inMetres();
    if (rope_m < rise_m) {
        return std::nullopt;
    }
    return units::Length::metres(std::sqrt((rope_m - rise_m) * (rope_m + rise_m)));
}

std::optional<double> angleAtAnchor_deg(units::Length rope, units::Depth depthAtAnchor,
                                        units::Length cleatHeight) {
    const auto scope = scopeOf(rope, depthAtAnchor, cleatHeight);
    if (!scope || *scope < 1.0) {
        return std::nullopt;
    }
    return std::asin(1.0 / *scope) * 180.0 / std::numbers::pi;
}

double windPull_N(units::Speed wind, units::Area windage, double dragCoefficient) {
    const double speed_m_s = wind.inMetresPerSecond();
    return 0.5 * airDensity_kg_m3 * dragCoefficient * windage.inSquareMetres() * speed_m_s *
           speed_m_s;
}

} // namespace anchoring
