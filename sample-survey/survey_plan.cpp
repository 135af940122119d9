// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/survey_plan.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numbers>

namespace sample {

namespace {

using Wanted = std::function<bool(Point)>;

bool thin(Point p) {
    return std::any_of(thinAreas().begin(), thinAreas().end(), [p](const ThinArea& area) {
        return distance(p, area.middle) < area.radius_m;
    });
}

/// A line along a closed ring, `off_m` to the left of its direction, which is the water's side.
Line besideRing(const Line& ring, double off_m, const Waterway& waterway, const Wanted& wanted) {
    Line out;
    for (std::size_t i = 0; i + 1 < ring.size(); i += 2) {
        const Point before = ring[i == 0 ? ring.size() - 2 : i - 1];
        const Point chord = ring[i + 1] - before;
        const double length = std::hypot(chord.x_m, chord.y_m);
        const Point p = ring[i] + (off_m / length) * Point{-chord.y_m, chord.x_m};
        if (waterway.open(p) && wanted(p) && distanceToLine(p, ring) > 0.85 * off_m) {
            out.push_back(p);
        }
    }
    return out;
}

/// Parallel lines across the wanted water: bearing, spacing, and where the first one lies. Pieces
/// below 70 m are left out.
std::vector<Line> parallels(double bearing_deg, double spacing_m, double first_m,
                            const Waterway& waterway, const Wanted& wanted) {
    const double bearing = bearing_deg * std::numbers::pi / 180.0;
    const Point along{std::sin(bearing), std::cos(bearing)};
    const Point across{along.y_m, -along.x_m};
    std::vector<Line> lines;
    for (double off_m = first_m - 1600.0; off_m < 1600.0; off_m += spacing_m) {
        Line piece;
        for (double at_m = -1700.0; at_m <= 1700.0; at_m += 5.0) {
            const Point p = off_m * across + at_m * along;
            if (waterway.open(p) && wanted(p)) {
                piece.push_back(p);
            } else {
                if (piece.size() > 14) {
                    lines.push_back({piece.front(), piece.back()});
                }
                piece.clear();
            }
        }
    }
    return lines;
}

void goTo(Line& way, Point next, const Waterway& waterway) {
    const Line leg = waterway.way(way.back(), next);
    way.insert(way.end(), leg.begin() + 1, leg.end());
}

void follow(Line& way, const Line& line, const Waterway& waterway) {
    for (const Point& p : line) {
        goTo(way, p, waterway);
    }
}

/// Sails every line once, always taking the one whose nearer end is next.
void sailAll(Line& way, std::vector<Line> lines, const Waterway& waterway) {
    while (!lines.empty()) {
        std::size_t best = 0;
        bool turned = false;
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i < lines.size(); ++i) {
            for (const bool back : {false, true}) {
                const Point entry = back ? lines[i].back() : lines[i].front();
                const double away = distance(way.back(), entry) +
                                    (waterway.straight(way.back(), entry) ? 0.0 : 350.0);
                if (away < least) {
                    least = away;
                    best = i;
                    turned = back;
                }
            }
        }
        Line line = lines[best];
        lines.erase(lines.begin() + static_cast<std::ptrdiff_t>(best));
        if (turned) {
            std::reverse(line.begin(), line.end());
        }
        follow(way, line, waterway);
    }
}

} // namespace

const std::vector<ThinArea>& thinAreas() {
    static const std::vector<ThinArea> areas{{{-905, 10}, 165.0}, {{700, -320}, 165.0}};
    return areas;
}

Point launchPlace() {
    return {668, 385};
}

Line surveyWay(const Bottom& bottom, const Waterway& waterway, int day) {
    const auto inMain = [&bottom](Point p) { return !bottom.inSallowArm(p); };
    const auto inArm = [&bottom](Point p) { return bottom.inSallowArm(p); };
    const auto inMainNotThin = [&bottom](Point p) { return !bottom.inSallowArm(p) && !thin(p); };
    Line way{launchPlace()};
    if (day == 1) {
        Line lap = besideRing(bottom.shore().outer(), 24.0, waterway, inMain);
        const auto nearest = std::min_element(lap.begin(), lap.end(), [](Point a, Point b) {
            return distance(a, launchPlace()) < distance(b, launchPlace());
        });
        std::rotate(lap.begin(), nearest, lap.end());
        follow(way, lap, waterway);
        sailAll(way, parallels(8.0, 165.0, 40.0, waterway, inMain), waterway);
    } else if (day == 2) {
        sailAll(way, parallels(99.0, 92.0, 10.0, waterway, inMainNotThin), waterway);
        follow(way, besideRing(bottom.shore().islands()[0], 22.0, waterway, inMain), waterway);
        follow(way, besideRing(bottom.shore().islands()[1], 20.0, waterway, inMain), waterway);
        follow(way, besideRing(bottom.shore().outer(), 22.0, waterway, inArm), waterway);
        sailAll(way, parallels(118.0, 70.0, 25.0, waterway, inArm), waterway);
    } else {
        sailAll(way, parallels(52.0, 98.0, 30.0, waterway, inMainNotThin), waterway);
        sailAll(way, parallels(142.0, 260.0, 90.0, waterway, inMainNotThin), waterway);
        sailAll(way, parallels(20.0, 90.0, 20.0, waterway, inArm), waterway);
        sailAll(way, {{{-25, 118}, {215, 232}}, {{62, 262}, {128, 88}}, {{486, 172}, {540, -70}}},
                waterway);
    }
    goTo(way, launchPlace(), waterway);
    return way;
}

} // namespace sample
