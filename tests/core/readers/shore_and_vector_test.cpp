// SPDX-License-Identifier: GPL-3.0-or-later
// Rings of a shore corner by corner, soundings of vector files and B-12, and how files are told
// apart.
#include "core/readers/read_shoreline.h"
#include "core/readers/read_soundings.h"
#include "core/readers/shore_rings.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace readers {

namespace {

using geo::LonLatPiece;
using geo::LonLatRing;

LonLatRing square(double lon, double lat, double side) {
    return {{lon, lat}, {lon + side, lat}, {lon + side, lat + side}, {lon, lat + side}};
}

TEST(ClosedRing, ClosesWithinThirtyMetresOrATenthOfItsLength) {
    // At 55.2 N: 0.0001 degrees of latitude are 11.13 m, 0.001 of longitude 63.7 m.
    const auto lineOf = [](double size, double open_deg) {
        return LonLatRing{
            {3.1, 55.2}, {3.1 + size, 55.2}, {3.1 + size, 55.2 + size}, {3.1, 55.2 + open_deg}};
    };
    const double small = 0.001; // About 240 m of line: a tenth is less than 30 m.
    EXPECT_EQ(closedRing(lineOf(small, 0.00026)).size(), 4U); // 28.9 m
    EXPECT_TRUE(closedRing(lineOf(small, 0.00028)).empty());  // 31.2 m
    const double large = 0.01;                                // About 2.8 km of line.
    EXPECT_EQ(closedRing(lineOf(large, 0.0024)).size(), 4U);  // 267 m of 2812 m
    EXPECT_TRUE(closedRing(lineOf(large, 0.0027)).empty());   // 301 m of 2782 m
    EXPECT_EQ(closedRing({{3.1, 55.2}, {3.2, 55.2}, {3.2, 55.3}, {3.1, 55.2}}),
              (LonLatRing{{3.1, 55.2}, {3.2, 55.2}, {3.2, 55.3}}));
    EXPECT_TRUE(closedRing({{3.1, 55.2}, {3.2, 55.2}, {3.1, 55.2}}).empty());
    EXPECT_TRUE(closedRing({{3.1, 55.2}, {3.2, 55.2}, {3.1, 55.2}, {3.1, 55.2}}).empty());
}

TEST(Nested, PutsEachIslandIntoTheSmallestRingAroundItInAnyOrder) {
    const LonLatRing lake = square(3.0, 55.0, 1.0);
    const LonLatRing island = square(3.2, 55.2, 0.5);
    const LonLatRing pond = square(3.3, 55.3, 0.2); // On the island.
    const LonLatRing islet = square(3.35, 55.35, 0.05);
    const LonLatRing other = square(5.0, 55.0, 1.0);
    const LonLatRing rock = square(5.5, 55.5, 0.1);
    const std::vector<LonLatPiece> expected{
        {islet, {}}, {other, {rock}}, {pond, {islet}}, {lake, {island}}};
    const auto pieces = nested({rock, islet, other, island, pond, lake});
    ASSERT_EQ(pieces.size(), 3U);
    EXPECT_EQ(pieces[0], expected[1]);
    EXPECT_EQ(pieces[1], expected[2]);
    EXPECT_EQ(pieces[2], expected[3]);
    EXPECT_TRUE(nested({}).empty());
}

TEST(Shoreline, KeepsEveryCornerOfAPolygonAndItsIslands) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const auto shore =
        readShoreline(scratch.file("shore.geojson", R"({"type": "Polygon", "coordinates": [
            [[3.0, 55.0], [3.2, 55.0], [3.2, 55.2], [3.0, 55.1], [3.0, 55.0]],
            [[3.1, 55.05], [3.12, 55.05], [3.12, 55.06], [3.1, 55.05]]]})"),
                      std::nullopt, progress);
    ASSERT_TRUE(shore) << shore.error().sentence();
    EXPECT_EQ(*shore,
              (std::vector<LonLatPiece>{{{{3.0, 55.0}, {3.2, 55.0}, {3.2, 55.2}, {3.0, 55.1}},
                                         {{{3.1, 55.05}, {3.12, 55.05}, {3.12, 55.06}}}}}));
}

