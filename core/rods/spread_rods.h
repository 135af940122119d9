// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/rods/ground.h"
#include "core/rods/rod_settings.h"
#include "core/rods/rod_spread.h"

#include <vector>

namespace rods {

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
/// over open water all the way, clear of the ropes and of the other lines. Fewer rods than wanted,
/// even none, where the water has no room for more. Places are looked at by their angle from the
/// bow, so that water, boat and ropes turned together turn the baits with them, but for ties.
/// A boat that swings to one anchor has her baits where all this holds from every lie that she is
/// to be reckoned with in (anchoring::liesOf()).
/// \param byHand where the user put baits, as many as there are rods: they stay there whatever they
/// break, and that is told; the other rods are laid beside them.
/// \return wrongUse for settings out of range or a boat that does not lie on water; cancelled.
[[nodiscard]] base::Result<RodSpread>
spreadRods(const Ground& ground, const anchoring::AnchorSet& anchors, const RodSettings& settings,
           base::Progress& progress, const std::vector<geo::WaterPoint>& byHand = {});

} // namespace rods
