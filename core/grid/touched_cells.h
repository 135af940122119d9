// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/grid/grid.h"

#include <cstdint>

namespace grid {

/// 1 in every cell whose centre is inside the shore or that the shore passes through, else 0: the
/// cells of Mask::of() without how much of each is water, which costs three times as much.
[[nodiscard]] Grid<std::uint8_t> touchedCells(const geo::Outline& outline, const GridFrame& frame);

} // namespace grid
