// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/main_window.h"

#include "app/chart/chart_canvas.h"
#include "app/chart/read_out.h"
#include "app/chart/spoken_chart.h"
#include "app/days/looking_back/looking_back_day.h"
#include "app/days/step_panel.h"
#include "app/days/survey_day/survey_day.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/edits/change_settings.h"
#include "app/side_view/side_view.h"
#include "app/window/bottom_line.h"
#include "app/window/sample_water.h"
#include "app/window/start_page.h"
#include "app/window/top_line.h"
#include "app/wording/cautions.h"
#include "app/wording/one_line.h"
#include "app/wording/planned_words.h"
#include "app/wording/tongue.h"
#include "core/water/steps/day_cautions.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QIcon>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace window {

namespace {

constexpr int stepsWidth = 400;
constexpr double soundingScale_pixelsPerMetre = 1.6; // neighbours along the track can be told apart

contours::CountsIn unitOf(const preferences::Preferences& preferences) {
    return preferences.units() == preferences::UnitSystem::imperial ? contours::CountsIn::feet
                                                                    : contours::CountsIn::metres;
}

} // namespace

MainWindow::MainWindow(const QString& unnamedFolder)
    // Beside the waters without a name, where meremark-batch lays its own.
    : copyTaker_(open_, store::Copies(QDir(QFileInfo(unnamedFolder).absolutePath())
                                          .filePath(QStringLiteral("copies"))
                                          .toStdString())),
      link_(open_, preferences_) {
    open_.keepUnnamedIn(unnamedFolder);
    open_.countNewWatersIn(unitOf(preferences_));
    setWindowTitle(QStringLiteral("Meremark"));
    setWindowIcon(QIcon(QStringLiteral(":/desk/meremark.svg")));
    setAcceptDrops(true);
    setMinimumSize(880, 540);
    layOut();
    wireChart();
    wireWater();
    layWaterMenu();
    layLayersMenu();
    layViewMenu();
    takeContent();
    comeBack();
    bottom_->say(tr("Drop a log of soundings or a water file on the window to begin."));
}

MainWindow::~MainWindow() {
    hide(); // The steps clear the chart as they are hidden: while it is still there.
    open_.finishKeeping();
}

void MainWindow::layOut() {
    auto* middle = new QWidget(this);
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    top_ = new TopLine(open_, preferences_, middle);
    column->addWidget(top_);

    across_ = new QSplitter(Qt::Horizontal, middle);
    down_ = new QSplitter(Qt::Vertical, across_);
    canvas_ = new chart::ChartCanvas(down_);
    canvas_->setFocusPolicy(Qt::StrongFocus);
    start_ = new StartPage(open_, preferences_, copyTaker_.copies(), canvas_);
    auto* over = new QVBoxLayout(canvas_);
    over->setContentsMargins(0, 0, 0, 0);
    over->addWidget(start_);
    side_ = new side_view::SideView(down_);
    down_->addWidget(canvas_);
    down_->addWidget(side_);
    down_->setStretchFactor(0, 4);
    down_->setStretchFactor(1, 1);
    down_->setCollapsible(0, false);
    down_->setHandleWidth(2);
    down_->setSizes({560, 170});
    days_ = new QStackedWidget(across_);
    days_->setMinimumWidth(340);
    layDays();
    across_->addWidget(down_);
    across_->addWidget(days_);
    across_->setStretchFactor(0, 1);
    across_->setStretchFactor(1, 0);
    across_->setCollapsible(0, false);
    across_->setHandleWidth(2);
    across_->setSizes({1280 - stepsWidth, stepsWidth});
    column->addWidget(across_, 1);

    bottom_ = new BottomLine(middle);
    bottom_->watch(open_.jobs());
    bottom_->watch(open_.opening());
    column->addWidget(bottom_);
    setCentralWidget(middle);
}

void MainWindow::layDays() {
    const days::DayContext context{open_, preferences_, link_};
    survey_ = new days::survey_day::SurveyDay(context, this);
    tomorrow_ = new days::tomorrow::TomorrowDay(context);
    back_ = new days::looking_back::LookingBackDay(context);
    days_->addWidget(survey_);
    days_->addWidget(tomorrow_);
    days_->addWidget(back_);
    connect(top_, &TopLine::dayChosen, this, &MainWindow::showDay);
    connect(survey_, &days::survey_day::SurveyDay::waterFound, this, &MainWindow::openWater);
    connect(start_, &StartPage::chosen, this, &MainWindow::openWater);
    connect(start_, &StartPage::newAsked, this, &MainWindow::askNewWater);
    connect(start_, &StartPage::sampleAsked, this, [this] {
        showDay(0);
        survey_->takeFiles(sampleFiles(QCoreApplication::applicationDirPath()));
    });
    connect(start_, &StartPage::goBackAsked, this,
            [this](const QString& path) { goBack(path, {}); });
    connect(back_, &days::looking_back::LookingBackDay::beliefsAsked, this, [this] {
        showDay(1);
        tomorrow_->openBeliefs();
    });
    connect(survey_, &days::survey_day::SurveyDay::dayTrackFound, this,
            [this](const QString& path) {
                showDay(2);
                back_->takeTrack(path);
            });
}

