// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/compare_rates.h"

#include "tests/support/given.h"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using rates::Tally;
using support::given;

TEST(CompareRates, FindsNothingBetweenTwoBlanks) {
    const auto found = rates::compareRates(Tally{0, 10.0}, Tally{0, 20.0});
    ASSERT_TRUE(found);
    EXPECT_EQ(found->p, 1.0);
    EXPECT_FALSE(found->ratio);
    EXPECT_EQ(found->low, 0.0);
    EXPECT_FALSE(found->high);
}

TEST(CompareRates, HasNoRatioOverABlankButALowerLimit) {
    const auto found = rates::compareRates(Tally{8, 10.0}, Tally{0, 10.0});
    EXPECT_FALSE(found->ratio);
    EXPECT_GT(found->low, 1.0);
    EXPECT_NEAR(found->p, 2.0 * std::pow(0.5, 8), 1e-12);
}

TEST(CompareRates, AgreesWithItselfTurnedRound) {
    const auto one = rates::compareRates(Tally{7, 31.0}, Tally{12, 17.0}).value();
    const auto other = rates::compareRates(Tally{12, 17.0}, Tally{7, 31.0}).value();
    EXPECT_NEAR(one.p, other.p, 1e-12);
    EXPECT_NEAR(one.low, 1.0 / given(other.high), 1e-9);
    EXPECT_NEAR(given(one.high), 1.0 / other.low, 1e-9);
}

TEST(CompareRates, KeepsTinyChancesApartFromNone) {
    EXPECT_GT(rates::compareRates(Tally{90, 10.0}, Tally{1, 100.0})->p, 0.0);
}

TEST(CompareRates, RefusesATallyWithoutEffort) {
    EXPECT_FALSE(rates::compareRates(Tally{0, 0.0}, Tally{1, 10.0}));
    EXPECT_FALSE(rates::compareRates(Tally{1, 10.0}, Tally{0, 0.0}));
}

TEST(Holm, StepsDownAndNeverLowersALaterValue) {
    const std::vector<double> p{0.01, 0.04, 0.03, 0.005};
    const auto adjusted = rates::adjustedByHolm(p);
    // By hand: 0.005 x 4, 0.01 x 3, 0.03 x 2, then 0.04 x 1 held up to 0.06.
    EXPECT_THAT(adjusted, testing::Pointwise(testing::DoubleNear(1e-12),
                                             std::vector<double>{0.03, 0.06, 0.06, 0.02}));
    EXPECT_TRUE(rates::adjustedByHolm({}).empty());
}

} // namespace
