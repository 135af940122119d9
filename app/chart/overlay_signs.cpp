// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/overlay_signs.h"

#include "app/chart/label_space.h"
#include "app/chart/layers/layer.h"
#include "app/chart/lettering.h"
#include "app/chart/mark_drawing.h"
#include "app/chart/old_card.h"

#include <algorithm>

namespace chart {

namespace {

constexpr double cardFromTop = 26.0;
constexpr double cardStep = 30.0;
constexpr qsizetype mostCards = 3;

} // namespace

void drawChosenSign(QPainter& painter, const Palette& palette, QPointF at) {
    painter.setBrush(Qt::NoBrush);
    for (const QPen& pen : {QPen(palette.card, 4.6), QPen(palette.rust, 2.2)}) {
        painter.setPen(pen);
        painter.drawEllipse(at, chosenRadius, chosenRadius);
    }
}

void drawPointedSign(QPainter& painter, const Palette& palette, QPointF at) {
    for (const QPen& pen : {QPen(palette.card, 4.0), QPen(palette.rust, 1.6)}) {
        painter.setPen(pen);
        painter.drawLine(at - QPointF(9.0, 0.0), at + QPointF(9.0, 0.0));
        painter.drawLine(at - QPointF(0.0, 9.0), at + QPointF(0.0, 9.0));
    }
}

void drawHeldRing(QPainter& painter, const Palette& palette, QPointF at, int rank, double scale) {
    painter.setPen(QPen(palette.rust, 2.0, Qt::DashLine));
    painter.setBrush(withAlpha(palette.card, 0.7));
    painter.drawEllipse(at, ringRadius(scale), ringRadius(scale));
    drawText(painter, typeface(TypeSize::small, scale, TypeStyle::bold), at, QString::number(rank),
             {palette.rust, palette.card}, 0.0);
}

void drawTurnedWind(QPainter& painter, const Palette& palette, const WindArrow& arrow,
                    units::Bearing from, double scale) {
    painter.setPen(QPen(palette.rust, 1.6 * scale));
    painter.setBrush(palette.card);
    painter.drawEllipse(arrow.middle, arrow.reach, arrow.reach);
    drawWindArrow(painter, arrow.middle, 2.0 * arrow.reach - 4.0 * scale, from, palette.rust,
                  2.4 * scale);
    drawText(painter, typeface(TypeSize::normal, scale, TypeStyle::bold),
             arrow.middle + QPointF(0.0, arrow.reach + 12.0 * scale), wording::Words::bearing(from),
             {palette.rust, palette.card}, 3.0 * scale);
}

void drawTried(QPainter& painter, const ViewFrame& view, const ChartContent& content,
               const TriedLie& tried) {
    const Palette& palette = Palette::of(content.inks);
    LabelSpace labels(QRectF({0.0, 0.0}, view.size()));
    LayerContext on{painter, view, content, palette, labels, content.typeScale};
    painter.save();
    if (tried.cannot.isEmpty()) {
        drawLie(on, tried.mark, tried.boatLength);
        letterRopesAndKnots(on, tried.mark);
    }
    const QStringList lines = tried.cannot.isEmpty()
                                  ? tried.breaks.first(std::min(mostCards, tried.breaks.size()))
                                  : QStringList{tried.cannot};
    QPointF middle(0.5 * view.size().width(), cardFromTop);
    for (const QString& line : lines) {
        drawOldCard(painter, palette, middle, line, content.typeScale);
        middle.ry() += cardStep;
    }
    painter.restore();
}

} // namespace chart
