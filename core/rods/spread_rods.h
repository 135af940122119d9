// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/rods/ground.h"
#include "core/rods/rod_spread.h"
#include "core/units/length.h"

#include <vector>

namespace rods {

/// How rods may be set. Defaults are common practice (no source).
struct RodSettings {
    /// Rods wanted, 1 to 8; the caller holds them to the house rules.
    int rods = 4;
    /// Farthest bait, 5 to 100 m, more than the nearest.
    units::Length cast = units::Length::metres(30.0);
    /// Nearest bait, 1 to 50 m: a bait nearer lies under the boat and its ropes.
    units::Length nearest = units::Length::metres(8.0);
    /// Stop knot set deeper than the water by this, 0 to 3 m, so that a sliding float stays up in
    /// waves and drift.
    units::Length overDepth = units::Length::feet(1.0);
    /// Least angle between two lines, 5 to 90 degrees: lines nearer foul each other when a fish
    /// runs.
    double leastAngle_deg = 15.0;
    /// Least distance between two baits, 0 to 50 m.
    units::Length leastApart = units::Length::metres(6.0);
    /// Least angle between a line and an anchor rope, 0 to 60 degrees.
    double ropeClear_deg = 12.0;
    /// Shallowest water for a bait, 0.1 to 5 m.
    units::Depth shallowest = units::Depth::metres(0.5);
};

/// One sentence for each setting out of its range; none where all is well.
[[nodiscard]] std::vector<std::string> problemsIn(const RodSettings& settings);

/// What a set of baits is worth, the sum that spreadRods() raises. Each part rewards what is new:
/// - edges: exp(-(d / 4 m)^2) for each bait d from its nearest edge; the second bait on the edge of
///   one zone counts half, the third a quarter;
/// - kinds: worthOf(kind) once for each kind of bottom under a bait;
/// - depths: three times the share of the depths within the ring that lie within 0.75 m of a
/// bait's;
/// - water: half the share of the circle that lies within 20 degrees of a line.
/// \param baits places that hold water. The weights are our choice (no source).
[[nodiscard]] double worthOf(const std::vector<geo::WaterPoint>& baits, const Ground& ground,
                             const anchoring::Lie& lie, const RodSettings& settings);

/// Chooses the bait places in the casting ring round the boat: greedy on worthOf(), then improved
/// by exchange of one bait at a time until none helps. Every bait lies in fishable water, its line
/// over water all the way, clear of the ropes and of the other lines. Fewer rods than wanted, even
/// none, where the water has no room for more. Turning water, boat and ropes together turns the
/// baits with them.
/// \return wrongUse for settings out of range or a boat that does not lie on water; cancelled.
[[nodiscard]] base::Result<RodSpread> spreadRods(const Ground& ground,
                                                 const anchoring::AnchorSet& anchors,
                                                 const RodSettings& settings,
                                                 base::Progress& progress);

} // namespace rods
