// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/soundings/survey_day.h"

#include <optional>

namespace edits {

/// Agrees to how late a day's positions are, seconds; nothing takes an agreed delay back.
void agreeDelay(open_water::OpenWater& open, soundings::SurveyDayId id,
                std::optional<double> delay_s);

} // namespace edits
