// SPDX-License-Identifier: GPL-3.0-or-later
// What is old is known to be old, whatever the timing, and what is given away is of now.
#include "app/edits/change_settings.h"
#include "app/edits/change_water.h"
#include "app/edits/set_plan.h"
#include "app/open_water/open_water.h"
#include "tests/support/desk_bowl.h"
#include "tests/support/held_job.h"

#include <gmock/gmock.h>

#include <QTemporaryDir>

#include <numeric>

namespace {

using base::ErrorKind;
using base::Result;
using open_water::OpenWater;
using support::HeldJob;
using water::Step;

void setScope(OpenWater& open, double scope) {
    edits::setPlan(open, "Set scope", [scope](marks::Plan& plan) { plan.tackle.scope = scope; });
}

void setCast(OpenWater& open, double cast_m) {
    edits::setPlan(open, "Set cast", [cast_m](marks::Plan& plan) {
        plan.tackle.cast = units::Length::metres(cast_m);
    });
}

class OfNow : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(folder_.filePath("bowl.gpkg"), "bowl"));
        ASSERT_TRUE(support::layBowl(open_));
        open_.planTomorrow();
        open_.jobs().finishAll();
        ASSERT_TRUE(open_.isPlanCurrent());
        QObject::connect(&open_, &OpenWater::failed,
                         [this](const base::Error& error) { failures_.push_back(error); });
    }
    OpenWater::WhenCurrent tellMe() {
        return [this](const Result<void>& current) {
            told_.push_back(current ? "of now" : current.error().what);
            wasCurrent_ = open_.isPlanCurrent();
        };
    }

    QTemporaryDir folder_;
    OpenWater open_;
    std::vector<base::Error> failures_;
    std::vector<std::string> told_;
    bool wasCurrent_ = false;
};

TEST_F(OfNow, APlanMadeFromAnOlderWaterIsWorkedOutAgainUntilItIsOfNow) {
    HeldJob held(open_.jobs());
    setCast(open_, 40.0);
    open_.planTomorrow(); // Made from this water, and home after the next two edits.
    setScope(open_, 6.0);
    setScope(open_, 7.0);
    int plans = 0;
    bool wasOldOneTakenForNew = false;
    QObject::connect(&open_, &OpenWater::plannedChanged, [&] {
        ++plans;
        const bool isOld = open_.planned()->plan.tackle.scope != 7.0;
        wasOldOneTakenForNew = wasOldOneTakenForNew || (isOld && open_.isPlanCurrent());
    });
    held.letGo();
    open_.jobs().finishAll();
    EXPECT_EQ(plans, 2) << "the old one, and that of now";
    EXPECT_FALSE(wasOldOneTakenForNew);
    EXPECT_TRUE(open_.isPlanCurrent());
    EXPECT_EQ(open_.planned()->plan, open_.water()->plan);
    EXPECT_EQ(open_.planned()->plan.tackle.scope, 7.0);
    EXPECT_EQ(open_.planned()->plan.tackle.cast.inMetres(), 40.0);
}

TEST_F(OfNow, APlanIsOfNowAgainWhenTheEditIsUndone) {
    const auto planned = open_.planned();
    setScope(open_, 6.0);
    EXPECT_FALSE(open_.isPlanCurrent());
    EXPECT_EQ(open_.planned(), planned) << "to be looked at, as old";
    open_.undoStack().undo();
    EXPECT_TRUE(open_.isPlanCurrent());
}

TEST_F(OfNow, EveryPartOfTheWaterMattersToAPlan) {
    const std::vector<std::pair<water::Part, std::function<void(water::Water&)>>> changes{
        {water::Part::facts,
         [](water::Water& w) { w.settings.secchi = units::Depth::metres(1.7); }},
        {water::Part::shoreline, [](water::Water& w) { w.shoreline.edit().clear(); }},
        {water::Part::days, [](water::Water& w) { w.days[0].setAsideByHand = {3}; }},
        {water::Part::leadLine, [](water::Water& w) { w.leadLine.edit().resize(1); }},
        {water::Part::weedNotes, [](water::Water& w) { w.weedNotes.edit().resize(1); }},
        {water::Part::houseRules, [](water::Water& w) { w.houseRules.rodLimit = 1; }},
        {water::Part::sections, [](water::Water& w) { w.sectionNames.resize(1); }},
        {water::Part::plan, [](water::Water& w) { w.plan.count = 2; }},
        {water::Part::log, [](water::Water& w) { w.log.push_back({}); }},
    };
    ASSERT_EQ(changes.size() + 2, water::allParts.size())
        << "the numbering follows from the map, and a sheet is of a plan that was";
    for (const auto& [part, change] : changes) {
        edits::change(open_, "Change", {part}, change);
        EXPECT_FALSE(open_.isPlanCurrent()) << static_cast<int>(part);
        open_.undoStack().undo();
        EXPECT_TRUE(open_.isPlanCurrent()) << static_cast<int>(part);
    }
}

