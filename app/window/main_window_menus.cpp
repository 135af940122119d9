// SPDX-License-Identifier: GPL-3.0-or-later
// The two small menus of the window and the dialogs behind them.
#include "app/window/main_window.h"

#include "app/chart/chart_canvas.h"
#include "app/days/step_panel.h"
#include "app/days/what_to_open.h"
#include "app/days/where_to_save.h"
#include "app/paper/chart_export.h"
#include "app/paper/chart_sheet.h"
#include "app/paper/picture.h"
#include "app/window/ask_place.h"
#include "app/window/bottom_line.h"
#include "app/window/guide_text.h"
#include "app/window/guide_window.h"
#include "app/window/top_line.h"
#include "app/window/water_choices.h"
#include "app/wording/reasons.h"
#include "app/wording/tongue.h"
#include "core/outputs/write_all.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMessageBox>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QStackedWidget>

namespace window {

namespace {

constexpr QSize copiedSize{1600, 1000};

} // namespace

void MainWindow::layWaterMenu() {
    QMenu* menu = top_->waterMenu();
    const auto add = [&](const QString& text, const QString& key, auto act) {
        return addTo(menu, text, key, act);
    };
    add(tr("New water..."), QStringLiteral("Ctrl+N"), [this] { askNewWater(); });
    add(tr("Open water..."), QStringLiteral("Ctrl+O"), [this] { askOpenWater(); });
    QMenu* recent = menu->addMenu(tr("Open again"));
    connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(recent); });
    add(tr("Name this water..."), QStringLiteral("Ctrl+Shift+N"), [this] { nameWater(); });
    menu->addSeparator();
    add(tr("Export..."), QStringLiteral("Ctrl+E"), [this] { askFolderToGive(); });
    add(tr("Chart on paper..."), QStringLiteral("Ctrl+Shift+C"), [this] { askChartFile(0.0); });
    add(tr("Preview of the chart..."), QStringLiteral("Ctrl+Alt+P"), [this] { previewChart(); });
    layScales(menu->addMenu(tr("Chart at a scale")));
    add(tr("Copy the chart"), QStringLiteral("Ctrl+Alt+C"), [this] { copyChart(); });
    add(tr("Cut through the water"), QStringLiteral("Ctrl+K"), [this] {
        canvas_->setTool(chart::ToolKind::cutLine);
        bottom_->say(tr("Draw a line on the chart: the cut along it stands below."));
    });
    menu->addSeparator();
    add(tr("Guide"), QStringLiteral("F1"), [this] { showGuide(); });
    add(tr("Keys and files"), {}, [this] { showKeys(); });
    add(tr("About Meremark"), {}, [this] { showAbout(); });
    add(tr("Quit"), QStringLiteral("Ctrl+Q"), [this] { close(); });
}

void MainWindow::fillRecent(QMenu* recent) {
    recent->clear();
    for (const WaterChoice& choice : waterChoices(preferences_, open_)) {
        recent->addAction(choice.words, this, [this, path = choice.path] { openWater(path); })
            ->setToolTip(choice.path);
    }
    recent->setEnabled(true);
    if (recent->isEmpty()) {
        recent->addAction(tr("nothing yet"))->setEnabled(false);
    }
}

void MainWindow::askNewWater() {
    if (!mayLeave()) {
        return;
    }
    const QString whole = askPlace(this, tr("New water: where is its file to be?"));
    if (whole.isEmpty()) {
        return;
    }
    if (const auto made = open_.create(whole, QFileInfo(whole).completeBaseName()); !made) {
        bottom_->say(wording::Tongue::sentence(made.error()), true);
    }
}

void MainWindow::askOpenWater() {
    const QString path = days::askWhatToOpen(this, preferences::FileKind::water, tr("Open a water"),
                                             tr("Water files (*.gpkg)"));
    if (!path.isEmpty()) {
        openWater(path);
    }
}

void MainWindow::askFolderToGive() {
    if (!open_.derived().drawn) {
        bottom_->say(tr("There is nothing to give before the water is drawn."), true);
        return;
    }
    using preferences::FileKind;
    const QString folder = QFileDialog::getExistingDirectory(
        this, tr("Folder for the export"), preferences::Preferences::folderOf(FileKind::output));
    if (folder.isEmpty()) {
        return;
    }
    preferences::Preferences::keepFolderOf(FileKind::output, folder);
    // Nothing old is given away. Where tomorrow cannot be worked out the rest still can, and says
    // so.
    if (!open_.planned()) {
        return open_.whenMapIsCurrent([this, folder](const base::Result<void>& map) {
            map ? give(folder, {}) : emit open_.failed(map.error());
        });
    }
    open_.whenPlanIsCurrent([this, folder](const base::Result<void>& plan) {
        if (!plan && plan.error().kind == base::ErrorKind::cancelled) {
            emit open_.failed(plan.error());
            return;
        }
        const QString why = plan ? QString() : wording::Tongue::sentence(plan.error());
        open_.whenMapIsCurrent([this, folder, why](const base::Result<void>& map) {
            map ? give(folder, why) : emit open_.failed(map.error());
        });
    });
}

