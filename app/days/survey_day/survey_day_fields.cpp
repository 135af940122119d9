// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/survey_day_fields.h"

namespace days::survey_day {

SurveyDayFields surveyDayFieldsOf(const soundings::SurveyDay& day, const wording::Words& words) {
    SurveyDayFields fields;
    fields.name = QString::fromStdString(day.name);
    fields.source = QString::fromStdString(day.source);
    if (const auto level = day.gauge.constantLevel()) {
        fields.level = words.levelChange(*level - units::WaterLevel());
    }
    if (day.waterTemperature) {
        fields.waterTemperature = words.temperature(*day.waterTemperature);
    }
    fields.draft = words.fineDepth(day.sounder.draft);
    fields.soundSpeed = words.soundSpeed(day.sounder.assumedSoundSpeed);
    return fields;
}

} // namespace days::survey_day
