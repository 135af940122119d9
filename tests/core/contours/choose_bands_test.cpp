// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/contours/choose_bands.h"
#include "tests/support/made_up_water.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace contours;
using units::Depth;

std::vector<double> edgesOf(const Bands& bands, CountsIn unit = CountsIn::metres) {
    std::vector<double> edges;
    for (const Depth edge : bands.edges()) {
        const double in = unit == CountsIn::feet ? edge.inFeet() : edge.inMetres();
        edges.push_back(std::round(in * 1e6) / 1e6);
    }
    return edges;
}

Bands chosen(double deepest_m) {
    return chooseBands(Depth::metres(deepest_m), CountsIn::metres);
}

TEST(ChooseBands, APondAndADeepLakeEachGetRoundStepsOfTheirOwn) {
    EXPECT_EQ(edgesOf(chosen(1.3)), (std::vector{0.25, 0.5, 0.75, 1.0, 1.25, 1.5}));
    EXPECT_EQ(edgesOf(chosen(7.2)), (std::vector{1.5, 3.0, 4.5, 6.0, 7.5}));
    EXPECT_EQ(edgesOf(chosen(18.0)), (std::vector{1.5, 3.0, 4.5, 6.0, 7.5, 9.0, 12.0, 15.0}));
    EXPECT_EQ(edgesOf(chosen(80.0)), (std::vector{1.5, 3.0, 4.5, 6.0, 7.5, 9.0, 25.0, 50.0}));
    EXPECT_EQ(chosen(1.3).limit(), Depth::metres(1.5)) << "all of it is worth fishing";
    EXPECT_EQ(chosen(80.0).limit(), Depth::metres(9.0));
}

TEST(ChooseBands, WhoCountsInFeetGetsRoundFeet) {
    const auto feet = [](double deepest_ft) {
        return edgesOf(chooseBands(Depth::feet(deepest_ft), CountsIn::feet), CountsIn::feet);
    };
    EXPECT_EQ(feet(4.3), (std::vector{1.0, 2.0, 3.0, 4.0, 5.0}));
    EXPECT_EQ(feet(60.0), (std::vector{5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0}));
}

/// Whatever the depth: four bands or more in the fishable part, all of equal step, no more than a
/// key can hold, and no water of the deepest band that begins below the bottom.
TEST(ChooseBands, HoldsForEveryDepth) {
    for (const CountsIn unit : {CountsIn::metres, CountsIn::feet}) {
        for (double deepest_m = 0.4; deepest_m < 400.0; deepest_m *= 1.013) {
            const Bands bands = chooseBands(Depth::metres(deepest_m), unit);
            const std::vector<Depth>& edges = bands.edges();
            const auto within =
                std::ranges::count_if(edges, [&](Depth e) { return e <= bands.limit(); });
            EXPECT_GE(within, 4) << deepest_m;
            EXPECT_LE(edges.size(), 11U) << deepest_m;
            for (std::ptrdiff_t k = 1; k < within; ++k) {
                EXPECT_NEAR(edges[static_cast<std::size_t>(k)].inMetres(),
                            edges[0].inMetres() * static_cast<double>(k + 1), 1e-9)
                    << deepest_m;
            }
            const double usual_m = usualLimit(unit).inMetres();
            EXPECT_GE(bands.limit().inMetres(), std::min(deepest_m, usual_m) - 1e-9);
            EXPECT_LE(bands.limit().inMetres(), usual_m + 1e-9);
            EXPECT_LT(edges.size() > 1 ? edges[edges.size() - 2].inMetres() : 0.0, deepest_m);
        }
    }
}

TEST(ChooseBands, ALimitOfTheUsersIsKeptAndDividedRound) {
    const Bands bands = chooseBands(Depth::metres(14.0), CountsIn::metres, Depth::metres(6.4));
    EXPECT_EQ(bands.limit(), Depth::metres(6.4));
    EXPECT_EQ(edgesOf(bands), (std::vector{1.5, 3.0, 4.5, 6.4, 9.0, 12.0}));
    // Far deeper than the water: steps suit the water all the same.
    const Bands shallow = chooseBands(Depth::metres(1.3), CountsIn::metres, Depth::metres(9.0));
    EXPECT_EQ(shallow.limit(), Depth::metres(9.0));
    EXPECT_LE(shallow.edges().front(), Depth::metres(0.25));
}

TEST(ChooseBands, WithoutADepthThereAreBandsAllTheSame) {
    for (const double nothing_m : {0.0, -3.0, std::nan(""), HUGE_VAL}) {
        EXPECT_EQ(chosen(nothing_m).limit(), Depth::metres(9.0));
    }
}

TEST(DepthToChooseBy, LeavesOutTheDeepestThousandth) {
    auto water = support::madeUpWater(
        {{support::rectangle(-100.0, -100.0, 100.0, 100.0), {}}},
        [](geo::WaterPoint) { return 2.0; }, 2.0);
    water.depth.raw_m()[water.mask.frame().index(water.mask.frame().cellOf({1.0, 1.0}))] = 40.0F;
    EXPECT_EQ(depthToChooseBy(water.depth, water.mask), Depth::metres(2.0));
}

TEST(ContourLevels, AreRoundInTheUnitAndHoldTheEdges) {
    const auto levels = contourLevels(chosen(1.3), Depth::metres(1.3), CountsIn::metres);
    EXPECT_GE(levels.size(), 12U);
    EXPECT_LE(levels.size(), 20U);
    const auto feet = contourLevels(chooseBands(Depth::feet(60.0), CountsIn::feet),
                                    Depth::feet(60.0), CountsIn::feet);
    for (const Depth level : feet) {
        EXPECT_NEAR(level.inFeet(), std::round(level.inFeet()), 1e-9);
    }
    EXPECT_TRUE(contourLevels(Bands(), Depth(), CountsIn::metres).empty());
}

} // namespace
