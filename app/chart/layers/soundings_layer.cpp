// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/soundings_layer.h"

#include "app/chart/boat_drawing.h"
#include "app/chart/layers/name_beside.h"
#include "app/chart/set_aside_sign.h"
#include "app/chart/thinned_dots.h"
#include "app/chart/verdict_now.h"

#include <cmath>

namespace chart {

namespace {

double apart(QPointF a, QPointF b) {
    return std::abs(a.x() - b.x()) + std::abs(a.y() - b.y());
}

/// What the lead felt, as charts write it (IHO INT 1, section J).
QString abbreviationOf(soundings::Bottom bottom) {
    switch (bottom) {
    case soundings::Bottom::soft:
        return QStringLiteral("so");
    case soundings::Bottom::gravel:
        return QStringLiteral("G");
    case soundings::Bottom::rock:
        return QStringLiteral("R");
    case soundings::Bottom::weed:
        return QStringLiteral("Wd");
    }
    return {};
}

/// A lead on its line: a plumb line down to a small filled drop.
void drawLead(LayerContext& on, QPointF at) {
    const double s = on.scale;
    on.painter.setPen(QPen(on.palette.ink, 1.2 * s));
    on.painter.drawLine(at + QPointF(0.0, -9.0 * s), at + QPointF(0.0, -2.5 * s));
    on.painter.setBrush(on.palette.ink);
    on.painter.drawPolygon(QPolygonF{at + QPointF(-2.6 * s, 2.5 * s), at + QPointF(0.0, -3.5 * s),
                                     at + QPointF(2.6 * s, 2.5 * s)});
}

} // namespace

void SoundingsLayer::letter(LayerContext& on) const {
    if (!on.content.water || !on.content.water->frame) {
        return;
    }
    const water::Water& water = *on.content.water;
    for (const soundings::LeadLineSounding& one : water.leadLine) {
        const QPointF at = on.view.toScreen(water.frame->toWater(one.place));
        drawLead(on, at);
        if (one.bottom) {
            nameBeside(on, at, abbreviationOf(*one.bottom), TypeStyle::plain);
        }
    }
}

void SoundingsLayer::paint(LayerContext& on) const {
    if (!on.content.derived.checked) {
        return;
    }
    const double least = 3.0 * on.scale;
    const geo::Box sight = on.view.box();
    ThinnedDots kept(on.view.size(), least);
    std::array<QPainterPath, allReasonFamilies.size()> aside;
    const auto& days = on.content.derived.checked->survey.days;
    for (std::size_t d = 0; d < days.size(); ++d) {
        const reduction::ReducedDay& day = days[d];
        const std::vector<soundings::Verdict> verdicts = verdictsNow(on.content, d);
        QPointF lastAside(-1e9, -1e9);
        for (std::size_t i = 0; i < day.points.size(); ++i) {
            if (!sight.holds(day.points[i])) {
                continue;
            }
            const QPointF at = on.view.toScreen(day.points[i]);
            if (const auto family = familyOf(verdicts[i])) {
                if (apart(at, lastAside) >= 5.0 * on.scale) {
                    addSign(aside[static_cast<std::size_t>(*family)], *family, at, 3.2 * on.scale);
                    lastAside = at;
                }
                continue;
            }
            kept.take(at);
        }
    }
    on.painter.setPen(
        QPen(withAlpha(on.palette.card, 0.6), 2.4 * on.scale, Qt::SolidLine, Qt::RoundCap));
    on.painter.drawPoints(kept.dots());
    on.painter.setPen(
        QPen(withAlpha(on.palette.ink, 0.8), 1.2 * on.scale, Qt::SolidLine, Qt::RoundCap));
    on.painter.drawPoints(kept.dots());
    for (const ReasonFamily family : allReasonFamilies) {
        const QPainterPath& signs = aside[static_cast<std::size_t>(family)];
        on.painter.strokePath(signs, QPen(withAlpha(on.palette.card, 0.8), 3.4 * on.scale));
        on.painter.strokePath(signs, QPen(colourOf(on.palette, family), 1.5 * on.scale));
    }
}

} // namespace chart
