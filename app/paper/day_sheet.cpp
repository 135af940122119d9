// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/day_sheet.h"

#include "app/paper/long_sheet.h"
#include "app/paper/one_sheet.h"
#include "app/paper/pdf_file.h"
#include "app/wording/one_line.h"

namespace paper {

namespace {

/// The one sheet uses the paper to where most printers still reach.
SheetLayout layoutOf(const QPageSize& paper, SheetForm form) {
    SheetLayout layout = SheetLayout::on(paper);
    if (form == SheetForm::oneSheet) {
        layout.margin_mm = 8.0;
        layout.footer_mm = 5.0;
    }
    return layout;
}

} // namespace

base::Result<int> paintDaySheet(QPagedPaintDevice& device, const chart::ChartContent& content,
                                SheetForm form) {
    if (!content.planned || !content.water) {
        return base::fail(base::ErrorKind::wrongUse, "nothing is planned", "day sheet",
                          "work out the marks first");
    }
    if (content.age.isPlanOld || content.age.isMapOld) {
        return base::fail(base::ErrorKind::wrongUse, "the marks are older than the water",
                          "day sheet", "work them out anew first");
    }
    chart::ChartContent grey = content;
    grey.inks = chart::Inks::grey;
    SheetWriter sheet(
        device, layoutOf(device.pageLayout().pageSize(), form),
        QStringLiteral("%1, %2").arg(wording::oneLine(content.water->name),
                                     wording::Words::day(content.planned->plan.day.day)));
    if (!sheet.isOpen()) {
        return base::fail(base::ErrorKind::unwritableOutput, "the pages cannot be drawn",
                          "day sheet", "choose another printer or file");
    }
    if (form == SheetForm::oneSheet) {
        writeOneSheet(sheet, grey);
    } else {
        writeLongSheet(sheet, grey);
    }
    return sheet.pages();
}

base::Result<int> saveDaySheet(const std::filesystem::path& path,
                               const chart::ChartContent& content, SheetForm form,
                               const QPageSize& paper) {
    return savePdf(path, content.water ? content.water->name : std::string(),
                   [&](QPagedPaintDevice& device) {
                       device.setPageSize(paper);
                       return paintDaySheet(device, content, form);
                   });
}

} // namespace paper
