// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sections/part_cost.h"
#include "core/sections/water_graph.h"

#include <vector>

namespace sections {

/// The part of each node, numbered from 0.
struct GraphParts {
    std::vector<std::int32_t> partOfNode;
    std::size_t count = 0;
};

/// Where the hexagons of a layout lie.
struct HexagonShift {
    double east = 0.0;
    double north = 0.0;
};

/// Lays out parts near the wanted size to start from: the water is covered with hexagons of that
/// size, fixed to the water's frame; what of a hexagon hangs together is a part, and parts that are
/// too small join a neighbour, smallest first, the two being cut anew where that is too much.
///
/// Every decision is about a few neighbours. So a change of the drawing changes the layout where
/// it is, and not the whole map, as cutting the water in two again and again would.
///
/// \param shift how far the hexagons are moved east and north, in shares of the way from one to the
/// next; other shifts are other layouts of the same water.
[[nodiscard]] GraphParts layParts(const WaterGraph& graph, const PartCost& cost,
                                  HexagonShift shift = {});

} // namespace sections
