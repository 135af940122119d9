// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_gpx.h"

#include "core/readers/read_shoreline.h"
#include "core/readers/read_track.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace readers {

namespace {

std::string gpx(const std::string& inside) {
    return "<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"t\" "
           "xmlns=\"http://www.topografix.com/GPX/1/1\" xmlns:s=\"https://example.org/s\">\n" +
           inside + "</gpx>\n";
}

std::string point(const std::string& lat, const std::string& inside) {
    return "<trkpt lat=\"" + lat + "\" lon=\"3.1\">" + inside + "</trkpt>\n";
}

std::string depth(const std::string& metres) {
    return "<extensions><s:any><s:Depth>" + metres + "</s:Depth></s:any></extensions>";
}

base::Result<ReadSoundings> readText(const std::string& text,
                                     const SoundingFileSettings& settings = {}) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    return readGpx(scratch.file("track.gpx", text), settings, progress);
}

TEST(ReadGpx, FindsDepthsInExtensionsByTheirName) {
    const auto read = readText(gpx(
        "<trk><trkseg>" + point("55.2", "<time>2026-09-12T07:15:00Z</time>" + depth("3.2")) +
        point("55.2001", "<time>2026-09-12T07:15:03Z</time>") + "</trkseg><trkseg>" +
        point("55.2002", "<time>2026-09-12T07:15:04Z</time>" + depth("3.4")) + "</trkseg></trk>"));
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->soundings.size(), 2U);
    EXPECT_EQ(read->depthSource, "Depth");
    EXPECT_EQ(read->soundings[1].shown, units::Depth::metres(3.4));
    EXPECT_EQ(read->passStarts, (std::vector<std::size_t>{0, 1})); // the second segment
    EXPECT_EQ(read->report.refused.at("no_depth").count, 1U);
}

TEST(ReadGpx, TakesNegativeElevationsOnlyWhereNothingSaysDepth) {
    const auto read = readText(gpx("<trk><trkseg>" + point("55.2", "<ele>-3.2</ele>") +
                                   point("55.3", "<ele>-4.2</ele>") + "</trkseg></trk>"));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->depthSource, "ele");
    EXPECT_DOUBLE_EQ(read->soundings[1].shown.inMetres(), 4.2);
    EXPECT_FALSE(
        readText(gpx("<trk><trkseg>" + point("55.2", "<ele>32</ele>") + "</trkseg></trk>")));
}

TEST(ReadGpx, ReadsDepthsFromTheNamesOfWaypointsWhenAsked) {
    SoundingFileSettings settings;
    settings.depthSource = "name";
    const auto read = readText(gpx("<wpt lat=\"55.2\" lon=\"3.1\"><name>hump 3.25 m</name></wpt>"
                                   "<wpt lat=\"55.3\" lon=\"3.1\"><name>launch</name></wpt>"),
                               settings);
    ASSERT_TRUE(read);
    ASSERT_EQ(read->soundings.size(), 1U);
    EXPECT_DOUBLE_EQ(read->soundings[0].shown.inMetres(), 3.25);
}

TEST(ReadGpx, SaysThatATrackHasNoDepth) {
    const auto read =
        readText(gpx("<trk><trkseg>" + point("55.2", "") + point("55.3", "") + "</trkseg></trk>"));
    ASSERT_FALSE(read);
    EXPECT_NE(read.error().what.find("2 positions but no depth"), std::string::npos);
}

/// Ten entities, each ten times the one before: 10 GB if they were written out.
std::string entityBomb() {
    std::string text = "<?xml version=\"1.0\"?>\n<!DOCTYPE gpx [\n<!ENTITY a0 \"aaaaaaaaaa\">\n";
    for (int i = 1; i < 10; ++i) {
        text += "<!ENTITY a" + std::to_string(i) + " \"";
        for (int k = 0; k < 10; ++k) {
            text += "&a" + std::to_string(i - 1) + ";";
        }
        text += "\">\n";
    }
    return text + "]>\n";
}

TEST(ReadGpx, WritesNoEntityOutAndUsesTheRest) {
    const auto read = readText(
        entityBomb() + "<gpx><trk><trkseg>" +
        point("55.2", "<name>&a9;</name><extensions><depth>3.2</depth></extensions>") +
        point("55.3", "<extensions><depth>&a9;</depth></extensions>") + "</trkseg></trk></gpx>");
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->soundings.size(), 1U);
    EXPECT_EQ(read->soundings[0].shown, units::Depth::metres(3.2));
    EXPECT_EQ(read->report.refused.at("entity").count, 10U);
    EXPECT_EQ(read->report.refused.at("entity").firstText, "a0");
    EXPECT_EQ(read->report.refused.at("entity").firstLine, 3U);
    EXPECT_EQ(read->report.refused.at("no_depth").count, 1U);
}

TEST(ReadGpx, LetsNoEntityGrowWithinAnAttribute) {
    const auto read = readText(entityBomb() + "<gpx><trk><trkseg>" +
                               point("55.2", "<extensions><depth>3.2</depth></extensions>") +
                               "<trkpt lat=\"&a9;\" lon=\"3.1\"/></trkseg></trk></gpx>");
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->soundings.size(), 1U);
    ASSERT_FALSE(read->report.notes.empty());
    EXPECT_NE(read->report.notes[0].find("read up to line"), std::string::npos);
}

TEST(ReadGpx, GivesUpOnAMillionElementsInsideOneAnother) {
    std::string text =
        "<gpx><trk><trkseg>" + point("55.2", depth("3.2").insert(0, "")) + "</trkseg></trk>";
    std::size_t at = 0;
    while ((at = text.find("s:", at)) != std::string::npos) {
        text.erase(at, 2);
    }
    for (int i = 0; i < 1000000; ++i) {
        text += "<a>";
    }
    const auto read = readText(text);
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->soundings.size(), 1U);
    ASSERT_FALSE(read->report.notes.empty());
    EXPECT_NE(read->report.notes[0].find("100 elements"), std::string::npos);
}

