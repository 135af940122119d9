// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/nearest_points.h"
#include "core/geo/path.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace {

using namespace geo;

TEST(PathRules, LengthAreaAndWayRoundOfShapesKnownByHeart) {
    EXPECT_EQ(lengthOf({}).inMetres(), 0.0);
    EXPECT_EQ(lengthOf({{5, 5}}).inMetres(), 0.0);
    EXPECT_DOUBLE_EQ(lengthOf({{0, 0}, {3, 4}, {3, 10}}).inMetres(), 11.0);
    EXPECT_EQ(lengthAround({{5, 5}}).inMetres(), 0.0);
    EXPECT_DOUBLE_EQ(lengthAround({{0, 0}, {3, 4}}).inMetres(), 10.0);
    EXPECT_DOUBLE_EQ(lengthAround({{0, 0}, {3, 0}, {3, 4}}).inMetres(), 12.0);
    EXPECT_DOUBLE_EQ(signedArea_m2({{0, 0}, {3, 0}, {3, 4}}), 6.0);
    EXPECT_DOUBLE_EQ(signedArea_m2({{0, 0}, {3, 4}, {3, 0}}), -6.0);
    EXPECT_DOUBLE_EQ(signedArea_m2({{7e6, 7e6}, {7e6 + 3, 7e6}, {7e6 + 3, 7e6 + 4}}), 6.0);
    EXPECT_EQ(signedArea_m2({}), 0.0);
}

TEST(PathRules, TheNearestPointOfASegmentIsWithinItOrAnEnd) {
    const WaterPoint a{0, 0}, b{10, 0};
    EXPECT_DOUBLE_EQ(distanceToSegment_m({4, 3}, a, b), 3.0);
    EXPECT_DOUBLE_EQ(distanceToSegment_m({-3, 4}, a, b), 5.0);
    EXPECT_DOUBLE_EQ(distanceToSegment_m({13, -4}, a, b), 5.0);
    EXPECT_DOUBLE_EQ(distanceToSegment_m({3, 4}, a, a), 5.0);
    EXPECT_NEAR(distanceToSegment_m({0, 10}, {0, 0}, {10, 10}), std::sqrt(50.0), 1e-12);
}

TEST(PathRules, SimplifyingDropsJustWhatLiesWithinTheTolerance) {
    const Path line{{0, 0}, {10, 1}, {20, 0}, {30, 2}, {40, 0}};
    EXPECT_EQ(simplified(line, 0.9), line);
    EXPECT_EQ(simplified(line, 1.9), (Path{{0, 0}, {30, 2}, {40, 0}}));
    EXPECT_EQ(simplified(line, 2.0), (Path{{0, 0}, {40, 0}}));
    EXPECT_EQ(simplified({{0, 0}, {1, 0}}, 50.0).size(), 2U);
}

TEST(PathRules, DensifyingKeepsEveryPointAndSharesEachPieceEvenly) {
    EXPECT_EQ(densified({{0, 0}, {12, 0}, {12, 9}}, 4.0),
              (Path{{0, 0}, {4, 0}, {8, 0}, {12, 0}, {12, 3}, {12, 6}, {12, 9}}));
    EXPECT_EQ(densified({{0, 0}, {8, 0}}, 4.0), (Path{{0, 0}, {4, 0}, {8, 0}}));
    EXPECT_EQ(densified({{1, 1}}, 4.0), (Path{{1, 1}}));
}

TEST(PathRules, NearestPointsComeNearestFirstWithEqualOnesByIndex) {
    std::mt19937 random(23);
    std::uniform_int_distribution<int> anywhere(0, 30); // many at one distance
    std::vector<WaterPoint> points;
    for (int i = 0; i < 400; ++i) {
        points.push_back({1.0 * anywhere(random), 1.0 * anywhere(random)});
    }
    const NearestPoints index(points);
    for (int i = 0; i < 100; ++i) {
        const WaterPoint p{1.0 * anywhere(random), 1.0 * anywhere(random)};
        std::vector<double> all_m;
        std::vector<std::size_t> within;
        for (std::size_t k = 0; k < points.size(); ++k) {
            all_m.push_back(distance_m(points[k], p));
            if (all_m.back() <= 5.0) {
                within.push_back(k);
            }
        }
        std::vector<double> sorted_m = all_m;
        std::ranges::sort(sorted_m);
        const auto some = index.nearest(p, 7);
        ASSERT_EQ(some.size(), 7U);
        for (std::size_t k = 0; k < 7; ++k) {
            EXPECT_EQ(some[k].distance_m, sorted_m[k]);
            EXPECT_EQ(all_m[some[k].index], some[k].distance_m);
            EXPECT_TRUE(k == 0 || some[k - 1].distance_m < some[k].distance_m ||
                        some[k - 1].index < some[k].index);
        }
        const auto near = index.within(p, 5.0);
        ASSERT_EQ(near.size(), within.size()) << "the rim counts, the corners of its box do not";
        for (std::size_t k = 0; k < near.size(); ++k) {
            EXPECT_EQ(near[k].index, within[k]);
            EXPECT_EQ(near[k].distance_m, all_m[within[k]]);
        }
        EXPECT_EQ(index.nearest(p)->distance_m, sorted_m[0]);
    }
    EXPECT_EQ(index.nearest({0, 0}, 1000).size(), 400U);
    EXPECT_TRUE(NearestPoints({}).nearest({0, 0}, 3).empty());
    EXPECT_TRUE(index.nearest({0, 0}, 0).empty());
    NearestPoints moved(std::vector<WaterPoint>{{1, 1}});
    moved = NearestPoints(points);
    EXPECT_EQ(moved.nearest({0, 0}, 1000).size(), 400U);
}

} // namespace
