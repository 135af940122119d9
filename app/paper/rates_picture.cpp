// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/rates_picture.h"

#include "app/chart/furniture.h"
#include "app/chart/lettering.h"
#include "app/paper/sheet_writer.h"
#include "app/wording/tongue.h"
#include "app/wording/words.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace paper {

namespace {

struct Plot {
    QPainter& painter;
    const chart::Palette& palette;
    double scale;
    QRectF bars;       ///< Where bars stand.
    double most = 1.0; ///< Rate at its right edge.

    [[nodiscard]] double x(double rate) const {
        return bars.left() + std::min(rate / most, 1.0) * bars.width();
    }
};

QFont plain(double scale) {
    return chart::typeface(chart::TypeSize::small, scale);
}

void write(const Plot& on, const QFont& font, const QRectF& box, int align, const QString& text,
           const QColor& colour) {
    on.painter.setFont(font);
    on.painter.setPen(colour);
    on.painter.drawText(box, align | Qt::AlignVCenter, text);
}

/// Enough for every rate and for all intervals but the few that are wildly wide.
double mostOf(const rates::RateTable& table) {
    double rates = 0.5;
    std::vector<double> highs;
    for (const rates::RateRow& row : table.rows) {
        if (row.rate) {
            rates = std::max(rates, row.rate->per10RodHours);
            highs.push_back(row.rate->high);
        }
    }
    std::sort(highs.begin(), highs.end());
    const double usual = highs.empty() ? 1.0 : highs[(highs.size() * 3) / 4];
    return std::max(1.3 * rates, std::min(1.08 * usual, 4.0 * rates));
}

void paintAxis(const Plot& on, double foot) {
    double step = std::pow(10.0, std::floor(std::log10(on.most)));
    step = on.most / step < 2.0 ? 0.25 * step : on.most / step < 5.0 ? 0.5 * step : step;
    for (double rate = 0.0; rate <= on.most * 1.001; rate += step) {
        on.painter.setPen(QPen(chart::withAlpha(on.palette.ink, 0.15), on.scale));
        on.painter.drawLine(QPointF(on.x(rate), on.bars.top()), QPointF(on.x(rate), foot));
        const QRectF label(on.x(rate) - 30.0 * on.scale, foot, 60.0 * on.scale, 18.0 * on.scale);
        write(on, plain(on.scale), label, Qt::AlignHCenter, wording::Tongue::shortNumber(rate, 2),
              on.palette.faintInk);
    }
}

void paintBar(const Plot& on, const rates::RateRow& row, double y, double height) {
    if (!row.rate) {
        write(on, plain(on.scale), QRectF(on.bars.left() + 6.0 * on.scale, y, 200.0, height),
              Qt::AlignLeft, wording::Tongue::tr("not fished"), on.palette.faintInk);
        return;
    }
    const rates::Rate& rate = *row.rate;
    const double thick = 0.52 * height;
    const double middle = y + 0.5 * height;
    on.painter.fillRect(QRectF(on.bars.left(), middle - 0.5 * thick,
                               on.x(rate.per10RodHours) - on.bars.left(), thick),
                        on.palette.depthAt(0.62));
    on.painter.setPen(QPen(on.palette.ink, 1.5 * on.scale));
    const double low = on.x(rate.low);
    const double high = on.x(rate.high);
    const double tick = 0.2 * height;
    on.painter.drawLine(QPointF(low, middle), QPointF(high, middle));
    on.painter.drawLine(QPointF(low, middle - tick), QPointF(low, middle + tick));
    if (rate.high > on.most) { // goes on beyond the page
        on.painter.drawLine(QPointF(high - tick, middle - tick), QPointF(high, middle));
        on.painter.drawLine(QPointF(high - tick, middle + tick), QPointF(high, middle));
    } else {
        on.painter.drawLine(QPointF(high, middle - tick), QPointF(high, middle + tick));
    }
}

QString numbersOf(const rates::RateRow& row) {
    if (!row.rate) {
        return QString();
    }
    return wording::Tongue::tr("%1 (%2 to %3)   %4 fish in %5 rod-hours, %6 of %7 stays blank")
        .arg(wording::Words::rate(row.rate->per10RodHours), wording::Words::rate(row.rate->low),
             wording::Words::rate(row.rate->high))
        .arg(row.fish)
        .arg(wording::Tongue::number(row.rodHours, 0))
        .arg(row.blanks)
        .arg(row.stays);
}

void paintOverall(const Plot& on, const rates::RateTable& table, double foot) {
    if (!table.overall.rate) {
        return;
    }
    const double x = on.x(table.overall.rate->per10RodHours);
    on.painter.setPen(QPen(on.palette.rust, 1.4 * on.scale, Qt::DashLine));
    on.painter.drawLine(QPointF(x, on.bars.top() - 4.0 * on.scale), QPointF(x, foot));
    const QRectF label(x - 80.0 * on.scale, on.bars.top() - 22.0 * on.scale, 160.0 * on.scale,
                       18.0 * on.scale);
    write(
        on, plain(on.scale), label, Qt::AlignHCenter,
        wording::Tongue::tr("all: %1").arg(wording::Words::rate(table.overall.rate->per10RodHours)),
        on.palette.rust);
}

} // namespace

