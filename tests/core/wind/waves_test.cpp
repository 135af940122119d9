// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wind/waves.h"

#include <gtest/gtest.h>

namespace {

using units::Depth;
using units::Length;
using units::Speed;

TEST(Waves, AreNoneWithoutWindOrFetchOrDepth) {
    EXPECT_EQ(wind::wavesOnDeepWater(Speed(), Length::metres(500)).significantHeight, Length());
    EXPECT_EQ(wind::wavesOnDeepWater(Speed::metresPerSecond(5), Length()).significantHeight,
              Length());
    EXPECT_EQ(wind::wavesOverDepth(Speed::metresPerSecond(5), Length::metres(500), Depth())
                  .significantHeight,
              Length());
}

TEST(Waves, AreNoneOverGroundThatStandsOutOfTheWater) {
    const auto none =
        wind::wavesOverDepth(Speed::metresPerSecond(5), Length::metres(500), Depth::metres(-0.4));
    EXPECT_EQ(none.significantHeight, Length());
    EXPECT_EQ(none.period_s, 0.0);
}

TEST(Waves, GrowWithWindAndFetch) {
    Length before;
    for (double wind_m_s = 1.0; wind_m_s < 20.0; wind_m_s += 1.0) {
        const Length height = wind::wavesOverDepth(Speed::metresPerSecond(wind_m_s),
                                                   Length::metres(800), Depth::metres(4))
                                  .significantHeight;
        EXPECT_GT(height, before);
        before = height;
    }
    EXPECT_GT(wind::wavesOnDeepWater(Speed::metresPerSecond(8), Length::metres(900)).period_s,
              wind::wavesOnDeepWater(Speed::metresPerSecond(8), Length::metres(400)).period_s);
}

TEST(Waves, OverDeepWaterComeNearTheDeepForm) {
    const auto wind = Speed::metresPerSecond(8);
    const auto fetch = Length::metres(1500);
    const double deep = wind::wavesOnDeepWater(wind, fetch).significantHeight.inMetres();
    EXPECT_NEAR(wind::wavesOverDepth(wind, fetch, Depth::metres(40)).significantHeight.inMetres(),
                deep, 0.02 * deep);
    EXPECT_LT(wind::wavesOverDepth(wind, fetch, Depth::metres(1)).significantHeight.inMetres(),
              0.9 * deep);
}

} // namespace
