// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/weed_layer.h"

#include "app/chart/depth_colours.h"
#include "app/chart/texture.h"
#include "app/chart/water_path.h"

#include <algorithm>
#include <cmath>

namespace chart {

namespace {

/// Three blades side by side, the middle one the tallest.
QPainterPath reedAt(QPointF foot, double height, double lean) {
    QPainterPath reed;
    const double apart = 0.24 * height;
    for (const int side : {-1, 0, 1}) {
        const double tall = side == 0 ? height : 0.66 * height;
        const QPointF from = foot + QPointF(side * apart, 0.0);
        reed.moveTo(from);
        reed.quadTo(from + QPointF(0.1 * lean, -0.6 * tall),
                    from + QPointF(lean + side * 0.18 * height, -tall));
    }
    return reed;
}

/// A note at its place: full for thick weed, half for thin, empty for none.
void paintPlace(LayerContext& on, QPointF at, weed::Growth growth, double worth) {
    const double radius = 4.2 * on.scale;
    const QRectF box(at.x() - radius, at.y() - radius, 2.0 * radius, 2.0 * radius);
    on.painter.setPen(QPen(withAlpha(on.palette.card, worth), 3.4 * on.scale));
    on.painter.setBrush(withAlpha(on.palette.card, worth));
    on.painter.drawEllipse(box);
    on.painter.setPen(Qt::NoPen);
    on.painter.setBrush(withAlpha(on.palette.weed, worth));
    if (growth != weed::Growth::none) {
        constexpr int halfTurn = 180 * 16;
        on.painter.drawPie(box, halfTurn, growth == weed::Growth::thin ? halfTurn : 2 * halfTurn);
    }
    on.painter.setPen(QPen(withAlpha(on.palette.weed, worth), 1.4 * on.scale));
    on.painter.setBrush(Qt::NoBrush);
    on.painter.drawEllipse(box);
}

/// A line or the border of an area: broad for thick weed, narrow for thin, broken for none.
void paintCourse(LayerContext& on, const weed::WeedNote& note, const QPolygonF& way, double worth) {
    const double width = (note.growth == weed::Growth::thick ? 3.2 : 1.8) * on.scale;
    const auto stroke = [&](const QPen& pen) {
        on.painter.setPen(pen);
        on.painter.setBrush(Qt::NoBrush);
        note.extent == weed::Extent::area ? on.painter.drawPolygon(way)
                                          : on.painter.drawPolyline(way);
    };
    stroke(QPen(withAlpha(on.palette.card, worth), width + 2.4 * on.scale));
    stroke(QPen(withAlpha(on.palette.weed, worth), width,
                note.growth == weed::Growth::none ? Qt::DashLine : Qt::SolidLine));
}

/// The notes as they were made, those of earlier years pale.
void paintNotes(LayerContext& on) {
    const auto& water = on.content.water;
    if (!water || !water->frame) {
        return;
    }
    for (const weed::WeedNote& note : water->weedNotes) {
        constexpr double palest = 0.25; // still to be seen
        const double worth = std::max(weed::worthOf(note, on.content.derived.weed->year), palest);
        if (note.extent == weed::Extent::place) {
            paintPlace(on, on.view.toScreen(water->frame->toWater(note.place)), note.growth, worth);
        } else {
            const geo::Path course = water->frame->toWater(std::span(note.corners));
            paintCourse(on, note, screenLine(course, on.view, 1.0), worth);
        }
    }
}

} // namespace

void WeedLayer::paint(LayerContext& on) const {
    if (!on.content.derived.weed) {
        return;
    }
    paintReeds(on);
    // While weed is what one works at.
    if (on.content.zonesPicked == ZonesPicked::weed) {
        paintNotes(on);
    }
}

void WeedLayer::paintReeds(LayerContext& on) {
    const grid::Grid<float>& probability = on.content.derived.weed->probability;
    const grid::GridFrame& frame = probability.frame();
    const auto& shore = on.content.derived.outline;
    const auto pen = [&](const QColor& colour, double alpha, double width) {
        return QPen(withAlpha(colour, alpha), width * on.scale, Qt::SolidLine, Qt::RoundCap);
    };
    // A rim lifts the reeds off bands of their own colour. Each plant is stroked alone: one path of
    // thousands is slow to fill.
    const QPen rim = pen(on.palette.card, 0.35, 2.8);
    const QPen thick = pen(on.palette.weed, 1.0, 1.25);
    const QPen thin = pen(on.palette.weed, 0.75, 0.9);
    strew(on.view, frame.box(), 14.0 * on.scale, [&](geo::WaterPoint p, QPointF at, double chance) {
        const grid::Cell cell = frame.cellOf(p);
        const float likely = frame.holds(cell) ? probability[cell] : NAN;
        // Cells on the shore reach on to the land; reeds do not.
        if (!(likely > 0.5F) || (shore && !shore->contains(p))) {
            return;
        }
        const QPainterPath reed =
            reedAt(at, (7.0 + 3.5 * chance) * on.scale, (chance - 0.5) * 5.0 * on.scale);
        on.painter.strokePath(reed, rim);
        on.painter.strokePath(reed, likely > 0.75F ? thick : thin);
    });
}

} // namespace chart
