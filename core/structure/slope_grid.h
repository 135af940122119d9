// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/depth_grid.h"

#include <optional>

namespace structure {

/// Cells to each side of the middle one in the box that comes nearest to a side of `scale`.
[[nodiscard]] int windowRadius(units::Length scale, double cell_m);

/// Metres of depth gained per metre towards the east and the north.
struct Fall {
    double eastward = 0.0;
    double northward = 0.0;
};

/// At one cell that holds a depth, by Horn 1981 (3 x 3); beside the shore one-sided.
[[nodiscard]] Fall fallAt(const grid::DepthGrid& depth, grid::Cell c);

/// How steep the bottom is in each cell, and which way it falls. A value made from a depth grid.
class SlopeGrid {
public:
    SlopeGrid() = default;
    /// Slope by Horn 1981 (3 x 3) on the grid averaged over about `scale` (a box of that side, of
    /// the cells that hold a depth); zero leaves the grid as it is. Beside the shore, where one
    /// of the nine has no depth, the differences are taken one-sided. Cost linear in cells.
    [[nodiscard]] static SlopeGrid of(const grid::DepthGrid& depth, units::Length scale);

    [[nodiscard]] const grid::GridFrame& frame() const { return percent_.frame(); }
    /// Rise over run, percent; nothing where there is no depth.
    [[nodiscard]] std::optional<double> percentAt(grid::Cell c) const;
    /// For loops: percent, NaN where there is no depth.
    [[nodiscard]] const grid::Grid<float>& percent() const { return percent_; }
    /// For loops: metres of depth gained per metre towards the east and the north; NaN where there
    /// is no depth.
    [[nodiscard]] const grid::Grid<float>& deeperEastward() const { return east_; }
    [[nodiscard]] const grid::Grid<float>& deeperNorthward() const { return north_; }

private:
    grid::Grid<float> percent_;
    grid::Grid<float> east_;
    grid::Grid<float> north_;
};

} // namespace structure
