// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/contours/band.h"
#include "core/grid/grid.h"

#include <cstdint>

namespace contours {

/// The band of a cell outside the water.
inline constexpr std::uint8_t noBand = 255;

/// The bands of one water at one level, all lists in the order of the bands.
struct BandsFound {
    std::vector<BandPolygons> polygons;
    std::vector<BandMeasure> measures;
    grid::Grid<std::uint8_t> bandOfCell; ///< noBand outside the water.
};

} // namespace contours
