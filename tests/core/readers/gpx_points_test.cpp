// SPDX-License-Identifier: GPL-3.0-or-later
// Where the depths of a GPX file stand, with which sign, and which points have none or no place.
#include "core/readers/read_gpx.h"
#include "core/readers/read_shoreline.h"
#include "core/readers/read_track.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace readers {

namespace {

std::string gpx(const std::string& inside) {
    return "<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"t\" "
           "xmlns=\"http://www.topografix.com/GPX/1/1\">\n" +
           inside + "</gpx>\n";
}

std::string point(const std::string& inside, const std::string& lat = "55.2",
                  const std::string& lon = "3.1") {
    return "<trkpt lat=\"" + lat + "\" lon=\"" + lon + "\">" + inside + "</trkpt>\n";
}

std::string track(const std::string& points) {
    return "<trk><trkseg>\n" + points + "</trkseg></trk>\n";
}

std::string extension(const std::string& name, const std::string& text) {
    return "<extensions><" + name + ">" + text + "</" + name + "></extensions>";
}

base::Result<ReadSoundings> readText(const std::string& text,
                                     const SoundingFileSettings& settings = {}) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    return readGpx(scratch.file("track.gpx", text), settings, progress);
}

struct Source {
    std::string inside; ///< Of the one point.
    const char* chosen;
    std::optional<double> depth_m;
    const char* source;
};

TEST(GpxDepth, StandsWhereItIsChosenOrWhereSomethingSaysDepth) {
    const std::vector<Source> rows{{extension("depth", "3.2"), "", 3.2, "depth"},
                                   {extension("WaterDepth", " 3.2 "), "", 3.2, "WaterDepth"},
                                   {"<depth>3.2</depth>", "", 3.2, "depth"},
                                   {extension("any", "<depth>3.2</depth>"), "", 3.2, "depth"},
                                   {"<ele>-5</ele>" + extension("depth", "3.2"), "", 3.2, "depth"},
                                   {"<ele>-5</ele>" + extension("depth", "3.2"), "ele", 5.0, "ele"},
                                   {"<ele>-5.5</ele>", "", 5.5, "ele"},
                                   {"<ele>5.5</ele>", "", {}, ""},
                                   // Chosen by hand it is a depth, whatever its sign.
                                   {"<ele>5.5</ele>", "ele", 5.5, "ele"},
                                   {extension("temp", "3.2"), "", {}, ""},
                                   {extension("temp", "3.2"), "temp", 3.2, "temp"},
                                   {"<name>hump 3.25 m</name>", "name", 3.25, "name"},
                                   {"<name>3,25</name>", "name", 3.25, "name"},
                                   {"<name>A4 at 3.25.</name>", "name", 4.0, "name"},
                                   {"<name>launch</name>", "name", {}, ""},
                                   {"<desc>6 m over weed</desc>", "desc", 6.0, "desc"},
                                   {"<name>5</name><desc>6</desc>", "desc", 6.0, "desc"},
                                   {extension("depth", "deep"), "depth", {}, ""}};
    for (const Source& row : rows) {
        SoundingFileSettings settings;
        settings.depthSource = row.chosen;
        const auto read = readText(gpx(track(point(row.inside))), settings);
        ASSERT_EQ(read.has_value(), row.depth_m.has_value()) << row.inside << row.chosen;
        if (row.depth_m) {
            ASSERT_EQ(read->soundings.size(), 1U) << row.inside;
            EXPECT_DOUBLE_EQ(read->soundings[0].shown.inMetres(), *row.depth_m) << row.inside;
            EXPECT_EQ(read->depthSource, row.source);
            EXPECT_EQ(read->kind, SoundingFileKind::gpx);
        }
    }
}

TEST(GpxDepth, IsTheRichestOfSeveralSources) {
    const std::string some = "<extensions><depth>3</depth><depth2>4</depth2></extensions>";
    const auto read = readText(gpx(track(point(some) + point(extension("depth2", "5")))));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->depthSource, "depth2");
    EXPECT_EQ(read->depthSources, (std::vector<DepthSource>{{"depth2", 2}, {"depth", 1}}));
    EXPECT_EQ(read->soundings[1].shown, units::Depth::metres(5));
}

TEST(GpxDepth, IsANegativeElevationWhereMoreThanHalfAreNegative) {
    const auto read = [](int below, int above) {
        std::string points;
        for (int i = 0; i < below; ++i) {
            points += point("<ele>-5</ele>");
        }
        for (int i = 0; i < above; ++i) {
            points += point("<ele>7</ele>");
        }
        return readText(gpx(track(points)));
    };
    EXPECT_FALSE(read(5, 5));
    const auto most = read(6, 5);
    ASSERT_TRUE(most);
    EXPECT_EQ(most->soundings.size(), 6U); // Above water is no depth.
    EXPECT_EQ(most->soundings[0].shown, units::Depth::metres(5));
    EXPECT_EQ(most->report.refused.at("negative_depth").count, 5U);
    EXPECT_EQ(most->report.notes,
              (std::vector<std::string>{"depths were taken from negative elevations"}));
}

TEST(GpxDepth, IsInTheUnitThatIsChosen) {
    SoundingFileSettings settings;
    for (const auto& [unit, ten_m] : {std::pair{DepthUnit::metres, 10.0},
                                      {DepthUnit::feet, 3.048},
                                      {DepthUnit::fathoms, 18.288}}) {
        settings.unit = unit;
        const auto read = readText(gpx(track(point(extension("depth", "10")))), settings);
        ASSERT_TRUE(read);
        EXPECT_NEAR(read->soundings[0].shown.inMetres(), ten_m, 1e-12);
    }
}

