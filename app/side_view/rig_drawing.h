// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/side_view/side_painter.h"

namespace side_view {

/// The boat of a mark with both ropes to their anchors and each rod's line: along the surface to
/// its float, down to the bait; the stop knot's setting beside it. What stands off the cut is drawn
/// where it comes nearest to it.
void drawRig(const SideOn& on, const marks::Mark& mark, const marks::Tackle& tackle);

} // namespace side_view
