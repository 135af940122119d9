// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/touched_cells.h"

#include <algorithm>
#include <cmath>

namespace grid {

namespace {

/// Marks every cell that the segment passes through, by walking from cell to cell.
void markAlong(Grid<std::uint8_t>& active, const geo::ShoreSegment& segment) {
    const GridFrame& f = active.frame();
    const double length_m = geo::distance_m(segment.a, segment.b);
    const int steps = std::max(1, static_cast<int>(std::ceil(length_m / (0.1 * f.cell_m()))));
    for (int i = 0; i <= steps; ++i) {
        const double t = static_cast<double>(i) / steps;
        const Cell c = f.cellOf({segment.a.x_m + t * (segment.b.x_m - segment.a.x_m),
                                 segment.a.y_m + t * (segment.b.y_m - segment.a.y_m)});
        if (f.holds(c)) {
            active[c] = 1;
        }
    }
}

} // namespace

Grid<std::uint8_t> touchedCells(const geo::Outline& outline, const GridFrame& frame) {
    Grid<std::uint8_t> active(frame, 0);
    for (int row = 0; row < frame.rows(); ++row) {
        const std::vector<double> xs = outline.crossingsAt(frame.centre({0, row}).y_m);
        for (std::size_t k = 0; k + 1 < xs.size(); k += 2) {
            const int first = std::max(
                0, static_cast<int>(std::ceil((xs[k] - frame.west_m()) / frame.cell_m() - 0.5)));
            for (int col = first; col < frame.cols() && frame.centre({col, row}).x_m < xs[k + 1];
                 ++col) {
                active[Cell{col, row}] = 1;
            }
        }
    }
    for (const geo::ShoreSegment& segment : outline.segments()) {
        markAlong(active, segment);
    }
    return active;
}

} // namespace grid
