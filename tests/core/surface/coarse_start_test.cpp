// SPDX-License-Identifier: GPL-3.0-or-later
// A drawing that starts from the same water drawn on larger cells.
#include "core/surface/solver/coarse_start.h"
#include "tests/core/surface/tracks.h"

#include <cmath>
#include <numeric>

#include <gtest/gtest.h>

namespace {

using surface::solver::ActiveCells;
using surface::solver::Field;
using surface::solver::Ground;

Ground groundOf(const support::MadeUpWater& water, double cell_m) {
    return surface::solver::groundOf(water.outline, units::Length::metres(cell_m), 1,
                                     base::Progress())
        .value();
}

/// a + b x + c y at the middle of each cell.
Field planeOn(const Ground& ground) {
    Field plane(ground.cells.places(), 0.0);
    for (const ActiveCells::Run& run : ground.cells.runs()) {
        for (int col = run.begin; col < run.end; ++col) {
            const geo::WaterPoint p =
                ground.frame().centre({col - ActiveCells::padding, run.row - ActiveCells::padding});
            plane[ground.cells.place(col, run.row)] = 5.0 + 0.02 * p.x_m - 0.03 * p.y_m;
        }
    }
    return plane;
}

TEST(CoarseStart, APlaneOnLargeCellsIsThatPlaneOnSmallOnes) {
    const support::MadeUpWater water = support::plane(120.0, 3.0, 8.0, 5.0);
    const Ground coarse = groundOf(water, 20.0);
    const Ground fine = groundOf(water, 4.0);
    const Field wanted = planeOn(fine);
    const Field elsewhere(fine.cells.places(), -1.0);
    const Field laid = surface::solver::laidOn(fine, coarse, planeOn(coarse), elsewhere);
    for (const ActiveCells::Run& run : fine.cells.runs()) {
        for (int col = run.begin; col < run.end; ++col) {
            const geo::WaterPoint p =
                fine.frame().centre({col - ActiveCells::padding, run.row - ActiveCells::padding});
            const std::size_t at = fine.cells.place(col, run.row);
            EXPECT_NE(laid[at], -1.0);
            if (std::abs(p.x_m) < 100.0 && std::abs(p.y_m) < 100.0) {
                EXPECT_NEAR(laid[at], wanted[at], 1e-9);
            }
        }
    }
}

TEST(CoarseStart, WhereThereIsNoLargeCellTheOtherDepthStays) {
    const Ground west = groundOf(support::madeUpWater(
                                     {{support::rectangle(-100.0, -50.0, 0.0, 50.0), {}}},
                                     [](geo::WaterPoint) { return 5.0; }, 10.0),
                                 10.0);
    const Ground both = groundOf(support::madeUpWater(
                                     {{support::rectangle(-100.0, -50.0, 100.0, 50.0), {}}},
                                     [](geo::WaterPoint) { return 5.0; }, 10.0),
                                 4.0);
    const Field laid = surface::solver::laidOn(both, west, Field(west.cells.places(), 3.0),
                                               Field(both.cells.places(), 7.0));
    const auto at = [&](geo::WaterPoint p) {
        const grid::Cell cell = both.frame().cellOf(p);
        return laid[both.cells.place(cell.col + ActiveCells::padding,
                                     cell.row + ActiveCells::padding)];
    };
    EXPECT_NEAR(at({-50.0, 0.0}), 3.0, 1e-9);
    EXPECT_EQ(at({50.0, 0.0}), 7.0);
}

// What follows is as near to the truth as what three passes on small cells alone come to.
TEST(CoarseStart, SparesTheFirstPassAndCostsNoDepth) {
    const support::MadeUpWater water =
        support::gaussianHump(150.0, 6.0, 2.0, 30.0, {20.0, 10.0}, 5.0);
    const auto sounded = tracks::lines(water, 25.0, 4.0, 0.05);
    std::vector<std::size_t> positions(sounded.size());
    std::iota(positions.begin(), positions.end(), 0U);
    const Ground fine = groundOf(water, 5.0);
    const base::Progress silent;
    const auto trendGround =
        surface::solver::TrendGround::of(water.outline, units::Length::metres(10.0), 1, silent)
            .value();
    surface::solver::BottomSettings settings;
    settings.threads = 1;
    const Field trend = trendGround.trendFrom(sounded, positions, silent);
    const Field fineTrend = trendGround.onto(fine, trend);
    const auto samples = surface::solver::mergedSamplesOf(fine, sounded, positions);
    const auto drawn = [&](std::optional<surface::solver::Bottom> start) {
        surface::solver::BottomDrawer drawer(
            fine.cells, surface::solver::shorePullsOf(water.outline, fine.cells, fine.frame()), 1);
        return drawer.draw(fineTrend, samples, settings, std::move(start), silent);
    };
    const auto whole = drawn(std::nullopt);
    auto start =
        surface::solver::coarseStart(water.outline, units::Length::metres(12.0), fine, trendGround,
                                     trend, fineTrend, sounded, positions, settings, silent);
    ASSERT_TRUE(start.has_value());
    const auto begun = drawn(std::move(*start));
    EXPECT_LT(begun.iterations, whole.iterations);
    EXPECT_EQ(begun.soundings, sounded.size());
    const auto missOf_m = [&](const surface::solver::Bottom& bottom) {
        double squares = 0.0;
        for (const ActiveCells::Run& run : fine.cells.runs()) {
            for (int col = run.begin; col < run.end; ++col) {
                const geo::WaterPoint p = fine.frame().centre(
                    {col - ActiveCells::padding, run.row - ActiveCells::padding});
                const double off_m =
                    bottom.depth_m[fine.cells.place(col, run.row)] - water.bottom(p);
                squares += off_m * off_m;
            }
        }
        return std::sqrt(squares / static_cast<double>(fine.cells.unknowns()));
    };
    EXPECT_LE(missOf_m(begun), 1.02 * missOf_m(whole));
}

} // namespace
