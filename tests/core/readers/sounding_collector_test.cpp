// SPDX-License-Identifier: GPL-3.0-or-later
// What only the whole of a file tells: the sign of its depths, swapped coordinates, feet for
// metres, and rows that cannot be.
#include "core/readers/sounding_collector.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace readers {

namespace {

RawSounding rowOf(double depth_m, double x_deg = 3.1, double y_deg = 55.2) {
    return {x_deg, y_deg, depth_m, {}};
}

base::Result<ReadSoundings> collected(const std::vector<RawSounding>& rows,
                                      const SoundingFileSettings& settings = {}) {
    SoundingCollector collector(SoundingFileKind::table, "some.csv");
    for (std::size_t i = 0; i < rows.size(); ++i) {
        ++collector.report().read;
        collector.take(rows[i], i + 1, "row " + std::to_string(i + 1));
    }
    return collector.finish(settings, rows.size(), rows.size());
}

struct SignRow {
    std::size_t below;
    std::size_t above;
    std::size_t zero;
    bool isTurned;
};

TEST(DepthSign, IsTurnedOnlyWhereMoreThanNineOfTenAreHeights) {
    // Neither do a few heights in a file of depths turn it, nor a few depths in one of heights.
    for (const SignRow& row : {SignRow{0, 20, 0, false},
                               {1, 19, 0, false},
                               {10, 10, 0, false},
                               {18, 2, 0, false},
                               {9, 1, 0, false},
                               {10, 1, 0, true},
                               {19, 1, 3, true},
                               {20, 0, 0, true},
                               {1, 0, 5, true}}) {
        std::vector<RawSounding> rows(row.zero, rowOf(0.0));
        rows.insert(rows.end(), row.below, rowOf(-4.25));
        rows.insert(rows.end(), row.above, rowOf(6.5));
        const auto read = collected(rows);
        ASSERT_TRUE(read);
        const std::size_t right = row.isTurned ? row.below : row.above;
        const std::size_t wrong = row.isTurned ? row.above : row.below;
        EXPECT_EQ(read->soundings.size(), right + row.zero) << row.below << ' ' << row.above;
        EXPECT_EQ(read->soundings.back().shown, units::Depth::metres(row.isTurned ? 4.25 : 6.5))
            << row.below << ' ' << row.above;
        EXPECT_EQ(read->report.used, right + row.zero);
        EXPECT_EQ(read->report.refusedCount(), wrong) << row.below << ' ' << row.above;
        EXPECT_EQ(read->report.refused.contains("negative_depth"), wrong > 0);
        EXPECT_EQ(read->report.notes,
                  row.isTurned
                      ? std::vector<std::string>{std::to_string(row.below) + " of " +
                                                 std::to_string(rows.size()) +
                                                 " depths are negative: taken as heights, so that "
                                                 "the sign was turned"}
                      : std::vector<std::string>{});
        for (const soundings::Sounding& one : read->soundings) {
            EXPECT_FALSE(std::signbit(one.shown.inMetres()));
        }
    }
}

TEST(SoundingCollector, RefusesARowThatCannotBeByItsReason) {
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    struct Row {
        RawSounding row;
        const char* reason; ///< Empty where it is taken.
    };
    const std::vector<Row> rows{{rowOf(nan), "not_a_number"},
                                {rowOf(4.0, nan), "not_a_number"},
                                {rowOf(4.0, 3.1, nan), "not_a_number"},
                                {rowOf(11000.0), ""},
                                {rowOf(11000.5), "impossible_depth"},
                                {rowOf(-11000.5), "impossible_depth"},
                                {rowOf(4.0, 0.0, 0.0), "zero_position"},
                                {rowOf(4.0, 0.0, 0.1), ""},
                                {rowOf(4.0, 180.0, 55.2), ""},
                                {rowOf(4.0, 180.1, 55.2), "off_earth"},
                                {rowOf(4.0, 3.1, 90.0), ""},
                                {rowOf(4.0, 3.1, 90.1), "off_earth"},
                                {rowOf(4.0, 3.1, -180.1), "off_earth"},
                                {rowOf(-0.1), "negative_depth"},
                                {rowOf(0.0), ""}};
    for (std::size_t i = 0; i < rows.size(); ++i) {
        std::vector<RawSounding> all(20, rowOf(5.0));
        all[7] = rows[i].row;
        const auto read = collected(all);
        ASSERT_TRUE(read) << i;
        const bool isTaken = *rows[i].reason == '\0';
        EXPECT_EQ(read->soundings.size(), isTaken ? 20U : 19U) << i;
        EXPECT_EQ(read->report.refusedCount(), isTaken ? 0U : 1U) << i;
        if (!isTaken) {
            ASSERT_TRUE(read->report.refused.contains(rows[i].reason)) << i;
            EXPECT_EQ(read->report.refused.at(rows[i].reason).firstLine, 8U) << i;
        }
    }
}

TEST(SoundingCollector, TurnsSwappedPlacesThatCannotBeOtherwise) {
    for (const std::size_t beyond : {5U, 6U}) { // More than half of ten.
        std::vector<RawSounding> rows(beyond, rowOf(4.0, 55.2, 103.1));
        rows.resize(10, rowOf(4.0, 55.2, 83.1));
        const auto read = collected(rows);
        ASSERT_TRUE(read);
        const bool isTurned = beyond == 6;
        EXPECT_EQ(read->soundings.size(), isTurned ? 10U : 5U);
        EXPECT_EQ(read->soundings.back().place,
                  isTurned ? (geo::LonLat{83.1, 55.2}) : (geo::LonLat{55.2, 83.1}));
        EXPECT_EQ(read->report.notes.size(), isTurned ? 1U : 0U);
    }
}

TEST(SoundingCollector, TurnsSwappedPlacesByAPlaceAtTheWater) {
    SoundingFileSettings settings;
    const auto placeNear = [&](std::optional<geo::LonLat> near, double x_deg, double y_deg) {
        settings.near = near;
        const auto read =
            collected(std::vector<RawSounding>(3, rowOf(4.0, x_deg, y_deg)), settings);
        return read ? read->soundings[0].place : geo::LonLat{};
    };
    const geo::LonLat here{3.1, 55.2};
    EXPECT_EQ(placeNear(here, 55.2, 3.1), here);
    EXPECT_EQ(placeNear(here, 3.1, 55.2), here);
    EXPECT_EQ(placeNear({}, 55.2, 3.1), (geo::LonLat{55.2, 3.1}));
    // Turned it lies 44 km and 67 km off: half a degree of latitude is 55.7 km.
    EXPECT_EQ(placeNear(here, 55.6, 3.1), (geo::LonLat{3.1, 55.6}));
    EXPECT_EQ(placeNear(here, 55.8, 3.1), (geo::LonLat{55.8, 3.1}));
    // As given it lies near enough: nothing is turned, though turned it would as well.
    EXPECT_EQ(placeNear(geo::LonLat{10.0, 10.2}, 10.2, 10.0), (geo::LonLat{10.2, 10.0}));
    EXPECT_EQ(placeNear(geo::LonLat{10.0, 10.8}, 10.8, 10.0), (geo::LonLat{10.0, 10.8}));
}

TEST(SoundingCollector, SaysWhereMoreThanHalfAreBelowSixtyMetres) {
    const auto notes = [](std::size_t deep, double depth_m) {
        std::vector<RawSounding> rows(deep, rowOf(depth_m));
        rows.resize(10, rowOf(4.0));
        return collected(rows)->report.notes;
    };
    EXPECT_TRUE(notes(5, 80.0).empty());
    EXPECT_TRUE(notes(10, 60.0).empty());
    EXPECT_EQ(notes(6, 80.0),
              (std::vector<std::string>{"half of the depths are more than 80 m: if the file is in "
                                        "feet, choose feet as its unit"}));
}

TEST(SoundingCollector, BreaksTheTrackWhereTheFileDoes) {
    SoundingCollector collector(SoundingFileKind::gpx, "t.gpx");
    collector.breakTrack(); // Before anything: nothing to break.
    collector.take(rowOf(4.0), 1, "");
    collector.take(rowOf(-4.0), 2, ""); // Refused at the end: the break behind it moves up.
    collector.breakTrack();
    collector.breakTrack();
    collector.take(rowOf(5.0), 3, "");
    collector.take(rowOf(6.0), 4, "");
    const auto read = collector.finish({}, 4, 4);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->passStarts, (std::vector<std::size_t>{0, 1}));
}

