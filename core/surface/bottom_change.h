// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/grid.h"
#include "core/units/area.h"
#include "core/units/length.h"
#include "core/units/volume.h"

#include <cmath>
#include <cstddef>

namespace surface {

/// How the bottom of one water has changed between two drawings, on the cells of the later one.
struct BottomChange {
    /// How far the bottom has risen, metres: what has silted up is positive, what was washed or dug
    /// out negative. NaN where not both drawings hold a depth.
    grid::Grid<float> rise_m;
    /// The true change lies within plus or minus this in 95 of 100 cells. The errors of two surveys
    /// are taken to be independent: both half-widths, squared and added. What all of one survey has
    /// in common, such as a wrong level, is not in it.
    grid::Grid<float> halfWidth_m;

    /// More than the two drawings together may be off.
    [[nodiscard]] bool isSure(std::size_t cell) const {
        return std::fabs(rise_m[cell]) > halfWidth_m[cell];
    }
};

/// What a change comes to.
struct ChangeSums {
    units::Area compared; ///< Where both hold a depth.
    units::Length middle; ///< Median of the rise: half of the cells have risen more.
    units::Area risen;    ///< By more than both may be off; `fallen` likewise.
    units::Area fallen;
    units::Volume filled; ///< Of what has risen surely; `lost` likewise. Not negative.
    units::Volume lost;
};

} // namespace surface
