// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/grid/grid_frame.h"

#include <span>
#include <vector>

namespace grid {

/// The cells whose middle lies inside the pieces, ascending. The other way round than
/// polygonsOf(): outlines that were drawn round cells of this frame give just those cells back.
/// Rings may touch themselves and each other.
[[nodiscard]] std::vector<std::size_t> cellsWithin(std::span<const geo::Piece> pieces,
                                                   const GridFrame& frame);

} // namespace grid
