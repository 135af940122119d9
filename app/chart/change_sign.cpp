// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/change_sign.h"

#include "app/chart/key_letters.h"
#include "app/wording/tongue.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace chart {

namespace {

constexpr double full_m = 1.0; // what gets the full size
constexpr double least = 1.3;  // radii in pixels
constexpr double most = 3.8;
constexpr double boxWidth = 236.0;
constexpr double boxHeight = 66.0;
constexpr double pad = 10.0;
constexpr std::array keyRises_m{0.25, 1.0};

} // namespace

void drawChange(LayerContext& on, QPointF at, double rise_m) {
    const double share = std::clamp(std::fabs(rise_m) / full_m, 0.0, 1.0);
    const double radius = (least + share * (most - least)) * on.scale;
    const bool hasRisen = rise_m > 0.0;
    on.painter.setPen(hasRisen ? QPen(on.palette.card, 0.8 * on.scale)
                               : QPen(on.palette.ink, 1.2 * on.scale));
    on.painter.setBrush(hasRisen ? on.palette.rust : on.palette.card);
    on.painter.drawEllipse(at, radius, radius);
}

QSizeF changeKeySize(double scale) {
    return {boxWidth * scale, boxHeight * scale};
}

void drawChangeKey(LayerContext& on, const QRectF& box) {
    const double s = on.scale;
    on.painter.setPen(QPen(withAlpha(on.palette.ink, 0.28), 0.8 * s));
    on.painter.setBrush(withAlpha(on.palette.card, 0.90));
    on.painter.drawRect(box);
    const QPointF left = box.topLeft() + QPointF(pad * s, 0.0);
    drawFrom(on, left + QPointF(0.0, 14.0 * s),
             wording::Tongue::tr("surely, since the earlier survey"), on.palette.faintInk);
    double y = 34.0 * s;
    for (const double sign : {1.0, -1.0}) {
        double x = 4.0 * s;
        for (const double rise_m : keyRises_m) {
            drawChange(on, left + QPointF(x, y), sign * rise_m);
            const auto depth = units::Depth::metres(rise_m);
            drawFrom(on, left + QPointF(x + 8.0 * s, y), on.content.words.fineDepth(depth),
                     on.palette.ink);
            x += 62.0 * s;
        }
        drawFrom(on, left + QPointF(x, y),
                 sign > 0.0 ? wording::Tongue::tr("risen") : wording::Tongue::tr("fallen"),
                 on.palette.ink);
        y += 19.0 * s;
    }
}

} // namespace chart
