// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/grid.h"

namespace grid {

/// Mean over the square of `radiusCells` to each side of a cell, of the cells that are numbers;
/// not a number stays so. Cost linear in cells, whatever the radius.
[[nodiscard]] Grid<float> boxMean(const Grid<float>& values, int radiusCells);

} // namespace grid
