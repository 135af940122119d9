// SPDX-License-Identifier: GPL-3.0-or-later
// What the user lays of his marks with his own hand.
#include "core/acts/plan.h"

#include <gtest/gtest.h>

namespace {

using geo::LonLat;
using water::PinnedMark;

constexpr LonLat here{3.1, 55.2};
constexpr LonLat there{3.102, 55.201};

water::Water withMark(const water::LaidByHand& laid) {
    water::Water water;
    water.pinnedMarks = {{"plain", {3.2, 55.2}, {}}, {"mine", here, laid}};
    water.dayByHand.order = {{3.2, 55.2}, here};
    water.dayByHand.stays = {{here, std::chrono::minutes(40)}};
    return water;
}

TEST(LayByHand, KeepsTheMarkWithWhatIsLaidWhetherItWasTheUsersOrNot) {
    const PinnedMark asked{"mine", here, {LonLat{3.101, 55.2}, {}, {there}, {}}};
    const auto known = acts::layByHand(withMark({}), here, asked);
    ASSERT_TRUE(known);
    EXPECT_EQ(known->pinnedMarks.size(), 2U);
    EXPECT_EQ(known->pinnedMarks[1], asked);
    const auto added = acts::layByHand(water::Water(), here, asked);
    ASSERT_TRUE(added);
    EXPECT_EQ(added->pinnedMarks, std::vector<PinnedMark>{asked});
    const auto none = acts::layByHand(withMark({}), here, {"mine", here, {}});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, base::ErrorKind::wrongUse);
}

TEST(LayByHand, GoesAlongWithTheMark) {
    const water::LaidByHand laid{LonLat{3.101, 55.2}, LonLat{3.0995, 55.2}, {there}, {}};
    const auto moved = acts::pinMark(withMark(laid), here, {"mine", {3.105, 55.199}});
    ASSERT_TRUE(moved);
    const water::LaidByHand& now = moved->pinnedMarks[1].laid;
    EXPECT_NEAR(now.bow->lon_deg, 3.106, 1e-9);
    EXPECT_NEAR(now.bow->lat_deg, 55.199, 1e-9);
    EXPECT_NEAR(now.stern->lon_deg, 3.1045, 1e-9);
    EXPECT_NEAR(now.baits[0].lon_deg, 3.107, 1e-9);
    EXPECT_NEAR(now.baits[0].lat_deg, 55.2, 1e-9);
}

TEST(LayByHand, TakesTurnAndStayOfTheMarkAlong) {
    const auto moved = acts::pinMark(withMark({}), here, {"mine", there});
    EXPECT_EQ(moved->dayByHand.order[1], there);
    EXPECT_EQ(moved->dayByHand.order[0], (LonLat{3.2, 55.2}));
    EXPECT_EQ(moved->dayByHand.stays[0].place, there);
    const auto laid =
        acts::layByHand(withMark({}), here, {"mine", there, {LonLat{3.101, 55.2}, {}, {}, {}}});
    EXPECT_EQ(laid->dayByHand.order[1], there);
}

TEST(LayByHand, IsGivenBackWithTheMarkKept) {
    const auto free = acts::freeLie(withMark({LonLat{3.101, 55.2}, {}, {there}, {}}), here);
    ASSERT_TRUE(free);
    ASSERT_EQ(free->pinnedMarks.size(), 2U);
    EXPECT_FALSE(free->pinnedMarks[1].laid.isAny());
    EXPECT_FALSE(acts::freeLie(withMark({}), here)) << "nothing was laid";
    EXPECT_FALSE(acts::freeLie(withMark({}), there)) << "no mark of his is there";
}

} // namespace
