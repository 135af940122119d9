// SPDX-License-Identifier: GPL-3.0-or-later
// Every key of the house rules and of a water's facts, every column of the survey days, the lead
// line and the weed notes.
#include "core/readers/read_house_rules.h"
#include "core/readers/read_lead_line.h"
#include "core/readers/read_water_facts.h"
#include "core/readers/read_weed_notes.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace readers {

namespace {

base::Result<logbook::HouseRules> rulesOf(const std::string& text) {
    const support::ScratchFolder scratch;
    return readHouseRules(scratch.file("r.json", text));
}

TEST(HouseRules, TakeEveryKey) {
    const auto read = rulesOf(R"({
        "rods_per_boat": 3,
        "season": {"from": "06-16", "to": "03-14"},
        "closed_waters": [
            {"name": "Nursery", "geometry": {"type": "Polygon", "coordinates":
                [[[3.0, 55.0], [3.2, 55.0], [3.2, 55.2], [3.0, 55.0]],
                 [[3.1, 55.05], [3.15, 55.05], [3.15, 55.1], [3.1, 55.05]]]}},
            {"geometry": {"type": "MultiPolygon", "coordinates":
                [[[[4.0, 55.0], [4.2, 55.0], [4.2, 55.2], [4.0, 55.0]]],
                 [[[5.0, 55.0], [5.2, 55.0], [5.2, 55.2]]]]}}],
        "species": [
            {"name": "pike", "keep": 0},
            {"name": "trout", "keep": 2, "least_length_mm": 300, "note": "no livebait"},
            {"keep": 1}],
        "notes": ["Boats in by dusk.", "No engines."]})");
    ASSERT_TRUE(read) << read.error().sentence();
    logbook::HouseRules expected;
    expected.rodLimit = 3;
    expected.season = logbook::Season{std::chrono::June / 16, std::chrono::March / 14};
    expected.closed = {{"Nursery",
                        {{{{3.0, 55.0}, {3.2, 55.0}, {3.2, 55.2}},
                          {{{3.1, 55.05}, {3.15, 55.05}, {3.15, 55.1}}}}}},
                       {"closed water 2",
                        {{{{4.0, 55.0}, {4.2, 55.0}, {4.2, 55.2}}, {}},
                         {{{5.0, 55.0}, {5.2, 55.0}, {5.2, 55.2}}, {}}}}};
    expected.notes = {"pike: none may be kept",
                      "trout: 2 may be kept, none below 300 mm (no livebait)",
                      "fish: 1 may be kept", "Boats in by dusk.", "No engines."};
    EXPECT_EQ(*read, expected);
}

TEST(HouseRules, KnowNothingWhereNothingIsSaid) {
    const auto read = rulesOf("{}");
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, logbook::HouseRules{});
}

