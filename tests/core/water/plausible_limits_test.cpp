// SPDX-License-Identifier: GPL-3.0-or-later
// The limits of what can belong to a water, at each of them and just short of it.
#include "core/water/steps/check_plausible.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace {

using namespace water;

constexpr geo::LonLat home{3.1, 55.2};

soundings::SurveyDay dayAt(geo::LonLat place, std::vector<double> depths_m) {
    soundings::SurveyDay day;
    for (const double depth_m : depths_m) {
        day.soundings.edit().push_back({place, units::Depth::metres(depth_m), {}});
    }
    return day;
}

/// `count` soundings 20 m apart from west to east, all of one depth.
soundings::SurveyDay lineOf(int count, double depth_m, double north_m = 0.0) {
    const geo::WaterFrame frame = geo::WaterFrame::centredOn(home).value();
    soundings::SurveyDay day;
    for (int i = 0; i < count; ++i) {
        day.soundings.edit().push_back(
            {frame.toEarth(geo::WaterPoint{20.0 * i, north_m}), units::Depth::metres(depth_m), {}});
    }
    return day;
}

Water sounded(const soundings::SurveyDay& day) {
    Water water;
    water.frame = geo::WaterFrame::centredOn(home).value();
    water.days = {day};
    return water;
}

std::vector<geo::LonLatPiece> triangleAt(geo::LonLat p) {
    return {{{p, {p.lon_deg + 0.001, p.lat_deg}, {p.lon_deg, p.lat_deg + 0.001}}, {}}};
}

geo::LonLat north(double metres) {
    return geo::destination(home, {units::Length::metres(metres), units::Bearing::degrees(0.0)});
}

TEST(PlausibleLimits, AFileTwentyKilometresAwayBelongsToAnotherWater) {
    const Water water = sounded(dayAt(home, {4.0, 4.0, 4.0}));
    EXPECT_TRUE(checkPlausible(water, dayAt(north(19999.0), {4.0}), "a"));
    const auto far = checkPlausible(water, dayAt(north(20001.0), {4.0}), "a");
    ASSERT_FALSE(far);
    EXPECT_EQ(far.error().kind, base::ErrorKind::unusableInput);
    EXPECT_EQ(far.error().what, "the file lies 20 km from the rest of the water");
    EXPECT_EQ(far.error().where, "a");
    EXPECT_EQ(far.error().whatToDo,
              "check that it belongs to this water, and its coordinate system");
}

TEST(PlausibleLimits, MeasureFromTheShoreWhereThereIsOne) {
    Water water = sounded(dayAt(north(30000.0), {4.0}));
    water.shoreline = triangleAt(home);
    EXPECT_TRUE(checkPlausible(water, dayAt(home, {4.0}), "a"));
    EXPECT_FALSE(checkPlausible(water, dayAt(north(30000.0), {4.0}), "a"));
}

TEST(PlausibleLimits, GoByTheMiddleSoThatASingleWildPositionDoesNoHarm) {
    soundings::SurveyDay day = dayAt(home, {4.0, 4.0, 4.0});
    day.soundings.edit()[0].place = {0.0, 0.0};
    EXPECT_TRUE(checkPlausible(sounded(dayAt(home, {4.0})), day, "a"));
}

TEST(PlausibleLimits, SwappedCoordinatesAreNamedOnlyWhereSwappingBringsThemHome) {
    const Water water = sounded(dayAt(home, {4.0}));
    const auto swapped = checkPlausible(water, dayAt({home.lat_deg, home.lon_deg}, {4.0}), "a");
    ASSERT_FALSE(swapped);
    EXPECT_EQ(swapped.error().whatToDo,
              "longitude and latitude look swapped: choose the columns the other way round");
    const auto elsewhere = checkPlausible(water, dayAt({55.2, 13.1}, {4.0}), "a");
    ASSERT_FALSE(elsewhere);
    EXPECT_EQ(elsewhere.error().whatToDo,
              "check that it belongs to this water, and its coordinate system");
}

TEST(PlausibleLimits, HalfOfTheDepthsMayBeAHundredMetresAndNoMore) {
    EXPECT_TRUE(checkPlausible(Water(), dayAt(home, {300.0, 100.0, 2.0}), "a"));
    const auto deep = checkPlausible(Water(), dayAt(home, {300.0, 100.6, 2.0}), "a");
    ASSERT_FALSE(deep);
    EXPECT_EQ(deep.error().what, "half of its depths are over 101 m, which no stillwater has");
    EXPECT_EQ(deep.error().whatToDo,
              "check the unit of the depths (unit ft) and which column they are in");
    EXPECT_TRUE(checkPlausible(Water(), dayAt(home, {}), "a"));
}

