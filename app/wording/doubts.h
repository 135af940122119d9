// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/water/questions/stay_doubts.h"

namespace wording {

// What of a stay can hardly be as it was noted, in whole sentences.

[[nodiscard]] QString said(const water::StayDoubt& doubt, const units::Clock& clock,
                           const Words& words);

/// "Sat 3 Oct 2026, 08:10 to 10:00".
[[nodiscard]] QString stayTitle(const logbook::Stay& stay, const units::Clock& clock);

/// Of a stay that was not brought in, because the log has the boat elsewhere at that time, or there
/// in a stay that overlaps it partly. \param meets that stay of the log.
[[nodiscard]] QString saidOfDoubtful(const logbook::Stay& stay, logbook::StayId meets,
                                     const water::Water& water);

} // namespace wording
