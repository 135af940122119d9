// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace sample {

/// A point of the invented water's own flat plane: metres east and north of its origin.
struct Point {
    double x_m = 0.0;
    double y_m = 0.0;
};

using Line = std::vector<Point>;

inline Point operator+(Point a, Point b) {
    return {a.x_m + b.x_m, a.y_m + b.y_m};
}
inline Point operator-(Point a, Point b) {
    return {a.x_m - b.x_m, a.y_m - b.y_m};
}
inline Point operator*(double k, Point a) {
    return {k * a.x_m, k * a.y_m};
}

double distance(Point a, Point b);
double lengthOf(const Line& line);
/// Shortest distance from a point to an open line.
double distanceToLine(Point p, const Line& line);
/// Points at equal steps of about `step_m` along an open line; both ends are kept.
Line evenly(const Line& line, double step_m);
/// Smooth open curve (centripetal Catmull-Rom) through the given points, at steps of about
/// `step_m`.
Line smoothThrough(const Line& knots, double step_m);

struct LonLat {
    double lon_deg = 0.0;
    double lat_deg = 0.0;
};

/// Plane to WGS 84 at 55.2 N, 3.1 E: the transverse Mercator series cut after its second term, with
/// the ellipsoid's radii of curvature. Within 2 km of the origin lengths agree with the ellipsoid
/// to better than one part in a million, which is plenty for a place that does not exist.
LonLat toLonLat(Point p);
Point toPoint(LonLat position);

} // namespace sample
