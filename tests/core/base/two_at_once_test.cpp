// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/two_at_once.h"

#include <future>
#include <stdexcept>

#include <gtest/gtest.h>

namespace {

TEST(TwoAtOnce, RunAtTheSameTimeAndAreBothDoneAfterwards) {
    std::promise<int> said;
    int heard = 0;
    int told = 0;
    // each waits for the other: one after the other would never end
    std::promise<void> listening;
    base::twoAtOnce(
        [&] {
            listening.set_value();
            heard = said.get_future().get();
        },
        [&] {
            listening.get_future().wait();
            said.set_value(7);
            told = 1;
        });
    EXPECT_EQ(heard, 7);
    EXPECT_EQ(told, 1);
}

TEST(TwoAtOnce, ThrowsWhatEitherOfThemThrowsOnceBothAreDone) {
    int done = 0;
    const auto fine = [&done] { ++done; };
    const auto bad = [] { throw std::runtime_error("bad"); };
    EXPECT_THROW(base::twoAtOnce(fine, bad), std::runtime_error);
    EXPECT_EQ(done, 1);
    EXPECT_THROW(base::twoAtOnce(bad, fine), std::runtime_error);
    EXPECT_EQ(done, 2);
}

} // namespace
