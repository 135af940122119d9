// SPDX-License-Identifier: GPL-3.0-or-later
// What is made in the background from the water that is open: after which edit, from which water,
// what is kept of it, and what is told.
#include "app/edits/change_settings.h"
#include "app/edits/change_water.h"
#include "app/edits/set_plan.h"
#include "app/edits/set_shoreline.h"
#include "core/store/statement.h"
#include "core/water/steps/derive.h"
#include "tests/support/desk_bowl.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

namespace {

using base::ErrorKind;
using open_water::OpenWater;
using water::Step;

base::Progress quiet;

void setCell(OpenWater& open, double cell_m) {
    EXPECT_TRUE(edits::changeSettings(open, "Set cell", [cell_m](water::Settings& settings) {
        settings.cell = units::Length::metres(cell_m);
    }));
}

class Deriving : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(path_, "bowl"));
        ASSERT_TRUE(support::layBowl(open_));
        open_.finishKeeping();
        QObject::connect(&open_, &OpenWater::derivedChanged, [this] { ++derived_; });
        QObject::connect(&open_, &OpenWater::plannedChanged, [this] { ++planned_; });
        QObject::connect(&open_, &OpenWater::failed,
                         [this](const base::Error& error) { failures_.push_back(error); });
    }
    void settle(OpenWater& open) {
        open.jobs().finishAll();
        open.finishKeeping();
    }
    [[nodiscard]] std::int64_t inFile(const char* question) const {
        auto connection =
            store::Connection::open(path_.toStdString(), store::Connection::Access::existing)
                .value();
        store::Statement row(*connection, question);
        row.ask();
        return row.next() ? row.wholeNumber(0) : -1;
    }
    [[nodiscard]] std::vector<Step> current(const OpenWater& open) const {
        std::vector<Step> steps;
        for (const Step step : water::allSteps) {
            if (open.isCurrent(step)) {
                steps.push_back(step);
            }
        }
        return steps;
    }

    QTemporaryDir folder_;
    const QString path_ = folder_.filePath("bowl.gpkg");
    OpenWater open_;
    int derived_ = 0;
    int planned_ = 0;
    std::vector<base::Error> failures_;
};

TEST_F(Deriving, GoesAsFarAsAskedAndNoStepHoldsAfterAnEditThatItStandsOn) {
    EXPECT_EQ(current(open_).size(), water::allSteps.size());
    setCell(open_, 8.0);
    EXPECT_EQ(current(open_), std::vector{Step::reduce});
    open_.deriveUpTo(Step::bands);
    settle(open_);
    EXPECT_EQ(current(open_), (std::vector{Step::reduce, Step::draw, Step::bands}));
    EXPECT_EQ(open_.derived().drawn->report.cell.inMetres(), 8.0);
    EXPECT_EQ(derived_, 1);
    EXPECT_TRUE(failures_.empty());
}

TEST_F(Deriving, TakesTheEarlierMapBackWhenAnEditIsUndone) {
    const auto six = open_.derived().drawn;
    setCell(open_, 8.0);
    ASSERT_TRUE(support::derive(open_));
    const auto eight = open_.derived().drawn;
    ASSERT_NE(six, eight);
    open_.undoStack().undo();
    ASSERT_TRUE(support::derive(open_));
    EXPECT_EQ(open_.derived().drawn, six);
    open_.undoStack().redo();
    ASSERT_TRUE(support::derive(open_));
    EXPECT_EQ(open_.derived().drawn, eight);
    open_.drawAfresh();
    open_.jobs().finishAll();
    EXPECT_NE(open_.derived().drawn, eight) << "asked for anew";
    EXPECT_TRUE(open_.isCurrent(Step::sections));
}

TEST_F(Deriving, EndsWithTheLastOfSeveralEdits) {
    for (const double cell_m : {7.0, 9.0, 8.0}) {
        setCell(open_, cell_m);
        open_.deriveUpTo(Step::sections);
    }
    settle(open_);
    EXPECT_EQ(derived_, 1) << "those in between were not worth the work";
    EXPECT_EQ(open_.derived().drawn->report.cell.inMetres(), 8.0);
    EXPECT_EQ(current(open_).size(), water::allSteps.size());
}

TEST_F(Deriving, IsDoneAgainWhereTheWaterChangedWhileItRan) {
    setCell(open_, 8.0);
    open_.deriveUpTo(Step::sections);
    open_.undoStack().undo();
    settle(open_);
    EXPECT_EQ(current(open_).size(), water::allSteps.size());
    EXPECT_EQ(open_.derived().drawn->report.cell.inMetres(), 6.0);
    EXPECT_EQ(derived_, 2);
}

TEST_F(Deriving, ThatIsCancelledChangesNothingAndIsNoFailure) {
    const auto drawn = open_.derived().drawn;
    setCell(open_, 8.0);
    open_.deriveUpTo(Step::sections);
    open_.jobs().cancelAll();
    settle(open_);
    open_.planTomorrow();
    open_.jobs().cancelAll();
    settle(open_);
    EXPECT_EQ(open_.derived().drawn, drawn);
    EXPECT_EQ(open_.planned(), nullptr);
    EXPECT_EQ(derived_, 0);
    EXPECT_EQ(planned_, 0);
    EXPECT_TRUE(failures_.empty());
}

