// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"

namespace support {

/// An invented water shaped like a rounded star, whose depth is 20 m x (1 - r^2) with r the share
/// of the way from the middle to the shore: every contour is the shore, shrunk. All layers of a
/// chart have something to draw on it.
[[nodiscard]] geo::WaterPoint starPoint(double share, double angle_deg);
[[nodiscard]] double starDepth_m(geo::WaterPoint p);
[[nodiscard]] water::Derived starDerived();
/// Named "Skarrow Water", with places, closed water, a launch and a small log.
[[nodiscard]] water::Water starWater();
/// Eight marks on it with anchors and rods, in order of rank; wind from 300 degrees.
[[nodiscard]] water::PlannedDay starDay();
/// All of it, with the usual layers.
[[nodiscard]] chart::ChartContent starContent();

} // namespace support
