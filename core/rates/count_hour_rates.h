// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/logbook/trip.h"
#include "core/rates/hour_rates.h"

#include <cstdint>

namespace rates {

struct HourSettings {
    /// Standard deviation of the kernel, hours; 0.25 to 6. One hour keeps dawn and noon apart.
    double width_h = 1.0;
    /// Points over the day; 24 to 288.
    int points = 48;
    /// Draws of trips for the band; 100 to 10000.
    int draws = 500;
    /// Where chance starts, so that the band stays the same.
    std::uint32_t seed = 20;
    /// Least effort seen through the kernel for a rate to be given, rod-hours; above 0.
    double leastRodHours = 2.0;
    /// Fish counted: of this species, any case; empty for all.
    std::string species;
};

/// Fish over effort by time of day: the ratio of two circular kernel sums, effort spread evenly
/// over the hours that a stay covers. The band draws whole trips anew (fish of one day are not
/// independent), is never narrower than chance alone would make it (Garwood), and reaches as much
/// farther as the kernel flattens the curve there: what it does to its own result once more says
/// by how much (twicing; Tukey 1977, Exploratory Data Analysis, ch. 16).
/// \return wrongUse for a setting out of range.
[[nodiscard]] base::Result<HourRates> countHourRates(const logbook::Log& log,
                                                     const units::Clock& clock,
                                                     const HourSettings& settings,
                                                     base::Progress& progress);

} // namespace rates
