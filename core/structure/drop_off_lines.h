// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/structure/slope_grid.h"
#include "core/structure/zone.h"

namespace structure {

/// Draws the top edges and the feet of a drop-off from its outline: the border with shallower water
/// is its top edge, that with deeper water its foot, each then moved along the slope, by no more
/// than `reach`, to where the bottom bends most (downward at the top, to the level at the foot).
/// Where the drop-off begins at the shore itself its top is a line along the shore (shoreTops).
/// Pieces of line shorter than `least` are left out.
void addEdgeLines(Zone& dropOff, const SlopeGrid& slope, units::Length reach, units::Length least);

} // namespace structure
