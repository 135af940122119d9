// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/geo/lon_lat.h"

#include <vector>

namespace edits {

/// Gives the water a shoreline (none: takes it away), and lays the frame where it has none yet.
/// \return the error of water::layFrame(); the water is then as it was.
[[nodiscard]] base::Result<void> setShoreline(open_water::OpenWater& open,
                                              std::vector<geo::LonLatPiece> shoreline);

} // namespace edits
