// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/record.h"

#include "core/rates/count_rates.h"
#include "tests/core/rates/log_builder.h"
#include "tests/support/given.h"

#include <array>

#include <gtest/gtest.h>

namespace {

using rates::GroupedStay;
using rates::RateTable;
using rates::RecordBook;
using support::given;
using Groups = std::array<std::optional<std::string_view>, 2>;

/// Twenty days: the bar in the morning with a fish, the dam in the afternoon with none.
logbook::Log log() {
    logbook::Log made;
    for (int day = 10; day < 30; ++day) {
        const std::string date = "2026-10-" + std::to_string(day);
        made.push_back(logs::stay(date, "08:00", "10:00"));
        made.back().runs = {logs::fish(date + " 09:00", 3.0)};
        made.push_back(logs::stay(date, "14:00", "16:00"));
    }
    return made;
}

std::vector<RateTable> tablesOf(const logbook::Log& made) {
    base::Progress progress;
    std::vector<GroupedStay> sections;
    for (std::size_t i = 0; i < made.size(); ++i) {
        sections.push_back(rates::wholeStay(made[i], i % 2 == 0 ? "bar" : "dam"));
    }
    return {rates::countRates(sections, {}, progress).value(),
            rates::countRates(rates::byHour(made, units::Clock()), {}, progress).value()};
}

TEST(RecordBook, RanksWhatBroughtFishAboveTheUntriedAndThatAboveBlanks) {
    const logbook::Log made = log();
    const RecordBook book(tablesOf(made));
    const auto mean = [&](std::string_view section) {
        return given(book.of(Groups{section, std::nullopt})).rate.per10RodHours;
    };
    EXPECT_GT(mean("bar"), mean("neck"));
    EXPECT_GT(mean("neck"), mean("dam"));
}

TEST(RecordBook, IsLeastSureOfTheUntried) {
    const logbook::Log made = log();
    const RecordBook book(tablesOf(made));
    const double tried = given(book.of(Groups{"bar", std::nullopt})).relativeWidth;
    const double untried = given(book.of(Groups{"neck", std::nullopt})).relativeWidth;
    EXPECT_GT(untried, 1.5 * tried);
    const auto record = given(book.of(Groups{"neck", std::nullopt}));
    EXPECT_LT(record.rate.low, record.rate.per10RodHours);
    EXPECT_GT(record.rate.high, record.rate.per10RodHours);
}

TEST(RecordBook, MultipliesTheHourIn) {
    const logbook::Log made = log();
    const RecordBook book(tablesOf(made));
    EXPECT_GT(given(book.of(Groups{"neck", "08-10"})).rate.per10RodHours,
              given(book.of(Groups{"neck", "14-16"})).rate.per10RodHours);
}

TEST(RecordBook, SaysTheWholeWatersRateWhereNothingElseIsAsked) {
    const logbook::Log made = log();
    const RecordBook book(tablesOf(made));
    const auto record = book.of(Groups{std::nullopt, std::nullopt});
    EXPECT_NEAR(given(record).rate.per10RodHours, 10.0 * 20.5 / 80.0, 1e-9);
    EXPECT_EQ(given(book.whole()).per10RodHours, given(record).rate.per10RodHours);
}

TEST(RecordBook, IsEmptyWithoutEffort) {
    EXPECT_TRUE(RecordBook().isEmpty());
    EXPECT_FALSE(RecordBook().of(Groups{"bar", std::nullopt}));
    EXPECT_TRUE(RecordBook(std::vector<RateTable>(2)).isEmpty());
}

} // namespace
