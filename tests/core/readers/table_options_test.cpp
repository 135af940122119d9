// SPDX-License-Identifier: GPL-3.0-or-later
// Every option of a table of soundings, and every guess, against exact depths, places and times.
#include "core/readers/read_table.h"

#include "core/readers/table_guess.h"
#include "core/readers/table_text.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace readers {

namespace {

base::Result<ReadSoundings> readText(const std::string& text,
                                     const SoundingFileSettings& settings = {}) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    return readTable(scratch.file("table.csv", text), settings, progress);
}

struct UnitRow {
    const char* header;
    std::optional<DepthUnit> chosen;
    double ten_m; ///< What 10 of them are.
    const char* note;
};

TEST(TableUnit, IsTheChosenOneThenThatOfTheColumnsNameThenMetres) {
    using enum DepthUnit;
    const std::vector<UnitRow> rows{
        {"depth", {}, 10.0, ""},
        {"depth_m", {}, 10.0, ""},
        {"Depth (metres)", {}, 10.0, ""},
        {"depth_ft", {}, 3.048, "the depth column's name says ft"},
        {"Depth (feet)", {}, 3.048, "the depth column's name says ft"},
        {"depth foot", {}, 3.048, "the depth column's name says ft"},
        {"depth_fathom", {}, 18.288, "the depth column's name says fathom"},
        {"depth fathoms", {}, 18.288, "the depth column's name says fathom"},
        {"depth fm", {}, 18.288, "the depth column's name says fathom"},
        {"depth", metres, 10.0, ""},
        {"depth", feet, 3.048, ""},
        {"depth", fathoms, 18.288, ""},
        {"depth_ft", metres, 10.0, ""},
        {"depth_m", feet, 3.048, ""},
        {"depth_ft", fathoms, 18.288, ""}};
    for (const UnitRow& row : rows) {
        SoundingFileSettings settings;
        settings.unit = row.chosen;
        const auto read = readText(
            std::string("lon,lat,") + row.header + "\n3.1,55.2,10\n3.1,55.2,10\n", settings);
        ASSERT_TRUE(read) << row.header;
        EXPECT_NEAR(read->soundings[0].shown.inMetres(), row.ten_m, 1e-12) << row.header;
        EXPECT_EQ(read->report.notes, *row.note == '\0' ? std::vector<std::string>{}
                                                        : std::vector<std::string>{row.note})
            << row.header;
        EXPECT_EQ(read->depthSource, row.header);
        EXPECT_EQ(read->kind, SoundingFileKind::table);
        EXPECT_EQ(read->reference, DepthReference::unknown);
    }
}

TEST(TableColumns, EachChoiceReachesTheValueThatItNames) {
    const std::string text = "lon,lat,depth,time,a,b,c,d\n"
                             "3.1,55.2,4,2026-09-05T07:00:00Z,3.5,55.6,7,2026-09-06T08:00:00Z\n"
                             "3.1,55.2,4,2026-09-05T07:00:01Z,3.5,55.6,7,2026-09-06T08:00:01Z\n";
    const auto firstWith = [&](const ColumnChoice& choice) {
        SoundingFileSettings settings;
        settings.columns = choice;
        const auto read = readText(text, settings);
        EXPECT_TRUE(read);
        return read ? read->soundings[0] : soundings::Sounding{};
    };
    const auto at = [](const char* time) { return units::momentFrom(time, units::Clock()); };
    const auto usual = at("2026-09-05T07:00:00Z");
    using units::Depth;
    EXPECT_EQ(firstWith({}), (soundings::Sounding{{3.1, 55.2}, Depth::metres(4), usual}));
    EXPECT_EQ(firstWith({"a", "", "", ""}),
              (soundings::Sounding{{3.5, 55.2}, Depth::metres(4), usual}));
    EXPECT_EQ(firstWith({"", "B", "", ""}),
              (soundings::Sounding{{3.1, 55.6}, Depth::metres(4), usual}));
    EXPECT_EQ(firstWith({"", "", "7", ""}),
              (soundings::Sounding{{3.1, 55.2}, Depth::metres(7), usual}));
    EXPECT_EQ(firstWith({"", "", "", " d "}),
              (soundings::Sounding{{3.1, 55.2}, Depth::metres(4), at("2026-09-06T08:00:00Z")}));
    for (const char* none : {"0", "9", "-1", "depht"}) {
        SoundingFileSettings settings;
        settings.columns.depth = none;
        const auto read = readText(text, settings);
        ASSERT_FALSE(read) << none;
        EXPECT_EQ(read.error().kind, base::ErrorKind::wrongUse) << none;
    }
}

