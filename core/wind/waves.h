// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/depth.h"
#include "core/units/length.h"
#include "core/units/speed.h"

namespace wind {

/// What the wind raises after a steady blow.
struct Waves {
    units::Length significantHeight; ///< Mean of the highest third.
    double period_s = 0.0;           ///< Peak (deep) or significant (shallow) period.
};

/// Fetch-limited waves on deep water: wind at 10 m above the water, any fetch of a lake.
/// No check for how long it has blown: 2 km need less than 40 minutes even in a light wind, and a
/// forecast is hourly. Published models differ by 30 %: say the height to a decimal of a metre.
/// Source: Shore Protection Manual, US Army CERC 1984, ch. 3.
[[nodiscard]] Waves wavesOnDeepWater(units::Speed wind, units::Length fetch);

/// The same where the bottom limits them; `depth` is the mean depth along the fetch. Deep water
/// gives nearly the deep form. Source: the same. Zero where fetch or depth is not
/// positive.
[[nodiscard]] Waves wavesOverDepth(units::Speed wind, units::Length fetch, units::Depth depth);

} // namespace wind
