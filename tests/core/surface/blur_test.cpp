// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/blur.h"
#include "tests/support/made_up_water.h"

#include <algorithm>
#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace {

using surface::solver::ActiveCells;
using surface::solver::Field;

/// Sums over 2 reach + 1 places along each row and then each column, one by one.
Field summedPlainly(const ActiveCells& cells, const Field& field, int reach) {
    const auto along = [&](const Field& from, int right, int down) {
        Field to(from.size(), 0.0);
        for (int row = 0; row < cells.rows(); ++row) {
            for (int col = 0; col < cells.cols(); ++col) {
                for (int k = -reach; k <= reach; ++k) {
                    const int c = col + k * right;
                    const int r = row + k * down;
                    if (c >= 0 && c < cells.cols() && r >= 0 && r < cells.rows()) {
                        to[cells.place(col, row)] += from[cells.place(c, r)];
                    }
                }
            }
        }
        return to;
    };
    return along(along(field, 1, 0), 0, 1);
}

TEST(Blur, IsThreeRunningMeansEachWayOfActiveCellsAlone) {
    // 19 columns and rows: no multiple of how many lines are summed together
    const support::MadeUpWater water = support::madeUpWater(
        {{support::circle({0.0, 0.0}, 75.0), {support::circle({20.0, 0.0}, 18.0)}}},
        [](geo::WaterPoint) { return 5.0; }, 10.0);
    const ActiveCells cells = ActiveCells::of(water.mask);
    std::mt19937 random(3);
    std::uniform_real_distribution<double> any(-1.0, 1.0);
    Field field(cells.places(), 0.0);
    Field ones = field;
    cells.forEach([&](std::size_t p, std::size_t) {
        field[p] = any(random);
        ones[p] = 1.0;
    });
    for (const int reach : {1, 2, 7}) {
        // the standard deviation of a running mean of 2 reach + 1 cells, three times each way
        const double deviation_m = 10.0 * std::sqrt((std::pow(2.0 * reach + 1.0, 2) - 1.0) / 4.0);
        Field sums = field;
        Field weights = ones;
        for (int pass = 0; pass < 3; ++pass) {
            sums = summedPlainly(cells, sums, reach);
            weights = summedPlainly(cells, weights, reach);
        }
        const Field blurred = surface::solver::Blur(cells, deviation_m).of(field);
        for (std::size_t p = 0; p < cells.places(); ++p) {
            ASSERT_NEAR(blurred[p], cells.isActive(p) ? sums[p] / weights[p] : 0.0, 1e-9) << reach;
        }
    }
}

} // namespace
