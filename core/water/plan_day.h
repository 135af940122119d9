// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/water/derived.h"
#include "core/water/planned_day.h"
#include "core/water/water.h"

namespace water {

/// Tomorrow's marks for the plan that is asked: places proposed, anchors and rods worked out for
/// each, ranked, put in order. It goes before the one in the water; its rods are held to the house
/// rules.
/// \param derived made up to Step::sections.
/// \return wrongUse where something is not derived yet or a setting is out of range; unusableInput
/// where no place can be anchored on (why, and what to change); cancelled.
[[nodiscard]] base::Result<PlannedDay> planDay(const Water& water, const Derived& derived,
                                               const marks::Plan& asked, base::Progress& progress);

} // namespace water
