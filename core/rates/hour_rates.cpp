// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/hour_rates.h"

namespace rates {

std::optional<HourSpan> bestHours(const HourRates& rates) {
    const auto& points = rates.points;
    const std::size_t count = points.size();
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < count; ++i) {
        if (points[i].rate &&
            (!best || points[i].rate->per10RodHours > points[*best].rate->per10RodHours)) {
            best = i;
        }
    }
    if (!best) {
        return std::nullopt;
    }
    const auto isAsGood = [&](std::size_t i) {
        return points[i].rate && points[i].rate->per10RodHours >= points[*best].rate->low;
    };
    std::size_t first = *best;
    std::size_t last = *best;
    // The ends of the day meet, so that a span may cross midnight, but never more than the whole
    // day.
    std::size_t taken = 1;
    for (; taken < count && isAsGood((first + count - 1) % count); ++taken) {
        first = (first + count - 1) % count;
    }
    for (; taken < count && isAsGood((last + 1) % count); ++taken) {
        last = (last + 1) % count;
    }
    if (taken == count) {
        return HourSpan{points.front().hour, points.front().hour};
    }
    return HourSpan{points[first].hour, points[(last + 1) % count].hour};
}

} // namespace rates
