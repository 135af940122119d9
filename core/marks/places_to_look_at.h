// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/lying_cells.h"
#include "core/marks/mark_input.h"

#include <cstddef>
#include <functional>
#include <vector>

namespace marks {

/// Where a boat may lie: cell by cell, and at any place.
struct WhereToLie {
    const LyingCells& cells;
    std::function<bool(geo::WaterPoint)> at;
};

/// Where a mark might be worth it, all of it where a boat may lie: on drop-off and weed edges and a
/// third of a cast to either side of them, in the middle of features, on the borders of bands, and
/// on a lattice half a cast wide (finer on a pond) that is laid through the frame's origin, so that
/// a water turned by a right angle gets the same places turned. The steps widen where there would
/// be more than about `most`.
///
/// No cell is left out, however narrow the water it lies in: where a boat may lie, and the
/// lattice's place of its square is none or is not like it, one of the cells of the square that are
/// like it is a place too. Alike are cells over the same kind of bottom, in the same section, and
/// of depths within about a seventh of each other: what changes from cell to cell. All else that is
/// asked of a place changes with the circle of a cast.
[[nodiscard]] std::vector<geo::WaterPoint>
placesToLookAt(const MarkInput& input, const WhereToLie& lie, double cast_m, std::size_t most);

} // namespace marks
