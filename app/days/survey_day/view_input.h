// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <set>

namespace days::survey_day {

/// What every step of the survey day is shown from. Values only: what a step shows is worked out
/// without any widget.
struct ViewInput {
    const water::Water& water;
    const water::Derived& derived;
    wording::Words words;
    std::set<water::Step> stale; ///< What does not hold any more, or was never made.

    [[nodiscard]] bool isStale(water::Step step) const { return stale.contains(step); }
};

} // namespace days::survey_day
