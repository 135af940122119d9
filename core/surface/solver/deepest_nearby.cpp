// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/deepest_nearby.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

namespace {

constexpr double nearby_m = 500.0;
constexpr double blocksInReach = 10.0;
constexpr double share = 1.15;
constexpr double least_m = 0.5;

} // namespace

Field deepestNearby_m(const Ground& ground, std::span<const soundings::KeptSounding> soundings,
                      std::span<const std::size_t> positions, const base::Progress& progress) {
    const geo::Box box = ground.frame().box();
    const double longest_m = std::max(box.width_m(), box.height_m());
    const double block_m = std::max(nearby_m / blocksInReach, longest_m / 400.0);
    const int reach = static_cast<int>(std::ceil(nearby_m / block_m));
    const int cols = static_cast<int>(box.width_m() / block_m) + 1;
    const int rows = static_cast<int>(box.height_m() / block_m) + 1;
    const auto blockOf = [&](geo::WaterPoint p) {
        const int col = std::clamp(static_cast<int>((p.x_m - box.west_m) / block_m), 0, cols - 1);
        const int row = std::clamp(static_cast<int>((box.north_m - p.y_m) / block_m), 0, rows - 1);
        return std::pair(col, row);
    };
    const auto numberOf = [cols](int col, int row) {
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(cols) +
               static_cast<std::size_t>(col);
    };
    std::vector<double> own(numberOf(0, rows), -1.0);
    double deepest_m = 0.0;
    for (const std::size_t i : positions) {
        const auto [col, row] = blockOf({soundings[i].x_m, soundings[i].y_m});
        own[numberOf(col, row)] = std::max(own[numberOf(col, row)], soundings[i].depth_m);
        deepest_m = std::max(deepest_m, soundings[i].depth_m);
    }
    std::vector<double> around(own.size(), -1.0);
    for (int row = 0; row < rows && !progress.stopAsked(); ++row) {
        for (int col = 0; col < cols; ++col) {
            double& most = around[numberOf(col, row)];
            for (int r = std::max(0, row - reach); r <= std::min(rows - 1, row + reach); ++r) {
                for (int c = std::max(0, col - reach); c <= std::min(cols - 1, col + reach); ++c) {
                    most = std::max(most, own[numberOf(c, r)]);
                }
            }
            most = most < 0.0 ? deepest_m : most;
        }
    }
    Field limit_m(ground.cells.places(), 0.0);
    const int pad = ActiveCells::padding;
    for (const ActiveCells::Run& run : ground.cells.runs()) {
        for (int c = run.begin; c < run.end; ++c) {
            const auto [col, row] = blockOf(ground.frame().centre({c - pad, run.row - pad}));
            limit_m[ground.cells.place(c, run.row)] =
                std::max(least_m, share * around[numberOf(col, row)]);
        }
    }
    return limit_m;
}

} // namespace surface::solver
