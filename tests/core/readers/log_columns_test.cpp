// SPDX-License-Identifier: GPL-3.0-or-later
// Every column of the log's table, against the whole stays and runs that come of it.
#include "core/readers/read_log.h"

#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

namespace readers {

namespace {

const std::vector<std::string> columns{"kind",
                                       "stay",
                                       "start",
                                       "end",
                                       "time",
                                       "lon",
                                       "lat",
                                       "rods",
                                       "bait",
                                       "species",
                                       "weight_kg",
                                       "length_mm",
                                       "bait_depth_m",
                                       "wind_from_deg",
                                       "wind_speed_m_s",
                                       "water_temperature_c",
                                       "note",
                                       "level_m",
                                       "sky",
                                       "bait_lon",
                                       "bait_lat",
                                       "hooked",
                                       "returned",
                                       "photograph",
                                       "who",
                                       "weight",
                                       "length",
                                       "hours"};

using Cells = std::map<std::string, std::string>;

/// A table of these rows with its columns in this order; what a row does not name is empty.
std::string tableOf(const std::vector<Cells>& rows,
                    const std::vector<std::string>& order = columns) {
    std::string text;
    for (const std::string& column : order) {
        text += (text.empty() ? "" : ",") + column;
    }
    text += '\n';
    for (const Cells& row : rows) {
        std::string line;
        for (const std::string& column : order) {
            const auto cell = row.find(column);
            line += (column == order.front() ? "" : ",") + (cell == row.end() ? "" : cell->second);
        }
        text += line + '\n';
    }
    return text;
}

base::Result<ReadLog> readText(const std::string& text, const units::Clock& clock = {}) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    return readLog(scratch.file("log.csv", text), clock, progress);
}

units::Moment at(const char* iso) {
    return units::momentFrom(iso, units::Clock()).value();
}

const Cells stay{{"kind", "stay"},
                 {"stay", "7"},
                 {"start", "2026-10-03T08:11:00Z"},
                 {"end", "2026-10-03T10:09:30Z"},
                 {"lon", "3.1"},
                 {"lat", "55.2"}};

Cells with(Cells row, const Cells& more) {
    for (const auto& [column, cell] : more) {
        row[column] = cell;
    }
    return row;
}

/// What `stay` says with nothing else known.
logbook::Stay bare() {
    logbook::Stay made;
    made.id = logbook::StayId(7);
    made.start = at("2026-10-03T08:11:00Z");
    made.end = at("2026-10-03T10:09:30Z");
    made.place = {3.1, 55.2};
    return made;
}

TEST(LogColumns, OfAStayReachTheMembersThatTheyNameAndNoOthers) {
    struct Row {
        const char* column;
        const char* cell;
        void (*set)(logbook::Stay&);
    };
    const std::vector<Row> rows{
        {"note", "", [](logbook::Stay&) {}},
        {"stay", "12", [](logbook::Stay& s) { s.id = logbook::StayId(12); }},
        {"start", "2026-10-03T07:00:00Z",
         [](logbook::Stay& s) { s.start = at("2026-10-03T07:00:00Z"); }},
        {"end", "2026-10-04T01:30:00Z",
         [](logbook::Stay& s) { s.end = at("2026-10-04T01:30:00Z"); }},
        {"end", "2026-10-03T08:11:00Z",
         [](logbook::Stay& s) { s.end = at("2026-10-03T08:11:00Z"); }},
        {"lon", "-3.2", [](logbook::Stay& s) { s.place.lon_deg = -3.2; }},
        {"lat", "54.9", [](logbook::Stay& s) { s.place.lat_deg = 54.9; }},
        {"rods", "", [](logbook::Stay& s) { s.rods.reset(); }},
        {"rods", "1", [](logbook::Stay& s) { s.rods = 1; }},
        {"rods", "2", [](logbook::Stay& s) { s.rods = 2; }},
        {"rods", "4", [](logbook::Stay& s) { s.rods = 4; }},
        {"rods", "100", [](logbook::Stay& s) { s.rods = 100; }},
        {"bait", "lamprey", [](logbook::Stay& s) { s.bait = "lamprey"; }},
        {"note", "\"slow, \"\"dour\"\"\"", [](logbook::Stay& s) { s.note = "slow, \"dour\""; }},
        {"level_m", "31.25",
         [](logbook::Stay& s) { s.conditions.level = units::WaterLevel::metresOnGauge(31.25); }},
        {"sky", "overcast", [](logbook::Stay& s) { s.conditions.sky = "overcast"; }},
        {"who", "\"Anna, Ben\"", [](logbook::Stay& s) { s.who = "Anna, Ben"; }},
        {"photograph", "a/b.jpg", [](logbook::Stay& s) { s.photograph = "a/b.jpg"; }},
        {"note", "'-slow", [](logbook::Stay& s) { s.note = "-slow"; }},
        {"note", "'slow", [](logbook::Stay& s) { s.note = "'slow"; }},
        {"note", "\"two\nlines \"", [](logbook::Stay& s) { s.note = "two\nlines "; }},
        {"hours", "3", [](logbook::Stay&) {}}, // an end goes before
        {"wind_from_deg", "20",
         [](logbook::Stay& s) { s.conditions.windFrom = units::Bearing::degrees(20); }},
        {"wind_from_deg", "ssw",
         [](logbook::Stay& s) { s.conditions.windFrom = units::Bearing::degrees(202.5); }},
        {"wind_speed_m_s", "12 kn",
         [](logbook::Stay& s) { s.conditions.windSpeed = units::Speed::knots(12.0); }},
        {"wind_speed_m_s", "3.5",
         [](logbook::Stay& s) { s.conditions.windSpeed = units::Speed::metresPerSecond(3.5); }},
        {"water_temperature_c", "-0.5", [](logbook::Stay& s) {
             s.conditions.waterTemperature = units::Temperature::celsius(-0.5);
         }}};
    for (const Row& row : rows) {
        const auto read = readText(tableOf({with(stay, {{row.column, row.cell}})}));
        ASSERT_TRUE(read) << row.column << ' ' << row.cell;
        ASSERT_EQ(read->log.size(), 1U) << row.column;
        logbook::Stay expected = bare();
        row.set(expected);
        EXPECT_EQ(read->log[0], expected) << row.column << ' ' << row.cell;
        EXPECT_EQ(read->report.used, 1U);
        EXPECT_EQ(read->report.refusedCount(), 0U);
    }
}

TEST(LogColumns, OfARunReachTheMembersThatTheyNameAndNoOthers) {
    struct Row {
        const char* column;
        const char* cell;
        void (*set)(logbook::Fish&);
    };
    const std::vector<Row> rows{
        {"note", "", [](logbook::Fish&) {}},
        {"kind", "run", [](logbook::Fish& f) { f.landed = false; }},
        {"kind", "Fish", [](logbook::Fish& f) { f.landed = true; }},
        {"time", "2026-10-03T09:40:00Z",
         [](logbook::Fish& f) { f.time = at("2026-10-03T09:40:00Z"); }},
        {"time", "", [](logbook::Fish& f) { f.time.reset(); }},
        {"time", "09:40", [](logbook::Fish& f) { f.time = at("2026-10-03T09:40:00Z"); }},
        {"species", "pike", [](logbook::Fish& f) { f.species = "pike"; }},
        {"who", "Ben", [](logbook::Fish& f) { f.who = "Ben"; }},
        {"hooked", "scissors", [](logbook::Fish& f) { f.hooked = "scissors"; }},
        {"returned", "yes", [](logbook::Fish& f) { f.returned = true; }},
        {"returned", "No", [](logbook::Fish& f) { f.returned = false; }},
        {"photograph", "pike.jpg", [](logbook::Fish& f) { f.photograph = "pike.jpg"; }},
        {"weight", "21-4",
         [](logbook::Fish& f) {
             f.weight = units::Weight::pounds(21.0) + units::Weight::ounces(4.0);
         }},
        {"weight", "9.6", [](logbook::Fish& f) { f.weight = units::Weight::kilograms(9.6); }},
        {"weight", "\"9,6 kg\"",
         [](logbook::Fish& f) { f.weight = units::Weight::kilograms(9.6); }},
        {"length", "78", [](logbook::Fish& f) { f.length = units::Length::metres(0.78); }},
        {"length", "30in",
         [](logbook::Fish& f) { f.length = units::Length::metres(30.0 * 0.0254); }},
        {"bait", "smelt", [](logbook::Fish& f) { f.bait = "smelt"; }},
        {"note", "by the reeds", [](logbook::Fish& f) { f.note = "by the reeds"; }},
        {"weight_kg", "5.67", [](logbook::Fish& f) { f.weight = units::Weight::kilograms(5.67); }},
        {"weight_kg", "12lb 8oz",
         [](logbook::Fish& f) {
             f.weight = units::Weight::pounds(12.0) + units::Weight::ounces(8.0);
         }},
        {"weight_kg", "12-8",
         [](logbook::Fish& f) {
             f.weight = units::Weight::pounds(12.0) + units::Weight::ounces(8.0);
         }},
        {"length_mm", "78 cm", [](logbook::Fish& f) { f.length = units::Length::metres(0.78); }},
        {"bait_depth_m", "10 ft", [](logbook::Fish& f) { f.baitDepth = units::Depth::feet(10.0); }},
        {"length_mm", "695", [](logbook::Fish& f) { f.length = units::Length::metres(0.695); }},
        {"bait_depth_m", "5.9", [](logbook::Fish& f) { f.baitDepth = units::Depth::metres(5.9); }}};
    const Cells fish{{"kind", "fish"}, {"stay", "7"}, {"time", "2026-10-03T09:00:00Z"}};
    for (const Row& row : rows) {
        const auto read = readText(
            tableOf({with(stay, {{"bait", "lamprey"}}), with(fish, {{row.column, row.cell}})}));
        ASSERT_TRUE(read) << row.column;
        ASSERT_EQ(read->log.size(), 1U) << row.column;
        ASSERT_EQ(read->log[0].runs.size(), 1U) << row.column;
        logbook::Fish expected;
        expected.id = logbook::FishId(1);
        expected.time = at("2026-10-03T09:00:00Z");
        row.set(expected);
        EXPECT_EQ(read->log[0].runs[0], expected) << row.column << ' ' << row.cell;
        logbook::Stay around = bare();
        around.bait = "lamprey";
        around.runs = {expected};
        EXPECT_EQ(read->log[0], around) << row.column;
        EXPECT_EQ(read->report.used, 2U);
        EXPECT_EQ(read->report.read, 2U);
    }
}

TEST(LogColumns, MayStandInAnyOrder) {
    std::vector<std::string> order = columns;
    std::ranges::reverse(order);
    const Cells full = with(stay, {{"rods", "3"}, {"bait", "roach"}, {"wind_from_deg", "200"}});
    const auto one = readText(tableOf({full}));
    const auto other = readText(tableOf({full}, order));
    ASSERT_TRUE(one && other);
    EXPECT_EQ(one->log, other->log);
}

TEST(LogColumns, TimesWithoutAZoneAreTheWatersAlsoAcrossMidnight) {
    const auto london = units::Clock::inZone("Europe/London").value();
    const auto read =
        readText(tableOf({with(stay, {{"start", "2026-10-03 23:30"}, {"end", "2026-10-04 00:45"}}),
                          {{"kind", "fish"}, {"stay", "7"}, {"time", "2026-10-04 00:10"}}}),
                 london);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->log[0].start, at("2026-10-03T22:30:00Z"));
    EXPECT_EQ(read->log[0].end, at("2026-10-03T23:45:00Z"));
    EXPECT_EQ(read->log[0].runs.at(0).time, at("2026-10-03T23:10:00Z"));
}

