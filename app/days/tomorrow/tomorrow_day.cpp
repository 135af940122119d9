// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/tomorrow_day.h"

#include "app/days/chart_link.h"
#include "app/days/first_hint.h"
#include "app/days/step_panel.h"
#include "app/days/tomorrow/steps.h"

#include <QHideEvent>
#include <QShowEvent>
#include <QVBoxLayout>

namespace days::tomorrow {

namespace {
/// Long enough to gather the moves of a hand, short enough to seem at once.
constexpr int planDelay_ms = 300;
/// Where only the list is ranked anew, it follows the hand.
constexpr int rankDelay_ms = 15;
constexpr int weightsStep = 2;
constexpr int firstOpenStep = 3;
} // namespace

TomorrowDay::TomorrowDay(DayContext context, QWidget* parent)
    : QWidget(parent), context_(context), panel_(new StepPanel(this)),
      refresher_(new Refresher(this, [this] { refresh(); })), hand_(context) {
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
    add(tr("Conditions"), makeConditionsStep(context));
    add(tr("Boat and rods"), makeTackleStep(context));
    add(tr("What matters to you"), makeWeightsStep(context));
    add(tr("Marks"), makeMarksStep(context));
    add(tr("Anchors and rods"), makeAnchorsStep(context));
    add(tr("The day"), makeOrderStep(context));
    add(tr("The sheet"), makeSheetStep(context));
    panel_->setHint(new FirstHint(
        context.preferences, QStringLiteral("tomorrow"),
        tr("Turn the arrow of the wind on the chart; drag boat, anchors and baits. The numbers "
           "follow, and Esc takes a drag back."),
        panel_));
    planTimer_.setSingleShot(true);
    connect(&planTimer_, &QTimer::timeout, this, &TomorrowDay::planNow);
    using open_water::OpenWater;
    connect(&context_.open, &OpenWater::opened, this, &TomorrowDay::planSoon);
    connect(&context_.open, &OpenWater::changed, this, &TomorrowDay::planSoon);
    // The content of the chart changes with all else that the steps show, too.
    connect(&context_.chart, &ChartLink::contentChanged, refresher_, &Refresher::ask);
    refresh();
    panel_->openStep(firstOpenStep);
}

void TomorrowDay::openBeliefs() {
    panel_->openStep(weightsStep);
}

void TomorrowDay::refresh() {
    for (std::size_t i = 0; i < steps_.size(); ++i) {
        const DayStepLine line = steps_[i]->refresh();
        panel_->setState(static_cast<int>(i), line.words, line.isStale);
    }
}

void TomorrowDay::planSoon() {
    const water::Water& water = *context_.open.water();
    if (!isVisible() || !water.frame || water.days.empty()) {
        return;
    }
    if (!isRankingEnough()) {
        planTimer_.start(planDelay_ms);
    } else if (!planTimer_.isActive() || planTimer_.remainingTime() > rankDelay_ms) {
        planTimer_.start(rankDelay_ms);
    }
}

void TomorrowDay::planNow() {
    if (!context_.open.isOpen() || context_.open.isPlanCurrent()) {
        return;
    }
    if (isRankingEnough() && context_.open.isBeingMade()) {
        // Stopped with every tick of a slider, it would never come home while the hand moves.
        planTimer_.start(rankDelay_ms);
        return;
    }
    context_.open.planTomorrow();
}

bool TomorrowDay::isRankingEnough() const {
    const auto planned = context_.open.planned();
    if (!planned || !context_.open.isCurrent(water::Step::sections)) {
        return false;
    }
    const marks::Plan& before = planned->plan;
    const marks::Plan& now = context_.open.water()->plan;
    return before.day == now.day && before.tackle == now.tackle && before.launch == now.launch;
}

void TomorrowDay::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!event->spontaneous()) {
        context_.chart.setShown(chart::LayerKind::marks, true);
        planSoon();
    }
}

void TomorrowDay::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (!event->spontaneous()) {
        context_.chart.setShown(chart::LayerKind::marks, false);
    }
}

} // namespace days::tomorrow
