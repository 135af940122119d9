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
        over;              ///< What lies under the bait, the kind most worth naming.
    bool isByHand = false; ///< The user put it there.
};

/// What a bait that the user put himself breaks of the rules that spreadRods() keeps to.
enum class BaitRule {
    inClosedWater,   ///< The bait, or its line on the way there.
    onLand,          ///< The bait, or its line on the way there.
    belowLimit,      ///< Deeper than the deepest depth worth fishing.
    tooShallow,      ///< For a bait.
    tooFar,          ///< For the cast.
    tooNear,         ///< Under the boat and its ropes.
    foulOfRope,      ///< Its line leads along an anchor rope.
    nearAnotherLine, ///< Lines too near to each other, or baits.
};

struct BaitCaution {
    int rod = 0; ///< Counted from 1, as the rods of the spread are.
    BaitRule rule = BaitRule::onLand;
    int other = 0; ///< The other rod, where there is one.
    friend bool operator==(const BaitCaution&, const BaitCaution&) = default;
};

/// All rods of one mark, clockwise from the bow.
struct RodSpread {
    std::vector<RodPlace> rods;
    std::vector<BaitCaution> cautions = {}; ///< The gravest first.
    int laidTooMany = 0; ///< Baits put by hand for which there are no rods, and which are left out.
};

} // namespace rods
