// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/depth_grid.h"
#include "core/structure/zone_assembly.h"

namespace structure {

/// Tells shelf, plateau and flat apart among the gentle ground (marked `flat`): a piece down to
/// `limit` that borders on a drop-off, if need be across a lip as wide as `lip`, is a shelf, and a
/// plateau where most of its border is with deeper ground; all other gentle ground stays flat.
void nameGentleGround(KindGrid& kinds, const grid::DepthGrid& depth, units::Depth limit,
                      units::Length lip);

} // namespace structure
