// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/outline.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"
#include "core/surface/hypsography.h"

#include <string>
#include <vector>

namespace surface {

/// What to measure.
struct MeasureSettings {
    /// Distance between the depths of the table, 0.01 to 100 m. 1 m: as limnology prints them.
    units::Length step = units::Length::metres(1.0);
    /// How far the level stands above chart level (below: negative), -100 to 100 m. Above it the
    /// banks are taken as upright at the shoreline, because nothing is known of the land.
    units::Length rise = units::Length::metres(0.0);
};

/// One sentence for each setting out of its range; none where all is well.
[[nodiscard]] std::vector<std::string> problemsIn(const MeasureSettings& settings);

/// Area, volume, depths, shoreline and the table of both by depth. Each cell is cut into 16 parts
/// with depths bilinear between cell centres; cells on the shore count by their share. Within 0.5 %
/// of a cone or a paraboloid of 40 cells across. Shore development after Hutchinson 1957:
/// L / (2 sqrt(pi A)).
/// \return wrongUse for settings out of range, or a mask and depths on different frames;
/// unusableInput where no cell holds water at that level; cancelled.
[[nodiscard]] base::Result<Hypsography>
measureWater(const grid::DepthGrid& depth, const grid::Mask& mask, const geo::Outline& outline,
             const MeasureSettings& settings, base::Progress& progress);

} // namespace surface
