// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/drawn_water.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"
#include "core/water/steps/learn_log.h"

namespace water {

/// Says what is in doubt of the depths that the list stands on.
void tellOfTheDrawing(const surface::DrawReport& report, PlannedDay& planned);

/// Says what the list stands on: the water's mean, beliefs beside the log, what each condition
/// leaves out, what of the log does not count and why the list is short.
void tellOfTheLog(const Water& water, const LearnedLog& log, const marks::MarkInput& input,
                  PlannedDay& planned);

} // namespace water
