// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/read_out.h"
#include "tests/app/support/star_water.h"

#include <gmock/gmock.h>

namespace {

using chart::ReadOut;

TEST(ReadOut, SaysDepthAtTodaysLevelWithItsTrust) {
    const chart::ChartContent content = support::starContent(); // 0.35 m above chart level
    const ReadOut out = chart::readOutAt(content, {0.0, 0.0});
    EXPECT_EQ(out.depth, "20.3 m"); // 20.0 in the middle, less what cells of 5 m round off
    EXPECT_TRUE(out.trust.startsWith("±0.2 m, ")) << out.trust.toStdString();
    EXPECT_EQ(out.band, "over 20 m");
}

TEST(ReadOut, FollowsTheUsersUnits) {
    chart::ChartContent content = support::starContent();
    content.words = wording::Words(preferences::UnitSystem::imperial);
    const ReadOut out = chart::readOutAt(content, {0.0, 0.0});
    EXPECT_TRUE(out.depth.endsWith(" ft")) << out.depth.toStdString();
    EXPECT_TRUE(out.trust.contains(" ft")) << out.trust.toStdString();
}

TEST(ReadOut, NamesTheZoneAndTheGuess) {
    const chart::ChartContent content = support::starContent();
    EXPECT_EQ(chart::readOutAt(content, {120.0, -60.0}).zones, "hump");
    EXPECT_TRUE(chart::readOutAt(content, {-220.0, 60.0}).trust.endsWith(", guess"));
}

TEST(ReadOut, LandHasAPositionButNoDepth) {
    const ReadOut out = chart::readOutAt(support::starContent(), {900.0, 900.0});
    EXPECT_TRUE(out.depth.isEmpty());
    EXPECT_TRUE(out.trust.isEmpty());
    EXPECT_TRUE(out.line().startsWith("land"));
    EXPECT_TRUE(out.position.contains(" N"));
}

TEST(ReadOut, EmptyContentSaysNothing) {
    EXPECT_EQ(chart::readOutAt(chart::ChartContent{}, {0.0, 0.0}).line(), "land");
}

} // namespace