struct Range {
    const char* column;
    std::vector<const char*> good;
    std::vector<const char*> odd;
};

TEST(LogColumns, ANumberThatCannotBeLosesItsFieldAndNotItsRowJustBeyondItsLimits) {
    const std::vector<Range> ranges{
        {"rods", {"1", "100"}, {"-1", "0", "101", "two"}},
        {"weight_kg", {"0", "100"}, {"-0.1", "100.1", "heavy", "230 lb"}},
        {"length_mm", {"0", "3000"}, {"-1", "3001"}},
        {"bait_depth_m", {"0", "500"}, {"-0.1", "500.1"}},
        {"wind_from_deg", {"0", "360"}, {"-1", "361", "north"}},
        {"wind_speed_m_s", {"0", "60"}, {"-0.1", "60.1"}},
        {"water_temperature_c", {"-1", "40"}, {"-1.1", "40.1"}},
        {"level_m", {"-500", "10000"}, {"-500.1", "high"}},
        {"returned", {"1", "nein"}, {"perhaps"}}};
    const Cells other = with(stay, {{"stay", "8"}});
    const Cells fish{{"kind", "fish"}, {"stay", "8"}, {"time", "2026-10-03T09:00:00Z"}};
    for (const Range& range : ranges) {
        // What belongs to a fish is not looked at in the row of a stay.
        const std::string column = range.column;
        const bool isOfFish = column == "weight_kg" || column == "length_mm" ||
                              column == "bait_depth_m" || column == "returned";
        const Cells& row = isOfFish ? fish : stay;
        const std::size_t stays = isOfFish ? 1 : 2;
        for (const char* cell : range.good) {
            const auto read = readText(tableOf({other, with(row, {{range.column, cell}})}));
            ASSERT_TRUE(read) << range.column;
            EXPECT_EQ(read->log.size(), stays) << range.column << ' ' << cell;
            EXPECT_TRUE(read->report.badFields.empty()) << range.column << ' ' << cell;
        }
        for (const char* cell : range.odd) {
            const auto read = readText(tableOf({other, with(row, {{range.column, cell}})}));
            ASSERT_TRUE(read) << range.column;
            EXPECT_EQ(read->log.size(), stays) << range.column << ' ' << cell;
            EXPECT_EQ(read->report.refusedCount(), 0U) << range.column;
            EXPECT_EQ(read->report.badFields, (std::vector<BadField>{{3, range.column, cell}}));
            EXPECT_EQ(read->lines.at(logbook::StayId(8)), 2U);
        }
    }
}

