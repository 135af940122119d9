// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/near_place.h"
#include "tests/support/given.h"
#include "tests/support/planned_water.h"

#include <gtest/gtest.h>

namespace {

using support::given;
using support::PlannedWater;
using units::Length;

TEST(NearestNamedPlace, IsTheNearestWithItsDistanceAndTheMarksSideOfIt) {
    PlannedWater made;
    made.water.places = {{"Far Point", made.onEarth({200.0, 0.0})},
                         {"Mill", made.onEarth({0.0, 30.0})},
                         {"Weir", made.onEarth({0.0, -60.0})}};
    const auto near = water::nearestNamedPlace(made.water, {40.0, 60.0});
    EXPECT_EQ(given(near).name, "Mill");
    EXPECT_NEAR(given(near).distance.inMetres(), 50.0, 0.01);
    EXPECT_NEAR(given(near).bearing.inDegrees(), 53.13, 0.01) << "40 m east, 30 m north of it";
}

TEST(NearestNamedPlace, IsNoneBeyondAQuarterOfAKilometre) {
    PlannedWater made;
    made.water.places = {{"Mill", made.onEarth({0.0, 0.0})}};
    EXPECT_TRUE(water::nearestNamedPlace(made.water, {249.9, 0.0}));
    EXPECT_FALSE(water::nearestNamedPlace(made.water, {250.2, 0.0}));
    made.water.places.clear();
    EXPECT_FALSE(water::nearestNamedPlace(made.water, {0.0, 0.0}));
}

} // namespace