TEST(Shoreline, SaysWhatIsWrongWithIt) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const auto errorOf = [&](const char* text) {
        const auto shore = readShoreline(scratch.file("s.geojson", text), std::nullopt, progress);
        return shore ? base::Error{} : shore.error();
    };
    EXPECT_EQ(errorOf(R"({"type": "Point", "coordinates": [3.0, 55.0]})").what,
              "it has neither polygons nor lines");
    EXPECT_EQ(errorOf(R"({"type": "Polygon", "coordinates": [[[3000, 500], [3001, 500],
                          [3001, 501], [3000, 500]]]})")
                  .whatToDo,
              "give the EPSG number of its coordinates");
    const base::Error island = errorOf(R"({"type": "Polygon", "coordinates": [
        [[3.0, 55.0], [3.2, 55.0], [3.2, 55.2], [3.0, 55.0]],
        [[3.1, 155.0], [3.12, 55.05], [3.12, 55.06], [3.1, 155.0]]]})");
    EXPECT_EQ(island.what,
              "the shore has a corner at longitude 3.1, latitude 155, which is not on the Earth");
}

base::Result<ReadSoundings> readText(const char* name, const std::string& text,
                                     const SoundingFileSettings& settings = {}) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    return readSoundings(scratch.file(name, text), settings, progress);
}

std::string pointsOf(const std::vector<std::string>& properties, const std::string& z = "") {
    std::string text;
    for (const std::string& one : properties) {
        text += (text.empty() ? "" : ",") + std::string(R"({"type": "Feature", "properties": {)") +
                one + R"(}, "geometry": {"type": "Point", "coordinates": [3.1, 55.2)" + z + "]}}";
    }
    return R"({"type": "FeatureCollection", "features": [)" + text + "]}";
}

TEST(VectorDepth, StandsInAFieldThatSaysSoOrInTheThirdCoordinate) {
    struct Row {
        std::string properties;
        const char* z;
        const char* chosen;
        double depth_m;
        const char* source;
    };
    const std::vector<Row> rows{{R"("a": 1, "depth": 4.5)", "", "", 4.5, "depth"},
                                {R"("z": 9, "Depth_M": 4.5)", "", "", 4.5, "Depth_M"},
                                {R"("a": 1, "z": 4.5)", "", "", 4.5, "z"},
                                {R"("a": 1, "waterdepth": "4.5")", "", "", 4.5, "waterdepth"},
                                {R"("depth": 9, "other": 4.5)", "", "OTHER", 4.5, "other"},
                                {R"("a": 1)", ", 4.5", "", 4.5, "z"},
                                {R"("a": 1)", ", -4.5", "", 4.5, "z"},
                                {R"("depth": 4.5)", ", 9", "", 4.5, "depth"}};
    for (const Row& row : rows) {
        SoundingFileSettings settings;
        settings.depthSource = row.chosen;
        const auto read =
            readText("v.geojson", pointsOf({row.properties, row.properties}, row.z), settings);
        ASSERT_TRUE(read) << row.properties << ' ' << read.error().sentence();
        ASSERT_EQ(read->soundings.size(), 2U) << row.properties;
        EXPECT_EQ(read->soundings[0].shown, units::Depth::metres(row.depth_m)) << row.properties;
        EXPECT_EQ(read->soundings[0].place, (geo::LonLat{3.1, 55.2}));
        EXPECT_EQ(read->depthSource, row.source) << row.properties;
        EXPECT_EQ(read->kind, SoundingFileKind::vector);
    }
    SoundingFileSettings settings;
    settings.depthSource = "nowhere";
    const auto none = readText("v.geojson", pointsOf({R"("depth": 4)"}), settings);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, base::ErrorKind::wrongUse);
    EXPECT_EQ(none.error().whatToDo, "choose one of: depth");
}

TEST(VectorDepth, IsInTheUnitThatIsChosenAndRowsWithoutAreCounted) {
    SoundingFileSettings settings;
    settings.unit = DepthUnit::feet;
    const auto read = readText("v.geojson",
                               pointsOf({R"("depth": 10, "time": "2026-09-05T07:42:00Z")",
                                         R"("depth": null, "time": "2026-09-05T07:42:01Z")",
                                         R"("depth": 10, "time": "yesterday")"}),
                               settings);
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->soundings.size(), 1U);
    EXPECT_NEAR(read->soundings[0].shown.inMetres(), 3.048, 1e-12);
    EXPECT_EQ(units::isoText(*read->soundings[0].time), "2026-09-05T07:42:00Z");
    EXPECT_EQ(read->report.read, 3U);
    EXPECT_EQ(read->report.refused.at("no_depth").firstLine, 2U);
    EXPECT_EQ(read->report.refused.at("bad_time").firstLine, 3U);
}

