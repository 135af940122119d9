// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weed/growth_limit.h"

#include <gtest/gtest.h>

namespace {

using units::Depth;

TEST(GrowthLimit, GrowsWithClarityByEveryRelation) {
    for (const weed::GrowthRelation relation : weed::allGrowthRelations) {
        EXPECT_FALSE(weed::nameOf(relation).empty());
        Depth before;
        for (const double secchi_m : {0.2, 0.5, 1.0, 2.0, 5.0, 10.0}) {
            const Depth limit = weed::growthLimit(relation, Depth::metres(secchi_m));
            EXPECT_GT(limit, before) << weed::nameOf(relation) << " at " << secchi_m;
            before = limit;
        }
    }
}

TEST(GrowthLimit, IsNothingInWaterTooMurkyForTheRelation) {
    EXPECT_EQ(weed::growthLimit(weed::GrowthRelation::chambersKalffWorld, Depth::metres(0.05)),
              Depth());
}

TEST(GrowthRange, HoldsItsMiddleBetweenTheBestFits) {
    const weed::GrowthRange range = weed::growthRange(Depth::metres(2.0));
    EXPECT_NEAR(range.low.inMetres(), 2.766, 0.001);
    EXPECT_NEAR(range.high.inMetres(), 3.241, 0.001);
    EXPECT_GT(range.mid, range.low);
    EXPECT_LT(range.mid, range.high);
}

} // namespace
