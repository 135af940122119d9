// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/key_pointer.h"

#include <QPainterPath>

namespace chart {

namespace {

constexpr double fine_pixels = 6.0;
constexpr double great_pixels = 48.0;

} // namespace

std::optional<QPointF> stepOfArrow(int key, Qt::KeyboardModifiers modifiers) {
    const double step = modifiers.testFlag(Qt::ShiftModifier) ? great_pixels : fine_pixels;
    switch (key) {
    case Qt::Key_Left:
        return QPointF(-step, 0.0);
    case Qt::Key_Right:
        return QPointF(step, 0.0);
    case Qt::Key_Up:
        return QPointF(0.0, -step);
    case Qt::Key_Down:
        return QPointF(0.0, step);
    default:
        return std::nullopt;
    }
}

void drawKeyPointer(QPainter& painter, const Palette& palette, const KeyPointer& pointer,
                    double scale) {
    const double radius = 5.0 * scale;
    const double reach = 14.0 * scale;
    QPainterPath hairs;
    for (const QPointF way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)}) {
        hairs.moveTo(pointer.at + radius * way);
        hairs.lineTo(pointer.at + reach * way);
    }
    hairs.addEllipse(pointer.at, radius, radius);
    painter.setBrush(Qt::NoBrush);
    painter.strokePath(hairs, QPen(palette.card, 4.0 * scale));
    if (pointer.isHeld) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette.rust);
        painter.drawEllipse(pointer.at, radius, radius);
    }
    painter.strokePath(hairs, QPen(palette.ink, 1.6 * scale));
}

} // namespace chart
