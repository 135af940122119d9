// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/outline.h"
#include "core/marks/learned_catch.h"
#include "core/marks/mark_input.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"

#include <optional>

namespace water {

/// The order of the planned day's marks by marks::orderDay(), each in hours whose wind lets an open
/// boat lie there. Marks for which no such hours are left are out of the day, and named by it.
/// \param planned its plan, marks and light. \return the errors of distances and order.
[[nodiscard]] base::Result<marks::DayPlan>
orderStays(const Water& water, const geo::Outline& outline, const marks::MarkInput& input,
           const PlannedDay& planned, const std::optional<marks::LearnedCatch>& learned,
           base::Progress& progress);

} // namespace water
