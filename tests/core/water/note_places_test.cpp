// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/within_ring.h"
#include "core/water/steps/note_places.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using namespace water;

TEST(NotePlaces, LieEvenlyAlongALineFromEndToEnd) {
    const geo::Path line{{0.0, 0.0}, {60.0, 0.0}, {60.0, 40.0}};
    const auto places = notePlacesAlong(line);
    ASSERT_EQ(places.size(), 5U); // 100 m in four gaps of 25 m
    EXPECT_EQ(places.front(), line.front());
    EXPECT_EQ(places.back(), line.back());
    EXPECT_NEAR(places[2].x_m, 50.0, 1e-9);
    EXPECT_NEAR(places[3].x_m, 60.0, 1e-9);
    EXPECT_NEAR(places[3].y_m, 15.0, 1e-9);
    EXPECT_EQ(notePlacesAlong({{3.0, 4.0}}).size(), 1U);
    EXPECT_TRUE(notePlacesAlong({}).empty());
}

TEST(NotePlaces, NeverGrowBeyondTwoHundred) {
    EXPECT_EQ(notePlacesAlong({{0.0, 0.0}, {50'000.0, 0.0}}).size(), 200U);
    const double side = 4000.0;
    const auto within = notePlacesWithin({{0, 0}, {side, 0}, {side, side}, {0, side}});
    EXPECT_GT(within.size(), 150U);
    EXPECT_LE(within.size(), 240U);
}

TEST(NotePlaces, LieInsideTheRingAndCoverIt) {
    const geo::Ring ring{{0.0, 0.0}, {200.0, 0.0}, {200.0, 80.0}, {100.0, 80.0}, {0.0, 160.0}};
    const auto places = notePlacesWithin(ring);
    ASSERT_FALSE(places.empty());
    EXPECT_TRUE(std::ranges::all_of(places, [&](auto p) { return geo::isWithin(ring, p); }));
    for (double x = 5.0; x < 200.0; x += 10.0) {
        const bool isCovered = std::ranges::any_of(places, [x](auto p) {
            return geo::distance_m(p, {x, 40.0}) < 25.0;
        });
        EXPECT_TRUE(isCovered) << x;
    }
}

TEST(NotePlaces, AreAtLeastTheMiddleOfAPatch) {
    EXPECT_EQ(notePlacesWithin({{0, 0}, {4, 0}, {4, 4}, {0, 4}}).size(), 1U);
    EXPECT_TRUE(notePlacesWithin({{0, 0}, {4, 0}}).empty());
}

} // namespace
