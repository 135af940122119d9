// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/depth_grid.h"
#include "core/structure/slope_grid.h"

namespace structure {

/// How the ground stands against the places on both sides of it, along the axis where it stands out
/// most (after the ternary patterns of Jasiewicz and Stepinski 2013, kept in metres). Unlike a
/// position index it tells a ridge, which falls away on both sides, from the lip of a bank, which
/// falls away on one.
struct GroundForm {
    grid::Grid<float> ridge_m; ///< Both sides are deeper by this much; NaN where there is no water.
    grid::Grid<float> valley_m; ///< Both sides are shallower by this much; NaN likewise.
    /// The same, less what the floor of a whole basin rises over that distance (1 in 200): the
    /// middle of every lake is low ground, but not every lake has a trough along its middle.
    grid::Grid<float> trough_m;

    /// Looks along eight axes to `reach` and to half of it. A slope takes its toll: what does not
    /// stand out by 0.45 of the fall over the same distance is only the bend of a bank, or the
    /// flank of an island. An axis that ends on land tells nothing. Values below 0 mean that no
    /// axis stands out.
    /// \param depth smoothed to the scale that matters; \param slope of the same water.
    [[nodiscard]] static GroundForm of(const grid::DepthGrid& depth, const SlopeGrid& slope,
                                       units::Length reach);
};

} // namespace structure
