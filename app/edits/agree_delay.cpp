// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/agree_delay.h"

#include "app/edits/change_survey_day.h"

namespace edits {

void agreeDelay(open_water::OpenWater& open, soundings::SurveyDayId id,
                std::optional<double> delay_s) {
    changeSurveyDay(open, delay_s ? QObject::tr("Take out delay") : QObject::tr("Take back delay"),
                    id, [&](soundings::SurveyDay& day) { day.agreedDelay_s = delay_s; });
}

} // namespace edits
