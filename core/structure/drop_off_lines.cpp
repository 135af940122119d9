// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/drop_off_lines.h"

#include "core/structure/border_lines.h"

#include <algorithm>
#include <cmath>

namespace structure {

using geo::WaterPoint;

namespace {

enum class Border { top, foot, shoreTop, neither };

/// East and north parts of a direction.
struct Step {
    double east = 0.0;
    double north = 0.0;
};

WaterPoint moved(WaterPoint p, Step u, double by_m) {
    return {p.x_m + by_m * u.east, p.y_m + by_m * u.north};
}

/// The way down at p; nothing on land or level ground.
std::optional<Step> downhill(const SlopeGrid& slope, WaterPoint p) {
    const grid::Cell c = slope.frame().cellOf(p);
    if (!slope.percentAt(c) || !(slope.percent()[c] > 0.0F)) {
        return std::nullopt;
    }
    const double size = 0.01 * static_cast<double>(slope.percent()[c]);
    return Step{static_cast<double>(slope.deeperEastward()[c]) / size,
                static_cast<double>(slope.deeperNorthward()[c]) / size};
}

/// Slope at p, bilinear between the cells that have one.
double slopeAt(const SlopeGrid& slope, WaterPoint p) {
    const grid::GridFrame& f = slope.frame();
    const double u = (p.x_m - f.west_m()) / f.cell_m() - 0.5;
    const double v = (f.north_m() - p.y_m) / f.cell_m() - 0.5;
    const int col = static_cast<int>(std::floor(u));
    const int row = static_cast<int>(std::floor(v));
    double sum = 0.0;
    double weights = 0.0;
    for (const int dr : {0, 1}) {
        for (const int dc : {0, 1}) {
            if (const auto s = slope.percentAt({col + dc, row + dr})) {
                const double w = (1.0 - std::fabs(u - col - dc)) * (1.0 - std::fabs(v - row - dr));
                sum += w * *s;
                weights += w;
            }
        }
    }
    return weights > 0.0 ? sum / weights : 0.0;
}

Border borderAt(const SlopeGrid& slope, WaterPoint a, WaterPoint b) {
    constexpr double least = 0.5; // of the fall must go across the border: within 60 degrees
    const double length_m = geo::distance_m(a, b);
    const WaterPoint middle{0.5 * (a.x_m + b.x_m), 0.5 * (a.y_m + b.y_m)};
    if (!(length_m > 0.0)) {
        return Border::neither;
    }
    // The piece lies on the left of its rings, so outward is to the right.
    const Step outward{(b.y_m - a.y_m) / length_m, -(b.x_m - a.x_m) / length_m};
    const double cell_m = slope.frame().cell_m();
    const auto down = downhill(slope, moved(middle, outward, -0.6 * cell_m));
    const auto beyond = slope.percentAt(slope.frame().cellOf(moved(middle, outward, 1.5 * cell_m)));
    if (!down) {
        return Border::neither;
    }
    const double across = down->east * outward.east + down->north * outward.north;
    if (!beyond) {
        return across < -least ? Border::shoreTop : Border::neither;
    }
    return across < -least ? Border::top : across > least ? Border::foot : Border::neither;
}

/// How far along the slope from p the bottom bends most, within `reach_m`; bends downward where
/// `sign` is 1, to the level where it is -1. Slopes are compared over twice the reach, across the
/// whole bend; where the bend is as good over some way, its middle counts.
double bestShift_m(const SlopeGrid& slope, WaterPoint p, Step down, double reach_m, double sign) {
    constexpr double asGood = 0.98;
    const double step_m = 0.5 * slope.frame().cell_m();
    const int steps = static_cast<int>(reach_m / step_m);
    std::vector<double> bends;
    for (int k = -steps; k <= steps; ++k) {
        bends.push_back(sign * (slopeAt(slope, moved(p, down, k * step_m + reach_m)) -
                                slopeAt(slope, moved(p, down, k * step_m - reach_m))));
    }
    const double best = *std::max_element(bends.begin(), bends.end());
    if (!(best > 0.0)) {
        return 0.0;
    }
    double sum = 0.0;
    double count = 0.0;
    for (int k = -steps; k <= steps; ++k) {
        if (bends[static_cast<std::size_t>(k + steps)] >= asGood * best) {
            sum += k;
            count += 1.0;
        }
    }
    return step_m * sum / count;
}

geo::Path fitted(const geo::Path& line, const SlopeGrid& slope, double reach_m, double sign) {
    constexpr std::ptrdiff_t window = 4; // points to each side over which the shifts are averaged
    std::vector<std::optional<Step>> down;
    std::vector<double> shift_m;
    for (const WaterPoint p : line) {
        down.push_back(downhill(slope, p));
        shift_m.push_back(down.back() ? bestShift_m(slope, p, *down.back(), reach_m, sign) : 0.0);
    }
    geo::Path out;
    const auto n = static_cast<std::ptrdiff_t>(line.size());
    for (std::ptrdiff_t i = 0; i < n; ++i) {
        double sum_m = 0.0;
        const std::ptrdiff_t first = std::max<std::ptrdiff_t>(0, i - window);
        const std::ptrdiff_t last = std::min(n - 1, i + window);
        for (std::ptrdiff_t k = first; k <= last; ++k) {
            sum_m += shift_m[static_cast<std::size_t>(k)];
        }
        const auto at = static_cast<std::size_t>(i);
        out.push_back(
            down[at] ? moved(line[at], *down[at], sum_m / static_cast<double>(last - first + 1))
                     : line[at]);
    }
    return geo::simplified(out, 0.25 * slope.frame().cell_m());
}

/// The line without its ends: there the border of a zone turns the corner towards the shore and is
/// no edge any more. A closed line has no ends.
geo::Path withoutEnds(const geo::Path& line, double end_m) {
    if (line.front() == line.back() || geo::lengthOf(line).inMetres() < 6.0 * end_m) {
        return line;
    }
    std::size_t first = 0;
    std::size_t last = line.size() - 1;
    while (first + 1 < last && geo::distance_m(line[first], line.front()) < end_m) {
        ++first;
    }
    while (last > first + 1 && geo::distance_m(line[last], line.back()) < end_m) {
        --last;
    }
    return {line.begin() + static_cast<std::ptrdiff_t>(first),
            line.begin() + static_cast<std::ptrdiff_t>(last) + 1};
}

/// The line moved to its left, into the water.
geo::Path movedInward(const geo::Path& line, double by_m) {
    geo::Path out;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const WaterPoint a = line[i == 0 ? 0 : i - 1];
        const WaterPoint b = line[std::min(i + 1, line.size() - 1)];
        const double length_m = std::max(geo::distance_m(a, b), 1e-9);
        const Step inward{-(b.y_m - a.y_m) / length_m, (b.x_m - a.x_m) / length_m};
        out.push_back(moved(line[i], inward, by_m));
    }
    return out;
}

} // namespace

void addEdgeLines(Zone& dropOff, const SlopeGrid& slope, units::Length reach, units::Length least) {
    const double cell_m = slope.frame().cell_m();
    for (const Border wanted : {Border::top, Border::foot, Border::shoreTop}) {
        const std::vector<geo::Path> runs =
            linesAlongBorder(dropOff.pieces, cell_m, [&](WaterPoint a, WaterPoint b) {
                return borderAt(slope, a, b) == wanted;
            });
        for (const geo::Path& run : runs) {
            if (geo::lengthOf(run) < least) {
                continue;
            }
            if (wanted == Border::shoreTop) {
                dropOff.shoreTops.push_back(movedInward(run, 0.5 * cell_m));
            } else {
                (wanted == Border::top ? dropOff.topEdges : dropOff.feet)
                    .push_back(fitted(withoutEnds(run, 1.2 * cell_m), slope, reach.inMetres(),
                                      wanted == Border::top ? 1.0 : -1.0));
            }
        }
    }
    for (const std::vector<geo::Path>* lines : {&dropOff.topEdges, &dropOff.shoreTops}) {
        for (const geo::Path& line : *lines) {
            dropOff.edgeLength += geo::lengthOf(line);
        }
    }
}

} // namespace structure
