// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/surface/solver/samples.h"

namespace surface::solver {

/// Points along one cell's length of shore.
constexpr double shorePointsPerCell = 4.0;

/// The shore in one cell: where depth 0 is asked for.
struct ShorePull {
    std::size_t place = 0;             ///< The cell.
    geo::WaterPoint middle{};          ///< Of its shore points.
    std::vector<Footprint> footprints; ///< Of its shore points.
};

/// Points every quarter of a cell along the shore, gathered by cell.
[[nodiscard]] std::vector<ShorePull>
shorePullsOf(const geo::Outline& outline, const ActiveCells& cells, const grid::GridFrame& frame);

} // namespace surface::solver