TEST(GpxFix, ThatIsNoneGivesNoPosition) {
    const std::string depth = extension("depth", "3.2");
    for (const char* fix : {"2d", "3d", "dgps", "pps", ""}) {
        const auto read =
            readText(gpx(track(point(std::string("<fix>") + fix + "</fix>" + depth))));
        ASSERT_TRUE(read) << fix;
        EXPECT_EQ(read->soundings.size(), 1U) << fix;
    }
    const auto read = readText(gpx(
        track(point(depth) + point("<fix>none</fix>" + depth) + point("<fix> 3d </fix>" + depth))));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->soundings.size(), 2U);
    EXPECT_EQ(read->report.refused.at("void_fix").count, 1U);
    EXPECT_EQ(read->report.refused.at("void_fix").firstLine, 5U);
}

TEST(GpxFix, ThatIsNoneIsNoPartOfATrackOrAShore) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const std::string time = "<time>2026-09-12T07:15:00Z</time>";
    const auto sailed = readTrack(
        scratch.file("t.gpx", gpx(track(point(time) + point(time + "<fix>none</fix>")))), progress);
    ASSERT_TRUE(sailed);
    EXPECT_EQ(sailed->size(), 1U);
    const auto shore = readShoreline(
        scratch.file("s.gpx",
                     gpx(track(point("<fix>none</fix>", "0.0", "0.0") + point("", "55.20", "3.10") +
                               point("", "55.20", "3.12") + point("", "55.21", "3.12") +
                               point("", "55.21", "3.10") + point("", "55.20", "3.10")))),
        std::nullopt, progress);
    ASSERT_TRUE(shore) << shore.error().sentence();
    ASSERT_EQ(shore->size(), 1U);
    EXPECT_EQ(shore->front().outer,
              (geo::LonLatRing{{3.10, 55.20}, {3.12, 55.20}, {3.12, 55.21}, {3.10, 55.21}}));
}

TEST(GpxPoint, OfEveryKindIsRead) {
    const std::string inside = extension("depth", "3.2");
    const auto read = readText(gpx("<wpt lat=\"-55.2\" lon=\"-3.1\">" + inside + "</wpt><rte>" +
                                   "<rtept lat=\"55.3\" lon=\"3.2\">" + inside + "</rtept></rte>" +
                                   track(point(inside, "55.4", "3.3"))));
    ASSERT_TRUE(read);
    ASSERT_EQ(read->soundings.size(), 3U);
    EXPECT_EQ(read->soundings[0].place, (geo::LonLat{-3.1, -55.2}));
    EXPECT_EQ(read->soundings[1].place, (geo::LonLat{3.2, 55.3}));
    EXPECT_EQ(read->soundings[2].place, (geo::LonLat{3.3, 55.4}));
    EXPECT_EQ(read->passStarts, (std::vector<std::size_t>{0, 1, 2}));
}

TEST(GpxPoint, ThatCannotBeIsRefusedByItsReason) {
    const std::string depth = extension("depth", "3.2");
    const auto read =
        readText(gpx(track(point(depth) + point(depth, "north") + point("<ele>4</ele>") +
                           point("<time>yesterday</time>" + depth) + point(depth, "95", "3.1") +
                           point("<time>2026-09-12 08:15:00</time>" + depth))));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->report.read, 6U);
    EXPECT_EQ(read->report.used, 2U);
    for (const auto& [reason, line] : {std::pair<const char*, std::size_t>{"no_position", 5},
                                       {"no_depth", 6},
                                       {"bad_time", 7},
                                       {"off_earth", 8}}) {
        ASSERT_TRUE(read->report.refused.contains(reason)) << reason;
        EXPECT_EQ(read->report.refused.at(reason).count, 1U) << reason;
        EXPECT_EQ(read->report.refused.at(reason).firstLine, line) << reason;
    }
}

TEST(GpxTime, WithoutAZoneIsTheWaters) {
    SoundingFileSettings settings;
    settings.clock = units::Clock::inZone("Europe/London").value();
    const auto read =
        readText(gpx(track(point("<time>2026-09-12T00:15:00</time>" + extension("depth", "3")) +
                           point("<time>2026-09-12T00:15:00Z</time>" + extension("depth", "3")))),
                 settings);
    ASSERT_TRUE(read);
    EXPECT_EQ(units::isoText(*read->soundings[0].time), "2026-09-11T23:15:00Z");
    EXPECT_EQ(units::isoText(*read->soundings[1].time), "2026-09-12T00:15:00Z");
}

TEST(Track, IsOfTrackPointsOnTheEarthWithATimeOnly) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const std::string time = "<time>2026-09-12T07:15:00Z</time>";
    const auto read = readTrack(
        scratch.file("t.gpx", gpx("<wpt lat=\"55.2\" lon=\"3.1\">" + time + "</wpt>" +
                                  track(point(time, "95") + point("") + point(time, "55.5")))),
        progress);
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, (std::vector<TrackPoint>{
                         {{3.1, 55.5}, *units::momentFrom("2026-09-12T07:15:00Z", {})}}));
    EXPECT_FALSE(readTrack(scratch.file("n.gpx", gpx(track(point("")))), progress));
}

} // namespace

} // namespace readers
