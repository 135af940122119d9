// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/winds_of_day.h"

namespace marks {

std::vector<WindOfHours> windsBetween(const ExpectedDay& day, std::chrono::seconds from,
                                      std::chrono::seconds to) {
    const bool turns = day.windLater && day.windLater->at > from && day.windLater->at < to;
    if (!turns) {
        return {{windAt(day, from), from, to, 1.0}};
    }
    const std::chrono::seconds at = day.windLater->at;
    const double before =
        static_cast<double>((at - from).count()) / static_cast<double>((to - from).count());
    return {{day.wind, from, at, before}, {day.windLater->wind, at, to, 1.0 - before}};
}

std::vector<WindOfHours> windsOf(const ExpectedDay& day) {
    return windsBetween(day, day.start, day.end);
}

const logbook::Wind& windAt(const ExpectedDay& day, std::chrono::seconds hour) {
    return day.windLater && hour >= day.windLater->at ? day.windLater->wind : day.wind;
}

} // namespace marks
