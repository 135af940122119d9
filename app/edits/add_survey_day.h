// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/soundings/survey_day.h"

namespace edits {

/// Adds a survey day with a fresh id, and lays the water's frame where it has none yet.
/// \return the error of water::layFrame(); the water is then as it was.
[[nodiscard]] base::Result<void> addSurveyDay(open_water::OpenWater& open,
                                              soundings::SurveyDay day);
/// The same for the days of one file, at least one, as one edit.
[[nodiscard]] base::Result<void> addSurveyDays(open_water::OpenWater& open,
                                               const std::vector<soundings::SurveyDay>& days);

} // namespace edits
