// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/rig_drawing.h"

#include "app/chart/boat_drawing.h"
#include "app/chart/lettering.h"
#include "app/wording/tongue.h"

#include <QPainterPath>

#include <algorithm>

namespace side_view {

namespace {

constexpr double anyDistance_m = 1e6;

QPen penOf(const QColor& colour, double width) {
    return {colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
}

/// The text at the first of `places` that is free.
void letterAt(const SideOn& on, const QString& text, const QColor& letters,
              std::initializer_list<QPointF> places) {
    const QFont font = chart::typeface(chart::TypeSize::small, on.scale);
    for (const QPointF at : places) {
        if (on.labels.take(chart::boxOf(font, text, at))) {
            chart::drawText(on.painter, font, at, text, {letters, on.palette.card}, 2.4 * on.scale);
            return;
        }
    }
}

double widthOf(const SideOn& on, const QString& text) {
    return chart::boxOf(chart::typeface(chart::TypeSize::small, on.scale), text, {}).width();
}

struct Rope {
    QPointF cleat;
    QPointF anchor;
};

void letterRope(const SideOn& on, const Rope& rope, const QString& text) {
    // In the air beside the boat; else beside the rope on its outer side.
    const double half = 0.5 * widthOf(on, text) + 8.0 * on.scale;
    const double side = rope.anchor.x() > rope.cleat.x() ? 1.0 : -1.0;
    const auto along = [&](double t) { return rope.cleat + t * (rope.anchor - rope.cleat); };
    const double up = 12.0 * on.scale;
    const QPointF air(rope.cleat.x() + side * half, on.frame.box.top() + 10.0 * on.scale);
    letterAt(on, text, on.palette.rust,
             {air, air + QPointF(side * 40.0 * on.scale, 0.0),
              along(0.45) + QPointF(side * half, -up), along(0.7) + QPointF(side * half, -up),
              along(0.8) + QPointF(-side * half, up)});
}

/// Off a cut along one cast the other rods have nothing to say.
bool isShown(const SideOn& on, int number) {
    return !on.scene.rod || static_cast<int>(*on.scene.rod) + 1 == number;
}

void drawBoat(const SideOn& on, double lie, double ahead, const marks::Tackle& tackle) {
    const double draught_m = 0.15;
    const double height = (tackle.bowHeight.inMetres() + draught_m) * on.frame.pixelsPerMetreDown();
    const QPainterPath boat = chart::boatFromTheSide(
        tackle.boatLength.inMetres() * on.frame.pixelsPerMetreAlong(), height);
    QTransform place;
    const QPointF keel = on.frame.at(lie, draught_m);
    place.translate(keel.x(), keel.y());
    place.scale(ahead, 1.0);
    on.painter.setBrush(on.palette.card);
    on.painter.setPen(penOf(on.palette.rust, 2.0 * on.scale));
    on.painter.drawPath(place.map(boat));
}

void drawRods(const SideOn& on, const marks::Mark& mark, QPointF tips) {
    int number = 0;
    for (const rods::RodPlace& rod : mark.spread.rods) {
        if (!isShown(on, ++number)) {
            continue;
        }
        const auto along = on.scene.cut.alongOf(rod.place, anyDistance_m);
        if (!along) {
            continue;
        }
        const QPointF top = on.frame.at(*along, 0.0);
        const QPointF bait = on.frame.at(*along, rod.depth.inMetres());
        on.painter.setPen(penOf(on.palette.plum, 1.1 * on.scale));
        on.painter.drawLine(tips, top);
        on.painter.setPen(penOf(on.palette.plum, 1.5 * on.scale));
        // Off the cut the bottom may be deeper: that part of the line is only hinted at.
        const QPointF bottom = on.frame.at(*along, on.scene.cut.depthAt_m(*along));
        on.painter.drawLine(top, bait.y() > bottom.y() ? bottom : bait);
        if (bait.y() > bottom.y()) {
            QPen hint = penOf(on.palette.plum, 1.2 * on.scale);
            hint.setDashPattern({1.5, 3.0});
            on.painter.setPen(hint);
            on.painter.drawLine(bottom, bait);
            on.painter.setPen(penOf(on.palette.plum, 1.5 * on.scale));
        }
        on.painter.setBrush(on.palette.card);
        on.painter.drawEllipse(top, 3.2 * on.scale, 3.2 * on.scale);
        on.painter.setBrush(on.palette.plum);
        on.painter.drawEllipse(bait, 2.4 * on.scale, 2.4 * on.scale);
    }
    number = 0;
    for (const rods::RodPlace& rod : mark.spread.rods) {
        ++number;
        const auto along = on.scene.cut.alongOf(rod.place, anyDistance_m);
        if (!along || !isShown(on, number)) {
            continue;
        }
        const QString text = wording::Tongue::tr("rod %1  stop knot %2")
                                 .arg(number)
                                 .arg(on.scene.words.depth(rod.stopKnot));
        const double half = 0.5 * widthOf(on, text) + 7.0 * on.scale;
        const auto beside = [&](double share, double side) {
            return on.frame.at(*along, share * rod.depth.inMetres()) + QPointF(side * half, 0.0);
        };
        letterAt(on, text, on.palette.plum,
                 {beside(0.3, 1.0), beside(0.3, -1.0), beside(0.55, 1.0), beside(0.55, -1.0),
                  beside(0.8, 1.0), beside(0.8, -1.0), beside(0.15, 1.0), beside(0.15, -1.0)});
    }
}

} // namespace

void drawRig(const SideOn& on, const marks::Mark& mark, const marks::Tackle& tackle) {
    const anchoring::AnchorSet& set = mark.anchors;
    const Cut& cut = on.scene.cut;
    const double lie = cut.alongOf(set.lie.centre, anyDistance_m).value_or(0.0);
    if (on.scene.rod) {
        // Her ropes lead elsewhere; she is drawn as if she lay along the cast.
        drawRods(on, mark, on.frame.at(lie, -tackle.bowHeight.inMetres() - 0.3));
        drawBoat(on, lie, 1.0, tackle);
        return;
    }
    const double bow = cut.alongOf(set.bow.place, anyDistance_m).value_or(0.0);
    const double half = 0.5 * tackle.boatLength.inMetres();
    const double rail_m = tackle.bowHeight.inMetres();
    const double ahead = bow >= lie ? 1.0 : -1.0;
    const Rope bowRope{on.frame.at(lie + ahead * half, -rail_m),
                       on.frame.at(bow, set.bow.depth.inMetres())};
    std::vector<Rope> ropes{bowRope};
    if (set.stern) {
        const double stern = cut.alongOf(set.stern->place, anyDistance_m).value_or(0.0);
        ropes.push_back({on.frame.at(lie - ahead * half, -rail_m),
                         on.frame.at(stern, set.stern->depth.inMetres())});
    }
    drawRods(on, mark, on.frame.at(lie, -rail_m - 0.3));
    on.painter.setPen(penOf(on.palette.rust, 1.8 * on.scale));
    for (const Rope& rope : ropes) {
        on.painter.drawLine(rope.cleat, rope.anchor);
        on.painter.strokePath(chart::crossShape(rope.anchor, 5.0 * on.scale),
                              penOf(on.palette.rust, 2.4 * on.scale));
    }
    drawBoat(on, lie, ahead, tackle);
    letterRope(on, bowRope,
               wording::Tongue::tr("bow rope %1, scope %2")
                   .arg(on.scene.words.length(set.bow.rope))
                   .arg(wording::Tongue::number(set.bow.scope, 1)));
    if (set.stern) {
        letterRope(
            on, ropes.back(),
            wording::Tongue::tr("stern rope %1").arg(on.scene.words.length(set.stern->rope)));
    }
}

} // namespace side_view
