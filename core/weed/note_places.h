// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/path.h"
#include "core/geo/water_frame.h"
#include "core/geo/water_point.h"
#include "core/weed/weed_note.h"

#include <vector>

namespace weed {

/// A line or an area speaks at single places: 25 m apart, which is within the reach of a note, and
/// farther where there would be more than 200 of them.

/// Evenly along the line, both ends among them; none where the line has no point.
[[nodiscard]] std::vector<geo::WaterPoint> placesAlong(const geo::Path& line);
/// Evenly inside the ring; its middle where it is too small for more, and none where it has fewer
/// than three corners.
[[nodiscard]] std::vector<geo::WaterPoint> placesWithin(const geo::Ring& ring);
/// Where the note speaks, at least one place.
[[nodiscard]] std::vector<geo::WaterPoint> placesOf(const WeedNote& note,
                                                    const geo::WaterFrame& frame);

} // namespace weed
