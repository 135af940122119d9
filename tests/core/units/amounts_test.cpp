// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/area.h"
#include "core/units/bearing.h"
#include "core/units/depth.h"
#include "core/units/level.h"
#include "core/units/speed.h"
#include "core/units/temperature.h"
#include "core/units/volume.h"
#include "core/units/weight.h"

#include <gtest/gtest.h>

namespace {

using namespace units;

TEST(Amounts, AddAndScaleAndCompare) {
    const Depth sum = Depth::metres(2.0) + Depth::feet(10.0);
    EXPECT_DOUBLE_EQ(sum.inMetres(), 5.048);
    EXPECT_DOUBLE_EQ((2.0 * sum - sum).inMetres(), sum.inMetres());
    EXPECT_LT(Depth::metres(9.0), Depth::feet(30.0));
    EXPECT_DOUBLE_EQ(Depth::metres(3.0) / Depth::metres(1.5), 2.0);
}

TEST(Amounts, DefaultIsNothing) {
    EXPECT_EQ(Depth().inMetres(), 0.0);
    EXPECT_EQ(Weight().inKilograms(), 0.0);
}

TEST(Depth, BecomesALengthOnlyWhenAsked) {
    EXPECT_DOUBLE_EQ(Depth::fathoms(1.0).asLength().inFeet(), 6.0);
    EXPECT_DOUBLE_EQ(Depth::fromLength(Length::metres(4.0)).inMetres(), 4.0);
}

TEST(WaterLevel, DifferenceOfTwoIsALengthAndOfWaterAndBedADepth) {
    const auto summer = WaterLevel::metresOnGauge(12.30);
    const auto autumn = WaterLevel::metresOnGauge(11.85);
    EXPECT_NEAR((autumn - summer).inMetres(), -0.45, 1e-12);
    const BedLevel bed = summer - Depth::metres(5.0);
    EXPECT_NEAR((autumn - bed).inMetres(), 4.55, 1e-12);
    EXPECT_NEAR((summer + Length::metres(0.2)).inMetresOnGauge(), 12.5, 1e-12);
}

TEST(Bearing, IsTurnedIntoTheCircle) {
    EXPECT_DOUBLE_EQ(Bearing::degrees(-90.0).inDegrees(), 270.0);
    EXPECT_DOUBLE_EQ(Bearing::degrees(720.0).inDegrees(), 0.0);
    EXPECT_LT(Bearing::degrees(-1e-18).inDegrees(), 360.0);
    EXPECT_DOUBLE_EQ(Bearing::degrees(350.0).angleTo_deg(Bearing::degrees(10.0)), 20.0);
    EXPECT_DOUBLE_EQ(Bearing::degrees(300.0).opposite().inDegrees(), 120.0);
}

TEST(Bearing, OfAStepIsClockwiseFromNorth) {
    EXPECT_DOUBLE_EQ(Bearing::ofStep(0.0, 1.0).inDegrees(), 0.0);
    EXPECT_DOUBLE_EQ(Bearing::ofStep(1.0, 0.0).inDegrees(), 90.0);
    EXPECT_DOUBLE_EQ(Bearing::ofStep(-1.0, -1.0).inDegrees(), 225.0);
}

TEST(Temperature, FahrenheitMeetsCelsiusAtFortyBelow) {
    EXPECT_NEAR(Temperature::fahrenheit(-40.0).inCelsius(), -40.0, 1e-12);
    EXPECT_NEAR(Temperature::celsius(15.0).inFahrenheit(), 59.0, 1e-12);
}

} // namespace
