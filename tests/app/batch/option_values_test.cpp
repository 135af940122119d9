// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/option_values.h"

#include <gtest/gtest.h>

namespace {

using base::ErrorKind;

/// The refusal names the option, what was given and what it takes.
template <class T>
void expectWrong(const base::Result<T>& result, const std::string& option, const std::string& given,
                 const std::string& takes) {
    ASSERT_FALSE(result.has_value()) << given;
    EXPECT_EQ(result.error().kind, ErrorKind::wrongUse) << given;
    EXPECT_EQ(result.error().where, option);
    EXPECT_NE(result.error().what.find("'" + given + "'"), std::string::npos)
        << result.error().what;
    EXPECT_NE(result.error().whatToDo.find(takes), std::string::npos) << result.error().whatToDo;
}

TEST(OptionValues, ColumnsGoToTheRolesThatTheyAreNamedFor) {
    const auto all = batch::columnsFrom("x=east,y=north,depth=d,time=t");
    ASSERT_TRUE(all.has_value());
    EXPECT_EQ(*all, (readers::ColumnChoice{"east", "north", "d", "t"}));
    EXPECT_EQ(batch::columnsFrom("depth=3").value(), (readers::ColumnChoice{"", "", "3", ""}));
    for (const char* given : {"x", "=a", "x=", "x=a,y", "x=a,,y=b"}) {
        expectWrong(batch::columnsFrom(given), "--columns", given, "x=COL");
    }
    expectWrong(batch::columnsFrom("x=a,z=b"), "--columns", "z", "x, y, depth and time");
}

TEST(OptionValues, ReferenceSystemsAreNumbersWithOrWithoutTheirAuthority) {
    EXPECT_EQ(batch::epsgFrom("EPSG:25833").value(), 25833);
    EXPECT_EQ(batch::epsgFrom("epsg:4326").value(), 4326);
    EXPECT_EQ(batch::epsgFrom("25831").value(), 25831);
    EXPECT_EQ(batch::epsgFrom("1024").value(), 1024);
    EXPECT_EQ(batch::epsgFrom("100000").value(), 100000);
    for (const char* given : {"1023", "100001", "EPSG:", "EPSG:x", "ESRI:102100", "-4326", ""}) {
        expectWrong(batch::epsgFrom(given), "--crs", given, "EPSG:25833");
    }
}

TEST(OptionValues, UnitsOfDepthAreMetresFeetAndFathoms) {
    EXPECT_EQ(batch::unitFrom("m").value(), readers::DepthUnit::metres);
    EXPECT_EQ(batch::unitFrom("ft").value(), readers::DepthUnit::feet);
    EXPECT_EQ(batch::unitFrom("fathom").value(), readers::DepthUnit::fathoms);
    expectWrong(batch::unitFrom("cubit"), "--unit", "cubit", "m, ft or fathom");
}

/// The bands of a water that has some, after what was given.
base::Result<contours::Bands> bandsFrom(const std::string& edges, std::optional<double> limit_m,
                                        const contours::Bands& before) {
    water::Settings settings;
    settings.bands = before;
    if (auto taken = batch::takeBands(edges, limit_m, settings); !taken) {
        return std::unexpected(taken.error());
    }
    return *settings.bands;
}

TEST(OptionValues, ALimitAloneLeavesTheBandsToBeChosen) {
    water::Settings settings;
    ASSERT_TRUE(batch::takeBands("", std::nullopt, settings).has_value());
    EXPECT_EQ(settings, water::Settings());
    ASSERT_TRUE(batch::takeBands("", 5.5, settings).has_value());
    EXPECT_FALSE(settings.bands);
    EXPECT_EQ(settings.limit, units::Depth::metres(5.5));
    ASSERT_TRUE(batch::takeBands("2,4", std::nullopt, settings).has_value());
    EXPECT_EQ(settings.bands->limit(), units::Depth::metres(5.5)) << "the limit that was there";
}

TEST(OptionValues, BandsTakeEdgesAndLimitEachOnItsOwn) {
    const auto before =
        contours::Bands::make({units::Depth::metres(1.0), units::Depth::metres(5.0)},
                              units::Depth::metres(7.0))
            .value();
    EXPECT_EQ(bandsFrom("", std::nullopt, before).value(), before);
    const auto edges = bandsFrom("2,4.5,6", std::nullopt, before);
    ASSERT_TRUE(edges.has_value());
    EXPECT_EQ(edges->edges(), (std::vector{units::Depth::metres(2.0), units::Depth::metres(4.5),
                                           units::Depth::metres(6.0)}));
    EXPECT_EQ(edges->limit(), units::Depth::metres(7.0));
    const auto limit = bandsFrom("", 9.25, before);
    ASSERT_TRUE(limit.has_value());
    EXPECT_EQ(limit->edges(), before.edges());
    EXPECT_EQ(limit->limit(), units::Depth::metres(9.25));
    expectWrong(bandsFrom("2,x,6", std::nullopt, before), "--band-edges", "x", "2,4,6");
    for (const char* given : {"4,2", "2,2", "0,2", "-1,2"}) {
        const auto wrong = bandsFrom(given, std::nullopt, before);
        ASSERT_FALSE(wrong.has_value()) << given;
        EXPECT_EQ(wrong.error().kind, ErrorKind::wrongUse);
        EXPECT_EQ(wrong.error().where, "--band-edges") << given;
    }
    for (const double given : {0.0, -9.0}) {
        const auto wrong = bandsFrom("2,4", given, before);
        ASSERT_FALSE(wrong.has_value()) << given;
        EXPECT_EQ(wrong.error().where, "--limit-depth") << given;
    }
}

TEST(OptionValues, PlacesAreLongitudeThenLatitude) {
    const auto place = batch::placeFrom("--launch", "3.125,-55.5");
    ASSERT_TRUE(place.has_value());
    EXPECT_EQ(place->lon_deg, 3.125);
    EXPECT_EQ(place->lat_deg, -55.5);
    for (const char* given : {"3.1", "3.1,55.2,4", "3.1,x", "x,55.2", "3.1,90.5", "200,55", ""}) {
        expectWrong(batch::placeFrom("--launch", given), "--launch", given, "longitude,latitude");
    }
}

TEST(OptionValues, DaysAndTimesAreAsTheyAreWritten) {
    EXPECT_EQ(batch::dayFrom("--date", "2026-11-27").value(),
              units::Day(std::chrono::year(2026), std::chrono::month(11), std::chrono::day(27)));
    EXPECT_EQ(batch::timeOfDayFrom("--start", "07:40").value(),
              std::chrono::hours(7) + std::chrono::minutes(40));
    for (const char* given : {"27.11.2026", "2026-02-30", "tomorrow", ""}) {
        expectWrong(batch::dayFrom("--from", given), "--from", given, "2026-11-27");
    }
    for (const char* given : {"24:00", "7.40", "noon", ""}) {
        expectWrong(batch::timeOfDayFrom("--end", given), "--end", given, "07:40");
    }
}

TEST(OptionValues, EachFactorTakesItsWeightAndLeavesTheOthers) {
    marks::Weights before;
    before.set(marks::FactorKind::trust, 0.123);
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        const auto weights = batch::weightsFrom(std::string(marks::nameOf(kind)) + "=2.5", before);
        ASSERT_TRUE(weights.has_value()) << marks::nameOf(kind);
        for (const marks::FactorKind other : marks::allFactorKinds) {
            EXPECT_EQ(weights->of(other), other == kind ? 2.5 : before.of(other));
        }
    }
    const auto two = batch::weightsFrom("depth=0,drop_off=3", before);
    ASSERT_TRUE(two.has_value());
    EXPECT_EQ(two->of(marks::FactorKind::depth), 0.0) << "not at all";
    EXPECT_EQ(two->of(marks::FactorKind::dropOff), 3.0);
    expectWrong(batch::weightsFrom("depth", before), "--weights", "depth", "factor=W");
    expectWrong(batch::weightsFrom("depth=x", before), "--weights", "x", "from 0 up");
    expectWrong(batch::weightsFrom("depth=-0.1", before), "--weights", "-0.1", "from 0 up");
    expectWrong(
        batch::weightsFrom("luck=1", before), "--weights", "luck",
        "depth, drop_off, weed_edge, feature, windward, shelter, record, less_tried, trust");
}

} // namespace
