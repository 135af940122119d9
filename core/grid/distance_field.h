// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/mask.h"

#include <limits>
#include <span>

namespace grid {

/// For every active cell: metres over water to the nearest source; infinite where none can be
/// reached, and outside the water. Fast marching on the cells (Sethian 1996, first order): within 2
/// % beyond a few cells, growth n log n.
[[nodiscard]] Grid<float>
distanceOverWater_m(const Mask& mask, std::span<const Cell> sources,
                    float farthest_m = std::numeric_limits<float>::infinity());

/// For every active cell: metres from its centre to the nearest cell for which `isSource` is not 0,
/// straight, land or not. Exact between cell centres (Felzenszwalb and Huttenlocher 2012), linear
/// in cells.
[[nodiscard]] Grid<float> straightDistance_m(const Grid<std::uint8_t>& isSource);

} // namespace grid
