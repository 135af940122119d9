// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/banned_part.h"

#include "app/days/chart_link.h"
#include "app/days/tomorrow/own_water_view.h"
#include "app/days/tomorrow/steps.h"
#include "app/edits/ban_water.h"
#include "app/widgets/plain_table.h"
#include "app/wording/spoken_names.h"
#include "core/water/questions/banned_extent.h"

#include <QLabel>
#include <QLayout>
#include <QPushButton>

namespace days::tomorrow {

namespace {
constexpr int rowsShown = 5;
} // namespace

BannedPart::BannedPart(DayContext context) : DayStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0);
    addHeading(tr("Never here"));
    table_ = new widgets::PlainTable({tr("Banned water"), tr("Area")}, rowsShown, this);
    table_->setAccessibleName(tr("Banned water"));
    table_->setEditableColumn(0);
    addWide(table_);
    connect(table_, &widgets::PlainTable::rowChosen, this, &BannedPart::choose);
    connect(table_, &widgets::PlainTable::removeAsked, this, &BannedPart::lift);
    connect(table_, &widgets::PlainTable::typedOver, this, [this](int row, const QString& name) {
        if (row >= 0) {
            edits::nameBan(context_.open, static_cast<std::size_t>(row),
                           name.trimmed().toStdString());
        }
    });
    about_ = addWords();
    mark_ = makeButton(tr("Ban mark"), QStringLiteral("Ctrl+B"),
                       tr("Never propose the chosen mark again, nor any within two casts of it"),
                       [this] { banChosen(); });
    area_ = makeButton(tr("Ban area…"), QStringLiteral("Ctrl+Shift+D"),
                       tr("Go round water on the chart in which no mark is to be proposed"),
                       [this] { askArea(); });
    lift_ = makeButton(tr("Lift"), {}, tr("Lift the chosen ban; it can be undone"),
                       [this] { lift(table_->chosen()); });
    addRow({mark_, area_, lift_});
}

DayStepLine BannedPart::refresh() {
    const bool isAny = !water().banned.empty();
    table_->setVisible(isAny);
    table_->setRows(bannedRows(water(), words()));
    setWords(about_, isAny ? tr("Marks that you add yourself stay, with a caution.")
                           : tr("Nothing is banned: all of the water may be proposed."));
    showButtons();
    return {};
}

void BannedPart::showButtons() {
    mark_->setEnabled(chosenMark(context_) != nullptr);
    area_->setEnabled(water().frame.has_value());
    lift_->setEnabled(table_->chosen() >= 0);
}

void BannedPart::banChosen() {
    if (const marks::Mark* mark = chosenMark(context_)) {
        edits::banRound(context_.open, pinnedPlaceOf(water(), *mark),
                        water().plan.tackle.cast * water::castsBanned,
                        wording::calledBy(*mark, words()).toStdString());
    }
}

void BannedPart::askArea() {
    context_.chart.ask<chart::RingMade>(
        tr("Click round the water to ban, corner by corner; double-click to close the line"),
        chart::ToolKind::polygon, [this](const chart::RingMade& made) {
            if (water().frame) {
                edits::banWater(context_.open, {{}, water().frame->toEarth(std::span(made.ring))});
            }
        });
}

void BannedPart::choose(int row) {
    if (row >= 0 && row < static_cast<int>(water().banned.size()) && water().frame) {
        const water::BannedWater& banned = water().banned[static_cast<std::size_t>(row)];
        context_.chart.lookAt(water::extentOf(water(), banned).middle);
    }
    showButtons();
}

void BannedPart::lift(int row) {
    if (row >= 0) {
        edits::liftBan(context_.open, static_cast<std::size_t>(row));
    }
}

} // namespace days::tomorrow
