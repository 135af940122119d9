// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/marks/learned_catch.h"
#include "core/marks/mark_input.h"
#include "core/marks/rank_marks.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"
#include "core/water/steps/day_ground.h"

#include <optional>

namespace water {

/// Once the marks of `planned` stand: what they lie near to, the order of the day, anchors and rods
/// for the wind of each stay, ways, light and cautions. \param input that the marks were ranked
/// with. \return the errors of orderStays() and `rodsFor`.
[[nodiscard]] base::Result<void> layOutDay(const Water& water, const DayGround& ground,
                                           const marks::MarkInput& input,
                                           const std::optional<marks::LearnedCatch>& learned,
                                           const marks::RodsFor& rodsFor, PlannedDay& planned,
                                           base::Progress& progress);

} // namespace water
