// SPDX-License-Identifier: GPL-3.0-or-later
// A water that another program has: looked at, followed, and taken over once it is let go.
#include "app/edits/change_settings.h"
#include "app/edits/set_plan.h"
#include "app/open_water/open_water.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <QTest>

namespace {

using open_water::OpenWater;

class Following : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(first_->create(path_, "small"));
        ASSERT_TRUE(first_->finishKeeping());
        second_.follower().setInterval(std::chrono::milliseconds(20));
        ASSERT_TRUE(second_.open(path_));
    }
    static void setCount(OpenWater& open, int count) {
        edits::setPlan(open, "Set", [count](marks::Plan& plan) { plan.count = count; });
    }

    QTemporaryDir folder_;
    const QString path_ = folder_.filePath("small.gpkg");
    std::unique_ptr<OpenWater> first_ = std::make_unique<OpenWater>();
    OpenWater second_;
};

TEST_F(Following, ASecondOpeningCanOnlyLookAndKnowsWhoHasTheWater) {
    EXPECT_FALSE(first_->isReadOnly());
    EXPECT_FALSE(first_->owner());
    EXPECT_TRUE(second_.isReadOnly());
    ASSERT_TRUE(second_.owner());
    EXPECT_FALSE(second_.owner()->text().empty());
}

TEST_F(Following, ShowsWhatTheFirstSavesAsItComes) {
    for (const int count : {7, 9}) {
        setCount(*first_, count);
        ASSERT_TRUE(first_->finishKeeping());
        EXPECT_TRUE(QTest::qWaitFor([&] { return second_.water()->plan.count == count; }, 20000));
    }
    EXPECT_TRUE(second_.isReadOnly());
}

TEST_F(Following, MayChangeTheWaterOnceTheFirstHasLetItGo) {
    setCount(*first_, 7);
    ASSERT_TRUE(first_->finishKeeping());
    first_.reset();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !second_.isReadOnly(); }, 20000));
    EXPECT_EQ(second_.water()->plan.count, 7);
    setCount(second_, 11);
    EXPECT_TRUE(second_.finishKeeping());
}

TEST_F(Following, DoesNotDropWhatWasTypedHereAndCannotBeKept) {
    setCount(second_, 5);
    EXPECT_FALSE(second_.finishKeeping());
    setCount(*first_, 7);
    ASSERT_TRUE(first_->finishKeeping());
    bool isOpenedAgain = false;
    QObject::connect(&second_, &OpenWater::opened, [&] { isOpenedAgain = true; });
    EXPECT_TRUE(second_.keeper().hasChanged().value());
    second_.follower().look();
    second_.opening().finishAll();
    EXPECT_FALSE(isOpenedAgain);
    EXPECT_EQ(second_.water()->plan.count, 5);
}

TEST_F(Following, SaysOnceThatTheFileIsGoneAndAsksLessAndLessOften) {
    int said = 0;
    QObject::connect(&second_, &OpenWater::failed, [&] { ++said; });
    first_.reset();
    ASSERT_TRUE(QFile::rename(path_, folder_.filePath("moved.gpkg")));
    const auto usual = second_.follower().wait();
    for (int time = 0; time < 30; ++time) {
        second_.follower().look();
        second_.opening().finishAll();
    }
    EXPECT_EQ(said, 1);
    EXPECT_GE(second_.follower().wait(), 100 * usual);
    EXPECT_LE(second_.follower().wait(), std::chrono::minutes(2));
    ASSERT_TRUE(QFile::rename(folder_.filePath("moved.gpkg"), path_));
    ASSERT_TRUE(QTest::qWaitFor([&] {
        second_.follower().look();
        return !second_.isReadOnly();
    }));
    EXPECT_EQ(second_.follower().wait(), usual);
    EXPECT_EQ(said, 1);
}

TEST_F(Following, SaysOnceThatWhatWasSavedCannotBeOpened) {
    setCount(*first_, 7);
    ASSERT_TRUE(first_->finishKeeping());
    int said = 0;
    QObject::connect(&second_, &OpenWater::failed, [&] { ++said; });
    const auto usual = second_.follower().wait();
    const base::Error broken{base::ErrorKind::unusableInput, "the file is damaged", "", ""};
    for (int time = 0; time < 5; ++time) {
        second_.follower().takeFailure(broken);
    }
    EXPECT_EQ(said, 1);
    EXPECT_GE(second_.follower().wait(), 16 * usual);
    second_.follower().look(); // it can be read again
    ASSERT_TRUE(QTest::qWaitFor([&] { return second_.water()->plan.count == 7; }, 20000));
    EXPECT_EQ(second_.follower().wait(), usual);
}

} // namespace
