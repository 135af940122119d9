// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/anchoring/boat_settings.h"
#include "core/anchoring/landing.h"

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

/// A change of wind, in degrees, from which anchors that were laid before it are told of; ours.
inline constexpr double windIsAnother_deg = 10.0;

/// What the user had in mind as he laid anchors.
struct LaidFor {
    geo::WaterPoint mark;                   ///< Where he wants the boat.
    std::optional<units::Bearing> windFrom; ///< Nothing where it was not known.
};

/// The same of a lie of which he laid anchors himself, with all that breaks the rules that
/// placeAnchors() keeps to.
[[nodiscard]] std::vector<Caution> cautionsByHand(const Room& room, const AnchorSet& set,
                                                  const LaidFor& laidFor, const Weather& weather,
                                                  const BoatSettings& boat);

} // namespace anchoring
