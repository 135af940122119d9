// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample-survey/plane.h"

#include <vector>

namespace sample {

/// The outline of the invented water: one outer ring and two islands, all closed (last point =
/// first point). The outer ring runs counter-clockwise and the islands clockwise, as RFC 7946 wants
/// them.
class Shore {
public:
    Shore();

    const Line& outer() const { return outer_; }
    const std::vector<Line>& islands() const { return islands_; }
    const Line& dam() const { return dam_; }

    bool holds(Point p) const;
    double area_m2() const;
    double length_m() const;
    /// Distance to the nearest shore, without a sign.
    double distance_m(Point p) const;
    /// A distance to the shore that is smooth everywhere inside: sqrt(2 / integral of w ds / r^3)
    /// along the shore. Beside a straight shore with w = 1 it is the distance itself. A weight w
    /// below 1 makes the bank steeper there.
    double softDistance_m(Point p) const;

private:
    struct Piece {
        Point from;
        Point to;
        double weight = 1.0;
    };

    void addRing(const Line& ring);

    Line outer_;
    Line dam_;
    std::vector<Line> islands_;
    std::vector<Piece> pieces_;
};

} // namespace sample
