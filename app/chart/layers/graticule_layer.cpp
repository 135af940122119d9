// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/graticule_layer.h"

#include "app/chart/graticule.h"
#include "app/chart/lettering.h"

#include <array>

namespace chart {

namespace {

constexpr double leastGap = 130.0; // pixels between lines: room for a label and for the chart

std::vector<GraticuleLine> linesOf(const LayerContext& on) {
    const auto& water = on.content.water;
    return water && water->frame ? graticuleOf(*water->frame, on.view, leastGap * on.scale)
                                 : std::vector<GraticuleLine>();
}

QPolygonF onScreen(const GraticuleLine& line, const ViewFrame& view) {
    QPolygonF polygon;
    for (const geo::WaterPoint p : line.path) {
        polygon << view.toScreen(p);
    }
    return polygon;
}

/// Where the line meets the upright or level line at `at`; it has only one such place.
QPointF meets(const QPolygonF& line, bool isMeridian, double at) {
    for (qsizetype i = 1; i < line.size(); ++i) {
        const double from = isMeridian ? line[i - 1].y() : line[i - 1].x();
        const double to = isMeridian ? line[i].y() : line[i].x();
        if ((from - at) * (to - at) <= 0.0 && from != to) {
            return line[i - 1] + (line[i] - line[i - 1]) * ((at - from) / (to - from));
        }
    }
    return line.front();
}

} // namespace

void GraticuleLayer::paint(LayerContext& on) const {
    const QPen pen(withAlpha(on.palette.ink, 0.45), 0.8 * on.scale);
    for (const GraticuleLine& line : linesOf(on)) {
        on.painter.setPen(pen);
        on.painter.drawPolyline(onScreen(line, on.view));
    }
}

void GraticuleLayer::letter(LayerContext& on) const {
    const QFont font = typeface(TypeSize::small, on.scale);
    const QRectF page = on.labels.page();
    for (const GraticuleLine& line : linesOf(on)) {
        const bool isMeridian = line.kind == GraticuleLine::Kind::meridian;
        const QString text = wordsOf(line);
        const QSizeF size = boxOf(font, text, {}).size();
        const double in = 0.5 * (isMeridian ? size.height() : size.width()) + 3.0 * on.scale;
        const QPolygonF shape = onScreen(line, on.view);
        // At the upper or left edge; at the other one where something stands there.
        const std::array edges{isMeridian ? page.top() + in : page.left() + in,
                               isMeridian ? page.bottom() - in : page.right() - in};
        for (const double at : edges) {
            const QPointF middle = meets(shape, isMeridian, at);
            if (on.labels.take(boxOf(font, text, middle))) {
                drawText(on.painter, font, middle, text, {on.palette.ink, on.palette.paper},
                         2.4 * on.scale);
                break;
            }
        }
    }
}

} // namespace chart