TEST(LogRows, ThatCannotBeAreRefusedByTheirReasonWithTheirLine) {
    struct Row {
        Cells cells;
        const char* reason;
    };
    const Cells fish{{"kind", "fish"}, {"stay", "8"}, {"time", "2026-10-03T09:00:00Z"}};
    const std::vector<Row> rows{{with(stay, {{"kind", ""}}), "unknown_kind"},
                                {with(stay, {{"kind", "trip"}}), "unknown_kind"},
                                {with(stay, {{"stay", ""}}), "no_stay_number"},
                                {with(stay, {{"stay", "0"}}), "no_stay_number"},
                                {with(stay, {{"stay", "1.5"}}), "no_stay_number"},
                                {with(stay, {{"stay", "8"}}), "same_stay_twice"},
                                {with(stay, {{"start", ""}}), "bad_time"},
                                {with(stay, {{"lon", ""}}), "no_position"},
                                {with(stay, {{"lat", "95"}}), "no_position"},
                                {with(fish, {{"stay", ""}, {"time", ""}}), "no_stay_number"},
                                {with(fish, {{"stay", "9"}}), "no_such_stay"}};
    for (const Row& row : rows) {
        const auto read = readText(tableOf({with(stay, {{"stay", "8"}}), row.cells}));
        ASSERT_TRUE(read) << row.reason;
        ASSERT_EQ(read->log.size(), 1U) << row.reason;
        EXPECT_TRUE(read->log[0].runs.empty()) << row.reason;
        ASSERT_TRUE(read->report.refused.contains(row.reason))
            << row.reason << ": " << read->report.refusedText();
        EXPECT_EQ(read->report.refused.at(row.reason).count, 1U);
        EXPECT_EQ(read->report.refused.at(row.reason).firstLine, 3U) << row.reason;
        EXPECT_EQ(read->report.refusedCount(), 1U);
        EXPECT_EQ(read->report.used, 1U) << row.reason;
        EXPECT_EQ(read->report.read, 2U);
    }
}

