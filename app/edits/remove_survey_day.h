// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/soundings/survey_day.h"

namespace edits {

/// Takes a survey day with all its soundings out of the water.
void removeSurveyDay(open_water::OpenWater& open, soundings::SurveyDayId id);

} // namespace edits
