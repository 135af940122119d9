// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"
#include "core/reduction/crossing.h"

#include <cstddef>
#include <vector>

namespace chart {

/// A crossing as it is drawn: the more its two depths differ, the larger and the stronger in
/// colour; what differs by more than a yardstick allows stands in a ring. So it can be read
/// without telling colours apart.
struct CrossingDot {
    double share = 0.0;    ///< Of the difference that gets the full size, -1 to 1.
    double radius = 0.0;   ///< Without the ring.
    bool isBeyond = false; ///< Beyond what two soundings of IHO S-44 order 2 may differ by.
};

[[nodiscard]] CrossingDot dotOf(const reduction::Crossing& crossing, double scale);
void drawDot(QPainter& painter, QPointF at, const CrossingDot& dot, const Palette& palette,
             double scale);

/// The crossings in sight that are drawn, by their positions among all; the largest differences
/// last, to be drawn on top. Where they crowd, what differs most stands for its neighbours.
[[nodiscard]] std::vector<std::size_t> crossingsShown(const ChartContent& content,
                                                      const ViewFrame& view, double scale);

/// What the dots mean, for the foot of the chart: how large its card is, and the card itself.
[[nodiscard]] QSizeF crossingKeySize(double scale);
void drawCrossingKey(LayerContext& on, const QRectF& box);

} // namespace chart
