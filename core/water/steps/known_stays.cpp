// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/known_stays.h"

#include <algorithm>
#include <ranges>

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

KnownStays::KnownStays(logbook::KeptLog log) : log_(std::move(log)) {
    if (!logbook::isInOrder(log_)) {
        logbook::putInOrder(log_, {});
    }
}

void KnownStays::take(const Stay& stay) {
    taken_.emplace(stay.start, stay);
}

bool KnownStays::holds(const Stay& stay) const {
    const auto positions = std::views::iota(std::size_t(0), log_.size());
    const auto ofLog = std::ranges::equal_range(positions, stay.start, {},
                                                [this](std::size_t i) { return log_[i].start; });
    const auto [first, last] = taken_.equal_range(stay.start);
    return std::ranges::any_of(ofLog, [&](std::size_t i) { return isSameStay(log_[i], stay); }) ||
           std::any_of(first, last,
                       [&](const auto& known) { return isSameStay(known.second, stay); });
}

} // namespace water
