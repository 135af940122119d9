// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/water_frame.h"

#include <gtest/gtest.h>

#include <array>
#include <random>
#include <thread>

namespace {

using namespace geo;

const LonLat middle{3.1, 55.2};

TEST(WaterFrame, GoesThereAndBackToAMicrometre) {
    const unsigned seed = 55;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> off(-0.2, 0.2);
    const WaterFrame frame = WaterFrame::centredOn(middle).value();
    for (int i = 0; i < 1000; ++i) {
        const LonLat place{middle.lon_deg + off(random), middle.lat_deg + off(random)};
        const LonLat back = frame.toEarth(frame.toWater(place));
        EXPECT_NEAR(back.lon_deg, place.lon_deg, 1e-11) << "seed " << seed;
        EXPECT_NEAR(back.lat_deg, place.lat_deg, 1e-11) << "seed " << seed;
    }
}

TEST(WaterFrame, KeepsDistancesToFivePartsInAMillionWithin20Km) {
    const WaterFrame frame = WaterFrame::centredOn(middle).value();
    for (double bearing = 0.0; bearing < 360.0; bearing += 30.0) {
        const LonLat far = destination(
            middle, {units::Length::kilometres(20.0), units::Bearing::degrees(bearing)});
        const LonLat further =
            destination(far, {units::Length::metres(100.0), units::Bearing::degrees(bearing)});
        const double flat_m = distance_m(frame.toWater(far), frame.toWater(further));
        EXPECT_NEAR(flat_m, 100.0, 100.0 * 5.0e-6) << bearing;
    }
}

TEST(WaterFrame, IsCentredOnTheMiddleRounded) {
    const std::array places{LonLat{3.0877, 55.1951}, LonLat{3.1163, 55.2101}};
    const WaterFrame frame = WaterFrame::around(places).value();
    EXPECT_DOUBLE_EQ(frame.centre().lon_deg, 3.1);
    EXPECT_DOUBLE_EQ(frame.centre().lat_deg, 55.2);
}

TEST(WaterFrame, RefusesPlacesTooFarApartForOneWater) {
    const std::array places{LonLat{3.0, 55.0}, LonLat{9.0, 55.0}};
    const auto frame = WaterFrame::around(places);
    ASSERT_FALSE(frame);
    EXPECT_EQ(frame.error().kind, base::ErrorKind::unusableInput);
    EXPECT_FALSE(frame.error().whatToDo.empty());
}

TEST(WaterFrame, RefusesWhatIsNotOnTheEarth) {
    const std::array places{LonLat{3.0, 155.0}};
    EXPECT_FALSE(WaterFrame::around(places));
    EXPECT_FALSE(WaterFrame::around({}));
    EXPECT_FALSE(WaterFrame::centredOn({0.0, 89.5}));
}

TEST(WaterFrame, AnswersTheSameFromSeveralThreads) {
    const WaterFrame frame = WaterFrame::centredOn(middle).value();
    const WaterPoint wanted = frame.toWater(LonLat{3.12, 55.21});
    std::array<WaterPoint, 8> got;
    std::vector<std::thread> threads;
    for (WaterPoint& point : got) {
        threads.emplace_back([&frame, &point] { point = frame.toWater(LonLat{3.12, 55.21}); });
    }
    for (std::thread& thread : threads) {
        thread.join();
    }
    for (const WaterPoint& point : got) {
        EXPECT_EQ(point, wanted);
    }
}

TEST(WaterFrame, WritesItselfAsATransverseMercator) {
    const std::string wkt = WaterFrame::centredOn(middle).value().wkt();
    EXPECT_NE(wkt.find("Transverse_Mercator"), std::string::npos) << wkt;
    EXPECT_NE(wkt.find("55.2"), std::string::npos) << wkt;
}

} // namespace
