// SPDX-License-Identifier: GPL-3.0-or-later
// Soundings as what the surface is held to, one by one and made one where they lie close.
#include "core/surface/solver/ground.h"
#include "tests/core/surface/tracks.h"

#include <cmath>
#include <numeric>
#include <random>

#include <gtest/gtest.h>

namespace {

using soundings::KeptSounding;
using surface::solver::Sample;

struct Water {
    explicit Water(unsigned seed) {
        std::mt19937 random(seed);
        std::uniform_real_distribution<double> any(-1.0, 1.0);
        for (int pass = 0; pass < 4; ++pass) {
            geo::WaterPoint p{-110.0, 60.0 * any(random)}; // begins on land
            for (int k = 0; k < 150; ++k) {
                p = {p.x_m + 0.8 + 0.8 * any(random), p.y_m + 0.6 * any(random)};
                sounded.push_back(tracks::at(p, 5.0 + 0.02 * p.x_m + 0.1 * any(random)));
                sounded.back().pass = pass;
            }
        }
        positions.resize(sounded.size());
        std::iota(positions.begin(), positions.end(), 0U);
    }
    const support::MadeUpWater water = support::madeUpWater(
        {{support::rectangle(-100.0, -100.0, 100.0, 100.0), {}}},
        [](geo::WaterPoint) { return 5.0; }, 8.0);
    const surface::solver::Ground ground =
        surface::solver::groundOf(water.outline, units::Length::metres(8.0), 1, base::Progress())
            .value();
    std::vector<KeptSounding> sounded;
    std::vector<std::size_t> positions;
};

TEST(Samples, MadeOneWithinAQuarterOfACellAreTheMeansOfThoseThatFollowOneAnother) {
    for (const unsigned seed : {1U, 2U, 3U}) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        const Water lake(seed);
        const auto all = surface::solver::samplesOf(lake.ground, lake.sounded, lake.positions);
        const auto merged =
            surface::solver::mergedSamplesOf(lake.ground, lake.sounded, lake.positions);
        EXPECT_LT(2 * merged.size(), all.size());
        EXPECT_LT(all.size(), lake.sounded.size()); // each pass begins on land
        std::size_t next = 0;
        for (const Sample& one : merged) {
            const auto count = static_cast<std::size_t>(one.soundings);
            ASSERT_LE(next + count, all.size());
            double x_m = 0.0;
            double y_m = 0.0;
            double depth_m = 0.0;
            for (std::size_t i = next; i < next + count; ++i) {
                EXPECT_LE(geo::distance_m(all[next].point, all[i].point), 2.0);
                x_m += all[i].point.x_m / one.soundings;
                y_m += all[i].point.y_m / one.soundings;
                depth_m += all[i].depth_m / one.soundings;
            }
            EXPECT_NEAR(one.point.x_m, x_m, 1e-9);
            EXPECT_NEAR(one.point.y_m, y_m, 1e-9);
            EXPECT_NEAR(one.depth_m, depth_m, 1e-9);
            const auto at =
                surface::solver::footprintOf(lake.ground.cells, lake.ground.frame(), one.point);
            ASSERT_TRUE(at.has_value());
            EXPECT_EQ(one.at.places, at->places);
            next += count;
        }
        EXPECT_EQ(next, all.size());
    }
}

TEST(Samples, OfTwoPassesAreNeverMadeOne) {
    const Water lake(4);
    std::vector<KeptSounding> two{tracks::at({0.0, 0.0}, 4.0), tracks::at({0.1, 0.0}, 6.0)};
    const std::vector<std::size_t> both{0, 1};
    two[1].pass = two[0].pass;
    EXPECT_EQ(surface::solver::mergedSamplesOf(lake.ground, two, both).size(), 1U);
    two[1].pass = two[0].pass + 1;
    EXPECT_EQ(surface::solver::mergedSamplesOf(lake.ground, two, both).size(), 2U);
}

TEST(Samples, HaveOneVoiceForABlockSharedByTheirSoundings) {
    std::vector<Sample> samples(3);
    samples[0].point = {5.0, 5.0};
    samples[0].soundings = 3.0;
    samples[1].point = {20.0, 20.0};
    samples[2].point = {30.0, 5.0};
    samples[2].soundings = 7.0;
    const std::vector<double> weights = surface::solver::thinningWeights(samples, 25.0);
    EXPECT_DOUBLE_EQ(weights[0], 0.75);
    EXPECT_DOUBLE_EQ(weights[1], 0.25);
    EXPECT_DOUBLE_EQ(weights[2], 1.0);
}

} // namespace
