// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/units/bearing.h"
#include "core/units/moment.h"

#include <optional>

namespace light {

/// Where the sun stands in the sky.
struct SunPosition {
    units::Bearing azimuth;
    double elevation_deg = 0.0; ///< Of its centre above the horizon, without refraction.
};

/// When it gets light and dark on one day. Absent where the sun does not get that high, or that
/// low, on that day.
struct SunTimes {
    std::optional<units::Moment> civilDawn; ///< Centre 6 degrees below the horizon.
    std::optional<units::Moment> sunrise;   ///< Upper limb on the horizon, refraction of 34'.
    std::optional<units::Moment> sunset;
    std::optional<units::Moment> civilDusk;
    friend bool operator==(const SunTimes&, const SunTimes&) = default;
};

/// The sun seen from `place`. Good to 0.02 degrees from 1901 to 2099. Source: Meeus, Astronomical
/// Algorithms, 2nd ed., ch. 25 (low precision), as NOAA's solar calculator uses it.
[[nodiscard]] SunPosition sunAt(units::Moment moment, geo::LonLat place);

/// Dawn to dusk round the sun's noon on the calendar day `day` by the clock at the water: not of
/// the UTC day, which far from Greenwich would give yesterday's sunset. In a white night dusk falls
/// after midnight. Each event is iterated to its own instant: within 5 s of NREL's solar position
/// algorithm below 65 degrees of latitude. Air bends light by more or less than 34' from day to
/// day, so an almanac and the eye may differ by a minute. Altitude is not allowed for.
[[nodiscard]] SunTimes sunTimesOn(units::Day day, geo::LonLat place, const units::Clock& clock);

} // namespace light
