// SPDX-License-Identifier: GPL-3.0-or-later
// The one water that is open, and its file: opening, making and closing; keeping; being told.
#include "app/open_water/open_water.h"

#include "app/edits/add_survey_day.h"
#include "app/edits/change_facts.h"
#include "app/edits/set_house_rules.h"
#include "app/edits/set_plan.h"
#include "app/edits/set_shoreline.h"
#include "core/store/connection.h"
#include "tests/support/desk_bowl.h"
#include "tests/support/failing_disk.h"
#include "tests/support/full_water.h"

#include <gmock/gmock.h>

#include <QTemporaryDir>

#include <chrono>

namespace {

using base::ErrorKind;
using open_water::OpenWater;
using support::FailingDisk;
using water::Part;
using water::Step;
using water::Water;

base::Progress quiet;

Water loaded(const QString& path) {
    return store::open(path.toStdString()).value()->load(quiet).value();
}

void setCount(OpenWater& open, int count) {
    edits::setPlan(open, "Set count", [count](marks::Plan& plan) { plan.count = count; });
}

class AnOpenWater : public testing::Test {
protected:
    void SetUp() override { listenTo(open_); }
    void listenTo(OpenWater& open) {
        QObject::connect(&open, &OpenWater::opened, [this] { ++opened_; });
        QObject::connect(&open, &OpenWater::failed,
                         [this](const base::Error& error) { failures_.push_back(error); });
    }
    /// A file that holds this water.
    QString file(const char* name, const Water& water) {
        QString path = folder_.filePath(name);
        auto store = store::create(path.toStdString()).value();
        EXPECT_TRUE(store->save(water, water::allParts, quiet).has_value());
        return path;
    }

