// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/drop_off_lines.h"

#include <algorithm>
#include <cmath>

namespace structure {

using geo::WaterPoint;

namespace {

enum class Border { top, foot, neither };

/// A short straight piece of the outline and what it borders on.
struct Stretch {
    WaterPoint a;
    WaterPoint b;
    Border border = Border::neither;
};

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
    if (!down || !beyond) {
        return Border::neither;
    }
    const double across = down->east * outward.east + down->north * outward.north;
    return across < -least ? Border::top : across > least ? Border::foot : Border::neither;
}

std::vector<Stretch> stretchesOf(const geo::Ring& ring, const SlopeGrid& slope) {
    geo::Path closed = ring;
    closed.push_back(ring.front());
    const geo::Path line = geo::densified(closed, slope.frame().cell_m());
    std::vector<Stretch> out;
    for (std::size_t i = 1; i < line.size(); ++i) {
        out.push_back({line[i - 1], line[i], borderAt(slope, line[i - 1], line[i])});
    }
    return out;
}

/// Turns short interruptions of `wanted` into it.
void bridge(std::vector<Stretch>& stretches, Border wanted, std::size_t longest) {
    const std::size_t n = stretches.size();
    for (std::size_t i = 0; i < n; ++i) {
        if (stretches[i].border != wanted || stretches[(i + 1) % n].border == wanted) {
            continue;
        }
        for (std::size_t gap = 1; gap <= longest && gap + 1 < n; ++gap) {
            if (stretches[(i + gap + 1) % n].border == wanted) {
                for (std::size_t k = 1; k <= gap; ++k) {
                    stretches[(i + k) % n].border = wanted;
                }
                break;
            }
        }
    }
}

/// The unbroken runs of `wanted` as lines.
std::vector<geo::Path> runsOf(const std::vector<Stretch>& stretches, Border wanted) {
    const std::size_t n = stretches.size();
    std::vector<geo::Path> out;
    std::size_t start = 0;
    while (start < n && stretches[start].border == wanted) {
        ++start;
    }
    if (start == n) {
        geo::Path whole{stretches.front().a};
        for (const Stretch& s : stretches) {
            whole.push_back(s.b);
        }
        return {whole};
    }
    for (std::size_t k = 0; k < n; ++k) {
        const Stretch& s = stretches[(start + k) % n];
        const Stretch& before = stretches[(start + k + n - 1) % n];
        if (s.border != wanted) {
            continue;
        }
        if (k == 0 || before.border != wanted) {
            out.push_back({s.a});
        }
        out.back().push_back(s.b);
    }
    return out;
}

/// How far along the slope from p the bottom bends most, within `reach_m`; bends downward where
/// `sign` is 1, to the level where it is -1.
double bestShift_m(const SlopeGrid& slope, WaterPoint p, Step down, double reach_m, double sign) {
    const double step_m = 0.5 * slope.frame().cell_m();
    const double arm_m = slope.frame().cell_m();
    double best = -INFINITY;
    double shift_m = 0.0;
    for (double t = -reach_m; t <= reach_m + 1e-9; t += step_m) {
        const double bend = sign * (slopeAt(slope, moved(p, down, t + arm_m)) -
                                    slopeAt(slope, moved(p, down, t - arm_m)));
        // Of equal bends the nearest.
        if (bend > best + 1e-6 || (bend > best - 1e-6 && std::fabs(t) < std::fabs(shift_m))) {
            best = bend;
            shift_m = t;
        }
    }
    return shift_m;
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

} // namespace

void addEdgeLines(Zone& dropOff, const SlopeGrid& slope, units::Length reach, units::Length least) {
    constexpr std::size_t longestGap = 4; // stretches, each a cell long at most
    const auto collect = [&](const geo::Ring& ring) {
        std::vector<Stretch> stretches = stretchesOf(ring, slope);
        for (const Border wanted : {Border::top, Border::foot}) {
            bridge(stretches, wanted, longestGap);
            for (const geo::Path& run : runsOf(stretches, wanted)) {
                if (geo::lengthOf(run) >= least) {
                    (wanted == Border::top ? dropOff.topEdges : dropOff.feet)
                        .push_back(fitted(run, slope, reach.inMetres(),
                                          wanted == Border::top ? 1.0 : -1.0));
                }
            }
        }
    };
    for (const geo::Piece& piece : dropOff.pieces) {
        collect(piece.outer);
        for (const geo::Ring& island : piece.islands) {
            collect(island);
        }
    }
    for (const geo::Path& line : dropOff.topEdges) {
        dropOff.edgeLength += geo::lengthOf(line);
    }
}

} // namespace structure