soundings::Sounding at(double north_m, std::optional<int> second) {
    soundings::Sounding one{{3.1, 55.2 + north_m / 111320.0}, units::Depth::metres(4), {}};
    if (second) {
        one.time = units::Moment(std::chrono::hours(490000)) + std::chrono::seconds(*second);
    }
    return one;
}

TEST(PassStarts, ComeAfterMoreThanTenSecondsOrWithoutTimesSixtyMetres) {
    using Starts = std::vector<std::size_t>;
    EXPECT_EQ(passStartsOf({}), Starts{});
    EXPECT_EQ(passStartsOf({at(0, 0), at(500, 10)}), Starts{0});
    EXPECT_EQ(passStartsOf({at(0, 0), at(1, 11)}), (Starts{0, 1}));
    EXPECT_EQ(passStartsOf({at(0, 5), at(1, 4)}), (Starts{0, 1})); // Back in time.
    EXPECT_EQ(passStartsOf({at(0, {}), at(59, {})}), Starts{0});
    EXPECT_EQ(passStartsOf({at(0, {}), at(61, {})}), (Starts{0, 1}));
    EXPECT_EQ(passStartsOf({at(0, 5), at(61, {})}), (Starts{0, 1}));
    EXPECT_EQ(passStartsOf({at(0, 0), at(1, 1), at(2, 2)}, {2}), (Starts{0, 2}));
    // A degree of longitude is shorter: 0.0016 of it are 102 m here, 178 m at the equator.
    soundings::Sounding east = at(0, {});
    east.place.lon_deg += 0.0009; // 57 m
    EXPECT_EQ(passStartsOf({at(0, {}), east}), Starts{0});
    east.place.lon_deg += 0.0001; // 64 m
    EXPECT_EQ(passStartsOf({at(0, {}), east}), (Starts{0, 1}));
}

