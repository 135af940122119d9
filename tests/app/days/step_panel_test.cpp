// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/step_panel.h"

#include "app/days/step_body.h"
#include "app/days/step_head.h"
#include "tests/app/support/recorded_pages.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QEnterEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

namespace {

using days::StepHead;
using days::StepPanel;

class StepPanelTest : public testing::Test {
protected:
    StepPanelTest() {
        for (QWidget*& body : bodies_) {
            body = new QLabel("body");
        }
        EXPECT_EQ(panel_.addStep("Day", bodies_[0]), 0);
        EXPECT_EQ(panel_.addStep("Wind", bodies_[1]), 1);
        EXPECT_EQ(panel_.addStep("Marks", bodies_[2]), 2);
        heads_ = panel_.findChildren<StepHead*>();
    }
    QList<bool> open() const {
        QList<bool> shown;
        for (const QWidget* body : bodies_) {
            shown << !body->isHidden();
        }
        return shown;
    }
    StepPanel panel_;
    std::array<QWidget*, 3> bodies_{};
    QList<StepHead*> heads_;
};

TEST_F(StepPanelTest, OneStepIsOpenAtATime) {
    QSignalSpy opened(&panel_, &StepPanel::stepOpened);
    EXPECT_EQ(panel_.count(), 3);
    EXPECT_EQ(panel_.openStep(), -1);
    EXPECT_EQ(open(), QList<bool>({false, false, false}));
    panel_.openStep(1);
    EXPECT_EQ(open(), QList<bool>({false, true, false}));
    heads_[2]->click();
    EXPECT_EQ(panel_.openStep(), 2);
    EXPECT_EQ(open(), QList<bool>({false, false, true}));
    EXPECT_TRUE(heads_[2]->isChecked());
    EXPECT_FALSE(heads_[1]->isChecked());
    heads_[2]->click();
    EXPECT_EQ(panel_.openStep(), 2) << "what opens a step never closes it";
    EXPECT_EQ(open(), QList<bool>({false, false, true}));
    EXPECT_TRUE(heads_[2]->isChecked());
    QTest::keyClick(heads_[0], Qt::Key_Return);
    EXPECT_EQ(panel_.openStep(), 0);
    panel_.openStep(3);
    EXPECT_EQ(panel_.openStep(), -1);
    EXPECT_EQ(opened.count(), 4);
    EXPECT_EQ(opened.at(1).at(0).toInt(), 2);
}

TEST_F(StepPanelTest, EachHeadSaysTheStateOfItsOwnStep) {
    panel_.setState(0, "tomorrow");
    panel_.setState(2, "3 marks", true);
    EXPECT_EQ(panel_.stateOf(0), "tomorrow");
    EXPECT_EQ(panel_.stateOf(1), "");
    EXPECT_EQ(panel_.stateOf(2), "3 marks");
    EXPECT_EQ(heads_[0]->accessibleDescription(), "tomorrow");
    EXPECT_EQ(heads_[2]->accessibleDescription(), "out of date · 3 marks");
    panel_.setState(2, "3 marks", false);
    EXPECT_EQ(heads_[2]->accessibleDescription(), "3 marks");
    panel_.setState(2, "4 marks", false);
    EXPECT_EQ(heads_[2]->accessibleDescription(), "4 marks");
    EXPECT_EQ(heads_[1]->text(), "Wind");
    EXPECT_EQ(heads_[1]->shortcut(), QKeySequence("Alt+2"));
}

TEST_F(StepPanelTest, HeadsStayWhereTheyAreWhateverIsOpened) {
    bodies_[1]->setMinimumHeight(2000);
    panel_.resize(400, 500);
    panel_.show();
    QCoreApplication::processEvents();
    QList<QRect> before;
    for (const StepHead* head : heads_) {
        before.append(head->geometry());
    }
    for (StepHead* opened : heads_) {
        QTest::mouseClick(opened, Qt::LeftButton);
        QCoreApplication::processEvents();
        for (qsizetype i = 0; i < heads_.size(); ++i) {
            EXPECT_EQ(heads_[i]->geometry(), before[i]);
        }
    }
}

TEST_F(StepPanelTest, EachStepKeepsHowFarItWasScrolled) {
    for (QWidget* body : bodies_) {
        body->setMinimumHeight(2000);
    }
    panel_.resize(400, 500);
    panel_.show();
    QScrollBar* bar = panel_.findChild<QScrollArea*>("steps")->verticalScrollBar();
    const auto open = [this](int step) {
        panel_.openStep(step);
        QCoreApplication::processEvents();
    };
    open(0);
    bar->setValue(120);
    open(1);
    EXPECT_EQ(bar->value(), 0);
    bar->setValue(300);
    open(0);
    EXPECT_EQ(bar->value(), 120);
    open(1);
    EXPECT_EQ(bar->value(), 300);
}

/// A step whose next key belongs to its list, and one that leaves it to its first control.
class Focused : public testing::Test {
protected:
    Focused() {
        auto* first = new QWidget;
        auto* row = new QVBoxLayout(first);
        for (QWidget*& field : fields_) {
            field = new QLineEdit;
            row->addWidget(field);
        }
        auto* second = new QWidget;
        auto* other = new QVBoxLayout(second);
        for (QWidget*& field : others_) {
            field = new QLineEdit;
            other->addWidget(field);
        }
        second->setProperty(days::keysGoTo, QVariant::fromValue(others_[1]));
        panel_.addStep("First", first);
        panel_.addStep("Second", second);
        panel_.addStep("Nothing to type", new QLabel("words"));
        panel_.show();
        panel_.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&panel_));
        heads_ = panel_.findChildren<StepHead*>();
    }
    StepPanel panel_;
    std::array<QWidget*, 2> fields_{};
    std::array<QWidget*, 2> others_{};
    QList<StepHead*> heads_;
};

