// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/path.h"

#include <algorithm>
#include <utility>

namespace geo {

units::Length lengthOf(const Path& path) {
    double sum_m = 0.0;
    for (std::size_t i = 1; i < path.size(); ++i) {
        sum_m += distance_m(path[i - 1], path[i]);
    }
    return units::Length::metres(sum_m);
}

units::Length lengthAround(const Ring& ring) {
    if (ring.size() < 2) {
        return {};
    }
    return lengthOf(ring) + distance(ring.back(), ring.front());
}

double signedArea_m2(const Ring& ring) {
    double twice = 0.0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        // Relative to the first point, so that far-off coordinates do not cost digits.
        const WaterPoint& o = ring.front();
        const WaterPoint& a = ring[i];
        const WaterPoint& b = ring[(i + 1) % ring.size()];
        twice += (a.x_m - o.x_m) * (b.y_m - o.y_m) - (b.x_m - o.x_m) * (a.y_m - o.y_m);
    }
    return 0.5 * twice;
}

double distanceToSegment_m(WaterPoint p, WaterPoint a, WaterPoint b) {
    const double dx = b.x_m - a.x_m;
    const double dy = b.y_m - a.y_m;
    const double squared = dx * dx + dy * dy;
    if (squared <= 0.0) {
        return distance_m(p, a);
    }
    const double t = std::clamp(((p.x_m - a.x_m) * dx + (p.y_m - a.y_m) * dy) / squared, 0.0, 1.0);
    return distance_m(p, {a.x_m + t * dx, a.y_m + t * dy});
}

Path simplified(const Path& line, double tolerance_m) {
    if (line.size() < 3) {
        return line;
    }
    std::vector<char> kept(line.size(), 0);
    kept.front() = kept.back() = 1;
    std::vector<std::pair<std::size_t, std::size_t>> open{{0, line.size() - 1}};
    while (!open.empty()) {
        const auto [first, last] = open.back();
        open.pop_back();
        double farthest_m = tolerance_m;
        std::size_t at = 0;
        for (std::size_t i = first + 1; i < last; ++i) {
            const double d_m = distanceToSegment_m(line[i], line[first], line[last]);
            if (d_m > farthest_m) {
                farthest_m = d_m;
                at = i;
            }
        }
        if (at != 0) {
            kept[at] = 1;
            open.emplace_back(first, at);
            open.emplace_back(at, last);
        }
    }
    Path out;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (kept[i] != 0) {
            out.push_back(line[i]);
        }
    }
    return out;
}

Path densified(const Path& line, double step_m) {
    Path out;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (i > 0) {
            const WaterPoint a = line[i - 1];
            const WaterPoint b = line[i];
            const auto pieces = static_cast<int>(std::ceil(distance_m(a, b) / step_m));
            for (int k = 1; k < pieces; ++k) {
                const double t = static_cast<double>(k) / pieces;
                out.push_back({a.x_m + t * (b.x_m - a.x_m), a.y_m + t * (b.y_m - a.y_m)});
            }
        }
        out.push_back(line[i]);
    }
    return out;
}

} // namespace geo
