// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"
#include "core/learning/feature.h"
#include "core/units/depth.h"
#include "core/units/temperature.h"

#include <optional>

namespace learning {

// What a depth and a place become. The knots, the width of the lattice and the temperature in the
// middle were found good in trials on made-up seasons (ours; no source).

/// Adds the two hats over the logarithm of the depth that it lies between, with knots at 0.7, 1,
/// 1.5, 2.2, 3.2, 4.6, 6.6, 9.5 and 14 m, scaled so that their squares add up to `scale` squared.
/// Depths beyond the knots count as the outermost.
void addDepth(Features& to, Group group, units::Depth depth, double scale = 1.0);

/// The scale of depth by temperature: (T - 11 C) / 5, held to 3 either way, so that a slip of the
/// pen does not rule the season; 0 where it is not known.
[[nodiscard]] double temperatureScale(const std::optional<units::Temperature>& temperature);

/// Adds the bilinear weights of the place on a lattice of 120 m through the frame's origin, scaled
/// so that their squares add up to 1.
void addPlace(Features& to, geo::WaterPoint place);

} // namespace learning
