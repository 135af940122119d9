// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/tomorrow/steps.h"
#include "app/paper/day_sheet.h"
#include "app/paper/pdf_file.h"

#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QPageSize>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>

namespace days::tomorrow {

namespace {

class SheetStep : public DayStep {
public:
    explicit SheetStep(DayContext context) : DayStep(context) {
        empty_ = addWords();
        size_ = new QComboBox(this);
        size_->addItem(tr("A4"), QPageSize::A4);
        size_->addItem(tr("Letter"), QPageSize::Letter);
        addField(tr("Paper"), size_, tr("Size of the page"));
        connect(size_, &QComboBox::currentIndexChanged, this, &DayStep::lineChanged);
        save_ = makeButton(tr("Save PDF…"), QStringLiteral("Ctrl+Shift+S"),
                           tr("Write the sheet as a PDF file"), [this] { askWhere(); });
        print_ = makeButton(tr("Print…"), QStringLiteral("Ctrl+Shift+R"), tr("Print the sheet"),
                            [this] { print(); });
        addRow({print_, save_});
    }

    DayStepLine refresh() override {
        const bool isReady = context_.open.planned() != nullptr;
        save_->setEnabled(isReady);
        print_->setEnabled(isReady);
        setWords(empty_, isReady ? tr("The day, the chart with its marks, and for each mark its "
                                      "anchors, rods, reasons and cautions.")
                                 : tr("Find marks first; then the sheet can be printed."));
        return {tr("%1, black and white").arg(size_->currentText()), false};
    }

private:
    [[nodiscard]] QPageSize pageSize() const {
        return QPageSize(static_cast<QPageSize::PageSizeId>(size_->currentData().toInt()));
    }

    void askWhere() {
        const QString path = QFileDialog::getSaveFileName(
            this, tr("Save the sheet"), QStringLiteral("day-sheet.pdf"), tr("PDF (*.pdf)"));
        if (path.isEmpty()) {
            return;
        }
        const chart::ChartContent content = context_.chart.content();
        context_.open.jobs().start<int>(
            tr("Writing the sheet"),
            [path, content, page = pageSize()](base::Progress&) {
                return paper::savePdf(path.toStdString(), content.water->name,
                                      [&](QPagedPaintDevice& device) {
                                          device.setPageSize(page);
                                          return paper::paintDaySheet(device, content);
                                      });
            },
            [this, path](const base::Result<int>& pages) {
                if (!pages) {
                    tell(pages.error());
                } else {
                    emit context_.open.happened(
                        tr("The sheet is in %1, %2 pages.").arg(path).arg(*pages));
                }
            });
    }

    void print() {
        QPrinter printer(QPrinter::HighResolution);
        printer.setPageSize(pageSize());
        printer.setColorMode(QPrinter::GrayScale);
        QPrintDialog dialog(&printer, this);
        if (dialog.exec() != QDialog::Accepted) {
            return;
        }
        const auto pages = paper::paintDaySheet(printer, context_.chart.content());
        if (!pages) {
            tell(pages.error());
        }
    }

    QLabel* empty_ = nullptr;
    QComboBox* size_ = nullptr;
    QPushButton* save_ = nullptr;
    QPushButton* print_ = nullptr;
};

} // namespace

DayStep* makeSheetStep(DayContext context) {
    return new SheetStep(context);
}

} // namespace days::tomorrow
