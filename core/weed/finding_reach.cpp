// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weed/finding_reach.h"

#include "core/grid/distance_field.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace weed {

using grid::Cell;

FindingReach::FindingReach(const grid::DepthGrid& depth, geo::WaterPoint place, double farthest_m)
    : place_(place), frame_(depth.frame()) {
    const int reach = static_cast<int>(std::ceil(farthest_m / frame_.cell_m()));
    const Cell at = frame_.cellOf(place);
    first_ = {std::max(0, at.col - reach), std::max(0, at.row - reach)};
    last_ = {std::min(frame_.cols() - 1, at.col + reach),
             std::min(frame_.rows() - 1, at.row + reach)};
    if (holdsLand(depth)) {
        march(depth, farthest_m);
    }
}

bool FindingReach::holdsLand(const grid::DepthGrid& depth) const {
    for (int row = first_.row; row <= last_.row; ++row) {
        for (int col = first_.col; col <= last_.col; ++col) {
            if (!depth.has(frame_.index({col, row}))) {
                return true;
            }
        }
    }
    return false;
}

void FindingReach::march(const grid::DepthGrid& depth, double farthest_m) {
    const double cell_m = frame_.cell_m();
    const grid::GridFrame window(frame_.west_m() + first_.col * cell_m,
                                 frame_.north_m() - first_.row * cell_m, cell_m,
                                 last_.col - first_.col + 1, last_.row - first_.row + 1);
    grid::Grid<std::uint8_t> isWater(window, 0);
    for (std::size_t i = 0; i < isWater.size(); ++i) {
        const Cell c = window.cellAt(i);
        isWater[i] = depth.has(frame_.index({c.col + first_.col, c.row + first_.row})) ? 1 : 0;
    }
    marched_m_ =
        grid::distanceOverWater_m(grid::Mask::from(isWater), std::array{window.cellOf(place_)},
                                  static_cast<float>(farthest_m));
}

double FindingReach::away_m(Cell c) const {
    const double straight_m = geo::distance_m(frame_.centre(c), place_);
    if (marched_m_.size() == 0) {
        return straight_m;
    }
    const Cell inWindow{c.col - first_.col, c.row - first_.row};
    return std::max(straight_m, static_cast<double>(marched_m_[inWindow]));
}

} // namespace weed
