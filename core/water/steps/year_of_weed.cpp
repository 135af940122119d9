// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/year_of_weed.h"

#include <algorithm>

namespace water {

std::optional<std::chrono::year> yearOfWeed(const Water& water) {
    std::optional<std::chrono::year> newest;
    for (const weed::WeedNote& note : water.weedNotes) {
        if (note.seen) {
            newest = std::max(newest.value_or(water.plan.day.day.year()), note.seen->year());
        }
    }
    return newest;
}

} // namespace water
