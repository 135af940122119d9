// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/own_marks_part.h"

#include "app/days/chart_link.h"
#include "app/days/tomorrow/own_water_view.h"
#include "app/edits/pin_mark.h"
#include "app/edits/unpin_mark.h"
#include "app/widgets/plain_table.h"
#include "app/wording/typed_place.h"

#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QPushButton>

namespace days::tomorrow {

namespace {
constexpr int rowsShown = 5;
} // namespace

OwnMarksPart::OwnMarksPart(DayContext context) : DayStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0);
    addHeading(tr("Own marks"));
    table_ = new widgets::PlainTable({tr("Own mark"), tr("Deep")}, rowsShown, this);
    table_->setAccessibleName(tr("Own marks"));
    table_->setEditableColumn(0);
    addWide(table_);
    connect(table_, &widgets::PlainTable::rowChosen, this, &OwnMarksPart::choose);
    connect(table_, &widgets::PlainTable::typedOver, this, &OwnMarksPart::rename);
    connect(table_, &widgets::PlainTable::removeAsked, this, &OwnMarksPart::letGo);
    layFields();
    about_ = addWords();
    wrong_ = addWarning();
    add_ = makeButton(tr("Add"), {}, tr("Keep a mark at the place typed"), [this] { addTyped(); });
    onChart_ = makeButton(tr("Add own mark"), QStringLiteral("Ctrl+Shift+P"),
                          tr("Point on the chart at a place of your own"), [this] { askPlace(); });
    letGo_ = makeButton(tr("Remove"), {}, tr("Let go of the chosen own mark; it can be undone"),
                        [this] { letGo(table_->chosen()); });
    addRow({add_, onChart_, letGo_});
}

void OwnMarksPart::layFields() {
    const auto layEdit = [this](const QString& label, const QString& hint, const QString& help) {
        auto* edit = new QLineEdit(this);
        edit->setPlaceholderText(hint);
        addField(label, edit, help);
        connect(edit, &QLineEdit::textChanged, this, [this] { showTyped(); });
        connect(edit, &QLineEdit::returnPressed, this, [this] { addTyped(); });
        return edit;
    };
    place_ = layEdit(tr("Place"), tr("latitude, longitude"),
                     tr("Read off a receiver, or point at it on the chart instead"));
    name_ = layEdit(tr("Name"), tr("none needed"), tr("What you call it"));
}

DayStepLine OwnMarksPart::refresh() {
    table_->setVisible(!water().pinnedMarks.empty());
    table_->setRows(ownMarkRows(water(), context_.open.derived(), words()));
    showTyped();
    return {};
}

std::optional<geo::LonLat> OwnMarksPart::typedPlace() const {
    return wording::placeTyped(place_->text());
}

std::string OwnMarksPart::typedName() const {
    return name_->text().trimmed().toStdString();
}

void OwnMarksPart::showTyped() {
    const auto place = typedPlace();
    const TypedPlace known =
        place ? lookedUp(water(), context_.open.derived(), *place, words()) : TypedPlace{};
    setWords(about_, known.isOnWater ? known.words : QString());
    setWords(wrong_, known.isOnWater ? QString() : known.words);
    add_->setEnabled(known.isOnWater);
    onChart_->setEnabled(water().frame.has_value());
    letGo_->setEnabled(table_->chosen() >= 0);
}

void OwnMarksPart::addTyped() {
    const auto place = typedPlace();
    if (!place || !add_->isEnabled()) {
        return;
    }
    edits::pinMark(context_.open, *place, {typedName(), *place});
    context_.chart.lookAt(water().frame->toWater(*place));
    place_->clear();
    name_->clear();
    place_->setFocus();
}

void OwnMarksPart::askPlace() {
    context_.chart.ask<chart::PointMade>(
        tr("Point at the place to pin"), chart::ToolKind::note,
        [this](const chart::PointMade& made) {
            if (water().frame) {
                const geo::LonLat lonLat = water().frame->toEarth(made.at);
                edits::pinMark(context_.open, lonLat, {typedName(), lonLat});
                name_->clear();
            }
        });
}

void OwnMarksPart::choose(int row) {
    if (row >= 0 && row < static_cast<int>(water().pinnedMarks.size()) && water().frame) {
        context_.chart.lookAt(
            water().frame->toWater(water().pinnedMarks[static_cast<std::size_t>(row)].place));
    }
    showTyped();
}

void OwnMarksPart::rename(int row, const QString& name) {
    if (row >= 0 && row < static_cast<int>(water().pinnedMarks.size())) {
        const geo::LonLat place = water().pinnedMarks[static_cast<std::size_t>(row)].place;
        edits::pinMark(context_.open, place, {name.trimmed().toStdString(), place});
    }
}

void OwnMarksPart::letGo(int row) {
    if (row >= 0 && row < static_cast<int>(water().pinnedMarks.size())) {
        edits::unpinMark(context_.open, water().pinnedMarks[static_cast<std::size_t>(row)].place);
    }
}

} // namespace days::tomorrow