TEST(ReadGpx, UsesWhatStandsBeforeTheFileBreaksOff) {
    std::string text = gpx("<trk><trkseg>" + point("55.2", depth("3.2")) +
                           point("55.3", depth("3.3")) + "</trkseg></trk>");
    const auto read = readText(text.substr(0, text.find("55.3") + 2));
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->soundings.size(), 1U);
    EXPECT_FALSE(read->report.notes.empty());
}

TEST(ReadTrack, GivesTimedPointsInOrderOfTime) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const auto track =
        readTrack(scratch.file("t.gpx", gpx("<trk><trkseg>" +
                                            point("55.2", "<time>2026-09-12T07:15:10Z</time>") +
                                            point("55.3", "<time>2026-09-12T07:15:00Z</time>") +
                                            point("55.4", "") + "</trkseg></trk>")),
                  progress);
    ASSERT_TRUE(track);
    ASSERT_EQ(track->size(), 2U);
    EXPECT_DOUBLE_EQ(track->front().place.lat_deg, 55.3);
}

TEST(ReadShoreline, ClosesATrackAroundTheWaterAndFindsItsIsland) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const auto at = [](const char* lat, const char* lon) {
        return std::string("<trkpt lat=\"") + lat + "\" lon=\"" + lon + "\"/>";
    };
    const auto shore = readShoreline(
        scratch.file("shore.gpx",
                     gpx("<trk><trkseg>" + at("55.20", "3.10") + at("55.20", "3.12") +
                         at("55.21", "3.12") + at("55.21", "3.10") + at("55.20005", "3.10") +
                         "</trkseg><trkseg>" + at("55.204", "3.104") + at("55.206", "3.104") +
                         at("55.206", "3.106") + at("55.204", "3.104") + "</trkseg></trk>")),
        std::nullopt, progress);
    ASSERT_TRUE(shore) << shore.error().sentence();
    ASSERT_EQ(shore->size(), 1U);
    EXPECT_EQ(shore->front().islands.size(), 1U);
}

TEST(ReadShoreline, RefusesALineThatDoesNotComeBack) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const auto shore =
        readShoreline(scratch.file("line.geojson", R"({"type": "LineString", "coordinates":
            [[3.0, 55.0], [3.1, 55.0], [3.2, 55.1], [3.3, 55.2]]})"),
                      std::nullopt, progress);
    ASSERT_FALSE(shore);
    EXPECT_NE(shore.error().what.find("comes back"), std::string::npos);
}

TEST(ReadShoreline, TellsOfSwappedCoordinates) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const auto shore =
        readShoreline(scratch.file("turned.geojson", R"({"type": "Polygon", "coordinates":
            [[[55.0, 103.0], [55.1, 103.0], [55.1, 103.1], [55.0, 103.0]]]})"),
                      std::nullopt, progress);
    ASSERT_FALSE(shore);
    EXPECT_NE(shore.error().whatToDo.find("swapped"), std::string::npos);
}

/// Squares about 3 E 55 N, from the largest in.
std::string squares(int count) {
    std::string text = R"({"type": "MultiPolygon", "coordinates": [)";
    for (int i = 0; i < count; ++i) {
        const double half = 0.2 - 0.19 * i / count;
        const auto at = [half](int x, int y) {
            return "[" + std::to_string(3.0 + x * half) + "," + std::to_string(55.0 + y * half) +
                   "]";
        };
        text += std::string(i == 0 ? "[[" : ",[[") + at(-1, -1) + "," + at(1, -1) + "," + at(1, 1) +
                "," + at(-1, 1) + "," + at(-1, -1) + "]]";
    }
    return text + "]}";
}

TEST(ReadShoreline, TellsWaterFromIslandHoweverOftenTheyAlternate) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const auto shore =
        readShoreline(scratch.file("rings.geojson", squares(1001)), std::nullopt, progress);
    ASSERT_TRUE(shore) << shore.error().sentence();
    ASSERT_EQ(shore->size(), 501U);
    for (std::size_t i = 0; i < 500; ++i) {
        ASSERT_EQ(shore->at(i).islands.size(), 1U);
        EXPECT_GT(shore->at(i).islands[0][2].lat_deg, shore->at(i + 1).outer[2].lat_deg);
    }
    EXPECT_TRUE(shore->back().islands.empty());
}

TEST(ReadShoreline, RefusesMoreRingsThanAWaterHas) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const auto shore =
        readShoreline(scratch.file("rings.geojson", squares(20001)), std::nullopt, progress);
    ASSERT_FALSE(shore);
    EXPECT_NE(shore.error().what.find("20001 rings"), std::string::npos);
}

TEST(ReadShoreline, TakesIslandsThatStandAsPolygonsOfTheirOwn) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const auto shore =
        readShoreline(scratch.file("two.geojson", R"({"type": "MultiPolygon", "coordinates": [
            [[[3.0, 55.0], [3.2, 55.0], [3.2, 55.2], [3.0, 55.2], [3.0, 55.0]]],
            [[[3.1, 55.1], [3.12, 55.1], [3.12, 55.12], [3.1, 55.1]]],
            [[[4.0, 55.0], [4.2, 55.0], [4.2, 55.2], [4.0, 55.0]]]]})"),
                      std::nullopt, progress);
    ASSERT_TRUE(shore);
    ASSERT_EQ(shore->size(), 2U);
    EXPECT_EQ(shore->at(0).islands.size(), 1U);
}

} // namespace

} // namespace readers
