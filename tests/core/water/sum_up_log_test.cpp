// SPDX-License-Identifier: GPL-3.0-or-later
// What a page of the log comes to, and two of its rows side by side.
#include "core/water/questions/sum_up_log.h"

#include "core/rates/compare_rates.h"
#include "core/rates/count_rates.h"
#include "core/rates/day_scatter.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using rates::RateTable;
using rates::Saying;

/// One stay of ten rod-hours a day, with so many fish; the row's name before it.
struct DaysOf {
    const char* name;
    std::vector<int> fish;
};

RateTable tableOf(const std::vector<DaysOf>& rows, std::vector<std::string> order = {}) {
    logbook::Log log;
    std::vector<std::string> names;
    int day = 0;
    for (const DaysOf& row : rows) {
        for (const int fish : row.fish) {
            logbook::Stay stay;
            stay.rods = 2;
            stay.start = std::chrono::sys_days(std::chrono::year(2026) / 4 / 1) +
                         std::chrono::days(day++) + std::chrono::hours(8);
            stay.end = stay.start + std::chrono::hours(5);
            stay.runs.resize(static_cast<std::size_t>(fish));
            log.push_back(stay);
            names.emplace_back(row.name);
        }
    }
    std::vector<rates::GroupedStay> parts;
    for (std::size_t i = 0; i < log.size(); ++i) {
        parts.push_back(rates::wholeStay(log[i], names[i]));
    }
    rates::RateSettings settings;
    settings.listUntried = !order.empty();
    settings.order = std::move(order);
    base::Progress quiet;
    return rates::countRates(parts, settings, quiet).value();
}

template <class Kind>
const Kind* find(const std::vector<Saying>& says) {
    for (const Saying& saying : says) {
        if (const auto* found = std::get_if<Kind>(&saying)) {
            return found;
        }
    }
    return nullptr;
}

TEST(SumUpLog, NamesTheBestRowWhatIsOpenAndWhatToTryNext) {
    const RateTable table = tableOf({{"bay", {4, 5, 3, 6, 4, 5}},
                                     {"bar", {1, 0, 1, 0, 0, 1}},
                                     {"not noted", {9, 9}},
                                     {"elsewhere", {9, 9}}},
                                    {"bay", "bar", "reeds"});
    const auto says = water::sumUpLog(table, std::nullopt);
    ASSERT_TRUE(std::holds_alternative<rates::MostExpected>(says.at(0)));
    const auto& most = std::get<rates::MostExpected>(says[0]);
    EXPECT_EQ(most.name, "bay") << "nobody can go to where nothing was noted";
    EXPECT_EQ(most.expected, table.rows[0].shrunk);
    EXPECT_DOUBLE_EQ(most.timesWhole,
                     most.expected.per10RodHours / table.overall.rate->per10RodHours);
    const auto* little = find<rates::TooLittleTried>(says);
    ASSERT_NE(little, nullptr);
    EXPECT_EQ(little->untried, std::vector<std::string>{"reeds"});
    EXPECT_TRUE(little->names.empty());
    EXPECT_EQ(little->rows, 3U) << "nobody can go to where nothing was noted";
    const auto* next = find<rates::TryNext>(says);
    ASSERT_NE(next, nullptr);
    EXPECT_EQ(next->name, "reeds");
    EXPECT_EQ(next->rodHours, 0.0);
    EXPECT_DOUBLE_EQ(next->rodHoursToTell, 10.0 / table.overall.rate->per10RodHours);
    EXPECT_EQ(find<rates::FewDays>(says), nullptr);
}

/// A row as a table would hold it; the whole brings 2 fish in 10 rod-hours.
struct RowOf {
    const char* name;
    double rodHours;
    double shrunk;
    double width;
    std::optional<double> p = {};
};

