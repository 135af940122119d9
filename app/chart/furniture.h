// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

#include <functional>
#include <optional>
#include <vector>

namespace chart {

/// One thing that stands beside the map: its box on the page and how to draw it there.
struct FurniturePiece {
    QRectF box;
    std::function<void(LayerContext&, const QRectF&)> draw;
    bool isWind = false; ///< Its arrow can be turned, see windArrowIn().
};

/// North at the upper right, the scale at the lower left, the key at the lower right; the wind and
/// what crossings mean where they hide the least water.
/// What there is nothing to say for is left out.
[[nodiscard]] std::vector<FurniturePiece> furnitureOf(const LayerContext& on);

/// How wide the key is, so that a chart of the whole water can leave room for it.
[[nodiscard]] double keyWidth(double scale);

/// The longest round length (1, 2, 5 x 10^n of the user's unit) that is at most `most` pixels.
[[nodiscard]] units::Length roundLength(const wording::Words& words, double pixelsPerMetre,
                                        double most);

/// Where the arrow of the wind stands in its piece: its middle and half its length.
struct WindArrow {
    QPointF middle;
    double reach = 0.0;
};
[[nodiscard]] WindArrow windArrowIn(const QRectF& box, double scale);
/// On the screen; nothing where no wind is shown.
[[nodiscard]] std::optional<WindArrow> windArrowOf(const ChartContent& content,
                                                   const ViewFrame& view);

/// Where the wind stands: an arrow the way it blows, in a square of `side`.
void drawWindArrow(QPainter& painter, QPointF middle, double side, units::Bearing from,
                   const QColor& colour, double width);

} // namespace chart
