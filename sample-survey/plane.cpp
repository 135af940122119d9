// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/plane.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sample {

namespace {

constexpr double originLon_deg = 3.1;
constexpr double originLat_deg = 55.2;
constexpr double equatorRadius_m = 6378137.0;
constexpr double eccentricitySquared = 0.00669437999014;
constexpr double rad = std::numbers::pi / 180.0;

double acrossRadius_m(double lat) {
    const double s = std::sin(lat);
    return equatorRadius_m / std::sqrt(1.0 - eccentricitySquared * s * s);
}

double meridianRadius_m(double lat) {
    const double s = std::sin(lat);
    return equatorRadius_m * (1.0 - eccentricitySquared) /
           std::pow(1.0 - eccentricitySquared * s * s, 1.5);
}

/// Length of the short meridian arc between two latitudes.
double arc_m(double from, double to) {
    return meridianRadius_m(0.5 * (from + to)) * (to - from);
}

Point catmullRom(Point p0, Point p1, Point p2, Point p3, double t) {
    const double t1 = std::sqrt(std::max(distance(p0, p1), 1e-6));
    const double t2 = t1 + std::sqrt(std::max(distance(p1, p2), 1e-6));
    const double t3 = t2 + std::sqrt(std::max(distance(p2, p3), 1e-6));
    const double at = t1 + t * (t2 - t1);
    const auto mix = [at](Point a, Point b, double from, double to) {
        return ((to - at) / (to - from)) * a + ((at - from) / (to - from)) * b;
    };
    const Point a1 = mix(p0, p1, 0.0, t1);
    const Point a2 = mix(p1, p2, t1, t2);
    const Point a3 = mix(p2, p3, t2, t3);
    return mix(mix(a1, a2, 0.0, t2), mix(a2, a3, t1, t3), t1, t2);
}

} // namespace

double distance(Point a, Point b) {
    return std::sqrt((a.x_m - b.x_m) * (a.x_m - b.x_m) + (a.y_m - b.y_m) * (a.y_m - b.y_m));
}

double lengthOf(const Line& line) {
    double sum = 0.0;
    for (std::size_t i = 1; i < line.size(); ++i) {
        sum += distance(line[i - 1], line[i]);
    }
    return sum;
}

double distanceToLine(Point p, const Line& line) {
    double best = distance(p, line.front());
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Point along = line[i] - line[i - 1];
        const Point to = p - line[i - 1];
        const double square = std::max(along.x_m * along.x_m + along.y_m * along.y_m, 1e-12);
        const double t = std::clamp((to.x_m * along.x_m + to.y_m * along.y_m) / square, 0.0, 1.0);
        best = std::min(best, distance(p, line[i - 1] + t * along));
    }
    return best;
}

Line evenly(const Line& line, double step_m) {
    const double total = lengthOf(line);
    const int steps = std::max(1, static_cast<int>(std::lround(total / step_m)));
    Line out{line.front()};
    std::size_t i = 1;
    double before = 0.0;
    for (int k = 1; k < steps; ++k) {
        const double wanted = total * k / steps;
        while (before + distance(line[i - 1], line[i]) < wanted && i + 1 < line.size()) {
            before += distance(line[i - 1], line[i]);
            ++i;
        }
        const double t = (wanted - before) / std::max(distance(line[i - 1], line[i]), 1e-9);
        out.push_back(line[i - 1] + t * (line[i] - line[i - 1]));
    }
    out.push_back(line.back());
    return out;
}

Line smoothThrough(const Line& knots, double step_m) {
    constexpr int pieces = 40;
    const std::size_t last = knots.size() - 1;
    Line fine{knots.front()};
    for (std::size_t i = 0; i < last; ++i) {
        const Point before = i == 0 ? 2.0 * knots[0] - knots[1] : knots[i - 1];
        const Point after = i + 1 == last ? 2.0 * knots[last] - knots[last - 1] : knots[i + 2];
        for (int k = 1; k <= pieces; ++k) {
            fine.push_back(
                catmullRom(before, knots[i], knots[i + 1], after, static_cast<double>(k) / pieces));
        }
    }
    return evenly(fine, step_m);
}

LonLat toLonLat(Point p) {
    const double lat0 = originLat_deg * rad;
    double lat = lat0 + p.y_m / meridianRadius_m(lat0);
    double lon = 0.0;
    for (int i = 0; i < 6; ++i) {
        lon = p.x_m / (acrossRadius_m(lat) * std::cos(lat));
        const double bow_m = 0.5 * acrossRadius_m(lat) * std::sin(lat) * std::cos(lat) * lon * lon;
        lat = lat0 + (p.y_m - bow_m) / meridianRadius_m(0.5 * (lat0 + lat));
    }
    return {originLon_deg + lon / rad, lat / rad};
}

Point toPoint(LonLat position) {
    const double lat = position.lat_deg * rad;
    const double lon = (position.lon_deg - originLon_deg) * rad;
    const double bow_m = 0.5 * acrossRadius_m(lat) * std::sin(lat) * std::cos(lat) * lon * lon;
    return {acrossRadius_m(lat) * std::cos(lat) * lon, arc_m(originLat_deg * rad, lat) + bow_m};
}

} // namespace sample
