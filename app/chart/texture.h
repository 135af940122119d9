// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/view_frame.h"

#include <QPointF>

#include <functional>

namespace chart {

/// Calls `draw` for places strewn over what can be seen of `box`, about `gap` pixels apart, at
/// places fixed to the water so that a texture does not swim when it is moved. \param draw given
/// the place, its pixel and an even random number from 0 to 1 that belongs to the place.
void strew(const ViewFrame& view, const geo::Box& box, double gap,
           const std::function<void(geo::WaterPoint, QPointF, double)>& draw);

} // namespace chart
