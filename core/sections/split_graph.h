// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/sections/water_graph.h"

#include <vector>

namespace sections {

/// How large the parts may come out, as shares of the wanted size.
struct PartSizes {
    double wanted_m2 = 40000.0;
    double least = 0.7;
    double most = 1.4;
};

/// The parts of the graph, each a list of nodes that hang together.
///
/// Each connected piece of water is cut in two again and again: of all borders at which one side is
/// nearer over water to one end of the piece than to the other by some amount, the cheapest that
/// leaves parts of allowed size on both sides. Such sides always hang together; necks and changes
/// of depth are cheap. Deterministic; about n log n for each cut.
[[nodiscard]] std::vector<std::vector<std::int32_t>>
splitGraph(const WaterGraph& graph, const PartSizes& sizes, const base::Progress& progress);

} // namespace sections
