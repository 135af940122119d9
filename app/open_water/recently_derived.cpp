// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/recently_derived.h"

#include "core/water/derive.h"

#include <algorithm>

namespace open_water {

namespace {

/// Each holds a map, of some tens of megabytes on the largest waters.
constexpr std::size_t mostRemembered = 4;

std::ptrdiff_t stepsThatHold(const water::Derived& derived, const Stamps& wanted) {
    std::size_t step = 0;
    while (step < wanted.size() && derived.isCurrent(water::allSteps.at(step), wanted.at(step))) {
        ++step;
    }
    return static_cast<std::ptrdiff_t>(step);
}

} // namespace

Stamps stampsOf(const water::Water& water) {
    Stamps stamps;
    std::ranges::transform(water::allSteps, stamps.begin(),
                           [&](water::Step step) { return water::stampOf(water, step); });
    return stamps;
}

void RecentlyDerived::remember(const water::Derived& derived) {
    std::erase_if(derived_,
                  [&](const water::Derived& other) { return other.stamps == derived.stamps; });
    derived_.push_front(derived);
    if (derived_.size() > mostRemembered) {
        derived_.pop_back();
    }
}

water::Derived RecentlyDerived::nearestTo(const Stamps& wanted) const {
    if (derived_.empty()) {
        return {};
    }
    return *std::ranges::max_element(derived_, {}, [&](const water::Derived& derived) {
        return stepsThatHold(derived, wanted);
    });
}

} // namespace open_water
