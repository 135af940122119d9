// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/lon_lat.h"

#include <cmath>

namespace geo {

bool isOnEarth(LonLat place) {
    return std::isfinite(place.lon_deg) && std::isfinite(place.lat_deg) &&
           std::fabs(place.lat_deg) <= 90.0 && std::fabs(place.lon_deg) <= 180.0;
}

} // namespace geo
