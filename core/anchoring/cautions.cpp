// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/cautions.h"

#include <cmath>

#include <fmt/format.h>

namespace anchoring {

namespace {

constexpr double worthSaying_deg = 2.5;
constexpr double sameScope = 0.05;

void addForTheWind(const AnchorSet& set, const Weather& weather, std::vector<std::string>& out) {
    if (weather.windSpeed >= strongBreeze) {
        out.emplace_back("Force 6 or more: no wind to anchor a small boat in. Stay ashore.");
    } else if (weather.windSpeed >= freshBreeze) {
        out.emplace_back("Force 5: anchor only under a lee, and leave if it freshens.");
    }
    if (weather.windSpeed >= freshBreeze && set.bow.scope < seamanlikeScope - sameScope) {
        out.push_back(fmt::format("Scope {:.1f} is short for this wind: {:.0f} or more holds.",
                                  set.bow.scope, seamanlikeScope));
    }
}

void addForTheRoom(const AnchorSet& set, const BoatSettings& boat, std::vector<std::string>& out) {
    if (set.bow.scope < boat.scope - sameScope) {
        out.push_back(fmt::format("Room or rope for scope {:.1f} only: take a bearing ashore and "
                                  "watch whether she drags.",
                                  set.bow.scope));
    }
    if (std::fabs(set.offTheWind_deg) > worthSaying_deg) {
        out.push_back(fmt::format("Lies {:.0f} degrees off the wind, so that both anchors are in "
                                  "the water.",
                                  std::fabs(set.offTheWind_deg)));
    }
}

} // namespace

std::vector<std::string> cautionsFor(const AnchorSet& set, const Weather& weather,
                                     const BoatSettings& boat) {
    std::vector<std::string> out;
    addForTheWind(set, weather, out);
    if (weather.waveHeight && *weather.waveHeight > highWave) {
        out.emplace_back("High waves for an open boat at anchor: look for a lee.");
    }
    if (weather.waterTemperature && *weather.waterTemperature < coldWater) {
        out.emplace_back("Cold water takes the breath away: lifejackets worn, not stowed.");
    } else {
        out.emplace_back("Lifejackets worn, not stowed.");
    }
    addForTheRoom(set, boat, out);
    if (weather.windSpeed >= moderateBreeze) {
        out.emplace_back(
            "If the wind goes round to the beam, slip the stern rope and let her swing "
            "to the bow.");
    }
    out.emplace_back("Bow anchor down first and up last; never lie to the stern anchor alone.");
    out.emplace_back("Make both ropes fast so that they slip at once.");
    return out;
}

} // namespace anchoring
