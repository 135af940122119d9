// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/lettering.h"

#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace chart {

namespace {

/// Letters as an outline, their middle at the origin: half the capitals' height above the baseline.
QPainterPath outlineOf(const QFont& font, const QString& text) {
    const QFontMetricsF metrics(font);
    QPainterPath outline;
    outline.addText(-0.5 * metrics.horizontalAdvance(text), 0.5 * metrics.capHeight(), font, text);
    return outline;
}

void drawOutline(QPainter& painter, const QPainterPath& outline, const Lettering& colours,
                 double rim) {
    if (rim > 0.0) {
        painter.strokePath(outline, QPen(withAlpha(colours.ground, 0.85), 2.0 * rim, Qt::SolidLine,
                                         Qt::RoundCap, Qt::RoundJoin));
    }
    painter.fillPath(outline, colours.letters);
}

/// Length along the line up to each of its points.
std::vector<double> lengthsAlong(const QPolygonF& line) {
    std::vector<double> lengths{0.0};
    for (qsizetype i = 1; i < line.size(); ++i) {
        const QPointF step = line[i] - line[i - 1];
        lengths.push_back(lengths.back() + std::hypot(step.x(), step.y()));
    }
    return lengths;
}

QPointF pointAlong(const QPolygonF& line, const std::vector<double>& lengths, double at) {
    const auto next = std::upper_bound(lengths.begin() + 1, lengths.end() - 1, at);
    const auto i = static_cast<qsizetype>(next - lengths.begin());
    const double from = lengths[static_cast<std::size_t>(i - 1)];
    const double span = std::max(*next - from, 1e-9);
    return line[i - 1] + (line[i] - line[i - 1]) * ((at - from) / span);
}

} // namespace

QFont typeface(TypeSize size, double scale, TypeStyle style) {
    QFont font(QStringList{QStringLiteral("DejaVu Sans"), QStringLiteral("sans-serif")});
    const double pixels = size == TypeSize::small ? 12.0 : 14.0;
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(pixels * scale))));
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setBold(style == TypeStyle::bold);
    font.setItalic(style == TypeStyle::slanted);
    return font;
}

QRectF boxOf(const QFont& font, const QString& text, QPointF middle) {
    const QFontMetricsF metrics(font);
    const double width = metrics.horizontalAdvance(text) + 0.4 * metrics.capHeight();
    const double height = 1.5 * metrics.capHeight();
    return {middle.x() - 0.5 * width, middle.y() - 0.5 * height, width, height};
}

void drawText(QPainter& painter, const QFont& font, QPointF middle, const QString& text,
              const Lettering& colours, double rim, double angle_deg) {
    painter.save();
    painter.translate(middle);
    painter.rotate(angle_deg);
    drawOutline(painter, outlineOf(font, text), colours, rim);
    painter.restore();
}

std::vector<SetLetter> setAlong(const QPolygonF& line, const QFont& font, const QString& text,
                                double spacing) {
    if (line.size() < 2 || text.isEmpty()) {
        return {};
    }
    QPolygonF way = line;
    if (way.first().x() > way.last().x()) {
        std::reverse(way.begin(), way.end());
    }
    const std::vector<double> lengths = lengthsAlong(way);
    const QFontMetricsF metrics(font);
    const double wanted =
        metrics.horizontalAdvance(text) + spacing * static_cast<double>(text.size());
    if (lengths.back() < wanted) {
        return {};
    }
    std::vector<SetLetter> letters;
    double at = 0.5 * (lengths.back() - wanted);
    double before_deg = 0.0;
    for (const QChar letter : text) {
        const double width = metrics.horizontalAdvance(letter) + spacing;
        // The direction over about two letters, so that a kink does not tip a single one.
        const double reach = std::max(width, 1.5 * metrics.capHeight());
        const double middle = at + 0.5 * width;
        const QPointF back = pointAlong(way, lengths, std::max(middle - reach, 0.0));
        const QPointF on = pointAlong(way, lengths, std::min(middle + reach, lengths.back()));
        const double angle_deg =
            std::atan2(on.y() - back.y(), on.x() - back.x()) * 180.0 / std::numbers::pi;
        if (std::abs(angle_deg) > 80.0 ||
            (!letters.empty() && std::abs(angle_deg - before_deg) > 25.0)) {
            return {};
        }
        letters.push_back({QString(letter), pointAlong(way, lengths, middle), angle_deg});
        before_deg = angle_deg;
        at += width;
    }
    return letters;
}

void drawLetters(QPainter& painter, const QFont& font, const std::vector<SetLetter>& letters,
                 const Lettering& colours, double rim) {
    QPainterPath all;
    for (const SetLetter& set : letters) {
        QTransform turn;
        turn.translate(set.middle.x(), set.middle.y());
        turn.rotate(set.angle_deg);
        all.addPath(turn.map(outlineOf(font, set.letter)));
    }
    all.setFillRule(Qt::WindingFill);
    drawOutline(painter, all, colours, rim);
}

} // namespace chart