RateTable made(const std::vector<RowOf>& rows) {
    RateTable table;
    table.days = 9;
    table.overall.rodHours = 100.0;
    table.overall.fish = 20;
    table.overall.rate = rates::Rate{2.0, 1.0, 3.0};
    for (const RowOf& from : rows) {
        rates::RateRow row;
        row.name = from.name;
        row.rodHours = from.rodHours;
        row.shareOfEffort = from.rodHours / 100.0;
        row.shrunk = rates::Rate{from.shrunk, 0.5 * from.shrunk, 2.0 * from.shrunk};
        row.shrunkWidth = from.width;
        row.pAgainstTheRest = from.p;
        table.rows.push_back(row);
    }
    return table;
}

TEST(SumUpLog, TellsWhatIsBeyondChanceOnlyWhereItWasComparedAndIsRare) {
    const auto isBeyond = [](std::optional<double> p) {
        const auto says =
            water::sumUpLog(made({{"bay", 50.0, 3.0, 0.2, p}, {"bar", 50.0, 1.0, 0.2, p}}), {});
        return find<rates::MostExpected>(says)->isBeyondChance;
    };
    EXPECT_TRUE(isBeyond(0.049));
    EXPECT_FALSE(isBeyond(0.051));
    EXPECT_FALSE(isBeyond(std::nullopt));
}

TEST(SumUpLog, CountsAsHardlyTriedWhatLetLessThanOneFishBeExpected) {
    // Five rod-hours at 2 in 10 let one fish be expected.
    const auto says = water::sumUpLog(made({{"bay", 80.0, 3.0, 0.1},
                                            {"bar", 5.1, 1.0, 0.2},
                                            {"reeds", 4.9, 1.0, 0.2},
                                            {"pier", 3.0, 1.0, 0.2},
                                            {"dam", 0.0, 1.0, 0.2},
                                            {"not noted", 1.0, 1.0, 0.2}}),
                                      {});
    const auto* little = find<rates::TooLittleTried>(says);
    ASSERT_NE(little, nullptr);
    EXPECT_EQ(little->names, (std::vector<std::string>{"reeds", "pier"}));
    EXPECT_EQ(little->untried, std::vector<std::string>{"dam"});
    EXPECT_EQ(little->rows, 5U);
    EXPECT_NEAR(little->shareOfEffort, 0.079, 1e-12) << "of both together";
}

TEST(SumUpLog, SendsNextToWhatIsLittleKnownAndMayBringMost) {
    const auto nextOf = [](const std::vector<RowOf>& rows) {
        const auto says = water::sumUpLog(made(rows), {});
        const auto* next = find<rates::TryNext>(says);
        return next == nullptr ? std::string() : next->name;
    };
    // The best may itself be little known: it is told already.
    EXPECT_EQ(nextOf({{"bay", 10.0, 3.0, 0.9}, {"bar", 10.0, 2.0, 0.5}}), "bar");
    // 2 (1 + 0.2) is less than 1.5 (1 + 0.9).
    EXPECT_EQ(nextOf({{"bay", 70.0, 3.0, 0.1}, {"bar", 9.0, 2.0, 0.2}, {"reeds", 9.0, 1.5, 0.9}}),
              "reeds");
    // Fifteen rod-hours let three fish be expected: then it is known.
    EXPECT_EQ(nextOf({{"bay", 70.0, 3.0, 0.1}, {"bar", 14.9, 2.0, 0.2}}), "bar");
    EXPECT_EQ(nextOf({{"bay", 70.0, 3.0, 0.1}, {"bar", 15.1, 2.0, 0.2}}), "");
}

