// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/connected_pieces.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"

#include <cstdint>
#include <vector>

namespace sections {

/// A step from one node to the next.
struct WaterStep {
    std::int32_t to = 0;
    float length_m = 0.0F;
    /// What it costs to let a border run between the two: metres of border, fewer where the depth
    /// changes.
    float cut_m = 0.0F;
};

/// A small connected lump of fishable cells.
struct WaterNode {
    double area_m2 = 0.0;
    geo::WaterPoint middle;
    double depth_m = 0.0;
    std::vector<WaterStep> steps;
};

/// The fishable water as a graph of lumps, each a part of one square block of cells that hangs
/// together. Steps never lead over land.
struct WaterGraph {
    std::vector<WaterNode> nodes;
    /// The node of each cell; negative where the cell is not fishable.
    grid::Grid<std::int32_t> nodeOfCell;
};

/// \param isFishable not 0 in cells that may be fished. \param blockCells side of a block in cells,
/// at least 1. \param featureWeight how much cheaper a border is along a change of depth
/// (SectionSettings).
[[nodiscard]] WaterGraph graphOf(const grid::DepthGrid& depth, const grid::Mask& mask,
                                 const grid::Grid<std::uint8_t>& isFishable, int blockCells,
                                 double featureWeight);

} // namespace sections