TEST(TableColumns, AreKnownByTheirNamesInSeveralLanguages) {
    for (const char* header :
         {"longitude,latitude,depth", "LON,LAT,DEPTH", "long,lat,tiefe", "lng,lat,profondeur",
          "easting,northing,sounding", "east,north,z", "x,y,d", "e,n,z"}) {
        const auto read = readText(std::string(header) + "\n3.1,55.2,4.5\n3.1,55.2,4.5\n");
        ASSERT_TRUE(read) << header;
        EXPECT_EQ(read->soundings[0].place, (geo::LonLat{3.1, 55.2})) << header;
        EXPECT_EQ(read->soundings[0].shown, units::Depth::metres(4.5)) << header;
    }
    // The best word counts, wherever it stands.
    const auto best = readText("d,x,y,depth,lat,lon\n9,8,7,4.5,55.2,3.1\n9,8,7,4.5,55.2,3.1\n");
    ASSERT_TRUE(best);
    EXPECT_EQ(best->soundings[0].place, (geo::LonLat{3.1, 55.2}));
    EXPECT_EQ(best->soundings[0].shown, units::Depth::metres(4.5));
}

TEST(TableMarks, AreTheChosenOnesOrTheGuessedOnes) {
    struct Row {
        const char* text;
        std::optional<char> separator;
        std::optional<char> mark;
    };
    const std::vector<Row> rows{{"lon,lat,depth\n3.25,55.5,4.5\n3.25,55.5,4.5\n", {}, {}},
                                {"lon;lat;depth\n3.25;55.5;4.5\n3.25;55.5;4.5\n", {}, {}},
                                {"lon;lat;depth\n3,25;55,5;4,5\n3,25;55,5;4,5\n", {}, {}},
                                {"lon\tlat\tdepth\n3,25\t55,5\t4,5\n3,25\t55,5\t4,5\n", {}, {}},
                                {"lon|lat|depth\n3.25|55.5|4.5\n3.25|55.5|4.5\n", {}, {}},
                                {"lon lat depth\n3.25  55.5 4.5\n3.25 55.5   4.5\n", {}, {}},
                                {"lon;lat;depth\n3,25;55,5;4,5\n", ';', ','},
                                {"lon,lat,depth;x\n3.25,55.5,4.5\n", ',', '.'},
                                {"\"lon\",\"lat\",\"depth\"\n\"3.25\", \"55.5\" ,4.5\n", {}, {}}};
    for (const Row& row : rows) {
        SoundingFileSettings settings;
        settings.separator = row.separator;
        settings.decimalMark = row.mark;
        const auto read = readText(row.text, settings);
        ASSERT_TRUE(read) << row.text;
        EXPECT_EQ(read->soundings[0].place, (geo::LonLat{3.25, 55.5})) << row.text;
        EXPECT_EQ(read->soundings[0].shown, units::Depth::metres(4.5)) << row.text;
    }
}

TEST(TableHeader, IsTakenAsToldAndGuessedOtherwise) {
    const std::string numbers = "3.123456,55.223456,4.5\n3.123457,55.223457,5.5\n";
    SoundingFileSettings settings;
    EXPECT_EQ(readText(numbers)->soundings.size(), 2U);
    settings.columns = {"1", "2", "3", ""};
    settings.hasHeader = true;
    const auto with = readText(numbers, settings);
    ASSERT_TRUE(with);
    ASSERT_EQ(with->soundings.size(), 1U);
    EXPECT_EQ(with->soundings[0].shown, units::Depth::metres(5.5));
    settings.hasHeader = false;
    const auto without = readText("lon,lat,depth\n" + numbers, settings);
    ASSERT_TRUE(without);
    EXPECT_EQ(without->soundings.size(), 2U);
    EXPECT_EQ(without->report.refused.at("not_a_number").count, 1U);
    EXPECT_EQ(without->report.refused.at("not_a_number").firstLine, 1U);
}

