// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/season_page.h"

#include "app/chart/chart_painter.h"
#include "app/chart/lettering.h"
#include "app/paper/pdf_file.h"
#include "app/paper/sheet_writer.h"
#include "app/wording/one_line.h"
#include "app/wording/tongue.h"

namespace paper {

namespace {

constexpr double topHeight = 46.0;
constexpr double chartHeight = 330.0;
constexpr double hoursHeight = 190.0;
constexpr double letterScale = 0.8;

QFont plain(double scale = 1.0) {
    return chart::typeface(chart::TypeSize::normal, scale);
}

void writeHead(SheetWriter& sheet, const SeasonPage& page) {
    sheet.block(topHeight, [&](const QRectF& box) {
        QPainter& painter = sheet.painter();
        painter.setPen(sheet.palette().ink);
        painter.setFont(chart::typeface(chart::TypeSize::normal, 1.7, chart::TypeStyle::bold));
        painter.drawText(box, Qt::AlignLeft | Qt::AlignTop,
                         wording::oneLine(page.content.water->name));
        painter.setFont(plain());
        painter.drawText(box, Qt::AlignLeft | Qt::AlignBottom, page.span);
    });
    sheet.space(6.0);
    sheet.rule();
}

/// The water with what it gave: nothing of tomorrow is on it.
void writeMap(SheetWriter& sheet, const SeasonPage& page) {
    chart::ChartContent content = page.content;
    content.inks = chart::Inks::grey;
    content.planned.reset();
    content.backdrop.reset();
    content.dayTrack.reset();
    content.offeredStays.reset();
    content.selection = {};
    content.shown = {chart::LayerKind::depth,    chart::LayerKind::rates,
                     chart::LayerKind::contours, chart::LayerKind::sections,
                     chart::LayerKind::closed,   chart::LayerKind::places,
                     chart::LayerKind::log,      chart::LayerKind::furniture};
    sheet.block(chartHeight, [&](const QRectF& box) {
        QPainter& painter = sheet.painter();
        painter.save();
        painter.translate(box.topLeft());
        const auto view = chart::ViewFrame::showing(chart::extentOf(content), box.size(), 14.0);
        chart::paintChart(painter, view, content, letterScale);
        painter.restore();
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(sheet.palette().ink, 1.0));
        painter.drawRect(box);
    });
    sheet.space(8.0);
}

void writePlaces(SheetWriter& sheet, const SeasonPage& page) {
    if (page.places.empty()) {
        return;
    }
    const double width = sheet.room().width();
    sheet.heading(wording::Tongue::tr("Where"), 60.0);
    sheet.table({{wording::Tongue::tr("section"), 0.30 * width},
                 {wording::Tongue::tr("fish per 10 rod-hours, steadied"), 0.30 * width},
                 {wording::Tongue::tr("fish"), 0.10 * width},
                 {wording::Tongue::tr("rod-hours"), 0.12 * width},
                 {wording::Tongue::tr("stays"), 0.09 * width},
                 {wording::Tongue::tr("blank"), 0.09 * width}},
                page.places);
    if (!page.untried.isEmpty()) {
        sheet.paragraph(plain(0.9), page.untried);
    }
}

} // namespace

base::Result<int> paintSeasonPage(QPagedPaintDevice& device, const SeasonPage& page) {
    if (!page.content.water || chart::extentOf(page.content).isEmpty()) {
        return base::fail(base::ErrorKind::wrongUse, "there is no water to draw", "season page",
                          "bring in soundings or a shoreline first");
    }
    SheetWriter sheet(device, SheetLayout::a4(), wording::Tongue::tr("not for navigation"));
    if (!sheet.isOpen()) {
        return base::fail(base::ErrorKind::unwritableOutput, "the page cannot be drawn",
                          "season page", "choose another printer or file");
    }
    writeHead(sheet, page);
    for (const QString& sentence : page.said) {
        sheet.paragraph(plain(), sentence);
    }
    sheet.space(6.0);
    writeMap(sheet, page);
    writePlaces(sheet, page);
    if (page.hours) {
        sheet.space(8.0);
        sheet.block(hoursHeight, [&](const QRectF& box) {
            paintHours(sheet.painter(), box, *page.hours, chart::Inks::grey, letterScale);
        });
    }
    if (!page.months.empty()) {
        const double column = sheet.room().width() / 5.0;
        sheet.heading(wording::Tongue::tr("Month by month"), 50.0);
        sheet.table({{wording::Tongue::tr("month"), column},
                     {wording::Tongue::tr("trips"), column},
                     {wording::Tongue::tr("stays"), column},
                     {wording::Tongue::tr("blank"), column},
                     {wording::Tongue::tr("fish"), column}},
                    page.months);
    }
    sheet.space(6.0);
    for (const QString& note : page.notes) {
        sheet.paragraph(plain(0.85), note);
    }
    return sheet.pages();
}

base::Result<int> saveSeasonPage(const std::filesystem::path& path, const SeasonPage& page) {
    return savePdf(path, "season",
                   [&](QPagedPaintDevice& device) { return paintSeasonPage(device, page); });
}

} // namespace paper
