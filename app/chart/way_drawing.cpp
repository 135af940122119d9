// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/way_drawing.h"

#include "app/chart/arrow_head.h"
#include "app/chart/water_path.h"

#include <QLineF>

namespace chart {

namespace {

constexpr double leastForArrow = 26.0; // pixels at scale 1

void drawLeg(LayerContext& on, const geo::Path& leg) {
    if (leg.size() < 2) {
        return;
    }
    const QPolygonF line = screenLine(leg, on.view);
    on.painter.setBrush(Qt::NoBrush);
    on.painter.setPen(QPen(withAlpha(on.palette.card, 0.8), 3.4 * on.scale, Qt::SolidLine,
                           Qt::RoundCap, Qt::RoundJoin));
    on.painter.drawPolyline(line);
    QPen pen(on.palette.ink, 1.3 * on.scale, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    pen.setDashPattern({6.0, 3.0});
    on.painter.setPen(pen);
    on.painter.drawPolyline(line);
    if (const auto arrow = arrowOn(line, leastForArrow * on.scale)) {
        on.painter.fillPath(arrowHead(arrow->from, arrow->tip, 9.0 * on.scale), on.palette.ink);
    }
}

} // namespace

std::optional<LegArrow> arrowOn(const QPolygonF& leg, double least) {
    double length = 0.0;
    for (qsizetype i = 1; i < leg.size(); ++i) {
        length += QLineF(leg[i - 1], leg[i]).length();
    }
    if (length < least) {
        return std::nullopt;
    }
    double left = 0.5 * length;
    for (qsizetype i = 1; i < leg.size(); ++i) {
        const QLineF part(leg[i - 1], leg[i]);
        if (part.length() > 0.0 && left <= part.length()) {
            return LegArrow{part.p1(), part.pointAt(left / part.length())};
        }
        left -= part.length();
    }
    return std::nullopt;
}

void drawWay(LayerContext& on, const marks::DayPlan& day) {
    for (const marks::DayStop& stop : day.stops) {
        drawLeg(on, stop.way);
    }
    drawLeg(on, day.wayHome);
}

} // namespace chart
