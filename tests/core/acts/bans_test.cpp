// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/bans.h"
#include "core/water/document/swap_parts.h"

#include "tests/support/full_water.h"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using testing::HasSubstr;
using units::Length;
using water::Water;

const geo::LonLat place{3.0985, 55.1995};

TEST(Bans, OfAnOwnMarkLetItGoAndNoOther) {
    Water full = support::fullWater();
    full.pinnedMarks = {{"first", {3.0990, 55.2}}, {"second", place}, {"third", {3.1, 55.2}}};
    const Water after = acts::banRound(full, place, Length::metres(60.0), "Roots").value();
    ASSERT_EQ(after.pinnedMarks.size(), 2U) << "one within the ban stays: it was not spoken of";
    EXPECT_EQ(after.pinnedMarks[0].name, "first");
    EXPECT_EQ(after.pinnedMarks[1].name, "third");
    ASSERT_EQ(after.banned.size(), 2U);
    EXPECT_EQ(after.banned[0], full.banned[0]);
    EXPECT_EQ(after.banned[1], water::bannedRound(place, Length::metres(60.0), "Roots"));
    EXPECT_THAT(water::differingParts(full, after), testing::ElementsAre(water::Part::plan));
}

TEST(Bans, AreOneMetreToTwoKilometresWide) {
    const Water full = support::fullWater();
    EXPECT_TRUE(acts::banRound(full, place, Length::metres(1.0), {}));
    EXPECT_TRUE(acts::banRound(full, place, Length::kilometres(2.0), {}));
    for (const double radius_m : {0.99, 2000.1, std::nan("")}) {
        const auto wrong = acts::banRound(full, place, Length::metres(radius_m), {});
        ASSERT_FALSE(wrong) << radius_m;
        EXPECT_EQ(wrong.error().kind, base::ErrorKind::wrongUse);
    }
}

TEST(Bans, NeedAFrameAndALineThatEnclosesWater) {
    const auto noFrame = acts::banRound(Water(), place, Length::metres(60.0), {});
    ASSERT_FALSE(noFrame);
    EXPECT_EQ(noFrame.error().kind, base::ErrorKind::wrongUse);
    const Water full = support::fullWater();
    for (const geo::LonLatRing& ring :
         {geo::LonLatRing{}, geo::LonLatRing{place, {3.1, 55.2}},
          geo::LonLatRing{{3.1, 55.2}, {3.102, 55.202}, {3.102, 55.2}, {3.1, 55.202}}}) {
        const auto wrong = acts::banWater(full, {"", ring});
        ASSERT_FALSE(wrong) << ring.size();
        EXPECT_THAT(wrong.error().where, HasSubstr("banned water"));
    }
}

TEST(Bans, AreLiftedAndNamedOneByOne) {
    Water full = support::fullWater();
    full.banned.push_back({"second", full.banned[0].ring});
    full.banned.push_back({"third", full.banned[0].ring});
    const Water lifted = acts::liftBan(full, 1).value();
    ASSERT_EQ(lifted.banned.size(), 2U);
    EXPECT_EQ(lifted.banned[1].name, "third");
    const Water named = acts::nameBan(full, 2, "other").value();
    EXPECT_EQ(named.banned[1].name, "second");
    EXPECT_EQ(named.banned[2].name, "other");
    EXPECT_FALSE(acts::liftBan(full, 3));
    EXPECT_FALSE(acts::nameBan(full, 3, "x"));
}

} // namespace
