// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/soundings_layer.h"

#include "app/chart/boat_drawing.h"
#include "app/chart/set_aside_sign.h"

#include <cmath>

namespace chart {

namespace {

double apart(QPointF a, QPointF b) {
    return std::abs(a.x() - b.x()) + std::abs(a.y() - b.y());
}

} // namespace

void SoundingsLayer::paint(LayerContext& on) const {
    if (!on.content.derived.checked) {
        return;
    }
    const double least = 3.0 * on.scale;
    const geo::Box sight = on.view.box();
    QPolygonF kept;
    std::array<QPainterPath, allReasonFamilies.size()> aside;
    for (const reduction::ReducedDay& day : on.content.derived.checked->survey.days) {
        QPointF last(-1e9, -1e9);
        QPointF lastAside(-1e9, -1e9);
        for (std::size_t i = 0; i < day.points.size(); ++i) {
            if (!sight.holds(day.points[i])) {
                continue;
            }
            const QPointF at = on.view.toScreen(day.points[i]);
            if (const auto family = familyOf(day.verdicts[i])) {
                if (apart(at, lastAside) >= 5.0 * on.scale) {
                    addSign(aside[static_cast<std::size_t>(*family)], *family, at, 3.2 * on.scale);
                    lastAside = at;
                }
                continue;
            }
            if (apart(at, last) >= least) {
                kept.append(at);
                last = at;
            }
        }
    }
    on.painter.setPen(
        QPen(withAlpha(on.palette.card, 0.6), 2.4 * on.scale, Qt::SolidLine, Qt::RoundCap));
    on.painter.drawPoints(kept);
    on.painter.setPen(
        QPen(withAlpha(on.palette.ink, 0.8), 1.2 * on.scale, Qt::SolidLine, Qt::RoundCap));
    on.painter.drawPoints(kept);
    for (const ReasonFamily family : allReasonFamilies) {
        const QPainterPath& signs = aside[static_cast<std::size_t>(family)];
        on.painter.strokePath(signs, QPen(withAlpha(on.palette.card, 0.8), 3.4 * on.scale));
        on.painter.strokePath(signs, QPen(colourOf(on.palette, family), 1.5 * on.scale));
    }
}

} // namespace chart
