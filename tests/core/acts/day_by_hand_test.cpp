// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/day_by_hand.h"
#include "core/water/document/swap_parts.h"

#include "tests/support/full_water.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using water::Water;

const geo::LonLat first{3.0990, 55.2000};
const geo::LonLat second{3.1000, 55.2003};

TEST(DayByHand, TakesAnOrderAndGivesItBackWithTheStaysLeftAlone) {
    const Water full = support::fullWater();
    const Water ordered = acts::orderDay(full, {second, first}).value();
    EXPECT_EQ(ordered.dayByHand.order, (std::vector<geo::LonLat>{second, first}));
    EXPECT_EQ(ordered.dayByHand.stays, full.dayByHand.stays);
    EXPECT_THAT(water::differingParts(full, ordered), testing::ElementsAre(water::Part::plan));
    const Water free = acts::freeOrder(ordered).value();
    EXPECT_TRUE(free.dayByHand.order.empty());
    EXPECT_EQ(free.dayByHand.stays, full.dayByHand.stays);
    EXPECT_FALSE(acts::freeOrder(free)) << "there is nothing to give back";
}

TEST(DayByHand, RefusesAnOrderInWhichAMarkStandsTwiceOrNone) {
    const Water full = support::fullWater();
    const geo::LonLat nearly{first.lon_deg + 1e-6, first.lat_deg};
    for (const std::vector<geo::LonLat>& wrong :
         {std::vector<geo::LonLat>{}, {first, first}, {first, second, nearly}}) {
        const auto after = acts::orderDay(full, wrong);
        ASSERT_FALSE(after);
        EXPECT_EQ(after.error().kind, base::ErrorKind::wrongUse);
        EXPECT_FALSE(after.error().whatToDo.empty());
    }
}

TEST(DayByHand, HasOneStayForAMarkAndLetsItGo) {
    Water full = support::fullWater();
    full.dayByHand.stays.clear();
    Water after = acts::setStayAt(full, first, 40min).value();
    after = acts::setStayAt(after, second, 90min).value();
    // A plan made anew may lay the mark a hand's breadth aside.
    after = acts::setStayAt(after, {first.lon_deg + 1e-6, first.lat_deg}, 55min).value();
    ASSERT_EQ(after.dayByHand.stays.size(), 2U);
    EXPECT_EQ(after.dayByHand.stays[0].length, 55min);
    EXPECT_EQ(after.dayByHand.stays[1].length, 90min);
    after = acts::setStayAt(after, first, std::nullopt).value();
    ASSERT_EQ(after.dayByHand.stays.size(), 1U);
    EXPECT_EQ(after.dayByHand.stays[0].place, second);
    EXPECT_EQ(acts::setStayAt(after, first, std::nullopt).value(), after);
}

TEST(DayByHand, StaysAreFiveMinutesToTwelveHours) {
    const Water full = support::fullWater();
    EXPECT_TRUE(acts::setStayAt(full, first, 5min));
    EXPECT_TRUE(acts::setStayAt(full, first, 12h));
    EXPECT_FALSE(acts::setStayAt(full, first, 299s));
    EXPECT_FALSE(acts::setStayAt(full, first, 43'201s));
}

} // namespace
