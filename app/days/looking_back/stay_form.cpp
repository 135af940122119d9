// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/stay_form.h"

#include "app/days/looking_back/stay_fields.h"
#include "app/edits/change_stay.h"
#include "app/open_water/now.h"
#include "app/wording/doubts.h"
#include "app/wording/mid_sentence.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace days::looking_back {

namespace {

using logbook::Fish;
using logbook::Stay;

constexpr auto longestStay = std::chrono::hours(24);

/// A stay is sound where it ends after it starts, within a day, and its runs lie within it.
bool isSound(const Stay& stay) {
    return stay.start < stay.end && stay.end - stay.start <= longestStay &&
           std::ranges::all_of(stay.runs, [&](const Fish& run) {
               return !run.time || (stay.start <= *run.time && *run.time <= stay.end);
           });
}

/// All fields of a stay, or of a run of it.
template <class Thing>
class Fields : public DayStep {
public:
    using Find = std::function<Thing*(Stay&)>;

    Fields(DayContext context, const logbook::StayId& shown, Find find,
           std::vector<FieldOf<Thing>> fields, std::function<void(const Stay&)> typed)
        : DayStep(context), stay_(shown), find_(std::move(find)), typed_(std::move(typed)),
          fields_(std::move(fields)) {
        for (const FieldOf<Thing>& field : fields_) {
            entries_.push_back(addAmount(
                {field.label, field.help,
                 [this, field](const QString& text) {
                     auto stay = copyOfStay();
                     // One that was brought in unsound can still be put right, field by field.
                     const bool wasSound = stay && isSound(*stay);
                     return stay && write(field, *stay, text) && (isSound(*stay) || !wasSound);
                 },
                 field.whenEmpty, field.hint},
                [this, field](const QString& text) {
                    edits::changeStay(context_.open,
                                      tr("Change %1").arg(wording::midSentence(field.label)), stay_,
                                      [&](Stay& stay) { write(field, stay, text); });
                }));
            // What can hardly be is said while it is typed, and not when it is in the log.
            connect(entries_.back(), &QLineEdit::textEdited, this,
                    [this, field](const QString& text) {
                        auto stay = copyOfStay();
                        const QString whole = text.trimmed();
                        const bool mayBe = !whole.isEmpty() || !field.whenEmpty.isNull();
                        if (stay && mayBe && write(field, *stay, whole)) {
                            typed_(*stay);
                        }
                    });
        }
    }

    DayStepLine refresh() override {
        auto stay = copyOfStay();
        const Thing* thing = stay ? find_(*stay) : nullptr;
        setVisible(thing != nullptr);
        for (std::size_t i = 0; thing != nullptr && i < fields_.size(); ++i) {
            entries_[i]->showAmount(fields_[i].shown(*thing, words(), water().clock));
        }
        return {};
    }

private:
    bool write(const FieldOf<Thing>& field, Stay& stay, const QString& text) const {
        Thing* thing = find_(stay);
        return thing != nullptr && field.write(*thing, text, words(), water().clock);
    }

    [[nodiscard]] std::optional<Stay> copyOfStay() const {
        const auto position = logbook::positionOf(water().log, stay_);
        return position ? std::optional(water().log[*position]) : std::nullopt;
    }

    const logbook::StayId& stay_;
    Find find_;
    std::function<void(const Stay&)> typed_; ///< Told of the stay as it would be.
    std::vector<FieldOf<Thing>> fields_;
    std::vector<widgets::AmountField*> entries_;
};

} // namespace

StayForm::StayForm(DayContext context)
    : context_(context), doubts_(new QLabel),
      stayFields_(new Fields<Stay>(
          context, stay_, [this](Stay& stay) { return run_.isGiven() ? nullptr : &stay; },
          stayFields(), [this](const Stay& stay) { sayDoubts(stay); })),
      runFields_(new Fields<Fish>(
          context, stay_,
          [this](Stay& stay) -> Fish* {
              const auto run = std::ranges::find(stay.runs, run_, &Fish::id);
              return !run_.isGiven() || run == stay.runs.end() ? nullptr : &*run;
          },
          runFields([this] {
              const water::Water& water = *context_.open.water();
              const auto position = logbook::positionOf(water.log, stay_);
              return position ? water.log[*position] : Stay();
          }),
          [this](const Stay& stay) { sayDoubts(stay); })) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    doubts_->setWordWrap(true);
    doubts_->setProperty("voice", "wrong");
    doubts_->setAccessibleName(tr("What can hardly be so"));
    layout->addWidget(doubts_);
    layout->addWidget(stayFields_);
    layout->addWidget(runFields_);
}

void StayForm::show(logbook::StayId stay, logbook::FishId run) {
    stay_ = stay;
    run_ = run;
    stayFields_->refresh();
    runFields_->refresh();
    showDoubts();
}

void StayForm::focusFirst() {
    DayStep* shown = run_.isGiven() ? runFields_ : stayFields_;
    if (auto* first = shown->findChild<widgets::AmountField*>()) {
        first->setFocus();
        first->selectAll();
    }
}

void StayForm::showDoubts() {
    const water::Water& water = *context_.open.water();
    if (const auto position = logbook::positionOf(water.log, stay_)) {
        sayDoubts(water.log[*position]);
    } else {
        doubts_->hide();
    }
}

void StayForm::sayDoubts(const Stay& stay) {
    const water::Water& water = *context_.open.water();
    const wording::Words words(context_.preferences.units());
    QStringList said;
    for (const water::StayDoubt& doubt :
         water::doubtsAbout(stay, water, context_.open.derived(), open_water::now())) {
        said += wording::said(doubt, water.clock, words);
    }
    doubts_->setText(said.join('\n'));
    doubts_->setVisible(!said.isEmpty());
}

} // namespace days::looking_back
