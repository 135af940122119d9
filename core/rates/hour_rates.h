// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/rate.h"

#include <vector>

namespace rates {

/// The rate at one time of the day.
struct HourRate {
    double hour = 0.0;        ///< By the water's clock, 0 <= hour < 24.
    double rodHours = 0.0;    ///< Effort seen through the kernel, its peak counting full.
    std::optional<Rate> rate; ///< Nothing where too little was fished at this time.
};

/// The rate over the day, evenly spaced from midnight; its ends meet.
struct HourRates {
    std::vector<HourRate> points;
    int trips = 0; ///< Behind the band.
};

} // namespace rates
