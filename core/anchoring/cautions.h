// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/anchoring/boat_settings.h"

#include <string>
#include <vector>

namespace anchoring {

/// Winds above force 5 begin here: whole knots, from 22.
inline constexpr units::Speed strongBreeze = units::Speed::knots(21.5);
/// Winds above force 4 begin here: whole knots, from 17.
inline constexpr units::Speed freshBreeze = units::Speed::knots(16.5);
/// From force 4 on a wind on the beam is worth a word: whole knots, from 11.
inline constexpr units::Speed moderateBreeze = units::Speed::knots(10.5);
/// Courses for boaters ask for at least this scope (RYA: 6 to 1 with rope and chain; US state
/// courses: 7 to 10).
inline constexpr double seamanlikeScope = 5.0;
/// Significant height from which an open boat at anchor ships water; common practice.
inline constexpr units::Length highWave = units::Length::metres(0.3);
/// The RNLI calls anything below this cold water.
inline constexpr units::Temperature coldWater = units::Temperature::celsius(15.0);

/// What to mind when lying to `set`: short sentences without units, the gravest first. Never empty.
[[nodiscard]] std::vector<std::string> cautionsFor(const AnchorSet& set, const Weather& weather,
                                                   const BoatSettings& boat);

} // namespace anchoring
