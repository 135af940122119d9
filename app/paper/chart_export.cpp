// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/chart_export.h"

#include "app/chart/chart_painter.h"
#include "app/chart/furniture.h"
#include "app/chart/lettering.h"
#include "app/paper/sheet_layout.h"
#include "app/wording/one_line.h"
#include "app/wording/tongue.h"
#include "core/base/whole_file.h"

#include <QBuffer>
#include <QImage>
#include <QPdfWriter>
#include <QSvgGenerator>

#include <algorithm>
#include <cmath>

namespace paper {

namespace {

constexpr double topHeight = 44.0; // all in units of the painter, see sheet_layout.h
constexpr double margin = 24.0;
constexpr double waterMargin = 40.0;
constexpr double letterScale = 0.85;
constexpr double millimetresPerInch = 25.4;
constexpr int pictureDots = 300; // to the inch
constexpr int pdfDots = 1200;
constexpr double mostSide_mm = 4000.0;
constexpr double mostDots = 20000.0;

double keyRoom() {
    return chart::keyWidth(letterScale) + 12.0;
}

/// Units of the painter that the whole page takes.
QSizeF pageUnits(const chart::ChartContent& content, double denominator) {
    const geo::Box box = chart::extentOf(content);
    const double perMetre = unitsPerMetre(denominator);
    // However small the water, the key has its height.
    constexpr double leastHeight = 380.0;
    return {box.width_m() * perMetre + keyRoom() + waterMargin + 2.0 * margin,
            std::max(box.height_m() * perMetre + waterMargin, leastHeight) + topHeight +
                2.0 * margin};
}

chart::ChartContent toExport(const chart::ChartContent& content) {
    chart::ChartContent whole = content;
    whole.inks = chart::onPaper(whole.inks);
    if (whole.shown.empty()) {
        whole.shown = chart::usualLayers();
    }
    whole.backdrop.reset(); // Drawn for the screen, and somebody else's picture.
    return whole;
}

void paintPage(QPainter& painter, const chart::ChartContent& content, double denominator) {
    const QSizeF page = pageUnits(content, denominator);
    const chart::Palette& palette = chart::Palette::of(content.inks);
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.fillRect(QRectF({0.0, 0.0}, page), palette.paper);
    const QRectF map(margin, margin + topHeight, page.width() - 2.0 * margin,
                     page.height() - topHeight - 2.0 * margin);
    const QRectF head(margin, margin, map.width(), topHeight);
    painter.setPen(palette.ink);
    const QString scale = QStringLiteral("1 : %1").arg(QString::number(std::llround(denominator)));
    painter.setFont(chart::typeface(chart::TypeSize::normal, 1.0));
    painter.drawText(head, Qt::AlignRight | Qt::AlignVCenter, scale);
    const double scaleWidth = painter.fontMetrics().horizontalAdvance(scale) + 20.0;
    painter.setFont(chart::typeface(chart::TypeSize::normal, 1.7, chart::TypeStyle::bold));
    painter.drawText(
        head, Qt::AlignLeft | Qt::AlignVCenter,
        painter.fontMetrics().elidedText(wording::oneLine(content.water->name), Qt::ElideRight,
                                         std::max(0, static_cast<int>(head.width() - scaleWidth))));
    const chart::ViewFrame whole =
        chart::ViewFrame::showing(chart::extentOf(content), map.size(), 0.0);
    const chart::ViewFrame view = whole
                                      .zoomed(unitsPerMetre(denominator) / whole.pixelsPerMetre(),
                                              {0.5 * map.width(), 0.5 * map.height()})
                                      .panned({-0.5 * keyRoom(), 0.0});
    painter.save();
    painter.translate(map.topLeft());
    chart::paintChart(painter, view, content, letterScale);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette.ink, 1.2));
    painter.drawRect(map);
}

base::Result<void> write(const std::filesystem::path& path, const QByteArray& bytes) {
    return base::writeWholeFile(
        path, std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

QByteArray asPdf(const chart::ChartContent& content, double denominator, QSizeF size_mm) {
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&bytes);
        writer.setResolution(pdfDots);
        writer.setCreator(QStringLiteral("Meremark"));
        writer.setPageMargins({});
        writer.setPageSize(
            QPageSize(size_mm, QPageSize::Millimeter, QString(), QPageSize::ExactMatch));
        QPainter painter(&writer);
        const double dots = pdfDots / millimetresPerInch / unitsPerMillimetre;
        painter.scale(dots, dots);
        paintPage(painter, content, denominator);
    }
    return bytes.data();
}

