// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/rate.h"

#include <optional>
#include <vector>

namespace rates {

/// The rate at one time of the day.
struct HourRate {
    double hour = 0.0;        ///< By the water's clock, 0 <= hour < 24.
    double rodHours = 0.0;    ///< Effort seen through the kernel, its peak counting full.
    std::optional<Rate> rate; ///< Nothing where too little was fished about this time.
};

/// The rate over the day, evenly spaced from midnight; its ends meet.
struct HourRates {
    std::vector<HourRate> points;
    int trips = 0; ///< Behind the band.

    /// The middle of the best stretch: of the hours in a row at which the rate is more than a third
    /// of the way from the least to the greatest, weighed by how much more. Nearer to the truth
    /// than the best point alone, which chance moves. Nothing where all are alike.
    [[nodiscard]] std::optional<double> peakHour() const;
};

/// A stretch of the day, by the water's clock; `to` may lie past midnight, below `from`.
struct HourSpan {
    double from = 0.0;
    double to = 0.0;
    friend bool operator==(const HourSpan&, const HourSpan&) = default;
};

/// The hours round the best one that it does not surely beat: the neighbouring points whose rate
/// reaches into its interval, as far as they hang together. A point stands for the time up to the
/// next one. Where all are as good,
/// `from` and `to` are one. Nothing where no hour has a rate.
[[nodiscard]] std::optional<HourSpan> bestHours(const HourRates& rates);

} // namespace rates
