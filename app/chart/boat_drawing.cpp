// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/boat_drawing.h"

namespace chart {

QPainterPath boatFromAbove(double length) {
    const double half = 0.5 * length;
    const double beam = 0.19 * length;
    QPainterPath boat;
    boat.moveTo(0.0, -half);
    boat.cubicTo(0.75 * beam, -0.55 * half, beam, -0.2 * half, beam, 0.15 * half);
    boat.lineTo(0.85 * beam, half);
    boat.lineTo(-0.85 * beam, half);
    boat.lineTo(-beam, 0.15 * half);
    boat.cubicTo(-beam, -0.2 * half, -0.75 * beam, -0.55 * half, 0.0, -half);
    boat.closeSubpath();
    return boat;
}

QPainterPath boatFromTheSide(double length, double height) {
    const double half = 0.5 * length;
    QPainterPath boat;
    boat.moveTo(-half, -height);
    boat.quadTo(0.0, -0.86 * height, half, -1.12 * height);
    boat.quadTo(0.86 * half, -0.25 * height, 0.55 * half, 0.0);
    boat.lineTo(-0.86 * half, 0.0);
    boat.closeSubpath();
    return boat;
}

QPainterPath fishShape(double length) {
    const double half = 0.5 * length;
    QPainterPath fish;
    fish.moveTo(half, 0.0);
    fish.cubicTo(0.5 * half, -0.42 * half, -0.2 * half, -0.36 * half, -0.55 * half, 0.0);
    fish.lineTo(-half, -0.36 * half);
    fish.lineTo(-0.82 * half, 0.0);
    fish.lineTo(-half, 0.36 * half);
    fish.lineTo(-0.55 * half, 0.0);
    fish.cubicTo(-0.2 * half, 0.36 * half, 0.5 * half, 0.42 * half, half, 0.0);
    fish.closeSubpath();
    fish.setFillRule(Qt::WindingFill);
    return fish;
}

QPainterPath crossShape(QPointF middle, double arm) {
    QPainterPath cross;
    cross.moveTo(middle + QPointF(-arm, -arm));
    cross.lineTo(middle + QPointF(arm, arm));
    cross.moveTo(middle + QPointF(-arm, arm));
    cross.lineTo(middle + QPointF(arm, -arm));
    return cross;
}

} // namespace chart
