// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"

#include <vector>

namespace geo {

/// An open line through the water.
using Path = std::vector<WaterPoint>;

/// A closed line; the first point is not repeated at the end.
using Ring = std::vector<WaterPoint>;

[[nodiscard]] units::Length lengthOf(const Path& path);
/// Length of the closed ring.
[[nodiscard]] units::Length lengthAround(const Ring& ring);
/// Signed area: positive where the ring runs counter-clockwise.
[[nodiscard]] double signedArea_m2(const Ring& ring);
/// Distance from p to the nearest point of the segment a-b.
[[nodiscard]] double distanceToSegment_m(WaterPoint p, WaterPoint a, WaterPoint b);
/// `line` with every point dropped that lies within `tolerance_m` of the simplified line (Douglas
/// and Peucker 1973). Ends stay.
[[nodiscard]] Path simplified(const Path& line, double tolerance_m);
/// Points along the path no farther apart than `step_m`, its own points included.
[[nodiscard]] Path densified(const Path& line, double step_m);

} // namespace geo
