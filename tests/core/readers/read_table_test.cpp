// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_table.h"

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

TEST(ReadTable, TakesDecimalCommasSemicolonsAndFeet) {
    SoundingFileSettings settings;
    settings.unit = DepthUnit::feet;
    const auto read = readText("lon;lat;depth;time\r\n"
                               "3,110500;55,203459;9,9;2026-09-19T07:58:00Z\r\n"
                               "3,110529;55,203462;10,0;2026-09-19T07:58:01Z\r\n",
                               settings);
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->soundings.size(), 2U);
    EXPECT_EQ(read->soundings[0].place, (geo::LonLat{3.1105, 55.203459}));
    EXPECT_DOUBLE_EQ(read->soundings[1].shown.inMetres(), 3.048);
    EXPECT_EQ(units::isoText(*read->soundings[1].time), "2026-09-19T07:58:01Z");
}

TEST(ReadTable, ReadsTheUnitFromTheColumnsName) {
    const auto read = readText("Latitude,Longitude,Depth (ft)\n55.2,3.1,10\n55.3,3.2,20\n");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->soundings[0].place, (geo::LonLat{3.1, 55.2}));
    EXPECT_DOUBLE_EQ(read->soundings[0].shown.inMetres(), 3.048);
    ASSERT_FALSE(read->report.notes.empty());
}

TEST(ReadTable, ReadsDegreesMinutesAndSeconds) {
    const auto read = readText("lat\tlon\tdepth\n53°30'07.2\"N\t8°05'25.8\"W\t4.0\n"
                               "N53 30.12\tW8 5.43\t4.5\n");
    ASSERT_TRUE(read) << read.error().sentence();
    for (const soundings::Sounding& sounding : read->soundings) {
        EXPECT_NEAR(sounding.place.lat_deg, 53.502, 1e-9);
        EXPECT_NEAR(sounding.place.lon_deg, -8.0905, 1e-9);
    }
}

TEST(ReadTable, BringsProjectedCoordinatesToDegrees) {
    const std::string text = "x,y,z\n559557.9688,5939395.4780,3.5\n559558.0,5939396.0,3.6\n";
    const auto without = readText(text);
    ASSERT_FALSE(without);
    EXPECT_NE(without.error().whatToDo.find("EPSG"), std::string::npos);
    SoundingFileSettings settings;
    settings.epsg = 32629;
    const auto read = readText(text, settings);
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_NEAR(read->soundings[0].place.lon_deg, -8.1, 1e-8);
    EXPECT_NEAR(read->soundings[0].place.lat_deg, 53.6, 1e-8);
}

TEST(ReadTable, UsesTheRestWhereRowsAreBroken) {
    const auto read = readText("lon,lat,depth\n3.1,55.2,4\n3.1,55.2\n3.1,55.2,5,6\n3.1,,5\n"
                               "3.1,55.2,\n3.1,55.2,deep\n0,0,5\n3.1,55.2,nan\n3.1,95.2,5\n"
                               "3.1,55.2,-4\n3.1,55.2,4.5\n");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->report.read, 11U);
    EXPECT_EQ(read->report.used, 2U);
    const auto& refused = read->report.refused;
    EXPECT_EQ(refused.at("wrong_columns").count, 2U);
    EXPECT_EQ(refused.at("wrong_columns").firstLine, 3U);
    EXPECT_EQ(refused.at("wrong_columns").firstText, "3.1,55.2");
    EXPECT_EQ(refused.at("no_position").count, 1U);
    EXPECT_EQ(refused.at("no_depth").count, 1U);
    EXPECT_EQ(refused.at("not_a_number").count, 2U);
    EXPECT_EQ(refused.at("zero_position").count, 1U);
    EXPECT_EQ(refused.at("off_earth").count, 1U);
    EXPECT_EQ(refused.at("negative_depth").count, 1U);
}

