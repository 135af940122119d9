// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wind/waves.h"

#include <cmath>

namespace wind {

namespace {

constexpr double gravity_m_s2 = 9.81;

/// The manual's adjusted wind, that grows faster than the wind itself with its drag.
double adjustedWind_m_s(units::Speed wind) {
    return 0.71 * std::pow(wind.inMetresPerSecond(), 1.23);
}

bool raisesWaves(units::Speed wind, units::Length fetch) {
    return wind.inMetresPerSecond() > 0.0 && fetch.inMetres() > 0.0;
}

} // namespace

Waves wavesOnDeepWater(units::Speed wind, units::Length fetch) {
    if (!raisesWaves(wind, fetch)) {
        return {};
    }
    const double u = adjustedWind_m_s(wind);
    const double x = gravity_m_s2 * fetch.inMetres() / (u * u);
    return {units::Length::metres(0.0016 * std::sqrt(x) * u * u / gravity_m_s2),
            0.2857 * std::cbrt(x) * u / gravity_m_s2};
}

Waves wavesOverDepth(units::Speed wind, units::Length fetch, units::Depth depth) {
    if (!raisesWaves(wind, fetch) || !(depth.inMetres() > 0.0)) {
        return {};
    }
    const double u = adjustedWind_m_s(wind);
    const double x = gravity_m_s2 * fetch.inMetres() / (u * u);
    const double d = gravity_m_s2 * depth.inMetres() / (u * u);
    const double heightLimit = std::tanh(0.53 * std::pow(d, 0.75));
    const double periodLimit = std::tanh(0.833 * std::pow(d, 0.375));
    const double height = 0.283 * heightLimit * std::tanh(0.00565 * std::sqrt(x) / heightLimit);
    const double period = 7.54 * periodLimit * std::tanh(0.0379 * std::cbrt(x) / periodLimit);
    return {units::Length::metres(height * u * u / gravity_m_s2), period * u / gravity_m_s2};
}

} // namespace wind
