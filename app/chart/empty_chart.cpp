// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/empty_chart.h"

#include "app/chart/boat_drawing.h"
#include "app/chart/lettering.h"

#include <QPainterPath>

#include <cmath>

namespace chart {

namespace {

struct Line {
    QString text;
    TypeSize size = TypeSize::normal;
    TypeStyle style = TypeStyle::plain;
};

std::vector<Line> linesFor(const ChartContent& content) {
    const bool hasShore = content.derived.outline && !content.derived.outlineIsAssumed;
    const bool hasDays = content.water && !content.water->days.empty();
    if (hasDays) {
        return {{QStringLiteral("Soundings are in, the water is not drawn yet"), TypeSize::normal,
                 TypeStyle::bold},
                {QStringLiteral("Check the soundings, then draw the water.")}};
    }
    return {
        {QStringLiteral("Drop your soundings here"), TypeSize::normal, TypeStyle::bold},
        {QStringLiteral("a sounder's NMEA 0183 log, a GPX track with depths,")},
        {QStringLiteral("or a table with longitude, latitude and depth")},
        {QString()},
        {hasShore ? QStringLiteral("The shoreline is there already.")
                  : QStringLiteral("A shoreline too, if you have one: GeoJSON, GPX, Shapefile, "
                                   "GeoPackage, KML"),
         TypeSize::small},
        {QStringLiteral("Without one, the outermost soundings stand in for it."), TypeSize::small}};
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
    const Palette& palette = Palette::of(content.isGrey);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, true);
    constexpr double leading = 24.0;
    const std::vector<Line> lines = linesFor(content);
    double y = page.center().y() - 0.5 * leading * static_cast<double>(lines.size()) + 40.0;
    drawSketch(painter, {page.center().x(), y - 100.0}, palette);
    for (const Line& line : lines) {
        const double scale = line.style == TypeStyle::bold ? 1.3 : 1.0;
        if (!line.text.isEmpty()) {
            drawText(painter, typeface(line.size, scale, line.style), {page.center().x(), y},
                     line.text, {palette.ink, palette.paper}, 3.0);
        }
        y += line.text.isEmpty() ? 0.5 * leading : leading;
    }
    painter.restore();
}

} // namespace chart
