// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/old_card.h"

#include "app/chart/lettering.h"
#include "app/wording/tongue.h"

namespace chart {

namespace {

constexpr double fromTop = 66.0; // below the banner that says to stay ashore
constexpr double roomBeside = 10.0;
constexpr double roomAbove = 6.0;

} // namespace

QString oldWords(const ContentAge& age, bool showsMarks) {
    if (age.isBeingRead) {
        return wording::Tongue::tr("Map as it was kept: the water is being read");
    }
    const bool areMarksOld = age.isPlanOld && showsMarks;
    if (!age.isMapOld && !areMarksOld) {
        return {};
    }
    const QString what = !areMarksOld   ? wording::Tongue::tr("Map")
                         : age.isMapOld ? wording::Tongue::tr("Map and marks")
                                        : wording::Tongue::tr("Marks");
    const QString old = wording::Tongue::tr("%1 older than your last change").arg(what);
    return age.isBeingMadeAnew ? old + wording::Tongue::tr(": being worked out anew") : old;
}

void drawOldCard(QPainter& painter, const Palette& palette, QPointF middle, const QString& words,
                 double scale) {
    const QFont font = typeface(TypeSize::normal, scale, TypeStyle::bold);
    const QRectF box = boxOf(font, words, middle)
                           .adjusted(-roomBeside * scale, -roomAbove * scale, roomBeside * scale,
                                     roomAbove * scale);
    painter.setPen(QPen(palette.rust, 1.5 * scale));
    painter.setBrush(palette.card);
    painter.drawRoundedRect(box, 3.0 * scale, 3.0 * scale);
    drawText(painter, font, middle, words, {palette.rust, palette.card}, 0.0);
}

void drawOldCard(LayerContext& on) {
    const bool showsMarks = on.content.planned && on.content.shown.contains(LayerKind::marks);
    const QString words = oldWords(on.content.age, showsMarks);
    if (!words.isEmpty()) {
        const QPointF middle(0.5 * on.view.size().width(), fromTop * on.scale);
        drawOldCard(on.painter, on.palette, middle, words, on.scale);
    }
}

} // namespace chart
