// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number_text.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace {

TEST(NumberText, TakesAPlainNumberWithBlanksRoundIt) {
    EXPECT_EQ(base::numberFrom(" 12.5\t"), 12.5);
    EXPECT_EQ(base::numberFrom("+3"), 3.0);
    EXPECT_EQ(base::numberFrom("-0.25"), -0.25);
}

TEST(NumberText, TakesADecimalCommaOnlyWhenAskedTo) {
    EXPECT_EQ(base::numberFrom("12,5", ','), 12.5);
    EXPECT_FALSE(base::numberFrom("12,5"));
    EXPECT_FALSE(base::numberFrom("12.5", ','));
}

TEST(NumberText, RefusesWhatIsNotWhollyANumber) {
    for (const char* text :
         {"", " ", "12m", "1 2", "nan", "inf", "-inf", "--1", "+-1", "0x10", "1e999"}) {
        EXPECT_FALSE(base::numberFrom(text)) << '"' << text << '"';
    }
}

TEST(NumberText, NeverWritesMinusZero) {
    EXPECT_EQ(base::fixedText(-0.004, 2), "0.00");
    EXPECT_EQ(base::fixedText(-0.006, 2), "-0.01");
}

TEST(NumberText, ExactTextReadsBackAsTheSameNumber) {
    const unsigned seed = 20260905;
    std::mt19937_64 random(seed);
    std::uniform_real_distribution<double> exponent(-30.0, 30.0);
    for (int i = 0; i < 10000; ++i) {
        const double value = (i % 2 == 0 ? 1.0 : -1.0) * std::pow(10.0, exponent(random));
        EXPECT_EQ(base::numberFrom(base::exactText(value)), value) << "seed " << seed;
    }
}

TEST(NumberText, WholeNumbersHaveNoFraction) {
    EXPECT_EQ(base::wholeNumberFrom(" 42 "), 42);
    EXPECT_FALSE(base::wholeNumberFrom("42.0"));
    EXPECT_FALSE(base::wholeNumberFrom("99999999999999999999"));
}

} // namespace
