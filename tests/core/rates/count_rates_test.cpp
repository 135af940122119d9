// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/count_rates.h"

#include "tests/core/rates/log_builder.h"
#include "tests/support/given.h"

#include <algorithm>
#include <random>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using rates::GroupedStay;
using rates::RateRow;
using rates::RateSettings;
using rates::RateTable;
using support::given;
using testing::Contains;
using testing::HasSubstr;

RateTable count(const std::vector<GroupedStay>& parts, const RateSettings& settings = {}) {
    base::Progress progress;
    return rates::countRates(parts, settings, progress).value();
}

/// Two stays in "bay" (one blank), one at "point" with two pike, a perch and a lost run.
logbook::Log smallLog() {
    logbook::Log log{logs::stay("2026-10-01", "08:00", "10:00", 2),
                     logs::stay("2026-10-02", "08:00", "09:00", 2),
                     logs::stay("2026-10-03", "08:00", "11:00", 1)};
    log[0].runs = {logs::fish("2026-10-01 09:00", 3.0)};
    log[2].runs = {logs::fish("2026-10-03 09:00", 5.0), logs::fish("2026-10-03 09:30", 8.5),
                   logs::fish("2026-10-03 10:00", 0.3, "", "perch"),
                   logs::lost("2026-10-03 10:30")};
    return log;
}

std::vector<GroupedStay> grouped(const logbook::Log& log) {
    return {rates::wholeStay(log[0], "bay"), rates::wholeStay(log[1], "bay"),
            rates::wholeStay(log[2], "point")};
}

TEST(CountRates, CountsEffortBlanksRunsAndFish) {
    const logbook::Log log = smallLog();
    const RateTable table = count(grouped(log));
    ASSERT_EQ(table.rows.size(), 2U);
    const RateRow& bay = table.rows[0];
    EXPECT_EQ(bay.name, "bay");
    EXPECT_NEAR(bay.rodHours, 6.0, 1e-9);
    EXPECT_EQ(bay.stays, 2);
    EXPECT_EQ(bay.blanks, 1);
    EXPECT_EQ(bay.fish, 1);
    EXPECT_NEAR(given(bay.rate).per10RodHours, 10.0 / 6.0, 1e-9);
    EXPECT_NEAR(bay.shareOfEffort, 6.0 / 9.0, 1e-9);
    const RateRow& point = table.rows[1];
    EXPECT_EQ(point.fish, 3);
    EXPECT_EQ(point.runs, 4);
    EXPECT_EQ(point.blanks, 0);
    EXPECT_EQ(point.best, units::Weight::kilograms(8.5));
    EXPECT_EQ(table.overall.stays, 3);
    EXPECT_EQ(table.overall.fish, 4);
    EXPECT_EQ(table.overall.runs, 5);
    EXPECT_EQ(table.overall.blanks, 1);
}

TEST(CountRates, MakesAStayBlankThatBroughtNothingOfTheSpeciesAskedFor) {
    const logbook::Log log = smallLog();
    RateSettings settings;
    settings.species = "Perch";
    const RateTable table = count(grouped(log), settings);
    EXPECT_EQ(table.overall.fish, 1);
    EXPECT_EQ(table.overall.blanks, 2);
    EXPECT_NEAR(table.overall.rodHours, 9.0, 1e-9);
    EXPECT_EQ(table.overall.runs, 5);
}

TEST(CountRates, LeavesOutLightFishAndSaysHowManyHadNoWeight) {
    logbook::Log log = smallLog();
    log[0].runs[0].weight.reset();
    RateSettings settings;
    settings.leastWeight = units::Weight::kilograms(6.0);
    const RateTable table = count(grouped(log), settings);
    EXPECT_EQ(table.overall.fish, 1);
    EXPECT_THAT(table.notes, Contains("Fish without a weight are left out: 1."));
}

TEST(CountRates, CountsTheDaysAskedForOnly) {
    const logbook::Log log = smallLog();
    RateSettings settings;
    settings.from = units::dayFrom("2026-10-02");
    settings.to = units::dayFrom("2026-10-02");
    const RateTable table = count(grouped(log), settings);
    EXPECT_EQ(table.overall.stays, 1);
    EXPECT_EQ(table.overall.fish, 0);
    settings.to = units::dayFrom("2026-10-01");
    base::Progress progress;
    EXPECT_EQ(rates::countRates(grouped(log), settings, progress).error().kind,
              base::ErrorKind::wrongUse);
}

TEST(CountRates, ListsGroupsInTheOrderAskedForAndUntriedOnesToo) {
    const logbook::Log log = smallLog();
    RateSettings settings;
    settings.order = {"point", "dam", "bay"};
    EXPECT_EQ(count(grouped(log), settings).rows.size(), 2U);
    settings.listUntried = true;
    const RateTable table = count(grouped(log), settings);
    ASSERT_EQ(table.rows.size(), 3U);
    EXPECT_EQ(table.rows[0].name, "point");
    const RateRow& dam = table.rows[1];
    EXPECT_EQ(dam.name, "dam");
    EXPECT_FALSE(dam.rate);
    EXPECT_EQ(dam.shrunk, table.untried);
    EXPECT_GT(dam.shrunkWidth, table.rows[0].shrunkWidth);
    EXPECT_FALSE(dam.pAgainstTheRest);
}

