// SPDX-License-Identifier: GPL-3.0-or-later
// The two small menus of the window and the dialogs behind them.
#include "app/window/main_window.h"

#include "app/chart/chart_canvas.h"
#include "app/days/where_to_save.h"
#include "app/paper/chart_sheet.h"
#include "app/window/bottom_line.h"
#include "app/window/start_list.h"
#include "app/window/top_line.h"
#include "app/wording/reasons.h"
#include "core/outputs/write_all.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QMenu>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace window {

namespace {

const QString waterFilter = QStringLiteral("Water files (*.gpkg)");

/// A text to read, with a way to close it.
void showPage(QWidget* parent, const QString& title, const QString& text) {
    QDialog page(parent);
    page.setWindowTitle(title);
    auto* column = new QVBoxLayout(&page);
    auto* body = new QPlainTextEdit(text, &page);
    body->setReadOnly(true);
    body->setLineWrapMode(QPlainTextEdit::NoWrap);
    QFont fixed(QStringLiteral("DejaVu Sans Mono"));
    fixed.setPointSize(10);
    body->setFont(fixed);
    column->addWidget(body);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, &page);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &page, &QDialog::reject);
    column->addWidget(buttons);
    page.resize(760, 520);
    page.exec();
}

} // namespace

void MainWindow::layWaterMenu() {
    QMenu* menu = top_->waterMenu();
    const auto add = [&](const QString& text, const QString& key, auto act) {
        QAction* action = menu->addAction(text, this, act);
        action->setShortcut(QKeySequence(key));
        addAction(action);
        return action;
    };
    add(tr("New water..."), QStringLiteral("Ctrl+N"), [this] { askNewWater(); });
    add(tr("Open water..."), QStringLiteral("Ctrl+O"), [this] { askOpenWater(); });
    QMenu* recent = menu->addMenu(tr("Open again"));
    connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(recent); });
    add(tr("Name this water..."), QStringLiteral("Ctrl+Shift+N"), [this] { nameWater(); });
    menu->addSeparator();
    add(tr("Export..."), QStringLiteral("Ctrl+E"), [this] { askFolderToGive(); });
    add(tr("Chart on paper..."), QStringLiteral("Ctrl+Shift+C"), [this] { askChartPage(); });
    add(tr("Cut through the water"), QStringLiteral("Ctrl+K"), [this] {
        canvas_->setTool(chart::ToolKind::cutLine);
        bottom_->say(tr("Draw a line on the chart: the cut along it stands below."));
    });
    menu->addSeparator();
    add(tr("Keys and files"), QStringLiteral("F1"), [this] { showKeys(); });
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

void MainWindow::layLayersMenu() {
    using chart::LayerKind;
    const std::array<std::pair<LayerKind, QString>, 14> names{
        {{LayerKind::depth, tr("Depths")},
         {LayerKind::contours, tr("Contours")},
         {LayerKind::structure, tr("Structure")},
         {LayerKind::weed, tr("Weed")},
         {LayerKind::sections, tr("Sections")},
         {LayerKind::closed, tr("Closed water")},
         {LayerKind::soundings, tr("Soundings")},
         {LayerKind::crossings, tr("Crossings")},
         {LayerKind::nextLines, tr("Where to sound next")},
         {LayerKind::places, tr("Places")},
         {LayerKind::log, tr("Stays and fish")},
         {LayerKind::marks, tr("Marks")},
         {LayerKind::rates, tr("Rates by place")},
         {LayerKind::backdrop, tr("Backdrop")}}};
    QMenu* menu = top_->layersMenu();
    for (std::size_t i = 0; i < names.size(); ++i) {
        const LayerKind kind = names[i].first;
        QAction* action = menu->addAction(names[i].second);
        action->setCheckable(true);
        action->setShortcut(
            kind == LayerKind::backdrop ? QKeySequence(QStringLiteral("Ctrl+Shift+B"))
            : kind == LayerKind::rates  ? QKeySequence(QStringLiteral("Ctrl+Shift+F5"))
                                        : QKeySequence(QStringLiteral("Ctrl+F%1").arg(i + 1)));
        addAction(action);
        connect(action, &QAction::triggered, this,
                [this, kind](bool isShown) { link_.setShown(kind, isShown); });
        connect(&link_, &days::ChartLink::contentChanged, action,
                [this, action, kind] { action->setChecked(link_.content().shown.contains(kind)); });
        action->setChecked(link_.content().shown.contains(kind));
    }
}

void MainWindow::askNewWater() {
    if (!mayLeave()) {
        return;
    }
    const QString path = QFileDialog::getSaveFileName(
        this, tr("New water: where is its file to be?"), QString(), waterFilter);
    if (path.isEmpty()) {
        return;
    }
    const QString whole =
        path.endsWith(QLatin1String(".gpkg")) ? path : path + QStringLiteral(".gpkg");
    if (const auto made = open_.create(whole, QFileInfo(whole).completeBaseName()); !made) {
        bottom_->say(QString::fromStdString(made.error().sentence()), true);
    }
}

void MainWindow::askOpenWater() {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Open a water"), QString(), waterFilter);
    if (!path.isEmpty()) {
        openWater(path);
    }
}

void MainWindow::askFolderToGive() {
    if (!open_.derived().drawn) {
        bottom_->say(tr("There is nothing to give before the water is drawn."), true);
        return;
    }
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder for the export"));
    if (folder.isEmpty()) {
        return;
    }
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
        const QString why = plan ? QString() : QString::fromStdString(plan.error().sentence());
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
                bottom_->say(QString::fromStdString(given.error().sentence()), true);
                return;
            }
            const QString where = tr("Exported into %1.").arg(folder);
            bottom_->say(withoutMarks.isEmpty()
                             ? where
                             : tr("%1 Without marks: %2").arg(where, withoutMarks),
                         !withoutMarks.isEmpty());
        });
}

void MainWindow::askChartPage() {
    if (!open_.derived().drawn) {
        bottom_->say(tr("There is no chart before the water is drawn."), true);
        return;
    }
    const QString path = days::askWhereToSave(*this, open_, tr("Save the chart as a page"),
                                              QStringLiteral("chart.pdf"), tr("PDF (*.pdf)"));
    if (path.isEmpty()) {
        return;
    }
    // What is printed is of now: the drawing, and the marks where they are shown on it.
    const auto save = [this, path](const base::Result<void>& current) {
        current ? saveChartPage(path) : emit open_.failed(current.error());
    };
    const bool hasMarks =
        open_.planned() && link_.content().shown.contains(chart::LayerKind::marks);
    hasMarks ? open_.whenPlanIsCurrent(save) : open_.whenMapIsCurrent(save);
}

void MainWindow::saveChartPage(const QString& path) {
    open_.jobs().start<int>(
        tr("Writing the chart"),
        [content = link_.content(), path](base::Progress&) {
            return paper::saveChartSheet(path.toStdString(), content);
        },
        [this, path](const base::Result<int>& pages) {
            pages ? bottom_->say(tr("The chart is in %1.").arg(path))
                  : bottom_->say(QString::fromStdString(pages.error().sentence()), true);
        });
}

void MainWindow::showKeys() {
    QFile file(QStringLiteral(":/desk/keys.txt"));
    if (file.open(QIODevice::ReadOnly)) {
        showPage(this, tr("Keys and files"), QString::fromUtf8(file.readAll()));
    }
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
