// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/survey_step.h"
#include "app/widgets/plain_table.h"

class QLabel;

namespace days::survey_day {

/// The zones of one family in a list: a row chosen is shown on the chart, and while the list is to
/// be seen a click on the chart chooses the row.
class ZonesPart : public SurveyStep {
    Q_OBJECT
public:
    /// \param rowsShown at once.
    ZonesPart(SurveyContext context, chart::ZonesPicked family, int rowsShown);

protected:
    DayStepLine refreshFrom(const ViewInput& input) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    [[nodiscard]] const structure::ZoneMap* map() const;
    /// How many zones are counted before those of this family.
    [[nodiscard]] int before() const;
    void choose(int row);
    void showChosen();

    chart::ZonesPicked family_;
    widgets::PlainTable* table_;
    QLabel* card_;
};

} // namespace days::survey_day
