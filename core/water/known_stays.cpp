// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/known_stays.h"

#include <algorithm>

namespace water {

using logbook::Stay;

namespace {

/// The same stay, whatever their ids and those of their fish.
bool isSameStay(const Stay& a, Stay b) {
    if (a.runs.size() != b.runs.size()) {
        return false;
    }
    b.id = a.id;
    for (std::size_t i = 0; i < b.runs.size(); ++i) {
        b.runs[i].id = a.runs[i].id;
    }
    return a == b;
}

} // namespace

KnownStays::KnownStays(const logbook::Log& log) {
    byStart_.reserve(log.size());
    for (const Stay& stay : log) {
        byStart_.push_back(&stay);
    }
    // A log is by start already, mostly.
    if (!std::ranges::is_sorted(byStart_, {}, &Stay::start)) {
        std::ranges::stable_sort(byStart_, {}, &Stay::start);
    }
}

void KnownStays::take(const Stay& stay) {
    taken_.emplace(stay.start, stay);
}

bool KnownStays::holds(const Stay& stay) const {
    const auto ofLog = std::ranges::equal_range(byStart_, stay.start, {}, &Stay::start);
    const auto [first, last] = taken_.equal_range(stay.start);
    return std::ranges::any_of(ofLog,
                               [&](const Stay* known) { return isSameStay(*known, stay); }) ||
           std::any_of(first, last,
                       [&](const auto& known) { return isSameStay(known.second, stay); });
}

} // namespace water
