// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/light/clock_and_sun.h"

#include <cmath>

namespace light {

std::chrono::seconds clockAheadOfSun(const units::Clock& clock, geo::LonLat place,
                                     units::Moment moment) {
    constexpr double secondsPerDegree = 240.0;
    const auto bySun = std::chrono::seconds(std::llround(place.lon_deg * secondsPerDegree));
    auto ahead = clock.offsetAt(moment) - bySun;
    // A day round the world is the same time of day.
    while (ahead > std::chrono::hours(12)) {
        ahead -= std::chrono::hours(24);
    }
    while (ahead <= -std::chrono::hours(12)) {
        ahead += std::chrono::hours(24);
    }
    return ahead;
}

} // namespace light
