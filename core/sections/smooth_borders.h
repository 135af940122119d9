// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/grid/connected_pieces.h"

namespace sections {

/// Takes the steps out of the borders between pieces: each cell near one goes to the piece that
/// holds the most cells within `reach_m` of it, twice (threshold dynamics; Merriman, Bence and
/// Osher 1992). Cutting and settling know eight directions only, and leave stairs in between. A
/// straight border stays where it is; every piece still hangs together; shores and what is not
/// fishable are left alone.
void smoothBorders(grid::PieceGrid& pieces, double reach_m, const base::Progress& progress);

} // namespace sections
