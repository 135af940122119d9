// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/error.h"

#include <gtest/gtest.h>

namespace {

TEST(Error, SentenceSaysWhereWhatAndWhatToDoInOneLine) {
    const base::Error error{base::ErrorKind::unusableInput, "the file is\nempty", "day.nmea",
                            "choose another"};
    EXPECT_EQ(error.sentence(), "day.nmea: the file is empty; choose another");
}

TEST(Error, SentenceLeavesOutWhatIsNotKnown) {
    EXPECT_EQ((base::Error{base::ErrorKind::wrongUse, "no rods", "", ""}).sentence(), "no rods");
}

TEST(Error, CancelledSaysThatNothingWasChanged) {
    EXPECT_EQ(base::cancelled().kind, base::ErrorKind::cancelled);
    EXPECT_NE(base::cancelled().sentence().find("nothing was changed"), std::string::npos);
}

} // namespace