TEST(HouseRules, NameTheEntryThatMakesNoSense) {
    const std::string open =
        R"({"closed_waters": [{"geometry": {"type": "Polygon", "coordinates": )";
    const std::vector<std::pair<std::string, std::string>> bad{
        {R"({"rods_per_boat": 0})", "rods_per_boat"},
        {R"({"rods_per_boat": 101})", "rods_per_boat"},
        {R"({"rods_per_boat": 2.5})", "rods_per_boat"},
        {R"({"rods_per_boat": "two"})", "rods_per_boat"},
        {R"({"season": {"from": "00-10", "to": "03-14"}})", "season, from"},
        {R"({"season": {"from": "02-30", "to": "03-14"}})", "season, from"},
        {R"({"season": {"from": "06-16"}})", "season, to"},
        {R"({"season": {"from": "06-16", "to": "3"}})", "season, to"},
        {R"({"species": [{"keep": -1}]})", "species, keep"},
        {R"({"species": [{"keep": 1, "least_length_mm": 10001}]})", "species, least_length_mm"},
        {open + R"([[[3, 55], [4, 55]]]}}]})", "closed_waters, entry 1"},
        {open + R"([[[3, 55], [4, 55], [3, 55]]]}}]})", "closed_waters, entry 1"},
        {open + R"([[[3, 55], [4, 55], [4, 91]]]}}]})", "closed_waters, entry 1"},
        {open + R"([[[3, 55], [4, 55], [4]]]}}]})", "closed_waters, entry 1"},
        {open + R"([]}}]})", "closed_waters, entry 1"},
        {R"({"closed_waters": [{"geometry": {"type": "LineString", "coordinates": []}}]})",
         "closed_waters, entry 1"}};
    for (const auto& [text, entry] : bad) {
        const auto read = rulesOf(text);
        ASSERT_FALSE(read) << text;
        EXPECT_EQ(read.error().kind, base::ErrorKind::unusableInput);
        EXPECT_EQ(read.error().where, "r.json, " + entry) << text;
        EXPECT_EQ(read.error().whatToDo, "put that entry right");
    }
    for (const char* good : {R"({"rods_per_boat": 1})", R"({"rods_per_boat": 100})",
                             R"({"season": {"from": "02-29", "to": "12-31"}})",
                             R"({"species": [{"keep": 10000, "least_length_mm": 0}]})"}) {
        EXPECT_TRUE(rulesOf(good)) << good;
    }
    EXPECT_FALSE(rulesOf("{"));
    EXPECT_FALSE(rulesOf(R"({"notes": [1]})"));
}

base::Result<WaterFacts> factsOf(const std::string& text) {
    const support::ScratchFolder scratch;
    return readWaterFacts(scratch.file("w.json", text));
}

TEST(WaterFacts, TakeEveryKey) {
    const auto read = factsOf(R"({"name": "Skarrow Water", "invented": true,
        "time_zone": "Europe/Oslo", "chart_level_m": -12.25, "secchi_depth_m": 2.5,
        "launch": {"lon": 3.11, "lat": 55.21},
        "places": [{"name": "Bar", "lon": 3.12, "lat": 55.22},
                   {"name": "Neck", "lon": 3.13, "lat": 55.23}]})");
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->name, "Skarrow Water");
    EXPECT_TRUE(read->isInvented);
    EXPECT_EQ(read->clock.zone(), "Europe/Oslo");
    EXPECT_EQ(read->chartLevel, units::WaterLevel::metresOnGauge(-12.25));
    EXPECT_EQ(read->secchi, units::Depth::metres(2.5));
    EXPECT_EQ(read->launch, (geo::LonLat{3.11, 55.21}));
    EXPECT_EQ(read->places,
              (std::vector<PlaceFact>{{"Bar", {3.12, 55.22}}, {"Neck", {3.13, 55.23}}}));
    const auto bare = factsOf(R"({"name": "Skarrow Water"})");
    ASSERT_TRUE(bare);
    EXPECT_FALSE(bare->isInvented);
    EXPECT_EQ(bare->clock.zone(), "Etc/UTC");
    EXPECT_FALSE(bare->chartLevel || bare->secchi || bare->launch || !bare->places.empty());
}

TEST(WaterFacts, NameTheEntryThatMakesNoSense) {
    const std::vector<std::pair<std::string, std::string>> bad{
        {R"("chart_level_m": 10000.5)", "chart_level_m"},
        {R"("chart_level_m": -10000.5)", "chart_level_m"},
        {R"("secchi_depth_m": -0.1)", "secchi_depth_m"},
        {R"("secchi_depth_m": 100.5)", "secchi_depth_m"},
        {R"("launch": {"lon": 3, "lat": 91})", "launch"},
        {R"("places": [{"name": "Bar", "lon": 181, "lat": 55}])", "Bar"},
        {R"("time_zone": "Europe/Nowhere")", "time_zone"}};
    for (const auto& [entry, where] : bad) {
        const auto read = factsOf(R"({"name": "Skarrow Water", )" + entry + "}");
        ASSERT_FALSE(read) << entry;
        EXPECT_EQ(read.error().kind, base::ErrorKind::unusableInput) << entry;
        EXPECT_EQ(read.error().where, "w.json, " + where) << entry;
    }
    for (const char* good : {R"("chart_level_m": 10000)", R"("chart_level_m": -10000)",
                             R"("secchi_depth_m": 0)", R"("secchi_depth_m": 100)"}) {
        EXPECT_TRUE(factsOf(std::string(R"({"name": "Skarrow Water", )") + good + "}")) << good;
    }
    EXPECT_FALSE(factsOf("{}"));
}