TEST(SumUpLog, SaysWhatTheHoursSay) {
    const RateTable table = tableOf({{"bay", {4, 5, 3, 6, 4}}, {"bar", {1, 0, 1, 0, 0}}});
    rates::HourRates hours;
    hours.trips = 10;
    for (const double rate : {1.0, 4.0, 5.0, 1.0}) {
        hours.points.push_back({6.0 * static_cast<double>(hours.points.size()), 9.0,
                                rates::Rate{rate, rate - 1.5, rate + 1.5}});
    }
    const auto says = water::sumUpLog(table, hours);
    const auto* said = find<rates::HoursSay>(says);
    ASSERT_NE(said, nullptr);
    EXPECT_EQ(said->best, (rates::HourSpan{6.0, 18.0}));
    EXPECT_EQ(said->atBest.per10RodHours, 5.0);
    EXPECT_EQ(said->trips, 10);
}

TEST(SumUpLog, SaysWhenThereIsLittleOrNothingToSay) {
    EXPECT_EQ(water::sumUpLog(tableOf({}), std::nullopt),
              std::vector<Saying>{rates::NothingCounted{}});
    const RateTable blanks = tableOf({{"bay", {0, 0}}});
    const auto says = water::sumUpLog(blanks, std::nullopt);
    ASSERT_TRUE(std::holds_alternative<rates::NoFishYet>(says.at(0)));
    EXPECT_EQ(std::get<rates::NoFishYet>(says[0]).rodHours, 20.0);
    EXPECT_EQ(std::get<rates::NoFishYet>(says[0]).high, blanks.overall.rate->high);
    const auto few = water::sumUpLog(tableOf({{"bay", {3, 4}}, {"bar", {1, 0}}}), std::nullopt);
    ASSERT_NE(find<rates::FewDays>(few), nullptr);
    EXPECT_EQ(find<rates::FewDays>(few)->days, 4U);
    RateTable unknown = tableOf({});
    unknown.effortUnknown = 3;
    EXPECT_EQ(find<rates::EffortUnknown>(water::sumUpLog(unknown, std::nullopt))->stays, 3U);
}

TEST(CompareRows, AllowsForTheScatterOfDays) {
    const RateTable table =
        tableOf({{"bay", {9, 0, 12, 1, 8, 0}}, {"bar", {1, 0, 4, 0, 0, 1}}, {"reeds", {2, 2}}});
    const auto compared = water::compareRows(table, "BAY", " bar ");
    ASSERT_TRUE(compared) << compared.error().sentence();
    EXPECT_EQ(compared->first, "bay");
    EXPECT_EQ(compared->second, "bar");
    EXPECT_DOUBLE_EQ(compared->ratio.value(), 5.0);
    const auto plain = rates::compareRates({30.0, 60.0}, {6.0, 60.0}).value();
    EXPECT_LT(compared->low, plain.low) << "days, and not fish, are the sample";
    EXPECT_GT(compared->high.value(), plain.high.value());
    EXPECT_GT(compared->p, plain.p);
    const auto back = water::compareRows(table, "bar", "bay");
    EXPECT_NEAR(back->low, 1.0 / compared->high.value(), 1e-9);
    EXPECT_NEAR(back->p, compared->p, 1e-9);
}

TEST(CompareRows, RefusesWhatCannotBeCompared) {
    const RateTable table = tableOf({{"bay", {3}}, {"bar", {1}}}, {"bay", "bar", "reeds"});
    EXPECT_EQ(water::compareRows(table, "bay", "pier").error().what, "no row is called 'pier'");
    EXPECT_EQ(water::compareRows(table, "bay", "Bay").error().kind, base::ErrorKind::wrongUse);
    EXPECT_EQ(water::compareRows(table, "bay", "reeds").error().kind,
              base::ErrorKind::unusableInput);
}

TEST(RowsByExpectation, ComeWithTheBestFirstAndTheUntriedLast) {
    RateTable table =
        tableOf({{"a", {0, 0, 0}}, {"b", {3, 4, 3}}, {"c", {1, 1, 1}}}, {"x", "a", "b", "y", "c"});
    rates::sortByExpected(table);
    std::string names;
    for (const rates::RateRow& row : table.rows) {
        names += row.name;
    }
    EXPECT_EQ(names, "bcaxy");
}

} // namespace
