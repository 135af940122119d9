// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/active_cells.h"

namespace surface::solver {

/// Change of a field per metre to the east and to the north.
struct Gradient {
    Field east, north;
};

/// Central differences between active cells, one-sided beside the shore, 0 where a cell stands
/// alone.
[[nodiscard]] Field changeEast(const ActiveCells& cells, const Field& field);
[[nodiscard]] Field changeNorth(const ActiveCells& cells, const Field& field);
/// Both.
[[nodiscard]] Gradient gradientOf(const ActiveCells& cells, const Field& field);

} // namespace surface::solver
