// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/typed_place.h"

#include "app/wording/words.h"

#include <gtest/gtest.h>

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

} // namespace

} // namespace wording
