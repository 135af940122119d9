// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/caught.h"

#include <stdexcept>

#include <gtest/gtest.h>

namespace {

TEST(Caught, GivesWhatTheWorkGives) {
    EXPECT_EQ(base::caught([] { return base::Result<int>(7); }).value(), 7);
    const auto failed = base::caught([]() -> base::Result<int> {
        return base::fail(base::ErrorKind::cancelled, "stopped", "here", "go on");
    });
    ASSERT_FALSE(failed.has_value());
    EXPECT_EQ(failed.error().kind, base::ErrorKind::cancelled);
}

TEST(Caught, MakesAnErrorOfAnException) {
    const auto full = base::caught([]() -> base::Result<int> { throw std::bad_alloc(); });
    ASSERT_FALSE(full.has_value());
    EXPECT_EQ(full.error().what, "there is not enough memory for this");
    const auto odd = base::caught([]() -> base::Result<void> { throw std::runtime_error("odd"); });
    ASSERT_FALSE(odd.has_value());
    EXPECT_EQ(odd.error().what, "something unforeseen went wrong: odd");
}

} // namespace
