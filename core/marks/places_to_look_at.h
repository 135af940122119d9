// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/mark_input.h"

#include <cstddef>
#include <vector>

namespace marks {

/// Where a mark might be worth it, before anything is asked of the places: on drop-off and weed
/// edges and a third of a cast to either side of them, in the middle of features, on the borders of
/// bands, and on a lattice half a cast wide (finer on a pond) that is laid through the frame's
/// origin, so that a water turned by a right angle gets the same places turned. The steps widen
/// where there would be more than about `most`.
[[nodiscard]] std::vector<geo::WaterPoint> placesToLookAt(const MarkInput& input, double cast_m,
                                                          std::size_t most);

} // namespace marks
