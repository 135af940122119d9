// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/recently_derived.h"

#include <algorithm>

namespace open_water {

namespace {

/// Each holds a map, of some tens of megabytes on the largest waters.
constexpr std::size_t mostRemembered = 4;

std::ptrdiff_t stepsThatHold(const water::Derived& derived, const water::Stamps& wanted) {
    const auto* const firstOld = std::ranges::find_if_not(water::allSteps, [&](water::Step step) {
        return derived.isCurrent(step, wanted.at(step));
    });
    return firstOld - water::allSteps.begin();
}

} // namespace

void RecentlyDerived::remember(const water::Derived& derived) {
    std::erase_if(derived_,
                  [&](const water::Derived& other) { return other.stamps == derived.stamps; });
    derived_.push_front(derived);
    if (derived_.size() > mostRemembered) {
        derived_.pop_back();
    }
}

water::Derived RecentlyDerived::nearestTo(const water::Stamps& wanted) const {
    if (derived_.empty()) {
        return {};
    }
    return *std::ranges::max_element(derived_, {}, [&](const water::Derived& derived) {
        return stepsThatHold(derived, wanted);
    });
}

} // namespace open_water
