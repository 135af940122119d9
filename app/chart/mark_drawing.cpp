// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/mark_drawing.h"

#include "app/chart/boat_drawing.h"
#include "app/chart/lettering.h"
#include "app/wording/tongue.h"
#include "core/anchoring/broken_rules.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace chart {

namespace {

constexpr double nearBoat_pixels = 14.0;
constexpr double ropesFrom_pixelsPerMetre = 0.9; // below, ropes would hide under the ring

QPen penOf(const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine) {
    return {colour, width, style, Qt::RoundCap, Qt::RoundJoin};
}

/// A line with a rim of paper, so that it stands on every band.
void strokeWithRim(LayerContext& on, const QPainterPath& path, const QPen& pen) {
    on.painter.strokePath(path,
                          penOf(withAlpha(on.palette.card, 0.8), pen.widthF() + 2.2 * on.scale));
    on.painter.strokePath(path, pen);
}

void drawRods(LayerContext& on, const marks::Mark& mark, QPointF boat) {
    QPainterPath lines;
    QPainterPath baits;
    for (const rods::RodPlace& rod : mark.spread.rods) {
        const QPointF bait = on.view.toScreen(rod.place);
        lines.moveTo(boat);
        lines.lineTo(bait);
        baits.addEllipse(bait, 3.6 * on.scale, 3.6 * on.scale);
    }
    QPen dotted = penOf(on.palette.plum, 1.3 * on.scale);
    dotted.setDashPattern({2.5, 2.5});
    strokeWithRim(on, lines, dotted);
    on.painter.setPen(penOf(on.palette.plum, 1.8 * on.scale));
    on.painter.setBrush(on.palette.card);
    on.painter.drawPath(baits);
    const Selection& chosen = on.content.selection;
    if (chosen.mark == mark.rank && chosen.rod && *chosen.rod < mark.spread.rods.size()) {
        on.painter.setBrush(on.palette.plum);
        on.painter.drawEllipse(on.view.toScreen(mark.spread.rods[*chosen.rod].place),
                               3.6 * on.scale, 3.6 * on.scale);
    }
}

/// The circle that she swings in.
void drawSwing(LayerContext& on, const anchoring::AnchorSet& set) {
    if (!set.swing) {
        return;
    }
    const double radius = set.swing->radius.inMetres() * on.view.pixelsPerMetre();
    QPainterPath circle;
    circle.addEllipse(on.view.toScreen(set.bow.place), radius, radius);
    QPen dashed = penOf(on.palette.rust, 1.0 * on.scale);
    dashed.setDashPattern({5.0, 4.0});
    strokeWithRim(on, circle, dashed);
}

/// Something of the lie breaks a rule: to be seen wherever the mark is, and not by colour alone.
void drawBroken(LayerContext& on, QPointF at) {
    const double radius = 6.5 * on.scale;
    on.painter.setPen(penOf(on.palette.card, 1.6 * on.scale));
    on.painter.setBrush(on.palette.rust);
    on.painter.drawEllipse(at, radius, radius);
    drawText(on.painter, typeface(TypeSize::small, on.scale, TypeStyle::bold), at,
             QStringLiteral("!"), {on.palette.card, on.palette.rust}, 0.0);
}

/// The text beside `at`, on the side away from `from` first.
void letterBeside(LayerContext& on, QPointF at, QPointF from, const QString& text,
                  const QColor& letters) {
    const QFont font = typeface(TypeSize::small, on.scale);
    const QRectF plain = boxOf(font, text, {0.0, 0.0});
    const double away = 8.0 * on.scale;
    const bool isEast = at.x() >= from.x();
    const double x = (isEast ? 1.0 : -1.0) * (0.5 * plain.width() + away);
    const double y = 0.5 * plain.height() + away;
    const double down = at.y() >= from.y() ? y : -y;
    for (const QPointF shift : {QPointF(x, 0.0), QPointF(0.0, down), QPointF(x, down),
                                QPointF(-x, 0.0), QPointF(0.0, -down), QPointF(-x, down)}) {
        if (on.labels.take(boxOf(font, text, at + shift))) {
            drawText(on.painter, font, at + shift, text, {letters, on.palette.card},
                     2.4 * on.scale);
            return;
        }
    }
}

} // namespace

double ringRadius(double scale) {
    return 10.0 * scale;
}

bool showsLie(const ChartContent& content, const ViewFrame& view, double scale, int rank) {
    return isNear(view, scale) || (content.selection.mark == rank &&
                                   view.pixelsPerMetre() >= ropesFrom_pixelsPerMetre * scale);
}

bool isNear(const ViewFrame& view, double scale) {
    return 5.0 * view.pixelsPerMetre() >= nearBoat_pixels * scale;
}

std::map<int, MarkRing> ringsOf(const std::vector<marks::Mark>& marks, const ViewFrame& view,
                                double scale) {
    const double width = 2.2 * ringRadius(scale);
    std::map<int, MarkRing> rings;
    const auto isFree = [&](QPointF at) {
        return std::none_of(rings.begin(), rings.end(), [&](const auto& ring) {
            const QPointF apart = ring.second.middle - at;
            return std::hypot(apart.x(), apart.y()) < width;
        });
    };
    for (const marks::Mark& mark : marks) {
        const QPointF place = view.toScreen(mark.place);
        // Near, the ring stands beside the boat instead of on it.
        QPointF at = isNear(view, scale)
                         ? place + QPointF(2.0 * ringRadius(scale), -2.0 * ringRadius(scale))
                         : place;
        const QPointF wanted = at;
        for (int turn = 0; turn < 24 && !isFree(at); ++turn) {
            const double angle = 0.785398 * turn + 0.4;
            const int round = turn / 8;
            const double reach = width * (1.0 + round);
            at = wanted + QPointF(reach * std::cos(angle), reach * std::sin(angle));
        }
        rings[mark.rank] = {at, place};
    }
    return rings;
}

