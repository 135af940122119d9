// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/tomorrow_view.h"

#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

namespace tomorrow = days::tomorrow;

namespace {

const wording::Words words;

TEST(TomorrowView, HoldsTheRodsToTheHouseRulesAndSaysSo) {
    marks::Tackle tackle;
    tackle.rods = 6;
    logbook::HouseRules rules;
    EXPECT_EQ(tomorrow::rodsAllowed(tackle, rules), 6);
    EXPECT_TRUE(tomorrow::rodLimitWords(tackle, rules).isEmpty());
    rules.rodLimit = 4;
    EXPECT_EQ(tomorrow::rodsAllowed(tackle, rules), 4);
    EXPECT_TRUE(tomorrow::rodLimitWords(tackle, rules).contains("Planned with 4, not 6"));
    EXPECT_TRUE(tomorrow::tackleLine(tackle, rules, words).startsWith("4 rods"));
}

TEST(TomorrowView, NamesTheWeightsThatCountMost) {
    marks::Weights weights;
    EXPECT_EQ(tomorrow::weightsLine(weights), "depth, drop-off, record");
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        weights.set(kind, 0.0);
    }
    EXPECT_EQ(tomorrow::weightsLine(weights), "nothing: all marks are equal");
}

TEST(TomorrowView, ExplainsEveryFactor) {
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        EXPECT_FALSE(tomorrow::factorTitle(kind).isEmpty());
        EXPECT_TRUE(tomorrow::factorMeaning(kind).endsWith('.'));
    }
}

TEST(TomorrowView, ShowsEveryMarkWithAnchorsAndRods) {
    const water::PlannedDay day = support::starDay();
    const auto rows = tomorrow::markRows(day, words);
    ASSERT_EQ(rows.size(), day.marks.size());
    EXPECT_TRUE(rows.front().front().startsWith("1  "));
    const marks::Mark& best = day.marks.front();
    EXPECT_EQ(tomorrow::anchorRows(best, {}, words).size(), 2U);
    EXPECT_EQ(tomorrow::rodRows(best, words).size(), best.spread.rods.size());
}

TEST(ClockQuestion, IsAskedWhereTheSunIsMoreThanTwoHoursFromTheClock) {
    water::Water water;
    EXPECT_EQ(tomorrow::clockQuestion(water), "") << "nobody knows where it lies";
    water.frame = geo::WaterFrame::centredOn({-75.0, 45.0}).value();
    EXPECT_EQ(tomorrow::clockQuestion(water),
              "The sun over this water is 5.0 h behind this clock. Is Etc/UTC its time zone?");
    water.frame = geo::WaterFrame::centredOn({75.0, 45.0}).value();
    EXPECT_TRUE(tomorrow::clockQuestion(water).contains("5.0 h ahead of this clock"));
    water.clock = units::Clock::inZone("Asia/Karachi").value();
    EXPECT_EQ(tomorrow::clockQuestion(water), "");
}

} // namespace
