// SPDX-License-Identifier: GPL-3.0-or-later
// Opening in the background: the kept drawing at once, cancelled or failed without touching what is
// open.
#include "app/edits/change_settings.h"
#include "app/edits/set_plan.h"
#include "app/open_water/open_water.h"
#include "core/store/copies.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/desk_bowl.h"
#include "tests/support/held_job.h"

#include <gmock/gmock.h>

#include <QSignalSpy>
#include <QTemporaryDir>

namespace {

using open_water::OpenWater;
using water::Step;

class Opening : public testing::Test {
protected:
    void SetUp() override {
        {
            OpenWater making;
            ASSERT_TRUE(making.create(bowl_, "bowl"));
            ASSERT_TRUE(support::layBowl(making));
        }
        ASSERT_TRUE(open_.create(small_, "small"));
        edits::setPlan(open_, "Set", [](marks::Plan& plan) { plan.count = 5; });
    }

    QTemporaryDir folder_;
    const QString bowl_ = folder_.filePath("bowl.gpkg");
    const QString small_ = folder_.filePath("small.gpkg");
    OpenWater open_;
    QSignalSpy opened_{&open_, &OpenWater::opened};
    QSignalSpy ended_{&open_, &OpenWater::openingEnded};
    std::vector<base::Error> failures_;
    QMetaObject::Connection heard_ =
        QObject::connect(&open_, &OpenWater::failed,
                         [this](const base::Error& error) { failures_.push_back(error); });
};

TEST_F(Opening, LeavesTheWaterAsItIsUntilTheOtherIsThereWithItsDrawing) {
    open_.startOpening(bowl_);
    EXPECT_EQ(open_.path(), small_);
    EXPECT_EQ(open_.water()->name, "small");
    bool hadDrawing = false;
    QObject::connect(&open_, &OpenWater::opened, [&] {
        hadDrawing =
            open_.derived().drawn && open_.derived().outline && open_.isCurrent(Step::draw);
    });
    open_.opening().finishAll();
    EXPECT_EQ(open_.path(), bowl_);
    EXPECT_TRUE(hadDrawing) << "before anything is made";
    EXPECT_EQ(ended_.count(), 1);
    open_.jobs().finishAll();
    EXPECT_TRUE(open_.isCurrent(Step::sections));
    EXPECT_TRUE(failures_.empty());
}

TEST_F(Opening, CopiesAnOlderFileBeforeItIsBroughtUpToDate) {
    const QByteArray before = qgetenv("XDG_DATA_HOME");
    qputenv("XDG_DATA_HOME", folder_.filePath("data").toUtf8());
    support::changeFile(bowl_.toStdString(),
                        "UPDATE water_file SET value='9' WHERE key='schema_step'");
    const store::Copies copies(store::usualCopiesFolder());
    ASSERT_TRUE(copies.of(bowl_.toStdString()).empty());
    OpenWater fresh;
    const auto opened = fresh.open(bowl_);
    const auto taken = copies.of(bowl_.toStdString());
    before.isNull() ? qunsetenv("XDG_DATA_HOME") : qputenv("XDG_DATA_HOME", before);
    ASSERT_TRUE(opened) << opened.error().sentence();
    fresh.jobs().finishAll();
    ASSERT_EQ(taken.size(), 1U);
    EXPECT_EQ(store::stateOf(taken[0].file), store::FileState::older);
}

TEST_F(Opening, BringsWhatTheStepsMadeAlong) {
    OpenWater fresh;
    water::Derived kept;
    QObject::connect(&fresh, &OpenWater::opened, [&] {
        kept = fresh.derived();
        for (const Step step : {Step::reduce, Step::bands, Step::structure, Step::sections}) {
            EXPECT_TRUE(fresh.isCurrent(step)) << water::nameOf(step);
        }
    });
    fresh.startOpening(bowl_);
    fresh.opening().finishAll();
    fresh.jobs().finishAll();
    ASSERT_TRUE(kept.checked && kept.form && kept.structure && kept.sections);
    EXPECT_EQ(fresh.derived().checked, kept.checked);
    EXPECT_EQ(fresh.derived().form, kept.form);
    EXPECT_EQ(fresh.derived().structure, kept.structure);
    EXPECT_EQ(fresh.derived().sections, kept.sections);
    EXPECT_TRUE(fresh.isCurrent(Step::weed)) << "what is not kept is made";
}

TEST_F(Opening, ShowsTheDrawingKeptBeforeTheRestIsRead) {
    OpenWater fresh;
    std::vector<std::string> order;
    contours::Bands seen;
    QObject::connect(&fresh, &OpenWater::glimpsed, [&](const open_water::FirstLook& look) {
        seen = look.kept.bands;
        order.emplace_back("glimpsed");
        EXPECT_FALSE(fresh.isOpen());
        EXPECT_EQ(look.water->name, "bowl");
        EXPECT_EQ(look.water->shoreline.size(), 1U);
        EXPECT_TRUE(look.water->days.empty()) << "the long lists come later";
        ASSERT_TRUE(look.kept.drawn && look.kept.outline);
        EXPECT_GT(look.kept.drawn->report.cells, 1000U);
    });
    QObject::connect(&fresh, &OpenWater::opened, [&] { order.emplace_back("opened"); });
    QObject::connect(&fresh, &OpenWater::openingEnded, [&] { order.emplace_back("ended"); });
    fresh.startOpening(bowl_);
    fresh.opening().finishAll();
    EXPECT_THAT(order, testing::ElementsAre("glimpsed", "opened", "ended"));
    EXPECT_EQ(fresh.water()->days.size(), 1U);
    EXPECT_EQ(seen, fresh.derived().bands) << "its colours do not change once the rest is there";
    EXPECT_NE(seen, contours::Bands());
    fresh.jobs().finishAll();
}

TEST_F(Opening, ShowsNothingOfItOverAWaterThatIsOpen) {
    const QSignalSpy glimpsed(&open_, &OpenWater::glimpsed);
    open_.startOpening(bowl_);
    open_.opening().finishAll();
    EXPECT_EQ(open_.path(), bowl_);
    EXPECT_EQ(glimpsed.count(), 0);
}

TEST_F(Opening, ShowsNothingWhereNoDrawingIsKept) {
    OpenWater fresh;
    const QSignalSpy glimpsed(&fresh, &OpenWater::glimpsed);
    fresh.startOpening(small_);
    fresh.opening().finishAll();
    EXPECT_EQ(fresh.path(), small_);
    EXPECT_EQ(glimpsed.count(), 0);
}

TEST_F(Opening, ThatIsCancelledChangesNothing) {
    opened_.clear();
    support::HeldJob held(open_.opening());
    open_.startOpening(bowl_);
    open_.opening().cancelAll();
    held.letGo();
    open_.opening().finishAll();
    EXPECT_EQ(open_.path(), small_);
    EXPECT_EQ(open_.water()->plan.count, 5);
    EXPECT_EQ(opened_.count(), 0);
    EXPECT_EQ(ended_.count(), 1) << "whoever waits for it goes on";
    EXPECT_TRUE(failures_.empty());
}

TEST_F(Opening, ThatFailsSaysWhyAndChangesNothing) {
    opened_.clear();
    open_.startOpening(folder_.filePath("nowhere.gpkg"));
    open_.opening().finishAll();
    ASSERT_EQ(failures_.size(), 1U);
    EXPECT_EQ(failures_[0].where, folder_.filePath("nowhere.gpkg").toStdString());
    EXPECT_EQ(open_.path(), small_);
    EXPECT_EQ(open_.undoStack().count(), 1);
    EXPECT_EQ(opened_.count(), 0);
    EXPECT_EQ(ended_.count(), 1);
}

TEST_F(Opening, OfSeveralEndsWithTheLast) {
    support::HeldJob held(open_.opening());
    open_.startOpening(bowl_);
    open_.startOpening(folder_.filePath("nowhere.gpkg"));
    open_.startOpening(bowl_);
    held.letGo();
    open_.opening().finishAll();
    EXPECT_EQ(open_.path(), bowl_);
    EXPECT_TRUE(failures_.empty());
}

TEST_F(Opening, OfTheWaterThatIsOpenKeepsWhatCanBeUndone) {
    open_.startOpening(small_);
    open_.opening().finishAll();
    EXPECT_EQ(open_.undoStack().count(), 1);
    EXPECT_EQ(ended_.count(), 1);
}

TEST_F(Opening, LetsNothingOfTheWaterBeforeComeHomeToTheNext) {
    ASSERT_TRUE(open_.open(bowl_));
    open_.jobs().finishAll();
    edits::setPlan(open_, "Set", [](marks::Plan& plan) { plan.count = 3; });
    support::HeldJob held(open_.jobs());
    open_.drawAfresh();
    open_.planTomorrow();
    bool isGiven = false;
    open_.whenPlanIsCurrent(
        [&](const base::Result<void>& current) { isGiven = current.has_value(); });
    ASSERT_TRUE(open_.open(small_));
    held.letGo();
    open_.jobs().finishAll();
    EXPECT_EQ(open_.derived().drawn, nullptr);
    EXPECT_EQ(open_.planned(), nullptr);
    EXPECT_FALSE(isGiven) << "the sheet of one water under the name of another";
}

TEST_F(Opening, ShowsADrawingOlderThanTheWaterAsOld) {
    {
        OpenWater changing;
        ASSERT_TRUE(changing.open(bowl_));
        changing.jobs().finishAll();
        ASSERT_TRUE(edits::changeSettings(changing, "Set cell", [](water::Settings& settings) {
            settings.cell = units::Length::metres(8.0);
        }));
    }
    bool wasOld = false;
    QObject::connect(&open_, &OpenWater::opened,
                     [&] { wasOld = open_.derived().drawn && !open_.isCurrent(Step::draw); });
    open_.startOpening(bowl_);
    open_.opening().finishAll();
    EXPECT_TRUE(wasOld);
    open_.jobs().finishAll();
    EXPECT_TRUE(open_.isCurrent(Step::draw));
    EXPECT_EQ(open_.derived().drawn->report.cell.inMetres(), 8.0);
}

} // namespace