TEST_F(Focused, OpeningByHandPutsTheNextKeyWhereItBelongs) {
    heads_[0]->click();
    EXPECT_EQ(QApplication::focusWidget(), fields_[0]);
    heads_[1]->click();
    EXPECT_EQ(QApplication::focusWidget(), others_[1]) << "where the step itself says";
    others_[1]->setEnabled(false);
    heads_[1]->click();
    EXPECT_EQ(QApplication::focusWidget(), others_[0]);
}

TEST_F(Focused, TheKeyOfAStepActsBeforeTheNextKeyIsTyped) {
    fields_[0]->setFocus();
    QTest::keyClick(&panel_, Qt::Key_2, Qt::AltModifier);
    EXPECT_EQ(panel_.openStep(), 1);
    EXPECT_EQ(QApplication::focusWidget(), others_[1]);
    QTest::keyClick(&panel_, Qt::Key_2, Qt::AltModifier);
    EXPECT_EQ(panel_.openStep(), 1) << "and never closes it";
}

TEST_F(Focused, OpeningForTheUserTakesNoKeysFromHim) {
    fields_[0]->setFocus();
    heads_[2]->setFocus();
    panel_.openStep(1);
    EXPECT_EQ(QApplication::focusWidget(), heads_[2]);
    heads_[2]->click();
    EXPECT_EQ(QApplication::focusWidget(), heads_[2]) << "there is nothing to type in";
}

TEST_F(Focused, ArrowsGoFromHeadToHead) {
    heads_[0]->setFocus();
    QTest::keyClick(heads_[0], Qt::Key_Down);
    EXPECT_EQ(QApplication::focusWidget(), heads_[1]);
    QTest::keyClick(heads_[1], Qt::Key_Up);
    EXPECT_EQ(QApplication::focusWidget(), heads_[0]);
}

TEST(StepHeadRead, WritesTitleAndStateTheOldOneMarked) {
    StepHead head("Marks", "Alt+1");
    head.resize(400, 38);
    head.setState("3 marks", true);
    support::RecordedPages pages;
    head.render(&pages);
    EXPECT_EQ(pages.lines(), QStringList({"Marks", "out of date · 3 marks"}));
    head.setState("3 marks", false);
    support::RecordedPages later;
    head.render(&later);
    EXPECT_EQ(later.lines(), QStringList({"Marks", "3 marks"}));
}

