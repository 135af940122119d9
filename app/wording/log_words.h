// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/water/steps/bring_in.h"

namespace wording {

/// "12 stays brought in, 3 updated, 2 known already."
[[nodiscard]] QString broughtIn(const water::LogBroughtIn& log);

/// What of the file is not in the log now, and why: rows, fields, stays that meet others. Empty
/// where nothing was lost. \param water that it was brought into.
[[nodiscard]] QString leftOutOf(const water::LogBroughtIn& log, const water::Water& water);

} // namespace wording
