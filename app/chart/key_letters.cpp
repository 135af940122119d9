// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/key_letters.h"

#include "app/chart/lettering.h"

namespace chart {

void drawFrom(LayerContext& on, QPointF left, const QString& text, const QColor& letters) {
    const QFont font = typeface(TypeSize::small, on.scale);
    drawText(on.painter, font, left + QPointF(0.5 * boxOf(font, text, {}).width(), 0.0), text,
             {letters, on.palette.card}, 0.0);
}

} // namespace chart
