// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/amount_field.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

namespace {

using widgets::AmountField;

/// A field in a window, beside another that can be gone to; only whole numbers are right.
class AmountFieldTest : public testing::Test {
protected:
    explicit AmountFieldTest(const QString& whenEmpty = {})
        : field_([](const QString& text) { return text.toInt() > 0; }, whenEmpty, &window_),
          other_(&window_) {
        field_.showAmount("7");
    }
    void SetUp() override {
        window_.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
        field_.setFocus();
        field_.selectAll();
        ASSERT_TRUE(field_.hasFocus());
    }
    void type(const QString& text) {
        field_.selectAll();
        QTest::keyClick(&field_, Qt::Key_Delete);
        QTest::keyClicks(&field_, text);
    }
    void enter(const QString& text) {
        type(text);
        QTest::keyClick(&field_, Qt::Key_Return);
    }

    QWidget window_;
    AmountField field_;
    QLineEdit other_;
    QSignalSpy entered_{&field_, &AmountField::entered};
    QSignalSpy wrong_{&field_, &AmountField::wrongChanged};
};

class FieldThatMayBeEmpty : public AmountFieldTest {
protected:
    FieldThatMayBeEmpty() : AmountFieldTest("not known") {}
};

TEST_F(AmountFieldTest, TellsOnceWhatWasTypedWithoutBlanksAtItsEnds) {
    enter("  12 ");
    ASSERT_EQ(entered_.count(), 1);
    EXPECT_EQ(entered_.at(0).at(0).toString(), "12");
    QTest::keyClick(&field_, Qt::Key_Return);
    other_.setFocus();
    EXPECT_EQ(entered_.count(), 1) << "nothing else was typed";
    EXPECT_FALSE(field_.isWrong());
}

TEST_F(AmountFieldTest, TellsNobodyOfWhatStoodThereBefore) {
    enter("7");
    EXPECT_EQ(entered_.count(), 0);
    EXPECT_FALSE(field_.isWrong());
    field_.showAmount("8"); // No longer being typed in.
    EXPECT_EQ(field_.text(), "8");
}

TEST_F(AmountFieldTest, WrongTextStaysMarkedAndIsToldToNobody) {
    enter("many");
    EXPECT_EQ(entered_.count(), 0);
    EXPECT_TRUE(field_.isWrong());
    EXPECT_TRUE(field_.property("wrong").toBool());
    EXPECT_EQ(field_.text(), "many");
    ASSERT_EQ(wrong_.count(), 1);
    EXPECT_TRUE(wrong_.at(0).at(0).toBool());
    field_.showAmount("9");
    EXPECT_EQ(field_.text(), "many") << "what is being mended is left alone";
}

TEST_F(AmountFieldTest, TypingOnLiftsTheMark) {
    enter("many");
    QTest::keyClicks(&field_, "x");
    EXPECT_FALSE(field_.isWrong());
    EXPECT_FALSE(field_.property("wrong").toBool());
    ASSERT_EQ(wrong_.count(), 2);
    EXPECT_FALSE(wrong_.at(1).at(0).toBool());
}

TEST_F(AmountFieldTest, EscapeBringsBackWhatWasShown) {
    type("12");
    QTest::keyClick(&field_, Qt::Key_Escape);
    EXPECT_EQ(field_.text(), "7");
    enter("many");
    QTest::keyClick(&field_, Qt::Key_Escape);
    EXPECT_EQ(field_.text(), "7");
    EXPECT_FALSE(field_.isWrong());
    other_.setFocus();
    EXPECT_EQ(entered_.count(), 0);
}

TEST_F(AmountFieldTest, EscapeGoesBackToWhatWasEnteredLast) {
    enter("12");
    type("13");
    QTest::keyClick(&field_, Qt::Key_Escape);
    EXPECT_EQ(field_.text(), "12");
}

TEST_F(AmountFieldTest, IsLeftAloneWhileItIsTypedInAndShowsOtherwise) {
    field_.showAmount("8");
    EXPECT_EQ(field_.text(), "8") << "in hand, but nothing typed";
    type("1");
    field_.showAmount("9");
    EXPECT_EQ(field_.text(), "1");
    field_.setModified(false);
    field_.showAmount("9");
    EXPECT_EQ(field_.text(), "9");
    EXPECT_EQ(field_.cursorPosition(), 0) << "its beginning is what is seen";
}

TEST_F(AmountFieldTest, MayNotBeLeftEmpty) {
    enter("");
    EXPECT_TRUE(field_.isWrong());
    EXPECT_EQ(entered_.count(), 0);
}

TEST_F(FieldThatMayBeEmpty, TellsThatItWasEmptiedAndSaysWhatThatMeans) {
    EXPECT_EQ(field_.placeholderText(), "not known");
    enter("");
    EXPECT_FALSE(field_.isWrong());
    ASSERT_EQ(entered_.count(), 1);
    EXPECT_EQ(entered_.at(0).at(0).toString(), "");
    enter("many");
    EXPECT_TRUE(field_.isWrong());
}

} // namespace