TEST(PlausibleLimits, FeetForMetresAreToldWithinTwelvePercentEitherWay) {
    struct Row {
        double ratio;
        const char* says; ///< Nullptr: nothing is wrong.
    };
    const Row rows[] = {{3.2808 * 0.881, "3 times those already sounded there: feet taken for"},
                        {3.2808, "3.3 times those already sounded there: feet taken for metres"},
                        {3.2808 * 1.119, "3.7 times"},
                        {3.2808 * 0.879, nullptr},
                        {3.2808 * 1.121, nullptr},
                        {0.3048 * 0.881, "0.27 times"},
                        {0.3048, "0.30 times those already sounded there: metres taken for feet"},
                        {0.3048 * 1.119, "0.34 times"},
                        {0.3048 * 0.879, nullptr},
                        {0.3048 * 1.121, nullptr},
                        {1.0, nullptr}};
    const Water water = sounded(lineOf(40, 5.0));
    for (const Row& row : rows) {
        const auto result = checkPlausible(water, lineOf(40, 5.0 * row.ratio), "a");
        EXPECT_EQ(result.has_value(), row.says == nullptr) << row.ratio;
        if (!result && row.says != nullptr && row.ratio != rows[0].ratio) {
            EXPECT_NE(result.error().what.find(row.says), std::string::npos) << result.error().what;
        }
    }
    EXPECT_EQ(checkPlausible(water, lineOf(40, 5.0 / 0.3048), "a").error().whatToDo,
              "say that the depths are in feet (unit ft)");
    EXPECT_EQ(checkPlausible(water, lineOf(40, 5.0 * 0.3048), "a").error().whatToDo,
              "say that the depths are in metres (unit m)");
}

TEST(PlausibleLimits, TellTheUnitFromThirtyPairsOfTheSamePlace) {
    const double feet = 5.0 / 0.3048;
    const Water water = sounded(lineOf(200, 5.0));
    EXPECT_FALSE(checkPlausible(water, lineOf(30, feet), "a"));
    EXPECT_TRUE(checkPlausible(water, lineOf(29, feet), "a")) << "too few to tell";
    EXPECT_FALSE(checkPlausible(water, lineOf(40, feet, 7.9), "a"));
    EXPECT_TRUE(checkPlausible(water, lineOf(40, feet, 8.1), "a")) << "not the same place";
    EXPECT_TRUE(checkPlausible(sounded(lineOf(40, 1.0)), lineOf(40, 1.0 / 0.3048), "a"))
        << "what is a metre deep or less says nothing of the unit";
    EXPECT_FALSE(checkPlausible(sounded(lineOf(40, 1.01)), lineOf(40, 1.01 / 0.3048), "a"));
    Water unframed = water;
    unframed.frame.reset();
    EXPECT_TRUE(checkPlausible(unframed, lineOf(40, feet), "a"));
}

TEST(PlausibleLimits, AShoreLiesWhereTheSoundingsAreAndCrossesItselfNowhere) {
    Water water = sounded(dayAt(home, {4.0}));
    EXPECT_TRUE(checkShorePlausible(water, triangleAt(north(19000.0)), "s"));
    const auto far = checkShorePlausible(water, triangleAt(north(21000.0)), "s");
    ASSERT_FALSE(far);
    EXPECT_EQ(far.error().what, "the shore lies 21 km from the rest of the water");
    water.shoreline = triangleAt(north(90000.0)); // to be replaced: it does not count
    EXPECT_TRUE(checkShorePlausible(water, triangleAt(home), "s"));
    const auto crossed = checkShorePlausible(
        {}, {{{{3.1, 55.2}, {3.11, 55.21}, {3.11, 55.2}, {3.1, 55.21}}, {}}}, "s.geojson");
    ASSERT_FALSE(crossed);
    EXPECT_EQ(crossed.error().what, "the shore crosses itself");
    EXPECT_TRUE(crossed.error().where.starts_with("s.geojson, longitude 3.105"))
        << crossed.error().where;
    const auto wide =
        checkShorePlausible({}, {{{{3.1, 55.2}, {9.1, 55.2}, {3.1, 55.3}}, {}}}, "s.geojson");
    ASSERT_FALSE(wide);
    EXPECT_EQ(wide.error().where, "s.geojson");
    EXPECT_NE(wide.error().what.find("too wide for one water"), std::string::npos);
}

} // namespace