TEST(VectorDepth, OfALineIsOnePass) {
    const auto read = readText("v.geojson", R"({"type": "MultiLineString", "coordinates": [
        [[3.1, 55.2, 4], [3.1001, 55.2, 5]], [[3.1002, 55.2, 6], [3.1003, 55.2, 7]]]})");
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->soundings.size(), 4U);
    EXPECT_EQ(read->passStarts, (std::vector<std::size_t>{0, 2}));
    EXPECT_EQ(read->soundings[3].shown, units::Depth::metres(7));
}

TEST(B12, IsInMetresAndUtcWhateverIsChosen) {
    SoundingFileSettings settings;
    settings.unit = DepthUnit::feet;
    settings.clock = units::Clock::inZone("Europe/London").value();
    settings.near = geo::LonLat{55.2, 3.1};
    const std::string note =
        "B-12 soundings are as the boat measured them: look up the draft in the file's header";
    const auto table = readText("t.csv",
                                "LON,LAT,DEPTH,TIME\n3.1,55.2,10,2026-09-05T07:42:00.250Z\n"
                                "3.1,55.2,11,2026-09-05T07:42:01\n",
                                settings);
    ASSERT_TRUE(table) << table.error().sentence();
    EXPECT_EQ(table->kind, SoundingFileKind::b12);
    EXPECT_EQ(table->soundings[0].shown, units::Depth::metres(10));
    EXPECT_EQ(table->soundings[0].place, (geo::LonLat{3.1, 55.2}));
    EXPECT_EQ(units::isoText(*table->soundings[0].time), "2026-09-05T07:42:00.250Z");
    EXPECT_EQ(units::isoText(*table->soundings[1].time), "2026-09-05T07:42:01Z");
    EXPECT_EQ(table->report.notes, std::vector{note});
    settings.near.reset();
    std::string json = pointsOf({R"("depth": 10, "time": "2026-09-05T07:42:00.250Z")"});
    json.insert(1, R"("properties": {"uniqueID": "X-1", "convention": "GeoJSON CSB 3.1"}, )");
    const auto features = readText("t.json", json, settings);
    ASSERT_TRUE(features) << features.error().sentence();
    EXPECT_EQ(features->kind, SoundingFileKind::b12);
    EXPECT_EQ(features->soundings[0].shown, units::Depth::metres(10));
    EXPECT_EQ(units::isoText(*features->soundings[0].time), "2026-09-05T07:42:00.250Z");
    EXPECT_EQ(features->report.notes, std::vector{note});
}

TEST(ReadKind, IsToldByWhatTheFileHolds) {
    const support::ScratchFolder scratch;
    using enum SoundingFileKind;
    using namespace std::string_literals;
    const std::vector<std::pair<std::string, SoundingFileKind>> files{
        {"junk\n$SDDPT,4.2,0.0*52\n", nmea},
        {"lon,lat,depth\n3.1,55.2,4\n", table},
        {"$SDDPT\n3.1,55.2,4\n", table},
        {"  <?xml version=\"1.0\"?><gpx></gpx>", gpx},
        {"<x:gpx xmlns:x=\"a\"></x:gpx>", gpx},
        {"<kml></kml>", vector},
        {"{\"type\": \"FeatureCollection\"}", vector},
        {"{\"convention\": \"GeoJSON CSB 3.0\"}", b12},
        {"{\"convention\": \"CSB 3.0\"}", b12},
        {"{\"uniqueID\": 1, \"convention\": 2}", b12},
        {"{\"uniqueID\": 1}", vector},
        {"LON,LAT,DEPTH,TIME\r\n3.1,55.2,4,x\n", b12},
        {"lon,lat,depth,time\n3.1,55.2,4,x\n", table},
        {"SQLite format 3\0more"s, vector},
        {"\x00\x00\x27\x0a more"s, vector},
        {"PK\x03\x04 more", vector},
        {"3.1,55.2,4\n\x00\x00\x00\x00\n3.1,55.2,4\n3.1,55.2,4\n"s, table}};
    for (const auto& [text, kind] : files) {
        const auto found = readKindOf(scratch.file("some.file", text));
        ASSERT_TRUE(found) << text;
        EXPECT_EQ(*found, kind) << text;
    }
    EXPECT_FALSE(readKindOf(scratch.file("some.file", "\x01\x02\x03\x04\n\x01\x02\n")));
}

} // namespace

} // namespace readers
