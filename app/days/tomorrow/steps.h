// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"
#include "core/marks/mark.h"

namespace days::tomorrow {

// The steps of tomorrow from top to bottom; each is owned by the panel that it is put into.
[[nodiscard]] DayStep* makeConditionsStep(DayContext context);
[[nodiscard]] DayStep* makeTackleStep(DayContext context);
[[nodiscard]] DayStep* makeWeightsStep(DayContext context);
[[nodiscard]] DayStep* makeMarksStep(DayContext context);
[[nodiscard]] DayStep* makeAnchorsStep(DayContext context);
[[nodiscard]] DayStep* makeOrderStep(DayContext context);
[[nodiscard]] DayStep* makeSheetStep(DayContext context);

/// The mark that is selected on the chart, else the best; null without marks.
[[nodiscard]] const marks::Mark* chosenMark(const DayContext& context);

/// Says that tomorrow is older than the water, and whether or why not it is worked out anew; empty
/// where it is of now, or was never worked out.
[[nodiscard]] QString oldPlanWords(const DayContext& context);

/// Where the water keeps the pin of a pinned mark (the ranking may have turned it a little); the
/// mark's own place where there is no such pin.
[[nodiscard]] geo::LonLat pinnedPlaceOf(const water::Water& water, const marks::Mark& mark);

} // namespace days::tomorrow
