// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/connected_pieces.h"
#include "core/sections/divide_water.h"

namespace sections {

/// The sections with their cards filled from their cells: outline, middle, spine, depths, area,
/// bank, drop-off, weed, trust, bands, way from the launch; numbered clockwise from the launch,
/// named by the user's names. \param pieces numbered from 0 to count - 1, in any order.
[[nodiscard]] SectionMap sectionsFrom(const grid::PieceGrid& pieces, std::size_t count,
                                      const DivideInput& input);

} // namespace sections
