// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/lon_lat.h"
#include "core/geo/path.h"
#include "core/geo/water_frame.h"
#include "core/water/document/shore_corner.h"

#include <vector>

namespace water {

using Shoreline = std::vector<geo::LonLatPiece>;

/// Each gives the shoreline with one thing changed; every other corner stays to the last digit.
/// \return wrongUse for a corner that is not there; unusableInput where the shore would cross
/// itself, lose its last three corners, or an island would lie on land.

[[nodiscard]] base::Result<Shoreline> withCornerMoved(Shoreline shoreline,
                                                      const geo::WaterFrame& frame,
                                                      ShoreCorner corner, geo::WaterPoint to);
/// The new corner comes right after the one named.
[[nodiscard]] base::Result<Shoreline> withCornerAdded(Shoreline shoreline,
                                                      const geo::WaterFrame& frame,
                                                      ShoreCorner after, geo::WaterPoint at);
[[nodiscard]] base::Result<Shoreline>
withoutCorner(Shoreline shoreline, const geo::WaterFrame& frame, ShoreCorner corner);
[[nodiscard]] base::Result<Shoreline> withIsland(Shoreline shoreline, const geo::WaterFrame& frame,
                                                 const geo::Ring& island);
/// \return unusableInput where no island lies at that place.
[[nodiscard]] base::Result<Shoreline>
withoutIslandAt(Shoreline shoreline, const geo::WaterFrame& frame, geo::WaterPoint at);
/// The shore gone round anew; of the islands that there were, those inside it stay.
[[nodiscard]] base::Result<Shoreline>
tracedAnew(const Shoreline& before, const geo::WaterFrame& frame, const geo::Ring& shore);

} // namespace water
