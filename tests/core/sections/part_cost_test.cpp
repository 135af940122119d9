// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/part_cost.h"

#include <array>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

namespace {

using sections::PartCost;
using sections::PartFigures;
using sections::PartSums;

/// A part of even depth, or half of it deeper by 2 m.
PartSums part(double area_m2, double border_m, double depth_m, bool isMixed = false) {
    const double deep_m = isMixed ? depth_m + 2.0 : depth_m;
    PartSums s;
    s.area_m2 = area_m2;
    s.depth_m3 = 0.5 * area_m2 * (depth_m + deep_m);
    s.depthSquares_m4 = 0.5 * area_m2 * (depth_m * depth_m + deep_m * deep_m);
    s.border_m = border_m;
    return s;
}

TEST(PartCost, IsOneForTheBorderOfACircleOfTheWantedSizeAndEvenDepth) {
    PartCost cost;
    cost.wanted_m2 = 10000.0;
    cost.depth = 3.0;
    const double round_m = std::sqrt(4.0 * std::numbers::pi * 10000.0);
    EXPECT_NEAR(cost.of(part(10000.0, round_m, 4.0)), 1.0, 1e-12);
    EXPECT_NEAR(cost.of(part(10000.0, 2.0 * round_m, 4.0)), 2.0, 1e-12);
}

TEST(PartCost, WeighsTheScatterOfDepthAgainstThatOfStraightPieces) {
    PartCost cost;
    cost.wanted_m2 = 10000.0;
    cost.depthVariance_m2 = 0.5;
    const double shape = cost.of(part(10000.0, 400.0, 4.0, true));
    cost.depth = 2.0;
    // Half at 4 m, half at 6 m: variance 1, twice the straight pieces', at weight 2.
    EXPECT_NEAR(cost.of(part(10000.0, 400.0, 4.0, true)) - shape, 4.0, 1e-9);
}

TEST(PartSums, TakingAwayUndoesAdding) {
    PartSums sums = part(5000.0, 0.0, 3.0, true);
    const double before = sums.depthScatter_m4();
    sums.add(part(1000.0, 0.0, 9.0));
    EXPECT_GT(sums.depthScatter_m4(), before);
    sums.add(part(1000.0, 0.0, 9.0), -1.0);
    EXPECT_NEAR(sums.depthScatter_m4(), before, 1e-6);
}

TEST(PartFigures, ExplainAllOfTheDepthWhereEveryPartIsEven) {
    const std::array parts{part(100.0, 40.0, 2.0), part(300.0, 80.0, 6.0)};
    const PartFigures figures = sections::figuresOf(parts, 0.0);
    EXPECT_NEAR(figures.explained, 1.0, 1e-12);
    const std::array mixed{part(100.0, 40.0, 2.0, true), part(100.0, 40.0, 2.0, true)};
    EXPECT_NEAR(sections::figuresOf(mixed, 0.0).explained, 0.0, 1e-12);
}

TEST(PartFigures, LeaveCrumbsOutOfTheMedianShape) {
    const std::array parts{part(1.0, 4.0, 2.0), part(1.0, 4.0, 2.0), part(10000.0, 1000.0, 2.0)};
    EXPECT_NEAR(sections::figuresOf(parts, 100.0).compactness,
                4.0 * std::numbers::pi * 10000.0 / 1e6, 1e-9);
}

} // namespace
