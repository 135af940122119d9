// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/cautions.h"

#include <cmath>

namespace anchoring {

namespace {

constexpr double worthSaying_deg = 2.5;
constexpr double sameScope = 0.05;

} // namespace

std::vector<Caution> cautionsFor(const AnchorSet& set, const Weather& weather,
                                 const BoatSettings& boat) {
    std::vector<Caution> out;
    if (weather.waveHeight && *weather.waveHeight > highWave) {
        out.emplace_back(HighWaves{});
    }
    if (!weather.isFromKnown) {
        out.emplace_back(BowToOpenWater{});
    }
    if (weather.windSpeed && *weather.windSpeed >= freshBreeze &&
        set.bow.scope < seamanlikeScope - sameScope) {
        out.emplace_back(ShortForTheWind{set.bow.scope});
    }
    if (set.bow.scope < boat.scope - sameScope) {
        out.emplace_back(ShortOfRoom{set.bow.scope});
    }
    if (weather.isFromKnown && std::fabs(set.offTheWind_deg) > worthSaying_deg) {
        out.emplace_back(TurnedOffTheWind{std::fabs(set.offTheWind_deg)});
    }
    return out;
}

} // namespace anchoring
