// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/units/moment.h"

#include <chrono>

namespace light {

/// A clock farther from the sun than this is asked about: even with summer time few places keep
/// one. Our choice (no source).
inline constexpr std::chrono::hours suspectClock{2};

/// By how much the clock is ahead of the mean sun over `place` at that instant; negative where it
/// is behind. Between -12 h (excluded) and 12 h. Mean solar time is 1 h for 15 degrees of
/// longitude.
[[nodiscard]] std::chrono::seconds clockAheadOfSun(const units::Clock& clock, geo::LonLat place,
                                                   units::Moment moment);

} // namespace light
