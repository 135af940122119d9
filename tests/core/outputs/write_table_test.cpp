// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_table.h"

#include "core/readers/read_log.h"
#include "tests/support/found_water.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace {

using support::FoundWater;
using support::ScratchFolder;

base::Progress quiet;

/// A log of values that a person could have entered, as a reader gives it.
logbook::Log plausibleLog(std::uint64_t seed) {
    support::RandomWater random(seed);
    logbook::Log log;
    std::int64_t fishNumber = 0;
    for (std::int64_t i = 1; i <= 12; ++i) {
        logbook::Stay stay;
        stay.id = logbook::StayId(i * 3);
        stay.start = random.moment();
        stay.end = stay.start + std::chrono::minutes(random.upTo(300));
        stay.place = random.place();
        stay.rods = 1 + random.upTo(4);
        stay.bait = "roach, \"fresh\"";
        stay.note = random.yes() ? "湖; a,b" : "";
        if (random.yes()) {
            stay.conditions.windFrom = units::Bearing::degrees(random.number(0.0, 359.0));
            stay.conditions.windSpeed = units::Speed::milesPerHour(random.number(0.0, 30.0));
            stay.conditions.waterTemperature =
                units::Temperature::fahrenheit(random.number(35.0, 75.0));
        }
        log.push_back(stay);
    }
    logbook::sortByTime(log);
    for (logbook::Stay& stay : log) {
        for (int k = 0; k < 3; ++k) {
            logbook::Fish fish;
            fish.time = stay.start + std::chrono::milliseconds(60'001 * k);
            fish.landed = random.yes();
            fish.bait = "smelt";
            fish.species = fish.landed ? "pike" : "";
            if (random.yes()) {
                fish.weight = units::Weight::pounds(random.number(0.2, 30.0));
                fish.length = units::Length::metres((200 + random.upTo(12'000) / 10.0) / 1000.0);
                fish.baitDepth = units::Depth::feet(random.number(1.0, 40.0));
            }
            stay.runs.push_back(fish);
            stay.runs.back().id = logbook::FishId(++fishNumber);
        }
    }
    return log;
}

TEST(WriteLogTable, ReadsBackAsTheSameLog) {
    const units::Clock clock = units::Clock::inZone("America/St_Johns").value();
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        const ScratchFolder folder;
        const logbook::Log log = plausibleLog(seed);
        ASSERT_TRUE(outputs::writeLogTable(folder.path() / "log.csv", log, clock).has_value());
        const auto read = readers::readLog(folder.path() / "log.csv", units::Clock(), quiet);
        ASSERT_TRUE(read.has_value()) << read.error().sentence();
        EXPECT_EQ(read->report.refusedCount(), 0U) << read->report.refusedText();
        EXPECT_TRUE(read->log == log);
    }
}

TEST(WriteLogTable, HasTheColumnsOfTheContract) {
    const ScratchFolder folder;
    const FoundWater known;
    ASSERT_TRUE(
        outputs::writeLogTable(folder.path() / "log.csv", known.water.log, known.water.clock)
            .has_value());
    const std::string text = ScratchFolder::textOf(folder.path() / "log.csv");
    EXPECT_TRUE(text.starts_with(
        "kind,stay,start,end,time,lon,lat,rods,bait,species,weight_kg,length_mm,bait_depth_m,"
        "wind_from_deg,wind_speed_m_s,water_temperature_c,note,level_m,sky,bait_lon,bait_lat,"
        "hooked,returned,photograph,who\n"));
    // Wall time of the water with its offset; a note of two lines stays one of two lines.
    EXPECT_NE(text.find("stay,1,2026-09-27T10:06:40+01:00,2026-09-27T12:06:40+01:00,"),
              std::string::npos)
        << text;
    EXPECT_NE(text.find("\"two\nlines\","), std::string::npos) << text;
    EXPECT_NE(text.find(",pike,5.216312255,830,"), std::string::npos) << text;
    EXPECT_EQ(std::ranges::count(text, '\n'), 7);
}

TEST(WriteLogTable, TellsStaysApartThatHaveNoNumbers) {
    const ScratchFolder folder;
    logbook::Log log = plausibleLog(3);
    for (logbook::Stay& stay : log) {
        stay.id = logbook::StayId();
    }
    ASSERT_TRUE(outputs::writeLogTable(folder.path() / "log.csv", log, units::Clock()).has_value());
    const auto read = readers::readLog(folder.path() / "log.csv", units::Clock(), quiet);
    ASSERT_TRUE(read.has_value());
    ASSERT_EQ(read->log.size(), log.size());
    for (std::size_t i = 0; i < log.size(); ++i) {
        EXPECT_EQ(read->log[i].runs.size(), log[i].runs.size());
    }
}

TEST(WriteSoundingsTable, GivesEverySoundingWithItsReason) {
    const ScratchFolder folder;
    const FoundWater known;
    ASSERT_TRUE(outputs::writeSoundingsTable(folder.path() / "soundings.csv", known.water.days,
                                             &known.found.checked->survey)
                    .has_value());
    const std::string text = ScratchFolder::textOf(folder.path() / "soundings.csv");
    EXPECT_TRUE(text.starts_with("lon,lat,time,survey_day,shown_depth_m,depth_m,set_aside\n"));
    EXPECT_EQ(std::ranges::count(text, '\n'), 201);
    EXPECT_NE(text.find(",\"2026-09-05, \"\"windy\"\"\",5.040,5.290,\n"), std::string::npos);
    EXPECT_NE(text.find(",by_hand\n"), std::string::npos);
    EXPECT_NE(text.find(",spike\n"), std::string::npos);
    EXPECT_NE(text.find(",,\"2026-09-05"), std::string::npos); // The sounding without a time.
}

TEST(WriteSoundingsTable, LeavesEmptyWhatWasNotReduced) {
    const ScratchFolder folder;
    const FoundWater known;
    ASSERT_TRUE(
        outputs::writeSoundingsTable(folder.path() / "soundings.csv", known.water.days, nullptr)
            .has_value());
    const std::string text = ScratchFolder::textOf(folder.path() / "soundings.csv");
    EXPECT_NE(text.find(",5.040,,\n"), std::string::npos) << text.substr(0, 300);
}

TEST(WriteSoundingsTable, SaysWhereItCannotWrite) {
    const ScratchFolder folder;
    const auto path = folder.file("file", "") / "soundings.csv";
    const auto written = outputs::writeSoundingsTable(path, {}, nullptr);
    ASSERT_FALSE(written.has_value());
    EXPECT_EQ(written.error().kind, base::ErrorKind::unwritableOutput);
    EXPECT_EQ(written.error().where, path.string());
    EXPECT_FALSE(written.error().whatToDo.empty());
}

} // namespace