TEST_F(Deriving, ThatCannotBeIsTold) {
    edits::change(open_, "Set cell", {water::Part::facts},
                  [](water::Water& water) { water.settings.cell = units::Length::metres(0.1); });
    open_.deriveUpTo(Step::sections);
    settle(open_);
    ASSERT_EQ(failures_.size(), 1U);
    EXPECT_EQ(failures_[0].kind, ErrorKind::wrongUse);
    open_.planTomorrow();
    settle(open_);
    EXPECT_EQ(failures_.size(), 2U);
    EXPECT_EQ(derived_, 0);
    EXPECT_EQ(planned_, 0);
    EXPECT_FALSE(open_.isPlanCurrent());
}

TEST_F(Deriving, WithTomorrowGivesAPlanThatIsOldAfterTheNextEditOrDrawing) {
    setCell(open_, 8.0);
    EXPECT_FALSE(open_.isPlanCurrent());
    open_.planTomorrow();
    settle(open_);
    ASSERT_NE(open_.planned(), nullptr);
    EXPECT_FALSE(open_.planned()->marks.empty());
    EXPECT_EQ(open_.planned()->plan, open_.water()->plan);
    EXPECT_TRUE(open_.isPlanCurrent());
    EXPECT_EQ(planned_, 1);
    EXPECT_EQ(derived_, 1);
    EXPECT_EQ(current(open_).size(), water::allSteps.size()) << "what was missing is derived first";
    EXPECT_EQ(inFile("SELECT count(*) FROM marks"),
              static_cast<std::int64_t>(open_.planned()->marks.size()));
    const auto before = open_.planned();
    edits::setPlan(open_, "Set count", [](marks::Plan& plan) { plan.count = 3; });
    EXPECT_FALSE(open_.isPlanCurrent());
    EXPECT_EQ(open_.planned(), before) << "the old one can still be read";
    open_.planTomorrow();
    settle(open_);
    EXPECT_TRUE(open_.isPlanCurrent());
    EXPECT_LE(open_.planned()->marks.size(), 3U);
    open_.deriveUpTo(Step::sections);
    settle(open_);
    EXPECT_TRUE(open_.isPlanCurrent()) << "nothing was drawn anew";
    open_.drawAfresh();
    settle(open_);
    EXPECT_FALSE(open_.isPlanCurrent());
    EXPECT_EQ(inFile("SELECT count(*) FROM marks"), 0) << "what is old is not for other programs";
}

TEST_F(Deriving, IsKeptInTheFileWithTheStampOfItsWater) {
    const auto kept = [this] {
        auto store = store::open(path_.toStdString()).value();
        return store->loadDrawing(*open_.derived().outline).value().value();
    };
    EXPECT_EQ(kept().stamp, water::stampOf(*open_.water(), Step::draw));
    EXPECT_EQ(kept().drawn.depth.raw_m().size(), open_.derived().drawn->depth.raw_m().size());
    setCell(open_, 8.0);
    ASSERT_TRUE(support::derive(open_));
    open_.finishKeeping();
    EXPECT_EQ(kept().stamp, water::stampOf(*open_.water(), Step::draw));
    EXPECT_EQ(kept().drawn.report.cell.inMetres(), 8.0);
    EXPECT_EQ(inFile("SELECT count(*) FROM contours"),
              static_cast<std::int64_t>(open_.derived().form->contours.size()));
    EXPECT_EQ(inFile("SELECT count(*) FROM sections"),
              static_cast<std::int64_t>(open_.derived().sections->sections.size()));
    EXPECT_EQ(inFile("SELECT count(*) FROM soundings WHERE reduced_depth_m NOT NULL"), 900);
}

TEST_F(Deriving, StartsFromTheDrawingInTheFileWhenItIsOpenedAgain) {
    ASSERT_TRUE(open_.create(folder_.filePath("other.gpkg"), "other")) << "lets go of the water";
    OpenWater again;
    ASSERT_TRUE(again.open(path_));
    const auto drawn = again.derived().drawn;
    ASSERT_NE(drawn, nullptr) << "seen at once, before anything is made";
    EXPECT_TRUE(again.isCurrent(Step::draw));
    EXPECT_TRUE(again.jobs().isBusy()) << "the rest is made in the background";
    settle(again);
    EXPECT_EQ(again.derived().drawn, drawn) << "not drawn anew";
    EXPECT_EQ(current(again).size(), water::allSteps.size());
    // The water has changed since it was drawn: the old drawing is no longer that of the water.
    setCell(again, 8.0);
    again.finishKeeping();
    OpenWater third;
    ASSERT_TRUE(third.open(path_));
    EXPECT_FALSE(third.isCurrent(Step::draw));
    ASSERT_NE(third.derived().drawn, nullptr) << "seen at once, and known to be old";
    EXPECT_EQ(third.derived().drawn->report.cell.inMetres(), 6.0);
    EXPECT_NE(third.derived().outline, nullptr) << "so that the chart knows where the water lies";
    settle(third);
    EXPECT_EQ(third.derived().drawn->report.cell.inMetres(), 8.0);
}

TEST_F(Deriving, OfAShoreWithoutSoundingsStopsBeforeTheDrawing) {
    const QString path = folder_.filePath("shore.gpkg");
    {
        OpenWater making;
        ASSERT_TRUE(making.create(path, "shore"));
        ASSERT_TRUE(edits::setShoreline(making, support::bowlShore()));
    }
    OpenWater open;
    ASSERT_TRUE(open.open(path));
    settle(open);
    EXPECT_EQ(current(open), std::vector{Step::reduce});
    EXPECT_NE(open.derived().outline, nullptr);
    EXPECT_EQ(open.derived().drawn, nullptr);
    EXPECT_TRUE(open.derived().failures.empty()) << "nobody asked for a drawing yet";
}

} // namespace
