// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/two_at_once.h"

#include <future>

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

} // namespace
