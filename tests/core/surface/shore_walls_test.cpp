// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/draw_water.h"
#include "core/surface/solver/shore_walls.h"
#include "tests/core/surface/tracks.h"

#include <algorithm>
#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace {

using surface::solver::Sample;
using surface::solver::ShorePull;

ShorePull shoreAt(geo::WaterPoint middle) {
    ShorePull pull;
    pull.middle = middle;
    return pull;
}

Sample sampleAt(geo::WaterPoint p, double depth_m) {
    return {{}, p, depth_m};
}

TEST(ShoreWalls, AreTheSteepestThatASoundingWithinThirtyMetresAsksForWhereverItLies) {
    for (const unsigned seed : {1U, 2U, 3U}) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        std::mt19937 random(seed);
        std::uniform_real_distribution<double> place_m(-100.0, 100.0);
        std::uniform_real_distribution<double> depth_m(0.0, 12.0);
        std::vector<ShorePull> shore;
        std::vector<Sample> samples;
        for (int k = 0; k < 60; ++k) {
            shore.push_back(shoreAt({place_m(random), place_m(random)}));
            samples.push_back(sampleAt({place_m(random), place_m(random)}, depth_m(random)));
        }
        const std::vector<double> slopes = surface::solver::wallSlopesOf(shore, samples);
        ASSERT_EQ(slopes.size(), shore.size());
        for (std::size_t i = 0; i < shore.size(); ++i) {
            double steepest = 0.0;
            for (const Sample& sample : samples) {
                const double off_m = std::hypot(sample.point.x_m - shore[i].middle.x_m,
                                                sample.point.y_m - shore[i].middle.y_m);
                if (off_m <= 30.0) {
                    steepest = std::max(steepest, sample.depth_m / std::max(off_m, 5.0));
                }
            }
            EXPECT_DOUBLE_EQ(slopes[i], steepest);
        }
    }
}

TEST(ShoreWalls, ABankIsItsSlopeAndAWallIsMore) {
    using surface::solver::shoreSlopeOf;
    EXPECT_DOUBLE_EQ(shoreSlopeOf(0.0, 0.0), 0.02);
    EXPECT_DOUBLE_EQ(shoreSlopeOf(0.3, 0.0), 0.3);
    EXPECT_DOUBLE_EQ(shoreSlopeOf(0.1, 0.6), 1.2);            // 0.6 (1 + 1)
    EXPECT_NEAR(shoreSlopeOf(0.1, 0.06), 0.1, 1e-12);         // the bank is the steeper
    EXPECT_NEAR(shoreSlopeOf(0.0, 0.06), 0.06 * 1.01, 1e-12); // hardly more than its slope
    EXPECT_DOUBLE_EQ(shoreSlopeOf(0.0, 1.2), 6.0);            // 1.2 (1 + 4)
}

// Six metres of water right up to a quay, sounded from 6 m off it.
TEST(ShoreWalls, AtAQuayTheWaterStaysDeep) {
    const support::MadeUpWater basin = support::madeUpWater(
        {{support::rectangle(-80.0, -60.0, 80.0, 60.0), {}}}, [](geo::WaterPoint) { return 6.0; },
        4.0);
    std::vector<soundings::KeptSounding> soundings;
    for (const soundings::KeptSounding& s : tracks::lines(basin, 12.0, 2.0)) {
        if (std::abs(s.x_m) < 74.0 && std::abs(s.y_m) < 54.0) {
            soundings.push_back(s);
        }
    }
    surface::DrawSettings settings;
    settings.cell = units::Length::metres(4.0);
    settings.withTrust = false;
    settings.threads = 1;
    base::Progress quiet;
    const auto drawn = surface::drawWater(basin.outline, soundings, settings, quiet);
    ASSERT_TRUE(drawn.has_value());
    for (const double y_m : {-30.0, 2.0, 30.0}) {
        EXPECT_GT(drawn->depth.at(geo::WaterPoint{-77.5, y_m}).value().inMetres(), 4.5) << y_m;
    }
}

} // namespace
