// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/lay_parts.h"
#include "core/sections/lump_ground.h"
#include "core/sections/pair_cut.h"
#include "core/sections/recut_pairs.h"
#include "tests/support/made_up_water.h"

#include <algorithm>
#include <limits>
#include <numeric>

#include <gtest/gtest.h>

namespace {

using namespace sections;

WaterGraph graphFor(const support::MadeUpWater& water, int blockCells) {
    return graphOf(water.depth, water.mask, water.mask.active(), blockCells);
}

std::vector<std::int32_t> allNodes(const WaterGraph& graph) {
    std::vector<std::int32_t> nodes(graph.nodes.size());
    std::iota(nodes.begin(), nodes.end(), 0);
    return nodes;
}

TEST(WaterGraph, BordersOfASquareAreMeasuredWithinFivePercent) {
    const auto water = support::plane(200.0, 4.0, 4.0, 5.0);
    const WaterGraph graph = graphFor(water, 8);
    const std::vector<std::int32_t> one(graph.nodes.size(), 0);
    const PartSums whole = sumsOfParts(graph, one, 1).front();
    EXPECT_NEAR(whole.area_m2, 160000.0, 100.0);
    EXPECT_NEAR(whole.border_m, 1600.0, 0.06 * 1600.0);
}

TEST(LayParts, GivesPartsOfAllowedSizes) {
    const auto water = support::plane(400.0, 4.0, 4.0, 5.0);
    const WaterGraph graph = graphFor(water, 5);
    const PartCost cost{.wanted_m2 = 40000.0};
    const GraphParts parts = layParts(graph, cost);
    EXPECT_NEAR(static_cast<double>(parts.count), 16.0, 3.0);
    for (const PartSums& part : sumsOfParts(graph, parts.partOfNode, parts.count)) {
        EXPECT_GE(part.area_m2, 0.6 * cost.wanted_m2);
        EXPECT_LE(part.area_m2, 1.45 * cost.wanted_m2);
    }
}

TEST(LayParts, LeavesAPocketByItselfHoweverSmall) {
    const auto water = support::madeUpWater(
        {{support::rectangle(0.0, 0.0, 400.0, 200.0), {}},
         {support::rectangle(500.0, 0.0, 540.0, 40.0), {}}},
        [](geo::WaterPoint) { return 3.0; }, 5.0);
    const WaterGraph graph = graphFor(water, 4);
    const GraphParts parts = layParts(graph, {.wanted_m2 = 80000.0});
    const auto sums = sumsOfParts(graph, parts.partOfNode, parts.count);
    const auto smallest =
        std::min_element(sums.begin(), sums.end(), [](const PartSums& a, const PartSums& b) {
            return a.area_m2 < b.area_m2;
        });
    EXPECT_NEAR(smallest->area_m2, 1600.0, 10.0);
}

TEST(PairCutter, CutsAtTheNeck) {
    const auto water = support::twoBasins(200.0, 20.0, 4.0, 5.0);
    const WaterGraph graph = graphFor(water, 4);
    const PartCost cost{.wanted_m2 = 40000.0};
    PairCutter cutter(graph, cost);
    const auto cut = cutter.cheapest(allNodes(graph), std::numeric_limits<double>::infinity());
    ASSERT_TRUE(cut.has_value());
    EXPECT_NEAR(cut->first.area_m2, cut->second.area_m2, 1000.0);
    // The cut itself is counted on both sides; in the neck it is 20 m long.
    const double shore_m = 2.0 * 800.0 - 2.0 * 20.0 + 2.0 * 20.0;
    EXPECT_NEAR(cut->first.border_m + cut->second.border_m, shore_m + 40.0, 0.07 * shore_m);
}

TEST(PairCutter, RefusesPartsThatWouldBeTooSmallOrDear) {
    const auto water = support::plane(100.0, 4.0, 4.0, 5.0);
    const WaterGraph graph = graphFor(water, 4);
    const PartCost large{.wanted_m2 = 40000.0}; // as much as there is
    EXPECT_FALSE(PairCutter(graph, large).cheapest(allNodes(graph), 1e9).has_value());
    const PartCost half{.wanted_m2 = 20000.0};
    PairCutter cutter(graph, half);
    const auto cut = cutter.cheapest(allNodes(graph), 1e9);
    ASSERT_TRUE(cut.has_value());
    EXPECT_FALSE(cutter.cheapest(allNodes(graph), cut->cost).has_value());
}

TEST(RecutPairs, TurnsABorderThatRunsTheWrongWay) {
    // Shallow in the west, deep in the east; two parts, north and south, are cut anew between.
    const auto water = support::step(100.0, 2.0, 8.0, 10.0, 5.0);
    const WaterGraph graph = graphFor(water, 4);
    PartCost cost{.wanted_m2 = 40000.0};
    cost.depth = 1.0;
    std::vector<std::int32_t> part;
    for (const WaterNode& node : graph.nodes) {
        part.push_back(node.middle().y_m > 0.0 ? 0 : 1);
    }
    auto sums = sumsOfParts(graph, part, 2);
    const base::Progress silent;
    recutPairs(graph, part, sums, cost, silent);
    for (std::size_t n = 0; n < part.size(); ++n) {
        const double x_m = graph.nodes[n].middle().x_m;
        if (std::abs(x_m) > 20.0) {
            EXPECT_EQ(part[n], part[x_m < 0.0 ? 0 : part.size() - 1]) << x_m;
        }
    }
    const auto fresh = sumsOfParts(graph, part, 2);
    EXPECT_NEAR(fresh[0].area_m2, sums[0].area_m2, 1e-6);
    EXPECT_NEAR(fresh[0].border_m, sums[0].border_m, 1e-3);
}

} // namespace
