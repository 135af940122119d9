// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"
#include "core/marks/mark.h"

namespace chart {

/// The way of the boat through the day: a broken line leg by leg, an arrow in the middle of each
/// leg that is long enough to bear one. A leg that is not known is not drawn.
void drawWay(LayerContext& on, const marks::DayPlan& day);

/// Where the arrow of a leg stands: the middle of its length, and the point it comes from; nothing
/// for a leg shorter than `least` pixels.
struct LegArrow {
    QPointF from;
    QPointF tip;
};
[[nodiscard]] std::optional<LegArrow> arrowOn(const QPolygonF& leg, double least);

} // namespace chart