base::Result<std::vector<SurveyDayFacts>> daysOf(const std::string& text) {
    const support::ScratchFolder scratch;
    return readSurveyDayFacts(scratch.file("days.csv", text));
}

TEST(SurveyDays, TakeEveryColumn) {
    const auto read = daysOf(
        "depth_unit,assumed_sound_speed_m_s,draft_m,water_temperature_c,water_level_m,file,day\n"
        "ft,1480,0.3,16.5,-0.45,a.nmea,2026-09-05\nfathom,,,,,b.csv,\nm,,,,,c.csv,\n"
        ",,,,,d.csv,2026-09-06\n");
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->size(), 4U);
    const SurveyDayFacts& day = read->front();
    EXPECT_EQ(day.day, "2026-09-05");
    EXPECT_EQ(day.file, "a.nmea");
    EXPECT_EQ(day.level, units::WaterLevel::metresOnGauge(-0.45));
    EXPECT_EQ(day.waterTemperature, units::Temperature::celsius(16.5));
    EXPECT_EQ(day.draft, units::Depth::metres(0.3));
    EXPECT_EQ(day.assumedSoundSpeed, units::Speed::metresPerSecond(1480));
    EXPECT_EQ(day.unit, DepthUnit::feet);
    EXPECT_EQ(read->at(1).unit, DepthUnit::fathoms);
    EXPECT_EQ(read->at(2).unit, DepthUnit::metres);
    const SurveyDayFacts& bare = read->back();
    EXPECT_EQ(bare.file, "d.csv");
    EXPECT_FALSE(bare.level || bare.waterTemperature || bare.draft || bare.assumedSoundSpeed ||
                 bare.unit);
}

TEST(SurveyDays, RefuseANumberJustBeyondItsLimits) {
    struct Range {
        const char* column;
        std::vector<const char*> good;
        std::vector<const char*> odd;
    };
    for (const Range& range :
         {Range{"water_level_m", {"-10000", "10000"}, {"-10000.5", "10000.5", "high"}},
          Range{"water_temperature_c", {"-3", "50"}, {"-3.1", "50.1"}},
          Range{"draft_m", {"0", "30"}, {"-0.1", "30.1"}},
          Range{"assumed_sound_speed_m_s", {"1000", "2000"}, {"999", "2001"}}}) {
        const std::string head = std::string("day,file,") + range.column + "\nx,a.csv,\nx,b.csv,";
        for (const char* cell : range.good) {
            EXPECT_TRUE(daysOf(head + cell + "\n")) << range.column << ' ' << cell;
        }
        for (const char* cell : range.odd) {
            const auto read = daysOf(head + cell + "\n");
            ASSERT_FALSE(read) << range.column << ' ' << cell;
            EXPECT_EQ(read.error().what,
                      std::string(range.column) + " makes no sense: '" + cell + "'");
            EXPECT_EQ(read.error().where, "days.csv, line 3");
        }
    }
    EXPECT_FALSE(daysOf("day,file\n2026-09-05,\n"));
    EXPECT_FALSE(daysOf("day,file\n"));
    EXPECT_FALSE(daysOf("day,file\nx,a.csv\nx\n"));
    EXPECT_FALSE(daysOf("day\nx\n"));
}

template <class Read>
auto table(Read read, const std::string& text) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    return read(scratch.file("t.csv", text), progress);
}

void expectRefused(const ReadingReport& report,
                   const std::vector<std::pair<const char*, std::size_t>>& byLine) {
    for (const auto& [reason, line] : byLine) {
        ASSERT_TRUE(report.refused.contains(reason)) << reason;
        EXPECT_EQ(report.refused.at(reason).count, 1U) << reason;
        EXPECT_EQ(report.refused.at(reason).firstLine, line) << reason;
    }
    EXPECT_EQ(report.refusedCount(), byLine.size());
}