TEST_F(OfNow, NothingIsGivenAwayBeforeThePlanIsThatOfTheLastEdit) {
    open_.whenPlanIsCurrent(tellMe());
    EXPECT_THAT(told_, testing::ElementsAre("of now")) << "at once";
    told_.clear();
    setScope(open_, 6.0);
    HeldJob held(open_.jobs());
    open_.whenPlanIsCurrent(tellMe());
    setScope(open_, 7.0);
    EXPECT_TRUE(told_.empty());
    held.letGo();
    open_.jobs().finishAll();
    EXPECT_THAT(told_, testing::ElementsAre("of now"));
    EXPECT_TRUE(wasCurrent_);
    EXPECT_EQ(open_.planned()->plan.tackle.scope, 7.0);
}

TEST_F(OfNow, WhoWaitsForAPlanHearsWhyThereIsNone) {
    edits::change(open_, "Set cell", {water::Part::facts},
                  [](water::Water& water) { water.settings.cell = units::Length::metres(0.1); });
    open_.whenPlanIsCurrent(tellMe());
    open_.jobs().finishAll();
    ASSERT_EQ(told_.size(), 1U);
    EXPECT_THAT(told_[0], testing::HasSubstr("cell"));
    ASSERT_TRUE(open_.whyNoPlan());
    EXPECT_EQ(open_.whyNoPlan()->what, told_[0]);
    EXPECT_FALSE(open_.isPlanCurrent());
    EXPECT_NE(open_.planned(), nullptr);
    open_.whenMapIsCurrent(tellMe());
    open_.jobs().finishAll();
    ASSERT_EQ(told_.size(), 2U);
    EXPECT_THAT(told_[1], testing::HasSubstr("cell"));
    open_.undoStack().undo();
    EXPECT_FALSE(open_.whyNoPlan()) << "that was another water";
}

TEST_F(OfNow, WhoWaitsHearsThatItWasStoppedWhetherItRanOrWaited) {
    setScope(open_, 6.0);
    open_.whenPlanIsCurrent(tellMe());
    open_.jobs().cancelAll();
    open_.jobs().finishAll();
    EXPECT_THAT(told_, testing::ElementsAre(base::cancelled().what));
    told_.clear();
    HeldJob held(open_.jobs());
    open_.whenPlanIsCurrent(tellMe());
    open_.jobs().cancelAll();
    held.letGo();
    open_.jobs().finishAll();
    EXPECT_THAT(told_, testing::ElementsAre(base::cancelled().what));
    EXPECT_TRUE(failures_.empty()) << "he who stops it knows";
}

TEST_F(OfNow, AMapThatCannotBeDrawnLeavesTheOneBeforeAsOld) {
    const auto drawn = open_.derived().drawn;
    edits::change(open_, "Set all aside", {water::Part::days}, [](water::Water& water) {
        soundings::SurveyDay& day = water.days.front();
        std::vector<std::size_t> all(day.soundings.size());
        std::iota(all.begin(), all.end(), 0U);
        day.setAsideByHand = std::move(all);
    });
    open_.whenMapIsCurrent(tellMe());
    open_.jobs().finishAll();
    ASSERT_TRUE(open_.derived().failures.contains(Step::draw));
    EXPECT_THAT(told_, testing::ElementsAre(open_.derived().failures.at(Step::draw).what));
    EXPECT_EQ(open_.derived().drawn, drawn) << "to be looked at";
    EXPECT_NE(open_.derived().sections, nullptr);
    EXPECT_FALSE(open_.isCurrent(Step::draw));
    EXPECT_FALSE(open_.isCurrent(Step::sections));
    EXPECT_TRUE(open_.isCurrent(Step::reduce));
    open_.undoStack().undo();
    ASSERT_TRUE(support::derive(open_));
    EXPECT_EQ(open_.derived().drawn, drawn);
    EXPECT_TRUE(open_.isPlanCurrent());
}

TEST_F(OfNow, ItIsKnownWhetherWhatIsOldIsBeingMadeAnew) {
    EXPECT_FALSE(open_.isBeingMade());
    HeldJob held(open_.jobs());
    EXPECT_FALSE(open_.isBeingMade()) << "anything else that runs makes nothing new";
    setScope(open_, 6.0);
    EXPECT_FALSE(open_.isBeingMade());
    open_.planTomorrow();
    EXPECT_TRUE(open_.isBeingMade());
    held.letGo();
    open_.jobs().finishAll();
    EXPECT_FALSE(open_.isBeingMade());
}

} // namespace