TEST(ReadTable, ReadsFathomsByNameAndByChoice) {
    const auto named = readText("lon,lat,depth (fathoms)\n3.1,55.2,2\n3.2,55.2,2.5\n");
    ASSERT_TRUE(named);
    EXPECT_EQ(named->soundings[0].shown, units::Depth::fathoms(2.0));
    SoundingFileSettings settings;
    settings.unit = DepthUnit::fathoms;
    const auto chosen = readText("lon,lat,depth\n3.1,55.2,2\n3.2,55.2,2.5\n", settings);
    ASSERT_TRUE(chosen);
    EXPECT_EQ(chosen->soundings[1].shown, units::Depth::fathoms(2.5));
}

TEST(ReadTable, ReadsATableWithoutHeaderAndSaysWhatItTook) {
    const auto read = readText("3.123456\t55.223456\t3.2\n3.123457\t55.223457\t3.4\n");
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->soundings.size(), 2U);
    EXPECT_EQ(read->soundings[1].place, (geo::LonLat{3.123457, 55.223457}));
    EXPECT_EQ(read->soundings[1].shown, units::Depth::metres(3.4));
    ASSERT_EQ(read->report.notes.size(), 1U);
    EXPECT_NE(read->report.notes[0].find("without a header"), std::string::npos);
}

TEST(ReadTable, ReadsDecimalCommasInDegreesAndMinutes) {
    const auto read =
        readText("lat;lon;tiefe\n53 30,12 N;8 5,43 W;4,25\n53 30,13 N;8 5,44 W;4,5\n");
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_NEAR(read->soundings[0].place.lat_deg, 53.502, 1e-9);
    EXPECT_NEAR(read->soundings[0].place.lon_deg, -8.0905, 1e-9);
    EXPECT_EQ(read->soundings[0].shown, units::Depth::metres(4.25));
}

TEST(ReadTable, RefusesMinutesBeyondSixty) {
    const auto read = readText("lat,lon,depth\n53 61.0 N,8 5.43 W,4\n53 30.0 N,8 5.43 W,5\n");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->soundings.size(), 1U);
    EXPECT_EQ(read->report.refused.at("not_a_number").count, 1U);
}

TEST(ReadTable, CountsProjectedPlacesThatAreNowhere) {
    SoundingFileSettings settings;
    settings.epsg = 32629;
    const auto read = readText("x,y,z\n559557.9688,5939395.4780,3.5\n1e300,1e300,3.6\n", settings);
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->soundings.size(), 1U);
    EXPECT_EQ(read->report.refused.at("off_earth").count, 1U);
    settings.epsg = 999999;
    EXPECT_FALSE(readText("x,y,z\n559557.9688,5939395.4780,3.5\n", settings));
}

TEST(ReadTable, TurnsHeightsIntoDepths) {
    const auto read = readText("lon,lat,z\n3.1,55.2,-4\n3.1,55.3,-5\n3.1,55.4,-6\n");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->soundings[2].shown, units::Depth::metres(6.0));
    ASSERT_EQ(read->report.notes.size(), 1U);
}

TEST(ReadTable, TurnsSwappedCoordinatesThatCannotBe) {
    const auto read = readText("lon,lat,depth\n55.2,103.1,4\n55.3,103.1,5\n");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->soundings[0].place, (geo::LonLat{103.1, 55.2}));
    ASSERT_EQ(read->report.notes.size(), 1U);
    EXPECT_NE(read->report.notes[0].find("swapped"), std::string::npos);
}

TEST(ReadTable, SaysWhenDepthsLookLikeFeet) {
    const auto read = readText("lon,lat,depth\n3.1,55.2,80\n3.1,55.3,90\n3.1,55.4,70\n");
    ASSERT_TRUE(read);
    ASSERT_EQ(read->report.notes.size(), 1U);
    EXPECT_NE(read->report.notes[0].find("feet"), std::string::npos);
}

