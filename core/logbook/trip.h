// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/stay.h"

#include <vector>

namespace logbook {

/// One outing: the stays of one day at the water, by start.
struct Trip {
    units::Day day;
    std::vector<const Stay*> stays;
};

/// The log: every stay, by start. Trips are its days, by the water's clock.
using Log = std::vector<Stay>;

/// The days of the log in order; valid as long as `log` stands unchanged.
[[nodiscard]] std::vector<Trip> tripsOf(const Log& log, const units::Clock& clock);
/// By start, then by id.
void sortByTime(Log& log);

} // namespace logbook
