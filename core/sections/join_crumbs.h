// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/connected_pieces.h"
#include "core/grid/mask.h"

namespace sections {

/// Gives every piece smaller than `least_m2` to the piece that is nearest to it over water, deep or
/// closed water too, and numbers the pieces from 0 without gaps. Where none can be reached over
/// water, the small piece stays by itself. \return how many pieces there are.
std::size_t joinCrumbs(grid::PieceGrid& pieces, std::size_t count, const grid::Mask& mask,
                       double least_m2);

} // namespace sections
