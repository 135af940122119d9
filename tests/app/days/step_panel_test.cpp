// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/step_panel.h"

#include "app/days/step_body.h"
#include "app/days/step_head.h"
#include "tests/app/support/recorded_pages.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

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
    EXPECT_EQ(panel_.openStep(), -1);
    EXPECT_EQ(open(), QList<bool>({false, false, false}));
    QTest::keyClick(heads_[0], Qt::Key_Return);
    EXPECT_EQ(panel_.openStep(), 0);
    panel_.openStep(3);
    EXPECT_EQ(panel_.openStep(), -1);
    EXPECT_EQ(opened.count(), 3);
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
    head.setState(QString(80, 'x'), false);
    EXPECT_EQ(head.heightForWidth(400), 38 + 18) << "below the title where there is no room";
    EXPECT_EQ(head.heightForWidth(2000), 38);
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
