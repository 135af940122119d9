// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/crossings_view.h"
#include "app/days/survey_day/survey_step.h"

class QLabel;

namespace widgets {
class PlainTable;
}

namespace days::survey_day {

/// Within "Check the soundings": how well passes agree where they cross, and where they do not.
class CrossingsPart : public SurveyStep {
    Q_OBJECT
public:
    explicit CrossingsPart(SurveyContext context);

protected:
    DayStepLine refreshFrom(const ViewInput& input) override;

private:
    void showChosen();

    CrossingsView view_;
    widgets::PlainTable* summary_ = nullptr;
    QLabel* caution_ = nullptr;
    QLabel* worstHead_ = nullptr;
    widgets::PlainTable* worst_ = nullptr;
    QLabel* chosen_ = nullptr;
};

} // namespace days::survey_day
