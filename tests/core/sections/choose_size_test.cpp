// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/choose_size.h"

#include <gtest/gtest.h>

namespace {

double sizeFor(double fishable_ha) {
    return sections::chooseSectionSize(units::Area::hectares(fishable_ha), false).inHectares();
}

TEST(ChooseSectionSize, IsWhatOneOutingCoversWhereThatMakesAHandfulAndNoCrowd) {
    for (const double fishable_ha : {20.0, 49.0, 120.0, 240.0}) {
        EXPECT_DOUBLE_EQ(sizeFor(fishable_ha), 4.0) << fishable_ha;
    }
    EXPECT_NEAR(sections::chooseSectionSize(units::Area::acres(120.0), true).inAcres(), 10.0, 1e-9);
}

TEST(ChooseSectionSize, APondHasAFewAndAGreatLakeNoMoreThanSixty) {
    EXPECT_DOUBLE_EQ(sizeFor(2.0), 0.4);
    EXPECT_DOUBLE_EQ(sizeFor(1.0), 0.2);
    EXPECT_DOUBLE_EQ(sizeFor(5000.0), 100.0);
    for (double fishable_ha = 0.5; fishable_ha < 20'000.0; fishable_ha *= 1.07) {
        const double count = fishable_ha / sizeFor(fishable_ha);
        EXPECT_GE(count, 4.99) << fishable_ha;
        EXPECT_LE(count, 60.01) << fishable_ha;
    }
}

TEST(ChooseSectionSize, NeverLeavesTheRangeOfTheSetting) {
    for (const bool inAcres : {false, true}) {
        for (const double fishable_ha : {0.0, 0.01, 1e6}) {
            const auto size =
                sections::chooseSectionSize(units::Area::hectares(fishable_ha), inAcres);
            EXPECT_GE(size.inHectares(), 0.1);
            EXPECT_LE(size.inHectares(), 1000.0);
        }
    }
}

} // namespace
