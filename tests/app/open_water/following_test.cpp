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

} // namespace
