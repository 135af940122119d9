// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/rods/ground.h"
#include "core/rods/rod_settings.h"
#include "core/rods/rod_spread.h"

#include <vector>

namespace rods {

/// Which way the ropes leave the boat, clockwise from the bow.
[[nodiscard]] std::vector<units::Bearing> ropeTurns(const anchoring::AnchorSet& anchors);

/// What the baits that the user put break of the rules that spreadRods() keeps to, from every lie
/// that the boat is to be reckoned with in; the gravest first, each once. Nothing of the others.
[[nodiscard]] std::vector<BaitCaution> baitsThatBreakRules(const RodSpread& spread,
                                                           const Ground& ground,
                                                           const anchoring::AnchorSet& anchors,
                                                           const RodSettings& settings);

} // namespace rods
