// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/weed_notes_part.h"

#include "app/days/survey_day/weed_view.h"
#include "app/edits/add_weed_notes.h"
#include "app/edits/remove_weed_note.h"
#include "app/wording/typed_amount.h"

#include <QComboBox>
#include <QLabel>
#include <QLayout>
#include <QPushButton>

#include <array>

namespace days::survey_day {

namespace {

constexpr int rowsShown = 6;
constexpr std::array growths{weed::Growth::none, weed::Growth::thin, weed::Growth::thick};
constexpr double tallest_m = 60.0; // As for notes from a table.

} // namespace

WeedNotesPart::WeedNotesPart(SurveyContext context, FileTaker& taker)
    : SurveyStep(context),
      notes_(new widgets::PlainTable({tr("Weed"), tr("Height"), tr("Seen"), tr("Where")}, rowsShown,
                                     this)),
      kind_(new QComboBox(this)) {
    layout()->setContentsMargins(0, 0, 0, 0);
    addHeading(tr("Notes"));
    signs_ = addWords();
    notes_->setAccessibleName(tr("Weed notes"));
    notes_->setToolTip(tr("Delete takes the chosen note out; it can be undone"));
    addWide(notes_);
    connect(notes_, &widgets::PlainTable::removeAsked, this, [this] { removeChosen(); });
    connect(notes_, &widgets::PlainTable::rowChosen, this, &WeedNotesPart::lookAt);
    kind_->addItems({tr("none"), tr("thin"), tr("thick")});
    kind_->setCurrentIndex(2);
    addField(tr("Weed met"), kind_, tr("How much weed you met"));
    height_ = addAmount(
        {tr("Height"), tr("How far the weed stood above the bottom"),
         [this](const QString& text) { return text.isEmpty() || heightTyped(text).has_value(); },
         tr("not known"), tr("a height up to 60 m, or nothing")},
        [this](const QString& text) { noted_ = heightTyped(text); });
    seen_ = addAmount(
        {tr("Seen"), tr("The day on which you met it; what was seen in earlier years counts less"),
         [](const QString& text) { return text.isEmpty() || wording::dayTyped(text).has_value(); },
         tr("not known"), tr("a day like 20.8.2026 or 2026-08-20, or nothing")},
        [this](const QString& text) { day_ = wording::dayTyped(text); });
    addRow(
        {makeButton(tr("At places"), QStringLiteral("Ctrl+P"),
                    tr("Point at the places where you met so much weed"), [this] { askPlaces(); }),
         makeButton(tr("Along a line"), QStringLiteral("Ctrl+L"),
                    tr("Draw the way along which you met so much weed"), [this] { askLine(); }),
         makeButton(tr("Over an area"), QStringLiteral("Ctrl+R"),
                    tr("Go round the water where you met so much weed"), [this] { askArea(); })});
    addRow({makeButton(tr("Bring in..."), {}, tr("Notes from a table of places, kinds and heights"),
                       [&taker] { taker.ask(tr("Weed notes to bring in")); })});
}

DayStepLine WeedNotesPart::refreshFrom(const ViewInput& input) {
    const WeedView view = weedViewOf(input);
    notes_->setRows(view.notes);
    setWords(signs_, view.notes.empty() ? QString()
                                        : tr("On the chart: full is thick, half thin, empty none; "
                                             "pale is of earlier years."));
    height_->showAmount(noted_ ? input.words.depth(units::Depth::fromLength(*noted_)) : QString());
    seen_->showAmount(day_ ? wording::Words::day(*day_) : QString());
    return {};
}

void WeedNotesPart::hideEvent(QHideEvent* event) {
    SurveyStep::hideEvent(event);
    if (!prompt_.isEmpty() && context_.chart.prompt() == prompt_) {
        context_.chart.stopAsking();
    }
}

QString WeedNotesPart::asking(const QString& prompt) {
    prompt_ = prompt;
    return prompt;
}

void WeedNotesPart::askPlaces() {
    context_.chart.ask<chart::PointMade>(
        asking(tr("Point where the weed was %1").arg(kind_->currentText())), chart::ToolKind::note,
        [this](const chart::PointMade& made) {
            add(weed::Extent::place, {made.at});
            return true;
        });
}

void WeedNotesPart::askLine() {
    context_.chart.ask<chart::StrokeMade>(
        asking(tr("With the button held, draw the line along which the weed was %1")
                   .arg(kind_->currentText())),
        chart::ToolKind::stroke, [this](const chart::StrokeMade& made) {
            add(weed::Extent::line, made.line);
            return true;
        });
}

void WeedNotesPart::askArea() {
    context_.chart.ask<chart::RingMade>(
        asking(
            tr("With the button held, go round where the weed was %1").arg(kind_->currentText())),
        chart::ToolKind::lasso,
        [this](const chart::RingMade& made) { add(weed::Extent::area, made.ring); });
}

void WeedNotesPart::add(weed::Extent extent, const std::vector<geo::WaterPoint>& corners) {
    if (!water().frame || corners.empty()) {
        return;
    }
    std::vector<geo::LonLat> places;
    places.reserve(corners.size());
    for (const geo::WaterPoint corner : corners) {
        places.push_back(water().frame->toEarth(corner));
    }
    weed::WeedNote note = weed::noteOver(extent, std::move(places));
    note.growth = growths[static_cast<std::size_t>(kind_->currentIndex())];
    note.height = note.growth == weed::Growth::none ? std::nullopt : noted_;
    note.seen = day_;
    edits::addWeedNotes(context_.open, {std::move(note)});
}

std::optional<units::Length> WeedNotesPart::heightTyped(const QString& text) const {
    const auto height = wording::lengthTyped(text, context_.preferences.units());
    return height && height->inMetres() > 0.0 && height->inMetres() <= tallest_m ? height
                                                                                 : std::nullopt;
}

void WeedNotesPart::removeChosen() {
    const int row = notes_->chosen();
    if (row >= 0 && row < static_cast<int>(water().weedNotes.size())) {
        edits::removeWeedNote(context_.open, water().weedNotes[static_cast<std::size_t>(row)].id);
    }
}

void WeedNotesPart::lookAt(int row) {
    if (water().frame && row >= 0 && row < static_cast<int>(water().weedNotes.size())) {
        context_.chart.lookAt(
            water().frame->toWater(water().weedNotes[static_cast<std::size_t>(row)].place));
    }
}

} // namespace days::survey_day
