// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/path.h"

#include <span>

namespace geo {

/// The smallest convex ring round `points`, moved outwards by `margin_m`; counter-clockwise. Empty
/// without points; a circle-like ring round a single one.
[[nodiscard]] Ring hullOf(std::span<const WaterPoint> points, double margin_m);

} // namespace geo
