// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/cell_choice.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace surface::solver {

namespace {

constexpr std::array<double, 13> sizes_m{1.0, 1.5, 2.0,  2.5,  3.0,  4.0, 5.0,
                                         6.0, 8.0, 10.0, 12.0, 15.0, 20.0};
constexpr double mostCells = 1e6;
constexpr double mostTrialCells = 20000.0;
constexpr double mostTrustCells = 40000.0;

units::Length coarseCell(const geo::Outline& outline, units::Length cell, double most) {
    return units::Length::metres(
        std::max(2.0 * cell.inMetres(), std::sqrt(outline.area().inSquareMetres() / most)));
}

} // namespace

units::Length cellFor(const geo::Outline& outline, std::size_t soundings) {
    const double side_m = std::sqrt(outline.area().inSquareMetres());
    // a sounding stands for so much water
    const double gap_m =
        side_m / std::sqrt(static_cast<double>(std::max<std::size_t>(soundings, 1)));
    const double least_m = std::sqrt(outline.area().inSquareMetres() / mostCells);
    const double wanted_m =
        std::max({std::min(side_m / 360.0, std::max(gap_m, 2.0)), least_m, side_m / 1000.0});
    for (const double size_m : sizes_m) {
        if (size_m >= 0.9 * wanted_m && size_m >= least_m) {
            return units::Length::metres(size_m);
        }
    }
    return units::Length::metres(std::max(sizes_m.back(), std::ceil(least_m)));
}

units::Length trendCellFor(const geo::Outline& outline, units::Length cell) {
    const double side_m = std::sqrt(outline.area().inSquareMetres());
    return units::Length::metres(std::max(cell.inMetres(), std::clamp(side_m / 100.0, 1.0, 10.0)));
}

units::Length trialCellFor(const geo::Outline& outline, units::Length cell) {
    return coarseCell(outline, cell, mostTrialCells);
}

units::Length trustCellFor(const geo::Outline& outline, units::Length cell) {
    return coarseCell(outline, cell, mostTrustCells);
}

} // namespace surface::solver
