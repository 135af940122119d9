// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/contours/trace_contours.h"

#include "core/gdal/trace.h"

#include <algorithm>
#include <cmath>

namespace contours {

using base::Result;

namespace {

/// Lines are simplified by less than this share of a cell: below what the grid itself can tell.
constexpr double toleranceShare = 0.2;
/// Shorter lines than this many cells are dents of the grid, not contours.
constexpr double leastCells = 3.0;

gdal::TraceField fieldOf(const grid::DepthGrid& depth) {
    const grid::GridFrame& f = depth.frame();
    return {f.west_m(), f.north_m(), f.cell_m(), f.cols(), f.rows(), depth.raw_m()};
}

bool isNumber(units::Depth level) {
    return std::isfinite(level.inMetres());
}

} // namespace

Result<std::vector<Contour>> traceContours(const grid::DepthGrid& depth, const grid::Mask& mask,
                                           std::span<const units::Depth> levels,
                                           base::Progress& progress) {
    if (depth.frame() != mask.frame()) {
        return base::fail(base::ErrorKind::wrongUse, "depths and water lie on different cells",
                          "contours", "draw the water anew");
    }
    if (!std::all_of(levels.begin(), levels.end(), isNumber)) {
        return base::fail(base::ErrorKind::wrongUse, "a contour's depth is no number", "contours",
                          "give depths in metres");
    }
    std::vector<double> levels_m;
    std::transform(levels.begin(), levels.end(), std::back_inserter(levels_m),
                   [](units::Depth d) { return d.inMetres(); });
    std::sort(levels_m.begin(), levels_m.end());
    auto lines = gdal::traceLines(fieldOf(depth), levels_m, progress);
    if (!lines) {
        return std::unexpected(lines.error());
    }
    const double cell_m = depth.frame().cell_m();
    std::vector<Contour> contours;
    for (gdal::TracedLine& line : *lines) {
        if (geo::lengthOf(line.path).inMetres() >= leastCells * cell_m) {
            contours.push_back({units::Depth::metres(line.level),
                                geo::simplified(line.path, toleranceShare * cell_m), line.closed});
        }
    }
    return contours;
}

} // namespace contours
