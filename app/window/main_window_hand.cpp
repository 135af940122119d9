// SPDX-License-Identifier: GPL-3.0-or-later
// What the hand does at the window: what it drags on the chart and drops on the window, the menu
// under the right button, and Escape.
#include "app/chart/chart_canvas.h"
#include "app/chart/picking.h"
#include "app/chart/read_out.h"
#include "app/days/survey_day/survey_day.h"
#include "app/days/tomorrow/steps.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/edits/ban_water.h"
#include "app/edits/pin_mark.h"
#include "app/edits/set_plan.h"
#include "app/edits/unpin_mark.h"
#include "app/side_view/side_view.h"
#include "app/window/bottom_line.h"
#include "app/window/main_window.h"

#include <QClipboard>
#include <QDragEnterEvent>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QMenu>
#include <QMimeData>
#include <QTimer>

namespace window {

namespace {

constexpr auto waterSuffix = ".gpkg";

} // namespace

void MainWindow::wireHand() {
    using chart::ChartCanvas;
    const auto hand = [this]() -> days::tomorrow::LieHand& { return tomorrow_->hand(); };
    connect(canvas_, &ChartCanvas::lieHeld, tomorrow_,
            [hand](const chart::LiePart& part, geo::WaterPoint at) { hand().hold(part, at); });
    connect(canvas_, &ChartCanvas::lieDropped, tomorrow_,
            [hand](const chart::LiePart& part, geo::WaterPoint to) { hand().drop(part, to); });
    connect(canvas_, &ChartCanvas::lieLetGo, tomorrow_, [hand] { hand().letGo(); });
    connect(canvas_, &ChartCanvas::rodClicked, &link_,
            [this](std::size_t rod) { link_.selectRod(rod); });
    connect(&link_, &days::ChartLink::triedChanged, canvas_, [this] {
        canvas_->setTried(link_.tried());
        side_->setTried(
            link_.tried().transform([](const chart::TriedLie& tried) { return tried.mark; }));
    });
    connect(canvas_, &ChartCanvas::menuAsked, this, &MainWindow::showChartMenu);
    connect(canvas_, &ChartCanvas::windDropped, this, [this](units::Bearing from) {
        edits::setPlan(open_, tr("Turn the wind"),
                       [from](marks::Plan& plan) { plan.day.wind.from = from; });
    });
}

std::optional<geo::Box> MainWindow::boxOfSection(int number) const {
    const auto& map = open_.derived().sections;
    if (!map || number < 0 || static_cast<std::size_t>(number) >= map->sections.size()) {
        return std::nullopt;
    }
    geo::Box box;
    for (const geo::Piece& piece : map->sections[static_cast<std::size_t>(number)].pieces) {
        for (const geo::WaterPoint corner : piece.outer) {
            box.take(corner);
        }
    }
    return box;
}

std::optional<geo::Box> MainWindow::boxOfMark(int rank) const {
    const auto planned = open_.planned();
    if (!planned) {
        return std::nullopt;
    }
    for (const marks::Mark& mark : planned->marks) {
        if (mark.rank == rank) {
            geo::Box box;
            box.take(mark.place);
            box.take(mark.anchors.bow.place);
            if (mark.anchors.stern) {
                box.take(mark.anchors.stern->place);
            }
            for (const auto& rod : mark.spread.rods) {
                box.take(rod.place);
            }
            return box;
        }
    }
    return std::nullopt;
}

void MainWindow::zoomToSection() {
    const auto section = link_.selection().section;
    const auto box = section ? boxOfSection(*section) : std::nullopt;
    box ? canvas_->showBox(*box) : bottom_->say(tr("Choose a section first: click into it."), true);
}

void MainWindow::zoomToMark() {
    const auto mark = link_.selection().mark;
    const auto box = mark ? boxOfMark(*mark) : std::nullopt;
    box ? canvas_->showBox(*box) : bottom_->say(tr("Choose a mark first."), true);
}

void MainWindow::measure() {
    if (link_.isAsking()) {
        link_.stopAsking();
    }
    canvas_->setTool(chart::ToolKind::measure);
    canvas_->setFocus();
    bottom_->say(tr("Click from place to place: how far it is stands beside the pointer. Backspace "
                    "takes a place back, Escape ends it."));
}

void MainWindow::addMarkActs(QMenu& menu, int rank) {
    const auto planned = open_.planned();
    const auto mark = std::ranges::find(planned->marks, rank, &marks::Mark::rank);
    const geo::LonLat place = days::tomorrow::pinnedPlaceOf(*open_.water(), *mark);
    const std::string name = mark->name;
    if (mark->isPinned) {
        menu.addAction(tr("Let mark %1 go").arg(rank), this,
                       [this, place] { edits::unpinMark(open_, place); });
    } else {
        menu.addAction(tr("Keep mark %1").arg(rank), this, [this, place, name, at = mark->lonLat] {
            edits::pinMark(open_, place, {name, at});
        });
    }
    menu.addAction(tr("Zoom to mark %1").arg(rank), this, [this, rank] {
        link_.selectMark(rank);
        zoomToMark();
    });
}

void MainWindow::showChartMenu(geo::WaterPoint place, QPoint at) {
    const chart::ChartContent& content = link_.content();
    if (!open_.isOpen() || !content.water || !content.water->frame) {
        return;
    }
    QMenu menu(this);
    const chart::ReadOut here = chart::readOutAt(content, place);
    const geo::LonLat lonLat = content.water->frame->toEarth(place);
    const auto copy = [](const QString& text) { QGuiApplication::clipboard()->setText(text); };
    menu.addAction(tr("Copy position %1").arg(wording::Words::place(lonLat)), this,
                   [copy, lonLat] { copy(wording::Words::place(lonLat)); });
    menu.addAction(tr("Copy what is known here"), this, [copy, line = here.line()] { copy(line); });
    menu.addSeparator();
    const QPointF pixel = canvas_->viewFrame().toScreen(place);
    if (const auto rank = chart::markAt(content, canvas_->viewFrame(), pixel)) {
        addMarkActs(menu, *rank);
    } else if (!open_.isReadOnly()) {
        menu.addAction(tr("Own mark here"), this, [this, lonLat] {
            edits::pinMark(open_, lonLat, {std::string(), lonLat});
        });
    }
    if (const auto section = chart::sectionAt(content, canvas_->viewFrame(), pixel)) {
        menu.addAction(tr("Zoom to this section"), this, [this, section] {
            link_.selectSection(section);
            zoomToSection();
        });
    }
    menu.addAction(tr("Whole water"), this, [this] { canvas_->showWholeWater(); });
    menu.addSeparator();
    menu.addAction(tr("Measure"), this, [this] { measure(); });
    menu.exec(at);
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls()) {
        event->acceptProposedAction();
    }
}

void MainWindow::dropEvent(QDropEvent* event) {
    QStringList files;
    for (const QUrl& url : event->mimeData()->urls()) {
        if (url.isLocalFile()) {
            files.append(url.toLocalFile());
        }
    }
    event->acceptProposedAction();
    if (files.size() == 1 &&
        files.front().endsWith(QLatin1String(waterSuffix), Qt::CaseInsensitive)) {
        openWater(files.front());
        return;
    }
    // Once the drop is over: a dialog within it would hold the other program's hand.
    QTimer::singleShot(0, this, [this, files] {
        showDay(0);
        survey_->takeFiles(files);
    });
}

void MainWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape) {
        QMainWindow::keyPressEvent(event);
        return;
    }
    if (link_.isAsking()) {
        link_.stopAsking();
    } else if (open_.opening().isBusy()) {
        open_.opening().cancelAll();
    } else if (open_.jobs().isBusy()) {
        open_.jobs().cancelAll();
    } else {
        canvas_->setTool(chart::ToolKind::pan);
    }
}

} // namespace window
