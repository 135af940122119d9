// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/weed_layer.h"

#include "app/chart/depth_colours.h"
#include "app/chart/texture.h"
#include "app/chart/water_path.h"

#include <cmath>

namespace chart {

namespace {

/// Three blades from one foot.
void addReed(QPainterPath& reeds, QPointF foot, double height, double lean) {
    reeds.moveTo(foot);
    reeds.quadTo(foot + QPointF(0.1 * lean, -0.6 * height), foot + QPointF(lean, -height));
    reeds.moveTo(foot);
    reeds.lineTo(foot + QPointF(-0.30 * height, -0.72 * height));
    reeds.moveTo(foot);
    reeds.lineTo(foot + QPointF(0.34 * height, -0.66 * height));
}

} // namespace

void WeedLayer::paint(LayerContext& on) const {
    if (!on.content.derived.weed) {
        return;
    }
    const grid::Grid<float>& probability = on.content.derived.weed->probability;
    const grid::GridFrame& frame = probability.frame();
    QPainterPath thick;
    QPainterPath thin;
    strew(on.view, frame.box(), 13.0 * on.scale, [&](geo::WaterPoint p, QPointF at, double chance) {
        const grid::Cell cell = frame.cellOf(p);
        const float likely = frame.holds(cell) ? probability[cell] : NAN;
        if (!(likely > 0.5F)) {
            return;
        }
        const double height = (6.5 + 3.5 * chance) * on.scale;
        addReed(likely > 0.75F ? thick : thin, at, height, (chance - 0.5) * 5.0 * on.scale);
    });
    const auto pen = [&](double alpha, double width) {
        return QPen(withAlpha(on.palette.reed, alpha), width * on.scale, Qt::SolidLine,
                    Qt::RoundCap);
    };
    // A rim lifts the reeds off bands of their own colour.
    const QPen rim(withAlpha(on.palette.card, 0.30), 2.6 * on.scale, Qt::SolidLine, Qt::RoundCap);
    on.painter.strokePath(thick, rim);
    on.painter.strokePath(thick, pen(1.0, 1.25));
    on.painter.strokePath(thin, pen(0.75, 0.9));
}

} // namespace chart
