// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/trust_drawing.h"

#include "core/geo/nearest_points.h"
#include "core/surface/solver/parallel_for.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

namespace {

constexpr double inferredWithin_m = 0.5;
constexpr double inferredShare = 0.1;

TrustName nameFor(double toSounding_m, double cell_m, double halfWidth_m, double depth_m) {
    if (toSounding_m <= cell_m) {
        return TrustName::sounded;
    }
    return halfWidth_m <= std::max(inferredWithin_m, inferredShare * depth_m) ? TrustName::inferred
                                                                              : TrustName::guess;
}

} // namespace

base::Result<TrustGrid> drawTrust(const Ground& ground, const Bottom& bottom,
                                  std::span<const soundings::KeptSounding> soundings,
                                  std::span<const std::size_t> positions, const ErrorGrowth& growth,
                                  int threads, base::Progress& progress) {
    const Field uneven = unevennessOf(ground.cells, bottom.depth_m, threads);
    std::vector<geo::WaterPoint> points;
    points.reserve(positions.size());
    for (const std::size_t i : positions) {
        points.push_back({soundings[i].x_m, soundings[i].y_m});
    }
    const geo::NearestPoints nearest(points);
    const grid::GridFrame& frame = ground.frame();
    grid::Grid<float> halfWidths_m(frame, NAN);
    grid::Grid<TrustName> names(frame, TrustName::guess);
    const ActiveCells& cells = ground.cells;
    parallelFor(threads, cells.runs().size(), 100, [&](std::size_t first, std::size_t last) {
        for (std::size_t k = first; k < last && !progress.stopAsked(); ++k) {
            const ActiveCells::Run& run = cells.runs()[k];
            for (int col = run.begin; col < run.end; ++col) {
                const std::size_t p = cells.place(col, run.row);
                const grid::Cell cell{col - ActiveCells::padding, run.row - ActiveCells::padding};
                const double toSounding_m = nearest.nearest(frame.centre(cell))->distance_m;
                const double halfWidth_m = growth.halfWidth_m(
                    {knownAt_m(toSounding_m, ground.shore_m[p]), uneven[p], bottom.lay.slope[p]});
                halfWidths_m[cell] = static_cast<float>(halfWidth_m);
                names[cell] = nameFor(toSounding_m, frame.cell_m(), halfWidth_m, bottom.depth_m[p]);
            }
        }
    });
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    return TrustGrid(std::move(halfWidths_m), std::move(names));
}

base::Result<TrustGrid> noTrust(const Ground& ground) {
    grid::Grid<float> halfWidths_m(ground.frame(), NAN);
    for (std::size_t i = 0; i < halfWidths_m.size(); ++i) {
        if (ground.mask.isActive(i)) {
            halfWidths_m[i] = INFINITY;
        }
    }
    return TrustGrid(std::move(halfWidths_m),
                     grid::Grid<TrustName>(ground.frame(), TrustName::guess));
}

} // namespace surface::solver
