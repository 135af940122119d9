// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/match_waters.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

namespace {

using sections::matchWaters;
using sections::SharedWater;

double worthOf(const std::vector<int>& pairs, const std::vector<SharedWater>& shared) {
    double worth = 0.0;
    for (const SharedWater& one : shared) {
        worth += pairs[static_cast<std::size_t>(one.now)] == one.earlier ? one.worth : 0.0;
    }
    return worth;
}

/// The most that any way of pairing is worth, by trying them all.
double mostOf(const std::vector<SharedWater>& shared, int now, int nowCount, std::set<int>& taken) {
    if (now == nowCount) {
        return 0.0;
    }
    double most = mostOf(shared, now + 1, nowCount, taken);
    for (const SharedWater& one : shared) {
        if (one.now == now && taken.insert(one.earlier).second) {
            most = std::max(most, one.worth + mostOf(shared, now + 1, nowCount, taken));
            taken.erase(one.earlier);
        }
    }
    return most;
}

TEST(MatchWaters, GivesUpTheGreatestPairWhereTwoOthersAreWorthMore) {
    // Greedy would take 10 and leave the other new water with nothing.
    const std::vector<SharedWater> shared{{0, 0, 9.0}, {1, 0, 10.0}, {1, 1, 8.0}};
    EXPECT_EQ(matchWaters(shared, 2, 2), (std::vector{0, 1}));
}

TEST(MatchWaters, LeavesOutWhatSharesNothing) {
    EXPECT_EQ(matchWaters({}, 2, 3), (std::vector{-1, -1}));
    const std::vector<SharedWater> shared{{0, 0, 1.0}, {1, 0, 2.0}};
    EXPECT_EQ(matchWaters(shared, 2, 1), (std::vector{-1, 0}));
}

TEST(MatchWaters, NoPairingIsWorthMore) {
    for (unsigned seed = 1; seed <= 300; ++seed) {
        std::mt19937 random(seed);
        const auto upTo = [&](int most) {
            return static_cast<int>(random() % (static_cast<unsigned>(most) + 1));
        };
        const int nowCount = 1 + upTo(5);
        const int earlierCount = 1 + upTo(5);
        std::vector<SharedWater> shared;
        for (int now = 0; now < nowCount; ++now) {
            for (int earlier = 0; earlier < earlierCount; ++earlier) {
                if (upTo(2) > 0) {
                    shared.push_back({now, earlier, 1.0 + upTo(9)});
                }
            }
        }
        const std::vector<int> pairs = matchWaters(shared, nowCount, earlierCount);
        std::set<int> taken;
        EXPECT_DOUBLE_EQ(worthOf(pairs, shared), mostOf(shared, 0, nowCount, taken))
            << "seed " << seed;
        for (const int earlier : pairs) {
            EXPECT_TRUE(earlier < 0 || taken.insert(earlier).second) << "seed " << seed;
        }
    }
}

} // namespace
