// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/boat_sheets.h"

#include "core/water/document/swap_parts.h"
#include "tests/support/full_water.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using testing::ElementsAre;
using water::BoatSheet;
using water::Water;

units::Day day(const char* text) {
    return units::dayFrom(text).value();
}

BoatSheet sheetOf(units::Day day, const std::string& called) {
    return {day, {{1, called, {3.1, 55.2}, {}, units::Moment(std::chrono::hours(1))}}};
}

std::vector<std::string> daysIn(const Water& water) {
    std::vector<std::string> days;
    for (const BoatSheet& sheet : water.sheets) {
        days.push_back(units::isoText(sheet.day));
    }
    return days;
}

Water taken(const Water& water, const BoatSheet& sheet) {
    return acts::takeSheet(water, sheet).value();
}

TEST(BoatSheets, StandByTheirDayWheneverTheyWereMade) {
    const Water before = support::fullWater();
    ASSERT_THAT(daysIn(before), ElementsAre("2026-10-02"));
    const Water later = taken(before, sheetOf(day("2026-10-05"), "spit"));
    const Water all = taken(later, sheetOf(day("2026-10-03"), "bar"));
    EXPECT_THAT(daysIn(all), ElementsAre("2026-10-02", "2026-10-03", "2026-10-05"));
    EXPECT_THAT(water::differingParts(before, all), ElementsAre(water::Part::sheets));
}

TEST(BoatSheets, ReplaceTheEarlierOneOfTheirDay) {
    const Water twice = taken(taken(support::fullWater(), sheetOf(day("2026-10-05"), "spit")),
                              sheetOf(day("2026-10-05"), "bar"));
    ASSERT_THAT(daysIn(twice), ElementsAre("2026-10-02", "2026-10-05"));
    EXPECT_EQ(twice.sheets[1].stops[0].called, "bar");
}

TEST(BoatSheets, AreKeptForSixtyDays) {
    Water water = support::fullWater();
    for (int i = 0; i < 60; ++i) {
        water =
            taken(water,
                  sheetOf(std::chrono::sys_days(day("2027-01-01")) + std::chrono::days(i), "spit"));
    }
    EXPECT_EQ(water.sheets.size(), 60U);
    EXPECT_EQ(water.sheets.front().day, day("2027-01-01"));
}

TEST(BoatSheets, WithoutAStopAreRefused) {
    const auto refused = acts::takeSheet(support::fullWater(), {day("2026-10-05"), {}});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, base::ErrorKind::wrongUse);
    EXPECT_FALSE(refused.error().whatToDo.empty());
}

} // namespace