TEST(TableHeader, ColumnsWithoutOneAreTimeThenFinePlacesThenDepth) {
    const auto read = readText("17 2026-09-05T07:00:00Z 3.123456 55.223456 4.5\n"
                               "18 2026-09-05T07:00:01Z 3.123457 55.223457 5.5\n");
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->soundings[0].place, (geo::LonLat{3.123456, 55.223456}));
    EXPECT_EQ(read->soundings[0].shown, units::Depth::metres(17)); // The first number left.
    EXPECT_EQ(read->soundings[0].time, units::momentFrom("2026-09-05T07:00:00Z", units::Clock()));
    EXPECT_EQ(read->report.notes,
              (std::vector<std::string>{"without a header, columns 3, 4 and 1 were taken as "
                                        "longitude, latitude and depth"}));
}

struct TimeRow {
    const char* header;
    const char* first;
    const char* second;
    const char* iso; ///< Of the first; null where the soundings are without time.
};

TEST(TableTime, IsReadInEveryForm) {
    const std::vector<TimeRow> rows{
        {"time", "2026-09-05T07:42:00Z", "2026-09-05T07:42:01Z", "2026-09-05T07:42:00Z"},
        {"time", "2026-09-05 07:42:00+01:00", "2026-09-05 07:42:01+01:00", "2026-09-05T06:42:00Z"},
        // By the water's clock, an hour ahead of UTC in London's summer.
        {"time", "2026-09-05 07:42:00", "2026-09-05 07:42:01", "2026-09-05T06:42:00Z"},
        {"time", "2026-12-05 07:42:00", "2026-12-05 07:42:01", "2026-12-05T07:42:00Z"},
        {"timestamp", "1788594120", "1788594121", "2026-09-05T07:42:00Z"},
        {"timestamp", "1788594120250", "1788594121250", "2026-09-05T07:42:00.250Z"},
        {"datetime", "05.09.2026 07:42:00", "25.09.2026 07:42:01", "2026-09-05T06:42:00Z"},
        {"datetime", "9/5/2026 7:42:00", "9/25/2026 7:42:01", "2026-09-05T06:42:00Z"},
        {"date", "2026-09-05 07:42:00", "2026-09-05 07:42:01", "2026-09-05T06:42:00Z"},
        {"date,time", "2026-09-05,07:42:00", "2026-09-05,07:42:01", "2026-09-05T06:42:00Z"},
        {"date,time", "5/9/2026,7:42:00", "25/9/2026,7:42:01", "2026-09-05T06:42:00Z"},
        {"date,time", "20260905,07:42:00", "20260905,07:42:01", "2026-09-05T06:42:00Z"},
        // Across midnight at the water.
        {"date,time", "2026-09-05,00:15:00", "2026-09-05,00:15:01", "2026-09-04T23:15:00Z"},
        {"time", "07:42:00", "07:42:01", nullptr}};
    SoundingFileSettings settings;
    settings.clock = units::Clock::inZone("Europe/London").value();
    for (const TimeRow& row : rows) {
        const auto read = readText(std::string("lon,lat,depth,") + row.header + "\n3.1,55.2,4," +
                                       row.first + "\n3.1,55.2,4," + row.second + "\n",
                                   settings);
        ASSERT_TRUE(read) << row.first;
        ASSERT_EQ(read->soundings.size(), 2U) << row.first;
        const auto& time = read->soundings[0].time;
        EXPECT_EQ(time ? units::isoText(*time) : "none", row.iso == nullptr ? "none" : row.iso)
            << row.first;
        EXPECT_EQ(read->report.notes, row.iso == nullptr
                                          ? std::vector<std::string>{"its times have no date: its "
                                                                     "soundings are without time"}
                                          : std::vector<std::string>{})
            << row.first;
    }
}

TEST(TableTime, ThatIsNoneIsCountedAndAnEmptyOneIsNone) {
    const auto read =
        readText("lon,lat,depth,time\n3.1,55.2,4,2026-09-05T07:42:00Z\n"
                 "3.1,55.2,5,2026-09-31T07:42:00Z\n3.1,55.2,6,\n3.1,55.2,7,"
                 "2026-09-05T07:42:01Z\n3.1,55.2,8,2026-09-05T07:42:02Z\n"
                 "3.1,55.2,8,2026-09-05T07:42:03Z\n3.1,55.2,8,1980-09-05T07:42:03Z\n"
                 "3.1,55.2,8,2080-01-01T00:00:00Z\n3.1,55.2,8,1981-01-01T00:00:00Z\n"
                 "3.1,55.2,8,2026-09-05T07:42:04Z\n3.1,55.2,8,2026-09-05T07:42:05Z\n");
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->report.refused.at("bad_time"),
              (RefusedRows{1, 3, "3.1,55.2,5,2026-09-31T07:42:00Z"}));
    EXPECT_EQ(read->report.refused.at("impossible_time").count, 2U);
    EXPECT_EQ(read->report.refused.at("impossible_time").firstLine, 8U);
    EXPECT_EQ(read->soundings.size(), 8U);
    EXPECT_FALSE(read->soundings[1].time);
    EXPECT_EQ(read->soundings[1].shown, units::Depth::metres(6));
}