void MainWindow::showDay(int day) {
    const QWidget* focused = focusWidget();
    const bool isAtPanels = focused == nullptr || days_->isAncestorOf(focused);
    top_->showDay(day);
    days_->setCurrentIndex(day);
    // Who works at the panels goes on there; who works on the chart stays at it.
    if (isAtPanels) {
        panels().at(static_cast<std::size_t>(day))->giveKeys();
    }
}

void MainWindow::wireChart() {
    using chart::ChartCanvas;
    connect(&link_, &days::ChartLink::contentChanged, this, &MainWindow::takeContent);
    connect(&link_, &days::ChartLink::lookedAt, canvas_, [this](geo::WaterPoint p) {
        // The paper lies still as long as the place can be seen on it.
        if (!canvas_->viewFrame().box().holds(p)) {
            canvas_->showPlace(p);
        }
    });
    connect(&link_, &days::ChartLink::lookedAlong, this, [this](std::optional<int> day) {
        if (day) {
            side_->showTrack(*day);
        } else if (side_->showsTrack()) {
            showCutOfMark();
        }
    });
    connect(&link_, &days::ChartLink::selectionChanged, this, [this] {
        canvas_->setChosen(link_.chosenPlace());
        side_->setChosen(link_.chosenOnTrack(), false);
    });
    connect(&link_, &days::ChartLink::chosenShown, this, [this] {
        if (const auto place = link_.chosenPlace()) {
            canvas_->showPlace(*place, soundingScale_pixelsPerMetre);
            side_->setChosen(link_.chosenOnTrack(), true);
        }
    });
    connect(canvas_, &ChartCanvas::crossingClicked, &link_,
            [this](std::size_t crossing) { link_.selectCrossing(crossing); });
    const auto choose = [this](chart::SoundingPick pick) { link_.selectSounding(pick); };
    connect(canvas_, &ChartCanvas::soundingClicked, &link_, choose);
    connect(side_, &side_view::SideView::soundingClicked, &link_, choose);
    connect(side_, &side_view::SideView::soundingsBrushed, &link_, &days::ChartLink::giveSoundings);
    connect(&link_, &days::ChartLink::askingChanged, this, &MainWindow::tellAsking);
    connect(canvas_, &ChartCanvas::made, this, [this](const chart::Made& made) {
        if (const auto* line = std::get_if<chart::LineMade>(&made)) {
            side_->showCut(line->from, line->to);
            canvas_->setTool(chart::ToolKind::pan);
        } else {
            link_.give(made);
        }
    });
    connect(canvas_, &ChartCanvas::viewChanged, this,
            [this] { survey_->lookAt(canvas_->viewFrame()); });
    connect(canvas_, &ChartCanvas::markClicked, &link_, [this](int rank) {
        link_.selectMark(rank);
        showDay(1);
    });
    wireHand();
    connect(canvas_, &ChartCanvas::sectionClicked, &link_,
            [this](int section) { link_.selectSection(section); });
    connect(canvas_, &ChartCanvas::zoneClicked, &link_, &days::ChartLink::selectZone);
    connect(canvas_, &ChartCanvas::stayClicked, &link_,
            [this](logbook::StayId stay) { link_.selectStay(stay); });
    connect(canvas_, &ChartCanvas::pointedAt, this, [this](std::optional<geo::WaterPoint> p) {
        side_->setPointed(p);
        bottom_->showReadOut(p ? chart::readOutAt(link_.content(), *p).line() : QString());
    });
    connect(side_, &side_view::SideView::pointedAt, this, [this](std::optional<geo::WaterPoint> p) {
        canvas_->setPointed(p);
        bottom_->showReadOut(p ? chart::readOutAt(link_.content(), *p).line() : QString());
    });
    connect(side_, &side_view::SideView::cutChanged, canvas_, [this](const geo::Path& path) {
        canvas_->setCut(path.size() < 2
                            ? std::nullopt
                            : std::optional(chart::LineMade{path.front(), path.back()}));
    });
}

void MainWindow::countAsTheUser() {
    const contours::CountsIn unit = unitOf(preferences_);
    open_.countNewWatersIn(unit);
    const water::Settings& settings = open_.water()->settings;
    const bool isAnyChosen = !settings.bands || !settings.sectionArea;
    if (open_.isOpen() && !open_.isReadOnly() && isAnyChosen && settings.countsIn != unit) {
        const QString name =
            unit == contours::CountsIn::feet ? tr("Count in feet") : tr("Count in metres");
        if (const auto done = edits::changeSettings(
                open_, name, [unit](water::Settings& s) { s.countsIn = unit; });
            !done) {
            bottom_->say(wording::Tongue::sentence(done.error()), true);
        }
    }
}

