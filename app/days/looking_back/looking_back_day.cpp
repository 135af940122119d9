// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/looking_back_day.h"

#include "app/days/chart_link.h"
#include "app/days/looking_back/steps.h"
#include "app/days/step_panel.h"

#include <QHideEvent>
#include <QShowEvent>
#include <QVBoxLayout>

namespace days::looking_back {

LookingBackDay::LookingBackDay(DayContext context, QWidget* parent)
    : QWidget(parent), context_(context), panel_(new StepPanel(this)),
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
    add(tr("The day's track"), makeTrackStep(context));
    add(tr("Stays and fish"), makeStaysStep(context));
    add(tr("What produced"), makeProducedStep(context));
    add(tr("When"), makeHoursStep(context));
    add(tr("Season"), makeSeasonStep(context));
    using open_water::OpenWater;
    connect(&context_.open, &OpenWater::opened, refresher_, &Refresher::ask);
    connect(&context_.open, &OpenWater::changed, refresher_, &Refresher::ask);
    connect(&context_.open, &OpenWater::derivedChanged, refresher_, &Refresher::ask);
    connect(&context_.preferences, &preferences::Preferences::unitsChanged, refresher_,
            &Refresher::ask);
    refresh();
    panel_->openStep(1);
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
    }
}

void LookingBackDay::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (!event->spontaneous()) {
        context_.chart.setShown(chart::LayerKind::log, false);
    }
}

} // namespace days::looking_back
