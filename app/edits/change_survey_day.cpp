// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_survey_day.h"

#include "app/edits/change_water.h"

namespace edits {

void changeSurveyDay(open_water::OpenWater& open, const QString& name, soundings::SurveyDayId id,
                     const std::function<void(soundings::SurveyDay&)>& changeDay) {
    change(open, name, {water::Part::days}, [&](water::Water& water) {
        for (soundings::SurveyDay& day : water.days) {
            if (day.id == id) {
                changeDay(day);
            }
        }
    });
}

} // namespace edits
