// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/grid/grid.h"

#include <cstdint>
#include <vector>

namespace grid {

/// Which piece each cell belongs to: from 0 up; negative for none.
using PieceGrid = Grid<std::int32_t>;

/// The outlines of the pieces, one entry for each number from 0 to `count` - 1: outer rings
/// counter-clockwise, the holes in them clockwise. Cells join along their sides, not across
/// corners. Each border between two pieces is smoothed once, so that neighbours share it point for
/// point; no point moves by more than half a cell, so no piece vanishes and no two borders cross.
[[nodiscard]] std::vector<std::vector<geo::Piece>> polygonsOf(const PieceGrid& pieces,
                                                              std::size_t count);

} // namespace grid
