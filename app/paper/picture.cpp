// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/picture.h"

#include "app/chart/chart_painter.h"
#include "app/chart/lettering.h"
#include "app/chart/todays_form.h"
#include "app/wording/one_line.h"
#include "app/wording/tongue.h"

#include <algorithm>

namespace paper {

namespace {

constexpr double topHeight = 46.0;

QString factsLine(const chart::ChartContent& content) {
    QStringList facts;
    if (const auto& drawn = chart::formOf(content.derived)) {
        const surface::Hypsography& form = drawn->hypsography;
        facts << content.words.area(form.area)
              << wording::Tongue::tr("deepest %1").arg(content.words.depth(form.maxDepth))
              << wording::Tongue::tr("mean %1").arg(content.words.depth(form.meanDepth));
    }
    if (content.planned) {
        facts << wording::Tongue::tr("marks for %1")
                     .arg(wording::Words::day(content.planned->plan.day.day));
    }
    facts << chart::levelOfDepths(content) << wording::Tongue::tr("not for navigation");
    return facts.join(QStringLiteral("   "));
}

void drawHead(QPainter& painter, const chart::ChartContent& content, double width, double scale) {
    const chart::Palette& palette = chart::Palette::of(content.inks);
    const QRectF head(0.0, 0.0, width, topHeight * scale);
    painter.fillRect(head, palette.card);
    painter.setPen(QPen(chart::withAlpha(palette.ink, 0.3), scale));
    painter.drawLine(head.bottomLeft(), head.bottomRight());
    const auto write = [&](const QFont& font, double left, const QString& text,
                           const QColor& colour) {
        const double length = chart::boxOf(font, text, {}).width();
        chart::drawText(painter, font, {left + 0.5 * length, 0.5 * head.height()}, text,
                        {colour, palette.card}, 0.0);
        return left + length;
    };
    const QString name = content.water ? wording::oneLine(content.water->name) : QString();
    const double left =
        write(chart::typeface(chart::TypeSize::normal, 1.35 * scale, chart::TypeStyle::bold),
              16.0 * scale, name, palette.ink);
    write(chart::typeface(chart::TypeSize::small, scale), left + 22.0 * scale, factsLine(content),
          palette.faintInk);
}

} // namespace

QImage renderPicture(const chart::ChartContent& content, QSize size) {
    chart::ChartContent shown = content;
    shown.inks = chart::onPaper(shown.inks);
    if (shown.shown.empty()) {
        shown.shown = chart::usualLayers();
    }
    // Letters grow with the picture, so that a large one reads like a small one looked at closely.
    const double scale =
        std::clamp(std::min(size.width() / 1280.0, size.height() / 800.0), 0.75, 4.0);
    QImage picture(size, QImage::Format_RGB32);
    picture.fill(chart::Palette::of(shown.inks).paper);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setRenderHint(QPainter::TextAntialiasing, true);
    const double head = topHeight * scale;
    const QSizeF room(size.width(), std::max(size.height() - head, 1.0));
    painter.save();
    painter.translate(0.0, head);
    chart::paintChart(painter, chart::wholeWater(shown, room, scale), shown, scale);
    painter.restore();
    drawHead(painter, shown, size.width(), scale);
    return picture;
}

} // namespace paper
