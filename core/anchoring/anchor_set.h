// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/caution.h"
#include "core/anchoring/lie.h"
#include "core/units/depth.h"

#include <optional>
#include <vector>

namespace anchoring {

/// One anchor: where it is dropped, how deep it is there, and how much rope it gets in the end.
struct Anchor {
    geo::WaterPoint place;
    units::Depth depth;
    units::Length rope;
    double scope = 0.0; ///< Rope divided by depth plus the height of its cleat.
    friend bool operator==(const Anchor&, const Anchor&) = default;
};

/// Two anchors and the boat between them. The order on the water: drop the bow anchor, fall back on
/// `fallBackRope`, lower the stern anchor, haul the bow rope in to `bow.rope` until both are tight.
struct AnchorSet {
    Anchor bow;
    Anchor stern;
    Lie lie;
    units::Length fallBackRope;  ///< Bow rope out when the stern is above the stern anchor's place.
    double offTheWind_deg = 0.0; ///< How far the bow points away from the wind, -180 to 180.
    /// Pull on the ropes should the wind go round to the beam; nothing where nobody knows how
    /// strong it is.
    std::optional<double> beamPull_N;
    std::vector<Caution> cautions; ///< The gravest first.
    friend bool operator==(const AnchorSet&, const AnchorSet&) = default;
};

} // namespace anchoring
