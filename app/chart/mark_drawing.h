// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"
#include "core/marks/mark.h"

#include <map>

namespace chart {

/// Where the ring of each mark stands on the screen, by rank: on its place, or moved aside by a
/// ring's width where rings would cover one another.
struct MarkRing {
    QPointF middle;
    QPointF place; ///< Where the mark itself is.
};
[[nodiscard]] std::map<int, MarkRing> ringsOf(const std::vector<marks::Mark>& marks,
                                              const ViewFrame& view, double scale);
[[nodiscard]] double ringRadius(double scale);

/// True where the boat is large enough on the screen to be drawn to scale.
[[nodiscard]] bool isNear(const ViewFrame& view, double scale);

/// The boat at its lie with both ropes, anchors and every rod's line to its bait, to scale.
void drawLie(LayerContext& on, const marks::Mark& mark, units::Length boatLength);
/// True where ropes and rods of the mark are drawn.
[[nodiscard]] bool showsLie(const ChartContent& content, const ViewFrame& view, double scale,
                            int rank);
/// What the anchors and baits of the mark are called, where there is room.
void letterLie(LayerContext& on, const marks::Mark& mark);
/// The same with what is set by them: ropes, scope, stop knots.
void letterRopesAndKnots(LayerContext& on, const marks::Mark& mark);
/// The mark's number in its ring.
void drawRing(LayerContext& on, const marks::Mark& mark, const MarkRing& ring, bool isSelected);

} // namespace chart
