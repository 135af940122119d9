// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"

#include <vector>

namespace readers {

/// A line that runs back to near its beginning, as a ring; empty where its ends lie farther apart
/// than 30 m and than a tenth of its length.
[[nodiscard]] geo::LonLatRing closedRing(geo::LonLatRing line);

/// Rings sorted into pieces: those inside an odd number of others are islands of the smallest ring
/// around them.
[[nodiscard]] std::vector<geo::LonLatPiece> nested(std::vector<geo::LonLatRing> rings);

} // namespace readers
