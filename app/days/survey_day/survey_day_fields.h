// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/soundings/survey_day.h"

#include <QString>

namespace days::survey_day {

/// What was true on one survey day, as its fields show it.
struct SurveyDayFields {
    QString name;
    QString source;
    QString level; ///< On the gauge; empty where nobody read it.
    QString waterTemperature;
    QString draft;
    QString soundSpeed;
};

[[nodiscard]] SurveyDayFields surveyDayFieldsOf(const soundings::SurveyDay& day,
                                                const wording::Words& words);

} // namespace days::survey_day