TEST(ReadTable, TakesTheColumnsThatTheUserNamesOrNumbers) {
    SoundingFileSettings settings;
    settings.columns = {"2", "1", "Shown", ""};
    const auto read = readText("a,b,c,shown\n55.2,3.1,9,4\n55.3,3.2,9,5\n", settings);
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->soundings[0].place, (geo::LonLat{3.1, 55.2}));
    settings.columns.depth = "elsewhere";
    const auto wrong = readText("a,b,c,shown\n55.2,3.1,9,4\n", settings);
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().kind, base::ErrorKind::wrongUse);
    EXPECT_NE(wrong.error().whatToDo.find("shown"), std::string::npos);
}

TEST(ReadTable, SaysWhichColumnsThereAreWhereNoneTellsTheDepth) {
    const auto read = readText("lon,lat,speed\n3.1,55.2,9\n");
    ASSERT_FALSE(read);
    EXPECT_NE(read.error().what.find("depth"), std::string::npos);
    EXPECT_NE(read.error().what.find("lon, lat, speed"), std::string::npos);
}

TEST(ReadTable, ReadsUtf16AndTheBytesOfItsMark) {
    std::string text = "\xFF\xFE";
    for (const char c : std::string("lon,lat,depth\r\n3.1,55.2,4\r\n")) {
        text += c;
        text += '\0';
    }
    const auto read = readText(text);
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->soundings.size(), 1U);
}

TEST(ReadTable, JoinsDatesAndTimesOfTwoColumns) {
    const auto read = readText("date,time,lat,lon,depth\n13/08/2021,10:33:57,53.1,8.6,0.6\n"
                               "13/08/2021,10:33:59,53.1,8.6,0.7\n");
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(units::isoText(*read->soundings[1].time), "2021-08-13T10:33:59Z");
}

TEST(ReadTablePreview, ShowsWhatWasGuessed) {
    const support::ScratchFolder scratch;
    const auto preview = readTablePreview(
        scratch.file("t.csv",
                     "# a remark\nlon;lat;depth_ft;time\n3,1;55,2;9,9;2026-09-19T07:58:00Z\n"
                     "3,2;55,2;9,8;2026-09-19T07:58:01Z\n"),
        {});
    ASSERT_TRUE(preview);
    EXPECT_EQ(preview->separator, ';');
    EXPECT_EQ(preview->decimalMark, ',');
    EXPECT_TRUE(preview->hasHeader);
    EXPECT_EQ(preview->unit, DepthUnit::feet);
    EXPECT_TRUE(preview->isUnitTold);
    EXPECT_EQ(preview->firstDataLine, 3U);
    EXPECT_EQ(preview->roles, (std::vector<ColumnRole>{ColumnRole::x, ColumnRole::y,
                                                       ColumnRole::depth, ColumnRole::time}));
    ASSERT_EQ(preview->rows.size(), 2U);
    EXPECT_EQ(preview->rows[1][0], "3,2");
    EXPECT_EQ(preview->columnList(), "lon, lat, depth_ft, time");
}

TEST(ReadTablePreview, TellsAUnitThatIsSaidFromOneThatIsOnlyUsual) {
    const support::ScratchFolder scratch;
    const auto previewUnder = [&scratch](const std::string& depth) {
        return readTablePreview(
            scratch.file("u.csv", "lon,lat," + depth + "\n3.1,55.2,9.9\n3.2,55.2,9.8\n"), {});
    };
    const auto said = previewUnder("depth_m");
    const auto usual = previewUnder("depth");
    ASSERT_TRUE(said && usual);
    EXPECT_EQ(said->unit, usual->unit);
    EXPECT_TRUE(said->isUnitTold);
    EXPECT_FALSE(usual->isUnitTold);
}

class StopsAtOnce : public base::Progress {
public:
    [[nodiscard]] bool stopAsked() const override { return true; }
};

TEST(ReadTable, StopsWhenAsked) {
    const support::ScratchFolder scratch;
    std::string text = "lon,lat,depth\n";
    for (int i = 0; i < 5000; ++i) {
        text += "3.1,55.2,4\n";
    }
    StopsAtOnce progress;
    const auto read = readTable(scratch.file("t.csv", text), {}, progress);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, base::ErrorKind::cancelled);
}

} // namespace

} // namespace readers
