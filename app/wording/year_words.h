// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/water/questions/compare_years.h"

#include <QStringList>

namespace wording {

/// "0.4 ha have risen by more than both surveys may be off, 310 m³ in all; 0.1 ha have fallen, ..."
[[nodiscard]] QString saidOfYears(const water::YearsCompared& years, const Words& words);

/// What may be wrong with it: days without a level, a whole water that has risen or sunk.
[[nodiscard]] QStringList doubtsOfYears(const water::YearsCompared& years, const Words& words);

/// "risen 0.45 m ±0.30", "as it was, ±0.30 m", "not drawn both times"
[[nodiscard]] QString saidOfMark(const water::MarkThen& mark, const Words& words);

} // namespace wording
