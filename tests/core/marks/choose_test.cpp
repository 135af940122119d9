// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/choose.h"

#include <algorithm>
#include <random>

#include <gtest/gtest.h>

namespace {

using marks::ChoiceRules;
using marks::Eligible;

double sumOf(const std::vector<Eligible>& all, const std::vector<std::size_t>& chosen) {
    double sum = 0.0;
    for (const std::size_t k : chosen) {
        sum += all[k].score;
    }
    return sum;
}

bool keepsTheRules(const std::vector<Eligible>& all, const std::vector<std::size_t>& chosen,
                   const ChoiceRules& rules) {
    std::vector<std::size_t> inSection(10, 0);
    for (std::size_t a = 0; a < chosen.size(); ++a) {
        for (std::size_t b = 0; b < a; ++b) {
            if (geo::distance_m(all[chosen[a]].place, all[chosen[b]].place) < rules.apart_m) {
                return false;
            }
        }
        const auto section = all[chosen[a]].section;
        if (section != sections::noSection &&
            ++inSection[static_cast<std::size_t>(section)] > rules.mostInSection) {
            return false;
        }
    }
    return chosen.size() <= rules.count;
}

std::vector<Eligible> scattered(std::mt19937& random, std::size_t count) {
    std::uniform_real_distribution<double> place(0.0, 200.0);
    std::uniform_real_distribution<double> score(0.0, 1.0);
    std::uniform_int_distribution<int> section(-1, 2);
    std::vector<Eligible> all;
    for (std::size_t k = 0; k < count; ++k) {
        all.push_back({{place(random), place(random)}, score(random), section(random), false});
    }
    std::ranges::sort(all, std::ranges::greater(), &Eligible::score);
    return all;
}

constexpr ChoiceRules rules{4, 60.0, 2};

TEST(Choice, OfTheExactKindIsTheBestOfAllLists) {
    constexpr unsigned seed = 20261003;
    std::mt19937 random(seed);
    for (int round = 0; round < 60; ++round) {
        const auto all = scattered(random, 11);
        double best = 0.0;
        for (unsigned subset = 0; subset < (1U << all.size()); ++subset) {
            std::vector<std::size_t> chosen;
            for (std::size_t k = 0; k < all.size(); ++k) {
                if ((subset >> k & 1U) != 0) {
                    chosen.push_back(k);
                }
            }
            if (keepsTheRules(all, chosen, rules)) {
                best = std::max(best, sumOf(all, chosen));
            }
        }
        const auto exact = marks::chooseExactly(all, rules);
        EXPECT_TRUE(keepsTheRules(all, exact, rules));
        EXPECT_NEAR(sumOf(all, exact), best, 1e-12) << "seed " << seed << " round " << round;
    }
}

TEST(Choice, OfTheGreedyKindKeepsTheRulesAndTakesTheBestFirst) {
    std::mt19937 random(7);
    for (int round = 0; round < 60; ++round) {
        const auto all = scattered(random, 40);
        const auto chosen = marks::chooseGreedily(all, rules);
        EXPECT_TRUE(keepsTheRules(all, chosen, rules));
        EXPECT_EQ(chosen.front(), 0U);
        EXPECT_LE(sumOf(all, chosen), sumOf(all, marks::chooseExactly(all, rules)) + 1e-12);
    }
}

TEST(Choice, FindsTwoGoodPlacesWhereTheBestOneBlocksBoth) {
    // The middle one is best, but excludes both others, which together are worth more.
    const std::vector<Eligible> all{
        {{50, 0}, 0.9, 0, false}, {{0, 0}, 0.8, 1, false}, {{100, 0}, 0.7, 2, false}};
    EXPECT_EQ(marks::chooseGreedily(all, rules), (std::vector<std::size_t>{0}));
    EXPECT_EQ(marks::chooseExactly(all, rules), (std::vector<std::size_t>{1, 2}));
}

TEST(Choice, AlwaysTakesThePinned) {
    const std::vector<Eligible> all{
        {{0, 0}, 0.9, 0, false}, {{1, 0}, 0.2, 0, true}, {{2, 0}, 0.1, 0, true}};
    EXPECT_EQ(marks::chooseGreedily(all, rules), (std::vector<std::size_t>{1, 2}));
    EXPECT_EQ(marks::chooseExactly(all, rules), (std::vector<std::size_t>{1, 2}));
}

TEST(Choice, LiftsTheCapOnlyWhileTheListIsShort) {
    std::vector<Eligible> all;
    for (int k = 0; k < 6; ++k) {
        all.push_back({{100.0 * k, 0}, 1.0 - 0.1 * k, 0, false});
    }
    const auto capped = marks::chooseGreedily(all, rules);
    EXPECT_EQ(capped.size(), 2U);
    EXPECT_EQ(marks::filledUp(capped, all, rules), (std::vector<std::size_t>{0, 1, 2, 3}));
}

} // namespace
