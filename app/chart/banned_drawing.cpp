// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/banned_drawing.h"

#include "app/chart/lettering.h"
#include "app/chart/placed_things.h"
#include "app/chart/water_path.h"
#include "app/wording/one_line.h"
#include "app/wording/tongue.h"

#include <algorithm>
#include <cmath>

namespace chart {

namespace {

constexpr double strokeEvery = 9.0; ///< Pixels on the screen, like the two below.
constexpr double strokeLength = 7.0;
constexpr double leastSize = 6.0;

/// Strokes from the line towards the middle of the ring.
QPainterPath strokesOf(const QPainterPath& path, QPointF middle, double scale) {
    QPainterPath strokes;
    const double length = path.length();
    const int count = std::clamp(static_cast<int>(length / (strokeEvery * scale)), 0, 4000);
    for (int k = 0; k < count; ++k) {
        const QPointF from = path.pointAtPercent((k + 0.5) / count);
        const QPointF inwards = middle - from;
        const double away = std::hypot(inwards.x(), inwards.y());
        if (away > 0.0) {
            strokes.moveTo(from);
            strokes.lineTo(from + inwards * std::min(1.0, strokeLength * scale / away));
        }
    }
    return strokes;
}

} // namespace

void drawBanned(LayerContext& on) {
    const auto things = PlacedThings::of(on.content.water);
    for (const PlacedThings::Closed& banned : things->banned) {
        const QPainterPath path = screenPath(banned.pieces, on.view);
        if (path.isEmpty()) {
            continue;
        }
        on.painter.save();
        on.painter.fillPath(path, withAlpha(on.palette.paper, 0.35));
        const QRectF box = path.boundingRect();
        if (std::min(box.width(), box.height()) > leastSize * on.scale) {
            on.painter.setClipPath(path, Qt::IntersectClip);
            on.painter.strokePath(strokesOf(path, box.center(), on.scale),
                                  QPen(withAlpha(on.palette.rust, 0.75), 1.0 * on.scale));
        }
        on.painter.strokePath(path, QPen(withAlpha(on.palette.rust, 0.9), 1.6 * on.scale));
        on.painter.restore();
    }
}

void letterBanned(LayerContext& on) {
    const auto things = PlacedThings::of(on.content.water);
    const QFont font = typeface(TypeSize::small, on.scale, TypeStyle::slanted);
    const QRectF sheet(QPointF(0.0, 0.0), on.view.size());
    for (const PlacedThings::Closed& banned : things->banned) {
        const QRectF box = screenPath(banned.pieces, on.view).boundingRect().intersected(sheet);
        if (box.isEmpty()) {
            continue;
        }
        const QString name = wording::oneLine(banned.name);
        const QString text = name.isEmpty() ? wording::Tongue::tr("banned")
                                            : wording::Tongue::tr("banned: %1").arg(name);
        for (const double share : {0.5, 0.25, 0.75}) {
            const QPointF at(box.center().x(), box.top() + share * box.height());
            if (on.labels.take(boxOf(font, text, at))) {
                drawText(on.painter, font, at, text, {on.palette.rust, on.palette.card},
                         2.6 * on.scale);
                break;
            }
        }
    }
}

} // namespace chart
