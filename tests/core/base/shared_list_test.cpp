// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/shared_list.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <span>
#include <string>
#include <thread>
#include <vector>

namespace {

using base::SharedList;
using testing::ElementsAre;
using Words = SharedList<std::string>;

TEST(SharedList, ReadsLikeAVector) {
    const SharedList<int> list{3, 1, 2};
    EXPECT_THAT(list, ElementsAre(3, 1, 2));
    EXPECT_EQ(list.size(), 3U);
    EXPECT_FALSE(list.empty());
    EXPECT_EQ(list[1], 1);
    EXPECT_EQ(list.at(2), 2);
    EXPECT_EQ(list.front(), 3);
    EXPECT_EQ(list.back(), 2);
    EXPECT_EQ(std::span(list).size(), 3U);
    EXPECT_EQ(list.data(), &list.front());
    EXPECT_NE(std::ranges::find(list, 2), list.end());
    const std::vector<int>& same = list;
    EXPECT_EQ(&same[0], &list[0]) << "no copy for who reads a vector";
    EXPECT_TRUE(SharedList<int>().empty());
    EXPECT_EQ(SharedList<int>().size(), 0U);
    EXPECT_THROW(static_cast<void>(SharedList<int>().at(0)), std::out_of_range);
}

TEST(SharedList, ACopySharesAndAnEditParts) {
    Words list{"soft", "rock"};
    const Words copy = list;
    EXPECT_TRUE(copy.isSameAs(list));
    EXPECT_EQ(copy.data(), list.data());
    list.edit().push_back("weed");
    EXPECT_FALSE(copy.isSameAs(list));
    EXPECT_THAT(copy, ElementsAre("soft", "rock"));
    EXPECT_THAT(list, ElementsAre("soft", "rock", "weed"));
}

TEST(SharedList, AnEditOfTheOnlyOneMovesTheItemsAndIsAnotherListAllTheSame) {
    Words list{"a word too long to lie within the string itself"};
    EXPECT_EQ(list.workedOutOnce(0, [](const auto& items) { return items.size(); }), 1U);
    list.edit().push_back("b");
    list.edit().pop_back();
    list.edit().push_back("c");
    EXPECT_EQ(list.workedOutOnce(0, [](const auto& items) { return items.size(); }), 2U)
        << "what was worked out is that of the earlier items";
    Words alone{"x"};
    const std::string* const at = alone.data();
    EXPECT_EQ(alone.edit().data(), at) << "nothing is copied where nobody shares";
}

TEST(SharedList, IsEqualByItsItemsHoweverItCameByThem) {
    const Words a{"soft", "rock"};
    const Words b{"soft", "rock"};
    EXPECT_FALSE(a.isSameAs(b));
    EXPECT_EQ(a, b);
    EXPECT_EQ(a, (std::vector<std::string>{"soft", "rock"}));
    EXPECT_NE(a, (std::vector<std::string>{"soft"}));
    EXPECT_NE(a, Words());
    EXPECT_EQ(Words(), Words(std::vector<std::string>()));
    EXPECT_TRUE(Words().isSameAs(Words()));
}

/// Never equal, so that a comparison which looks at items is told from one which does not.
struct Odd {
    int n = 0;
    friend bool operator==(const Odd&, const Odd&) { return false; }
};

TEST(SharedList, CopiesAreEqualWithoutALookAtTheirItems) {
    const SharedList<Odd> a{{1}, {2}};
    const SharedList<Odd>& same = a;
    EXPECT_TRUE(a == same);
    EXPECT_FALSE(a == (SharedList<Odd>{{1}, {2}}));
}

TEST(SharedList, WorksANumberOutOnceForAllCopies) {
    const SharedList<int> list{4, 5};
    int calls = 0;
    const auto sum = [&calls](const std::vector<int>& items) {
        ++calls;
        return static_cast<std::uint64_t>(std::accumulate(items.begin(), items.end(), 0));
    };
    EXPECT_EQ(list.workedOutOnce(1, sum), 9U);
    SharedList<int> copy = list;
    EXPECT_EQ(copy.workedOutOnce(1, sum), 9U);
    EXPECT_EQ(calls, 1);
    EXPECT_EQ(copy.workedOutOnce(0, [](const auto& items) { return items.size(); }), 2U)
        << "each slot is its own";
    copy.edit()[0] = 10;
    EXPECT_EQ(copy.workedOutOnce(1, sum), 15U);
    EXPECT_EQ(list.workedOutOnce(1, sum), 9U);
    EXPECT_EQ(calls, 2);
}

TEST(SharedList, CopiesAreReadOnOtherThreadsWhileOneIsChanged) {
    SharedList<int> list(std::vector<int>(20'000, 1));
    std::vector<std::jthread> readers;
    std::vector<std::uint64_t> sums(4, 0);
    for (std::uint64_t& sum : sums) {
        readers.emplace_back([copy = list, &sum] {
            sum = copy.workedOutOnce(2, [](const std::vector<int>& items) {
                return static_cast<std::uint64_t>(std::accumulate(items.begin(), items.end(), 0));
            });
        });
        list.edit().assign(20'000, 1);
        list.edit().back() = 1;
    }
    for (int i = 0; i < 100; ++i) {
        list.edit()[0] = i;
    }
    readers.clear();
    EXPECT_THAT(sums, ElementsAre(20'000, 20'000, 20'000, 20'000));
}

} // namespace
