// SPDX-License-Identifier: GPL-3.0-or-later
// What is kept, being kept, and not kept and why; tried again, said once, and never lost unasked.
#include "app/edits/set_house_rules.h"
#include "app/edits/set_plan.h"
#include "app/open_water/open_water.h"
#include "core/store/connection.h"
#include "tests/support/desk_bowl.h"
#include "tests/support/failing_disk.h"

#include <gmock/gmock.h>

#include <QFileInfo>
#include <QTemporaryDir>
#include <QTest>

namespace {

using base::ErrorKind;
using open_water::OpenWater;
using support::FailingDisk;
using water::Part;
using water::Water;

constexpr int longEnough_ms = 60'000;

void setCount(OpenWater& open, int count) {
    edits::setPlan(open, "Set count", [count](marks::Plan& plan) { plan.count = count; });
}

void setRodLimit(OpenWater& open, int rods) {
    logbook::HouseRules rules;
    rules.rodLimit = rods;
    edits::setHouseRules(open, rules);
}

class Keeping : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(path_, "small"));
        open_.keeper().setRetryInterval(std::chrono::hours(1)); // Nothing by itself, unless asked.
        QObject::connect(&open_, &OpenWater::failed,
                         [this](const base::Error& error) { failures_.push_back(error); });
        QObject::connect(&open_, &OpenWater::moved,
                         [this](const QString& from) { moved_.append(from); });
    }
    static Water inFile(const QString& path) {
        base::Progress quiet;
        return store::open(path.toStdString()).value()->load(quiet).value();
    }
    /// A count that the disk refused.
    void setCountOnAFullDisk(int count) {
        disk_.failAfter(0, FailingDisk::Way::isFull);
        setCount(open_, count);
        EXPECT_FALSE(open_.finishKeeping());
    }

    FailingDisk disk_;
    QTemporaryDir folder_;
    const QString path_ = folder_.filePath("small.gpkg");
    const QString other_ = folder_.filePath("other.gpkg");
    std::vector<base::Error> failures_; // What listens outlives what tells.
    QStringList moved_;
    OpenWater open_;
};

TEST_F(Keeping, KnowsWhatIsBeingKeptAndThatItIsKept) {
    EXPECT_TRUE(open_.keeper().unkept().empty());
    setCount(open_, 5);
    EXPECT_EQ(open_.keeper().unkept(), std::set{Part::plan}) << "until it is known to be there";
    EXPECT_TRUE(open_.keeper().isKeeping());
    setRodLimit(open_, 2);
    EXPECT_EQ(open_.keeper().unkept(), (std::set{Part::plan, Part::houseRules}));
    EXPECT_TRUE(open_.finishKeeping());
    EXPECT_TRUE(open_.keeper().unkept().empty());
    EXPECT_FALSE(open_.keeper().isKeeping());
    EXPECT_FALSE(open_.keeper().whyNot());
    EXPECT_EQ(inFile(path_).plan.count, 5);
    EXPECT_EQ(inFile(path_).houseRules.rodLimit, 2);
}

TEST_F(Keeping, ForgetsNothingThatFailedAndKeepsItWithTheNext) {
    setCountOnAFullDisk(5);
    EXPECT_EQ(open_.keeper().unkept(), std::set{Part::plan});
    ASSERT_TRUE(open_.keeper().whyNot());
    EXPECT_EQ(open_.keeper().whyNot()->kind, ErrorKind::unwritableOutput);
    EXPECT_EQ(open_.keeper().whyNot()->where, path_.toStdString());
    disk_.heal();
    setRodLimit(open_, 2);
    EXPECT_TRUE(open_.finishKeeping());
    EXPECT_FALSE(open_.keeper().whyNot());
    EXPECT_EQ(inFile(path_).houseRules.rodLimit, 2);
    EXPECT_EQ(inFile(path_).plan.count, 5) << "what could not be kept before";
}

TEST_F(Keeping, TriesAgainByItselfUntilItWorks) {
    open_.keeper().setRetryInterval(std::chrono::milliseconds(1));
    setCountOnAFullDisk(5);
    int tries = 0;
    const auto counted =
        QObject::connect(&open_.keeper(), &open_water::Keeper::changed, [&tries] { ++tries; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return tries >= 3; }, longEnough_ms));
    QObject::disconnect(counted);
    EXPECT_EQ(failures_.size(), 1U) << "said once, not with each try";
    disk_.heal();
    EXPECT_TRUE(QTest::qWaitFor([&] { return open_.keeper().unkept().empty(); }, longEnough_ms));
    EXPECT_FALSE(open_.keeper().whyNot());
    EXPECT_EQ(inFile(path_).plan.count, 5);
    setCountOnAFullDisk(6);
    EXPECT_EQ(failures_.size(), 2U) << "a new misfortune is news";
    disk_.heal();
}

TEST_F(Keeping, KeepsTheLastOfManyEditsThatCameWhileItFailed) {
    disk_.failAfter(0, FailingDisk::Way::isBroken);
    for (int count = 1; count <= 20; ++count) {
        setCount(open_, count);
        setRodLimit(open_, 1 + count % 4);
    }
    EXPECT_FALSE(open_.finishKeeping());
    EXPECT_EQ(failures_.size(), 1U);
    disk_.heal();
    EXPECT_TRUE(open_.finishKeeping()) << "asked to finish, it tries once more";
    EXPECT_EQ(inFile(path_).plan.count, 20);
    EXPECT_EQ(inFile(path_).houseRules.rodLimit, 1);
}

