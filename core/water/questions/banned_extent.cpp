// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/banned_extent.h"

#include "core/geo/path.h"

#include <cmath>

namespace water {

BannedExtent extentOf(const Water& water, const BannedWater& banned) {
    const geo::Ring ring = water.frame->toWater(banned.ring);
    geo::WaterPoint middle;
    for (const geo::WaterPoint corner : ring) {
        middle.x_m += corner.x_m / static_cast<double>(ring.size());
        middle.y_m += corner.y_m / static_cast<double>(ring.size());
    }
    return {units::Area::squareMetres(std::fabs(geo::signedArea_m2(ring))), middle};
}

} // namespace water
