// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/cautions.h"

#include <cmath>

#include <fmt/format.h>

namespace anchoring {

namespace {

constexpr double worthSaying_deg = 2.5;
constexpr double sameScope = 0.05;

} // namespace

std::vector<std::string> cautionsFor(const AnchorSet& set, const Weather& weather,
                                     const BoatSettings& boat) {
    std::vector<std::string> out;
    if (weather.waveHeight && *weather.waveHeight > highWave) {
        out.emplace_back("High waves for an open boat at anchor: look for a lee.");
    }
    if (weather.windSpeed >= freshBreeze && set.bow.scope < seamanlikeScope - sameScope) {
        out.push_back(fmt::format(
            "Scope {:.1f} is short for this wind: courses teach {:.0f} to 10, and more is safer.",
            set.bow.scope, seamanlikeScope));
    }
    if (set.bow.scope < boat.scope - sameScope) {
        out.push_back(fmt::format("Room or rope for scope {:.1f} only: take a bearing ashore and "
                                  "watch whether she drags.",
                                  set.bow.scope));
    }
    if (std::fabs(set.offTheWind_deg) > worthSaying_deg) {
        out.push_back(
            fmt::format("Turned {:.0f}° off the wind so that neither anchor lands ashore.",
                        std::fabs(set.offTheWind_deg)));
    }
    return out;
}

} // namespace anchoring
