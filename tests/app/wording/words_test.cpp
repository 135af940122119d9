// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/words.h"

#include <gtest/gtest.h>

namespace {

using wording::Words;

const Words metric(preferences::UnitSystem::metric);
const Words imperial(preferences::UnitSystem::imperial);

TEST(Words, PartThousandsInCountsAndVolumes) {
    EXPECT_EQ(Words::count(41208), "41,208");
    EXPECT_EQ(metric.volume(units::Volume::cubicMetres(229503.4)), "229,503 m³");
    EXPECT_EQ(metric.volume(units::Volume::cubicMetres(1.07e6)), "1.07 million m³");
    EXPECT_EQ(imperial.volume(units::Volume::acreFeet(13215.0)), "13,215 ac-ft");
}

TEST(Words, NeverSayThatASmallAreaIsNothing) {
    EXPECT_EQ(metric.area(units::Area::squareMetres(212.0)), "0.02 ha");
    EXPECT_EQ(metric.area(units::Area::hectares(4.06)), "4.1 ha");
    EXPECT_EQ(metric.area(units::Area::hectares(189.4)), "189 ha");
}

TEST(Words, SayARangeWithoutWidthAsOneDepth) {
    EXPECT_EQ(metric.depthRange(units::Depth::metres(0.01), units::Depth::metres(0.02)), "0 m");
    EXPECT_EQ(metric.depthRange(units::Depth::metres(4.0), units::Depth::metres(9.144)),
              "4 to 9.1 m");
    EXPECT_EQ(metric.depthRange(units::Depth::metres(20.0), std::nullopt), "over 20 m");
}

} // namespace
