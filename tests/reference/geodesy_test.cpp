// SPDX-License-Identifier: GPL-3.0-or-later
// Geodesics and the transverse Mercator against published values.
// Sources: GeographicLib tests/geodtest.cpp and tests/CMakeLists (geodesics); PROJ 9.1.1 cs2cs on
// EPSG:32629..32635 (UTM, computed with that program). For one water the frame is a transverse
// Mercator of its own, so UTM is reached by its definition: scale 0.9996 and a false easting of 500
// 000 m about the zone's middle.
#include "core/geo/water_frame.h"

#include <gtest/gtest.h>

namespace {

using namespace geo;

struct GeodesicRow {
    LonLat from, to;
    double azimuth_deg, azimuthTolerance_deg, distance_m, distanceTolerance_m;
};

class Geodesic : public testing::TestWithParam<GeodesicRow> {};

TEST_P(Geodesic, InverseGivesThePublishedBearingAndDistance) {
    const GeodesicRow& row = GetParam();
    const Course course = courseBetween(row.from, row.to);
    EXPECT_NEAR(course.bearing.inDegrees(), row.azimuth_deg, row.azimuthTolerance_deg);
    EXPECT_NEAR(course.distance.inMetres(), row.distance_m, row.distanceTolerance_m);
}

TEST_P(Geodesic, DirectComesOutWhereInverseBegan) {
    const GeodesicRow& row = GetParam();
    const LonLat end = destination(row.from, courseBetween(row.from, row.to));
    EXPECT_NEAR(end.lon_deg, row.to.lon_deg, 1e-9);
    EXPECT_NEAR(end.lat_deg, row.to.lat_deg, 1e-9);
}

INSTANTIATE_TEST_SUITE_P(
    Published, Geodesic,
    testing::Values(
        // GeographicLib, tests/geodtest.cpp, first case.
        GeodesicRow{{-139.44815, 35.60777},
                    {-69.95921, -11.17491},
                    111.098748429560,
                    1e-9,
                    8935244.5604818,
                    1e-6},
        // GeographicLib documentation, JFK to LHR; digits computed with PROJ 9.1.1.
        GeodesicRow{{-73.8, 40.6}, {-0.5, 51.6}, 51.198883, 1e-6, 5551759.4003, 1e-3},
        // A short one, computed with PROJ 9.1.1.
        GeodesicRow{{-8.0, 53.5}, {-7.998, 53.501}, 50.016107, 1e-6, 173.206258, 1e-6}));

TEST(Geodesic, DirectOverAShortWayAsComputedWithProj) {
    const LonLat end =
        destination({-8.0, 53.5}, {units::Length::metres(100.0), units::Bearing::degrees(45.0)});
    EXPECT_NEAR(end.lat_deg, 53.500635336, 1e-9);
    EXPECT_NEAR(end.lon_deg, -7.998934407, 1e-9);
}

struct UtmRow {
    LonLat place;
    double middle_deg, easting_m, northing_m;
};

class TransverseMercator : public testing::TestWithParam<UtmRow> {};

TEST_P(TransverseMercator, GivesUtmByItsDefinition) {
    const UtmRow& row = GetParam();
    const WaterFrame frame = WaterFrame::centredOn({row.middle_deg, 0.0}).value();
    const WaterPoint p = frame.toWater(row.place);
    EXPECT_NEAR(500000.0 + 0.9996 * p.x_m, row.easting_m, 2e-4);
    EXPECT_NEAR(0.9996 * p.y_m, row.northing_m, 2e-4);
}

INSTANTIATE_TEST_SUITE_P(ComputedWithProj, TransverseMercator,
                         testing::Values(UtmRow{{-8.1, 53.6}, -9.0, 559557.9688, 5939395.4780},
                                         UtmRow{{-9.5, 53.5}, -9.0, 466833.8677, 5928010.0851},
                                         UtmRow{{3.0, 60.0}, 3.0, 500000.0, 6651411.1904},
                                         UtmRow{{12.0, 55.0}, 9.0, 691875.6321, 6098907.8251},
                                         UtmRow{{-93.5, 45.2}, -93.0, 460729.6926, 5005289.8417}));

} // namespace