void MainWindow::wireWater() {
    connect(&preferences_, &preferences::Preferences::unitsChanged, this,
            &MainWindow::countAsTheUser);
    using open_water::OpenWater;
    connect(&open_, &OpenWater::failed, this, [this](const base::Error& error) {
        bottom_->say(wording::Tongue::sentence(error), true);
        offerCopies(error);
    });
    connect(&open_, &OpenWater::happened, this, [this](const QString& sentence) {
        bottom_->say(link_.isAsking() ? sentence + QStringLiteral(" ") + asked() : sentence);
    });
    connect(&open_, &OpenWater::derivedChanged, this, &MainWindow::tellDrawn);
    connect(&open_, &OpenWater::plannedChanged, this, &MainWindow::tellPlanned);
    connect(&open_, &OpenWater::changed, this, &MainWindow::showName);
    connect(&open_, &OpenWater::moved, this, &MainWindow::takeMove);
    connect(&open_.keeper(), &open_water::Keeper::changed, this, &MainWindow::showNotKept);
    connect(&open_, &OpenWater::opened, this, [this] {
        preferences_.addRecentWater(open_.path());
        showName();
        cutMark_.reset();
        side_->showNothing();
        sayOpened();
    });
}

void MainWindow::sayOpened() {
    if (const auto owner = open_.owner()) {
        bottom_->say(
            tr("%1 is open in %2: it can only be looked at here, and shows what is saved there.")
                .arg(open_.path(), QString::fromStdString(owner->text())),
            true);
    } else if (open_.isOfNewerVersion()) {
        bottom_->say(tr("A newer version of Meremark keeps %1: it can be looked at here, as far as "
                        "this version knows what is in it, and nothing is saved into it.")
                         .arg(open_.path()),
                     true);
    } else if (open_.isReadOnly()) {
        bottom_->say(tr("%1 can only be read: nothing you change will be kept.").arg(open_.path()),
                     true);
    } else {
        bottom_->say(tr("Opened %1.").arg(open_.path()));
    }
}

void MainWindow::showName() {
    const QString name = wording::oneLine(open_.water()->name);
    setWindowTitle(tr("%1 - Meremark").arg(name.isEmpty() ? tr("Water without a name") : name));
}

void MainWindow::takeContent() {
    const chart::ChartContent& content = link_.content();
    canvas_->setContent(content);
    canvas_->setAccessibleDescription(chart::spokenChart(content));
    side_->setContent(content);
    if (content.selection.mark != cutMark_ || content.selection.rod != cutRod_ ||
        content.planned != cutPlan_) {
        cutRod_ = content.selection.rod;
        cutPlan_ = content.planned;
        cutMark_ = content.selection.mark;
        // A track that is being looked over stays; the cut comes when it is left.
        if (cutMark_ && !(survey_->isVisible() && side_->showsTrack())) {
            showCutOfMark();
        }
    }
}

void MainWindow::showCutOfMark() {
    if (cutMark_) {
        side_->showMark(*cutMark_);
    } else {
        side_->showNothing();
    }
}

void MainWindow::tellDrawn() {
    const water::Derived& derived = open_.derived();
    if (!derived.failures.empty() || !derived.drawn || link_.isAsking()) {
        return;
    }
    const wording::Words words(preferences_.units());
    const auto sections = derived.sections ? derived.sections->sections.size() : 0;
    bottom_->say(tr("Drawn: %L1 cells of %2, %L3 sections. Next: %4")
                     .arg(derived.drawn->report.cells)
                     .arg(words.length(derived.drawn->report.cell))
                     .arg(sections)
                     .arg(derived.outlineIsAssumed ? tr("bring in a shoreline.")
                                                   : tr("choose marks under Tomorrow.")));
}

void MainWindow::tellPlanned() {
    if (const auto planned = open_.planned()) {
        const auto ashore = water::ashoreCaution(planned->plan.day);
        const wording::Words words(preferences_.units());
        const QString grave =
            ashore ? wording::said(*ashore, words) : wording::windNotSaid(*planned, words);
        const QString said = tr("Marks ranked for %1: %L2 places looked at, the best %L3 kept. %4")
                                 .arg(wording::Words::day(planned->plan.day.day))
                                 .arg(planned->looked)
                                 .arg(planned->marks.size())
                                 .arg(grave.isEmpty() ? tr("Next: the sheet.") : grave);
        bottom_->say(said, !grave.isEmpty());
    }
}

void MainWindow::tellAsking() {
    canvas_->setTool(link_.tool());
    if (link_.isAsking()) {
        if (!canvas_->hasFocus()) {
            beforeAsking_ = focusWidget();
        }
        canvas_->setFocus(); // So that arrows, Space and Escape are heard at once.
    } else if (canvas_->hasFocus() && beforeAsking_ != nullptr && beforeAsking_->isVisible()) {
        beforeAsking_->setFocus();
        beforeAsking_ = nullptr;
    }
    if (link_.brush() && !side_->showsTrack()) {
        const auto& chosen = link_.selection().sounding;
        side_->showTrack(chosen ? chosen->day : 0);
    }
    side_->setBrush(link_.brush());
    bottom_->say(asked());
}

QString MainWindow::asked() const {
    return link_.isAsking() ? link_.prompt() + tr(" (or with arrows and Space; Escape when done).")
                            : QString();
}

void MainWindow::openWater(const QString& path) {
    if (mayLeave()) {
        open_.startOpening(path);
    }
}

} // namespace window
