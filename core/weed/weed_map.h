// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/grid.h"
#include "core/structure/zone.h"
#include "core/units/depth.h"

#include <chrono>
#include <optional>

namespace weed {

/// Where weed is likely, and how we know.
struct WeedMap {
    grid::Grid<float> probability; ///< Of weed in the cell, 0 to 1; NaN outside the water.
    grid::Grid<float>
        height_m; ///< Likely height above the bottom where there is weed; NaN outside the water.
    structure::ZoneMap zones;                ///< Weed beds and weed edges.
    std::optional<units::Depth> growthLimit; ///< From water clarity; absent without a Secchi depth.
    std::optional<units::Depth> growthLimitLow;  ///< The published relations differ: from here ...
    std::optional<units::Depth> growthLimitHigh; ///< ... to here.
    std::optional<std::chrono::year> year;       ///< Of which it is; notes of earlier ones fade.
    std::size_t notesUsed = 0;
    std::size_t notesOutside = 0; ///< Notes that lie outside the water.
    std::size_t notesFaded = 0;   ///< Of those used the ones of earlier years.
};

} // namespace weed
