// SPDX-License-Identifier: GPL-3.0-or-later
// A water without a name lives in a file all the same, from the first thing brought in or typed.
#include "app/edits/change_facts.h"
#include "app/edits/set_plan.h"
#include "app/open_water/open_water.h"
#include "tests/support/desk_bowl.h"

#include <gmock/gmock.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <QTest>

namespace {

using open_water::OpenWater;
using water::Water;

constexpr int longEnough_ms = 60'000;

void setCount(OpenWater& open, int count) {
    edits::setPlan(open, "Set count", [count](marks::Plan& plan) { plan.count = count; });
}

class AnUnnamedWater : public testing::Test {
protected:
    void SetUp() override { listenTo(open_); }
    void listenTo(OpenWater& open) {
        open.keepUnnamedIn(data_);
        QObject::connect(&open, &OpenWater::failed,
                         [this](const base::Error& error) { failures_.push_back(error); });
        QObject::connect(&open, &OpenWater::moved,
                         [this](const QString& from) { moved_.append(from); });
    }
    static Water inFile(const QString& path) {
        base::Progress quiet;
        return store::open(path.toStdString()).value()->load(quiet).value();
    }
    [[nodiscard]] QStringList files() const { return open_.unnamedWaters()->files(); }

    QTemporaryDir folder_;
    const QString data_ = folder_.filePath("data/waters");
    std::vector<base::Error> failures_; // What listens outlives what tells.
    QStringList moved_;
    OpenWater open_;
};

TEST_F(AnUnnamedWater, InWhichNothingWasDoneLeavesNoFile) {
    {
        OpenWater never;
        listenTo(never);
        EXPECT_FALSE(never.isOpen());
    }
    EXPECT_FALSE(QFileInfo::exists(data_));
    EXPECT_FALSE(open_.isUnnamed());
    EXPECT_TRUE(files().empty());
    const auto today = std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
    EXPECT_GE(std::chrono::sys_days(open_.water()->plan.day.day), today);
}

TEST_F(AnUnnamedWater, LivesInAFileFromTheFirstThingOnAndIsThereTheNextDay) {
    {
        OpenWater first;
        listenTo(first);
        setCount(first, 5);
        EXPECT_TRUE(first.isOpen());
        EXPECT_TRUE(first.isUnnamed());
        ASSERT_TRUE(support::layBowl(first));
    }
    ASSERT_EQ(files().size(), 1);
    EXPECT_EQ(moved_, QStringList{QString()}) << "the file was made, once";
    EXPECT_TRUE(failures_.empty());
    ASSERT_TRUE(open_.open(files()[0]));
    EXPECT_TRUE(open_.isUnnamed());
    EXPECT_EQ(open_.water()->plan.count, 5);
    EXPECT_EQ(open_.water()->days.size(), 1U);
    EXPECT_NE(open_.derived().drawn, nullptr);
    open_.jobs().finishAll();
}

TEST_F(AnUnnamedWater, DoesNotTakeTheFileOfAnother) {
    {
        OpenWater one;
        OpenWater two;
        listenTo(one);
        listenTo(two);
        setCount(one, 1);
        setCount(two, 2);
        EXPECT_TRUE(one.finishKeeping());
        EXPECT_TRUE(two.finishKeeping());
        EXPECT_NE(one.path(), two.path());
    }
    ASSERT_EQ(files().size(), 2);
    EXPECT_EQ(inFile(files()[0]).plan.count + inFile(files()[1]).plan.count, 3);
}

TEST_F(AnUnnamedWater, StaysWhereAnotherIsOpenedOrMade) {
    setCount(open_, 7);
    ASSERT_TRUE(open_.create(folder_.filePath("named.gpkg"), "named"));
    EXPECT_FALSE(open_.isUnnamed());
    ASSERT_EQ(files().size(), 1);
    EXPECT_EQ(inFile(files()[0]).plan.count, 7);
    EXPECT_NE(open_.water()->plan.count, 7);
}

TEST_F(AnUnnamedWater, MovesToThePlaceThatItIsGivenAndLeavesNothingBehind) {
    setCount(open_, 7);
    ASSERT_TRUE(support::layBowl(open_));
    ASSERT_TRUE(open_.finishKeeping());
    const QString before = open_.path();
    const QString named = folder_.filePath("Heron Bay.gpkg");
    open_.moveTo(named);
    EXPECT_TRUE(open_.finishKeeping());
    EXPECT_EQ(open_.path(), named);
    EXPECT_FALSE(open_.isUnnamed());
    EXPECT_EQ(moved_, (QStringList{QString(), before}));
    EXPECT_TRUE(QDir(data_).isEmpty()) << "nothing of the old file is left";
    EXPECT_TRUE(inFile(named) == *open_.water());
    setCount(open_, 8);
    EXPECT_TRUE(open_.finishKeeping());
    EXPECT_EQ(inFile(named).plan.count, 8);
}

TEST_F(AnUnnamedWater, IsNotRemovedWhereItCannotMove) {
    setCount(open_, 7);
    ASSERT_TRUE(open_.finishKeeping());
    const QString before = open_.path();
    open_.moveTo(folder_.filePath("no such folder/named.gpkg"));
    EXPECT_TRUE(open_.finishKeeping());
    EXPECT_EQ(failures_.size(), 1U);
    EXPECT_EQ(open_.path(), before);
    EXPECT_EQ(inFile(before).plan.count, 7);
}

TEST_F(AnUnnamedWater, SaysThatItCannotLiveAnywhereAndTriesAgainUntilItCan) {
    QFile inTheWay(folder_.filePath("data"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    inTheWay.close();
    open_.keeper().setRetryInterval(std::chrono::milliseconds(1));
    setCount(open_, 7);
    EXPECT_FALSE(open_.finishKeeping());
    ASSERT_EQ(failures_.size(), 1U);
    EXPECT_EQ(failures_[0].where, data_.toStdString());
    EXPECT_EQ(open_.keeper().unkept().size(), water::allParts.size());
    EXPECT_FALSE(open_.open(folder_.filePath("nowhere.gpkg")));
    EXPECT_EQ(open_.water()->plan.count, 7);
    ASSERT_TRUE(inTheWay.remove());
    EXPECT_TRUE(QTest::qWaitFor([&] { return open_.keeper().unkept().empty(); }, longEnough_ms));
    ASSERT_EQ(files().size(), 1);
    EXPECT_EQ(inFile(files()[0]).plan.count, 7);
}

TEST_F(AnUnnamedWater, CanBeGivenAPlaceWhereItHasNone) {
    QFile inTheWay(folder_.filePath("data"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    inTheWay.close();
    setCount(open_, 7);
    EXPECT_FALSE(open_.finishKeeping());
    const QString named = folder_.filePath("named.gpkg");
    open_.moveTo(named);
    EXPECT_TRUE(open_.finishKeeping());
    EXPECT_EQ(inFile(named).plan.count, 7);
    EXPECT_FALSE(open_.keeper().whyNot());
}

} // namespace
