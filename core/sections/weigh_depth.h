// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"
#include "core/sections/lay_parts.h"
#include "core/sections/part_cost.h"
#include "core/sections/section_settings.h"
#include "core/sections/water_graph.h"

namespace sections {

/// Pieces of water whose borders have settled.
struct SettledPieces {
    grid::PieceGrid pieceOfCell; ///< Negative where not fishable.
    std::size_t count = 0;       ///< Of the pieces, numbered from 0.
    double depthWeight = 0.0;    ///< How much depth counted.
    PartFigures figures;
    PartFigures straight; ///< Of what a ruler alone would make of the same water.
    /// How much more of the variance of depth they explain than they have to: clearly more than the
    /// ruler does, or as much where that is most of it. Negative where less; where they are not
    /// compact, less than -1.
    double merit = 0.0;

    /// True for compact pieces that tell shallow from deep.
    [[nodiscard]] bool isGood() const { return merit >= 0.0; }
};

/// Lets the borders of `parts` settle, first by lumps, with neighbours cut anew in between, then
/// cell by cell. Depth counts as the settings say, measured against what a ruler alone would leave
/// of its variance; less where the pieces would not stay as compact as the settings ask, more where
/// they would not explain clearly more of it than the ruler does. Of all weights tried the best
/// pieces count.
[[nodiscard]] SettledPieces weighDepth(const WaterGraph& graph, const grid::DepthGrid& depth,
                                       const grid::Mask& mask, const GraphParts& parts,
                                       const SectionSettings& settings,
                                       const base::Progress& progress);

} // namespace sections
