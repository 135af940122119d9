// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/lead_line_part.h"

#include "app/edits/add_lead_line.h"
#include "app/edits/change_lead_line.h"
#include "app/edits/remove_lead_line.h"
#include "app/widgets/plain_table.h"
#include "app/wording/typed_amount.h"
#include "app/wording/typed_place.h"

#include <QComboBox>
#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QPushButton>

namespace days::survey_day {

namespace {

constexpr int rowsShown = 5;
constexpr double deepest_m = 350.0; // As for soundings from a log.

} // namespace

LeadLinePart::LeadLinePart(SurveyContext context) : SurveyStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0);
    addHeading(tr("By lead line"));
    table_ = new widgets::PlainTable({tr("Depth"), tr("Bottom"), tr("Place")}, rowsShown, this);
    table_->setAccessibleName(tr("Soundings by lead line"));
    addWide(table_);
    connect(table_, &widgets::PlainTable::rowChosen, this, &LeadLinePart::choose);
    connect(table_, &widgets::PlainTable::removeAsked, this, [this] { removeChosen(); });
    layFields();
    about_ = addWords();
    onChart_ = makeButton(tr("Sound on chart"), QStringLiteral("Ctrl+L"),
                          tr("Point at the places where the lead found this depth and bottom"),
                          [this] { askPlaces(); });
    add_ =
        makeButton(tr("Add"), {}, tr("Add this depth at the place typed"), [this] { addTyped(); });
    change_ = makeButton(tr("Change"), {}, tr("Give the chosen sounding what the fields say"),
                         [this] { changeChosen(); });
    remove_ = makeButton(tr("Remove"), {}, tr("Take the chosen sounding out; it can be undone"),
                         [this] { removeChosen(); });
    addRow({onChart_, add_, change_, remove_});
}

void LeadLinePart::layFields() {
    const auto layEdit = [this](const QString& label, const QString& hint, const QString& help) {
        auto* edit = new QLineEdit(this);
        edit->setPlaceholderText(hint);
        edit->setAccessibleName(label);
        addField(label, edit, help);
        connect(edit, &QLineEdit::textChanged, this, [this] { showButtons(); });
        return edit;
    };
    depth_ = layEdit(tr("Depth"), tr("such as 3.6 m or 12ft"), tr("How far the lead ran out"));
    level_ = layEdit(tr("Level"), tr("not read"),
                     tr("Water level on the gauge when the lead ran out; with it the depth is "
                        "brought to chart level"));
    bottom_ = new QComboBox(this);
    bottom_->addItems(bottomNames());
    bottom_->setAccessibleName(tr("Bottom"));
    addField(tr("Bottom"), bottom_, tr("What the lead brought up or felt"));
    place_ = layEdit(tr("Place"), tr("latitude, longitude"),
                     tr("Read off a receiver, or point at it on the chart instead"));
}

DayStepLine LeadLinePart::refreshFrom(const ViewInput& input) {
    const LeadLineView view = leadLineViewOf(input);
    table_->setVisible(!view.rows.empty());
    table_->setRows(view.rows);
    setWords(about_, view.about);
    showButtons();
    return {};
}

std::optional<units::Depth> LeadLinePart::depth() const {
    const auto units = context_.preferences.units();
    const auto shown = wording::depthTyped(depth_->text(), units);
    const auto level = wording::lengthTyped(level_->text(), units);
    if (!shown || (!level && !level_->text().trimmed().isEmpty())) {
        return std::nullopt;
    }
    const units::Depth below = belowChartLevel(
        *shown,
        level ? std::optional(units::WaterLevel::metresOnGauge(level->inMetres())) : std::nullopt,
        water().chartLevel);
    return below.inMetres() >= 0.0 && below.inMetres() <= deepest_m ? std::optional(below)
                                                                    : std::nullopt;
}

const soundings::LeadLineSounding* LeadLinePart::chosen() const {
    const int row = table_->chosen();
    return row >= 0 && row < static_cast<int>(water().leadLine.size())
               ? &water().leadLine[static_cast<std::size_t>(row)]
               : nullptr;
}

void LeadLinePart::choose(int) {
    if (const soundings::LeadLineSounding* one = chosen()) {
        depth_->setText(words().depth(one->depth));
        level_->clear(); // It counts from chart level already.
        bottom_->setCurrentIndex(rowOf(one->bottom));
        place_->setText(wording::Words::place(one->place));
        if (water().frame) {
            context_.chart.lookAt(water().frame->toWater(one->place));
        }
    }
    showButtons();
}

void LeadLinePart::askPlaces() {
    context_.chart.ask<chart::PointMade>(
        tr("Point where the lead found %1").arg(depth_->text().trimmed()), chart::ToolKind::note,
        [this](const chart::PointMade& made) {
            const auto below = depth();
            if (!below || !water().frame) {
                return false;
            }
            edits::addLeadLine(
                context_.open,
                {{{}, water().frame->toEarth(made.at), *below, bottomAt(bottom_->currentIndex())}});
            return true;
        });
}

void LeadLinePart::addTyped() {
    const auto below = depth();
    const auto place = wording::placeTyped(place_->text());
    if (below && place) {
        edits::addLeadLine(context_.open,
                           {{{}, *place, *below, bottomAt(bottom_->currentIndex())}});
        depth_->clear();
        depth_->setFocus();
    }
}

void LeadLinePart::changeChosen() {
    const soundings::LeadLineSounding* one = chosen();
    const auto below = depth();
    const auto place = wording::placeTyped(place_->text());
    if (one == nullptr || !below || !place) {
        return;
    }
    soundings::LeadLineSounding changed = *one;
    // Words are rounded: what was not typed over stays as it is.
    if (depth_->text() != words().depth(one->depth) || !level_->text().isEmpty()) {
        changed.depth = *below;
    }
    if (place_->text() != wording::Words::place(one->place)) {
        changed.place = *place;
    }
    changed.bottom = bottomAt(bottom_->currentIndex());
    edits::changeLeadLine(context_.open, changed);
}

void LeadLinePart::removeChosen() {
    if (const soundings::LeadLineSounding* one = chosen()) {
        edits::removeLeadLine(context_.open, one->id);
    }
}

void LeadLinePart::showButtons() {
    const bool isDepth = depth().has_value();
    const bool isPlace = wording::placeTyped(place_->text()).has_value();
    onChart_->setEnabled(isDepth && water().frame.has_value());
    add_->setEnabled(isDepth && isPlace);
    change_->setEnabled(isDepth && isPlace && chosen() != nullptr);
    remove_->setEnabled(chosen() != nullptr);
}

} // namespace days::survey_day
