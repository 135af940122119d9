// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/zones_part.h"

#include "app/days/survey_day/zone_rows.h"

#include <QLabel>
#include <QLayout>

namespace days::survey_day {

ZonesPart::ZonesPart(SurveyContext context, chart::ZonesPicked family, int rowsShown)
    : SurveyStep(context), family_(family),
      table_(new widgets::PlainTable(zoneColumns(), rowsShown, this)) {
    layout()->setContentsMargins(0, 0, 0, 0);
    table_->setAccessibleName(tr("Zones"));
    table_->setToolTip(tr("Choose a zone here or on the chart; Escape lets go of it"));
    addWide(table_);
    card_ = addWords();
    connect(table_, &widgets::PlainTable::rowChosen, this, &ZonesPart::choose);
    connect(&context_.chart, &ChartLink::contentChanged, this, [this] { showChosen(); });
}

const structure::ZoneMap* ZonesPart::map() const {
    const water::Derived& derived = context_.open.derived();
    if (family_ == chart::ZonesPicked::weed) {
        return derived.weed ? &derived.weed->zones : nullptr;
    }
    return derived.structure.get();
}

int ZonesPart::before() const {
    const auto& structure = context_.open.derived().structure;
    return family_ == chart::ZonesPicked::weed && structure
               ? static_cast<int>(structure->zones.size())
               : 0;
}

DayStepLine ZonesPart::refreshFrom(const ViewInput& input) {
    const structure::ZoneMap* zones = map();
    table_->setRows(zones != nullptr ? zoneRows(*zones, input.words) : std::vector<QStringList>());
    showChosen();
    return {};
}

void ZonesPart::showEvent(QShowEvent* event) {
    SurveyStep::showEvent(event);
    context_.chart.pickZones(family_);
}

void ZonesPart::hideEvent(QHideEvent* event) {
    SurveyStep::hideEvent(event);
    context_.chart.stopPickingZones(family_);
}

void ZonesPart::choose(int row) {
    const structure::ZoneMap* zones = map();
    if (zones == nullptr || row < 0 || row >= static_cast<int>(zones->zones.size())) {
        context_.chart.selectZone(std::nullopt);
        return;
    }
    context_.chart.selectZone(before() + row);
    context_.chart.lookAt(zones->zones[static_cast<std::size_t>(row)].middle);
}

void ZonesPart::showChosen() {
    // A click on the chart means this family only while it is to be seen.
    const bool isMine = context_.chart.content().zonesPicked == family_;
    const int chosen =
        isMine ? context_.chart.content().selection.zone.value_or(-1) - before() : -1;
    // A row that was clicked must not move away from under the pointer.
    const bool isFromChart = chosen != table_->chosen() && !table_->hasFocus();
    table_->chooseQuietly(chosen);
    const structure::ZoneMap* zones = map();
    setWords(card_, zones != nullptr ? zoneCard(*zones, chosen, words()) : QString());
    card_->setToolTip(zones != nullptr ? zoneHelp(*zones, chosen) : QString());
    if (chosen >= 0 && isFromChart) {
        bringIntoView(card_);
    }
}

} // namespace days::survey_day
