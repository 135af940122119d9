// SPDX-License-Identifier: GPL-3.0-or-later
// A slip that is typed line by line: what each key does, and that nothing is written half.
#include "app/widgets/entry_form.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace {

using widgets::EntryForm;

class EntryFormKeys : public testing::Test {
protected:
    EntryFormKeys() {
        form_.begin("A stay");
        form_.resize(360, 200);
    }
    void press(int line, Qt::Key key, Qt::KeyboardModifiers with = {}) {
        QTest::keyClick(&form_.line(line), key, with);
    }
    bool says(const QString& words) {
        for (const QLabel* label : form_.findChildren<QLabel*>()) {
            if (!label->isHidden() && label->text() == words) {
                return true;
            }
        }
        return false;
    }
    EntryForm form_{
        {{"Place", "", "", "a name"}, {"Day", "", "", ""}, {"Rods", "", "not known", ""}},
        "Write down"};
    QSignalSpy written_{&form_, &EntryForm::writeAsked};
    QSignalSpy left_{&form_, &EntryForm::left};
};

TEST_F(EntryFormKeys, ReturnOnTheLastLineWritesAndOnOthersDoesNot) {
    press(0, Qt::Key_Return);
    press(1, Qt::Key_Enter);
    EXPECT_EQ(written_.count(), 0);
    press(2, Qt::Key_Return);
    EXPECT_EQ(written_.count(), 1);
    press(0, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(written_.count(), 2);
}

TEST_F(EntryFormKeys, AWrongLineHoldsAllOfItAndSaysWhy) {
    form_.line(0).setRight(false);
    press(2, Qt::Key_Return);
    press(1, Qt::Key_Return, Qt::ControlModifier);
    form_.findChild<QPushButton*>()->click();
    EXPECT_EQ(written_.count(), 0);
    EXPECT_TRUE(form_.line(0).property("wrong").toBool());
    EXPECT_TRUE(says("a name"));
    QTest::keyClicks(&form_.line(0), "x");
    EXPECT_FALSE(form_.line(0).property("wrong").toBool()) << "it is being mended";
    EXPECT_FALSE(says("a name"));
    form_.line(0).setRight(true);
    press(2, Qt::Key_Return);
    EXPECT_EQ(written_.count(), 1);
}

TEST_F(EntryFormKeys, WhatIsOfferedIsTakenByItsKeyAlone) {
    form_.line(2).offer("3");
    EXPECT_EQ(form_.line(2).placeholderText(), "= 3");
    EXPECT_EQ(form_.text(2), "") << "offered is not said";
    press(2, Qt::Key_Return);
    EXPECT_EQ(form_.text(2), "");
    QTest::keyClicks(&form_.line(2), "=");
    EXPECT_EQ(form_.text(2), "3");
    QTest::keyClicks(&form_.line(0), "=");
    EXPECT_EQ(form_.text(0), "=") << "where nothing is offered it is a letter";
    form_.line(2).offer({});
    EXPECT_EQ(form_.line(2).placeholderText(), "not known");
    form_.begin("Another");
    EXPECT_EQ(form_.text(2), "");
    EXPECT_EQ(form_.line(2).offered(), "");
}

TEST_F(EntryFormKeys, EscapeLeavesItFromEveryLine) {
    for (const int line : {0, 1, 2}) {
        press(line, Qt::Key_Escape);
        EXPECT_EQ(left_.count(), line + 1);
    }
    EXPECT_EQ(written_.count(), 0);
}

TEST_F(EntryFormKeys, AHiddenLineIsPassedOver) {
    form_.line(1).setRight(false);
    form_.setFieldShown(1, false);
    form_.setFieldShown(2, false);
    press(0, Qt::Key_Return);
    EXPECT_EQ(written_.count(), 1);
}

TEST_F(EntryFormKeys, TheBeginningOfAKnownWordIsCompletedAndReturnMeansTheWhole) {
    form_.line(0).complete({"pike", "perch"});
    form_.show();
    form_.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&form_)); // words are completed under the hand alone
    form_.line(0).setFocus();
    QTest::keyClicks(&form_.line(0), "pe");
    EXPECT_EQ(form_.text(0), "perch");
    press(0, Qt::Key_Return);
    EXPECT_EQ(form_.text(0), "perch");
    form_.line(0).clear();
    form_.line(0).setFocus(); // Return had gone on
    QTest::keyClicks(&form_.line(0), "p");
    EXPECT_EQ(form_.text(0), "pike") << "the likeliest first";
    press(0, Qt::Key_Delete);
    EXPECT_EQ(form_.text(0), "p") << "it need not be taken";
}

} // namespace
