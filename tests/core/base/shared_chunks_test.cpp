// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/chunks_in_common.h"
#include "core/base/made_of_chunks.h"
#include "core/base/shared_chunks.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>
#include <numeric>
#include <random>
#include <ranges>
#include <set>
#include <string>
#include <thread>
#include <vector>

namespace {

using base::SharedChunks;
using testing::ElementsAre;
using testing::ElementsAreArray;
using Numbers = SharedChunks<int>;

std::vector<int> upTo(int count) {
    std::vector<int> all(static_cast<std::size_t>(count));
    std::iota(all.begin(), all.end(), 0);
    return all;
}

/// The chunks of `a` that are none of `b`.
std::size_t chunksOnlyIn(const Numbers& a, const Numbers& b) {
    const std::set<const void*> inB = [&] {
        std::set<const void*> all;
        for (const auto& chunk : b.chunks()) {
            all.insert(chunk.get());
        }
        return all;
    }();
    return static_cast<std::size_t>(std::ranges::count_if(
        a.chunks(), [&](const auto& chunk) { return !inB.contains(chunk.get()); }));
}

TEST(SharedChunks, ReadLikeAListForwardsAndBackwards) {
    for (const int count : {0, 1, 127, 128, 129, 1000}) {
        const std::vector<int> all = upTo(count);
        const Numbers list(all);
        EXPECT_EQ(list.size(), all.size());
        EXPECT_EQ(list.empty(), all.empty());
        EXPECT_TRUE(std::ranges::equal(list, all));
        EXPECT_TRUE(std::ranges::equal(list | std::views::reverse, all | std::views::reverse));
        EXPECT_EQ(list.copied(), all);
        for (std::size_t i = 0; i < all.size(); ++i) {
            EXPECT_EQ(list[i], all[i]);
            EXPECT_EQ(list.positionOf(list.placeOf(i)), i);
        }
    }
    const Numbers list(upTo(300));
    EXPECT_EQ(list.front(), 0);
    EXPECT_EQ(list.back(), 299);
    auto at = list.begin();
    EXPECT_EQ(*at++, 0);
    EXPECT_EQ(*at--, 1);
    EXPECT_EQ(*at, 0);
}

TEST(SharedChunks, ACopySharesAllAndAnEditPartsOneChunk) {
    Numbers list(upTo(10'000));
    const Numbers copy = list;
    EXPECT_TRUE(copy.isSameAs(list));
    list.edit(5'000) = -1;
    EXPECT_FALSE(copy.isSameAs(list));
    EXPECT_EQ(copy[5'000], 5'000);
    EXPECT_EQ(list[5'000], -1);
    EXPECT_EQ(chunksOnlyIn(list, copy), 1U);
    list.insert(7'000, -2);
    list.erase(9'000);
    list.push_back(-3);
    EXPECT_EQ(copy.copied(), upTo(10'000));
    EXPECT_LE(chunksOnlyIn(list, copy), 4U);
    EXPECT_LE(list.chunks().front()->items().size(), 1000U) << "a chunk is no long list";
}

TEST(SharedChunks, DoWhatAVectorDoes) {
    std::mt19937 chance(7);
    std::vector<int> vector = upTo(500);
    Numbers list(vector);
    std::vector<std::pair<Numbers, std::vector<int>>> kept;
    for (int turn = 0; turn < 4'000; ++turn) {
        const auto at = vector.empty() ? 0U : chance() % vector.size();
        const auto before = vector.begin() + static_cast<std::ptrdiff_t>(at);
        // Grows at first, then shrinks to nothing.
        const bool isGrowing = turn < 1'500;
        if (chance() % 4 == 0 && !vector.empty()) {
            vector[at] = turn;
            list.edit(at) = turn;
        } else if (isGrowing && chance() % 3 == 0) {
            vector.push_back(turn);
            list.push_back(turn);
        } else if (isGrowing) {
            vector.insert(before, turn);
            list.insert(at, turn);
        } else if (!vector.empty()) {
            vector.erase(before);
            list.erase(at);
        }
        if (turn % 400 == 0) {
            kept.emplace_back(list, vector);
        }
    }
    EXPECT_TRUE(list.empty());
    EXPECT_EQ(list.copied(), vector);
    for (const auto& [copy, wanted] : kept) {
        ASSERT_EQ(copy.copied(), wanted) << "a copy does not change with the list";
    }
}

TEST(SharedChunks, AreEqualWhateverTheirChunks) {
    const Numbers whole(upTo(1'000));
    Numbers grown;
    for (const int number : upTo(1'000)) {
        grown.push_back(number);
    }
    EXPECT_EQ(whole, grown);
    EXPECT_EQ(Numbers(), Numbers(std::vector<int>()));
    for (const std::size_t i : {0U, 127U, 128U, 500U, 999U}) {
        Numbers other = whole;
        other.edit(i) = -1;
        EXPECT_NE(other, whole) << i;
        EXPECT_NE(other, grown) << i;
        other.edit(i) = static_cast<int>(i);
        EXPECT_EQ(other, whole) << i;
        EXPECT_EQ(other, grown) << i;
        other.erase(i);
        EXPECT_NE(other, whole) << i;
        other.insert(i, static_cast<int>(i));
        EXPECT_EQ(other, grown) << i;
    }
}

TEST(SharedChunks, WorkOutANumberOnceAChunk) {
    int asked = 0;
    const auto sum = [&asked](std::span<const int> items) {
        ++asked;
        return std::accumulate(items.begin(), items.end(), std::uint64_t(1));
    };
    const auto joined = [&](const Numbers& list) { return list.joined(0, sum, std::plus<>(), 0); };
    Numbers list(std::vector<int>(1280, 1)); // ten chunks
    EXPECT_EQ(joined(list), 1290U);
    EXPECT_EQ(asked, 10);
    const Numbers copy = list;
    EXPECT_EQ(joined(copy), 1290U);
    EXPECT_EQ(asked, 10);
    list.edit(700) = 5;
    EXPECT_EQ(joined(list), 1294U);
    EXPECT_EQ(asked, 11);
    list.edit(700) =
        6; // nobody shares this chunk any more: what was worked out must go all the same
    EXPECT_EQ(joined(list), 1295U);
    EXPECT_EQ(asked, 12);
    EXPECT_EQ(joined(copy), 1290U);
}

TEST(SharedChunks, AreReadWhileACopyIsChanged) {
    Numbers list(upTo(5'000));
    for (int turn = 0; turn < 20; ++turn) {
        const Numbers copy = list;
        std::vector<int> read;
        std::thread reader([&copy, &read] { read = copy.copied(); });
        for (std::size_t i = 0; i < list.size(); i += 100) {
            list.edit(i) = turn;
        }
        list.erase(0);
        list.insert(0, turn);
        reader.join();
        std::vector<int> wanted = upTo(5'000);
        for (std::size_t i = 0; turn > 0 && i < wanted.size(); i += 100) {
            wanted[i] = turn - 1;
        }
        ASSERT_EQ(read, wanted);
    }
}

TEST(MadeOfChunks, MakesAnewOnlyOfWhatHasChanged) {
    base::MadeOfChunks<int, std::vector<int>> made;
    int asked = 0;
    const auto doubled = [&](const Numbers& list) {
        std::vector<int> all;
        for (const auto& part : made.of(list, [&](std::span<const int> items) {
                 ++asked;
                 std::vector<int> twice;
                 for (const int item : items) {
                     twice.push_back(2 * item);
                 }
                 return twice;
             })) {
            all.insert(all.end(), part->begin(), part->end());
        }
        return all;
    };
    Numbers list(upTo(1280));
    EXPECT_EQ(doubled(list)[1279], 2558);
    EXPECT_EQ(asked, 10);
    list.edit(1279) = 1;
    EXPECT_EQ(doubled(list)[1279], 2);
    EXPECT_EQ(asked, 11);
    list.edit(1279) = 2;
    EXPECT_EQ(doubled(list)[1279], 4);
    EXPECT_EQ(doubled(list).size(), 1280U);
    EXPECT_EQ(asked, 12);
    made.forget();
    EXPECT_EQ(doubled(list)[0], 0);
    EXPECT_EQ(asked, 22);
}

TEST(ChunksInCommon, AreThoseAheadOfAChangeAndBehindIt) {
    const Numbers before(upTo(1000));
    Numbers after = before;
    EXPECT_EQ(base::inCommon(before, after).ahead, 1000U);
    EXPECT_EQ(base::inCommon(before, after).behind, 0U) << "no item counts twice";
    after.edit(500) = -1;
    const base::InCommon changed = base::inCommon(before, after);
    EXPECT_LE(changed.ahead, 500U);
    EXPECT_GT(changed.ahead, 200U);
    EXPECT_LE(changed.behind, 499U);
    EXPECT_GT(changed.behind, 200U);
    EXPECT_EQ(base::inCommon(before, Numbers(upTo(1000))).ahead, 0U) << "equal, and not shared";
    EXPECT_EQ(base::inCommon(before, Numbers()).behind, 0U);
    EXPECT_EQ(base::inCommon(Numbers(), Numbers()).ahead, 0U);
}

// Whatever is done to a copy, what is told to be in common is equal.
TEST(ChunksInCommon, AreEqualInBothAfterAnyChange) {
    std::mt19937 random(5);
    const auto below = [&random](std::size_t end) {
        return std::uniform_int_distribution<std::size_t>(0, end - 1)(random);
    };
    for (int round = 0; round < 300; ++round) {
        const Numbers before(upTo(static_cast<int>(1 + below(1500))));
        Numbers after = before;
        for (std::size_t k = 0; k < 1 + below(3); ++k) {
            if (below(3) == 0) {
                after.insert(below(after.size() + 1), -7);
            } else if (after.size() > 1 && below(2) == 0) {
                after.erase(below(after.size()));
            } else {
                after.edit(below(after.size())) = -9;
            }
        }
        const auto [ahead, behind] = base::inCommon(before, after);
        ASSERT_LE(ahead + behind, std::min(before.size(), after.size()));
        for (std::size_t i = 0; i < ahead; ++i) {
            ASSERT_EQ(before[i], after[i]) << round;
        }
        for (std::size_t i = 1; i <= behind; ++i) {
            ASSERT_EQ(before[before.size() - i], after[after.size() - i]) << round;
        }
    }
}

} // namespace
