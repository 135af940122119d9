// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/tomorrow/steps.h"
#include "app/days/where_to_save.h"
#include "app/edits/take_sheet.h"
#include "app/paper/day_sheet.h"
#include "app/wording/cautions.h"
#include "app/wording/sheet_stops.h"
#include "core/water/steps/day_cautions.h"

#include <QComboBox>
#include <QLabel>
#include <QMessageBox>
#include <QPageSize>
#include <QPointer>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QPushButton>

#include <functional>
#include <memory>

namespace days::tomorrow {

namespace {

class SheetStep : public DayStep {
public:
    explicit SheetStep(DayContext context) : DayStep(context) {
        empty_ = addWords();
        old_ = addWords();
        old_->setProperty("voice", "wrong");
        size_ = new QComboBox(this);
        size_->addItem(tr("A4"), QPageSize::A4);
        size_->addItem(tr("Letter"), QPageSize::Letter);
        size_->addItem(tr("A5, for the pocket"), QPageSize::A5);
        addField(tr("Paper"), size_, tr("Size of the page"));
        form_ = new QComboBox(this);
        form_->addItem(tr("One sheet"), QVariant::fromValue(paper::SheetForm::oneSheet));
        form_->addItem(tr("At length, with pictures"),
                       QVariant::fromValue(paper::SheetForm::withPictures));
        addField(tr("Form"), form_,
                 tr("One sheet holds up to eight marks, front and back; at length each mark has "
                    "more room and the first ones a plan and a cut"));
        connect(form_, &QComboBox::currentIndexChanged, this, &DayStep::lineChanged);
        connect(size_, &QComboBox::currentIndexChanged, this, &DayStep::lineChanged);
        save_ = makeButton(tr("Save PDF…"), QStringLiteral("Ctrl+Shift+S"),
                           tr("Write the sheet as a PDF file"), [this] { askWhere(); });
        print_ = makeButton(tr("Print…"), QStringLiteral("Ctrl+Shift+R"), tr("Print the sheet"),
                            [this] { print(); });
        preview_ = makeButton(tr("Preview…"), QStringLiteral("Ctrl+Shift+V"),
                              tr("The sheet as it will be printed"), [this] { preview(); });
        addRow({print_, preview_, save_});
        connect(&context_.open, &open_water::OpenWater::opened, this, [this] { ++waters_; });
    }

    DayStepLine refresh() override {
        const bool isReady = context_.open.planned() != nullptr;
        save_->setEnabled(isReady);
        print_->setEnabled(isReady);
        preview_->setEnabled(isReady);
        setWords(empty_, isReady ? tr("The day, the chart with its marks, and for each mark its "
                                      "anchors, rods, reasons and cautions.")
                                 : tr("Find marks first; then the sheet can be printed."));
        setWords(old_, oldPlanWords(context_));
        return {tr("%1, %2, black and white").arg(form_->currentText(), size_->currentText()),
                isReady && !context_.open.isPlanCurrent()};
    }

private:
    [[nodiscard]] QPageSize pageSize() const {
        return QPageSize(static_cast<QPageSize::PageSizeId>(size_->currentData().toInt()));
    }

    [[nodiscard]] paper::SheetForm form() const {
        return form_->currentData().value<paper::SheetForm>();
    }

    /// Says once more that it is no weather for a boat; true where there is nothing to say, or the
    /// user wants the sheet all the same.
    [[nodiscard]] bool isWantedAllTheSame() {
        const auto planned = context_.open.planned();
        const auto ashore = planned ? water::ashoreCaution(planned->plan.day) : std::nullopt;
        if (!ashore) {
            return true;
        }
        QMessageBox box(QMessageBox::Warning, tr("The sheet"), wording::said(*ashore, words()),
                        QMessageBox::Cancel, this);
        QPushButton* print =
            box.addButton(tr("Make the sheet all the same"), QMessageBox::AcceptRole);
        box.setDefaultButton(QMessageBox::Cancel);
        box.exec();
        return box.clickedButton() == print;
    }

    void askWhere() {
        // Of now before the weather is judged, too: the last change may have been the wind.
        whenOfNow([this] {
            if (isWantedAllTheSame()) {
                askPath();
            }
        });
    }

