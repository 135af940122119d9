// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/next_lines_layer.h"

#include "app/chart/arrow_head.h"
#include "app/chart/lettering.h"
#include "app/chart/water_path.h"

namespace chart {

void NextLinesLayer::paint(LayerContext& on) const {
    if (!on.content.nextLines) {
        return;
    }
    if (on.content.nextLines->route.size() >= 2) {
        on.painter.setPen(QPen(withAlpha(on.palette.rust, 0.55), 0.9 * on.scale, Qt::DotLine));
        on.painter.drawPolyline(screenLine(on.content.nextLines->route, on.view));
    }
    for (const surface::SurveyLine& line : on.content.nextLines->lines) {
        const QPointF from = on.view.toScreen(line.start);
        const QPointF to = on.view.toScreen(line.end);
        on.painter.setPen(
            QPen(withAlpha(on.palette.card, 0.85), 4.2 * on.scale, Qt::SolidLine, Qt::RoundCap));
        on.painter.drawLine(from, to);
        QPen pen(on.palette.rust, 1.8 * on.scale, Qt::SolidLine, Qt::FlatCap);
        pen.setDashPattern({5.0, 2.5});
        on.painter.setPen(pen);
        on.painter.drawLine(from, to);
        on.painter.fillPath(arrowHead(from, to, 11.0 * on.scale), on.palette.rust);
    }
}

void NextLinesLayer::letter(LayerContext& on) const {
    if (!on.content.nextLines) {
        return;
    }
    const QFont font = typeface(TypeSize::small, on.scale, TypeStyle::bold);
    int number = 0;
    for (const surface::SurveyLine& line : on.content.nextLines->lines) {
        const QString text = QString::number(++number);
        const QPointF from = on.view.toScreen(line.start);
        const QPointF to = on.view.toScreen(line.end);
        for (const double share : {0.0, 0.5, 0.25, 0.75}) {
            const QPointF at = from + share * (to - from) + QPointF(0.0, -9.0 * on.scale);
            if (on.labels.take(boxOf(font, text, at))) {
                drawText(on.painter, font, at, text, {on.palette.rust, on.palette.card},
                         2.6 * on.scale);
                break;
            }
        }
    }
}

} // namespace chart
