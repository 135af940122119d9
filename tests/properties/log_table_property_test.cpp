// SPDX-License-Identifier: GPL-3.0-or-later
// A log given away as a table comes back as the same log, byte for byte: whatever texts, positions,
// numbers and columns of somebody else's it holds.
#include "core/acts/stays.h"
#include "core/outputs/write_table.h"
#include "core/readers/read_log.h"
#include "core/water/steps/bring_in_log.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace {

base::Progress quiet;

constexpr std::array oddTexts{"=1+2", "-8 by night", "+44",         "@home",       "'=1",
                              "''",   "'quoted'",    " both ends ", "two\nlines",  "two\r\nlines\r",
                              "\t",   "a;b|c\td,e",  "\"",          "\"\"all\"\"", "kind",
                              "1,5",  "湖"};

/// A log as a reader gives it, in any order of times; stays lie on days of their own, so that none
/// is another once more.
logbook::Log randomLog(std::uint64_t seed) {
    support::RandomWater random(seed);
    const auto oddText = [&random] {
        return std::string(
            oddTexts[static_cast<std::size_t>(random.upTo(static_cast<int>(oddTexts.size()) - 1))]);
    };
    logbook::Log log;
    const int count = 1 + random.upTo(12);
    for (int i = 0; i < count; ++i) {
        logbook::Stay stay = random.stay();
        stay.id = logbook::StayId(1000 + 7 * (count - i));
        const auto length = stay.end - stay.start;
        stay.start = units::Moment(std::chrono::days(19'000 + 2 * i)) +
                     std::chrono::milliseconds(random.upTo(86'000'000));
        stay.end = stay.start + length;
        stay.note = oddText();
        stay.who = random.yes() ? oddText() : stay.who;
        for (logbook::Fish& run : stay.runs) {
            run.note = oddText();
            if (run.time) {
                run.time = stay.start + std::chrono::milliseconds(random.upTo(9'000'000));
            }
            run.length = units::Length::metres(random.number(0.001, 3.0));
        }
        std::ranges::stable_sort(stay.runs, {}, &logbook::Fish::time);
        log.push_back(std::move(stay));
    }
    return log;
}

void dropFishNumbers(logbook::Log& log) {
    for (logbook::Stay& stay : log) {
        for (logbook::Fish& run : stay.runs) {
            run.id = {};
        }
    }
}

TEST(LogTableProperty, WhatGoesOutComesInAsTheSameLog) {
    const units::Clock clock = units::Clock::inZone("America/St_Johns").value();
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        const support::ScratchFolder folder;
        logbook::Log log = randomLog(seed);
        const auto path = folder.path() / "log.csv";
        ASSERT_TRUE(outputs::writeLogTable(path, log, clock).has_value());
        auto read = readers::readLog(path, units::Clock(), quiet);
        ASSERT_TRUE(read.has_value()) << read.error().sentence();
        EXPECT_EQ(read->report.refusedCount(), 0U) << read->report.refusedText();
        EXPECT_TRUE(read->report.badFields.empty()) << read->report.badFields.front().column;
        dropFishNumbers(read->log);
        dropFishNumbers(log);
        ASSERT_EQ(read->log.size(), log.size());
        for (std::size_t i = 0; i < log.size(); ++i) {
            EXPECT_TRUE(read->log[i] == log[i]) << "stay " << i;
        }
    }
}

TEST(LogTableProperty, BroughtIntoAnEmptyWaterItIsGivenAwayAgainByteForByte) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        const support::ScratchFolder folder;
        const auto first = folder.path() / "first.csv";
        const auto second = folder.path() / "second.csv";
        ASSERT_TRUE(outputs::writeLogTable(first, randomLog(seed), units::Clock()).has_value());
        water::Water water;
        const auto brought = water::bringInLog(water, first, quiet);
        ASSERT_TRUE(brought.has_value()) << brought.error().sentence();
        EXPECT_TRUE(brought->doubtful.empty());
        auto added = acts::addStays(water, brought->stays);
        ASSERT_TRUE(added.has_value());
        ASSERT_TRUE(outputs::writeLogTable(second, added->log, units::Clock()).has_value());
        EXPECT_EQ(support::ScratchFolder::textOf(first), support::ScratchFolder::textOf(second));
        const auto again = water::bringInLog(*added, first, quiet);
        ASSERT_TRUE(again.has_value());
        EXPECT_TRUE(again->stays.empty()) << "it holds all of it already";
        EXPECT_EQ(again->known, added->log.size());
    }
}

} // namespace
