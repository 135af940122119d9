// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/name_beside.h"

namespace chart {

void nameBeside(LayerContext& on, QPointF at, const QString& name, TypeStyle style) {
    const QFont font = typeface(TypeSize::small, on.scale, style);
    const QRectF plain = boxOf(font, name, {});
    const double x = 0.5 * plain.width() + 7.0 * on.scale;
    const double y = 0.5 * plain.height() + 6.0 * on.scale;
    for (const QPointF shift : {QPointF(x, 0.0), QPointF(-x, 0.0), QPointF(0.0, -y),
                                QPointF(0.0, y), QPointF(x, -y), QPointF(-x, y)}) {
        if (on.labels.take(boxOf(font, name, at + shift))) {
            drawText(on.painter, font, at + shift, name, {on.palette.ink, on.palette.card},
                     2.4 * on.scale);
            return;
        }
    }
}

} // namespace chart