void drawLie(LayerContext& on, const marks::Mark& mark, units::Length boatLength) {
    const anchoring::AnchorSet& set = mark.anchors;
    const QPointF lie = on.view.toScreen(set.lie.centre);
    const QPointF bowAnchor = on.view.toScreen(set.bow.place);
    drawSwing(on, set);
    drawRods(on, mark, lie);
    QPainterPath ropes;
    ropes.moveTo(on.view.toScreen(anchoring::bowOf(set.lie, boatLength)));
    ropes.lineTo(bowAnchor);
    QPainterPath anchors = crossShape(bowAnchor, 4.5 * on.scale);
    if (set.stern) {
        const QPointF sternAnchor = on.view.toScreen(set.stern->place);
        ropes.moveTo(on.view.toScreen(anchoring::sternOf(set.lie, boatLength)));
        ropes.lineTo(sternAnchor);
        anchors.addPath(crossShape(sternAnchor, 4.5 * on.scale));
    }
    strokeWithRim(on, ropes, penOf(on.palette.rust, 1.7 * on.scale));
    strokeWithRim(on, anchors, penOf(on.palette.rust, 2.2 * on.scale));
    // Never smaller than can be seen; then it is a sign and not to scale.
    const double length =
        std::max(boatLength.inMetres() * on.view.pixelsPerMetre(), 13.0 * on.scale);
    QTransform turn;
    turn.translate(lie.x(), lie.y());
    turn.rotate(set.lie.heading.inDegrees());
    const QPainterPath boat = turn.map(boatFromAbove(length));
    on.painter.setBrush(on.palette.card);
    on.painter.setPen(penOf(on.palette.rust, 2.0 * on.scale));
    on.painter.drawPath(boat);
}

void letterLie(LayerContext& on, const marks::Mark& mark) {
    const wording::Words& words = on.content.words;
    const QPointF lie = on.view.toScreen(mark.anchors.lie.centre);
    letterBeside(on, on.view.toScreen(mark.anchors.bow.place), lie,
                 wording::Tongue::tr("bow %1").arg(words.depth(mark.anchors.bow.depth)),
                 on.palette.rust);
    if (const auto& stern = mark.anchors.stern) {
        letterBeside(on, on.view.toScreen(stern->place), lie,
                     wording::Tongue::tr("stern %1").arg(words.depth(stern->depth)),
                     on.palette.rust);
    }
    int number = 0;
    for (const rods::RodPlace& rod : mark.spread.rods) {
        letterBeside(on, on.view.toScreen(rod.place), lie,
                     wording::Tongue::tr("rod %1  %2").arg(++number).arg(words.depth(rod.depth)),
                     on.palette.plum);
    }
}

void letterRopesAndKnots(LayerContext& on, const marks::Mark& mark) {
    const wording::Words& words = on.content.words;
    const QPointF lie = on.view.toScreen(mark.anchors.lie.centre);
    const auto letter = [&](const QString& name, const anchoring::Anchor& anchor) {
        letterBeside(on, on.view.toScreen(anchor.place), lie,
                     wording::Tongue::tr("%1 %2, rope %3, scope %4")
                         .arg(name, words.depth(anchor.depth), words.length(anchor.rope))
                         .arg(wording::Tongue::number(anchor.scope, 1)),
                     on.palette.rust);
    };
    letter(wording::Tongue::tr("bow"), mark.anchors.bow);
    if (mark.anchors.stern) {
        letter(wording::Tongue::tr("stern"), *mark.anchors.stern);
    }
    int number = 0;
    for (const rods::RodPlace& rod : mark.spread.rods) {
        letterBeside(
            on, on.view.toScreen(rod.place), lie,
            wording::Tongue::tr("rod %1  %2, knot %3, %4 off")
                .arg(++number)
                .arg(words.depth(rod.depth), words.depth(rod.stopKnot), words.length(rod.distance)),
            on.palette.plum);
    }
}

void drawRing(LayerContext& on, const marks::Mark& mark, const MarkRing& ring, bool isSelected) {
    const double radius = ringRadius(on.scale);
    const QPointF apart = ring.middle - ring.place;
    if (std::hypot(apart.x(), apart.y()) > radius) {
        QPainterPath leader;
        leader.moveTo(ring.place);
        leader.lineTo(ring.middle);
        strokeWithRim(on, leader, penOf(on.palette.rust, 1.0 * on.scale));
        if (!isNear(on.view, on.scale)) {
            on.painter.setPen(Qt::NoPen);
            on.painter.setBrush(on.palette.rust);
            on.painter.drawEllipse(ring.place, 2.4 * on.scale, 2.4 * on.scale);
        }
    }
    on.painter.setPen(penOf(on.palette.card, 4.6 * on.scale));
    on.painter.setBrush(on.palette.card);
    on.painter.drawEllipse(ring.middle, radius, radius);
    on.painter.setPen(penOf(on.palette.rust, (mark.isPinned ? 2.8 : 1.9) * on.scale));
    on.painter.setBrush(isSelected ? on.palette.rust : on.palette.card);
    on.painter.drawEllipse(ring.middle, radius, radius);
    drawText(on.painter, typeface(TypeSize::small, on.scale, TypeStyle::bold), ring.middle,
             QString::number(mark.rank),
             {isSelected ? on.palette.card : on.palette.rust, on.palette.card}, 0.0);
    if (anchoring::breaksARule(mark.anchors)) {
        drawBroken(on, ring.middle + QPointF(radius, -radius));
    }
}

} // namespace chart
