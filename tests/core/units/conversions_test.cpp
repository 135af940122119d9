// SPDX-License-Identifier: GPL-3.0-or-later
// Every unit against its definition: international yard and pound (1959), nautical mile (1929),
// both ways and through one another.
#include "core/units/area.h"
#include "core/units/bearing.h"
#include "core/units/depth.h"
#include "core/units/level.h"
#include "core/units/speed.h"
#include "core/units/temperature.h"
#include "core/units/volume.h"
#include "core/units/weight.h"

#include <gtest/gtest.h>

#include <numbers>

namespace {

using namespace units;

struct UnitRow {
    const char* unit;
    double inSi; ///< One of the unit, by definition.
    double (*siOf)(double);
    double (*unitOf)(double);
};

constexpr UnitRow unitRows[] = {
    {"foot", 0.3048, [](double v) { return Length::feet(v).inMetres(); },
     [](double v) { return Length::metres(v).inFeet(); }},
    {"kilometre", 1000.0, [](double v) { return Length::kilometres(v).inMetres(); },
     [](double v) { return Length::metres(v).inKilometres(); }},
    {"statute mile", 1609.344, [](double v) { return Length::miles(v).inMetres(); },
     [](double v) { return Length::metres(v).inMiles(); }},
    {"nautical mile", 1852.0, [](double v) { return Length::nauticalMiles(v).inMetres(); },
     [](double v) { return Length::metres(v).inNauticalMiles(); }},
    {"foot of depth", 0.3048, [](double v) { return Depth::feet(v).inMetres(); },
     [](double v) { return Depth::metres(v).inFeet(); }},
    {"fathom", 1.8288, [](double v) { return Depth::fathoms(v).inMetres(); },
     [](double v) { return Depth::metres(v).inFathoms(); }},
    {"hectare", 10000.0, [](double v) { return Area::hectares(v).inSquareMetres(); },
     [](double v) { return Area::squareMetres(v).inHectares(); }},
    {"acre", 4046.8564224, [](double v) { return Area::acres(v).inSquareMetres(); },
     [](double v) { return Area::squareMetres(v).inAcres(); }},
    {"acre-foot", 1233.48183754752, [](double v) { return Volume::acreFeet(v).inCubicMetres(); },
     [](double v) { return Volume::cubicMetres(v).inAcreFeet(); }},
    {"knot", 1852.0 / 3600.0, [](double v) { return Speed::knots(v).inMetresPerSecond(); },
     [](double v) { return Speed::metresPerSecond(v).inKnots(); }},
    {"mile an hour", 0.44704, [](double v) { return Speed::milesPerHour(v).inMetresPerSecond(); },
     [](double v) { return Speed::metresPerSecond(v).inMilesPerHour(); }},
    {"kilometre an hour", 1.0 / 3.6,
     [](double v) { return Speed::kilometresPerHour(v).inMetresPerSecond(); },
     [](double v) { return Speed::metresPerSecond(v).inKilometresPerHour(); }},
    {"pound", 0.45359237, [](double v) { return Weight::pounds(v).inKilograms(); },
     [](double v) { return Weight::kilograms(v).inPounds(); }},
    {"ounce", 0.028349523125, [](double v) { return Weight::ounces(v).inKilograms(); },
     [](double v) { return Weight::kilograms(v).inOunces(); }},
    {"metre", 1.0, [](double v) { return Length::metres(v).inMetres(); },
     [](double v) { return Depth::metres(v).inMetres(); }},
    {"square metre", 1.0, [](double v) { return Area::squareMetres(v).inSquareMetres(); },
     [](double v) { return Area::squareMetres(v).inSquareMetres(); }}};

TEST(Units, AreThoseOfTheirDefinitionsBothWays) {
    for (const UnitRow& row : unitRows) {
        for (const double amount : {1.0, 30.0, -2.5, 0.0}) {
            EXPECT_NEAR(row.siOf(amount), amount * row.inSi, 1e-12 * row.inSi * 100.0) << row.unit;
            EXPECT_NEAR(row.unitOf(amount * row.inSi), amount, 1e-10) << row.unit;
        }
    }
}

TEST(Units, AmountsOfOneKindAddSubtractScaleAndCompareAsNumbersDo) {
    const Length a = Length::metres(7.0);
    const Length b = Length::metres(2.0);
    EXPECT_EQ((a + b).inMetres(), 9.0);
    EXPECT_EQ((a - b).inMetres(), 5.0);
    EXPECT_EQ((-a).inMetres(), -7.0);
    EXPECT_EQ((a * 3.0).inMetres(), 21.0);
    EXPECT_EQ((3.0 * a).inMetres(), 21.0);
    EXPECT_EQ((a / 2.0).inMetres(), 3.5);
    EXPECT_EQ(a / b, 3.5);
    Length sum = a;
    sum += b;
    EXPECT_EQ(sum.inMetres(), 9.0);
    sum -= a;
    EXPECT_EQ(sum.inMetres(), 2.0);
    EXPECT_TRUE(a > b && b < a && a != b && a >= a && a == Length::metres(7.0));
    EXPECT_EQ(Depth::metres(3.0).asLength(), Length::metres(3.0));
    EXPECT_EQ(Depth::fromLength(Length::metres(-0.5)), Depth::metres(-0.5));
}

TEST(WaterLevel, CountsUpAndDepthsDown) {
    const WaterLevel level = WaterLevel::metresOnGauge(12.0);
    EXPECT_EQ(level.inMetresOnGauge(), 12.0);
    EXPECT_EQ((level + Length::metres(0.5)).inMetresOnGauge(), 12.5);
    EXPECT_EQ((level - Length::metres(0.5)).inMetresOnGauge(), 11.5);
    EXPECT_EQ((level - WaterLevel::metresOnGauge(13.5)).inMetres(), -1.5);
    const BedLevel bed = BedLevel::metresOnGauge(9.0);
    EXPECT_EQ((level - bed).inMetres(), 3.0);
    EXPECT_EQ((level - Depth::metres(4.0)).inMetresOnGauge(), 8.0);
    EXPECT_LT(bed, BedLevel::metresOnGauge(9.1));
    EXPECT_LT(WaterLevel::metresOnGauge(11.9), level);
}

TEST(Temperature, GoesByTheFixedPointsOfWater) {
    EXPECT_NEAR(Temperature::fahrenheit(32.0).inCelsius(), 0.0, 1e-12);
    EXPECT_NEAR(Temperature::fahrenheit(212.0).inCelsius(), 100.0, 1e-12);
    EXPECT_NEAR(Temperature::celsius(100.0).inFahrenheit(), 212.0, 1e-12);
    EXPECT_NEAR(Temperature::celsius(0.0).inFahrenheit(), 32.0, 1e-12);
    EXPECT_LT(Temperature::celsius(4.0), Temperature::fahrenheit(40.0));
}

TEST(Bearing, IsTurnedIntoTheCircleFromAnywhere) {
    struct Row {
        double given;
        double turned;
    };
    for (const Row& row : {Row{0.0, 0.0},
                           {359.5, 359.5},
                           {360.0, 0.0},
                           {361.0, 1.0},
                           {-1.0, 359.0},
                           {-360.0, 0.0},
                           {-725.0, 355.0},
                           {1085.0, 5.0},
                           {180.0, 180.0}}) {
        EXPECT_NEAR(Bearing::degrees(row.given).inDegrees(), row.turned, 1e-9) << row.given;
        EXPECT_NEAR(Bearing::radians(row.given * std::numbers::pi / 180.0).inDegrees(), row.turned,
                    1e-6);
        EXPECT_NEAR(Bearing::degrees(row.given).inRadians(), row.turned * std::numbers::pi / 180.0,
                    1e-9);
        EXPECT_NEAR(Bearing::degrees(100.0).turnedBy(row.given).inDegrees(),
                    std::fmod(row.turned + 100.0, 360.0), 1e-9);
    }
    EXPECT_EQ(Bearing::degrees(-1e-18).inDegrees(), 0.0);
}

TEST(Bearing, StepsAreEastAndNorth) {
    struct Row {
        double bearing_deg;
        double east;
        double north;
    };
    const double half = std::numbers::sqrt2 / 2.0;
    for (const Row& row : {Row{0.0, 0.0, 1.0},
                           {90.0, 1.0, 0.0},
                           {180.0, 0.0, -1.0},
                           {270.0, -1.0, 0.0},
                           {45.0, half, half},
                           {210.0, -0.5, -std::sqrt(0.75)},
                           {330.0, -0.5, std::sqrt(0.75)}}) {
        const Bearing bearing = Bearing::degrees(row.bearing_deg);
        EXPECT_NEAR(bearing.east(), row.east, 1e-12);
        EXPECT_NEAR(bearing.north(), row.north, 1e-12);
        EXPECT_NEAR(Bearing::ofStep(7.0 * row.east, 7.0 * row.north).angleTo_deg(bearing), 0.0,
                    1e-9);
        EXPECT_NEAR(bearing.opposite().east(), -row.east, 1e-12);
        EXPECT_NEAR(bearing.opposite().north(), -row.north, 1e-12);
    }
}

TEST(Bearing, TheAngleBetweenTwoIsTheSmallerOne) {
    struct Row {
        double a;
        double b;
        double angle;
    };
    for (const Row& row : {Row{10.0, 350.0, 20.0},
                           {350.0, 10.0, 20.0},
                           {0.0, 180.0, 180.0},
                           {0.0, 181.0, 179.0},
                           {90.0, 0.0, 90.0},
                           {200.0, 200.0, 0.0}}) {
        EXPECT_NEAR(Bearing::degrees(row.a).angleTo_deg(Bearing::degrees(row.b)), row.angle, 1e-9);
    }
}

} // namespace