    QTemporaryDir folder_;
    int opened_ = 0;
    std::vector<base::Error> failures_;
    OpenWater open_;
    const QString path_ = folder_.filePath("small.gpkg");
};

TEST_F(AnOpenWater, IsNoneAtFirst) {
    EXPECT_FALSE(open_.isOpen());
    EXPECT_FALSE(open_.isReadOnly());
    EXPECT_EQ(open_.path(), "");
    ASSERT_NE(open_.water(), nullptr);
    EXPECT_TRUE(*open_.water() == Water());
    open_.deriveUpTo(Step::sections);
    open_.drawAfresh();
    EXPECT_FALSE(open_.jobs().isBusy()) << "there is nothing to draw";
}

TEST_F(AnOpenWater, ThatIsNewLiesInItsFileUnderItsName) {
    ASSERT_TRUE(open_.create(path_, "Skarrow Wåter"));
    EXPECT_EQ(opened_, 1);
    EXPECT_TRUE(open_.isOpen());
    EXPECT_FALSE(open_.isReadOnly());
    EXPECT_EQ(open_.path(), path_);
    EXPECT_EQ(open_.water()->name, "Skarrow Wåter");
    EXPECT_EQ(loaded(path_).name, "Skarrow Wåter");
    EXPECT_FALSE(open_.jobs().isBusy());
    EXPECT_TRUE(failures_.empty());
}

TEST_F(AnOpenWater, StaysOpenAsItIsWhereAnotherCannotBe) {
    ASSERT_TRUE(open_.create(path_, "first"));
    setCount(open_, 5);
    const auto before = open_.water();
    const auto missing = open_.open(folder_.filePath("nowhere.gpkg"));
    ASSERT_FALSE(missing.has_value());
    EXPECT_EQ(missing.error().kind, ErrorKind::unusableInput);
    const auto there = open_.create(path_, "second");
    ASSERT_FALSE(there.has_value());
    EXPECT_EQ(there.error().kind, ErrorKind::unwritableOutput);
    Water damaged;
    damaged.name = "damaged";
    damaged.leadLine.edit().resize(1);
    const QString path = file("damaged.gpkg", damaged);
    {
        auto connection =
            store::Connection::open(path.toStdString(), store::Connection::Access::existing)
                .value();
        connection->execute("UPDATE settings SET value=x'00'");
    }
    const auto broken = open_.open(path);
    ASSERT_FALSE(broken.has_value());
    EXPECT_EQ(broken.error().kind, ErrorKind::damagedWater);
    EXPECT_EQ(opened_, 1);
    EXPECT_EQ(open_.path(), path_);
    EXPECT_EQ(open_.water(), before);
    EXPECT_EQ(open_.undoStack().count(), 1);
}

TEST_F(AnOpenWater, IsClosedWithAllItsEditsKeptWhenAnotherIsOpened) {
    Water second;
    second.name = "second";
    const QString other = file("second.gpkg", second);
    ASSERT_TRUE(open_.create(path_, "first"));
    for (int count = 1; count <= 20; ++count) {
        setCount(open_, count);
    }
    ASSERT_TRUE(open_.open(other));
    EXPECT_EQ(loaded(path_).plan.count, 20);
    EXPECT_EQ(opened_, 2);
    EXPECT_EQ(open_.path(), other);
    EXPECT_EQ(open_.water()->name, "second");
    EXPECT_EQ(open_.undoStack().count(), 0);
    {
        OpenWater closing;
        ASSERT_TRUE(closing.open(path_));
        setCount(closing, 33);
    }
    EXPECT_EQ(loaded(path_).plan.count, 33) << "kept when the program ends";
}

TEST_F(AnOpenWater, TakesNothingOfTheOneBeforeAlong) {
    ASSERT_TRUE(open_.create(path_, "bowl"));
    ASSERT_TRUE(support::layBowl(open_));
    open_.planTomorrow();
    open_.jobs().finishAll();
    ASSERT_NE(open_.planned(), nullptr);
    ASSERT_TRUE(open_.isPlanCurrent());
    ASSERT_TRUE(open_.create(folder_.filePath("second.gpkg"), "second"));
    EXPECT_EQ(open_.planned(), nullptr);
    EXPECT_FALSE(open_.isPlanCurrent());
    EXPECT_EQ(open_.derived().drawn, nullptr);
    EXPECT_EQ(open_.derived().sections, nullptr);
    // The same water in another file: nothing is remembered of it but what lies in the file.
    ASSERT_TRUE(support::layBowl(open_));
    EXPECT_NE(open_.derived().drawn, nullptr);
}

TEST_F(AnOpenWater, PlansForADayToComeAndKeepsOneThatIsStillToCome) {
    using std::chrono::days;
    using std::chrono::sys_days;
    Water water;
    water.plan.day.day = units::dayFrom("2001-01-01").value();
    const QString past = file("past.gpkg", water);
    const units::Day future = units::dayFrom("2150-01-01").value();
    water.plan.day.day = future;
    const QString coming = file("coming.gpkg", water);
    const auto today = [] { return std::chrono::floor<days>(std::chrono::system_clock::now()); };
    const auto before = today();
    ASSERT_TRUE(open_.open(past));
    EXPECT_GE(sys_days(open_.water()->plan.day.day), before + days(1));
    EXPECT_LE(sys_days(open_.water()->plan.day.day), today() + days(1));
    ASSERT_TRUE(open_.open(coming));
    EXPECT_EQ(open_.water()->plan.day.day, future);
}

TEST_F(AnOpenWater, RemembersTwoHundredActs) {
    for (int i = 1; i <= 203; ++i) {
        setCount(open_, i);
    }
    EXPECT_EQ(open_.undoStack().count(), 200);
    while (open_.undoStack().canUndo()) {
        open_.undoStack().undo();
    }
    EXPECT_EQ(open_.water()->plan.count, 3);
}

TEST_F(AnOpenWater, TellsWhichPartsChangedAndThatThePlanIsOld) {
    ASSERT_TRUE(open_.create(path_, "small"));
    std::vector<std::set<Part>> told;
    QObject::connect(&open_, &OpenWater::changed,
                     [&told](const std::set<Part>& parts) { told.push_back(parts); });
    edits::changeFacts(open_, "Name", [](Water& water) { water.name = "Other"; });
    logbook::HouseRules rules;
    rules.rodLimit = 2;
    edits::setHouseRules(open_, rules);
    open_.undoStack().undo();
    EXPECT_THAT(told, testing::ElementsAre(std::set{Part::facts}, std::set{Part::houseRules},
                                           std::set{Part::houseRules}));
    EXPECT_FALSE(open_.isPlanCurrent());
}

TEST_F(AnOpenWater, TellsAllPartsThatOneActChanged) {
    ASSERT_TRUE(open_.create(path_, "small"));
    std::vector<std::set<Part>> told;
    QObject::connect(&open_, &OpenWater::changed,
                     [&told](const std::set<Part>& parts) { told.push_back(parts); });
    // The first day of a water lays its frame, which is a fact of it.
    ASSERT_TRUE(edits::addSurveyDay(open_, support::fullWater().days.front()));
    open_.undoStack().undo();
    const std::set both{Part::facts, Part::days};
    EXPECT_THAT(told, testing::ElementsAre(both, both));
}

TEST_F(AnOpenWater, SharesWhatDoesNotChangeAfterwards) {
    setCount(open_, 5);
    const auto before = open_.water();
    setCount(open_, 6);
    EXPECT_EQ(before->plan.count, 5);
    EXPECT_EQ(open_.water()->plan.count, 6);
}

/// On a disk that can be made to fail.
class AWaterOnABadDisk : public AnOpenWater {
protected:
    FailingDisk disk_;
};

TEST_F(AWaterOnABadDisk, TellsWhereAnEditCouldNotBeKept) {
    OpenWater open;
    listenTo(open);
    ASSERT_TRUE(open.create(path_, "small"));
    disk_.failAfter(0, FailingDisk::Way::isFull);
    setCount(open, 5);
    open.finishKeeping();
    ASSERT_EQ(failures_.size(), 1U);
    EXPECT_EQ(failures_[0].kind, ErrorKind::unwritableOutput);
    EXPECT_EQ(failures_[0].what, "the disk is full; nothing was changed");
    EXPECT_EQ(failures_[0].where, path_.toStdString());
    EXPECT_EQ(open.water()->plan.count, 5) << "what the user did stays on the screen";
    disk_.heal();
    setCount(open, 6);
    open.finishKeeping();
    EXPECT_EQ(failures_.size(), 1U);
    EXPECT_EQ(loaded(path_).plan.count, 6);
}

TEST_F(AWaterOnABadDisk, TellsWhereWhatWasDrawnCouldNotBeKept) {
    OpenWater open;
    ASSERT_TRUE(open.create(path_, "bowl"));
    ASSERT_TRUE(support::layBowl(open));
    open.finishKeeping();
    listenTo(open);
    disk_.failAfter(0, FailingDisk::Way::isBroken);
    open.drawAfresh();
    open.jobs().finishAll();
    open.finishKeeping();
    ASSERT_EQ(failures_.size(), 1U);
    EXPECT_EQ(failures_[0].kind, ErrorKind::unwritableOutput);
    EXPECT_TRUE(open.isCurrent(Step::sections)) << "it can be looked at all the same";
    disk_.heal();
}

TEST_F(AWaterOnABadDisk, ThatMayOnlyBeReadSaysSoAndIsDrawnAllTheSame) {
    const QString bowl = folder_.filePath("bowl.gpkg");
    {
        OpenWater making;
        ASSERT_TRUE(making.create(bowl, "bowl"));
        ASSERT_TRUE(support::layBowl(making));
    }
    disk_.forbidWriting();
    OpenWater open;
    listenTo(open);
    ASSERT_TRUE(open.open(bowl));
    EXPECT_TRUE(open.isReadOnly());
    open.jobs().finishAll();
    open.drawAfresh();
    open.jobs().finishAll();
    open.finishKeeping();
    EXPECT_TRUE(open.isCurrent(Step::sections));
    EXPECT_TRUE(failures_.empty());
    setCount(open, 5);
    open.finishKeeping();
    ASSERT_EQ(failures_.size(), 1U);
    EXPECT_EQ(failures_[0].what, "the water file may only be read");
    EXPECT_EQ(open.keeper().unkept(), std::set{Part::plan}) << "and it is not forgotten";
}

} // namespace
