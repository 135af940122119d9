// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/units/length.h"

#include <string>

namespace water {

/// Water in which the user wants no mark proposed until he lifts the ban. Only the boat keeps out
/// of it, without a margin: it is his own wish, and no rule of the fishery (logbook::ClosedWater).
struct BannedWater {
    std::string name; ///< May be empty.
    geo::LonLatRing ring;
    friend bool operator==(const BannedWater&, const BannedWater&) = default;
};

/// How far round a banned mark no other is proposed, in casts: as far as two marks of one list keep
/// from each other, so that no bait comes into the water of the banned one (our choice, no source).
inline constexpr double castsBanned = 2.0;

/// All water as near to `middle` as `radius`, and no more than a two-hundredth of it beyond.
[[nodiscard]] BannedWater bannedRound(geo::LonLat middle, units::Length radius, std::string name);

} // namespace water
