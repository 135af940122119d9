// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/mark_input.h"
#include "core/marks/rank_marks.h"
#include "core/water/document/planned_day.h"

#include <functional>
#include <vector>

namespace water {

// What a wind that turns within the day does to the stays on its marks.

/// How much better or worse than its score each mark is in the wind of an hour: by the place of the
/// mark in planned.marks. Below 0 in hours that are too rough for an open boat at anchor, but for
/// the user's own marks. Empty on a day of one wind.
[[nodiscard]] std::function<double(std::size_t, units::Moment)>
stopWeightOf(const marks::MarkInput& input, const PlannedDay& planned, const units::Clock& clock);

/// Ranks of the marks whose stay in `day` reaches into hours that are too rough for them, but for
/// the user's own; the lowest score first.
[[nodiscard]] std::vector<int> roughStays(const PlannedDay& planned, const marks::DayPlan& day,
                                          const units::Clock& clock);

/// Anchors, waves, rods and cautions of each mark for the wind of the hours of its stay, which the
/// stop then names. A stay
/// that the turn falls into gets the anchors for the longer part of it, the higher waves of both,
/// and a caution that says so. \return the error of `rodsFor`.
[[nodiscard]] base::Result<void> layForStays(PlannedDay& planned, const units::Clock& clock,
                                             const marks::RodsFor& rodsFor);

/// Whether a caution is of waves and of room for rods, and so of one lie.
[[nodiscard]] bool isOfTheLie(const marks::Caution& caution);

/// The mark in these waves.
void layIn(const std::optional<marks::WaveState>& waves, marks::Mark& mark);

} // namespace water
