// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/remove_survey_day.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/survey_days.h"

namespace edits {

void removeSurveyDay(open_water::OpenWater& open, soundings::SurveyDayId id) {
    act(open, wording::Tongue::tr("Remove survey day"),
        [&](const water::Water& water) { return acts::removeSurveyDay(water, id); });
}

} // namespace edits
