// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/geo/path.h"
#include "core/water/document/shore_corner.h"

namespace edits {

/// Each changes one thing of the shoreline, once and undoably. \return why it cannot be; the water
/// is then as it was.

[[nodiscard]] base::Result<void> moveShoreCorner(open_water::OpenWater& open,
                                                 water::ShoreCorner corner, geo::WaterPoint to);
[[nodiscard]] base::Result<void> addShoreCorner(open_water::OpenWater& open,
                                                water::ShoreCorner after, geo::WaterPoint at);
[[nodiscard]] base::Result<void> removeShoreCorner(open_water::OpenWater& open,
                                                   water::ShoreCorner corner);
[[nodiscard]] base::Result<void> addIsland(open_water::OpenWater& open, const geo::Ring& island);
[[nodiscard]] base::Result<void> removeIslandAt(open_water::OpenWater& open, geo::WaterPoint at);
/// A shore gone round anew; islands inside it stay.
[[nodiscard]] base::Result<void> traceShore(open_water::OpenWater& open, const geo::Ring& shore);

} // namespace edits
