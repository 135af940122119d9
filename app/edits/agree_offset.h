// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/soundings/survey_day.h"

#include <optional>

namespace edits {

/// Agrees to what the crossings would add to a day's depths; nothing takes an agreed offset back.
void agreeOffset(open_water::OpenWater& open, soundings::SurveyDayId id,
                 std::optional<units::Length> offset);

} // namespace edits
