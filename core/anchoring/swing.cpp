// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/swing.h"

#include <algorithm>
#include <cmath>

namespace anchoring {

namespace {

constexpr double step_deg = 15.0;
constexpr double anywhere_deg = 180.0;

} // namespace

Swing swingOf(const Anchor& bow, const Lie& lie, const Weather& weather, const BoatSettings& boat) {
    const bool isHeld =
        weather.isFromKnown && (!weather.windSpeed || *weather.windSpeed >= steadyingWind);
    return {geo::distance(bow.place, lie.centre) + boat.length * 0.5,
            isHeld ? sailsAbout_deg : anywhere_deg};
}

std::vector<Lie> liesOf(const AnchorSet& set) {
    std::vector<Lie> lies{set.lie};
    if (!set.swing) {
        return lies;
    }
    const units::Length away = geo::distance(set.bow.place, set.lie.centre);
    const int steps = static_cast<int>(std::ceil(set.swing->toEachSide_deg / step_deg));
    for (int k = 1; k <= steps; ++k) {
        const double turn_deg = set.swing->toEachSide_deg * k / steps;
        for (const double side_deg : {turn_deg, -turn_deg}) {
            const units::Bearing heading = set.lie.heading.turnedBy(side_deg);
            const bool isTwice = side_deg <= -anywhere_deg; // straight across, from the other side
            if (!isTwice) {
                lies.push_back({geo::moved(set.bow.place, heading.opposite(), away), heading});
            }
        }
    }
    return lies;
}

} // namespace anchoring
