// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/path.h"
#include "core/grid/grid_frame.h"

#include <vector>

namespace sections {

/// A gentle line through `middle` along the way in which the cells stretch most, as far as it stays
/// among them: to set a name on. A single point where there is no room. \param cells ascending
/// indices.
[[nodiscard]] geo::Path spineOf(const grid::GridFrame& frame, const std::vector<std::size_t>& cells,
                                geo::WaterPoint middle);

} // namespace sections
