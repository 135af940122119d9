// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/nearest_points.h"
#include "core/geo/path.h"

#include <gtest/gtest.h>

#include <random>

namespace {

using namespace geo;

TEST(Path, LengthAndAreaOfARectangle) {
    const Ring ring{{0, 0}, {30, 0}, {30, 20}, {0, 20}};
    EXPECT_DOUBLE_EQ(lengthAround(ring).inMetres(), 100.0);
    EXPECT_DOUBLE_EQ(signedArea_m2(ring), 600.0);
}

TEST(Path, SimplifyingStaysWithinTheTolerance) {
    const unsigned seed = 11;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> step(-3.0, 3.0);
    Path line{{0, 0}};
    for (int i = 1; i < 500; ++i) {
        line.push_back({line.back().x_m + 2.0, line.back().y_m + step(random)});
    }
    const Path simple = simplified(line, 2.0);
    EXPECT_LT(simple.size(), line.size());
    EXPECT_EQ(simple.front(), line.front());
    EXPECT_EQ(simple.back(), line.back());
    for (const WaterPoint p : line) {
        double nearest_m = 1e9;
        for (std::size_t i = 1; i < simple.size(); ++i) {
            nearest_m = std::min(nearest_m, distanceToSegment_m(p, simple[i - 1], simple[i]));
        }
        EXPECT_LE(nearest_m, 2.0) << "seed " << seed;
    }
}

TEST(Path, DensifyingLeavesNoLongStep) {
    const Path dense = densified({{0, 0}, {10, 0}, {10, 25}}, 4.0);
    for (std::size_t i = 1; i < dense.size(); ++i) {
        EXPECT_LE(distance_m(dense[i - 1], dense[i]), 4.0);
    }
    EXPECT_DOUBLE_EQ(lengthOf(dense).inMetres(), 35.0);
}

TEST(NearestPoints, AgreesWithLookingAtAll) {
    const unsigned seed = 3;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> anywhere(0.0, 1000.0);
    std::vector<WaterPoint> points;
    for (int i = 0; i < 500; ++i) {
        points.push_back({anywhere(random), anywhere(random)});
    }
    const NearestPoints index(points);
    for (int i = 0; i < 200; ++i) {
        const WaterPoint p{anywhere(random), anywhere(random)};
        std::size_t best = 0;
        std::size_t within = 0;
        for (std::size_t k = 0; k < points.size(); ++k) {
            best = distance_m(points[k], p) < distance_m(points[best], p) ? k : best;
            within += distance_m(points[k], p) <= 80.0 ? 1 : 0;
        }
        EXPECT_EQ(index.nearest(p)->index, best) << "seed " << seed;
        EXPECT_EQ(index.within(p, 80.0).size(), within);
        EXPECT_EQ(index.nearest(p, 5).front().index, best);
    }
    EXPECT_FALSE(NearestPoints({}).nearest({0, 0}));
}

} // namespace
