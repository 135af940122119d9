// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/path.h"
#include "core/units/depth.h"

#include <vector>

namespace contours {

/// A line of equal depth. A closed one repeats its first point at the end.
struct Contour {
    units::Depth depth;
    geo::Path line;
    bool closed = false;
};

} // namespace contours
