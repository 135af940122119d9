// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/find_day_differences.h"

#include <gtest/gtest.h>

#include <random>

namespace {

using reduction::Crossing;
using reduction::DayDifference;
using reduction::findDayDifferences;

Crossing between(int dayA, int dayB, double apart_m) {
    Crossing crossing;
    crossing.dayA = dayA;
    crossing.dayB = dayB;
    crossing.depthA_m = 4.0;
    crossing.depthB_m = 4.0 + apart_m;
    return crossing;
}

/// Crossings that scatter by `scatter_m` round `apart_m`.
std::vector<Crossing> some(int dayA, int dayB, double apart_m, double scatter_m, int count,
                           unsigned seed = 1) {
    std::mt19937 random(seed);
    std::normal_distribution<double> error_m(apart_m, scatter_m);
    std::vector<Crossing> crossings;
    for (int i = 0; i < count; ++i) {
        crossings.push_back(between(dayA, dayB, error_m(random)));
    }
    return crossings;
}

TEST(FindDayDifferences, TellsByHowMuchAndBetweenWhichDays) {
    auto crossings = some(0, 2, 0.47, 0.1, 40);
    const auto small = some(0, 1, 0.2, 0.05, 40, 2);
    crossings.insert(crossings.end(), small.begin(), small.end());
    const auto found = findDayDifferences(crossings, {});
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].dayA, 0U);
    EXPECT_EQ(found[0].dayB, 2U);
    EXPECT_NEAR(found[0].difference.inMetres(), 0.47, 0.05);
    EXPECT_EQ(found[0].crossings, 40U);
    EXPECT_NEAR(found[1].difference.inMetres(), 0.2, 0.03);
}

TEST(FindDayDifferences, KeepsItsSignWhicheverDaySailedFirst) {
    std::vector<Crossing> crossings(10, between(3, 1, -0.3));
    const auto found = findDayDifferences(crossings, {});
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].dayA, 1U);
    EXPECT_NEAR(found[0].difference.inMetres(), 0.3, 1e-12) << "day 3 is the deeper one";
}

TEST(FindDayDifferences, FewCrossingsOneDayAndSmallStepsSayNothing) {
    EXPECT_TRUE(findDayDifferences(std::vector<Crossing>(4, between(0, 1, 0.5)), {}).empty());
    EXPECT_EQ(findDayDifferences(std::vector<Crossing>(5, between(0, 1, 0.5)), {}).size(), 1U);
    EXPECT_TRUE(findDayDifferences(std::vector<Crossing>(50, between(1, 1, 0.5)), {}).empty());
    EXPECT_TRUE(findDayDifferences(std::vector<Crossing>(50, between(0, 1, 0.08)), {}).empty());
    EXPECT_TRUE(findDayDifferences({}, {}).empty());
}

TEST(FindDayDifferences, AFewWildCrossingsMakeNoDifference) {
    auto crossings = some(0, 1, 0.0, 0.05, 30);
    for (int i = 0; i < 9; ++i) {
        crossings.push_back(between(0, 1, 6.0));
    }
    EXPECT_TRUE(findDayDifferences(crossings, {}).empty());
}

TEST(FindDayDifferences, DaysThatAgreeAreHardlyEverSaidToDiffer) {
    int said = 0;
    for (unsigned seed = 1; seed <= 1000; ++seed) {
        said += findDayDifferences(some(0, 1, 0.0, 0.4, 30, seed), {}).empty() ? 0 : 1;
    }
    EXPECT_LE(said, 20) << "of a thousand";
}

TEST(FindDayDifferences, LevelsTwelveMetresApartAreTold) {
    const auto found = findDayDifferences(some(0, 1, -12.0, 0.3, 8), {});
    ASSERT_EQ(found.size(), 1U);
    EXPECT_NEAR(found[0].difference.inMetres(), -12.0, 0.5);
}

} // namespace
