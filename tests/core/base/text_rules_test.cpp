// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers, errors and ids at the edge of what they take.
#include "core/base/number_text.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/base/typed_id.h"

#include <gtest/gtest.h>

#include <limits>
#include <string>

namespace {

using namespace base;

TEST(NumberText, TakesEveryWayOfWritingANumberAndNothingElse) {
    const std::pair<const char*, double> good[] = {
        {"0", 0.0},    {"-0.5", -0.5},      {".5", 0.5},
        {"5.", 5.0},   {"1e3", 1000.0},     {"1E-3", 0.001},
        {"+2.5", 2.5}, {"\t 7 \r\n", 7.0},  {"\f7\v", 7.0},
        {"007", 7.0},  {"-1.25e2", -125.0}, {"9007199254740993", 9007199254740992.0}};
    for (const auto& [text, value] : good) {
        EXPECT_EQ(numberFrom(text), value) << text;
    }
    for (const char* text : {"-", "+", ".", "e3", "1e", "1,5", "1 000", "1.2.3", "++1", "- 1",
                             "+ 1", "infinity", "NaN", "1f", "0x1", "1_0"}) {
        EXPECT_FALSE(numberFrom(text)) << text;
    }
    EXPECT_EQ(numberFrom("-12,25", ','), -12.25);
    EXPECT_EQ(numberFrom("12", ','), 12.0);
    EXPECT_FALSE(numberFrom("1.000,5", ','));
    EXPECT_FALSE(numberFrom("1,2,3", ','));
    EXPECT_EQ(numberFrom(std::string(63, '0') + "7"), 7.0);
    EXPECT_FALSE(numberFrom(std::string(64, '0') + "7")) << "longer than any number of ours";
}

TEST(NumberText, WholeNumbersReachToTheLimitsOfTheirSize) {
    EXPECT_EQ(wholeNumberFrom("9223372036854775807"), std::numeric_limits<std::int64_t>::max());
    EXPECT_EQ(wholeNumberFrom("-9223372036854775808"), std::numeric_limits<std::int64_t>::min());
    EXPECT_EQ(wholeNumberFrom(" +3 "), 3);
    for (const char* text : {"", " ", "9223372036854775808", "3x", "x3", "+-3", "1e3", "3 4"}) {
        EXPECT_FALSE(wholeNumberFrom(text)) << text;
    }
}

TEST(NumberText, FixedTextHasJustSoManyDigitsAndItsSign) {
    EXPECT_EQ(fixedText(1.25, 1), "1.2");
    EXPECT_EQ(fixedText(1.35, 1), "1.4");
    EXPECT_EQ(fixedText(-1.375, 2), "-1.38");
    EXPECT_EQ(fixedText(7.0, 3), "7.000");
    EXPECT_EQ(fixedText(7.6, 0), "8");
    EXPECT_EQ(fixedText(-0.4, 0), "0");
    EXPECT_EQ(fixedText(-0.0, 1), "0.0");
    EXPECT_EQ(fixedText(-10.0, 1), "-10.0");
    EXPECT_EQ(exactText(0.1), "0.1");
    EXPECT_EQ(exactText(-2.0), "-2");
}

TEST(NumberText, TrimsBlanksOfEveryKindAtBothEndsAlone) {
    EXPECT_EQ(trimmed(" \t\r\n\f\va b \t\r\n\f\v"), "a b");
    EXPECT_EQ(trimmed("ab"), "ab");
    EXPECT_EQ(trimmed(" \t"), "");
    EXPECT_EQ(trimmed(""), "");
    EXPECT_EQ(lowerCase("AbZ @[`{\xc3\x84 9"), "abz @[`{\xc3\x84 9");
}

TEST(Error, NoControlCharacterOfAFileReachesATerminal) {
    const Error error{ErrorKind::unusableInput, "a\x1b[2Jb\x7f", "c\td", "e\x01 \xc3\xa4~"};
    EXPECT_EQ(error.sentence(), "c d: a [2Jb ; e  \xc3\xa4~");
    EXPECT_EQ((Error{ErrorKind::unusableInput, "a", "", "b"}).sentence(), "a; b");
    EXPECT_EQ((Error{ErrorKind::unusableInput, "a", "c", ""}).sentence(), "c: a");
}

TEST(Error, FailPutsEachPartInItsPlace) {
    const Result<int> failed = fail(ErrorKind::damagedWater, "what", "where", "what to do");
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().kind, ErrorKind::damagedWater);
    EXPECT_EQ(failed.error().what, "what");
    EXPECT_EQ(failed.error().where, "where");
    EXPECT_EQ(failed.error().whatToDo, "what to do");
    EXPECT_EQ(cancelled().sentence(),
              "stopped before it was done; nothing was changed; start it again when you like");
}

TEST(Progress, TellsNobodyAndNeverStopsByDefault) {
    Progress silent;
    silent.begin("drawing");
    silent.tell(0.5);
    EXPECT_FALSE(silent.stopAsked());
}

TEST(TypedId, IsGivenOnceItIsNotZeroAndOrdersByNumber) {
    using Id = TypedId<struct ThingKind>;
    EXPECT_FALSE(Id().isGiven());
    EXPECT_TRUE(Id(-1).isGiven());
    EXPECT_TRUE(Id(3).isGiven());
    EXPECT_EQ(Id(3).number(), 3);
    EXPECT_LT(Id(2), Id(3));
    EXPECT_EQ(Id(3), Id(3));
}

} // namespace