TEST(TableRemarks, AreNoRowsAndLinesAreNumberedAsInTheFile) {
    const auto read = readText("# sounded by hand\n% so they say\n\nlon,lat,depth\n// here\n"
                               "3.1,55.2,4\n   \n3.1,,4\n3.1,55.2,5,,\n");
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->report.read, 3U);
    EXPECT_EQ(read->soundings.size(), 2U); // Empty cells at the end of a row are none.
    EXPECT_EQ(read->report.refused.at("no_position"), (RefusedRows{1, 8, "3.1,,4"}));
}

TEST(TableText, ReadsAnglesInEveryForm) {
    const std::vector<std::pair<const char*, double>> angles{
        {"53.502", 53.502},       {"-8.0905", -8.0905},  {"53 30 7.2 N", 53.502},
        {"53 30 7.2 S", -53.502}, {"8°5.43'W", -8.0905}, {"8°5.43'E", 8.0905},
        {"W 8 5 25.8", -8.0905},  {"-8 5.43", -8.0905},  {"s53:30:7.2", -53.502}};
    for (const auto& [text, degrees] : angles) {
        const auto found = angleFrom(text, '.');
        ASSERT_TRUE(found) << text;
        EXPECT_NEAR(*found, degrees, 1e-9) << text;
    }
    for (const char* none : {"", "north", "53 60 0 N", "53 30 60 N", "53 30 7 2 N", "53x"}) {
        EXPECT_FALSE(angleFrom(none, '.')) << none;
    }
}

TEST(TableText, KnowsTheOrderOfADateByAllOfThem) {
    using Texts = std::vector<std::string_view>;
    EXPECT_EQ(dateOrderOf(Texts{"2026-09-05", "2026/10/05"}), DateOrder::yearFirst);
    EXPECT_EQ(dateOrderOf(Texts{"05.09.2026"}), DateOrder::dayFirst); // Both would do.
    EXPECT_EQ(dateOrderOf(Texts{"05/09/2026", "09/25/2026"}), DateOrder::monthFirst);
    EXPECT_FALSE(dateOrderOf(Texts{"25/09/2026", "09/25/2026"}));
    EXPECT_FALSE(dateOrderOf(Texts{}));
    const auto iso = [](std::string_view text, DateOrder order) {
        const auto day = dateFrom(text, order);
        return day ? units::isoText(*day) : std::string("none");
    };
    EXPECT_EQ(iso("3/4/2026", DateOrder::dayFirst), "2026-04-03");
    EXPECT_EQ(iso("3/4/2026", DateOrder::monthFirst), "2026-03-04");
    EXPECT_EQ(iso("20260403", DateOrder::yearFirst), "2026-04-03");
    EXPECT_EQ(iso("2026-02-29", DateOrder::yearFirst), "none");
    EXPECT_EQ(iso("3/4/26", DateOrder::dayFirst), "none");
    EXPECT_EQ(iso("2026-04", DateOrder::yearFirst), "none");
}

TEST(TableRows, PlacesBeyondDegreesNeedTheirSystemAndThatOfDegreesIsNone) {
    SoundingFileSettings settings;
    settings.epsg = 4326;
    const auto degrees = readText("lon,lat,depth\n3.1,55.2,4\n3.1,55.2,4\n", settings);
    ASSERT_TRUE(degrees);
    EXPECT_EQ(degrees->soundings[0].place, (geo::LonLat{3.1, 55.2}));
    const auto none = readText("x,y,z\n181,55.2,4\n182,55.2,4\n");
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().what,
              "its coordinates are no degrees and nothing tells their reference system");
    EXPECT_EQ(none.error().whatToDo, "give its EPSG number");
    EXPECT_TRUE(readText("x,y,z\n180,55.2,4\n180,55.2,4\n"));
}

} // namespace

} // namespace readers
