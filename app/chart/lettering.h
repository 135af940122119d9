// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/palette.h"

#include <QFont>
#include <QPainter>
#include <QString>

#include <vector>

namespace chart {

/// The two sizes of type on the chart, the side view and the sheet.
enum class TypeSize { small, normal };

/// How the one family is set.
enum class TypeStyle { plain, bold, slanted };

/// The chart's one family of type. \param scale 1 on the screen: 12 and 14 pixels.
[[nodiscard]] QFont typeface(TypeSize size, double scale, TypeStyle style = TypeStyle::plain);

/// The box that `text` fills when drawn with its middle at `middle`.
[[nodiscard]] QRectF boxOf(const QFont& font, const QString& text, QPointF middle);

/// Text with its middle at `middle`, with a rim of `colours.ground` round the letters so that lines
/// under it do not disturb them. \param rim width of the rim; 0 for none.
void drawText(QPainter& painter, const QFont& font, QPointF middle, const QString& text,
              const Lettering& colours, double rim, double angle_deg = 0.0);

/// One letter of a text set along a line.
struct SetLetter {
    QString letter;
    QPointF middle;
    double angle_deg = 0.0;
};

/// `text` set along `line` with its middle at the line's, read from left to right. Nothing where
/// the line is too short or bends too sharply for the letters.
[[nodiscard]] std::vector<SetLetter> setAlong(const QPolygonF& line, const QFont& font,
                                              const QString& text, double spacing);
void drawLetters(QPainter& painter, const QFont& font, const std::vector<SetLetter>& letters,
                 const Lettering& colours, double rim);

} // namespace chart
