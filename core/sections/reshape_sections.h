// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_frame.h"
#include "core/grid/connected_pieces.h"
#include "core/sections/section_change.h"
#include "core/units/area.h"

#include <span>

namespace sections {

/// Makes the user's changes to the pieces, one after the other. A piece that is cut keeps its
/// number on the larger side; the other side, and a piece whose border has moved, follow from that.
/// Pieces that two lines leave over, and those smaller than `least`, join the side that they touch
/// most; pockets of a piece that lie apart from where it is cut stay with the nearer side.
///
/// \param pieces numbered from 0 to count - 1; changed, without gaps in the numbers. \param least
/// size of a piece that may be cut off; never below four cells.
/// \return the changes that could not be made, each with what is wrong and what to do: a place or a
/// line outside all sections, sections that do not touch, a line that does not cut or cuts off too
/// little.
std::vector<ChangeRefused> reshapeSections(grid::PieceGrid& pieces, std::size_t& count,
                                           std::span<const SectionChange> changes,
                                           const geo::WaterFrame& frame, units::Area least);

} // namespace sections