TEST_F(Keeping, LetsNoWaterGoThatIsNotKept) {
    {
        OpenWater making;
        ASSERT_TRUE(making.create(other_, "other"));
    }
    setCountOnAFullDisk(5);
    const auto refused = open_.open(other_);
    ASSERT_FALSE(refused.has_value());
    EXPECT_THAT(refused.error().what, testing::HasSubstr("not kept"));
    EXPECT_EQ(open_.path(), path_);
    EXPECT_EQ(open_.water()->plan.count, 5);
    open_.startOpening(other_);
    open_.opening().finishAll();
    EXPECT_EQ(open_.path(), path_);
    EXPECT_EQ(failures_.size(), 2U);
    open_.letUnkeptGo();
    setCount(open_, 6);
    EXPECT_FALSE(open_.open(other_).has_value()) << "that was said of what there was before";
    open_.letUnkeptGo();
    EXPECT_TRUE(open_.open(other_).has_value());
    EXPECT_TRUE(open_.keeper().unkept().empty()) << "nothing of the one before";
    EXPECT_FALSE(open_.keeper().whyNot());
    disk_.heal();
    setCount(open_, 9);
    EXPECT_TRUE(open_.finishKeeping());
    EXPECT_EQ(inFile(other_).plan.count, 9);
    EXPECT_NE(inFile(path_).plan.count, 9);
}

TEST_F(Keeping, InAnotherPlaceHoldsAllAndLeavesTheOldFileAsItWasLastKept) {
    setCount(open_, 4);
    ASSERT_TRUE(open_.finishKeeping());
    setCountOnAFullDisk(5);
    open_.keeper().setRetryInterval(std::chrono::hours(1));
    disk_.heal();
    open_.moveTo(other_);
    EXPECT_TRUE(open_.finishKeeping());
    EXPECT_EQ(open_.path(), other_);
    EXPECT_EQ(moved_, QStringList{path_});
    EXPECT_EQ(inFile(other_).plan.count, 5);
    EXPECT_EQ(inFile(other_).name, "small");
    setCount(open_, 6);
    EXPECT_TRUE(open_.finishKeeping());
    EXPECT_EQ(inFile(other_).plan.count, 6);
    EXPECT_TRUE(QFileInfo::exists(path_)) << "a file with a name is the user's";
}

TEST_F(Keeping, ThatCannotMoveGoesOnWhereItWas) {
    QFile(path_).copy(other_);
    open_.moveTo(other_);
    EXPECT_TRUE(open_.finishKeeping());
    ASSERT_EQ(failures_.size(), 1U) << "never over a file that is there";
    EXPECT_EQ(open_.path(), path_);
    QFile::remove(other_);
    disk_.failAfter(0, FailingDisk::Way::isFull);
    open_.moveTo(other_);
    setCount(open_, 7);
    EXPECT_FALSE(open_.finishKeeping());
    disk_.heal();
    EXPECT_FALSE(QFileInfo::exists(other_)) << "no half of a water is left";
    EXPECT_TRUE(open_.finishKeeping());
    EXPECT_EQ(open_.path(), path_);
    EXPECT_EQ(inFile(path_).plan.count, 7);
    EXPECT_TRUE(moved_.empty());
}

TEST_F(Keeping, LosesNoEditMadeWhileTheWaterMoves) {
    setRodLimit(open_, 3);
    open_.moveTo(other_);
    setCount(open_, 8);
    setRodLimit(open_, 2);
    EXPECT_TRUE(open_.finishKeeping());
    EXPECT_EQ(open_.path(), other_);
    EXPECT_EQ(inFile(other_).plan.count, 8);
    EXPECT_EQ(inFile(other_).houseRules.rodLimit, 2);
}

TEST_F(Keeping, KeepsTheDrawingOnceTheDiskHasRoomAgain) {
    disk_.failAfter(0, FailingDisk::Way::isFull);
    ASSERT_TRUE(support::layBowl(open_));
    EXPECT_FALSE(open_.finishKeeping());
    disk_.heal();
    EXPECT_TRUE(open_.finishKeeping());
    base::Progress quiet;
    const auto store = store::open(path_.toStdString()).value();
    EXPECT_EQ(store->load(quiet).value().days.size(), 1U);
    const auto kept = store->loadDrawing(*open_.derived().outline).value();
    ASSERT_TRUE(kept.has_value());
    EXPECT_EQ(kept->stamp, open_.derived().stamps.at(water::Step::draw));
}

TEST(KeepingWithoutAFile, SaysThatTheFileIsGoneAndTakesAnotherPlace) {
    QTemporaryDir folder;
    const QString path = folder.filePath("gone.gpkg");
    OpenWater open;
    ASSERT_TRUE(open.create(path, "gone"));
    open.keeper().setRetryInterval(std::chrono::hours(1));
    ASSERT_TRUE(QFile::rename(path, folder.filePath("elsewhere.gpkg")));
    setCount(open, 5);
    EXPECT_FALSE(open.finishKeeping()) << "what is written into a file without a name is lost";
    EXPECT_TRUE(open.keeper().whyNot());
    open.moveTo(folder.filePath("new.gpkg"));
    EXPECT_TRUE(open.finishKeeping());
    base::Progress quiet;
    EXPECT_EQ(store::open(folder.filePath("new.gpkg").toStdString())
                  .value()
                  ->load(quiet)
                  .value()
                  .plan.count,
              5);
}

} // namespace
