// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/depth_grid.h"

namespace weed {

/// The cells round one place and how far they are from it over water: weed on one side of a spit
/// says nothing about the other.
class FindingReach {
public:
    /// Looks as far as `farthest_m`. \param place within the water.
    FindingReach(const grid::DepthGrid& depth, geo::WaterPoint place, double farthest_m);

    /// The window that has been looked at: from the first to the last cell, both included.
    [[nodiscard]] grid::Cell first() const { return first_; }
    [[nodiscard]] grid::Cell last() const { return last_; }
    /// Metres over water from the place to the middle of a cell of the window that is water;
    /// infinite where it cannot be reached. Straight where no land is near, else by fast marching
    /// (within 2 % and never less than straight).
    [[nodiscard]] double away_m(grid::Cell c) const;

private:
    [[nodiscard]] bool holdsLand(const grid::DepthGrid& depth) const;
    void march(const grid::DepthGrid& depth, double farthest_m);

    geo::WaterPoint place_;
    grid::GridFrame frame_;
    grid::Cell first_;
    grid::Cell last_;
    grid::Grid<float> marched_m_; ///< Over the window; empty where straight will do.
};

} // namespace weed