QByteArray asSvg(const chart::ChartContent& content, double denominator, QSizeF size_mm) {
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    {
        // One unit of the painter is a quarter of a millimetre.
        constexpr int dots = 2540; // to the inch: whole hundredths of a millimetre
        QSvgGenerator writer;
        writer.setOutputDevice(&bytes);
        writer.setResolution(dots);
        const QSizeF size = size_mm * (dots / millimetresPerInch);
        writer.setSize(size.toSize());
        writer.setViewBox(QRectF({0.0, 0.0}, size));
        writer.setTitle(wording::oneLine(content.water->name));
        QPainter painter(&writer);
        const double perUnit = dots / millimetresPerInch / unitsPerMillimetre;
        painter.scale(perUnit, perUnit);
        paintPage(painter, content, denominator);
    }
    return bytes.data();
}

QByteArray asPng(const chart::ChartContent& content, double denominator, QSizeF size_mm) {
    const double perMillimetre = pictureDots / millimetresPerInch;
    QImage picture((size_mm * perMillimetre).toSize(), QImage::Format_RGB32);
    picture.setDotsPerMeterX(static_cast<int>(std::lround(1000.0 * perMillimetre)));
    picture.setDotsPerMeterY(picture.dotsPerMeterX());
    if (picture.isNull()) {
        return {}; // There is no room for it.
    }
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::TextAntialiasing, true);
    painter.scale(perMillimetre / unitsPerMillimetre, perMillimetre / unitsPerMillimetre);
    paintPage(painter, content, denominator);
    painter.end();
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    picture.save(&bytes, "PNG");
    return bytes.data();
}

} // namespace

std::optional<ChartFormat> formatOf(const std::filesystem::path& path) {
    const QString ending = QString::fromStdString(path.extension().string()).toLower();
    return ending == QLatin1String(".pdf")   ? std::optional(ChartFormat::pdf)
           : ending == QLatin1String(".svg") ? std::optional(ChartFormat::svg)
           : ending == QLatin1String(".png") ? std::optional(ChartFormat::png)
                                             : std::nullopt;
}

double scaleForA4(const chart::ChartContent& content) {
    const geo::Box box = chart::extentOf(content);
    if (box.isEmpty()) {
        return 0.0;
    }
    const bool isWide = box.width_m() > box.height_m();
    const QSizeF a4 = SheetLayout::a4(isWide).page_mm * unitsPerMillimetre;
    return std::max(
        roundScale(box.width_m(), a4.width() - keyRoom() - waterMargin - 2.0 * margin),
        roundScale(box.height_m(), a4.height() - topHeight - waterMargin - 2.0 * margin));
}

QSizeF chartSize_mm(const chart::ChartContent& content, double denominator) {
    return pageUnits(content, denominator) / unitsPerMillimetre;
}

base::Result<void> exportChart(const std::filesystem::path& path,
                               const chart::ChartContent& content, double denominator) {
    const auto refused = [&](base::ErrorKind kind, const char* what, const char* whatToDo) {
        return base::fail(kind, what, path.string(), whatToDo);
    };
    const auto format = formatOf(path);
    if (!format) {
        return refused(base::ErrorKind::wrongUse, "a chart is saved as PDF, SVG or PNG",
                       "let the name end in .pdf, .svg or .png");
    }
    const chart::ChartContent whole = toExport(content);
    if (!whole.water || chart::extentOf(whole).isEmpty() || !(denominator > 0.0)) {
        return refused(base::ErrorKind::wrongUse, "there is no water to draw",
                       "bring in soundings or a shoreline first");
    }
    const QSizeF size = chartSize_mm(whole, denominator);
    const double side_mm = std::max(size.width(), size.height());
    const bool isTooLarge =
        side_mm > mostSide_mm ||
        (*format == ChartFormat::png && side_mm * pictureDots / millimetresPerInch > mostDots);
    if (isTooLarge) {
        return refused(base::ErrorKind::unusableInput, "the chart would be too large at this scale",
                       "choose a smaller scale, such as 1 : 10,000");
    }
    const QByteArray bytes = *format == ChartFormat::pdf   ? asPdf(whole, denominator, size)
                             : *format == ChartFormat::svg ? asSvg(whole, denominator, size)
                                                           : asPng(whole, denominator, size);
    if (bytes.isEmpty()) {
        return refused(base::ErrorKind::unusableInput,
                       "there is no memory for a picture of this size",
                       "choose a smaller scale, or save it as PDF");
    }
    return write(path, bytes);
}

} // namespace paper
