// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/units/bearing.h"
#include "core/units/length.h"

#include <vector>

namespace wind {

/// Open water upwind of a place.
struct Fetch {
    units::Length straight;  ///< To the first shore straight upwind.
    units::Length effective; ///< Mean over 15 radials, every 6 degrees to 42 each way, weighted by
                             ///< the cosine of the angle.
};

/// The fetch of `place` in a wind from `windFrom`, by exact radials to the shore, islands included.
/// Zero for a place that is not in the water.
/// Source: Saville 1954 (BEB TM 70), in the form of USGS UMESC PSR 97-08: sum F cos a / sum cos a.
[[nodiscard]] Fetch fetchAt(const geo::Outline& outline, geo::WaterPoint place,
                            units::Bearing windFrom);

/// The fetch of one place in a wind from one side.
struct FetchFrom {
    units::Bearing side;
    Fetch fetch;
};

/// The fetch of `place` in winds from all round, every 6 degrees from north: what fetchAt() says of
/// each, by the same radials. Empty for a place that is not in the water.
[[nodiscard]] std::vector<FetchFrom> fetchAllRound(const geo::Outline& outline,
                                                   geo::WaterPoint place);

} // namespace wind
