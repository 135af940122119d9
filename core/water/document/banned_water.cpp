// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/document/banned_water.h"

#include "core/geo/water_frame.h"

#include <cmath>
#include <numbers>
#include <utility>

namespace water {

BannedWater bannedRound(geo::LonLat middle, units::Length radius, std::string name) {
    constexpr int corners = 32;
    // The sides, not the corners, touch the circle: nothing within it stays open.
    const units::Length toCorner = radius / std::cos(std::numbers::pi / corners);
    BannedWater banned{std::move(name), {}};
    for (int k = 0; k < corners; ++k) {
        banned.ring.push_back(
            geo::destination(middle, {toCorner, units::Bearing::degrees(-360.0 * k / corners)}));
    }
    return banned;
}

} // namespace water
