// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/shore_line.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace surface::solver {

std::vector<ShorePull> shorePullsOf(const geo::Outline& outline, const ActiveCells& cells,
                                    const grid::GridFrame& frame) {
    std::map<std::size_t, ShorePull> byCell;
    for (const geo::ShoreSegment& segment : outline.segments()) {
        const double length_m = geo::distance_m(segment.a, segment.b);
        const int steps = std::max(
            1, static_cast<int>(std::ceil(shorePointsPerCell * length_m / frame.cell_m())));
        for (int k = 0; k < steps; ++k) {
            const double t = (k + 0.5) / steps;
            const geo::WaterPoint p{segment.a.x_m + t * (segment.b.x_m - segment.a.x_m),
                                    segment.a.y_m + t * (segment.b.y_m - segment.a.y_m)};
            const grid::Cell cell = frame.cellOf(p);
            const std::optional<Footprint> at = footprintOf(cells, frame, p);
            if (!frame.holds(cell) || !at) {
                continue;
            }
            const std::size_t place =
                cells.place(cell.col + ActiveCells::padding, cell.row + ActiveCells::padding);
            if (cells.isActive(place)) {
                ShorePull& pull = byCell[place];
                pull.place = place;
                pull.footprints.push_back(*at);
                pull.middle.x_m += p.x_m;
                pull.middle.y_m += p.y_m;
            }
        }
    }
    std::vector<ShorePull> pulls;
    pulls.reserve(byCell.size());
    for (auto& [place, pull] : byCell) {
        const auto count = static_cast<double>(pull.footprints.size());
        pull.middle = {pull.middle.x_m / count, pull.middle.y_m / count};
        pulls.push_back(std::move(pull));
    }
    return pulls;
}

} // namespace surface::solver
