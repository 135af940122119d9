// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/anchoring/boat_settings.h"

#include <vector>

namespace anchoring {

/// Winds above force 4 begin here: whole knots, from 17.
inline constexpr units::Speed freshBreeze = units::Speed::knots(16.5);
/// Courses for boaters teach at least this scope (RYA: 6 to 1 with rope and chain; US state
/// courses: 7 to 10).
inline constexpr double seamanlikeScope = 6.0;
/// Significant height from which an open boat at anchor ships water; common practice.
inline constexpr units::Length highWave = units::Length::metres(0.3);

/// What is to be minded about this lie and no other, the gravest first. What holds for every
/// anchored boat, and for the day's wind and water, is said once for the day
/// (water::dayCautions()).
[[nodiscard]] std::vector<Caution> cautionsFor(const AnchorSet& set, const Weather& weather,
                                               const BoatSettings& boat);

} // namespace anchoring
