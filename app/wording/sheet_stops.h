// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/water/document/boat_sheet.h"
#include "core/water/document/planned_day.h"

namespace wording {

/// What the sheet of this day says of its stops: marks by number and name, times to the minute.
[[nodiscard]] water::BoatSheet boatSheetOf(const water::PlannedDay& planned, const Words& words);

} // namespace wording
