// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"

namespace edits {

/// Lets the pinned mark at `place` go: it may be ranked away again.
void unpinMark(open_water::OpenWater& open, geo::LonLat place);

} // namespace edits
