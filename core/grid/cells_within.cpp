// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/cells_within.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace grid {

namespace {

/// Where the rings cross the middle line of each row.
using Crossings = std::map<int, std::vector<double>>;

void addRing(const geo::Ring& ring, const GridFrame& frame, Crossings& crossings) {
    for (std::size_t k = 0; k < ring.size(); ++k) {
        const geo::WaterPoint a = ring[k];
        const geo::WaterPoint b = ring[(k + 1) % ring.size()];
        const double high_m = std::max(a.y_m, b.y_m);
        const double low_m = std::min(a.y_m, b.y_m);
        // Rows count from the north; the upper end of a line belongs to it, the lower does not.
        const auto rowOf = [&](double y_m) {
            return (frame.north_m() - y_m) / frame.cell_m() - 0.5;
        };
        const double first = std::max(std::ceil(rowOf(high_m)), 0.0);
        const double last = std::min(std::ceil(rowOf(low_m)) - 1.0, frame.rows() - 1.0);
        for (int row = static_cast<int>(first); row <= static_cast<int>(last); ++row) {
            const double y_m = frame.centre({0, row}).y_m;
            crossings[row].push_back(a.x_m + (y_m - a.y_m) / (b.y_m - a.y_m) * (b.x_m - a.x_m));
        }
    }
}

} // namespace

std::vector<std::size_t> cellsWithin(std::span<const geo::Piece> pieces, const GridFrame& frame) {
    Crossings crossings;
    for (const geo::Piece& piece : pieces) {
        addRing(piece.outer, frame, crossings);
        for (const geo::Ring& island : piece.islands) {
            addRing(island, frame, crossings);
        }
    }
    std::vector<std::size_t> cells;
    for (auto& [row, xs_m] : crossings) {
        std::ranges::sort(xs_m);
        for (std::size_t k = 1; k < xs_m.size(); k += 2) {
            const auto colOf = [&](double x_m) {
                return std::clamp(std::ceil((x_m - frame.west_m()) / frame.cell_m() - 0.5), 0.0,
                                  static_cast<double>(frame.cols()));
            };
            const int end = static_cast<int>(colOf(xs_m[k]));
            for (int col = static_cast<int>(colOf(xs_m[k - 1])); col < end; ++col) {
                cells.push_back(frame.index({col, row}));
            }
        }
    }
    return cells;
}

} // namespace grid
