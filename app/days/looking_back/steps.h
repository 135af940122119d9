// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"

namespace days::looking_back {

// The steps of looking back from top to bottom; each is owned by the panel that it is put into.
[[nodiscard]] DayStep* makeTrackStep(DayContext context);
[[nodiscard]] DayStep* makeStaysStep(DayContext context);
[[nodiscard]] DayStep* makeProducedStep(DayContext context);
[[nodiscard]] DayStep* makeHoursStep(DayContext context);
[[nodiscard]] DayStep* makeSeasonStep(DayContext context);

} // namespace days::looking_back
