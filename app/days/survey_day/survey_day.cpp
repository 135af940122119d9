// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/survey_day.h"

#include "app/days/backdrop_keeper.h"
#include "app/days/first_hint.h"
#include "app/days/step_panel.h"
#include "app/days/survey_day/steps.h"

#include <QVBoxLayout>

namespace days::survey_day {

using open_water::OpenWater;

SurveyDay::SurveyDay(DayContext context, QWidget* parent)
    : QWidget(parent), context_(context), taker_(new FileTaker(context, this)),
      backdrop_(new BackdropKeeper(context, this)), panel_(new StepPanel(this)),
      refresher_(new Refresher(this, [this] { refresh(); })) {
    taker_->setParent(this);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(panel_);
    const auto add = [this](const QString& title, DayStep* step) {
        const int position = panel_->addStep(title, step);
        steps_.push_back(step);
        connect(step, &DayStep::lineChanged, this,
                [this, step, position] { showLine(position, step->refresh()); });
    };
    const SurveyContext survey{context, stale_};
    add(tr("Bring in soundings"), makeSoundingsStep(survey, *taker_));
    add(tr("Shoreline"), makeShorelineStep(survey, *taker_, *backdrop_));
    add(tr("Check the soundings"), makeCheckStep(survey));
    add(tr("Draw the water"), makeDrawingStep(survey));
    add(tr("Bands and structure"), makeBandsStep(survey));
    add(tr("Weed"), makeWeedStep(survey, *taker_));
    add(tr("Sections"), makeSectionsStep(survey));
    add(tr("Where to sound next"), makeNextStep(survey));
    panel_->setHint(new FirstHint(
        context.preferences, QStringLiteral("surveyDay"),
        tr("A right click on the chart offers what can be done at that place. F1 tells about the "
           "step that is open."),
        panel_));
    connect(&context_.open, &OpenWater::opened, refresher_, &Refresher::ask);
    connect(&context_.open, &OpenWater::changed, this, [this](const std::set<water::Part>& parts) {
        findStale();
        redoWhatChanged(parts);
        refresher_->ask();
    });
    connect(&context_.open.jobs(), &jobs::JobRunner::finished, this, [this] {
        if (!stale_.empty()) {
            refresher_->ask(); // stopped, or not all could be made
        }
    });
    connect(&context_.open, &OpenWater::derivedChanged, refresher_, &Refresher::ask);
    connect(&context_.preferences, &preferences::Preferences::unitsChanged, refresher_,
            &Refresher::ask);
    connect(taker_, &FileTaker::waterFound, this, &SurveyDay::waterFound);
    connect(taker_, &FileTaker::dayTrackFound, this, &SurveyDay::dayTrackFound);
    refresh();
    panel_->openStep(0);
}

SurveyDay::~SurveyDay() {
    // The steps go after what they are shown from, and tell of their hiding.
    for (DayStep* step : steps_) {
        disconnect(step, nullptr, this, nullptr);
    }
}

void SurveyDay::findStale() {
    stale_.clear();
    for (const water::Step step : water::allSteps) {
        if (!context_.open.isCurrent(step)) {
            stale_.insert(step);
        }
    }
}

void SurveyDay::refresh() {
    findStale();
    for (std::size_t i = 0; i < steps_.size(); ++i) {
        showLine(static_cast<int>(i), steps_[i]->refresh());
    }
}

void SurveyDay::showLine(int position, const DayStepLine& line) {
    // What is being made this moment need not be called out of date: the bottom line tells of it.
    const bool isUnderWay = context_.open.jobs().isBusy();
    // Before anything was brought in there is nothing that could be old.
    const bool hasAny = context_.open.water()->frame.has_value();
    panel_->setState(position, line.words, line.isStale && hasAny && !isUnderWay);
}

void SurveyDay::redoWhatChanged(const std::set<water::Part>& parts) {
    // A fishing log changes no map; everything else may.
    const bool mayMatter = parts.size() != 1 || !parts.contains(water::Part::log);
    const water::Water& water = *context_.open.water();
    if (!mayMatter || stale_.empty() || !water.frame) {
        return;
    }
    if (!water.days.empty()) {
        context_.open.deriveUpTo(water::Step::sections);
    } else if (!water.shoreline.empty()) {
        // Nothing to draw from yet, but the shore can be seen.
        context_.open.deriveUpTo(water::Step::reduce);
    }
}

void SurveyDay::lookAt(const chart::ViewFrame& view) {
    backdrop_->look(view);
}

void SurveyDay::takeFiles(const QStringList& paths) {
    taker_->take(paths);
}

bool SurveyDay::isTakingFiles() const {
    return taker_->isBusy();
}

} // namespace days::survey_day
