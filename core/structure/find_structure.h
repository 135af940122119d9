// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/contours/band.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"
#include "core/structure/structure_settings.h"
#include "core/structure/zone.h"

namespace structure {

/// Divides the bottom into connected pieces, each of one kind: drop-off (with its top edge and its
/// foot as lines), hump, hole, trough, spur, saddle, shelf, plateau, flat. Cells of none of them
/// belong to no zone. The thresholds used come with the map.
///
/// \param depth below chart level, on the mask's frame. \param trustHalfWidth_m 95 % half-width by
/// cell, on the same frame; an empty grid where it is not known. \param bands their limit parts
/// shelf from deep flat.
/// \return wrongUse for a setting out of its range or frames that differ; unusableInput where no
/// cell holds a depth; cancelled. Same input, same zones.
[[nodiscard]] base::Result<ZoneMap>
findStructure(const grid::DepthGrid& depth, const grid::Mask& mask,
              const grid::Grid<float>& trustHalfWidth_m, const contours::Bands& bands,
              const StructureSettings& settings, base::Progress& progress);

} // namespace structure
