// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/log_digest.h"
#include "app/days/looking_back/log_rows.h"
#include "tests/app/days/autumn_log.h"

#include <gtest/gtest.h>

namespace {

using days::looking_back::LogRows;
using days::looking_back::sumOf;
using logbook::LogSum;

/// Many autumns, one after the other, each stay and fish with an id of its own.
logbook::KeptLog manyAutumns(int count) {
    logbook::Log log;
    std::int64_t id = 1;
    for (int i = 0; i < count; ++i) {
        for (logbook::Stay stay : autumn::log()) {
            const auto later = std::chrono::hours(24 * 7 * i);
            stay.id = logbook::StayId(id++);
            stay.start += later;
            stay.end += later;
            for (logbook::Fish& run : stay.runs) {
                run.id = logbook::FishId(id++);
                *run.time += later;
            }
            log.push_back(stay);
        }
    }
    return log;
}

TEST(LogDigest, IsTheSumOfTheLogAfterEachChange) {
    const auto london = units::Clock::inZone("Europe/London").value();
    logbook::KeptLog log = manyAutumns(150);
    EXPECT_EQ(sumOf(log, {}), LogSum::of(log.copied(), {}));
    log.edit(200).runs.clear();
    EXPECT_EQ(sumOf(log, {}), LogSum::of(log.copied(), {}));
    // Half past midnight in London, the day before by UTC.
    log.edit(449).start = units::Moment(std::chrono::sys_days(std::chrono::year(2030) / 7 / 1)) -
                          std::chrono::minutes(30);
    EXPECT_EQ(sumOf(log, {}), LogSum::of(log.copied(), {}));
    EXPECT_EQ(sumOf(log, london), LogSum::of(log.copied(), london));
    EXPECT_NE(sumOf(log, london), LogSum::of(log.copied(), {}));
    log.erase(3);
    EXPECT_EQ(sumOf(log, london), LogSum::of(log.copied(), london));
    EXPECT_EQ(sumOf({}, london), LogSum());
}

TEST(LookingBackRows, AreFoundAgainInALongLog) {
    const logbook::KeptLog log = manyAutumns(150);
    const LogRows rows(autumn::waterWith(log), wording::Words());
    std::size_t row = 0;
    std::optional<units::Day> above;
    for (std::size_t i = log.size(); i-- > 0;) {
        const units::Day day = units::Clock().dayOf(log[i].start);
        EXPECT_FALSE(rows.isHeading(row) && day == above) << row;
        if (day != above) {
            EXPECT_TRUE(rows.isHeading(row));
            EXPECT_EQ(rows[row++].cells[0], wording::Words::day(day));
            above = day;
        }
        EXPECT_EQ(rows[row].stay, log[i].id);
        EXPECT_EQ(rows.rowOf(log[i].id, {}), row++);
        for (const logbook::Fish& run : log[i].runs) {
            EXPECT_EQ(rows[row].run, run.id);
            EXPECT_EQ(rows.rowOf(log[i].id, run.id), row++);
        }
    }
    EXPECT_EQ(rows.size(), row);
    EXPECT_EQ(rows.rowOf({}, {}), std::nullopt);
    EXPECT_EQ(rows.rowOf(log[0].id, logbook::FishId(99999)), std::nullopt);
}

TEST(LookingBackRows, OfOneTripAreItsOwnAndNoOthers) {
    const logbook::KeptLog log = manyAutumns(150);
    const auto water = autumn::waterWith(log);
    const auto trips = days::looking_back::tripDays(*water);
    ASSERT_EQ(trips.size(), 300U);
    EXPECT_TRUE(std::ranges::is_sorted(trips, std::greater()));
    for (const units::Day trip : trips) {
        const LogRows rows(water, wording::Words(), trip);
        ASSERT_GT(rows.size(), 1U);
        EXPECT_TRUE(rows.isHeading(0));
        for (std::size_t row = 1; row < rows.size(); ++row) {
            EXPECT_FALSE(rows.isHeading(row));
            const auto position = logbook::positionOf(log, rows[row].stay);
            ASSERT_TRUE(position);
            EXPECT_EQ(units::Clock().dayOf(log[*position].start), trip);
            EXPECT_EQ(rows.rowOf(rows[row].stay, rows[row].run), row);
        }
    }
    const LogRows last(water, wording::Words(), trips.front());
    EXPECT_EQ(last.rowOf(log[0].id, {}), std::nullopt) << "of another trip";
}

} // namespace
