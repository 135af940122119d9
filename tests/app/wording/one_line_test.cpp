// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/one_line.h"

#include <gtest/gtest.h>

#include <random>

namespace {

using wording::oneLine;

TEST(OneLine, LeavesAnOrdinaryNameAsItIs) {
    for (const QString name : {"Skarrow Water", "Étang du Nord", "بحيرة ناصر", "湖", ""}) {
        EXPECT_EQ(oneLine(name), name);
    }
}

TEST(OneLine, PutsBreaksAndControlCharactersInBlanks) {
    EXPECT_EQ(oneLine(QString("Owl\nPoint\t\r\n east")), "Owl Point east");
    EXPECT_EQ(oneLine(QString::fromUtf8("Owl\u2028Point\u2029\x07!")), "Owl Point !");
    EXPECT_EQ(oneLine(std::string("\n \n")), "");
}

TEST(OneLine, LeavesOutWhatWouldTurnWhatStandsBesideIt) {
    EXPECT_EQ(oneLine(QString::fromUtf8("\u202eretaW\u202c \u2067x\u2069")), "retaW x");
}

TEST(OneLine, CutsWhatIsLongAndSaysSo) {
    EXPECT_EQ(oneLine(QString(200, 'a'), 10), QString(9, 'a') + QChar(0x2026));
    EXPECT_EQ(oneLine(QString(200, 'a')).size(), 80);
    EXPECT_EQ(oneLine(QString(80, 'a')), QString(80, 'a'));
}

TEST(OneLine, WhateverTheNameIsOneLineOfItsLengthAtMost) {
    std::mt19937 chance(20261128);
    for (int turn = 0; turn < 500; ++turn) {
        std::string name; // also of bytes that are no letters
        for (auto i = chance() % 300; i > 0; --i) {
            name += turn % 2 == 0 ? static_cast<char>(chance() % 256)
                                  : "\xE2\x80\xAE\n Owl"[chance() % 9];
        }
        const QString line = oneLine(name, 40);
        EXPECT_LE(line.size(), 40);
        for (const QChar letter : line) {
            EXPECT_NE(letter.category(), QChar::Other_Control) << "turn " << turn;
            EXPECT_FALSE(letter >= QChar(0x202A) && letter <= QChar(0x202E)) << "turn " << turn;
        }
        EXPECT_EQ(oneLine(line, 40), line) << "once more changes nothing";
    }
}

} // namespace
