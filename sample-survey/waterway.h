// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample-survey/bottom.h"

#include <vector>

namespace sample {

/// Where a careful boat goes: cells of 10 m that keep off the bank and have water enough.
class Waterway {
public:
    Waterway(const Bottom& bottom, double keepOff_m, double leastDepth_m);

    bool open(Point p) const;
    /// Whether the straight line between two points stays in open cells.
    bool straight(Point a, Point b) const;
    /// A short way over water from a to b, both included: A* over the cells, then pulled tight.
    Line way(Point a, Point b) const;

private:
    int cellAt(Point p) const;
    Point middleOf(int cell) const;
    int nearestOpen(Point p) const;

    std::vector<char> open_;
};

} // namespace sample