TEST(LeadLineTable, TakesEveryColumnAndRefusesByReason) {
    const auto read = table(readLeadLine, "bottom,depth_m,lat,lon\nsoft,0,55.2,3.1\n"
                                          "Gravel,4.25,55.3,3.2\nrock,11000,55.2,3.1\n"
                                          "weed,3,55.2,3.1\n,5,55.2,3.1\nsoft,5,55.2,\n"
                                          "soft,,55.2,3.1\nsoft,-0.1,55.2,3.1\n"
                                          "soft,11000.5,55.2,3.1\nmud,5,55.2,3.1\nsoft\n");
    ASSERT_TRUE(read) << read.error().sentence();
    using soundings::Bottom;
    const auto one = [](std::int64_t id, geo::LonLat place, double depth_m,
                        std::optional<Bottom> bottom) {
        return soundings::LeadLineSounding{soundings::LeadLineId(id), place,
                                           units::Depth::metres(depth_m), bottom};
    };
    EXPECT_EQ(read->soundings,
              (std::vector{one(1, {3.1, 55.2}, 0, Bottom::soft),
                           one(2, {3.2, 55.3}, 4.25, Bottom::gravel),
                           one(3, {3.1, 55.2}, 11000, Bottom::rock),
                           one(4, {3.1, 55.2}, 3, Bottom::weed), one(5, {3.1, 55.2}, 5, {})}));
    EXPECT_EQ(read->report.read, 11U);
    EXPECT_EQ(read->report.used, 5U);
    expectRefused(read->report, {{"no_position", 7},
                                 {"no_depth", 8},
                                 {"negative_depth", 9},
                                 {"impossible_depth", 10},
                                 {"unknown_bottom", 11},
                                 {"wrong_columns", 12}});
}

TEST(WeedNotesTable, TakesTheDayAndRefusesWhatIsNone) {
    const auto read = table(readWeedNotes, "lon,lat,kind,seen\n3.1,55.2,thick,2025-08-20\n"
                                           "3.1,55.3,thin,\n3.1,55.4,thin,last summer\n");
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->notes.size(), 2U);
    EXPECT_EQ(read->notes[0].seen, units::dayFrom("2025-08-20"));
    EXPECT_FALSE(read->notes[1].seen);
    expectRefused(read->report, {{"no_day", 4}});
}

TEST(WeedNotesTable, TakesEveryColumnAndRefusesByReason) {
    const auto read = table(readWeedNotes, "height_m,kind,lat,lon\n0,none,55.2,3.1\n"
                                           "60,Thin,55.3,3.2\n,thick,55.2,3.1\n1,thick,55.2,\n"
                                           "1,reeds,55.2,3.1\n-0.1,thin,55.2,3.1\n"
                                           "60.1,thin,55.2,3.1\ntall,thin,55.2,3.1\n");
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->notes.size(), 3U);
    using weed::Growth;
    EXPECT_EQ(read->notes[0].growth, Growth::none);
    EXPECT_EQ(read->notes[0].height, units::Length::metres(0));
    EXPECT_EQ(read->notes[1].growth, Growth::thin);
    EXPECT_EQ(read->notes[1].height, units::Length::metres(60));
    EXPECT_EQ(read->notes[1].place, (geo::LonLat{3.2, 55.3}));
    EXPECT_EQ(read->notes[1].id, weed::WeedNoteId(2));
    EXPECT_EQ(read->notes[2].growth, Growth::thick);
    EXPECT_FALSE(read->notes[2].height);
    EXPECT_EQ(read->report.used, 3U);
    expectRefused(read->report, {{"no_position", 5},
                                 {"unknown_kind", 6},
                                 {"negative_height", 7},
                                 {"impossible_height", 8},
                                 {"not_a_number", 9}});
}

} // namespace

} // namespace readers
