// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/contours/contour.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"

#include <span>

namespace contours {

/// The lines of equal depth at `levels`, shallow to deep, simplified by less than half a cell. They
/// end at the shore and never run along it for its own sake.
/// \param depth on the mask's frame, at the level asked for (DepthGrid::shiftedBy). \return
/// wrongUse where the frames differ or a level is not finite; cancelled.
[[nodiscard]] base::Result<std::vector<Contour>> traceContours(const grid::DepthGrid& depth,
                                                               const grid::Mask& mask,
                                                               std::span<const units::Depth> levels,
                                                               base::Progress& progress);

} // namespace contours
