// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/trip.h"

#include <algorithm>
#include <map>

namespace logbook {

std::vector<Trip> tripsOf(const Log& log, const units::Clock& clock) {
    std::map<units::Day, std::vector<const Stay*>> byDay;
    for (const Stay& stay : log) {
        byDay[clock.dayOf(stay.start)].push_back(&stay);
    }
    std::vector<Trip> trips;
    for (auto& [day, stays] : byDay) {
        std::stable_sort(stays.begin(), stays.end(),
                         [](const Stay* a, const Stay* b) { return a->start < b->start; });
        trips.push_back({day, std::move(stays)});
    }
    return trips;
}

void sortByTime(Log& log) {
    std::stable_sort(log.begin(), log.end(), [](const Stay& a, const Stay& b) {
        return a.start != b.start ? a.start < b.start : a.id < b.id;
    });
}

} // namespace logbook
