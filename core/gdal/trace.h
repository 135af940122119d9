// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/outline.h"
#include "core/geo/path.h"

#include <span>
#include <vector>

namespace gdal {

/// A field given at the centres of square cells; row 0 in the north, not a number where there is no
/// data.
struct TraceField {
    double west_m = 0.0;  ///< West edge of the first column.
    double north_m = 0.0; ///< North edge of the first row.
    double cell_m = 1.0;
    int cols = 0;
    int rows = 0;
    std::span<const float> values; ///< cols * rows.
};

/// A line along which the field has one value.
struct TracedLine {
    double level = 0.0;
    geo::Path path;      ///< Of a closed line the first point is repeated at the end.
    bool closed = false; ///< False where it ends at the edge of the data.
};

/// Where the field lies from `from` up to `to`: outer rings counter-clockwise, islands clockwise.
struct TracedPolygon {
    double from = 0.0;
    double to = 0.0;
    std::vector<geo::Piece> pieces;
};

/// Lines at the levels (any order), straight between cell centres, by level and then in the order
/// of tracing. \return wrongUse where sizes do not fit.
[[nodiscard]] base::Result<std::vector<TracedLine>>
traceLines(const TraceField& field, std::span<const double> levels, base::Progress& progress);

/// Areas between one level and the next, for levels.size() - 1 bands in ascending order; what lies
/// outside the first and last level belongs to none. A band without area has no pieces.
[[nodiscard]] base::Result<std::vector<TracedPolygon>>
tracePolygons(const TraceField& field, std::span<const double> levels, base::Progress& progress);

} // namespace gdal
