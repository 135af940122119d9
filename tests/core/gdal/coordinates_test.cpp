// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/coordinates.h"

#include <gtest/gtest.h>

namespace gdal {

namespace {

TEST(Coordinates, BringUtmMetresToLongitudeAndLatitude) {
    const auto zone29 = Coordinates::ofEpsg(32629);
    ASSERT_TRUE(zone29) << zone29.error().sentence();
    const auto place = zone29->toEarth({559557.9688, 5939395.4780});
    ASSERT_TRUE(place);
    EXPECT_NEAR(place->lon_deg, -8.1, 1e-8);
    EXPECT_NEAR(place->lat_deg, 53.6, 1e-8);
    const auto back = zone29->fromEarth({-8.1, 53.6});
    ASSERT_TRUE(back);
    EXPECT_NEAR(back->x, 559557.9688, 1e-3);
    EXPECT_NEAR(back->y, 5939395.4780, 1e-3);
}

TEST(Coordinates, PutEastBeforeNorthEvenWhereTheSystemSaysOtherwise) {
    const auto degrees = Coordinates::ofEpsg(4326); // officially latitude first
    ASSERT_TRUE(degrees);
    const auto place = degrees->toEarth({-8.0, 53.5});
    ASSERT_TRUE(place);
    EXPECT_DOUBLE_EQ(place->lon_deg, -8.0);
    EXPECT_DOUBLE_EQ(place->lat_deg, 53.5);
}

TEST(Coordinates, RefuseANumberThatIsNoSystem) {
    const auto none = Coordinates::ofEpsg(1);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, base::ErrorKind::unusableInput);
    EXPECT_EQ(none.error().where, "EPSG:1");
}

TEST(Coordinates, GiveNothingForPositionsThatAreNoNumbers) {
    const auto zone29 = Coordinates::ofEpsg(32629);
    ASSERT_TRUE(zone29);
    EXPECT_FALSE(zone29->toEarth({std::numeric_limits<double>::quiet_NaN(), 0.0}));
    EXPECT_FALSE(zone29->fromEarth({0.0, 91.0}));
}

} // namespace

} // namespace gdal
