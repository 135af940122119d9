// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/anchoring/boat_settings.h"

#include <vector>

namespace anchoring {

/// How far to either side a boat at one anchor sails about in a wind that holds; common practice
/// (no source).
inline constexpr double sailsAbout_deg = 30.0;
/// Below force 2 she lies as she likes; our choice (no source).
inline constexpr units::Speed steadyingWind = units::Speed::knots(3.5);

/// How the boat swings to this anchor from this lie.
[[nodiscard]] Swing swingOf(const Anchor& bow, const Lie& lie, const Weather& weather,
                            const BoatSettings& boat);

/// Every lie that the boat is to be reckoned with in: the one that is drawn first, then with one
/// anchor those to either side of it, in steps of at most 15 degrees.
[[nodiscard]] std::vector<Lie> liesOf(const AnchorSet& set);

} // namespace anchoring
