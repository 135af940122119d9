// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/view_frame.h"
#include "core/geo/outline.h"
#include "core/geo/path.h"

#include <QPainterPath>
#include <QPolygonF>

namespace chart {

/// Lines and rings of the water on the screen. Points nearer than `least` pixels to the one before
/// are left out.
[[nodiscard]] QPolygonF screenLine(const geo::Path& line, const ViewFrame& view,
                                   double least = 0.5);
/// Rings that lie wholly out of sight are left out; islands stay holes.
[[nodiscard]] QPainterPath screenPath(const std::vector<geo::Piece>& pieces, const ViewFrame& view,
                                      double least = 0.5);

[[nodiscard]] geo::Box boxOf(const geo::Path& line);
/// True where the two boxes share a point.
[[nodiscard]] bool meet(const geo::Box& a, const geo::Box& b);

} // namespace chart
