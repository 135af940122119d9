// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/depth_grid.h"
#include "core/marks/mark.h"

#include <optional>
#include <span>

namespace water {

/// Lays the way of the boat into `day`: from the launch over each stop and home again, through
/// cells of `open` only, which hold today's depth and nothing that is closed. A launch on the bank
/// is left straight for the nearest water. A leg that no open water joins stays empty: better no
/// line than one over land. \param marks those that the stops name by rank; a mark in closed water
/// has no way.
void layWays(marks::DayPlan& day, std::span<const marks::Mark> marks, const grid::DepthGrid& open,
             std::optional<geo::WaterPoint> launch);

/// Today's water without what is closed.
[[nodiscard]] grid::DepthGrid openWaterOf(grid::DepthGrid today,
                                          const grid::Grid<std::uint8_t>& closed);

} // namespace water
