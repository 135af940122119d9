// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/refresher.h"

#include <gtest/gtest.h>

#include <QCoreApplication>

namespace {

class RefresherTest : public testing::Test {
protected:
    static void turn() { QCoreApplication::sendPostedEvents(nullptr, QEvent::MetaCall); }

    QWidget panel_;
    int shown_ = 0;
    days::Refresher refresher_{&panel_, [this] { ++shown_; }};
};

TEST_F(RefresherTest, ShowsAPanelOnceATurnHoweverMuchHasChanged) {
    panel_.show();
    for (int time = 1; time <= 3; ++time) {
        for (int change = 0; change < 5; ++change) {
            refresher_.ask();
        }
        EXPECT_EQ(shown_, time - 1) << "not before the turn is over";
        turn();
        EXPECT_EQ(shown_, time);
        turn();
        EXPECT_EQ(shown_, time) << "nothing has changed since";
    }
}

TEST_F(RefresherTest, ShowsAHiddenPanelWhenItIsSeen) {
    refresher_.ask();
    turn();
    EXPECT_EQ(shown_, 0);
    panel_.show();
    EXPECT_EQ(shown_, 1);
    panel_.hide();
    panel_.show();
    EXPECT_EQ(shown_, 1) << "nothing has changed since";
    panel_.hide();
    refresher_.ask();
    panel_.show();
    EXPECT_EQ(shown_, 2) << "at once, not when it has been painted";
    turn();
    EXPECT_EQ(shown_, 2);
}

TEST_F(RefresherTest, ShowsAtOnceWhatMustBeShown) {
    refresher_.finish();
    EXPECT_EQ(shown_, 0) << "nothing has changed";
    refresher_.ask();
    refresher_.finish();
    EXPECT_EQ(shown_, 1);
    panel_.show();
    turn();
    EXPECT_EQ(shown_, 1);
}

} // namespace
