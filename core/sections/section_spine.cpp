// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/section_spine.h"

#include <algorithm>
#include <cmath>

namespace sections {

namespace {

/// Direction in which the cells stretch most: the first axis of their scatter.
units::Bearing longWay(const grid::GridFrame& frame, const std::vector<std::size_t>& cells) {
    geo::WaterPoint mean;
    for (const std::size_t cell : cells) {
        const geo::WaterPoint p = frame.centre(frame.cellAt(cell));
        mean.x_m += p.x_m / static_cast<double>(cells.size());
        mean.y_m += p.y_m / static_cast<double>(cells.size());
    }
    double xx = 0.0;
    double xy = 0.0;
    double yy = 0.0;
    for (const std::size_t cell : cells) {
        const geo::WaterPoint p = frame.centre(frame.cellAt(cell));
        const double dx = p.x_m - mean.x_m;
        const double dy = p.y_m - mean.y_m;
        xx += dx * dx;
        xy += dx * dy;
        yy += dy * dy;
    }
    const double angle = 0.5 * std::atan2(2.0 * xy, xx - yy);
    return units::Bearing::ofStep(std::cos(angle), std::sin(angle));
}

} // namespace

geo::Path spineOf(const grid::GridFrame& frame, const std::vector<std::size_t>& cells,
                  geo::WaterPoint middle) {
    const auto holds = [&](geo::WaterPoint p) {
        const grid::Cell c = frame.cellOf(p);
        return frame.holds(c) && std::binary_search(cells.begin(), cells.end(), frame.index(c));
    };
    const units::Bearing way = longWay(frame, cells);
    const auto reach = [&](units::Bearing bearing) {
        geo::WaterPoint last = middle;
        for (double go_m = frame.cell_m();
             holds(geo::moved(middle, bearing, units::Length::metres(go_m)));
             go_m += frame.cell_m()) {
            last = geo::moved(middle, bearing, units::Length::metres(go_m));
        }
        return last;
    };
    const geo::WaterPoint a = reach(way.opposite());
    const geo::WaterPoint b = reach(way);
    if (geo::distance_m(a, b) < 2.0 * frame.cell_m()) {
        return {middle};
    }
    return {a, middle, b};
}

} // namespace sections
