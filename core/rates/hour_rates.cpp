// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/hour_rates.h"

#include <algorithm>
#include <cmath>

namespace rates {

std::optional<double> HourRates::peakHour() const {
    double least = HUGE_VAL;
    double most = 0.0;
    for (const HourRate& point : points) {
        if (point.rate) {
            least = std::min(least, point.rate->per10RodHours);
            most = std::max(most, point.rate->per10RodHours);
        }
    }
    if (!(most > least)) {
        return std::nullopt;
    }
    const double from = least + (most - least) / 3.0;
    const std::size_t count = points.size();
    const auto above = [&](std::size_t i) {
        const auto& rate = points[i % count].rate;
        return rate ? rate->per10RodHours - from : -1.0;
    };
    // The day is round: a stretch begins where the point before it is not above.
    double best = 0.0;
    double peak_h = 0.0;
    for (std::size_t first = 0; first < count; ++first) {
        if (above(first) <= 0.0 || above(first + count - 1) > 0.0) {
            continue;
        }
        double weights = 0.0;
        double sum_h = 0.0;
        for (std::size_t i = first; i < first + count && above(i) > 0.0; ++i) {
            weights += above(i);
            sum_h += above(i) * 24.0 * static_cast<double>(i) / static_cast<double>(count);
        }
        if (weights > best) {
            best = weights;
            peak_h = sum_h / weights;
        }
    }
    return std::fmod(peak_h, 24.0);
}

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
