// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/contours/bands_found.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"

namespace contours {

/// Which band each cell lies in, how much water each band holds, and its polygons.
///
/// Areas count a cell on the shore by its share of water; volumes are the water above the bottom of
/// the band's cells. \param depth at the level asked for (DepthGrid::shiftedBy: what lies above the
/// water is in no band), on the mask's frame. \return wrongUse where the frames differ or there are
/// more than 255 bands; cancelled.
[[nodiscard]] base::Result<BandsFound> findBands(const grid::DepthGrid& depth,
                                                 const grid::Mask& mask, const Bands& bands,
                                                 base::Progress& progress);

/// The pieces of water at that level, with what stands out of it as islands: all bands together.
/// \param depth as for findBands(). \return cancelled.
[[nodiscard]] base::Result<std::vector<geo::Piece>> findWater(const grid::DepthGrid& depth,
                                                              base::Progress& progress);

} // namespace contours
