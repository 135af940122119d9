// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"
#include "core/surface/trust.h"
#include "core/surface/trust_curve.h"
#include "core/units/area.h"
#include "core/units/length.h"

#include <optional>
#include <vector>

namespace surface {

/// How far off the drawing was on soundings that had been held out of it, in whole stretches of
/// track.
struct HeldOutError {
    double median_m = 0.0;
    double mean_m = 0.0; ///< Mean of the absolute errors.
    int soundings = 0;   ///< How many were held out in all.
};

/// How the drawing was made: what was chosen, what it cost, what was left out.
struct DrawReport {
    units::Length cell;            ///< Side of a cell.
    std::size_t cells = 0;         ///< Cells that hold a depth.
    double stiffness = 0.0;        ///< `a` of the bending energy, chosen or set.
    double contourStiffness = 0.0; ///< `b2`, the extra stiffness along contours, chosen or set.
    std::optional<HeldOutError> heldOut; ///< Absent where there were too few soundings to hold out.
    std::optional<TrustCurve> trustCurve; ///< Absent where no trust was drawn.
    /// Of how many soundings stiffness and trust curve were chosen; of fewer or more than are used
    /// where they were kept from the drawing before.
    std::size_t chosenFrom = 0;
    units::Area chosenOver;    ///< The water at that time.
    bool isChoiceKept = false; ///< True where they were kept from the drawing before.
    std::size_t soundingsUsed = 0;
    std::size_t soundingsOutside = 0; ///< On land, left out.
    std::vector<std::size_t> spikes;  ///< Positions in the soundings given, left out as spikes.
    /// By how much the two survey days that disagree most do; nothing where none does.
    std::optional<units::Length> daysDiffer;
    std::size_t daysWithoutLevel = 0; ///< Survey days whose water level nobody noted or agreed.
    int passes = 0;                   ///< Solutions with renewed directions and weights.
    int iterations = 0;               ///< Steps of the solver in all passes.
    double drawSeconds = 0.0;         ///< Wall time of the drawing.
    double trustSeconds = 0.0;        ///< Wall time of the trust.
};

/// The bottom as drawn from soundings and the shore, how far it can be trusted, and how it came
/// about. Mask, depth and trust lie on the same frame; every active cell has a depth and a trust.
struct DrawnWater {
    grid::Mask mask;
    grid::DepthGrid depth; ///< Below chart level.
    TrustGrid trust;
    DrawReport report;
};

} // namespace surface
