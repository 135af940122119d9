// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/plan.h"

#include <cmath>
#include <map>
#include <string>

#include <gtest/gtest.h>

namespace support {

/// Every member of a plan by its name, in SI.
inline std::map<std::string, double> figuresOf(const marks::Plan& plan) {
    std::map<std::string, double> figures{
        {"day",
         static_cast<double>(std::chrono::sys_days(plan.day.day).time_since_epoch().count())},
        {"start", static_cast<double>(plan.day.start.count())},
        {"end", static_cast<double>(plan.day.end.count())},
        {"wind from", plan.day.wind.from ? plan.day.wind.from->inDegrees() : -1.0},
        {"wind speed", plan.day.wind.speed ? plan.day.wind.speed->inMetresPerSecond() : -1.0},
        {"later at",
         plan.day.windLater ? static_cast<double>(plan.day.windLater->at.count()) : -1.0},
        {"later from", plan.day.windLater && plan.day.windLater->wind.from
                           ? plan.day.windLater->wind.from->inDegrees()
                           : -1.0},
        {"later speed", plan.day.windLater && plan.day.windLater->wind.speed
                            ? plan.day.windLater->wind.speed->inMetresPerSecond()
                            : -1.0},
        {"level", plan.day.levelChange.inMetres()},
        {"water", plan.day.waterTemperature ? plan.day.waterTemperature->inCelsius() : -273.0},
        {"stay", plan.day.stay ? static_cast<double>(plan.day.stay->count()) : -1.0},
        {"boat speed", plan.tackle.boatSpeed.inMetresPerSecond()},
        {"boat length", plan.tackle.boatLength.inMetres()},
        {"bow height", plan.tackle.bowHeight.inMetres()},
        {"bow rope", plan.tackle.bowRope.inMetres()},
        {"stern rope", plan.tackle.sternRope.inMetres()},
        {"scope", plan.tackle.scope},
        {"rods", plan.tackle.rods},
        {"cast", plan.tackle.cast.inMetres()},
        {"over-depth", plan.tackle.overDepth.inMetres()},
        {"to one anchor", plan.tackle.toOneAnchor ? 1.0 : 0.0},
        {"count", plan.count},
        {"try new", plan.tryNew},
        {"launch lon", plan.launch ? plan.launch->lon_deg : 999.0},
        {"launch lat", plan.launch ? plan.launch->lat_deg : 999.0}};
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        figures["weight of " + std::string(marks::nameOf(kind))] = plan.weights.of(kind);
    }
    return figures;
}

/// Of a changed plan only `member` may be other than before, and it has to be `value`.
inline void expectOnly(const marks::Plan& before, const marks::Plan& after,
                       const std::string& member, double value) {
    auto expected = figuresOf(before);
    ASSERT_TRUE(expected.contains(member)) << member;
    expected[member] = value;
    for (const auto& [name, figure] : figuresOf(after)) {
        EXPECT_NEAR(figure, expected[name], 1e-9 * std::max(1.0, std::fabs(expected[name])))
            << name << " after " << member << " was set";
    }
}

} // namespace support
