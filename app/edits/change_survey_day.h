// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/soundings/survey_day.h"

#include <functional>

namespace edits {

/// Changes what was true on a survey day: level, water temperature, sounder, name.
void changeSurveyDay(open_water::OpenWater& open, const QString& name, soundings::SurveyDayId id,
                     const std::function<void(soundings::SurveyDay&)>& changeDay);

} // namespace edits