TEST(LogRows, WithoutAnEndAreKeptAndLastNoTime) {
    for (const char* end : {"", "later", "2026-10-03T08:10:59Z"}) {
        const auto read = readText(tableOf({with(stay, {{"end", end}})}));
        ASSERT_TRUE(read) << end;
        ASSERT_EQ(read->log.size(), 1U) << end;
        EXPECT_EQ(read->log[0].end, read->log[0].start) << end;
        EXPECT_EQ(read->report.badFields.size(), *end == '\0' ? 0U : 1U) << end;
        EXPECT_EQ(read->report.notes.at(0), "Stays of which no end is known count in no rate: 1.");
    }
    const auto read = readText(tableOf({with(stay, {{"end", ""}, {"hours", "1.5"}})}));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->log.at(0).end, at("2026-10-03T09:41:00Z"));
    EXPECT_TRUE(read->report.notes.empty());
}

TEST(LogRows, StaysComeByStartAndRunsByTimeWhereverTheyStand) {
    const auto run = [](const char* number, const char* time) {
        return Cells{{"kind", "run"}, {"stay", number}, {"time", time}};
    };
    const auto read =
        readText(tableOf({run("7", "2026-10-03T09:30:00Z"), run("8", "2026-10-02T09:00:00Z"), stay,
                          run("7", "2026-10-03T08:30:00Z"),
                          with(stay, {{"stay", "8"},
                                      {"start", "2026-10-02T08:00:00Z"},
                                      {"end", "2026-10-02T10:00:00Z"}})}));
    ASSERT_TRUE(read);
    ASSERT_EQ(read->log.size(), 2U);
    EXPECT_EQ(read->log[0].id, logbook::StayId(8));
    EXPECT_EQ(read->log[1].id, logbook::StayId(7));
    ASSERT_EQ(read->log[1].runs.size(), 2U);
    EXPECT_EQ(read->log[1].runs[0].time, at("2026-10-03T08:30:00Z"));
    EXPECT_EQ(read->log[1].runs[0].id, logbook::FishId(3));
    EXPECT_EQ(read->log[1].runs[1].id, logbook::FishId(1));
    EXPECT_EQ(read->log[0].runs.at(0).id, logbook::FishId(2));
}

TEST(LogTable, NamesTheColumnThatIsMissing) {
    for (const char* needed : {"kind", "stay", "start", "end", "lon", "lat"}) {
        std::vector<std::string> order = columns;
        std::erase(order, needed);
        std::erase(order, "hours");
        const auto read = readText(tableOf({stay}, order));
        ASSERT_FALSE(read) << needed;
        EXPECT_EQ(read.error().what, std::string("it has no column '") + needed + "'");
    }
    for (const char* unneeded : {"time", "rods", "bait", "species", "weight_kg", "note"}) {
        std::vector<std::string> order = columns;
        std::erase(order, unneeded);
        EXPECT_TRUE(readText(tableOf({stay}, order))) << unneeded;
    }
    EXPECT_FALSE(readText(tableOf({})));
}

} // namespace

} // namespace readers
