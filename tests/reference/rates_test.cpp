// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/compare_rates.h"
#include "core/rates/gamma_prior.h"
#include "core/rates/rate.h"

#include "tests/support/given.h"

#include <array>

#include <gtest/gtest.h>

namespace {

using rates::Tally;
using support::given;

struct GarwoodRow {
    double fish = 0;
    double low = 0.0;
    double high = 0.0;
};

// Garwood 1936, Biometrika 28:437; digits by scipy's chi-squared quantiles.
constexpr std::array garwood = {GarwoodRow{0, 0, 3.6889},        GarwoodRow{1, 0.0253, 5.5716},
                                GarwoodRow{2, 0.2422, 7.2247},   GarwoodRow{3, 0.6187, 8.7673},
                                GarwoodRow{4, 1.0899, 10.2416},  GarwoodRow{5, 1.6235, 11.6683},
                                GarwoodRow{10, 4.7954, 18.3904}, GarwoodRow{20, 12.2165, 30.8884}};

TEST(Rate, HasGarwoodsExactLimits) {
    for (const GarwoodRow& row : garwood) {
        const auto rate = rates::rateOf(Tally{row.fish, 10.0});
        ASSERT_TRUE(rate);
        EXPECT_NEAR(rate->low, row.low, 0.0001);
        EXPECT_NEAR(rate->high, row.high, 0.0001);
    }
    // GraphPad's example: 25 events, 16.18 to 36.90.
    EXPECT_NEAR(given(rates::rateOf(Tally{25, 10.0})).low, 16.18, 0.005);
    EXPECT_NEAR(given(rates::rateOf(Tally{25, 10.0})).high, 36.90, 0.005);
    // Example on R's help page of poisson.test: 137 in 24.19893 gives 5.661407
    // (4.753125, 6.692709).
    const auto crime = rates::rateOf(Tally{137, 24.19893});
    EXPECT_NEAR(crime->per10RodHours / 10.0, 5.661407, 1e-6);
    EXPECT_NEAR(crime->low / 10.0, 4.753125, 1e-6);
    EXPECT_NEAR(crime->high / 10.0, 6.692709, 1e-6);
}

TEST(Rate, IsTheRatioOfMeans) {
    // Completed trips: the ratio of sums as texts on creel surveys quote Pollock and others 1994
    // (not seen: second-hand). The five trips are ours. Catches 0, 1, 0, 4, 2 in 2, 4, 1, 5, 8 h:
    // 0.35 an hour; the mean of the five ratios would be 0.26.
    EXPECT_NEAR(given(rates::rateOf(Tally{0 + 1 + 0 + 4 + 2, 2 + 4 + 1 + 5 + 8})).per10RodHours,
                3.5, 1e-12);
}

struct CompareRow {
    Tally first;
    Tally second;
    double ratio = 0.0;
    double low = 0.0;
    double high = 0.0;
    double p = 0.0;
};

// First: R's help page of poisson.test (its p of 0.07967 is the "minlike" one; the central is
// 0.11202). Second: Fay's example in the R package rateratio.test. Others computed with scipy.
constexpr std::array comparisons = {
    CompareRow{{11, 800}, {21, 3011}, 1.971488, 0.8584264, 4.2772659, 0.11202},
    CompareRow{{2, 17877}, {9, 16660}, 0.207, 0.0218, 1.0005, 0.0501},
    CompareRow{{5, 20}, {2, 20}, 2.5, 0.409, 26.25, 0.4531},
    CompareRow{{8, 20}, {1, 20}, 8.0, 1.073, 355.0, 0.0391},
    CompareRow{{3, 10}, {3, 30}, 3.0, 0.402, 22.40, 0.3389}};

TEST(Comparison, IsTheExactConditionalTestWithCentralP) {
    for (const CompareRow& row : comparisons) {
        const auto found = rates::compareRates(row.first, row.second);
        ASSERT_TRUE(found && found->ratio && found->high);
        EXPECT_NEAR(*found->ratio, row.ratio, 0.0005 * row.ratio + 0.0001);
        EXPECT_NEAR(found->low, row.low, 0.002 * row.low + 0.0001);
        EXPECT_NEAR(*found->high, row.high, 0.0005 * row.high);
        EXPECT_NEAR(found->p, row.p, 0.0001);
    }
}

struct PriorRow {
    Tally tally;
    double mean = 0.0;
    double low = 0.0;
    double high = 0.0;
};

// Clayton and Kaldor 1987, Biometrics 43:671, with Gamma(2, 8); digits by scipy.
constexpr std::array posteriors = {
    PriorRow{{0, 5}, .153846, .018631, .428588}, PriorRow{{3, 5}, .384615, .124884, .787815},
    PriorRow{{3, 50}, .086207, .027991, .176579}, PriorRow{{20, 40}, .458333, .287235, .668765}};

TEST(GammaPrior, GivesTheConjugatePosterior) {
    for (const PriorRow& row : posteriors) {
        const rates::Rate rate = rates::beliefAfter(rates::GammaPrior{2.0, 8.0}, row.tally).rate();
        EXPECT_NEAR(rate.per10RodHours / 10.0, row.mean, 1e-6);
        EXPECT_NEAR(rate.low / 10.0, row.low, 1e-6);
        EXPECT_NEAR(rate.high / 10.0, row.high, 1e-6);
    }
}

} // namespace
