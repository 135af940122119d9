// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sections/water_graph.h"

#include <span>

namespace sections {

/// What a ruler alone would make of the water: pieces of the same number by straight distance to
/// their own middles (k-means, Lloyd 1982), which know neither land nor depth. A yardstick for how
/// compact sections can be on this water, and how much of its depth such pieces explain.
/// \param partOfNode the parts whose middles it starts from. \return the sums of each piece.
[[nodiscard]] std::vector<PartSums>
straightPieces(const WaterGraph& graph, const grid::DepthGrid& depth, const grid::Mask& mask,
               std::span<const std::int32_t> partOfNode, std::size_t count);

/// The sums of each piece of cells, border included.
[[nodiscard]] std::vector<PartSums> sumsOfPieces(const grid::PieceGrid& pieces, std::size_t count,
                                                 const grid::DepthGrid& depth,
                                                 const grid::Mask& mask);

} // namespace sections
