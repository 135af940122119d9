// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/fish_entry_part.h"

#include "app/days/looking_back/stay_entry.h"
#include "app/edits/change_stay.h"
#include "app/widgets/entry_form.h"
#include "app/wording/doubts.h"

#include <QLayout>

#include <algorithm>

namespace days::looking_back {

FishEntryPart::FishEntryPart(DayContext context) : DayStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0);
    form_ = new widgets::EntryForm(
        {{tr("Time"), tr("A time within the stay, such as 0920"), tr("not known"),
          tr("a time within the stay, such as 0920")},
         {tr("Species"), tr("Pike, perch, trout"), tr("not known"), {}},
         {tr("Weight"), tr("A weight such as 12 lb 8 oz, 12-8 or 5.2 kg"), tr("not known"),
          tr("a weight such as 12 lb 8 oz, 12-8 or 5.2 kg, up to 100 kg")}},
        tr("Write down"), this);
    addWide(form_);
    hide();
    connect(form_, &widgets::EntryForm::changed, this, [this] { (void)read(); });
    connect(form_, &widgets::EntryForm::writeAsked, this, &FishEntryPart::write);
    connect(form_, &widgets::EntryForm::left, this, [this] {
        leave();
        emit left();
    });
}

DayStepLine FishEntryPart::refresh() {
    if (isUnderWay() && !logbook::positionOf(water().log, stay_)) {
        leave(); // Its stay was taken back.
        emit left();
    }
    return {};
}

bool FishEntryPart::isUnderWay() const {
    return form_->isUnderWay();
}

void FishEntryPart::begin(logbook::StayId stay, bool isLanded) {
    const auto position = logbook::positionOf(water().log, stay);
    if (!position) {
        return;
    }
    stay_ = stay;
    isLanded_ = isLanded;
    for (const int line : {int(speciesLine), int(weightLine)}) {
        form_->setFieldShown(line, isLanded);
    }
    show();
    const QString title = wording::stayTitle(water().log[*position], water().clock);
    form_->begin((isLanded ? tr("A fish of %1") : tr("A lost run of %1")).arg(title));
    const QStringList species = speciesByUse(water().log);
    form_->line(speciesLine).complete(species);
    form_->line(speciesLine).offer(species.value(0));
    (void)read();
    bringIntoView(form_);
}

std::optional<logbook::Fish> FishEntryPart::read() {
    const auto position = logbook::positionOf(water().log, stay_);
    if (!position || !form_->isUnderWay()) {
        return std::nullopt;
    }
    const FishRead typed =
        readFish({form_->text(timeLine), form_->text(speciesLine), form_->text(weightLine)},
                 water().log[*position], isLanded_, water().clock, words());
    for (int i = 0; i < fishLineCount; ++i) {
        form_->line(i).setRight(typed.isRight[static_cast<std::size_t>(i)]);
    }
    return typed.fish;
}

void FishEntryPart::write() {
    const auto fish = read();
    if (!fish) {
        return;
    }
    const auto newest = [this] {
        const auto position = logbook::positionOf(water().log, stay_);
        const auto& runs = water().log[*position].runs;
        return runs.empty() ? logbook::FishId() : std::ranges::max(runs, {}, &logbook::Fish::id).id;
    };
    const logbook::FishId before = newest();
    edits::changeStay(context_.open, isLanded_ ? tr("Add fish") : tr("Add lost run"), stay_,
                      [&fish](logbook::Stay& stay) { stay.runs.push_back(*fish); });
    // A water that may only be looked at took no fish.
    if (const logbook::FishId written = newest(); written != before) {
        const logbook::StayId stay = stay_;
        leave();
        emit this->written(stay, written);
    }
}

void FishEntryPart::leave() {
    form_->end();
    hide();
}

} // namespace days::looking_back
