// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_house_rules.h"
#include "core/readers/read_lead_line.h"
#include "core/readers/read_log.h"
#include "core/readers/read_soundings.h"
#include "core/readers/read_water_facts.h"
#include "core/readers/read_weed_notes.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace readers {

namespace {

using namespace std::chrono_literals;

const std::string logHeader =
    "kind,stay,start,end,time,lon,lat,rods,bait,species,weight_kg,length_mm,bait_depth_m,"
    "wind_from_deg,wind_speed_m_s,water_temperature_c,note\n";

TEST(ReadLog, TiesRunsAndFishToTheirStays) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const auto read = readLog(
        scratch.file("log.csv",
                     logHeader +
                         "fish,7,,,2024-09-18T09:20:00+01:00,,,,,pike,2.34,695,5.9,,,,\n"
                         "stay,7,2024-09-18T08:11:00+01:00,2024-09-18T10:09:00+01:00,,3.1,55.2,3,"
                         "lamprey,,,,,20,3.5,15.9,\"slow, then quick\"\n"
                         "run,7,,,2024-09-18T09:00:00+01:00,,,,,,,,,,,,\n"
                         "fish,8,,,2024-09-18T09:20:00+01:00,,,,,pike,,,,,,,\n"),
        units::Clock(), progress);
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->log.size(), 1U);
    const logbook::Stay& stay = read->log.front();
    EXPECT_EQ(stay.id, logbook::StayId(7));
    EXPECT_EQ(stay.rods, 3);
    EXPECT_EQ(stay.note, "slow, then quick");
    EXPECT_DOUBLE_EQ(stay.conditions.windFrom->inDegrees(), 20.0);
    ASSERT_EQ(stay.runs.size(), 2U);
    EXPECT_FALSE(stay.runs[0].landed);
    EXPECT_TRUE(stay.runs[1].landed);
    EXPECT_EQ(stay.runs[1].bait, "") << "of three rods' baits nobody says which";
    EXPECT_DOUBLE_EQ(stay.runs[1].weight->inKilograms(), 2.34);
    EXPECT_EQ(stay.fishCount(), 1);
    EXPECT_EQ(read->report.refused.at("no_such_stay").count, 1U);
    EXPECT_EQ(read->report.refused.at("no_such_stay").firstLine, 5U);
}

TEST(ReadLog, CountsRowsThatCannotBe) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const std::string good = "stay,1,2024-09-18T08:11,2024-09-18T10:09,,3.1,55.2,,,,,,,,,,\n";
    const auto read =
        readLog(scratch.file("log.csv",
                             logHeader + good + good +
                                 "nap,2,2024-09-18T08:11,2024-09-18T10:09,,3.1,55.2,,,,,,,,,,\n"
                                 "stay,,2024-09-18T08:11,2024-09-18T10:09,,3.1,55.2,,,,,,,,,,\n"
                                 "stay,3,2024-09-18T10:11,2024-09-18T08:09,,3.1,55.2,,,,,,,,,,\n"
                                 "stay,4,2024-09-18T08:11,2024-09-18T10:09,,3.1,,,,,,,,,,,\n"
                                 "stay,5,2024-09-18T08:11,2024-09-18T10:09,,3.1,55.2,,,,,,,720,,,\n"
                                 "long,row,,,,,,,,,,,,,,,,beyond\n"),
                units::Clock(), progress);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->log.size(), 3U);
    EXPECT_EQ(read->report.badFields,
              (std::vector<BadField>{{6, "end", "2024-09-18T08:09"}, {8, "wind_from_deg", "720"}}));
    for (const char* reason :
         {"same_stay_twice", "unknown_kind", "no_stay_number", "no_position", "wrong_columns"}) {
        EXPECT_TRUE(read->report.refused.contains(reason)) << reason;
    }
}

TEST(ReadWeedNotes, TakesKindAndHeight) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const auto read = readWeedNotes(
        scratch.file("w.csv", "lon,lat,kind,height_m\n3.1,55.2,thick,1.7\n3.1,55.2,reeds,1\n"),
        progress);
    ASSERT_TRUE(read);
    ASSERT_EQ(read->notes.size(), 1U);
    EXPECT_EQ(read->notes[0].growth, weed::Growth::thick);
    EXPECT_EQ(read->notes[0].height, units::Length::metres(1.7));
    EXPECT_EQ(read->report.refused.at("unknown_kind").count, 1U);
}

TEST(ReadLeadLine, NamesTheColumnThatIsMissing) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    const auto read = readLeadLine(scratch.file("l.csv", "lon,lat,bottom\n3,55,soft\n"), progress);
    ASSERT_FALSE(read);
    EXPECT_NE(read.error().what.find("depth_m"), std::string::npos);
}

