// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/agree_offset.h"

#include "app/edits/change_survey_day.h"
#include "app/edits/change_water.h"

namespace edits {

void agreeOffset(open_water::OpenWater& open, soundings::SurveyDayId id,
                 std::optional<units::Length> offset) {
    changeSurveyDay(open, offset ? QObject::tr("Tie survey day") : QObject::tr("Untie survey day"),
                    id, [&](soundings::SurveyDay& day) { day.agreedOffset = offset; });
}

} // namespace edits
