// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/within_ring.h"
#include "core/weed/note_places.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using namespace weed;

geo::Ring square(double west_m, double south_m, double side_m) {
    return {{west_m, south_m},
            {west_m + side_m, south_m},
            {west_m + side_m, south_m + side_m},
            {west_m, south_m + side_m}};
}

TEST(NotePlaces, LieEvenlyAlongALineFromEndToEnd) {
    const geo::Path line{{0.0, 0.0}, {60.0, 0.0}, {60.0, 40.0}};
    const auto places = placesAlong(line);
    ASSERT_EQ(places.size(), 5U); // 100 m in four gaps of 25 m
    EXPECT_EQ(places.front(), line.front());
    EXPECT_EQ(places.back(), line.back());
    EXPECT_NEAR(places[2].x_m, 50.0, 1e-9);
    EXPECT_NEAR(places[3].x_m, 60.0, 1e-9);
    EXPECT_NEAR(places[3].y_m, 15.0, 1e-9);
    EXPECT_EQ(placesAlong({{3.0, 4.0}}).size(), 1U);
    EXPECT_TRUE(placesAlong({}).empty());
}

TEST(NotePlaces, NeverGrowBeyondTwoHundred) {
    EXPECT_EQ(placesAlong({{0.0, 0.0}, {50'000.0, 0.0}}).size(), 200U);
    const double side = 4000.0;
    const auto within = placesWithin({{0, 0}, {side, 0}, {side, side}, {0, side}});
    EXPECT_GT(within.size(), 150U);
    EXPECT_LE(within.size(), 240U);
}

TEST(NotePlaces, LieInsideTheRingAndCoverIt) {
    const geo::Ring ring{{0.0, 0.0}, {200.0, 0.0}, {200.0, 80.0}, {100.0, 80.0}, {0.0, 160.0}};
    const auto places = placesWithin(ring);
    ASSERT_FALSE(places.empty());
    EXPECT_TRUE(std::ranges::all_of(places, [&](auto p) { return geo::isWithin(ring, p); }));
    for (double x = 5.0; x < 200.0; x += 10.0) {
        const bool isCovered = std::ranges::any_of(places, [x](auto p) {
            return geo::distance_m(p, {x, 40.0}) < 25.0;
        });
        EXPECT_TRUE(isCovered) << x;
    }
}

TEST(NotePlaces, AreAtLeastTheMiddleOfAPatch) {
    EXPECT_EQ(placesWithin({{0, 0}, {4, 0}, {4, 4}, {0, 4}}).size(), 1U);
    EXPECT_TRUE(placesWithin({{0, 0}, {4, 0}}).empty());
}

TEST(NotePlaces, LieTwentyFiveMetresApartAtMostAlongAnyLine) {
    struct Row {
        double length_m;
        std::size_t places;
    };
    for (const Row& row : {Row{10.0, 2},
                           {25.0, 2},
                           {25.1, 3},
                           {50.0, 3},
                           {50.1, 4},
                           {4975.0, 200},
                           {4976.0, 200},
                           {9000.0, 200}}) {
        const auto places =
            placesAlong({{0.0, 0.0}, {0.3 * row.length_m, 0.0}, {row.length_m, 0.0}});
        ASSERT_EQ(places.size(), row.places) << row.length_m;
        for (std::size_t i = 0; i < places.size(); ++i) {
            EXPECT_NEAR(places[i].x_m,
                        row.length_m * static_cast<double>(i) / static_cast<double>(row.places - 1),
                        1e-6);
            EXPECT_EQ(places[i].y_m, 0.0);
        }
    }
    EXPECT_EQ(placesAlong({{3.0, 4.0}}), (std::vector<geo::WaterPoint>{{3.0, 4.0}}));
    EXPECT_EQ(placesAlong({{3.0, 4.0}, {3.0, 4.0}}).size(), 2U);
}

TEST(NotePlaces, FillARingFromItsMiddleInALatticeOfTwentyFiveMetres) {
    const auto places = placesWithin(square(1000.0, 2000.0, 90.0));
    std::vector<geo::WaterPoint> wanted;
    for (const double y_m : {2020.0, 2045.0, 2070.0}) {
        for (const double x_m : {1020.0, 1045.0, 1070.0}) {
            wanted.push_back({x_m, y_m});
        }
    }
    EXPECT_EQ(places, wanted);
    EXPECT_EQ(placesWithin(square(0.0, 0.0, 4.0)), (std::vector<geo::WaterPoint>{{2.0, 2.0}}));
    // A ring twice as long as wide, clockwise, holds 200 places: every 100 m.
    const auto many = placesWithin({{0, 0}, {0, 1000}, {2000, 1000}, {2000, 0}});
    ASSERT_EQ(many.size(), 200U); // 20 columns of 100 m, 10 rows
    EXPECT_NEAR(many[1].x_m - many[0].x_m, 100.0, 1e-9);
    // A bow whose middle lies outside still has that one place.
    EXPECT_EQ(placesWithin({{0, 0}, {9, 0}, {9, 9}, {8, 9}, {8, 1}, {0, 1}}),
              (std::vector<geo::WaterPoint>{{4.5, 4.5}}));
}

} // namespace
