// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/closed_layer.h"

#include "app/chart/lettering.h"
#include "app/chart/placed_things.h"
#include "app/chart/water_path.h"
#include "app/wording/one_line.h"
#include "app/wording/tongue.h"

namespace chart {

void ClosedLayer::paint(LayerContext& on) const {
    const auto things = PlacedThings::of(on.content.water);
    QPainterPath shore;
    if (on.content.derived.outline) {
        shore = screenPath(on.content.derived.outline->pieces(), on.view);
    }
    for (const PlacedThings::Closed& closed : things->closed) {
        const QPainterPath path = screenPath(closed.pieces, on.view);
        if (path.isEmpty()) {
            continue;
        }
        on.painter.save();
        if (!shore.isEmpty()) {
            on.painter.setClipPath(shore, Qt::IntersectClip);
        }
        on.painter.setClipPath(path, Qt::IntersectClip);
        on.painter.fillPath(path, withAlpha(on.palette.paper, 0.55));
        const QRectF box =
            path.boundingRect().intersected(QRectF(QPointF(0.0, 0.0), on.view.size()));
        QPainterPath lines;
        const double gap = 11.0 * on.scale;
        for (double x = box.left() - box.height(); x < box.right() + box.height(); x += gap) {
            lines.moveTo(x, box.bottom());
            lines.lineTo(x + box.height(), box.top());
            lines.moveTo(x, box.top());
            lines.lineTo(x + box.height(), box.bottom());
        }
        on.painter.strokePath(lines, QPen(withAlpha(on.palette.ink, 0.42), 0.8 * on.scale));
        QPen border(on.palette.ink, 2.0 * on.scale);
        border.setDashPattern({4.0, 2.0, 1.0, 2.0});
        on.painter.strokePath(path, border);
        on.painter.restore();
    }
}

void ClosedLayer::letter(LayerContext& on) const {
    const auto things = PlacedThings::of(on.content.water);
    const QFont font = typeface(TypeSize::small, on.scale, TypeStyle::bold);
    for (const PlacedThings::Closed& closed : things->closed) {
        const QRectF box = screenPath(closed.pieces, on.view)
                               .boundingRect()
                               .intersected(QRectF(QPointF(0.0, 0.0), on.view.size()));
        if (box.isEmpty()) {
            continue;
        }
        const QString name = wording::oneLine(closed.name);
        const QString text = name.isEmpty() ? wording::Tongue::tr("closed")
                                            : wording::Tongue::tr("closed: %1").arg(name);
        for (const double share : {0.5, 0.3, 0.7, 0.12, 0.88}) {
            const QPointF at(box.center().x(), box.top() + share * box.height());
            if (on.labels.take(boxOf(font, text, at))) {
                drawText(on.painter, font, at, text, {on.palette.ink, on.palette.card},
                         2.6 * on.scale);
                break;
            }
        }
    }
}

} // namespace chart
