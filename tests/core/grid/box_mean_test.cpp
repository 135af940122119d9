// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/box_mean.h"

#include <cmath>
#include <random>
#include <string>

#include <gtest/gtest.h>

namespace {

using grid::Cell;
using grid::Grid;
using grid::GridFrame;

TEST(BoxMean, AgreesWithThePlainSumOverTheNumbersInTheBox) {
    const unsigned seed = 99;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937 random(seed);
    std::uniform_real_distribution<float> value(-5.0F, 20.0F);
    std::bernoulli_distribution isLand(0.3);
    const GridFrame f(0.0, 17.0, 1.0, 23, 17);
    Grid<float> values(f, NAN);
    for (float& v : values.values()) {
        v = isLand(random) ? NAN : value(random);
    }
    for (const int radius : {1, 3, 40}) {
        const Grid<float> mean = grid::boxMean(values, radius);
        for (std::size_t i = 0; i < values.size(); ++i) {
            const Cell c = f.cellAt(i);
            double sum = 0.0;
            double count = 0.0;
            for (std::size_t k = 0; k < values.size(); ++k) {
                const Cell n = f.cellAt(k);
                if (std::abs(n.col - c.col) <= radius && std::abs(n.row - c.row) <= radius &&
                    !std::isnan(values[k])) {
                    sum += static_cast<double>(values[k]);
                    count += 1.0;
                }
            }
            if (std::isnan(values[i])) {
                EXPECT_TRUE(std::isnan(mean[i])) << "cell " << i;
            } else {
                EXPECT_NEAR(mean[i], sum / count, 1e-4) << "cell " << i << ", radius " << radius;
            }
        }
    }
}

TEST(BoxMean, LeavesTheGridAsItIsForNoRadius) {
    const Grid<float> values(GridFrame(0.0, 3.0, 1.0, 3, 3), 4.5F);
    EXPECT_EQ(grid::boxMean(values, 0), values);
}

} // namespace
