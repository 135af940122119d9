// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"
#include "core/structure/zone.h"
#include "core/units/bearing.h"
#include "core/units/depth.h"

#include <optional>
#include <vector>

namespace rods {

/// Where one rod's bait goes, seen from the boat's lie.
struct RodPlace {
    geo::WaterPoint place;
    units::Bearing bearing;
    units::Length distance;
    units::Depth depth;    ///< Of the water there, today.
    units::Depth stopKnot; ///< Depth plus over-depth: where the stop knot sets a sliding float.
    std::optional<structure::ZoneKind>
        over; ///< What lies under the bait, the kind most worth naming.
};

/// All rods of one mark, clockwise from the bow.
struct RodSpread {
    std::vector<RodPlace> rods;
};

} // namespace rods
