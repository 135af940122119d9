// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/sections/part_cost.h"
#include "core/sections/water_graph.h"

#include <vector>

namespace sections {

/// Cuts neighbouring parts anew, two at a time: their water is put together and cut by PairCutter,
/// and the cut is kept where it is clearly cheaper than the border they had. Finds what settling
/// borders lump by lump cannot reach, for example two parts side by side along a bank instead of
/// one behind the other. Hardly better is not better: small changes of the drawing must not turn
/// the map over.
///
/// \param partOfNode and \param parts are changed; parts keep hanging together along sides.
void recutPairs(const WaterGraph& graph, std::vector<std::int32_t>& partOfNode,
                std::vector<PartSums>& parts, const PartCost& cost, const base::Progress& progress);

} // namespace sections
