// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/weed_layer.h"

#include "app/chart/depth_colours.h"
#include "app/chart/texture.h"
#include "app/chart/water_path.h"

#include <cmath>

namespace chart {

namespace {

/// Three blades side by side, the middle one the tallest.
QPainterPath reedAt(QPointF foot, double height, double lean) {
    QPainterPath reed;
    const double apart = 0.24 * height;
    for (const int side : {-1, 0, 1}) {
        const double tall = side == 0 ? height : 0.66 * height;
        const QPointF from = foot + QPointF(side * apart, 0.0);
        reed.moveTo(from);
        reed.quadTo(from + QPointF(0.1 * lean, -0.6 * tall),
                    from + QPointF(lean + side * 0.18 * height, -tall));
    }
    return reed;
}

} // namespace

void WeedLayer::paint(LayerContext& on) const {
    if (!on.content.derived.weed) {
        return;
    }
    const grid::Grid<float>& probability = on.content.derived.weed->probability;
    const grid::GridFrame& frame = probability.frame();
    const auto& shore = on.content.derived.outline;
    const auto pen = [&](const QColor& colour, double alpha, double width) {
        return QPen(withAlpha(colour, alpha), width * on.scale, Qt::SolidLine, Qt::RoundCap);
    };
    // A rim lifts the reeds off bands of their own colour. Each plant is stroked alone: one path of
    // thousands is slow to fill.
    const QPen rim = pen(on.palette.card, 0.35, 2.8);
    const QPen thick = pen(on.palette.weed, 1.0, 1.25);
    const QPen thin = pen(on.palette.weed, 0.75, 0.9);
    strew(on.view, frame.box(), 14.0 * on.scale, [&](geo::WaterPoint p, QPointF at, double chance) {
        const grid::Cell cell = frame.cellOf(p);
        const float likely = frame.holds(cell) ? probability[cell] : NAN;
        // Cells on the shore reach on to the land; reeds do not.
        if (!(likely > 0.5F) || (shore && !shore->contains(p))) {
            return;
        }
        const QPainterPath reed =
            reedAt(at, (7.0 + 3.5 * chance) * on.scale, (chance - 0.5) * 5.0 * on.scale);
        on.painter.strokePath(reed, rim);
        on.painter.strokePath(reed, likely > 0.75F ? thick : thin);
    });
}

} // namespace chart
