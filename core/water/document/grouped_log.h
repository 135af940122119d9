// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/kept_log.h"
#include "core/rates/grouping.h"

#include <algorithm>
#include <iterator>
#include <vector>

namespace water {

/// What a way of grouping that looks at one stay after the other makes of the whole log: by hour,
/// bait, wind or month. \param group makes groups of a span of stays.
template <class Group>
[[nodiscard]] std::vector<rates::GroupedStay> groupsOf(const logbook::KeptLog& log,
                                                       const Group& group) {
    std::vector<rates::GroupedStay> all;
    for (const auto& chunk : log.chunks()) {
        std::ranges::move(group(chunk->items()), std::back_inserter(all));
    }
    return all;
}

} // namespace water
