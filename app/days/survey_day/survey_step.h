// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/chart_link.h"
#include "app/days/day_step.h"
#include "app/days/survey_day/view_input.h"

#include <set>

namespace days::survey_day {

/// What a step of the survey day works with. `stale` is worked out once for all steps, because it
/// takes a look at every sounding.
struct SurveyContext {
    DayContext day;
    const std::set<water::Step>& stale;
};

/// One step of the survey day.
class SurveyStep : public DayStep {
    Q_OBJECT
public:
    explicit SurveyStep(SurveyContext context) : DayStep(context.day), stale_(context.stale) {}

    DayStepLine refresh() final { return refreshFrom(input()); }

protected:
    /// What the step is shown from at the moment.
    [[nodiscard]] ViewInput input() const {
        return {water(), context_.open.derived(), words(), stale_};
    }
    /// Shows the water as it is now. \return the step's line when closed.
    virtual DayStepLine refreshFrom(const ViewInput& input) = 0;
    /// Tells the user what went wrong, if anything did.
    void tellIfWrong(const base::Result<void>& done) {
        if (!done) {
            tell(done.error());
        }
    }

private:
    const std::set<water::Step>& stale_;
};

} // namespace days::survey_day