TEST(ReadHouseRules, NamesTheEntryThatMakesNoSense) {
    const support::ScratchFolder scratch;
    const auto read =
        readHouseRules(scratch.file("r.json", R"({"season": {"from": "09-15", "to": "13-40"}})"));
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().where, "r.json, season, to");
    EXPECT_FALSE(readHouseRules(scratch.file("x.json", "{rods")));
    EXPECT_FALSE(readHouseRules(scratch.file("y.json", R"({"rods_per_boat": 0})")));
    EXPECT_FALSE(readHouseRules(scratch.file(
        "z.json",
        R"({"closed_waters": [{"geometry": {"type": "Polygon", "coordinates": [[[3, 95], [3, 4], [4, 4]]]}}]})")));
}

TEST(ReadSampleSurvey, ReadsAllOfItsSmallFiles) {
    const std::filesystem::path files = std::filesystem::path(MEREMARK_SAMPLE_DIR) / "files";
    base::Progress progress;
    const auto facts = readWaterFacts(files / "water.json");
    ASSERT_TRUE(facts) << facts.error().sentence();
    EXPECT_TRUE(facts->isInvented);
    EXPECT_EQ(facts->clock.zone(), "Europe/London");
    EXPECT_EQ(facts->places.size(), 15U);
    const auto rules = readHouseRules(files / "house-rules.json");
    ASSERT_TRUE(rules) << rules.error().sentence();
    EXPECT_EQ(rules->rodLimit, 3);
    ASSERT_EQ(rules->closed.size(), 1U);
    EXPECT_EQ(rules->closed[0].pieces.at(0).outer.size(), 4U);
    EXPECT_TRUE(rules->season->holds({std::chrono::year{2026} / 10 / 3}));
    const auto notes = readWeedNotes(files / "weed-notes.csv", progress);
    ASSERT_TRUE(notes) << notes.error().sentence();
    EXPECT_EQ(notes->notes.size(), 40U);
    const auto lead = readLeadLine(files / "lead-line.csv", progress);
    ASSERT_TRUE(lead) << lead.error().sentence();
    EXPECT_EQ(lead->report.refusedCount(), 0U);
    const auto log = readLog(files / "log.csv", facts->clock, progress);
    ASSERT_TRUE(log) << log.error().sentence();
    EXPECT_EQ(log->report.refusedCount(), 0U) << log->report.refusedText();
    const auto days = readSurveyDayFacts(files / "survey-days.csv");
    ASSERT_TRUE(days) << days.error().sentence();
    ASSERT_EQ(days->size(), 3U);
    EXPECT_FALSE(days->at(1).level);
    EXPECT_EQ(days->at(2).unit, DepthUnit::feet);
}

struct BadFile {
    const char* name;
    std::string text;
    const char* says;
};

TEST(ReadSoundings, SaysWhatIsWrongWithAFileItCannotUse) {
    using namespace std::string_literals;
    const support::ScratchFolder scratch;
    base::Progress progress;
    std::string junk;
    for (int i = 0; i < 5000; ++i) {
        junk += static_cast<char>((i * 7919 + i / 3) % 256);
    }
    const std::vector<BadFile> files{
        {"empty.nmea", "", "empty"},
        {"blank.csv", "  \n\n", "blanks"},
        {"junk.nmea", junk, "binary"},
        {"nul.csv", std::string(10000, '\0'), "binary"},
        {"depth_only.nmea", "$SDDPT,3.7,0.0*53\n$SDDPT,3.8,0.0*5C\n", "2 depths but no position"},
        {"long.csv", std::string(10000000, 'a'), "no column"},
        {"broken.geojson", "{\"type\": \"FeatureCollection\", ", "no vector file"},
    };
    for (const BadFile& file : files) {
        const auto path = scratch.file(file.name, file.text);
        const auto read = readSoundings(path, {}, progress);
        ASSERT_FALSE(read) << file.name;
        EXPECT_EQ(read.error().kind, base::ErrorKind::unusableInput);
        EXPECT_NE(read.error().what.find(file.says), std::string::npos) << read.error().sentence();
        EXPECT_NE(read.error().where.find(file.name), std::string::npos) << read.error().sentence();
        EXPECT_FALSE(read.error().whatToDo.empty()) << file.name;
    }
    EXPECT_FALSE(readSoundings(scratch.path() / "missing.csv", {}, progress));
    EXPECT_FALSE(readSoundings(scratch.path(), {}, progress));
}

} // namespace

} // namespace readers
