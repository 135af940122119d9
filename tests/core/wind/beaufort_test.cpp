// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wind/beaufort.h"

#include <gtest/gtest.h>

namespace {

TEST(Beaufort, IsClassedOnWholeKnots) {
    EXPECT_EQ(wind::beaufortForce(units::Speed::knots(0.4)), 0);
    EXPECT_EQ(wind::beaufortForce(units::Speed::knots(10.4)), 3);
    EXPECT_EQ(wind::beaufortForce(units::Speed::knots(10.6)), 4);
    // 11 m/s stands in two of the rounded bands in metres per second; 21.4 knots are force 5.
    EXPECT_EQ(wind::beaufortForce(units::Speed::metresPerSecond(11.0)), 5);
}

TEST(Beaufort, HasAWordForEveryForceAndNoneBeyond) {
    EXPECT_EQ(wind::beaufortName(0), "calm");
    EXPECT_EQ(wind::beaufortName(3), "gentle breeze");
    EXPECT_EQ(wind::beaufortName(12), "hurricane");
    EXPECT_EQ(wind::beaufortName(99), wind::beaufortName(12));
    EXPECT_EQ(wind::beaufortOnTheWater(-3), wind::beaufortOnTheWater(0));
}

TEST(Beaufort, HasAMiddleThatIsOfItsForce) {
    EXPECT_NEAR(wind::middleOfForce(4).inKnots(), 13.5, 1e-12) << "11 to 16 knots";
    EXPECT_EQ(wind::middleOfForce(0).inKnots(), 0.0);
    EXPECT_NEAR(wind::middleOfForce(12).inKnots(), 64.0, 1e-12);
    for (int force = 0; force <= 12; ++force) {
        EXPECT_EQ(wind::beaufortForce(wind::middleOfForce(force)), force);
    }
}

} // namespace
