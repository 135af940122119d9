// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/water_way.h"

#include "core/grid/distance_field.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace grid {

namespace {

constexpr double mostCells = 60'000.0;

/// So many cells on a side are put together, where there are very many.
int coarseStep(const GridFrame& fine) {
    return std::max(
        1, static_cast<int>(std::ceil(std::sqrt(static_cast<double>(fine.size()) / mostCells))));
}

/// The cells that hold a depth, `step` by `step` of them put together.
Mask waterIn(const DepthGrid& depth, int step) {
    const GridFrame& fine = depth.frame();
    const GridFrame coarse(fine.west_m(), fine.north_m(), fine.cell_m() * step,
                           (fine.cols() + step - 1) / step, (fine.rows() + step - 1) / step);
    Grid<std::uint8_t> active(coarse);
    for (std::size_t i = 0; i < coarse.size(); ++i) {
        active[i] = depth.has(fine.cellOf(coarse.centre(coarse.cellAt(i)))) ? 1 : 0;
    }
    return Mask::from(active);
}

bool isReached(const Grid<float>& way_m, Cell c) {
    return way_m.frame().holds(c) && std::isfinite(way_m[c]);
}

/// From cell to cell, always to the neighbour nearest to where it leads; empty where it leads
/// nowhere.
geo::Path downhill(const Grid<float>& way_m, Cell at) {
    geo::Path path;
    for (std::size_t k = 0; k < way_m.size(); ++k) {
        path.push_back(way_m.frame().centre(at));
        if (way_m[at] <= 0.0F) {
            return path;
        }
        Cell next = at;
        for (int dr = -1; dr <= 1; ++dr) {
            for (int dc = -1; dc <= 1; ++dc) {
                const Cell c{at.col + dc, at.row + dr};
                // Not across the corner of a cell that is none of the water.
                const bool isBeside = isReached(way_m, {at.col + dc, at.row}) &&
                                      isReached(way_m, {at.col, at.row + dr});
                if (isReached(way_m, c) && isBeside && way_m[c] < way_m[next]) {
                    next = c;
                }
            }
        }
        if (next == at) {
            break;
        }
        at = next;
    }
    return {};
}

/// The same way without the bends that nothing asks for.
geo::Path pulledTight(const DepthGrid& depth, const geo::Path& path) {
    geo::Path tight{path.front()};
    std::size_t at = 0;
    while (at + 1 < path.size()) {
        std::size_t next = at + 1;
        for (std::size_t k = path.size() - 1; k > next; --k) {
            if (isStraightWay(depth, path[at], path[k])) {
                next = k;
                break;
            }
        }
        tight.push_back(path[next]);
        at = next;
    }
    return tight;
}

/// The way from cell to cell of `water`, its ends the middles of the cells nearest to the places;
/// empty where none leads there.
geo::Path wayIn(const Mask& water, geo::WaterPoint from, geo::WaterPoint to) {
    const auto start = water.nearestActive(from);
    const auto end = water.nearestActive(to);
    if (!start || !end) {
        return {};
    }
    return downhill(distanceOverWater_m(water, std::array{*end}), *start);
}

bool isClear(const DepthGrid& depth, const geo::Path& path) {
    for (std::size_t k = 1; k < path.size(); ++k) {
        if (!isStraightWay(depth, path[k - 1], path[k])) {
            return false;
        }
    }
    return !path.empty();
}

/// Looks at every cell that the straight line passes, nearly: at every tenth of a cell.
template <class IsWater>
bool isAllWater(const GridFrame& frame, geo::WaterPoint a, geo::WaterPoint b, IsWater isWater) {
    const double step_m = 0.1 * frame.cell_m();
    const int steps = static_cast<int>(std::ceil(geo::distance_m(a, b) / step_m));
    for (int k = 0; k <= steps; ++k) {
        const double t = steps == 0 ? 0.0 : static_cast<double>(k) / steps;
        const geo::WaterPoint p{a.x_m + t * (b.x_m - a.x_m), a.y_m + t * (b.y_m - a.y_m)};
        if (!isWater(frame.cellOf(p))) {
            return false;
        }
    }
    return true;
}

} // namespace

bool isStraightWay(const DepthGrid& depth, geo::WaterPoint a, geo::WaterPoint b) {
    return isAllWater(depth.frame(), a, b, [&](Cell c) { return depth.has(c); });
}

bool isStraightWay(const Mask& mask, geo::WaterPoint a, geo::WaterPoint b) {
    return isAllWater(mask.frame(), a, b, [&](Cell c) { return mask.isActive(c); });
}

geo::Path wayOverWater(const DepthGrid& depth, geo::WaterPoint from, geo::WaterPoint to) {
    if (isStraightWay(depth, from, to)) {
        return {from, to};
    }
    const int step = coarseStep(depth.frame());
    geo::Path path = wayIn(waterIn(depth, step), from, to);
    if (step > 1 && !isClear(depth, path)) {
        // Something narrow lies in the way, or a narrow passage is the only one.
        path = wayIn(waterIn(depth, 1), from, to);
    }
    if (path.empty()) {
        return {};
    }
    path.insert(path.begin(), from);
    path.push_back(to);
    return pulledTight(depth, path);
}

} // namespace grid