void MainWindow::give(const QString& folder, const QString& withoutMarks) {
    const auto planned = open_.isPlanCurrent() ? open_.planned() : nullptr;
    open_.jobs().start<void>(
        tr("Exporting"),
        [water = open_.water(), derived = open_.derived(), planned,
         folder](base::Progress& progress) {
            return outputs::writeAll(*water, derived,
                                     planned ? wording::told(planned->marks) : marks::ToldMarks(),
                                     folder.toStdString(), progress);
        },
        [this, folder, withoutMarks](const base::Result<void>& given) {
            if (!given) {
                bottom_->say(wording::Tongue::sentence(given.error()), true);
                return;
            }
            const QString where = tr("Exported into %1.").arg(folder);
            bottom_->say(withoutMarks.isEmpty()
                             ? where
                             : tr("%1 Without marks: %2").arg(where, withoutMarks),
                         !withoutMarks.isEmpty());
        });
}

void MainWindow::layScales(QMenu* menu) {
    for (const int denominator : {1000, 2000, 2500, 5000, 10000, 25000}) {
        menu->addAction(tr("1 : %L1...").arg(denominator), this,
                        [this, denominator] { askChartFile(denominator); });
    }
}

void MainWindow::askChartFile(double denominator) {
    if (!hasChart()) {
        return;
    }
    const QString path = days::askWhereToSave(*this, open_, tr("Save the chart as a page"),
                                              QStringLiteral("chart.pdf"),
                                              tr("PDF (*.pdf);;SVG (*.svg);;PNG (*.png)"));
    if (path.isEmpty()) {
        return;
    }
    withChartOfNow([this, path, denominator] { saveChart(path, denominator); });
}

void MainWindow::saveChart(const QString& path, double denominator) {
    open_.jobs().start<void>(
        tr("Writing the chart"),
        [content = link_.content(), path = path.toStdString(),
         denominator](base::Progress&) -> base::Result<void> {
            const bool isA4 = denominator == 0.0;
            if (isA4 && paper::formatOf(path) == paper::ChartFormat::pdf) {
                const auto pages = paper::saveChartSheet(path, content);
                return pages ? base::Result<void>() : std::unexpected(pages.error());
            }
            return paper::exportChart(path, content,
                                      isA4 ? paper::scaleForA4(content) : denominator);
        },
        [this, path](const base::Result<void>& saved) {
            saved ? bottom_->say(tr("The chart is in %1.").arg(path))
                  : bottom_->say(wording::Tongue::sentence(saved.error()), true);
        });
}

bool MainWindow::hasChart() {
    const bool isDrawn = open_.derived().drawn != nullptr;
    if (!isDrawn) {
        bottom_->say(tr("There is no chart before the water is drawn."), true);
    }
    return isDrawn;
}

void MainWindow::withChartOfNow(const std::function<void()>& act) {
    if (!hasChart()) {
        return;
    }
    const auto go = [this, act](const base::Result<void>& current) {
        current ? act() : emit open_.failed(current.error());
    };
    const bool hasMarks =
        open_.planned() && link_.content().shown.contains(chart::LayerKind::marks);
    hasMarks ? open_.whenPlanIsCurrent(go) : open_.whenMapIsCurrent(go);
}

void MainWindow::previewChart() {
    withChartOfNow([this] {
        QPrinter printer(QPrinter::HighResolution);
        QPrintPreviewDialog dialog(&printer, this);
        dialog.setWindowTitle(tr("The chart, as it will be printed"));
        connect(&dialog, &QPrintPreviewDialog::paintRequested, this,
                [this, content = link_.content()](QPrinter* page) {
                    if (const auto pages = paper::paintChartSheet(*page, content); !pages) {
                        emit open_.failed(pages.error());
                    }
                });
        dialog.exec();
    });
}

void MainWindow::copyChart() {
    withChartOfNow([this] {
        open_.jobs().start<QImage>(
            tr("Drawing a picture of the chart"),
            [content = link_.content()](base::Progress&) -> base::Result<QImage> {
                return paper::renderPicture(content, copiedSize);
            },
            [this](const base::Result<QImage>& picture) {
                if (picture) {
                    QGuiApplication::clipboard()->setImage(*picture);
                    bottom_->say(tr("The chart is on the clipboard, to be pasted as a picture."));
                }
            });
    });
}

GuideWindow& MainWindow::guide() {
    if (guide_ == nullptr) {
        guide_ = new GuideWindow(this);
    }
    return *guide_;
}

void MainWindow::showGuide() {
    if (!open_.isOpen()) {
        return guide().openAt(QStringLiteral("start"));
    }
    constexpr std::array chapters{"survey-day", "tomorrow", "looking-back"};
    const auto day = static_cast<std::size_t>(days_->currentIndex());
    const days::StepPanel& panel = *panels().at(day);
    const int step = panel.openStep();
    guide().openAt(QString::fromLatin1(chapters.at(day)),
                   step < 0 ? QString() : panel.titleOf(step));
}

void MainWindow::showKeys() {
    guide().openAt(guideChapters().back());
}

void MainWindow::showAbout() {
    QMessageBox::about(this, tr("About Meremark"),
                       tr("<p><b>Meremark %1</b></p><p>Soundings in, honest map, sections, ranked "
                          "marks with reasons, anchors and rods, a log, "
                          "and back into the next plan.</p><p>Not for navigation. Local rules and "
                          "the fishery's staff go first.</p>"
                          "<p>GPL-3.0-or-later. Uses Qt, GDAL, PROJ and SQLite.</p>")
                           .arg(QApplication::applicationVersion()));
}

} // namespace window