TEST(SoundingCollector, SaysWhatIsMissingAndWhatToDo) {
    struct Row {
        std::size_t read;
        std::size_t positions;
        std::size_t depths;
        const char* what;
        const char* whatToDo;
    };
    for (const Row& row :
         {Row{0, 0, 0, "the GPX track has no position and no depth",
              "choose the file that was recorded while sounding"},
          Row{7, 7, 0, "the GPX track has 7 positions but no depth",
              "record with the sounder switched on and sending its depth, or choose where the "
              "depth stands"},
          Row{7, 0, 5, "the GPX track has 5 depths but no position",
              "record with the positions too, or choose where they stand"},
          Row{7, 6, 5, "none of the 7 rows of the GPX track can be used",
              "choose the columns, the unit and the reference system that the file has"}}) {
        SoundingCollector collector(SoundingFileKind::gpx, "t.gpx");
        collector.report().read = row.read;
        const auto read = collector.finish({}, row.positions, row.depths);
        ASSERT_FALSE(read);
        EXPECT_EQ(read.error().kind, base::ErrorKind::unusableInput);
        EXPECT_EQ(read.error().what, row.what);
        EXPECT_EQ(read.error().whatToDo, row.whatToDo);
        EXPECT_EQ(read.error().where, "t.gpx");
    }
}

TEST(ReadingReport, CountsByReasonAndKeepsTheFirst) {
    ReadingReport report;
    EXPECT_EQ(report.refusedText(), "");
    report.refuse("b", 9, "first\tb");
    report.refuse("b", 8, "second");
    report.refuse("a", 7, std::string(100, 'x'));
    EXPECT_EQ(report.refusedCount(), 3U);
    EXPECT_EQ(report.refusedText(), "1 x a (first: line 7 '" + std::string(80, 'x') +
                                        "'), 2 x b (first: line 9 'first?b')");
}

TEST(DepthUnit, EveryNameLeadsBackToItsUnit) {
    EXPECT_EQ(nameOf(DepthUnit::metres), "m");
    EXPECT_EQ(nameOf(DepthUnit::feet), "ft");
    EXPECT_EQ(nameOf(DepthUnit::fathoms), "fathom");
    for (const DepthUnit unit : {DepthUnit::metres, DepthUnit::feet, DepthUnit::fathoms}) {
        EXPECT_EQ(depthUnitNamed(nameOf(unit)), unit);
    }
    EXPECT_FALSE(depthUnitNamed("furlong"));
    EXPECT_FALSE(depthUnitNamed(""));
    const std::vector<std::string> kinds{
        nameOf(SoundingFileKind::nmea), nameOf(SoundingFileKind::gpx),
        nameOf(SoundingFileKind::table), nameOf(SoundingFileKind::b12),
        nameOf(SoundingFileKind::vector)};
    EXPECT_EQ(kinds, (std::vector<std::string>{"NMEA 0183 log", "GPX track", "text table",
                                               "B-12 soundings", "vector file"}));
}

} // namespace

} // namespace readers
