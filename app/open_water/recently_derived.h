// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/derived.h"
#include "core/water/steps/stamps.h"

#include <deque>

namespace open_water {

/// The last few derivations, so that an edit undone is a map taken back and not one drawn again.
class RecentlyDerived {
public:
    void remember(const water::Derived& derived);
    void forget() { derived_.clear(); }
    /// The one of which the most steps in a row hold for the water with these stamps; the newer of
    /// equals; an empty one where nothing is remembered.
    [[nodiscard]] water::Derived nearestTo(const water::Stamps& wanted) const;

private:
    std::deque<water::Derived> derived_; ///< The newest first.
};

} // namespace open_water
