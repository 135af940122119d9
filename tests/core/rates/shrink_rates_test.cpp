// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/shrink_rates.h"

#include <algorithm>
#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace {

using rates::ShrunkRates;
using rates::Tally;

ShrunkRates shrink(const std::vector<Tally>& rows) {
    base::Progress progress;
    return rates::shrinkRates(rows, {}, progress).value();
}

TEST(ShrinkRates, DrawsALittleTriedRowFartherThanAMuchTriedOne) {
    const auto out = shrink({{4, 4.0}, {100, 100.0}, {10, 100.0}, {12, 60.0}});
    EXPECT_LT(out.beliefs[0].mean, 0.9);
    EXPECT_GT(out.beliefs[1].mean, 0.9);
    EXPECT_GT(out.beliefs[0].relativeWidth(), out.beliefs[1].relativeWidth());
}

TEST(ShrinkRates, KeepsEqualRatesWhereTheyAreAndFindsLittleBetweenThem) {
    const auto same = shrink({{50, 100.0}, {50, 100.0}, {50, 100.0}, {50, 100.0}});
    const auto apart = shrink({{5, 100.0}, {150, 100.0}, {20, 100.0}, {80, 100.0}});
    EXPECT_LT(same.between, 0.3);
    EXPECT_GT(apart.between, 0.6);
    for (const rates::Belief& belief : same.beliefs) {
        EXPECT_NEAR(belief.mean, 0.5, 0.01);
    }
}

TEST(ShrinkRates, NeverPretendsToKnowWithFewRows) {
    const auto out = shrink({{2, 10.0}, {2, 10.0}});
    const rates::Rate untried = rates::beliefAfter(out.prior, Tally{}).rate();
    EXPECT_GT(untried.high, 2.0 * untried.per10RodHours);
    EXPECT_LT(untried.low, 0.5 * untried.per10RodHours);
}

TEST(ShrinkRates, ExpectsSomethingAboveNothingAfterBlanksOnly) {
    const auto out = shrink({{0, 10.0}, {0, 30.0}});
    EXPECT_GT(out.beliefs[0].mean, out.beliefs[1].mean);
    EXPECT_GT(out.beliefs[1].mean, 0.0);
    EXPECT_LT(out.beliefs[0].mean, 0.1);
}

TEST(ShrinkRates, RefusesRowsWithoutAnyEffort) {
    base::Progress progress;
    const std::vector<Tally> none{{0, 0.0}};
    EXPECT_EQ(rates::shrinkRates(none, {}, progress).error().kind, base::ErrorKind::unusableInput);
    rates::ShrinkSettings settings;
    settings.differ = 0.0;
    const std::vector<Tally> some{{0, 1.0}};
    EXPECT_EQ(rates::shrinkRates(some, settings, progress).error().kind, base::ErrorKind::wrongUse);
}

TEST(ShrinkRates, ComesNearerToTheTruthThanTheBareRatesAndCoversIt) {
    constexpr unsigned seed = 3;
    SCOPED_TRACE(seed);
    std::mt19937 chance(seed);
    std::gamma_distribution<double> truth(4.0, 0.05);
    double shrunkError = 0.0;
    double bareError = 0.0;
    int covered = 0;
    int all = 0;
    for (int water = 0; water < 150; ++water) {
        std::vector<Tally> rows;
        std::vector<double> truths;
        for (int section = 0; section < 10; ++section) {
            truths.push_back(truth(chance));
            const double rodHours = 4.0 + static_cast<double>(chance() % 40);
            std::poisson_distribution<int> fish(truths.back() * rodHours);
            rows.push_back({static_cast<double>(fish(chance)), rodHours});
        }
        const auto out = shrink(rows);
        for (std::size_t i = 0; i < rows.size(); ++i) {
            shrunkError += std::pow(out.beliefs[i].mean - truths[i], 2);
            bareError += std::pow(rows[i].fish / rows[i].rodHours - truths[i], 2);
            const rates::Rate rate = out.beliefs[i].rate();
            covered += rate.low / 10.0 <= truths[i] && truths[i] <= rate.high / 10.0 ? 1 : 0;
            ++all;
        }
    }
    EXPECT_LT(shrunkError, 0.7 * bareError);
    EXPECT_GT(covered, 0.91 * all);
    EXPECT_LT(covered, 0.985 * all);
}

} // namespace
