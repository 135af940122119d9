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
    double scope = 0.0;    ///< Rope divided by depth plus the height of its cleat.
    bool isByHand = false; ///< The user put it there.
    friend bool operator==(const Anchor&, const Anchor&) = default;
};

/// How a boat at one anchor moves about it.
struct Swing {
    /// From the anchor to the far end of the boat, wherever the wind comes from.
    units::Length radius;
    /// As far to either side of her lie she sails about while the wind holds; 180: nobody knows.
    double toEachSide_deg = 0.0;
    friend bool operator==(const Swing&, const Swing&) = default;
};

/// What holds the boat. With two anchors she lies between them; the order on the water: drop the
/// bow anchor, fall back on `fallBackRope`, lower the stern anchor, haul the bow rope in to
/// `bow.rope` until both are tight. With one she lies downwind of it, and swings.
struct AnchorSet {
    Anchor bow;
    std::optional<Anchor> stern; ///< Nothing: she lies to one anchor.
    Lie lie;
    /// Bow rope out when the stern is above the stern anchor's place; with one anchor its rope.
    units::Length fallBackRope;
    double offTheWind_deg = 0.0; ///< How far the bow points away from the wind, -180 to 180.
    /// Pull on the ropes should the wind go round to the beam; nothing where nobody knows how
    /// strong it is.
    std::optional<double> beamPull_N;
    std::vector<Caution> cautions;   ///< The gravest first.
    std::optional<Swing> swing = {}; ///< Just where there is no stern anchor.
    friend bool operator==(const AnchorSet&, const AnchorSet&) = default;
};

} // namespace anchoring
