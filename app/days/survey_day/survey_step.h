// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_context.h"
#include "app/days/step_body.h"
#include "app/days/survey_day/view_input.h"

namespace days::survey_day {

/// The line of a step when it is closed.
struct StepLine {
    QString words;
    bool isStale = false;
};

/// One step of the survey day.
class SurveyStep : public StepBody {
    Q_OBJECT
public:
    explicit SurveyStep(DayContext context) : context_(context) {}

    /// Shows the water as it is now. \return its line.
    virtual StepLine refresh(const ViewInput& input) = 0;
    /// The step has been opened: what it is about comes onto the chart.
    virtual void comeToFront() {}

protected:
    [[nodiscard]] wording::Words words() const {
        return wording::Words(context_.preferences.units());
    }
    /// Tells the user what went wrong, if anything did.
    void tell(const base::Result<void>& done) {
        if (!done) {
            emit context_.open.failed(done.error());
        }
    }

    DayContext context_;
};

} // namespace days::survey_day
