// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/refused_words.h"

#include <gtest/gtest.h>

namespace {

TEST(RefusedWords, SayHowManyWhyAndWhereTheMostFirst) {
    readers::ReadingReport report;
    EXPECT_EQ(wording::refusedRows(report), "");
    report.refuse("bad_checksum", 12, "$SDDPT,4.2,0.0*00");
    for (int i = 0; i < 1200; ++i) {
        report.refuse("void_fix", 1040, "$GPRMC,1,V");
    }
    EXPECT_EQ(
        wording::refusedRows(report),
        "1,200 without a fix of the receiver (line 1,040: '$GPRMC,1,V'), 1 with a wrong check "
        "sum (line 12: '$SDDPT,4.2,0.0*00')");
}

TEST(RefusedWords, ATextWithSignsOfGapsStaysAsItIs) {
    readers::ReadingReport report;
    report.refuse("no_depth", 3, "%1 %2 <b>");
    EXPECT_EQ(wording::refusedRows(report), "1 without a depth (line 3: '%1 %2 <b>')");
}

} // namespace
