// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/connected_pieces.h"

namespace sections {

/// Takes the steps out of the borders between pieces: a cell goes over to the piece that holds most
/// of the cells within two steps of it, if it touches that piece along a side and its own piece
/// hangs together round it without it. Pieces keep their number, stay in one, and lose or gain no
/// more than a cell's width along their borders in each pass.
void smoothBorders(grid::PieceGrid& pieces, int passes);

} // namespace sections