void paintRates(QPainter& painter, const QRectF& box, const rates::RateTable& table,
                const QString& title, chart::Inks inks, double scale) {
    const chart::Palette& palette = chart::Palette::of(inks);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.fillRect(box, palette.paper);
    const double edge = 18.0 * scale;
    const QFont font = plain(scale);
    const QFontMetricsF metrics(font);
    double names = 60.0 * scale;
    double numbers = 0.0;
    for (const rates::RateRow& row : table.rows) {
        names = std::max(names, metrics.horizontalAdvance(QString::fromStdString(row.name)));
        numbers = std::max(numbers, metrics.horizontalAdvance(numbersOf(row)));
    }
    names = std::min(names, 0.3 * box.width());
    QString notes;
    for (const std::string& note : table.notes) {
        notes += wording::Tongue::ofCore(note) + QLatin1Char('\n');
    }
    const double noteHeight =
        notes.isEmpty() ? 0.0 : heightOf(font, notes, box.width() - 2.0 * edge);
    const double top = box.top() + 92.0 * scale;
    const double bottom = box.bottom() - edge - noteHeight - 24.0 * scale;
    const double rowHeight =
        std::clamp((bottom - top) / std::max(1.0, static_cast<double>(table.rows.size())),
                   19.0 * scale, 34.0 * scale);
    const auto fit = static_cast<std::size_t>(std::max((bottom - top) / rowHeight, 1.0));
    const std::size_t shown = std::min(fit, table.rows.size());
    const double left = box.left() + edge + names + 10.0 * scale;
    const double right = box.right() - edge - numbers - 14.0 * scale;
    const double foot = top + rowHeight * static_cast<double>(shown);
    const Plot on{painter, palette, scale,
                  QRectF(left, top, std::max(right - left, 60.0 * scale), foot - top),
                  mostOf(table)};
    write(on, chart::typeface(chart::TypeSize::normal, 1.35 * scale, chart::TypeStyle::bold),
          QRectF(box.left() + edge, box.top() + 12.0 * scale, box.width(), 26.0 * scale),
          Qt::AlignLeft, title, palette.ink);
    write(on, font, QRectF(box.left() + edge, box.top() + 38.0 * scale, box.width(), 20.0 * scale),
          Qt::AlignLeft,
          wording::Tongue::tr("fish per 10 rod-hours; the line is the 95 % interval"),
          palette.faintInk);
    paintAxis(on, foot);
    for (std::size_t i = 0; i < shown; ++i) {
        const rates::RateRow& row = table.rows[i];
        const double y = top + rowHeight * static_cast<double>(i);
        const QString name =
            metrics.elidedText(QString::fromStdString(row.name), Qt::ElideRight, names);
        write(on, font, QRectF(box.left() + edge, y, names, rowHeight), Qt::AlignRight, name,
              palette.ink);
        paintBar(on, row, y, rowHeight);
        write(on, font, QRectF(on.bars.right() + 14.0 * scale, y, numbers + 4.0, rowHeight),
              Qt::AlignLeft, numbersOf(row), palette.ink);
    }
    paintOverall(on, table, foot);
    if (shown < table.rows.size()) {
        notes =
            wording::Tongue::tr("%1 more rows are not shown.\n").arg(table.rows.size() - shown) +
            notes;
    }
    painter.setFont(font);
    painter.setPen(palette.faintInk);
    painter.drawText(QRectF(box.left() + edge, foot + 26.0 * scale, box.width() - 2.0 * edge,
                            box.bottom() - foot - 26.0 * scale),
                     Qt::TextWordWrap, notes);
    painter.restore();
}

QImage renderRates(const rates::RateTable& table, const QString& title, QSize size) {
    QImage picture(size, QImage::Format_RGB32);
    QPainter painter(&picture);
    const double scale = std::clamp(size.width() / 1280.0, 0.75, 4.0);
    paintRates(painter, QRectF(picture.rect()), table, title, chart::Inks::light, scale);
    return picture;
}

} // namespace paper
