// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/gain_map.h"

#include "core/grid/distance_field.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

namespace {

/// About so many blocks a water of average shape is cut into.
constexpr double blocksWanted = 6000.0;

/// Distance from each cell to the nearest one that is sounded; infinite where none is.
grid::Grid<float> distanceToSounded_m(const DrawnWater& drawn) {
    grid::Grid<std::uint8_t> sounded(drawn.depth.frame(), 0);
    bool isAny = false;
    for (std::size_t i = 0; i < sounded.size(); ++i) {
        const bool is = drawn.depth.has(i) && drawn.trust.names()[i] == TrustName::sounded;
        sounded[i] = is ? 1 : 0;
        isAny = isAny || is;
    }
    return isAny ? grid::straightDistance_m(sounded)
                 : grid::Grid<float>(drawn.depth.frame(), INFINITY);
}

struct Sums {
    double cells = 0.0;
    double area_m2 = 0.0;
    double halfWidth_m = 0.0;
    double toSounded_m = 0.0;
};

} // namespace

double distanceToPiece_m(geo::WaterPoint p, geo::WaterPoint a, geo::WaterPoint b) {
    const double x_m = b.x_m - a.x_m;
    const double y_m = b.y_m - a.y_m;
    const double length2 = x_m * x_m + y_m * y_m;
    const double along = ((p.x_m - a.x_m) * x_m + (p.y_m - a.y_m) * y_m);
    const double t = length2 > 0.0 ? std::clamp(along / length2, 0.0, 1.0) : 0.0;
    return geo::distance_m(p, {a.x_m + t * x_m, a.y_m + t * y_m});
}

GainMap::GainMap(const DrawnWater& drawn, const geo::Outline& outline,
                 const grid::Grid<float>& worth) {
    const grid::GridFrame& fine = drawn.depth.frame();
    const double wanted_m = std::sqrt(outline.area().inSquareMetres() / blocksWanted);
    const int cells = std::max(1, static_cast<int>(std::lround(wanted_m / fine.cell_m())));
    const grid::GridFrame frame(fine.west_m(), fine.north_m(), cells * fine.cell_m(),
                                (fine.cols() + cells - 1) / cells,
                                (fine.rows() + cells - 1) / cells);
    const grid::Grid<float> toSounded_m = distanceToSounded_m(drawn);
    grid::Grid<Sums> sums(frame);
    double least_m = INFINITY;
    for (std::size_t i = 0; i < drawn.depth.size(); ++i) {
        const auto halfWidth_m = static_cast<double>(drawn.trust.halfWidths_m()[i]);
        if (!drawn.depth.has(i) || !std::isfinite(halfWidth_m)) {
            continue;
        }
        const grid::Cell cell = fine.cellAt(i);
        Sums& sum = sums[grid::Cell{cell.col / cells, cell.row / cells}];
        sum.cells += 1.0;
        sum.area_m2 += static_cast<double>(drawn.mask.share(i)) * fine.cellArea_m2() *
                       (worth.size() > 0 ? static_cast<double>(worth[i]) : 1.0);
        sum.halfWidth_m += halfWidth_m;
        sum.toSounded_m += std::min(static_cast<double>(toSounded_m[i]), 1e6);
        least_m = std::min(least_m, halfWidth_m);
    }
    sounded_m_ = std::isfinite(least_m) ? least_m : sounded_m_;
    grid::Grid<std::uint8_t> active(frame, 0);
    for (std::size_t i = 0; i < sums.size(); ++i) {
        const Sums& sum = sums[i];
        if (sum.cells > 0.0) {
            active[i] = 1;
            Block block{frame.centre(frame.cellAt(i)), sum.area_m2, sum.halfWidth_m / sum.cells,
                        sum.toSounded_m / sum.cells};
            block.known_m = std::max(
                1.0, std::min(block.known_m, outline.distanceToShore_m(block.middle) + 8.0));
            reach_m_ = std::max(reach_m_, block.known_m);
            blocks_.push_back(block);
        }
    }
    mask_ = grid::Mask::from(active);
}

double GainMap::gainOf_m3(const Block& block, double near_m) const {
    if (near_m >= block.known_m) {
        return 0.0;
    }
    return block.area_m2 * (block.halfWidth_m - std::min(sounded_m_, block.halfWidth_m)) *
           (1.0 - near_m / block.known_m);
}

double GainMap::gainOf_m3(geo::WaterPoint start, geo::WaterPoint end) const {
    double sum = 0.0;
    for (const Block& block : blocks_) {
        sum += gainOf_m3(block, distanceToPiece_m(block.middle, start, end));
    }
    return sum;
}

void GainMap::take(geo::WaterPoint start, geo::WaterPoint end) {
    for (Block& block : blocks_) {
        const double near_m = std::max(1.0, distanceToPiece_m(block.middle, start, end));
        if (near_m < block.known_m) {
            const double least_m = std::min(sounded_m_, block.halfWidth_m);
            block.halfWidth_m = least_m + (block.halfWidth_m - least_m) * near_m / block.known_m;
            block.known_m = near_m;
        }
    }
}

double GainMap::meanHalfWidth_m() const {
    double sum = 0.0;
    double area_m2 = 0.0;
    for (const Block& block : blocks_) {
        sum += block.halfWidth_m * block.area_m2;
        area_m2 += block.area_m2;
    }
    return area_m2 > 0.0 ? sum / area_m2 : 0.0;
}

} // namespace surface::solver