TEST(StepHeadRead, KeepsALineForItsStateOnceItHasNeededOne) {
    StepHead head("Marks", "Alt+1");
    head.resize(400, 38);
    head.grab(); // A widget that was never shown is resized with its first picture.
    head.setState("3 marks", false);
    const int one = head.heightForWidth(400);
    head.setState(QString(80, 'x'), false);
    const int two = head.heightForWidth(400);
    EXPECT_GT(two, one + 8) << "below the title where there is no room beside it";
    head.setState("3 marks", false);
    EXPECT_EQ(head.heightForWidth(400), two) << "nothing below it jumps with each value";
    EXPECT_EQ(head.heightForWidth(2000), one);
    head.setTight(true);
    EXPECT_LT(head.heightForWidth(2000), one);
}

TEST(StepHeadRead, GoingOutOfDateMovesNothing) {
    for (int letters = 1; letters < 60; ++letters) {
        StepHead head("Marks", "Alt+1");
        head.resize(400, 38);
        head.grab();
        head.setState(QString(letters, 'x'), false);
        const int before = head.heightForWidth(400);
        head.setState(QString(letters, 'x'), true);
        EXPECT_EQ(head.heightForWidth(400), before) << letters;
    }
}

TEST(StepHeadRead, GrowsOnlyOnceTheHandIsNoLongerAtThePanel) {
    days::StepPanel panel;
    panel.addStep("Marks", new QWidget);
    panel.resize(400, 300);
    panel.show();
    auto& head = *panel.findChild<StepHead*>();
    head.setState("3 marks", false);
    const int one = head.heightForWidth(head.width());
    QEnterEvent comes(QPointF(5, 200), QPointF(5, 200), QPointF(5, 200));
    QCoreApplication::sendEvent(&panel, &comes);
    head.setState(QString(80, 'x'), false);
    EXPECT_EQ(head.heightForWidth(head.width()), one) << "what is pointed at lies still";
    support::RecordedPages pages;
    head.render(&pages);
    ASSERT_EQ(pages.lines().size(), 2);
    EXPECT_EQ(pages.lines()[0], "Marks") << "and neither text runs over the other";
    EXPECT_LT(pages.lines()[1].size(), 60);
    QEvent goes(QEvent::Leave);
    QCoreApplication::sendEvent(&panel, &goes);
    EXPECT_GT(head.heightForWidth(head.width()), one);
}

/// Makes what a step is made of.
class Body : public days::StepBody {
public:
    Body() {
        words_ = addWords();
        addField("Depth", new QLabel("4 m"), "How deep");
        button_ = makeButton("Go", "Ctrl+G", "Goes", [this] { ++pressed_; });
        addRow({button_});
    }
    void say(const QString& words) { setWords(words_, words); }

    QLabel* words_ = nullptr;
    QPushButton* button_ = nullptr;
    int pressed_ = 0;
};

TEST(StepBody, WordsAreHiddenWhileThereAreNoneAndNeverRead) {
    Body body;
    EXPECT_TRUE(body.words_->isHidden());
    body.say("closed water ahead");
    EXPECT_FALSE(body.words_->isHidden());
    EXPECT_EQ(body.words_->text(), "closed water ahead");
    EXPECT_EQ(body.words_->textFormat(), Qt::PlainText);
    body.say({});
    EXPECT_TRUE(body.words_->isHidden());
}

TEST(StepBody, FieldsBearTheirNamesAndButtonsActAndTellTheirKeys) {
    Body body;
    QLabel* field = nullptr;
    QLabel* name = nullptr;
    for (auto* label : body.findChildren<QLabel*>()) {
        (label->text() == "4 m" ? field : label->text() == "Depth" ? name : body.words_) = label;
    }
    ASSERT_TRUE(field && name);
    EXPECT_EQ(field->accessibleName(), "Depth");
    EXPECT_EQ(field->toolTip(), "How deep");
    EXPECT_EQ(name->toolTip(), "How deep");
    body.button_->click();
    EXPECT_EQ(body.pressed_, 1);
    EXPECT_EQ(body.button_->shortcut(), QKeySequence("Ctrl+G"));
    EXPECT_EQ(body.button_->toolTip(), "Goes (Ctrl+G)");
}

} // namespace
