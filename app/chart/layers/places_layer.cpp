// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/places_layer.h"

#include "app/chart/layers/name_beside.h"
#include "app/chart/placed_things.h"
#include "app/wording/one_line.h"
#include "app/wording/tongue.h"

namespace chart {

namespace {} // namespace

void PlacesLayer::reserve(LayerContext& on) const {
    const auto things = PlacedThings::of(on.content.water);
    if (things->launch) {
        const QPointF at = on.view.toScreen(*things->launch);
        on.labels.block(
            {at.x() - 7.0 * on.scale, at.y() - 12.0 * on.scale, 14.0 * on.scale, 16.0 * on.scale});
    }
}

void PlacesLayer::paint(LayerContext& on) const {
    const auto things = PlacedThings::of(on.content.water);
    on.painter.setPen(QPen(on.palette.card, 1.2 * on.scale));
    on.painter.setBrush(on.palette.ink);
    for (const PlacedThings::Place& place : things->places) {
        on.painter.drawEllipse(on.view.toScreen(place.at), 2.8 * on.scale, 2.8 * on.scale);
    }
    if (things->launch) {
        // A slip: a wedge that runs down into the water.
        const double s = on.scale;
        const QPointF at = on.view.toScreen(*things->launch);
        QPainterPath slip;
        slip.moveTo(at + QPointF(-6.0 * s, 3.0 * s));
        slip.lineTo(at + QPointF(6.0 * s, 3.0 * s));
        slip.lineTo(at + QPointF(6.0 * s, -10.0 * s));
        slip.closeSubpath();
        on.painter.strokePath(
            slip, QPen(on.palette.card, 3.0 * s, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        on.painter.fillPath(slip, on.palette.rust);
    }
}

void PlacesLayer::letter(LayerContext& on) const {
    const auto things = PlacedThings::of(on.content.water);
    if (things->launch) {
        nameBeside(on, on.view.toScreen(*things->launch), wording::Tongue::tr("launch"),
                   TypeStyle::bold);
    }
    for (const PlacedThings::Place& place : things->places) {
        nameBeside(on, on.view.toScreen(place.at), wording::oneLine(place.name), TypeStyle::plain);
    }
}

} // namespace chart
