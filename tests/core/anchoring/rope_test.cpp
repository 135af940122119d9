// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/rope.h"

#include "tests/support/given.h"

#include <gtest/gtest.h>

namespace {

using support::given;
using units::Depth;
using units::Length;

TEST(Rope, HasNoRunWhereItDoesNotReachTheBottom) {
    EXPECT_FALSE(anchoring::runOf(Length::metres(5), Depth::metres(6), Length::metres(0.5)));
    EXPECT_FALSE(
        anchoring::angleAtAnchor_deg(Length::metres(5), Depth::metres(6), Length::metres(0.5)));
}

TEST(Rope, StandsUprightAtScopeOne) {
    const auto run = anchoring::runOf(Length::metres(6.5), Depth::metres(6), Length::metres(0.5));
    EXPECT_NEAR(given(run).inMetres(), 0.0, 1e-9);
}

TEST(Rope, HasNoScopeWithoutRise) {
    EXPECT_FALSE(anchoring::scopeOf(Length::metres(5), Depth(), Length()));
    EXPECT_NEAR(
        given(anchoring::scopeOf(Length::metres(13), Depth::metres(6), Length::metres(0.5))), 2.0,
        1e-12);
}

} // namespace
