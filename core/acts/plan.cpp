// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/plan.h"

#include <algorithm>

namespace acts {

using base::Result;
using water::PinnedMark;
using water::Water;

Result<Water> setPlan(const Water& water, const marks::Plan& plan) {
    Water after = water;
    after.plan = plan;
    return after;
}

Result<Water> pinMark(const Water& water, geo::LonLat from, const PinnedMark& mark) {
    Water after = water;
    const auto known = std::ranges::find(after.pinnedMarks, from, &PinnedMark::place);
    if (known == after.pinnedMarks.end()) {
        after.pinnedMarks.push_back(mark);
    } else {
        *known = mark;
    }
    return after;
}

Result<Water> unpinMark(const Water& water, geo::LonLat place) {
    Water after = water;
    const auto isThere = [place](const PinnedMark& mark) { return mark.place == place; };
    if (std::erase_if(after.pinnedMarks, isThere) == 0) {
        return base::fail(base::ErrorKind::wrongUse, "no mark is pinned there", "marks",
                          "choose one of your own marks");
    }
    return after;
}

} // namespace acts
