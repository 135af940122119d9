// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/typed_amount.h"

#include <gtest/gtest.h>

namespace {

using preferences::UnitSystem;

std::vector<double> metresIn(const char* text, UnitSystem units = UnitSystem::metric) {
    std::vector<double> metres;
    if (const auto depths = wording::depthsTyped(text, units)) {
        for (const units::Depth depth : *depths) {
            metres.push_back(depth.inMetres());
        }
    }
    return metres;
}

TEST(DepthsTyped, TakesCommasSemicolonsOrBlanksBetweenDepths) {
    const std::vector<double> expected{2.0, 4.0, 6.0};
    EXPECT_EQ(metresIn("2,4,6"), expected);
    EXPECT_EQ(metresIn("2, 4, 6 m"), expected);
    EXPECT_EQ(metresIn("2; 4; 6"), expected);
    EXPECT_EQ(metresIn(" 2 4 6 "), expected);
    EXPECT_EQ(metresIn("2,4"), (std::vector<double>{2.0, 4.0}));
}

TEST(DepthsTyped, TakesACommaForTheDecimalMarkBetweenSemicolons) {
    EXPECT_EQ(metresIn("2,5; 4"), (std::vector<double>{2.5, 4.0}));
}

TEST(DepthsTyped, TakesTheUsersUnitWhereNoneIsTyped) {
    EXPECT_EQ(metresIn("10, 3m", UnitSystem::imperial), (std::vector<double>{3.048, 3.0}));
}

TEST(DepthsTyped, TakesNoHalfAnswer) {
    for (const char* text : {"", " ", "2, deep", "2,,4", "2;"}) {
        EXPECT_FALSE(wording::depthsTyped(text, UnitSystem::metric).has_value()) << text;
    }
}

TEST(SoundSpeedTyped, IsInMetresOrFeetASecond) {
    EXPECT_DOUBLE_EQ(
        wording::soundSpeedTyped("1450", UnitSystem::metric).value().inMetresPerSecond(), 1450.0);
    EXPECT_DOUBLE_EQ(
        wording::soundSpeedTyped("5000", UnitSystem::imperial).value().inMetresPerSecond(), 1524.0);
    EXPECT_DOUBLE_EQ(
        wording::soundSpeedTyped("1500 m/s", UnitSystem::imperial).value().inMetresPerSecond(),
        1500.0);
}

} // namespace