    void askPath() {
        const QString path = askWhereToSave(*this, context_.open, tr("Save the sheet"),
                                            QStringLiteral("day-sheet.pdf"), tr("PDF (*.pdf)"));
        if (path.isEmpty()) {
            return;
        }
        whenOfNow([this, path] { save(path); });
    }

    void save(const QString& path) {
        const chart::ChartContent content = context_.chart.content();
        const auto sheet = sheetNow();
        startJob<int>(
            tr("Writing the sheet"),
            [path, content, page = pageSize(), form = form()](base::Progress&) {
                return paper::saveDaySheet(path.toStdString(), content, form, page);
            },
            [this, path, sheet, waters = waters_](const base::Result<int>& pages) {
                if (!pages) {
                    tell(pages.error());
                } else {
                    // It may come home when another water is open: that one was never planned so.
                    const QString notKept = waters == waters_ ? keep(sheet) : QString();
                    const QString made = tr("The sheet is in %1, %2 pages.").arg(path).arg(*pages);
                    emit context_.open.happened((made + ' ' + notKept).trimmed());
                }
            });
    }

    void print() {
        whenOfNow([this] {
            if (isWantedAllTheSame()) {
                askPrinter();
            }
        });
    }

    void preview() {
        whenOfNow([this] {
            if (isWantedAllTheSame()) {
                showPreview();
            }
        });
    }

    void showPreview() {
        QPrinter printer(QPrinter::HighResolution);
        printer.setPageSize(pageSize());
        printer.setColorMode(QPrinter::GrayScale);
        QPrintPreviewDialog dialog(&printer, this);
        dialog.setWindowTitle(tr("The sheet, as it will be printed"));
        const auto sheet = sheetNow();
        connect(&dialog, &QPrintPreviewDialog::paintRequested, this,
                [this, content = context_.chart.content()](QPrinter* page) {
                    if (const auto pages = paper::paintDaySheet(*page, content, form()); !pages) {
                        tell(pages.error());
                    }
                });
        // Accepted: it was printed from there.
        if (dialog.exec() == QDialog::Accepted) {
            if (const QString notKept = keep(sheet); !notKept.isEmpty()) {
                emit context_.open.happened(notKept);
            }
        }
    }

    void askPrinter() {
        const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
        printer->setPageSize(pageSize());
        printer->setColorMode(QPrinter::GrayScale);
        QPrintDialog dialog(printer.get(), this);
        if (dialog.exec() != QDialog::Accepted) {
            return;
        }
        whenOfNow([this, printer] {
            const auto sheet = sheetNow();
            const auto pages = paper::paintDaySheet(*printer, context_.chart.content(), form());
            if (!pages) {
                tell(pages.error());
            } else if (const QString notKept = keep(sheet); !notKept.isEmpty()) {
                emit context_.open.happened(notKept);
            }
        });
    }

    [[nodiscard]] water::BoatSheet sheetNow() const {
        const auto planned = context_.open.planned();
        return planned ? wording::boatSheetOf(*planned, words()) : water::BoatSheet();
    }

    /// To be written up after the day; a sheet without a stop has nothing to be written up.
    /// \return why it is not kept; empty where it is.
    [[nodiscard]] QString keep(const water::BoatSheet& sheet) {
        if (context_.open.isReadOnly()) {
            return tr("It is not kept to be written up: this water can only be read here.");
        }
        if (!sheet.stops.empty()) {
            edits::takeSheet(context_.open, sheet);
        }
        return {};
    }

    /// Ropes for another scope, or marks on another map, must not come onto paper.
    void whenOfNow(const std::function<void()>& act) {
        context_.open.whenPlanIsCurrent(
            [step = QPointer(this), act](const base::Result<void>& current) {
                if (!step) {
                    return;
                }
                if (current) {
                    act();
                } else {
                    base::Error why = current.error();
                    why.what = "there is no sheet: tomorrow is older than your last change, and "
                               "could not be worked out anew: " +
                               why.what;
                    step->tell(why);
                }
            });
    }

    QLabel* empty_ = nullptr;
    QLabel* old_ = nullptr;
    int waters_ = 0; ///< Counts those that were opened.
    QComboBox* size_ = nullptr;
    QComboBox* form_ = nullptr;
    QPushButton* save_ = nullptr;
    QPushButton* print_ = nullptr;
    QPushButton* preview_ = nullptr;
};

} // namespace

DayStep* makeSheetStep(DayContext context) {
    return new SheetStep(context);
}

} // namespace days::tomorrow
