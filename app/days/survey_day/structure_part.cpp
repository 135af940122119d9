// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/structure_part.h"

#include "app/days/survey_day/structure_view.h"
#include "app/edits/change_settings.h"

#include <QLabel>
#include <QLayout>

namespace days::survey_day {

using water::StructureChoice;

StructurePart::StructurePart(SurveyContext context) : SurveyStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0);
    addHeading(tr("What counts as structure"));
    const auto length = [this](const QString& text) {
        return wording::lengthTyped(text, words().units());
    };
    const QString byWater = tr("automatic");
    dropOff_ = addThreshold({tr("Drop-off from"),
                             tr("Slope from which a bank is a drop-off"),
                             {},
                             byWater,
                             tr("a slope from 1 to 200 %, or nothing")},
                            &StructureChoice::dropOffFrom_percent, &wording::percentTyped);
    highGround_ = addThreshold(
        {tr("High ground from"),
         tr("Rise over the surroundings from which ground is a hump, below them a hole"),
         {},
         byWater,
         tr("a height from 0.05 to 20 m, or nothing")},
        &StructureChoice::highGround, length);
    leastSize_ = addThreshold({tr("Least size"),
                               tr("Smaller pieces join what surrounds them"),
                               {},
                               tr("usual"),
                               tr("an area up to 10 ha, or nothing")},
                              &StructureChoice::leastArea, [this](const QString& text) {
                                  return wording::areaTyped(text, words().units());
                              });
    fineScale_ = addThreshold({tr("Fine scale"),
                               tr("Over which slope is taken: what a bait can be placed on"),
                               {},
                               tr("usual"),
                               tr("a length from 3 to 50 m, below the broad scale, or nothing")},
                              &StructureChoice::fineScale, length);
    broadScale_ = addThreshold({tr("Broad scale"),
                                tr("What a hump stands out from: about a long cast"),
                                {},
                                tr("usual"),
                                tr("a length from 20 to 500 m, above the fine scale, or nothing")},
                               &StructureChoice::broadScale, length);
    used_ = addWords();
}

template <class T, class Parse>
widgets::AmountField* StructurePart::addThreshold(const AmountEntry& entry,
                                                  std::optional<T> StructureChoice::*which,
                                                  Parse parse) {
    const auto to = [which, parse](const QString& text) {
        return [which, value = text.isEmpty() ? std::optional<T>() : parse(text)](
                   StructureChoice& choice) { choice.*which = value; };
    };
    AmountEntry checked = entry;
    checked.isRight = [this, parse, to](const QString& text) {
        return text.isEmpty() || (parse(text).has_value() && mayBe(to(text)));
    };
    return addAmount(checked, [this, to](const QString& text) { set(to(text)); });
}

bool StructurePart::mayBe(const Change& change) const {
    water::Settings settings = water().settings;
    change(settings.structure);
    return water::problemsIn(settings).empty();
}

void StructurePart::set(const Change& change) {
    tellIfWrong(edits::changeSettings(context_.open, tr("Set what counts as structure"),
                                      [&](water::Settings& s) { change(s.structure); }));
}

DayStepLine StructurePart::refreshFrom(const ViewInput& input) {
    const StructureView view = structureViewOf(input);
    dropOff_->showAmount(view.dropOff);
    highGround_->showAmount(view.highGround);
    leastSize_->showAmount(view.leastSize);
    fineScale_->showAmount(view.fineScale);
    broadScale_->showAmount(view.broadScale);
    setWords(used_, view.used);
    return {};
}

} // namespace days::survey_day
