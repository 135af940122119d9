// SPDX-License-Identifier: GPL-3.0-or-later
// Units against their definitions.
// Source: International Yard and Pound Agreement 1959 (foot 0.3048 m, pound 0.45359237 kg, both
// exact; quoted in NIST Special Publication 811, appendix B, which was not seen itself: from
// memory). Ours, by multiplication on the international foot: acre of 43,560 square feet
// 4046.8564224 m2, mile of 5280 ft 1609.344 m, fathom of 6 ft 1.8288 m. (Tables that print the acre
// as 4046.873 m2 and the fathom as 1.828804 m are on the US survey foot.) Nautical mile of 1852 m:
// exact by definition.
#include "core/units/area.h"
#include "core/units/depth.h"
#include "core/units/length.h"
#include "core/units/speed.h"
#include "core/units/temperature.h"
#include "core/units/volume.h"
#include "core/units/weight.h"

#include <gtest/gtest.h>

namespace {

using namespace units;

TEST(ReferenceUnits, LengthsAsDefined) {
    EXPECT_DOUBLE_EQ(Length::feet(1.0).inMetres(), 0.3048);
    EXPECT_DOUBLE_EQ(Depth::fathoms(1.0).inMetres(), 1.8288);
    EXPECT_DOUBLE_EQ(Length::miles(1.0).inMetres(), 1609.344);
    EXPECT_DOUBLE_EQ(Length::nauticalMiles(1.0).inMetres(), 1852.0);
    EXPECT_DOUBLE_EQ(Depth::feet(30.0).inMetres(), 9.144);
}

TEST(ReferenceUnits, AcreAsDefined) {
    EXPECT_NEAR(Area::acres(1.0).inSquareMetres(), 4046.8564224, 1e-9);
    EXPECT_NEAR(Volume::acreFeet(1.0).inCubicMetres(), 4046.8564224 * 0.3048, 1e-9);
}

TEST(ReferenceUnits, WeightsAsDefined) {
    EXPECT_DOUBLE_EQ(Weight::pounds(1.0).inKilograms(), 0.45359237);
    EXPECT_NEAR(Weight::ounces(1.0).inKilograms() * 1000.0, 28.349523125, 1e-9);
    EXPECT_NEAR((Weight::pounds(12.0) + Weight::ounces(8.0)).inKilograms() * 1000.0, 5669.904625,
                1e-9);
    EXPECT_NEAR(Weight::pounds(20.0).inKilograms() * 1000.0, 9071.8474, 1e-9);
    EXPECT_NEAR(Weight::pounds(30.0).inKilograms() * 1000.0, 13607.7711, 1e-9);
}

TEST(ReferenceUnits, KnotIsANauticalMileAnHour) {
    EXPECT_DOUBLE_EQ(Speed::knots(3600.0).inMetresPerSecond(), 1852.0);
    EXPECT_DOUBLE_EQ(Speed::milesPerHour(3600.0).inMetresPerSecond(), 1609.344);
}

} // namespace
