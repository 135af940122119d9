// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/hull.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace geo {

namespace {

double turn(WaterPoint o, WaterPoint a, WaterPoint b) {
    return (a.x_m - o.x_m) * (b.y_m - o.y_m) - (a.y_m - o.y_m) * (b.x_m - o.x_m);
}

/// Andrew's monotone chain (1979).
Ring convex(std::vector<WaterPoint> points) {
    std::sort(points.begin(), points.end(), [](WaterPoint a, WaterPoint b) {
        return a.x_m != b.x_m ? a.x_m < b.x_m : a.y_m < b.y_m;
    });
    points.erase(std::unique(points.begin(), points.end()), points.end());
    if (points.size() < 3) {
        return points;
    }
    Ring ring(2 * points.size());
    std::size_t k = 0;
    const auto take = [&](WaterPoint p, std::size_t least) {
        while (k >= least && turn(ring[k - 2], ring[k - 1], p) <= 0.0) {
            --k;
        }
        ring[k++] = p;
    };
    for (const WaterPoint p : points) {
        take(p, 2);
    }
    const std::size_t lower = k + 1;
    for (auto p = points.rbegin() + 1; p != points.rend(); ++p) {
        take(*p, lower);
    }
    ring.resize(k - 1);
    return ring;
}

} // namespace

Ring hullOf(std::span<const WaterPoint> points, double margin_m) {
    // A ring of points about each of them, and the hull of all: moves the hull outwards and rounds
    // its corners.
    constexpr int roundness = 16;
    std::vector<WaterPoint> grown;
    for (const WaterPoint p : convex({points.begin(), points.end()})) {
        for (int i = 0; i < roundness; ++i) {
            const double angle = 2.0 * std::numbers::pi * i / roundness;
            grown.push_back(
                {p.x_m + margin_m * std::cos(angle), p.y_m + margin_m * std::sin(angle)});
        }
    }
    return convex(std::move(grown));
}

} // namespace geo
