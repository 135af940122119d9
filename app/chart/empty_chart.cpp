// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/empty_chart.h"

#include "app/chart/boat_drawing.h"
#include "app/chart/first_track.h"
#include "app/chart/lettering.h"
#include "app/wording/tongue.h"

#include <QPainterPath>

#include <cmath>

namespace chart {

namespace {

constexpr double sketchNeeds = 300.0; // height of a page on which it has room above the words

struct Line {
    QString text;
    TypeSize size = TypeSize::normal;
    TypeStyle style = TypeStyle::plain;
};

std::vector<Line> linesFor(const ChartContent& content) {
    const bool hasShore = content.derived.outline && !content.derived.outlineIsAssumed;
    if (showsFirstTrack(content)) {
        return {{wording::Tongue::tr("Soundings are in, the water is not drawn yet"),
                 TypeSize::normal, TypeStyle::bold}};
    }
    return {{wording::Tongue::tr("Drop your soundings here"), TypeSize::normal, TypeStyle::bold},
            {wording::Tongue::tr("a sounder's NMEA 0183 log, a GPX track with depths,")},
            {wording::Tongue::tr("or a table with longitude, latitude and depth")},
            {QString()},
            {hasShore
                 ? wording::Tongue::tr("The shoreline is there already.")
                 : wording::Tongue::tr("A shoreline too, if you have one: GeoJSON, GPX, Shapefile, "
                                       "GeoPackage, KML"),
             TypeSize::small},
            {wording::Tongue::tr("Without one, the outermost soundings stand in for it."),
             TypeSize::small}};
}

/// A boat on the water over a bottom that is still dots.
void drawSketch(QPainter& painter, QPointF middle, const Palette& palette) {
    painter.save();
    painter.translate(middle);
    painter.setPen(QPen(palette.ink, 1.4));
    painter.drawLine(QPointF(-130.0, 0.0), QPointF(130.0, 0.0));
    painter.setBrush(palette.card);
    painter.setPen(QPen(palette.rust, 2.0));
    painter.drawPath(boatFromTheSide(64.0, 14.0).translated(0.0, 4.0));
    painter.setPen(QPen(palette.ink, 3.0, Qt::SolidLine, Qt::RoundCap));
    for (int i = -6; i <= 6; ++i) {
        const double x = 20.0 * i;
        painter.drawPoint(QPointF(x, 46.0 + 14.0 * std::sin(0.55 * i) + 0.5 * i));
    }
    painter.setPen(QPen(withAlpha(palette.ink, 0.35), 1.0, Qt::DashLine));
    painter.drawLine(QPointF(0.0, 6.0), QPointF(0.0, 44.0));
    painter.restore();
}

} // namespace

bool isEmptyChart(const ChartContent& content) {
    const bool hasBackdrop = content.backdrop && content.shown.contains(LayerKind::backdrop);
    return !content.derived.drawn && !hasBackdrop;
}

void paintEmptyChart(QPainter& painter, const QRectF& page, const ChartContent& content) {
    const Palette& palette = Palette::of(content.inks);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, true);
    const double leading = 24.0 * content.typeScale;
    const std::vector<Line> lines = linesFor(content);
    // Above the soundings, or in the middle of an empty page.
    const bool isAbove = showsFirstTrack(content);
    const bool hasSketch = !isAbove && page.height() >= sketchNeeds * content.typeScale;
    double y = isAbove ? page.top() + 0.5 * firstHintHeight * content.typeScale
                       : page.center().y() - 0.5 * leading * static_cast<double>(lines.size()) +
                             (hasSketch ? 60.0 : 0.5 * leading);
    if (hasSketch) {
        drawSketch(painter, {page.center().x(), y - 100.0}, palette);
    }
    for (const Line& line : lines) {
        const double scale = (line.style == TypeStyle::bold ? 1.3 : 1.0) * content.typeScale;
        if (!line.text.isEmpty()) {
            drawText(painter, typeface(line.size, scale, line.style), {page.center().x(), y},
                     line.text, {palette.ink, palette.paper}, 3.0);
        }
        y += line.text.isEmpty() ? 0.5 * leading : leading;
    }
    painter.restore();
}

} // namespace chart
