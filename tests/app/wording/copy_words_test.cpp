// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/copy_words.h"

#include <gtest/gtest.h>

namespace {

using store::CopyCounts;
using wording::differenceWords;

TEST(CopyWords, TellWhatIsMoreAndWhatFewerThanNow) {
    const CopyCounts now{3, 30865, 129, 104, 7};
    EXPECT_EQ(differenceWords(now, now), "as many of everything as now");
    EXPECT_EQ(differenceWords(CopyCounts{3, 30865, 128, 102, 7}, now),
              "1 stay fewer, 2 fish and runs fewer than now");
    EXPECT_EQ(differenceWords(CopyCounts{4, 42000, 129, 104, 6}, now),
              "1 survey day more, 11,135 soundings more, 1 note or mark fewer than now");
}

TEST(CopyWords, TellWhatACopyHoldsWhereNowCannotBeCounted) {
    EXPECT_EQ(differenceWords(CopyCounts{1, 700, 0, 0, 0}, std::nullopt),
              "1 survey day, 700 soundings");
    EXPECT_EQ(differenceWords(CopyCounts{}, std::nullopt), "nothing yet");
    EXPECT_EQ(differenceWords(std::nullopt, CopyCounts{}), "it cannot be read");
}

TEST(CopyWords, TellWhenItWasTakenByTheClockOnTheWall) {
    const store::Copy copy{{}, units::Moment(std::chrono::milliseconds(1'795'780'800'000)), 0};
    EXPECT_TRUE(wording::takenWords(copy).contains("Nov 2026, "));
}

} // namespace
