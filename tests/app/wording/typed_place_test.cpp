// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/typed_place.h"

#include "app/wording/words.h"
#include "core/geo/water_frame.h"

#include <gtest/gtest.h>

#include <cmath>

namespace wording {

namespace {

void expectPlace(const QString& text, double lat_deg, double lon_deg) {
    const auto place = placeTyped(text);
    ASSERT_TRUE(place) << text.toStdString();
    EXPECT_NEAR(place->lat_deg, lat_deg, 1e-9) << text.toStdString();
    EXPECT_NEAR(place->lon_deg, lon_deg, 1e-9) << text.toStdString();
}

TEST(PlaceTyped, TakesDegreesInEveryUsualWay) {
    expectPlace("55.195, 3.1041", 55.195, 3.1041);
    expectPlace("55.195 -3.1041", 55.195, -3.1041);
    expectPlace("55.195 S 3.1041 W", -55.195, -3.1041);
    expectPlace("55 11.70 N 3 6.246 E", 55.195, 3.1041);
    expectPlace("55 11 42 N, 3 6 14.76 E", 55.195, 3.1041);
}

TEST(PlaceTyped, TakesWhatTheProgramItselfShows) {
    expectPlace(Words::place({3.1041, -55.195}), -55.195, 3.1041);
}

TEST(PlaceTyped, RefusesWhatIsNoPlace) {
    for (const char* text :
         {"", "55.195", "12 ft", "95.0, 3.0", "55.1, 200.0", "north, east", "3.1 E, 55.2 N"}) {
        EXPECT_FALSE(placeTyped(text)) << text;
    }
}

constexpr auto metric = preferences::UnitSystem::metric;
constexpr geo::LonLat boat{3.1041, 55.195};

void expectBait(const QString& text, double east_m, double north_m,
                preferences::UnitSystem units = metric) {
    const auto place = baitPlaceTyped(text, boat, units);
    ASSERT_TRUE(place) << text.toStdString();
    const auto frame = geo::WaterFrame::centredOn(boat).value();
    EXPECT_NEAR(frame.toWater(*place).x_m, east_m, 0.05) << text.toStdString();
    EXPECT_NEAR(frame.toWater(*place).y_m, north_m, 0.05) << text.toStdString();
}

TEST(BaitPlaceTyped, TakesABearingAndALengthFromTheBoat) {
    expectBait("N 30 m", 0, 30);
    expectBait("30 m, N", 0, 30);
    expectBait("90 25m", 25, 0);
    expectBait("E, 25,5 m", 25.5, 0);
    expectBait("180° 300 m", 0, -300);
    expectBait("SW 40 m", -40 * std::sqrt(0.5), -40 * std::sqrt(0.5));
    expectBait("100 ft W", -30.48, 0);
    expectBait("100 ft W", -30.48, 0, preferences::UnitSystem::imperial);
}

TEST(BaitPlaceTyped, TakesAPositionWithinACastOrTwo) {
    const auto place = baitPlaceTyped("55.1952, 3.1043", boat, metric);
    ASSERT_TRUE(place);
    EXPECT_EQ(*place, (geo::LonLat{3.1043, 55.1952}));
    EXPECT_EQ(baitPlaceTyped("55.1952 3.1043", boat, metric), place)
        << "two numbers are a position, and not 3 m somewhere";
}

TEST(BaitPlaceTyped, RefusesWhatIsFarOrNoPlace) {
    for (const char* text :
         {"", "NE", "30 m", "N 30", "N -30 m", "N 301 m", "30 m up", "55.205, 3.1041"}) {
        EXPECT_FALSE(baitPlaceTyped(text, boat, metric)) << text;
    }
}

TEST(BaitPlaceTyped, TakesWhatTheProgramItselfShows) {
    for (const auto units : {metric, preferences::UnitSystem::imperial}) {
        for (int bearing_deg = 0; bearing_deg < 360; bearing_deg += 7) {
            const geo::Course course{units::Length::metres(40.0),
                                     units::Bearing::degrees(bearing_deg)};
            const geo::LonLat bait = geo::destination(boat, course);
            const QString shown = baitPlaceWords(bait, boat, Words(units));
            const auto typed = baitPlaceTyped(shown, boat, units);
            ASSERT_TRUE(typed) << shown.toStdString();
            EXPECT_LT(geo::courseBetween(*typed, bait).distance.inMetres(), 0.7)
                << shown.toStdString();
        }
    }
}

} // namespace

} // namespace wording
