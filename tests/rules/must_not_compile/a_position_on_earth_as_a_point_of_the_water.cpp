// SPDX-License-Identifier: GPL-3.0-or-later
// expects: could not convert 'onEarth' from 'geo::LonLat' to 'geo::WaterPoint'
#include "core/geo/lon_lat.h"
#include "core/geo/water_point.h"

geo::WaterPoint mark([[maybe_unused]] geo::LonLat onEarth,
                     [[maybe_unused]] geo::WaterPoint onWater) {
#ifdef MEREMARK_BREACH
    return onEarth;
#else
    return onWater;
#endif
}
