// SPDX-License-Identifier: GPL-3.0-or-later
// The Earth and the flat frame against published figures and against each other.
#include "core/geo/water_frame.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <string>

namespace {

using namespace geo;
using units::Bearing;
using units::Length;

double degrees(int sign, double d, double m, double s) {
    return sign * (d + m / 60.0 + s / 3600.0);
}

struct GeodesicRow {
    LonLat from;
    LonLat to;
    double distance_m;
    double bearing_deg;
};

// Flinders Peak to Buninyong: Geoscience Australia, GDA94 Technical Manual, 4.1 (GRS 80, which
// differs from WGS 84 by less than a tenth of a millimetre there). The others: Karney, manual of
// GeodSolve and documentation of the geographiclib package (WGS 84).
const GeodesicRow geodesics[] = {{{degrees(1, 144, 25, 29.52440), degrees(-1, 37, 57, 3.72030)},
                                  {degrees(1, 143, 55, 35.38390), degrees(-1, 37, 39, 10.15610)},
                                  54972.271,
                                  degrees(1, 306, 52, 5.37)},
                                 {{-73.8, 40.6}, {-0.5, 51.6}, 5551759.400, 51.19888285},
                                 {{174.81, -41.32}, {-5.50, 40.96}, 19959679.267, 161.06766999}};

TEST(Course, AgreesWithPublishedGeodesics) {
    for (const GeodesicRow& row : geodesics) {
        const Course course = courseBetween(row.from, row.to);
        EXPECT_NEAR(course.distance.inMetres(), row.distance_m, 0.001);
        EXPECT_NEAR(course.bearing.inDegrees(), row.bearing_deg, 2e-6);
        const LonLat to = destination(row.from, course);
        EXPECT_NEAR(to.lon_deg, row.to.lon_deg, 1e-9);
        EXPECT_NEAR(to.lat_deg, row.to.lat_deg, 1e-9);
    }
    // A degree of the equator: 6378137 m x pi / 180.
    EXPECT_NEAR(courseBetween({3.0, 0.0}, {4.0, 0.0}).distance.inMetres(), 111319.4908, 1e-3);
    EXPECT_NEAR(courseBetween({3.0, 0.0}, {4.0, 0.0}).bearing.inDegrees(), 90.0, 1e-9);
    EXPECT_NEAR(courseBetween({3.0, 55.0}, {3.0, 54.0}).bearing.inDegrees(), 180.0, 1e-9);
    EXPECT_NEAR(courseBetween({4.0, 0.0}, {3.0, 0.0}).bearing.inDegrees(), 270.0, 1e-9);
    // Karney, documentation of geographiclib: 20000 km to the south-west of Perth.
    const LonLat far =
        destination({115.74, -32.06}, {Length::kilometres(20000.0), Bearing::degrees(225.0)});
    EXPECT_NEAR(far.lat_deg, 32.11195529, 1e-8);
    EXPECT_NEAR(far.lon_deg, -63.95925278, 1e-8);
}

// The same place in UTM zone 29, as the EPSG register defines it: scale 0.9996, 500 km false
// easting.
TEST(WaterFrame, IsATransverseMercatorOfScaleOne) {
    const WaterFrame frame = WaterFrame::centredOn({-9.0, 0.0}).value();
    const WaterPoint p = frame.toWater(LonLat{-8.1, 53.6});
    EXPECT_NEAR(p.x_m, (559557.9688 - 500000.0) / 0.9996, 1e-3);
    EXPECT_NEAR(p.y_m, 5939395.4780 / 0.9996, 1e-3);
    EXPECT_EQ(frame.definition(), "+proj=tmerc +lat_0=0 +lon_0=-9 +k=1 +x_0=0 +y_0=0 "
                                  "+datum=WGS84 +units=m +no_defs");
}

TEST(WaterFrame, CountsEastAndNorthFromItsCentreInMetresOnTheGround) {
    const LonLat centre{3.1, 55.2};
    const WaterFrame frame = WaterFrame::centredOn(centre).value();
    EXPECT_EQ(frame.centre(), centre);
    for (double bearing_deg = 0.0; bearing_deg < 360.0; bearing_deg += 15.0) {
        const Course course{Length::metres(2500.0), Bearing::degrees(bearing_deg)};
        const WaterPoint p = frame.toWater(destination(centre, course));
        EXPECT_NEAR(p.x_m, 2500.0 * course.bearing.east(), 0.005) << bearing_deg;
        EXPECT_NEAR(p.y_m, 2500.0 * course.bearing.north(), 0.005) << bearing_deg;
        const LonLat back = frame.toEarth(p);
        EXPECT_NEAR(courseBetween(back, destination(centre, course)).distance.inMetres(), 0.0,
                    1e-6);
    }
}

TEST(WaterFrame, TurnsManyPlacesAsItTurnsOne) {
    const WaterFrame frame = WaterFrame::centredOn({3.1, 55.2}).value();
    const std::vector<LonLat> places{{3.1, 55.2}, {3.15, 55.19}, {3.05, 55.3}};
    const std::vector<WaterPoint> points = frame.toWater(places);
    ASSERT_EQ(points.size(), 3U);
    const std::vector<LonLat> back = frame.toEarth(points);
    ASSERT_EQ(back.size(), 3U);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(points[i], frame.toWater(places[i]));
        EXPECT_EQ(back[i], frame.toEarth(points[i]));
        EXPECT_NEAR(back[i].lon_deg, places[i].lon_deg, 1e-11);
    }
    // Two frames on one thread stay apart.
    const WaterFrame other = WaterFrame::centredOn({3.2, 55.2}).value();
    EXPECT_NE(frame, other);
    EXPECT_GT(frame.toWater(places[1]).x_m - other.toWater(places[1]).x_m, 6000.0);
    EXPECT_NE(other.wkt().find("3.2"), std::string::npos);
}

