// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/plan.h"

namespace marks {

/// Hours as they are said by the clock, put into their order: an end before the start is of the
/// next morning, and so is a turn of the wind before the start of such a night. Hours after
/// midnight count on from 24.
[[nodiscard]] inline ExpectedDay overnight(ExpectedDay day) {
    constexpr std::chrono::hours aDay(24);
    day.end %= aDay;
    if (day.end < day.start) {
        day.end += aDay;
    }
    if (day.windLater) {
        day.windLater->at %= aDay;
        if (day.windLater->at < day.start && day.end > aDay) {
            day.windLater->at += aDay;
        }
    }
    return day;
}

/// Whether the boat comes home on the next day.
[[nodiscard]] inline bool isOvernight(const ExpectedDay& day) {
    return day.end >= std::chrono::hours(24);
}

} // namespace marks
