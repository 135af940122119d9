// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/filter_part.h"

#include "app/days/looking_back/log_digest.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/season_box.h"
#include "app/days/looking_back/stay_entry.h"
#include "app/wording/typed_amount.h"
#include "core/units/written_time.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>

#include <algorithm>

namespace days::looking_back {

using water::ReviewQuestion;

namespace {

/// Shows these words to choose from; the one that was chosen stays.
void fill(QComboBox& box, const QString& all, const QStringList& words) {
    QStringList shown{all};
    shown += words;
    QStringList before;
    for (int i = 0; i < box.count(); ++i) {
        before += box.itemText(i);
    }
    if (shown == before) {
        return;
    }
    const QSignalBlocker quiet(box);
    const QString chosen = box.currentData().toString();
    box.clear();
    box.addItem(all, QString());
    for (const QString& word : words) {
        box.addItem(word, word);
    }
    box.setCurrentIndex(std::max(0, box.findData(chosen)));
}

} // namespace

FilterPart::FilterPart(DayContext context, LogQuestion& question)
    : DayStep(context), question_(question) {
    layout()->setContentsMargins(0, 0, 0, 0);
    layFish();
    layStays();
    layDays();
    wrong_ = addWarning();
    connect(&question_, &LogQuestion::changed, this, &FilterPart::showQuestion);
}

QHBoxLayout* FilterPart::addPair(const QString& label, const QString& help) {
    auto* holder = new QWidget(this);
    auto* row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    addField(label, holder, help);
    return row;
}

QComboBox* FilterPart::makeBox(const QString& name, QHBoxLayout& row,
                               std::string ReviewQuestion::*member) {
    auto* box = new QComboBox(this);
    box->setAccessibleName(name);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(6);
    row.addWidget(box, 1);
    connect(box, &QComboBox::currentIndexChanged, this, [this, box, member] {
        ReviewQuestion asked = question_.question();
        asked.*member = box->currentData().toString().toStdString();
        question_.ask(asked);
    });
    return box;
}

widgets::AmountField* FilterPart::makeAmount(const QString& name, const QString& help,
                                             const QString& whenEmpty, QHBoxLayout& row,
                                             const std::function<bool(const QString&)>& isRight,
                                             const std::function<void(const QString&)>& enter) {
    auto* field = new widgets::AmountField(isRight, whenEmpty, this);
    field->setAccessibleName(name);
    field->setToolTip(help);
    row.addWidget(field, 1);
    connect(field, &widgets::AmountField::entered, this, enter);
    connect(field, &widgets::AmountField::wrongChanged, this,
            [this, help](bool isWrong) { setWords(wrong_, isWrong ? help : QString()); });
    return field;
}

void FilterPart::layFish() {
    QHBoxLayout* row = addPair(tr("Fish"), tr("Fish that count: of this species, so heavy"));
    species_ = makeBox(tr("Species"), *row, &ReviewQuestion::species);
    leastWeight_ = makeAmount(
        tr("At least"), tr("The lightest fish that counts: a weight such as 12 lb 8 oz or 5.2 kg"),
        tr("any weight"), *row,
        [this](const QString& text) {
            return wording::weightTyped(text, words().units()).has_value();
        },
        [this](const QString& text) {
            ReviewQuestion asked = question_.question();
            asked.leastWeight = wording::weightTyped(text, words().units());
            question_.ask(asked);
        });
}

void FilterPart::layStays() {
    QHBoxLayout* row = addPair(tr("Stays"), tr("Stays that count: with this bait, in this season. "
                                               "A stay with several baits counts whole"));
    bait_ = makeBox(tr("Bait"), *row, &ReviewQuestion::bait);
    auto* season = new SeasonBox(question_, this);
    season->setAccessibleName(tr("Season"));
    row->addWidget(season, 1);
}

void FilterPart::layDays() {
    QHBoxLayout* row =
        addPair(tr("Days"), tr("The first and the last day that count; one trip where they are "
                               "the same"));
    from_ = addDay(tr("From day"), tr("first day"), *row, &ReviewQuestion::from);
    to_ = addDay(tr("To day"), tr("last day"), *row, &ReviewQuestion::to);
}

widgets::AmountField* FilterPart::addDay(const QString& name, const QString& whenEmpty,
                                         QHBoxLayout& row,
                                         std::optional<units::Day> ReviewQuestion::*member) {
    return makeAmount(
        name, tr("A day such as 2026-10-03 or 3/10/26"), whenEmpty, row,
        [](const QString& text) { return units::dayWritten(text.toStdString()).has_value(); },
        [this, member](const QString& text) {
            ReviewQuestion asked = question_.question();
            asked.*member = units::dayWritten(text.toStdString());
            question_.ask(asked);
        });
}

DayStepLine FilterPart::refresh() {
    fill(*species_, tr("all fish"), speciesIn(sumOf(water().log, water().clock)));
    fill(*bait_, tr("all baits"), baitsByUse(water().log));
    showQuestion();
    return {};
}

void FilterPart::showQuestion() {
    const ReviewQuestion& asked = question_.question();
    const auto choose = [](QComboBox& box, const std::string& word) {
        const QSignalBlocker quiet(box);
        const QString wanted = QString::fromStdString(word);
        if (box.findData(wanted) < 0) {
            box.addItem(wanted, wanted); // no longer in the log, but asked for
        }
        box.setCurrentIndex(box.findData(wanted));
    };
    choose(*species_, asked.species);
    choose(*bait_, asked.bait);
    const auto dayText = [](const std::optional<units::Day>& day) {
        return day ? QString::fromStdString(units::isoText(*day)) : QString();
    };
    leastWeight_->showAmount(asked.leastWeight ? words().weight(*asked.leastWeight) : QString());
    from_->showAmount(dayText(asked.from));
    to_->showAmount(dayText(asked.to));
}

} // namespace days::looking_back
