// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/log_layer.h"

#include "app/chart/boat_drawing.h"
#include "app/chart/lettering.h"
#include "app/chart/placed_things.h"
#include "app/chart/stay_ring.h"

#include <algorithm>

namespace chart {

namespace {

constexpr double fishFrom_pixelsPerMetre = 1.0;

void drawTrack(LayerContext& on) {
    QPainterPath line;
    bool isFirst = true;
    for (const rates::TrackPoint& point : *on.content.dayTrack) {
        const QPointF at = on.view.toScreen(point.place);
        isFirst ? line.moveTo(at) : line.lineTo(at);
        isFirst = false;
    }
    on.painter.strokePath(line, QPen(withAlpha(on.palette.card, 0.75), 3.6 * on.scale,
                                     Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    on.painter.strokePath(
        line, QPen(on.palette.plum, 1.3 * on.scale, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
}

/// The fish of a stay in a row above its ring, lost runs hollow.
void drawFish(LayerContext& on, const logbook::Stay& stay, QPointF ring, double radius) {
    constexpr std::size_t most = 5;
    const double length = 15.0 * on.scale;
    const auto runs = runsSeen(stay, on.content.logAsked);
    const std::size_t shown = std::min(runs.size(), most);
    QPointF at = ring + QPointF(-0.5 * (static_cast<double>(shown) - 1.0) * 1.25 * length,
                                -radius - 0.55 * length);
    on.painter.setPen(QPen(on.palette.plum, 1.1 * on.scale));
    for (std::size_t i = 0; i < shown; ++i) {
        const QPainterPath fish = fishShape(length).translated(at);
        on.painter.strokePath(fish, QPen(on.palette.card, 3.0 * on.scale));
        on.painter.setBrush(runs[i]->landed ? on.palette.plum : on.palette.card);
        on.painter.drawPath(fish);
        at += QPointF(1.25 * length, 0.0);
    }
    if (runs.size() > most) {
        drawText(on.painter, typeface(TypeSize::small, on.scale, TypeStyle::bold),
                 at + QPointF(4.0 * on.scale, 0.0), QStringLiteral("+%1").arg(runs.size() - most),
                 {on.palette.plum, on.palette.card}, 2.0 * on.scale);
    }
}

void drawRing(LayerContext& on, const logbook::Stay& stay, QPointF at, bool isSelected) {
    const double radius = stayRadius(stay, on.scale);
    on.painter.setPen(QPen(on.palette.card, (isSelected ? 6.0 : 3.6) * on.scale));
    const auto runs = runsSeen(stay, on.content.logAsked);
    const bool hasFish = std::ranges::any_of(runs, &logbook::Fish::landed);
    on.painter.setBrush(hasFish ? withAlpha(on.palette.plum, 0.60)
                                : withAlpha(on.palette.card, 0.35));
    on.painter.drawEllipse(at, radius, radius);
    on.painter.setPen(
        QPen(isSelected ? on.palette.rust : on.palette.plum, (isSelected ? 3.0 : 1.5) * on.scale));
    on.painter.setBrush(Qt::NoBrush);
    on.painter.drawEllipse(at, radius, radius);
}

/// What is only offered is broken and empty: it is no stay before somebody says so.
void drawOffered(LayerContext& on) {
    const auto& frame = on.content.water->frame;
    for (const logbook::Stay& stay : *on.content.offeredStays) {
        const QPointF at = on.view.toScreen(frame->toWater(stay.place));
        const double radius = 9.0 * on.scale;
        on.painter.setBrush(withAlpha(on.palette.card, 0.5));
        on.painter.setPen(QPen(on.palette.card, 4.0 * on.scale));
        on.painter.drawEllipse(at, radius, radius);
        on.painter.setPen(QPen(on.palette.plum, 1.8 * on.scale, Qt::DashLine));
        on.painter.drawEllipse(at, radius, radius);
    }
}

} // namespace

void LogLayer::paint(LayerContext& on) const {
    if (on.content.dayTrack) {
        drawTrack(on);
    }
    if (!on.content.water) {
        return;
    }
    if (on.content.offeredStays && on.content.water->frame) {
        drawOffered(on);
    }
    const geo::Box sight = on.view.box();
    const bool showsFish = on.view.pixelsPerMetre() >= fishFrom_pixelsPerMetre * on.scale;
    const auto draw = [&](const logbook::Stay& stay, geo::WaterPoint place, bool fishToo) {
        const bool isSelected = on.content.selection.stay == stay.id;
        // From far, a filled ring says enough.
        if (!isSeen(stay, on.content.logAsked, on.content.water->clock) || !sight.holds(place) ||
            (fishToo && !showsFish && !isSelected)) {
            return;
        }
        const QPointF at = on.view.toScreen(place);
        fishToo ? drawFish(on, stay, at, stayRadius(stay, on.scale))
                : drawRing(on, stay, at, isSelected);
    };
    for (const bool fishToo : {false, true}) {
        PlacedThings::forStays(
            on.content.water,
            [&](const logbook::Stay& stay, geo::WaterPoint place) { draw(stay, place, fishToo); });
    }
}

} // namespace chart
