// SPDX-License-Identifier: GPL-3.0-or-later
// How the window looks: what the chart shows, theme and size of type, and how it was left.
#include "app/chart/chart_canvas.h"
#include "app/days/looking_back/looking_back_day.h"
#include "app/days/step_panel.h"
#include "app/days/survey_day/survey_day.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/window/bottom_line.h"
#include "app/window/main_window.h"
#include "app/window/style.h"
#include "app/window/top_line.h"
#include "app/wording/tongue.h"

#include <QAction>
#include <QActionGroup>
#include <QApplication>
#include <QMenu>
#include <QScreen>
#include <QSplitter>
#include <QStackedWidget>

#include <algorithm>

namespace window {

namespace {

using chart::LayerKind;
using preferences::Preferences;
using preferences::Theme;

constexpr QSize usualSize{1280, 800};
const QString placeKey = QStringLiteral("place");
const QString acrossKey = QStringLiteral("across");
const QString downKey = QStringLiteral("down");
const QString dayKey = QStringLiteral("day");
const QString stepsKey = QStringLiteral("steps");

} // namespace

/// What the layers are called, in the order of the menu; the furniture always stands.
std::vector<std::pair<LayerKind, QString>> MainWindow::layerNames() {
    return {{LayerKind::depth, tr("Depths")},
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
            {LayerKind::change, tr("Change since an earlier survey")},
            {LayerKind::backdrop, tr("Backdrop")},
            {LayerKind::graticule, tr("Longitudes and latitudes")}};
}

void MainWindow::layLayersMenu() {
    QMenu* menu = top_->layersMenu();
    int position = 0;
    for (const auto& [kind, name] : layerNames()) {
        ++position;
        QAction* action = menu->addAction(name);
        action->setCheckable(true);
        action->setShortcut(
            kind == LayerKind::backdrop ? QKeySequence(QStringLiteral("Ctrl+Shift+B"))
            : kind == LayerKind::rates  ? QKeySequence(QStringLiteral("Ctrl+Shift+F5"))
            : kind == LayerKind::change ? QKeySequence(QStringLiteral("Ctrl+Shift+F6"))
            : kind == LayerKind::graticule
                ? QKeySequence(QStringLiteral("Ctrl+Shift+G"))
                : QKeySequence(QStringLiteral("Ctrl+F%1").arg(position)));
        addAction(action);
        connect(action, &QAction::triggered, this,
                [this, kind = kind](bool isShown) { link_.setShown(kind, isShown); });
        connect(&link_, &days::ChartLink::contentChanged, action, [this, action, kind = kind] {
            action->setChecked(link_.content().shown.contains(kind));
        });
        action->setChecked(link_.content().shown.contains(kind));
    }
    menu->addSeparator();
    layStrengths(menu->addMenu(tr("How strongly")));
}

void MainWindow::layStrengths(QMenu* menu) {
    const auto names = layerNames();
    for (const LayerKind kind : chart::fadingLayers) {
        const auto named = std::ranges::find(names, kind, &std::pair<LayerKind, QString>::first);
        QMenu* strengths = menu->addMenu(named->second);
        auto* one = new QActionGroup(this);
        for (const double strength : Preferences::strengths()) {
            QAction* action =
                strengths->addAction(wording::Words::share(strength), this,
                                     [this, kind, strength] { link_.setStrength(kind, strength); });
            action->setCheckable(true);
            action->setChecked(chart::strengthOf(link_.content(), kind) == strength);
            one->addAction(action);
        }
    }
}

QAction* MainWindow::addTo(QMenu* menu, const QString& text, const QString& key,
                           const std::function<void()>& act) {
    QAction* action = menu->addAction(text, this, act);
    action->setShortcut(QKeySequence(key));
    addAction(action);
    return action;
}

void MainWindow::layViewMenu() {
    QMenu* menu = top_->viewMenu();
    auto* themes = new QActionGroup(this);
    const auto addTheme = [&](Theme theme, const QString& text, const QString& key) {
        QAction* action = addTo(menu, text, key, [this, theme] { preferences_.setTheme(theme); });
        action->setCheckable(true);
        action->setChecked(preferences_.theme() == theme);
        themes->addAction(action);
    };
    addTheme(Theme::light, tr("Light"), QStringLiteral("Ctrl+Alt+1"));
    addTheme(Theme::dark, tr("Dark"), QStringLiteral("Ctrl+Alt+2"));
    addTheme(Theme::highContrast, tr("High contrast"), QStringLiteral("Ctrl+Alt+3"));
    layLanguages(menu->addMenu(tr("Language")));
    menu->addSeparator();
    addTo(menu, tr("Larger type"), QStringLiteral("Ctrl++"),
          [this] { preferences_.makeTypeLarger(); });
    addTo(menu, tr("Smaller type"), QStringLiteral("Ctrl+-"),
          [this] { preferences_.makeTypeSmaller(); });
    addTo(menu, tr("Normal type"), QStringLiteral("Ctrl+0"),
          [this] { preferences_.makeTypeNormal(); });
    menu->addSeparator();
    addTo(menu, tr("Whole water"), QStringLiteral("Ctrl+Shift+1"),
          [this] { canvas_->showWholeWater(); });
    addTo(menu, tr("Zoom to the section"), QStringLiteral("Ctrl+Shift+2"),
          [this] { zoomToSection(); });
    addTo(menu, tr("Zoom to the mark"), QStringLiteral("Ctrl+Shift+3"), [this] { zoomToMark(); });
    addTo(menu, tr("Measure"), QStringLiteral("Ctrl+Shift+K"), [this] { measure(); });
    menu->addSeparator();
    addTo(menu, tr("Show the hints again"), {}, [this] { preferences_.bringHintsBack(); });
    connect(&preferences_, &Preferences::lookChanged, this, &MainWindow::takeLook);
}

void MainWindow::layLanguages(QMenu* menu) {
    auto* languages = new QActionGroup(this);
    const auto add = [&](const QString& code, const QString& text) {
        QAction* action = menu->addAction(text, this, [this, code] {
            Preferences::setLanguage(code);
            bottom_->say(tr("The language changes when the program starts next."));
        });
        action->setCheckable(true);
        action->setChecked(Preferences::language() == code);
        languages->addAction(action);
    };
    add({}, tr("That of this machine"));
    menu->addSeparator();
    for (const QString& code : wording::Tongue::shipped()) {
        add(code, wording::Tongue::ownName(code));
    }
}

void MainWindow::takeLook() {
    applyStyle(*qApp, preferences_.theme(), preferences_.typeScale());
}

std::array<days::StepPanel*, 3> MainWindow::panels() {
    return {&survey_->steps(), &tomorrow_->steps(), &back_->steps()};
}

void MainWindow::comeBack() {
    const QScreen* screen = this->screen();
    resize(screen != nullptr ? usualSize.boundedTo(screen->availableGeometry().size()) : usualSize);
    // Of a screen that is no longer there Qt brings the window back to one that is.
    restoreGeometry(Preferences::stateOf(placeKey));
    across_->restoreState(Preferences::stateOf(acrossKey));
    down_->restoreState(Preferences::stateOf(downKey));
    const QByteArray steps = Preferences::stateOf(stepsKey);
    for (std::size_t day = 0; day < panels().size(); ++day) {
        if (static_cast<qsizetype>(day) < steps.size()) {
            panels().at(day)->openStep(steps.at(static_cast<qsizetype>(day)));
        }
    }
    const QByteArray day = Preferences::stateOf(dayKey);
    const bool isDay = day.size() == 1 && day.front() >= 0 && day.front() < days_->count();
    showDay(isDay ? day.front() : 0);
}

void MainWindow::keepHowItIsLeft() {
    Preferences::keepState(placeKey, saveGeometry());
    Preferences::keepState(acrossKey, across_->saveState());
    Preferences::keepState(downKey, down_->saveState());
    QByteArray steps;
    for (const days::StepPanel* panel : panels()) {
        steps.append(static_cast<char>(panel->openStep()));
    }
    Preferences::keepState(stepsKey, steps);
    Preferences::keepState(dayKey, QByteArray(1, static_cast<char>(days_->currentIndex())));
}

} // namespace window
