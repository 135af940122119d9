// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/line_candidates.h"

#include "core/grid/water_way.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace surface::solver {

namespace {

constexpr int directions = 12;
constexpr std::size_t mostBins = 60;

geo::WaterPoint between(geo::WaterPoint a, geo::WaterPoint b, double share) {
    return {a.x_m + share * (b.x_m - a.x_m), a.y_m + share * (b.y_m - a.y_m)};
}

/// Cuts one straight line across the whole box into the stretches that lie in the water.
void addChords(const geo::Outline& outline, const grid::DepthGrid& depth, geo::WaterPoint a,
               geo::WaterPoint b, double offShore_m, double shortest_m,
               std::vector<Chord>& chords) {
    const double length_m = geo::distance_m(a, b);
    const double step_m = std::clamp(offShore_m, 2.0, 10.0);
    const int steps = static_cast<int>(length_m / step_m);
    int first = -1;
    for (int k = 0; k <= steps + 1; ++k) {
        const geo::WaterPoint p = between(a, b, k * step_m / length_m);
        const bool isIn = k <= steps && depth.has(depth.frame().cellOf(p)) && outline.contains(p) &&
                          outline.distanceToShore_m(p) >= offShore_m;
        const bool goesOn =
            isIn && (first < 0 ||
                     grid::isStraightWay(depth, between(a, b, (k - 1) * step_m / length_m), p));
        if (isIn && first < 0) {
            first = k;
        } else if (!goesOn && first >= 0) {
            const Chord chord{between(a, b, first * step_m / length_m),
                              between(a, b, (k - 1) * step_m / length_m)};
            if (geo::distance_m(chord.start, chord.end) >= shortest_m &&
                !outline.isCrossedBy(chord.start, chord.end)) {
                chords.push_back(chord);
            }
            first = isIn ? k : -1;
        }
    }
}

double wayAt_m(const grid::Grid<float>& wayTo_m, geo::WaterPoint p) {
    const grid::Cell cell = wayTo_m.frame().cellOf(p);
    constexpr double never_m = std::numeric_limits<double>::infinity();
    return wayTo_m.frame().holds(cell) ? static_cast<double>(wayTo_m[cell]) : never_m;
}

} // namespace

std::vector<Chord> chordsOf(const geo::Outline& outline, const grid::DepthGrid& depth,
                            double apart_m, double offShore_m, double shortest_m) {
    std::vector<Chord> chords;
    const geo::Box& box = outline.box();
    const geo::WaterPoint middle{0.5 * (box.west_m + box.east_m),
                                 0.5 * (box.south_m + box.north_m)};
    const double half_m = 0.5 * std::hypot(box.width_m(), box.height_m());
    for (int k = 0; k < directions; ++k) {
        const double angle = std::numbers::pi * k / directions;
        const double x = std::cos(angle);
        const double y = std::sin(angle);
        for (double off_m = -half_m + 0.5 * apart_m; off_m < half_m; off_m += apart_m) {
            const geo::WaterPoint foot{middle.x_m - off_m * y, middle.y_m + off_m * x};
            addChords(outline, depth, {foot.x_m - half_m * x, foot.y_m - half_m * y},
                      {foot.x_m + half_m * x, foot.y_m + half_m * y}, offShore_m, shortest_m,
                      chords);
        }
    }
    return chords;
}

BestStretch bestStretchOf(const Chord& chord, const GainMap& map, const grid::Grid<float>& wayTo_m,
                          double shortest_m, double longest_m) {
    const double length_m = geo::distance_m(chord.start, chord.end);
    const std::size_t bins =
        std::clamp<std::size_t>(static_cast<std::size_t>(2.0 * length_m / shortest_m), 1, mostBins);
    const double bin_m = length_m / static_cast<double>(bins);
    const double east = (chord.end.x_m - chord.start.x_m) / length_m;
    const double north = (chord.end.y_m - chord.start.y_m) / length_m;
    std::vector<double> upTo(bins + 1, 0.0);
    for (const GainMap::Block& block : map.blocks()) {
        const double x_m = block.middle.x_m - chord.start.x_m;
        const double y_m = block.middle.y_m - chord.start.y_m;
        const double off_m = std::abs(x_m * north - y_m * east);
        const double along_m = x_m * east + y_m * north;
        if (off_m < block.known_m && along_m >= 0.0 && along_m < length_m) {
            const auto bin = std::min(bins - 1, static_cast<std::size_t>(along_m / bin_m));
            upTo[bin + 1] += map.gainOf_m3(block, off_m);
        }
    }
    for (std::size_t k = 0; k < bins; ++k) {
        upTo[k + 1] += upTo[k];
    }
    std::vector<double> way_m;
    for (std::size_t k = 0; k <= bins; ++k) {
        way_m.push_back(
            wayAt_m(wayTo_m, between(chord.start, chord.end,
                                     static_cast<double>(k) / static_cast<double>(bins))));
    }
    BestStretch best;
    for (std::size_t i = 0; i < bins; ++i) {
        for (std::size_t j = i + 1; j <= bins; ++j) {
            const double line_m = static_cast<double>(j - i) * bin_m;
            const double sailed_m = line_m + std::min(way_m[i], way_m[j]);
            const double gain_m3 = upTo[j] - upTo[i];
            const bool fits = line_m >= 0.99 * std::min(shortest_m, length_m) &&
                              line_m <= longest_m && std::isfinite(sailed_m);
            if (fits && gain_m3 / sailed_m > best.worth_m2) {
                best = {between(chord.start, chord.end,
                                static_cast<double>(i) / static_cast<double>(bins)),
                        between(chord.start, chord.end,
                                static_cast<double>(j) / static_cast<double>(bins)),
                        gain_m3, gain_m3 / sailed_m};
            }
        }
    }
    return best;
}

} // namespace surface::solver
