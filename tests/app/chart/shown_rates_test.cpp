// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/shown_rates.h"

#include "tests/support/given.h"

#include <gtest/gtest.h>

namespace {

using chart::ShownRates;
using chart::Sureness;
using rates::Rate;
using support::given;

/// Two sections that were fished and one that was not; of another nothing is said.
ShownRates counted() {
    ShownRates shown;
    shown.by = water::ReviewBy::section;
    const auto add = [&shown](const char* name, double shrunk, std::optional<Rate> rate) {
        rates::RateRow row;
        row.name = name;
        row.shrunk = Rate{shrunk, 0.5 * shrunk, 2.0 * shrunk};
        row.rate = rate;
        shown.table.rows.push_back(row);
    };
    add("Bay", 1.5, Rate{2.0, 1.0, 3.0});
    add("Bar", 4.0, Rate{5.0, 3.0, 8.0});
    add("Reeds", 2.5, std::nullopt);
    shown.table.untried = Rate{3.0, 0.1, 9.0};
    return shown;
}

TEST(ShownRates, AreThoseOfTheRowOfThatNameElseOfTheUntried) {
    const ShownRates shown = counted();
    EXPECT_EQ(given(shown.of("Bay")).per10RodHours, 1.5);
    EXPECT_EQ(given(shown.of("Bar")).per10RodHours, 4.0);
    EXPECT_EQ(given(shown.of("Reeds")).per10RodHours, 2.5);
    EXPECT_EQ(shown.of("Pier"), shown.table.untried);
    EXPECT_EQ(ShownRates().of("Bay"), std::nullopt);
    EXPECT_TRUE(shown.isTried("Bar"));
    EXPECT_FALSE(shown.isTried("Reeds"));
    EXPECT_FALSE(shown.isTried("Pier"));
    EXPECT_EQ(shown.most(), 4.0);
    EXPECT_EQ(ShownRates().most(), 0.0);
}

TEST(ShownRates, AreAsSureAsTheirRangeIsNarrow) {
    // Half the range over the rate: a half, just more, all of it, just more.
    EXPECT_EQ(chart::surenessOf({2.0, 1.0, 3.0}), Sureness::sure);
    EXPECT_EQ(chart::surenessOf({2.0, 1.0, 3.1}), Sureness::rough);
    EXPECT_EQ(chart::surenessOf({2.0, 0.5, 4.5}), Sureness::rough);
    EXPECT_EQ(chart::surenessOf({2.0, 0.5, 4.6}), Sureness::hardly);
}

TEST(RunsSeen, AreAllUntilAKindOfFishIsAskedFor) {
    logbook::Stay stay;
    stay.runs.resize(3);
    stay.runs[0].species = "pike";
    stay.runs[0].weight = units::Weight::kilograms(6.0);
    stay.runs[1].species = "perch";
    stay.runs[2].landed = false;
    EXPECT_EQ(chart::runsSeen(stay, std::nullopt).size(), 3U);
    water::ReviewQuestion asked;
    asked.bait = "smelt";
    EXPECT_EQ(chart::runsSeen(stay, asked).size(), 3U) << "a bait is one of the stay";
    asked.species = "Perch";
    ASSERT_EQ(chart::runsSeen(stay, asked).size(), 1U);
    EXPECT_EQ(chart::runsSeen(stay, asked)[0], &stay.runs[1]);
    asked.species.clear();
    asked.leastWeight = units::Weight::kilograms(5.0);
    ASSERT_EQ(chart::runsSeen(stay, asked).size(), 1U);
    EXPECT_EQ(chart::runsSeen(stay, asked)[0], &stay.runs[0]);
}

} // namespace
