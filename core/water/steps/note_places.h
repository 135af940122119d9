// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/path.h"
#include "core/geo/water_point.h"

#include <vector>

namespace water {

/// What is noted along a line, or all over an area, is kept as notes at single places: 25 m apart,
/// which is within the reach of a note, and farther where there would be more than 200 of them.

/// Evenly along the line, both ends among them; none where the line has no point.
[[nodiscard]] std::vector<geo::WaterPoint> notePlacesAlong(const geo::Path& line);
/// Evenly inside the ring; its middle where it is too small for more, and none where it has fewer
/// than three corners.
[[nodiscard]] std::vector<geo::WaterPoint> notePlacesWithin(const geo::Ring& ring);

} // namespace water
