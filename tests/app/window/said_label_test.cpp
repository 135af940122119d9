// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/said_label.h"

#include <gtest/gtest.h>

#include <QTest>

namespace {

using window::SaidLabel;

QString sentenceOf(int words) {
    QStringList parts;
    for (int i = 0; i < words; ++i) {
        parts.append(QStringLiteral("sounding"));
    }
    return parts.join(QLatin1Char(' '));
}

class SaidLabelTest : public testing::Test {
protected:
    void SetUp() override {
        label_.resize(400, 60);
        label_.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&label_));
    }
    QString shown() const { return label_.text().replace(QLatin1Char('\n'), QLatin1Char(' ')); }
    QLabel* opened() { return label_.findChild<QLabel*>(QStringLiteral("wholeSaid")); }
    SaidLabel label_;
};

TEST_F(SaidLabelTest, AShortSentenceStandsInOneLine) {
    label_.say(QStringLiteral("Drawn."));
    EXPECT_EQ(label_.text(), "Drawn.");
    EXPECT_TRUE(label_.isWhole());
}

TEST_F(SaidLabelTest, ALongOneStandsWholeInTwoLinesOfItsWidth) {
    const QString sentence = sentenceOf(9);
    label_.say(sentence);
    EXPECT_TRUE(label_.isWhole());
    EXPECT_EQ(shown(), sentence);
    const QStringList lines = label_.text().split(QLatin1Char('\n'));
    ASSERT_EQ(lines.size(), 2);
    for (const QString& line : lines) {
        EXPECT_LE(label_.fontMetrics().horizontalAdvance(line), label_.width());
    }
}

TEST_F(SaidLabelTest, WhatNeedsMoreIsCutAndOpensWholeOnAClick) {
    const QString sentence = sentenceOf(60);
    label_.say(sentence);
    EXPECT_FALSE(label_.isWhole());
    EXPECT_LT(shown().size(), sentence.size());
    EXPECT_EQ(label_.said(), sentence);
    QTest::mouseClick(&label_, Qt::LeftButton, {}, {20, 30});
    ASSERT_NE(opened(), nullptr);
    EXPECT_EQ(opened()->text(), sentence);
    EXPECT_TRUE(opened()->isVisible());
    opened()->close();
}

TEST_F(SaidLabelTest, AClickOnWhatCanBeReadOpensNothing) {
    label_.say(QStringLiteral("Drawn."));
    QTest::mouseClick(&label_, Qt::LeftButton, {}, {20, 30});
    EXPECT_EQ(opened(), nullptr);
}

TEST_F(SaidLabelTest, AWiderWindowShowsMoreOfIt) {
    const QString sentence = sentenceOf(20);
    label_.say(sentence);
    EXPECT_FALSE(label_.isWhole());
    label_.resize(1200, 60);
    EXPECT_TRUE(label_.isWhole());
    EXPECT_EQ(shown(), sentence);
}

} // namespace