TEST(CountRates, DrawsRatesTowardsOneAnother) {
    const logbook::Log log = smallLog();
    const RateTable table = count(grouped(log));
    const RateRow& bay = table.rows[0];
    const RateRow& point = table.rows[1];
    EXPECT_GT(given(bay.shrunk).per10RodHours, given(bay.rate).per10RodHours);
    EXPECT_LT(given(point.shrunk).per10RodHours, given(point.rate).per10RodHours);
    EXPECT_LT(given(bay.shrunk).per10RodHours, given(point.shrunk).per10RodHours);
}

TEST(CountRates, SaysThatChanceExplainsSmallDifferences) {
    const logbook::Log log = smallLog();
    RateSettings settings;
    settings.rowWord = "section";
    EXPECT_THAT(count(grouped(log), settings).notes,
                Contains("No section differs from the rest more than chance would make it."));
}

TEST(CountRates, SaysWhatStandsOut) {
    logbook::Log log;
    for (int day = 10; day < 28; ++day) {
        const std::string date = "2026-10-" + std::to_string(day);
        log.push_back(logs::stay(date, "08:00", "12:00"));
        log.back().runs = {logs::fish(date + " 09:00", 3.0), logs::fish(date + " 10:00", 3.0)};
        log.push_back(logs::stay(date, "12:00", "16:00"));
        log.push_back(logs::stay(date, "16:00", "17:00"));
    }
    std::vector<GroupedStay> parts;
    for (std::size_t i = 0; i < log.size(); ++i) {
        parts.push_back(rates::wholeStay(log[i], i % 3 == 0 ? "bar" : i % 3 == 1 ? "dam" : "neck"));
    }
    const RateTable table = count(parts);
    EXPECT_THAT(table.notes,
                Contains("bar brought more than the rest, by more than chance would make it."));
    EXPECT_THAT(table.notes,
                Contains("dam brought less than the rest, by more than chance would make it."));
    EXPECT_LT(given(table.rows[0].pAgainstTheRest), 0.001);
}

TEST(CountRates, SaysWhereTooLittleWasTriedAndWhereOneStayMakesTheRate) {
    logbook::Log log{logs::stay("2026-10-01", "08:00", "18:00", 3),
                     logs::stay("2026-10-02", "08:00", "08:30")};
    for (int i = 0; i < 6; ++i) {
        log[0].runs.push_back(logs::fish("2026-10-01 09:00", 3.0));
    }
    const RateTable table =
        count({rates::wholeStay(log[0], "bar"), rates::wholeStay(log[1], "neck")});
    EXPECT_THAT(table.notes, Contains(HasSubstr("Too little tried to tell")));
    EXPECT_THAT(table.notes, Contains(HasSubstr("6 of 6 fish came in one stay")));
}

TEST(CountRates, SaysWhenThereIsNothingToCount) {
    EXPECT_THAT(count({}).notes, Contains("No stay was logged in this time."));
    const logbook::Log log{logs::stay("2026-10-01", "08:00", "08:00")};
    const RateTable table = count({rates::wholeStay(log[0], "bar")});
    EXPECT_TRUE(table.rows.empty());
    EXPECT_FALSE(table.untried);
    EXPECT_EQ(table.effortUnknown, 1U) << "fish over no time would make any rate";
    EXPECT_THAT(table.notes, Contains(HasSubstr("for how long, is not noted")));
}

TEST(CountRates, CountsASplitStayOnceInTheWhole) {
    logbook::Log log{logs::stay("2026-10-03", "07:00", "11:00", 2)};
    log[0].runs = {logs::fish("2026-10-03 07:30", 4.0)};
    const RateTable table = count(rates::byHour(log, units::Clock()));
    ASSERT_EQ(table.rows.size(), 3U);
    EXPECT_EQ(table.overall.stays, 1);
    EXPECT_EQ(table.overall.blanks, 0);
    EXPECT_EQ(table.rows[0].blanks, 0);
    EXPECT_EQ(table.rows[1].blanks, 1);
    EXPECT_NEAR(table.overall.rodHours, 8.0, 1e-9);
}

TEST(CountRates, DoesNotDependOnTheOrderOfTheStays) {
    const logbook::Log log = smallLog();
    std::vector<GroupedStay> parts = grouped(log);
    const RateTable forwards = count(parts);
    std::ranges::reverse(parts);
    const RateTable backwards = count(parts);
    ASSERT_EQ(forwards.rows.size(), backwards.rows.size());
    for (std::size_t i = 0; i < forwards.rows.size(); ++i) {
        EXPECT_EQ(forwards.rows[i].name, backwards.rows[i].name);
        EXPECT_EQ(forwards.rows[i].fish, backwards.rows[i].fish);
        EXPECT_NEAR(given(forwards.rows[i].shrunk).per10RodHours,
                    given(backwards.rows[i].shrunk).per10RodHours, 1e-9);
    }
}

} // namespace
