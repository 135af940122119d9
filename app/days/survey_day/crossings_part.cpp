// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/crossings_part.h"

#include "app/widgets/plain_table.h"

#include <QLabel>
#include <QLayout>

namespace days::survey_day {

namespace {

constexpr int summaryRows = 6;
constexpr int worstRows = 10;

} // namespace

CrossingsPart::CrossingsPart(SurveyContext context) : SurveyStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0);
    addHeading(tr("Where passes cross"));
    caution_ = addWords();
    summary_ = new widgets::PlainTable({QString(), QString()}, summaryRows, this);
    summary_->setSelectionMode(QAbstractItemView::NoSelection);
    summary_->setFocusPolicy(Qt::NoFocus);
    addWide(summary_);
    worstHead_ = addHeading(tr("Worst crossings"));
    worst_ = new widgets::PlainTable({tr("Where"), tr("Days"), tr("Differ by")}, worstRows, this);
    worst_->setAccessibleName(tr("Worst crossings"));
    addWide(worst_);
    chosen_ = addWords();
    connect(worst_, &widgets::PlainTable::rowChosen, this, [this](int row) {
        if (row >= 0 && row < static_cast<int>(view_.crossings.size())) {
            context_.chart.selectCrossing(view_.crossings[static_cast<std::size_t>(row)]);
            context_.chart.showChosen();
        }
    });
    connect(&context_.chart, &ChartLink::selectionChanged, this, [this] { showChosen(); });
}

DayStepLine CrossingsPart::refreshFrom(const ViewInput& input) {
    view_ = crossingsViewOf(input);
    summary_->setRows(view_.summary);
    worst_->setRows(view_.worst);
    const bool isAny = !view_.worst.empty();
    for (QWidget* widget : std::initializer_list<QWidget*>{summary_, worstHead_, worst_}) {
        widget->setVisible(isAny);
    }
    setWords(caution_, isAny ? tr("A yardstick, no hydrographic survey.")
                             : tr("No pass crosses another yet: sail a few lines across the "
                                  "others to see how well they agree."));
    showChosen();
    return {};
}

void CrossingsPart::showChosen() {
    const auto crossing = context_.chart.selection().crossing;
    worst_->chooseQuietly(crossing ? view_.rowOf(*crossing).value_or(-1) : -1);
    setWords(chosen_, crossing ? crossingWords(input(), *crossing) : QString());
}

} // namespace days::survey_day
