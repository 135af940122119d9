// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/waterway.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <queue>
#include <utility>

namespace sample {

namespace {

constexpr double cell_m = 10.0;
constexpr double west_m = -1320.0;
constexpr double south_m = -640.0;
constexpr int columns = 244;
constexpr int rows = 150;

} // namespace

Waterway::Waterway(const Bottom& bottom, double keepOff_m, double leastDepth_m)
    : open_(static_cast<std::size_t>(columns * rows), 0) {
    for (int cell = 0; cell < columns * rows; ++cell) {
        const Point p = middleOf(cell);
        const bool fits = bottom.shore().holds(p) && bottom.shore().distance_m(p) >= keepOff_m &&
                          bottom.depth_m(p) >= leastDepth_m;
        open_[static_cast<std::size_t>(cell)] = fits ? 1 : 0;
    }
}

int Waterway::cellAt(Point p) const {
    const int column = static_cast<int>(std::floor((p.x_m - west_m) / cell_m));
    const int row = static_cast<int>(std::floor((p.y_m - south_m) / cell_m));
    if (column < 0 || row < 0 || column >= columns || row >= rows) {
        return -1;
    }
    return row * columns + column;
}

Point Waterway::middleOf(int cell) const {
    const int column = cell % columns;
    const int row = cell / columns;
    return {west_m + (column + 0.5) * cell_m, south_m + (row + 0.5) * cell_m};
}

bool Waterway::open(Point p) const {
    const int cell = cellAt(p);
    return cell >= 0 && open_[static_cast<std::size_t>(cell)] != 0;
}

int Waterway::nearestOpen(Point p) const {
    int best = -1;
    double least = std::numeric_limits<double>::infinity();
    for (int cell = 0; cell < columns * rows; ++cell) {
        const double away = distance(p, middleOf(cell));
        if (open_[static_cast<std::size_t>(cell)] != 0 && away < least) {
            least = away;
            best = cell;
        }
    }
    return best;
}

bool Waterway::straight(Point a, Point b) const {
    const int steps = std::max(1, static_cast<int>(distance(a, b) / 3.0));
    for (int k = 0; k <= steps; ++k) {
        if (!open(a + (static_cast<double>(k) / steps) * (b - a))) {
            return false;
        }
    }
    return true;
}

Line Waterway::way(Point a, Point b) const {
    if (straight(a, b)) {
        return {a, b};
    }
    const int start = nearestOpen(a);
    const int goal = nearestOpen(b);
    std::vector<double> cost(open_.size(), std::numeric_limits<double>::infinity());
    std::vector<int> from(open_.size(), -1);
    using Entry = std::pair<double, int>;
    std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue;
    cost[static_cast<std::size_t>(start)] = 0.0;
    queue.emplace(distance(middleOf(start), middleOf(goal)), start);
    while (!queue.empty() && queue.top().second != goal) {
        const int here = queue.top().second;
        queue.pop();
        for (int dy = -1; dy <= 1; ++dy) {
            for (int dx = -1; dx <= 1; ++dx) {
                const Point next = middleOf(here) + Point{dx * cell_m, dy * cell_m};
                const int there = cellAt(next);
                const double price =
                    cost[static_cast<std::size_t>(here)] + cell_m * std::hypot(dx, dy);
                if (open(next) && price + 1e-9 < cost[static_cast<std::size_t>(there)]) {
                    cost[static_cast<std::size_t>(there)] = price;
                    from[static_cast<std::size_t>(there)] = here;
                    queue.emplace(price + distance(next, middleOf(goal)), there);
                }
            }
        }
    }
    Line steps{b};
    for (int cell = goal; cell != -1; cell = from[static_cast<std::size_t>(cell)]) {
        steps.push_back(middleOf(cell));
    }
    steps.push_back(a);
    std::reverse(steps.begin(), steps.end());
    Line tight{a};
    for (std::size_t i = 0; i + 1 < steps.size();) {
        std::size_t far = i + 1;
        for (std::size_t j = steps.size() - 1; j > i + 1; --j) {
            if (straight(steps[i], steps[j])) {
                far = j;
                break;
            }
        }
        tight.push_back(steps[far]);
        i = far;
    }
    return tight;
}

} // namespace sample
