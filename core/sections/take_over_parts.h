// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_frame.h"
#include "core/grid/connected_pieces.h"
#include "core/sections/numbering.h"

#include <cstdint>

namespace sections {

/// Side of the lumps that water is divided by. A section of the wanted size is made of 64: enough
/// to find its place and rough shape, few enough to be quick.
[[nodiscard]] double lumpSide_m(double wanted_m2);

/// What of an earlier division still holds.
struct TakenOver {
    grid::PieceGrid pieces;          ///< Numbered from 0; negative where not fishable, or open.
    std::size_t count = 0;           ///< 0: nothing holds.
    grid::Grid<std::uint8_t> isOpen; ///< Not 0: fishable, and to be divided anew.
    std::size_t openCells = 0;
};

/// Takes the parts of the division before over, so that an angler finds his map again: each keeps
/// what of its water is still fishable and hangs together. Water near them that they did not have
/// (the shore traced farther out, a limit a little deeper) goes to the nearest; new water that
/// would make half a section or more is open, and so is what a part leaves that has lost
/// more than half of its water and is too small by now. The same water gives the same parts to the
/// cell.
///
/// \param isFishable not 0 in cells that may be fished. \return nothing where the division before
/// was for sections of another size.
[[nodiscard]] TakenOver takeOverParts(const Numbering& before, const geo::WaterFrame& frame,
                                      const grid::Grid<std::uint8_t>& isFishable,
                                      units::Area wanted);

} // namespace sections
