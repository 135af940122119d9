// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/texture.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace chart {

namespace {

/// An even number from 0 to 1 that belongs to a lattice point (mixing of splitmix64).
double chanceOf(std::int64_t i, std::int64_t j, std::uint64_t which) {
    std::uint64_t z = static_cast<std::uint64_t>(i) * 0x9e3779b97f4a7c15ULL +
                      static_cast<std::uint64_t>(j) * 0xc2b2ae3d27d4eb4fULL + which;
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
    z ^= z >> 31U;
    return static_cast<double>(z >> 11U) * 0x1.0p-53;
}

} // namespace

void strew(const ViewFrame& view, const geo::Box& box, double gap,
           const std::function<void(geo::WaterPoint, QPointF, double)>& draw) {
    const double step_m = gap / view.pixelsPerMetre();
    const geo::Box sight = view.box().grownBy(step_m);
    const auto from = [step_m](double a, double b) {
        return static_cast<std::int64_t>(std::floor(std::max(a, b) / step_m));
    };
    const auto to = [step_m](double a, double b) {
        return static_cast<std::int64_t>(std::ceil(std::min(a, b) / step_m));
    };
    for (auto j = from(box.south_m, sight.south_m); j <= to(box.north_m, sight.north_m); ++j) {
        for (auto i = from(box.west_m, sight.west_m); i <= to(box.east_m, sight.east_m); ++i) {
            const double shift = j % 2 == 0 ? 0.0 : 0.5;
            const geo::WaterPoint p{(static_cast<double>(i) + shift + 0.5 * chanceOf(i, j, 1)) *
                                        step_m,
                                    (static_cast<double>(j) + 0.5 * chanceOf(i, j, 2)) * step_m};
            draw(p, view.toScreen(p), chanceOf(i, j, 3));
        }
    }
}

} // namespace chart
