// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/fished_light.h"

#include "core/light/sun.h"

#include <algorithm>

namespace water {

namespace {

void take(std::optional<rates::HourSpan>& span, const std::optional<units::Moment>& moment,
          const units::Clock& clock) {
    if (!moment) {
        return;
    }
    const double hour = clock.hourOfDay(*moment);
    if (!span) {
        span = rates::HourSpan{hour, hour};
    }
    span->from = std::min(span->from, hour);
    span->to = std::max(span->to, hour);
}

} // namespace

std::optional<FishedLight> fishedLight(const Water& water, const ReviewQuestion& question) {
    std::optional<rates::HourSpan> sunrise;
    std::optional<rates::HourSpan> sunset;
    std::optional<units::Day> last;
    for (const logbook::Stay& stay : water.log) {
        const units::Day day = water.clock.dayOf(stay.start);
        if (day == last || !isAskedAbout(stay, question, water.clock)) {
            continue;
        }
        last = day;
        const light::SunTimes sun = light::sunTimesOn(day, stay.place, water.clock);
        take(sunrise, sun.sunrise, water.clock);
        take(sunset, sun.sunset, water.clock);
    }
    return sunrise && sunset ? std::optional(FishedLight{*sunrise, *sunset}) : std::nullopt;
}

} // namespace water
