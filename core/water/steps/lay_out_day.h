// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/marks/learned_catch.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"
#include "core/water/steps/day_ground.h"

#include <optional>

namespace water {

/// Once the marks of `planned` stand: what they lie near to, the order of the day, ways, light and
/// cautions. \return the errors of dayDistances() and marks::orderDay().
[[nodiscard]] base::Result<void> layOutDay(const Water& water, const DayGround& ground,
                                           const std::optional<marks::LearnedCatch>& learned,
                                           PlannedDay& planned, base::Progress& progress);

} // namespace water
