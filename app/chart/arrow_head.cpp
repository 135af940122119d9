// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/arrow_head.h"

#include <algorithm>
#include <cmath>

namespace chart {

QPainterPath arrowHead(QPointF from, QPointF to, double size) {
    const QPointF way = to - from;
    const double length = std::max(std::hypot(way.x(), way.y()), 1e-6);
    const QPointF along = way * (size / length);
    const QPointF across(-0.45 * along.y(), 0.45 * along.x());
    QPainterPath head;
    head.moveTo(to);
    head.lineTo(to - along + across);
    head.lineTo(to - along - across);
    head.closeSubpath();
    return head;
}

} // namespace chart
