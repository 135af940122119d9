// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/looking_back_day.h"

#include "app/days/chart_link.h"
#include "app/days/first_hint.h"
#include "app/days/looking_back/stays_step.h"
#include "app/days/looking_back/steps.h"
#include "app/days/step_panel.h"

#include <QHideEvent>
#include <QShortcut>
#include <QShowEvent>
#include <QVBoxLayout>

namespace days::looking_back {

namespace {
constexpr int trackStep = 1;
constexpr int staysStep = 2;
} // namespace

LookingBackDay::LookingBackDay(DayContext context, QWidget* parent)
    : QWidget(parent), context_(context), panel_(new StepPanel(this)),
      stays_(new StaysStep(context)), track_(makeTrackStep(context)),
      refresher_(new Refresher(this, [this] { refresh(); })) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(panel_);
    const auto add = [this](const QString& title, DayStep* step) {
        const int position = panel_->addStep(title, step);
        steps_.push_back(step);
        connect(step, &DayStep::lineChanged, this, [this, step, position] {
            const DayStepLine line = step->refresh();
            panel_->setState(position, line.words, line.isStale);
        });
    };
    add(tr("In short"), makeSummaryStep(context, question_, [this] {
            panel_->openStep(staysStep);
            stays_->writeUp();
        }));
    add(tr("The day's track"), track_);
    add(tr("Stays and fish"), stays_);
    add(tr("What produced"), makeProducedStep(context, question_));
    add(tr("When"), makeHoursStep(context, question_, [this] { emit beliefsAsked(); }));
    add(tr("Season", "the step: its months, and a page of them"), makeSeasonStep(context));
    panel_->setHint(new FirstHint(
        context.preferences, QStringLiteral("lookingBack"),
        tr("What is left empty stays unknown: nothing is counted that nobody said. A blank counts "
           "as much as a fish."),
        panel_));
    using open_water::OpenWater;
    connect(&context_.open, &OpenWater::opened, refresher_, &Refresher::ask);
    connect(&context_.open, &OpenWater::changed, refresher_, &Refresher::ask);
    connect(&context_.open, &OpenWater::derivedChanged, refresher_, &Refresher::ask);
    connect(&context_.preferences, &preferences::Preferences::unitsChanged, refresher_,
            &Refresher::ask);
    // What is looked back on is what is to be seen.
    connect(&question_, &LogQuestion::changed, this, [this] {
        context_.chart.setLogAsked(question_.isAll() ? std::nullopt
                                                     : std::optional(question_.question()));
    });
    connect(&context_.open, &OpenWater::opened, this, [this] { question_.ask({}); });
    layKeys();
    refresh();
    panel_->openStep(0);
}

void LookingBackDay::layKeys() {
    const auto add = [this](const char* key, auto act) {
        auto* shortcut = new QShortcut(QKeySequence(QString::fromLatin1(key)), this);
        connect(shortcut, &QShortcut::activated, this, [this, act] {
            if (panel_->openStep() != staysStep) {
                panel_->openStep(staysStep);
            }
            act();
        });
    };
    add("Ctrl+B", [this] { stays_->addStay(); });
    add("Ctrl+D", [this] { stays_->writeUp(); });
    add("Ctrl+F", [this] { stays_->addRun(true); });
    add("Ctrl+L", [this] { stays_->addRun(false); });
}

void LookingBackDay::takeTrack(const QString& path) {
    panel_->openStep(trackStep);
    track_->take(path);
}

void LookingBackDay::refresh() {
    for (std::size_t i = 0; i < steps_.size(); ++i) {
        const DayStepLine line = steps_[i]->refresh();
        panel_->setState(static_cast<int>(i), line.words, line.isStale);
    }
}

void LookingBackDay::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!event->spontaneous()) {
        context_.chart.setShown(chart::LayerKind::log, true);
        context_.chart.setShown(chart::LayerKind::rates, true);
    }
}

void LookingBackDay::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (!event->spontaneous()) {
        context_.chart.setShown(chart::LayerKind::log, false);
        context_.chart.setShown(chart::LayerKind::rates, false);
    }
}

} // namespace days::looking_back
