// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/water_frame.h"
#include "core/surface/bottom_change.h"
#include "core/surface/drawn_water.h"

namespace surface {

/// A drawing and where on Earth its cells lie. Refers to both; they must outlive it.
struct PlacedDrawing {
    const DrawnWater& drawn;
    const geo::WaterFrame& frame;
};

/// \param levelRise how much higher the chart level of the later drawing stands than that of the
/// earlier. \return unusableInput where less than three tenths of the smaller drawing lie on the
/// other, so that they can hardly be one water; cancelled.
[[nodiscard]] base::Result<BottomChange> compareDrawings(const PlacedDrawing& later,
                                                         const PlacedDrawing& earlier,
                                                         units::Length levelRise,
                                                         base::Progress& progress);

/// \param mask of the later drawing: cells on the shore count by their share of water.
[[nodiscard]] ChangeSums sumUp(const BottomChange& change, const grid::Mask& mask);

} // namespace surface
