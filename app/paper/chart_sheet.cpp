// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/chart_sheet.h"

#include "app/chart/chart_painter.h"
#include "app/chart/furniture.h"
#include "app/chart/todays_form.h"
#include "app/paper/pdf_file.h"
#include "app/paper/sheet_writer.h"
#include "app/wording/one_line.h"
#include "app/wording/tongue.h"

#include <algorithm>

namespace paper {

namespace {

constexpr double topHeight = 44.0;
constexpr double letterScale = 0.85;

/// The middle of the water in the middle of the room beside the key, at a round scale.
chart::ViewFrame viewFor(const chart::ChartContent& content, QSizeF room, double& denominator) {
    const double key = chart::keyWidth(letterScale) + 12.0;
    const geo::Box box = chart::extentOf(content);
    const double margin = 40.0;
    denominator = std::max(roundScale(box.width_m(), room.width() - key - margin),
                           roundScale(box.height_m(), room.height() - margin));
    const chart::ViewFrame whole = chart::ViewFrame::showing(box, room, 0.0);
    return whole
        .zoomed(unitsPerMetre(denominator) / whole.pixelsPerMetre(),
                {0.5 * room.width(), 0.5 * room.height()})
        .panned({-0.5 * key, 0.0});
}

} // namespace

base::Result<int> paintChartSheet(QPagedPaintDevice& device, const chart::ChartContent& content) {
    const geo::Box box = chart::extentOf(content);
    if (box.isEmpty() || !content.water) {
        return base::fail(base::ErrorKind::wrongUse, "there is no water to draw", "chart sheet",
                          "bring in soundings or a shoreline first");
    }
    const bool isWide = box.width_m() > box.height_m();
    SheetWriter sheet(device, SheetLayout::a4(isWide),
                      chart::levelOfDepths(content) + wording::Tongue::tr("; not for navigation"));
    if (!sheet.isOpen()) {
        return base::fail(base::ErrorKind::unwritableOutput, "the page cannot be drawn",
                          "chart sheet", "choose another printer or file");
    }
    chart::ChartContent whole = content;
    whole.inks = chart::onPaper(whole.inks);
    if (whole.shown.empty()) {
        whole.shown = chart::usualLayers();
    }
    whole.backdrop.reset(); // Drawn for the screen, and somebody else's picture.
    const QRectF map = sheet.room().adjusted(0.0, topHeight, 0.0, 0.0);
    double denominator = 1.0;
    const chart::ViewFrame view = viewFor(whole, map.size(), denominator);
    QPainter& painter = sheet.painter();
    const chart::Palette& palette = chart::Palette::of(whole.inks);
    const QRectF head(map.left(), sheet.room().top(), map.width(), topHeight);
    painter.setPen(palette.ink);
    painter.setFont(chart::typeface(chart::TypeSize::normal, 1.7, chart::TypeStyle::bold));
    painter.drawText(head, Qt::AlignLeft | Qt::AlignVCenter, wording::oneLine(content.water->name));
    painter.setFont(chart::typeface(chart::TypeSize::normal, 1.0));
    painter.drawText(head, Qt::AlignRight | Qt::AlignVCenter,
                     QStringLiteral("1 : %1").arg(QString::number(std::llround(denominator))));
    painter.save();
    painter.translate(map.topLeft());
    chart::paintChart(painter, view, whole, letterScale);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette.ink, 1.2));
    painter.drawRect(map);
    return sheet.pages();
}

base::Result<int> saveChartSheet(const std::filesystem::path& path,
                                 const chart::ChartContent& content) {
    return savePdf(path, "chart",
                   [&](QPagedPaintDevice& device) { return paintChartSheet(device, content); });
}

} // namespace paper
