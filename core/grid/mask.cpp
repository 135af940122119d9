// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/mask.h"

#include "core/grid/touched_cells.h"

#include <algorithm>
#include <cmath>

namespace grid {

namespace {

constexpr int linesPerCell = 64;

/// Adds the part of every cell in `row` that lies between x = from and x = to, as a share of one
/// line of the cell.
void addStretch(Grid<float>& share, int row, double from_m, double to_m) {
    const GridFrame& f = share.frame();
    const double from =
        std::clamp((from_m - f.west_m()) / f.cell_m(), 0.0, static_cast<double>(f.cols()));
    const double to =
        std::clamp((to_m - f.west_m()) / f.cell_m(), 0.0, static_cast<double>(f.cols()));
    for (int col = static_cast<int>(from); col < f.cols() && col < to; ++col) {
        const double covered = std::min(to, col + 1.0) - std::max(from, static_cast<double>(col));
        share[Cell{col, row}] += static_cast<float>(std::max(covered, 0.0) / linesPerCell);
    }
}

Grid<float> sharesOf(const geo::Outline& outline, const GridFrame& frame) {
    Grid<float> share(frame, 0.0F);
    for (int row = 0; row < frame.rows(); ++row) {
        for (int line = 0; line < linesPerCell; ++line) {
            const double y_m =
                frame.north_m() - (row + (line + 0.5) / linesPerCell) * frame.cell_m();
            const std::vector<double> xs = outline.crossingsAt(y_m);
            for (std::size_t k = 0; k + 1 < xs.size(); k += 2) {
                addStretch(share, row, xs[k], xs[k + 1]);
            }
        }
    }
    return share;
}

} // namespace

Mask Mask::of(const geo::Outline& outline, const GridFrame& frame) {
    Mask mask;
    mask.share_ = sharesOf(outline, frame);
    mask.active_ = touchedCells(outline, frame);
    return mask;
}

Mask Mask::from(const Grid<std::uint8_t>& active) {
    Mask mask;
    mask.active_ = active;
    mask.share_ = Grid<float>(active.frame(), 0.0F);
    for (std::size_t i = 0; i < active.size(); ++i) {
        mask.share_[i] = active[i] != 0 ? 1.0F : 0.0F;
    }
    return mask;
}

std::optional<Cell> Mask::nearestActive(geo::WaterPoint place) const {
    const Cell here = frame().cellOf(place);
    if (isActive(here)) {
        return here;
    }
    std::optional<Cell> nearest;
    double least_m = HUGE_VAL;
    for (std::size_t i = 0; i < active_.size(); ++i) {
        if (!isActive(i)) {
            continue;
        }
        const Cell cell = frame().cellAt(i);
        const double away_m = geo::distance_m(place, frame().centre(cell));
        if (away_m < least_m) {
            least_m = away_m;
            nearest = cell;
        }
    }
    return nearest;
}

std::size_t Mask::activeCount() const {
    return static_cast<std::size_t>(std::count_if(active_.values().begin(), active_.values().end(),
                                                  [](std::uint8_t v) { return v != 0; }));
}

} // namespace grid