TEST(WaterFrame, HoldsItsLimitsToTheEnds) {
    const auto around = [](LonLat a, LonLat b) { return WaterFrame::around(std::array{a, b}); };
    EXPECT_EQ(around({2.0, 55.0}, {4.0, 55.0})->centre(), (LonLat{3.0, 55.0}));
    EXPECT_EQ(around({3.0, 54.0}, {3.0, 56.0})->centre(), (LonLat{3.0, 55.0}));
    const auto wide = around({2.0, 55.0}, {4.01, 55.5});
    ASSERT_FALSE(wide);
    EXPECT_EQ(wide.error().what,
              "the positions spread over 2.0 by 0.5 degrees, too wide for one water");
    EXPECT_FALSE(around({3.0, 54.0}, {3.0, 56.01}));
    EXPECT_TRUE(WaterFrame::centredOn({3.0, 88.0}));
    EXPECT_FALSE(WaterFrame::centredOn({3.0, 88.01}));
    EXPECT_TRUE(WaterFrame::centredOn({3.0, -88.0}));
    EXPECT_FALSE(WaterFrame::centredOn({3.0, -88.01}));
    EXPECT_EQ(WaterFrame::centredOn({3.0, 89.0}).error().kind, base::ErrorKind::wrongUse);
    const auto off = around({3.0, 55.0}, {181.0, 55.0});
    ASSERT_FALSE(off);
    EXPECT_EQ(off.error().what, "longitude 181, latitude 55 is not on the Earth");
    EXPECT_FALSE(WaterFrame::around({}));
}

TEST(WaterFrame, LiesOnTheMiddleOfAllPlacesRoundedToAHundredth) {
    const std::array places{LonLat{3.004, -55.006}, LonLat{3.3, -55.1}, LonLat{3.05, -54.997},
                            LonLat{3.2, -55.214}};
    const WaterFrame frame = WaterFrame::around(places).value();
    EXPECT_DOUBLE_EQ(frame.centre().lon_deg, 3.15);
    EXPECT_DOUBLE_EQ(frame.centre().lat_deg, -55.11);
}

TEST(LonLat, IsOnTheEarthWithinItsBoundsAlone) {
    EXPECT_TRUE(isOnEarth({180.0, 90.0}));
    EXPECT_TRUE(isOnEarth({-180.0, -90.0}));
    for (const LonLat p : {LonLat{180.001, 0.0},
                           {-180.001, 0.0},
                           {0.0, 90.001},
                           {0.0, -90.001},
                           {NAN, 0.0},
                           {0.0, NAN},
                           {INFINITY, 0.0},
                           {0.0, -INFINITY}}) {
        EXPECT_FALSE(isOnEarth(p)) << p.lon_deg << ' ' << p.lat_deg;
    }
}

TEST(WaterPoint, BearingAndMoveAreOfOneMind) {
    const WaterPoint a{10.0, -20.0};
    EXPECT_NEAR(bearing(a, {40.0, -20.0}).inDegrees(), 90.0, 1e-9);
    EXPECT_NEAR(bearing(a, {10.0, -50.0}).inDegrees(), 180.0, 1e-9);
    EXPECT_NEAR(distance(a, {13.0, -16.0}).inMetres(), 5.0, 1e-12);
    for (double to_deg = 0.0; to_deg < 360.0; to_deg += 40.0) {
        const WaterPoint b = moved(a, Bearing::degrees(to_deg), Length::metres(7.0));
        EXPECT_NEAR(distance_m(a, b), 7.0, 1e-9);
        EXPECT_NEAR(bearing(a, b).angleTo_deg(Bearing::degrees(to_deg)), 0.0, 1e-9);
    }
    const WaterPoint east = moved(a, Bearing::degrees(90.0), Length::metres(7.0));
    EXPECT_NEAR(east.x_m, 17.0, 1e-9);
    EXPECT_NEAR(east.y_m, -20.0, 1e-9);
}

TEST(Box, GrowsByWhatItTakesAndHoldsItsEdges) {
    Box box;
    EXPECT_TRUE(box.isEmpty());
    box.take({3.0, -2.0});
    EXPECT_FALSE(box.isEmpty());
    box.take({-1.0, 5.0});
    EXPECT_EQ(box.west_m, -1.0);
    EXPECT_EQ(box.east_m, 3.0);
    EXPECT_EQ(box.south_m, -2.0);
    EXPECT_EQ(box.north_m, 5.0);
    EXPECT_EQ(box.width_m(), 4.0);
    EXPECT_EQ(box.height_m(), 7.0);
    for (const WaterPoint p : {WaterPoint{-1.0, -2.0}, {3.0, 5.0}, {0.0, 0.0}}) {
        EXPECT_TRUE(box.holds(p));
    }
    for (const WaterPoint p : {WaterPoint{-1.1, 0.0}, {3.1, 0.0}, {0.0, -2.1}, {0.0, 5.1}}) {
        EXPECT_FALSE(box.holds(p));
    }
    const Box grown = box.grownBy(0.5);
    EXPECT_EQ(grown.west_m, -1.5);
    EXPECT_EQ(grown.east_m, 3.5);
    EXPECT_EQ(grown.south_m, -2.5);
    EXPECT_EQ(grown.north_m, 5.5);
}

} // namespace
