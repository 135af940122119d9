// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/harmless_text.h"

#include "core/base/error.h"

#include <gtest/gtest.h>

namespace {

using base::harmless;

TEST(HarmlessText, LeavesLettersOfEveryScriptAsTheyAre) {
    for (const char* text :
         {"", "Kiln Hump, 4.2 m", "two\r\nlines\tand a tab",
          "M\u00fcggelsee \u2013 \u201eOst\u201c", "\u05e9\u05dc\u05d5\u05dd \u200f4",
          "\u6e56 \U0001F41F", "e\u0301", "\u00a0"}) {
        EXPECT_EQ(harmless(text), text);
    }
}

TEST(HarmlessText, TurnsNoTerminalAndNoLineRound) {
    EXPECT_EQ(harmless("a\x1b[31mb\x07"), "a [31mb ");
    EXPECT_EQ(harmless(std::string_view("a\0b", 3)), "a b");
    EXPECT_EQ(harmless("a\x7f\u0085\u009b1mb"), "a   1mb");
    EXPECT_EQ(harmless("\u202e2.4 m\u202c, \u2066x\u2069, \u202ay"), "2.4 m, x, y");
    EXPECT_EQ(harmless("\ufeffa\u2028b\ufff9"), "a b");
    EXPECT_EQ(base::Error({base::ErrorKind::unusableInput, "a\rb\u202e", "c\x1b", "d"}).sentence(),
              "c : a b; d");
}

TEST(HarmlessText, IsUtf8WhateverTheBytesWere) {
    const std::string none = "\ufffd";
    EXPECT_EQ(harmless("caf\xe9!"), "caf" + none + "!");
    EXPECT_EQ(harmless("\xc0\xaf"), none + none) << "longer than need be";
    EXPECT_EQ(harmless("\xed\xa0\x80"), none + none + none) << "half of a pair";
    EXPECT_EQ(harmless("\xf4\x90\x80\x80").size(), 4 * none.size()) << "beyond Unicode";
    EXPECT_EQ(harmless("\xe2\x82"), none + none) << "cut off";
    for (int lead = 0; lead < 256; ++lead) {
        for (int next = 0; next < 256; ++next) {
            const std::string bytes{static_cast<char>(lead), static_cast<char>(next)};
            const std::string once = harmless(bytes);
            ASSERT_EQ(harmless(once), once) << lead << " " << next;
        }
    }
}

} // namespace
