// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/section_changes_part.h"

#include "app/days/survey_day/sections_view.h"
#include "app/edits/change_sections.h"
#include "app/wording/section_words.h"

#include <QLabel>
#include <QLayout>
#include <QPushButton>

namespace days::survey_day {

SectionChangesPart::SectionChangesPart(SurveyContext context) : SurveyStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0);
    addHeading(tr("Change sections"));
    join_ = makeHand(Hand::join, tr("Join..."), QStringLiteral("Ctrl+J"),
                     tr("Make one section of two neighbours"));
    split_ = makeHand(Hand::split, tr("Split..."), QStringLiteral("Ctrl+D"),
                      tr("Cut a section in two along a line"));
    border_ = makeHand(Hand::border, tr("Move border..."), QStringLiteral("Ctrl+R"),
                       tr("Draw the border between two neighbours anew"));
    addRow({join_, split_, border_});
    words_ = addWords();
    takeBack_ = makeButton(tr("Take last back"), {}, tr("The last of these changes is undone"),
                           [this] { edits::takeBackSectionChange(context_.open); });
    takeBackAll_ = makeButton(tr("Take all back"), {}, tr("The sections as they were laid out"),
                              [this] { edits::takeBackSectionChanges(context_.open); });
    addRow({takeBack_, takeBackAll_});
    connect(&context_.chart, &ChartLink::askingChanged, this, [this] {
        if (context_.chart.prompt() != prompt_) {
            hand_ = Hand::none;
            prompt_.clear();
        }
        join_->setChecked(hand_ == Hand::join);
        split_->setChecked(hand_ == Hand::split);
        border_->setChecked(hand_ == Hand::border);
    });
}

QPushButton* SectionChangesPart::makeHand(Hand hand, const QString& words, const QString& key,
                                          const QString& help) {
    QPushButton* button = makeButton(words, key, help, [this, hand] { take(hand); });
    button->setCheckable(true);
    return button;
}

DayStepLine SectionChangesPart::refreshFrom(const ViewInput& input) {
    const SectionChangesView view = sectionChangesViewOf(input);
    join_->setEnabled(view.canJoin);
    border_->setEnabled(view.canJoin);
    split_->setEnabled(view.canSplit);
    setWords(words_, view.words);
    takeBack_->setVisible(view.hasAny);
    takeBackAll_->setVisible(view.hasAny);
    return {};
}

void SectionChangesPart::hideEvent(QHideEvent* event) {
    SurveyStep::hideEvent(event);
    if (hand_ != Hand::none) {
        context_.chart.stopAsking();
    }
}

void SectionChangesPart::take(Hand hand) {
    if (hand_ == hand) {
        context_.chart.stopAsking(); // The same button again.
        return;
    }
    hand_ = hand;
    if (hand == Hand::split) {
        askLineOfCut();
        return;
    }
    const auto& map = context_.open.derived().sections;
    const int chosen = context_.chart.content().selection.section.value_or(-1);
    if (map && chosen >= 0 && chosen < static_cast<int>(map->sections.size())) {
        askNeighbourOf(map->sections[static_cast<std::size_t>(chosen)].middle);
    } else {
        askFirst();
    }
}

QString SectionChangesPart::asking(const QString& prompt) {
    prompt_ = prompt;
    return prompt;
}

void SectionChangesPart::askLineOfCut() {
    context_.chart.ask<chart::StrokeMade>(
        asking(tr("To split: with the button held, draw a line right across a section")),
        chart::ToolKind::stroke, [this](const chart::StrokeMade& made) {
            return !isDone(edits::splitSection(context_.open, made.line));
        });
}

void SectionChangesPart::askFirst() {
    context_.chart.ask<chart::PointMade>(
        asking(hand_ == Hand::join ? tr("To join: point at the first of two neighbours")
                                   : tr("To move a border: point at one of its two sections")),
        chart::ToolKind::note, [this](const chart::PointMade& made) {
            if (const auto first = sectionUnder(made.at)) {
                askNeighbourOf(*first);
            }
            return true;
        });
}

void SectionChangesPart::askNeighbourOf(geo::WaterPoint first) {
    const auto& map = context_.open.derived().sections;
    const auto number = map ? sections::sectionAt(*map, first) : sections::noSection;
    if (number == sections::noSection) {
        context_.chart.stopAsking();
        return;
    }
    context_.chart.selectSection(number);
    const QString name = wording::nameCalled(map->sections[static_cast<std::size_t>(number)].name);
    context_.chart.ask<chart::PointMade>(
        asking(hand_ == Hand::join
                   ? tr("To join: point at the neighbour that %1 is joined with").arg(name)
                   : tr("To move a border: point at the neighbour of %1 beyond it").arg(name)),
        chart::ToolKind::note, [this, first](const chart::PointMade& made) {
            const auto second = sectionUnder(made.at);
            if (second && hand_ == Hand::border) {
                askBorder(first, *second);
                return true;
            }
            return !second || !isDone(edits::joinSections(context_.open, first, *second));
        });
}

void SectionChangesPart::askBorder(geo::WaterPoint first, geo::WaterPoint second) {
    context_.chart.ask<chart::StrokeMade>(
        asking(tr("With the button held, draw the new border right across the two sections")),
        chart::ToolKind::stroke, [this, first, second](const chart::StrokeMade& made) {
            return !isDone(edits::moveBorder(context_.open, first, second, made.line));
        });
}

std::optional<geo::WaterPoint> SectionChangesPart::sectionUnder(geo::WaterPoint place) {
    const auto& map = context_.open.derived().sections;
    const auto number = map ? sections::sectionAt(*map, place) : sections::noSection;
    if (number == sections::noSection) {
        tell({base::ErrorKind::unusableInput, "there is no section at this place", "",
              "point at another"});
        return std::nullopt;
    }
    return map->sections[static_cast<std::size_t>(number)].middle;
}

bool SectionChangesPart::isDone(const base::Result<void>& done) {
    tellIfWrong(done);
    return done.has_value();
}

} // namespace days::survey_day
