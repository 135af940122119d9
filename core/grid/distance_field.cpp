// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/distance_field.h"

#include <algorithm>
#include <cmath>
#include <queue>

namespace grid {

namespace {

constexpr float infinite = std::numeric_limits<float>::infinity();

struct Front {
    float distance_m;
    std::size_t index;
    /// Ties are broken by index, so that the result never depends on the heap.
    friend bool operator>(const Front& a, const Front& b) {
        return a.distance_m != b.distance_m ? a.distance_m > b.distance_m : a.index > b.index;
    }
};

float valueAt(const Grid<float>& distance_m, const Mask& mask, Cell c) {
    return mask.isActive(c) ? distance_m[c] : infinite;
}

/// The distance at c from its neighbours: the upwind solution of |grad d| = 1.
float marched_m(const Grid<float>& distance_m, const Mask& mask, Cell c) {
    const float h = static_cast<float>(mask.frame().cell_m());
    const float a = std::min(valueAt(distance_m, mask, {c.col - 1, c.row}),
                             valueAt(distance_m, mask, {c.col + 1, c.row}));
    const float b = std::min(valueAt(distance_m, mask, {c.col, c.row - 1}),
                             valueAt(distance_m, mask, {c.col, c.row + 1}));
    const float low = std::min(a, b);
    const float high = std::max(a, b);
    if (high - low >= h || std::isinf(high)) {
        return low + h;
    }
    return 0.5F * (a + b + std::sqrt(2.0F * h * h - (a - b) * (a - b)));
}

/// Exact straight distances in the close surroundings of a source, so that the first-order error of
/// the front's start stays out.
void seedRound(Grid<float>& distance_m, const Mask& mask, Cell source) {
    const double h = mask.frame().cell_m();
    for (int dr = -1; dr <= 1; ++dr) {
        for (int dc = -1; dc <= 1; ++dc) {
            const Cell c{source.col + dc, source.row + dr};
            if (mask.isActive(c)) {
                float& d = distance_m[c];
                d = std::min(d, static_cast<float>(h * std::hypot(dc, dr)));
            }
        }
    }
}

/// One pass of the lower envelope of parabolas over a line of squared distances.
class Envelope {
public:
    explicit Envelope(std::size_t longest) : at_(longest), bound_(longest + 1), out_(longest) {}

    const std::vector<double>& of(const std::vector<double>& f, std::size_t n) {
        std::size_t k = 0;
        at_[0] = 0;
        bound_[0] = -HUGE_VAL;
        bound_[1] = HUGE_VAL;
        for (std::size_t q = 1; q < n; ++q) {
            double s = meet(f, q, at_[k]);
            while (k > 0 && s <= bound_[k]) {
                --k;
                s = meet(f, q, at_[k]);
            }
            if (s > bound_[k]) {
                ++k;
            }
            at_[k] = q;
            bound_[k] = k == 0 ? -HUGE_VAL : s;
            bound_[k + 1] = HUGE_VAL;
        }
        k = 0;
        for (std::size_t q = 0; q < n; ++q) {
            while (bound_[k + 1] < static_cast<double>(q)) {
                ++k;
            }
            const double step = static_cast<double>(q) - static_cast<double>(at_[k]);
            out_[q] = step * step + f[at_[k]];
        }
        return out_;
    }

private:
    static double meet(const std::vector<double>& f, std::size_t q, std::size_t p) {
        const auto x = static_cast<double>(q);
        const auto y = static_cast<double>(p);
        return ((f[q] + x * x) - (f[p] + y * y)) / (2.0 * x - 2.0 * y);
    }
    std::vector<std::size_t> at_;
    std::vector<double> bound_;
    std::vector<double> out_;
};

constexpr std::int32_t noneInColumn = 1 << 28;

/// How many rows each cell is from the nearest source of its own column.
std::vector<std::int32_t> cellsInColumn(const Grid<std::uint8_t>& isSource) {
    const auto cols = static_cast<std::size_t>(isSource.frame().cols());
    const std::size_t size = isSource.size();
    std::vector<std::int32_t> away(size, noneInColumn);
    for (std::size_t i = 0; i < size; ++i) {
        away[i] = isSource[i] != 0 ? 0 : i < cols ? noneInColumn : away[i - cols] + 1;
    }
    for (std::size_t i = size; i-- > 0;) {
        if (i + cols < size) {
            away[i] = std::min(away[i], away[i + cols] + 1);
        }
    }
    return away;
}

} // namespace

Grid<float> distanceOverWater_m(const Mask& mask, std::span<const Cell> sources, float farthest_m) {
    const GridFrame& f = mask.frame();
    Grid<float> distance_m(f, infinite);
    Grid<std::uint8_t> done(f, 0);
    for (const Cell source : sources) {
        if (mask.isActive(source)) {
            seedRound(distance_m, mask, source);
        }
    }
    std::priority_queue<Front, std::vector<Front>, std::greater<>> front;
    for (std::size_t i = 0; i < distance_m.size(); ++i) {
        if (!std::isinf(distance_m[i])) {
            front.push({distance_m[i], i});
        }
    }
    while (!front.empty()) {
        const Front nearest = front.top();
        front.pop();
        if (done[nearest.index] != 0 || nearest.distance_m > distance_m[nearest.index]) {
            continue;
        }
        if (nearest.distance_m > farthest_m) {
            break;
        }
        done[nearest.index] = 1;
        const Cell c = f.cellAt(nearest.index);
        for (const Cell next : {Cell{c.col - 1, c.row}, Cell{c.col + 1, c.row},
                                Cell{c.col, c.row - 1}, Cell{c.col, c.row + 1}}) {
            if (!mask.isActive(next) || done[next] != 0) {
                continue;
            }
            const float reached_m = marched_m(distance_m, mask, next);
            if (reached_m < distance_m[next]) {
                distance_m[next] = reached_m;
                front.push({reached_m, f.index(next)});
            }
        }
    }
    for (std::size_t i = 0; i < distance_m.size(); ++i) {
        if (done[i] == 0) {
            distance_m[i] = infinite;
        }
    }
    return distance_m;
}

Grid<float> straightDistance_m(const Grid<std::uint8_t>& isSource) {
    const GridFrame& f = isSource.frame();
    const auto cols = static_cast<std::size_t>(f.cols());
    const auto rows = static_cast<std::size_t>(f.rows());
    constexpr double far = 1e12;
    const std::vector<std::int32_t> inColumn = cellsInColumn(isSource);
    Envelope envelope(cols);
    std::vector<double> line(cols);
    Grid<float> distance_m(f, infinite);
    for (std::size_t row = 0; row < rows; ++row) {
        for (std::size_t col = 0; col < cols; ++col) {
            const auto away = static_cast<double>(inColumn[row * cols + col]);
            line[col] = inColumn[row * cols + col] < noneInColumn ? away * away : far;
        }
        const auto& out = envelope.of(line, cols);
        for (std::size_t col = 0; col < cols; ++col) {
            if (out[col] < 0.5 * far) {
                distance_m[row * cols + col] = static_cast<float>(std::sqrt(out[col]) * f.cell_m());
            }
        }
    }
    return distance_m;
}

} // namespace grid
