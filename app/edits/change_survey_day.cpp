// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_survey_day.h"

#include "app/edits/change_water.h"
#include "core/acts/survey_days.h"

namespace edits {

void changeSurveyDay(open_water::OpenWater& open, const QString& name, soundings::SurveyDayId id,
                     const std::function<void(soundings::SurveyDay&)>& changeDay) {
    act(open, name,
        [&](const water::Water& water) { return acts::changeSurveyDay(water, id, changeDay); });
}

} // namespace edits
