// SPDX-License-Identifier: GPL-3.0-or-later
// The day as the user laid it out himself, from the water to the plan.
#include "core/water/steps/plan_day.h"

#include "tests/support/planned_water.h"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using support::PlannedWater;

water::PlannedDay planOf(const PlannedWater& made) {
    base::Progress quiet;
    return water::planDay(made.water, made.derived, made.water.plan, quiet).value();
}

std::vector<int> ranksOf(const water::PlannedDay& planned) {
    std::vector<int> ranks;
    for (const marks::DayStop& stop : planned.day.stops) {
        ranks.push_back(stop.rank);
    }
    return ranks;
}

/// Five marks that there is time for.
PlannedWater roomy() {
    PlannedWater made;
    made.water.pinnedMarks.clear();
    made.water.plan.count = 5;
    return made;
}

/// The places of the stops, the last first.
std::vector<geo::LonLat> turnedRound(const water::PlannedDay& planned) {
    std::vector<geo::LonLat> order;
    for (const int rank : ranksOf(planned)) {
        order.push_back(planned.marks[static_cast<std::size_t>(rank - 1)].lonLat);
    }
    std::ranges::reverse(order);
    return order;
}

TEST(DayByHand, GoesAsTheUserSaysWithTimesAndWays) {
    PlannedWater made = roomy();
    const water::PlannedDay found = planOf(made);
    ASSERT_EQ(found.day.stops.size(), 5U);
    EXPECT_FALSE(found.day.isOrderByHand);
    made.water.dayByHand.order = turnedRound(found);
    const water::PlannedDay planned = planOf(made);
    std::vector<int> wanted = ranksOf(found);
    std::ranges::reverse(wanted);
    EXPECT_EQ(ranksOf(planned), wanted);
    EXPECT_TRUE(planned.day.isOrderByHand);
    EXPECT_FALSE(planned.isOrderOfOtherMarks);
    for (std::size_t k = 1; k < 5; ++k) {
        const marks::DayStop& stop = planned.day.stops[k];
        const marks::DayStop& before = planned.day.stops[k - 1];
        EXPECT_GT(stop.arrive, before.leave);
        ASSERT_FALSE(stop.way.empty());
        EXPECT_EQ(stop.way.front(), planned.marks[static_cast<std::size_t>(before.rank - 1)].place);
        EXPECT_EQ(stop.way.back(), planned.marks[static_cast<std::size_t>(stop.rank - 1)].place);
    }
}

TEST(DayByHand, HoldsThoughTheMarksAreRankedOtherwise) {
    PlannedWater made = roomy();
    const water::PlannedDay found = planOf(made);
    made.water.dayByHand.order = turnedRound(found);
    // By their places: that one gets a name changes nothing.
    made.water.pinnedMarks = {{"Mine", found.marks[4].lonLat}};
    const water::PlannedDay planned = planOf(made);
    ASSERT_EQ(planned.marks.size(), 5U);
    EXPECT_TRUE(planned.day.isOrderByHand);
    for (std::size_t k = 0; k < 5; ++k) {
        const int rank = planned.day.stops[k].rank;
        EXPECT_LT(geo::distance_m(planned.marks[static_cast<std::size_t>(rank - 1)].place,
                                  made.water.frame->toWater(made.water.dayByHand.order[k])),
                  1.0);
    }
}

TEST(DayByHand, OfOtherMarksIsTheProgramsAndToldSo) {
    PlannedWater made = roomy();
    const water::PlannedDay found = planOf(made);
    const std::vector<geo::LonLat> order = turnedRound(found);
    std::vector<geo::LonLat> oneMore = order;
    oneMore.push_back(made.onEarth({-250.0, -150.0}));
    for (const auto& other :
         {oneMore, std::vector<geo::LonLat>(order.begin(), order.end() - 1),
          std::vector<geo::LonLat>{order[0], order[1], order[2], order[3],
                                   made.onEarth({-250.0, -150.0})},
          std::vector<geo::LonLat>{order[0], order[1], order[2], order[3], order[0]}}) {
        made.water.dayByHand.order = other;
        const water::PlannedDay planned = planOf(made);
        EXPECT_EQ(ranksOf(planned), ranksOf(found));
        EXPECT_FALSE(planned.day.isOrderByHand);
        EXPECT_TRUE(planned.isOrderOfOtherMarks);
    }
}

TEST(DayByHand, StaysBelongToTheMarkAtTheirPlace) {
    PlannedWater made = roomy();
    const water::PlannedDay found = planOf(made);
    made.water.dayByHand.stays = {{found.marks[2].lonLat, 2h},
                                  {made.onEarth({-250.0, -150.0}), 3h}};
    const water::PlannedDay planned = planOf(made);
    for (const marks::DayStop& stop : planned.day.stops) {
        EXPECT_EQ(stop.isStayByHand, stop.rank == 3);
        if (stop.rank == 3) {
            EXPECT_EQ(stop.stay, 2h);
        } else {
            EXPECT_LT(stop.stay, found.day.stops[0].stay) << "the rest is shared out";
        }
    }
    EXPECT_FALSE(planned.isOrderOfOtherMarks);
}

} // namespace
