// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/log_sum.h"

namespace logbook {

namespace {

std::chrono::year_month monthOf(units::Day day) {
    return day.year() / day.month();
}

void addTo(LogSum::Month& sum, const LogSum::Month& more) {
    sum.trips += more.trips;
    sum.stays += more.stays;
    sum.blanks += more.blanks;
    sum.fish += more.fish;
}

} // namespace

LogSum LogSum::of(std::span<const Stay> stays, const units::Clock& clock) {
    LogSum sum;
    Month* month = nullptr;
    const std::string* known = nullptr; // Most fish of a log are of one kind.
    for (const Stay& stay : stays) {
        const units::Day day = clock.dayOf(stay.start);
        const bool isNewDay = month == nullptr || day != sum.last;
        if (isNewDay) {
            month = &sum.months[monthOf(day)];
            sum.first = sum.months.size() == 1 && month->stays == 0 ? day : sum.first;
            sum.last = day;
        }
        const auto fish = static_cast<std::size_t>(stay.fishCount());
        addTo(*month, {isNewDay ? 1U : 0U, 1, fish == 0 ? 1U : 0U, fish});
        for (const Fish& run : stay.runs) {
            if (run.landed && !run.species.empty() && (!known || *known != run.species)) {
                known = &*sum.species.insert(run.species).first;
            }
        }
    }
    return sum;
}

void LogSum::add(const LogSum& next) {
    if (next.months.empty()) {
        return;
    }
    const bool isFirst = months.empty();
    const bool sharesTrip = !isFirst && last == next.first;
    for (const auto& [month, more] : next.months) {
        addTo(months[month], more);
    }
    if (sharesTrip) {
        --months[monthOf(last)].trips;
    }
    species.insert(next.species.begin(), next.species.end());
    first = isFirst ? next.first : first;
    last = next.last;
}

LogSum::Month LogSum::whole() const {
    Month sum;
    for (const auto& [month, more] : months) {
        addTo(sum, more);
    }
    return sum;
}

} // namespace logbook
