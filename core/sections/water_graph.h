// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/connected_pieces.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"
#include "core/sections/part_sums.h"

#include <cstdint>
#include <vector>

namespace sections {

/// A step from one node to the next.
struct WaterStep {
    std::int32_t to = 0;
    float length_m = 0.0F;
    float border_m = 0.0F; ///< Length of the border between the two.
    bool alongSide = true; ///< False where they touch across corners only.
    bool isWay = true; ///< True along a side, or across a corner with open water both ways round
                       ///< it: without those, distances would be those of a town of square blocks.
};

/// A small connected lump of fishable cells.
struct WaterNode {
    PartSums sums; ///< Its border is that with land, closed and too deep water alone.
    std::vector<WaterStep> steps;
    [[nodiscard]] geo::WaterPoint middle() const {
        return {sums.x_m3 / sums.area_m2, sums.y_m3 / sums.area_m2};
    }
};

/// The fishable water as a graph of lumps, each a part of one square block of cells that hangs
/// together. Steps never lead over land.
struct WaterGraph {
    std::vector<WaterNode> nodes;
    /// The node of each cell; negative where the cell is not fishable.
    grid::PieceGrid nodeOfCell;
    std::vector<std::vector<std::size_t>> cellsOfNode;
};

/// Length of border that two cells which touch along a side, or across a corner, stand for when
/// they lie on different sides of it (Crofton's formula with four directions: within 5 % of the
/// true length whatever its direction).
[[nodiscard]] double sideBorder_m(double cell_m);
[[nodiscard]] double cornerBorder_m(double cell_m);

/// The sums of one cell. Cells on the shore count by their share of water, but for not less than a
/// hundredth, so that every part has a middle.
[[nodiscard]] PartSums sumsOfCell(const grid::DepthGrid& depth, const grid::Mask& mask,
                                  std::size_t cell);

/// \param isFishable not 0 in cells that may be fished. \param blockCells side of a block in cells,
/// at least 1.
[[nodiscard]] WaterGraph graphOf(const grid::DepthGrid& depth, const grid::Mask& mask,
                                 const grid::Grid<std::uint8_t>& isFishable, int blockCells);

} // namespace sections
