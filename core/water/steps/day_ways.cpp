// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/day_ways.h"

#include "core/grid/water_way.h"

#include <algorithm>

namespace water {

void layWays(marks::DayPlan& day, std::span<const marks::Mark> marks, const grid::DepthGrid& open,
             std::optional<geo::WaterPoint> launch) {
    std::optional<geo::WaterPoint> boat = launch;
    for (marks::DayStop& stop : day.stops) {
        const auto mark = std::ranges::find(marks, stop.rank, &marks::Mark::rank);
        if (mark == marks.end()) {
            boat.reset();
            continue;
        }
        if (boat) {
            stop.way = grid::wayOverWater(open, *boat, mark->place);
        }
        boat = mark->place;
    }
    if (launch && boat && !day.stops.empty()) {
        day.wayHome = grid::wayOverWater(open, *boat, *launch);
    }
}

grid::DepthGrid openWaterOf(grid::DepthGrid today, const grid::Grid<std::uint8_t>& closed) {
    for (std::size_t i = 0; i < closed.size(); ++i) {
        if (closed[i] != 0) {
            today.clear(i);
        }
    }
    return today;
}

} // namespace water
