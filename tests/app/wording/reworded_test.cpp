// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/reworded.h"

#include <gtest/gtest.h>

using wording::reworded;
using wording::Words;

namespace {

const Words imperial(preferences::UnitSystem::imperial);

TEST(Reworded, LeavesMetresToThoseWhoCountInThem) {
    EXPECT_EQ(reworded("58 m of drop-off, 4 to 9 m", Words()), "58 m of drop-off, 4 to 9 m");
}

TEST(Reworded, TurnsEveryLengthOfASentenceIntoFeet) {
    EXPECT_EQ(reworded("58 m of drop-off, 4 to 9 m, within a cast", imperial),
              "190 ft of drop-off, 13 to 30 ft, within a cast");
    EXPECT_EQ(reworded("fetch 420 m: waves about 0.1 m.", imperial),
              "fetch 1378 ft: waves about 0.3 ft.");
}

TEST(Reworded, TellsSpeedsFromLengths) {
    EXPECT_EQ(reworded("wind over 10 m/s", imperial), "wind over 22 mph");
}

TEST(Reworded, LeavesNumbersOfOtherThingsAlone) {
    EXPECT_EQ(reworded("2 fish in 9 rod-hours, 3 marks, 5 m²", imperial),
              "2 fish in 9 rod-hours, 3 marks, 5 m²");
}

} // namespace
