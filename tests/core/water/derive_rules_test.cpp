// SPDX-License-Identifier: GPL-3.0-or-later
// What derive() promises whatever the water: order, failures, what is kept and what is forgotten.
#include "core/water/steps/derive.h"

#include "tests/support/full_water.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace {

using namespace water;

Derived derived(const Water& water, const Derived& before = {}, Step upTo = Step::sections) {
    base::Progress silent;
    auto made = derive(water, before, upTo, silent);
    EXPECT_TRUE(made) << made.error().sentence();
    return made ? std::move(*made) : Derived();
}

/// What is held of each step, in their order.
std::array<bool, allSteps.size()> isHeld(const Derived& d) {
    return {d.checked != nullptr,   d.drawn != nullptr, d.form != nullptr,    d.today != nullptr,
            d.structure != nullptr, d.weed != nullptr,  d.sections != nullptr};
}

/// Hears what begins, and asks to stop once `stopAt` has begun.
class Listener : public base::Progress {
public:
    explicit Listener(std::string stopAt = {}) : stopAt_(std::move(stopAt)) {}
    void begin(std::string_view part) override { begun.emplace_back(part); }
    bool stopAsked() const override {
        return !stopAt_.empty() && std::ranges::find(begun, stopAt_) != begun.end();
    }
    std::vector<std::string> begun;

private:
    std::string stopAt_;
};

TEST(DeriveRules, MakeForAPlanOnlyWhatAPlanStandsOn) {
    const Water water = support::fullWater();
    const Derived all = derived(water);
    base::Progress silent;
    const Derived kept = withKeptDrawing(water, *all.drawn, stampOf(water, Step::draw));
    const Derived plan = deriveToPlan(water, kept, silent).value();
    EXPECT_EQ(isHeld(plan), (std::array{false, true, false, false, true, true, true}));
    EXPECT_EQ(plan.outline->area(), all.outline->area());
    for (const Step step : {Step::draw, Step::structure, Step::weed, Step::sections}) {
        EXPECT_TRUE(plan.isCurrent(step, stampOf(water, step))) << nameOf(step);
    }
    EXPECT_EQ(plan.sections->sections.size(), all.sections->sections.size());
    // What was left out is made once it is asked for.
    EXPECT_EQ(isHeld(derived(water, plan)), isHeld(all));
}

TEST(DeriveRules, MakeAllForAPlanWhereNoDrawingHolds) {
    base::Progress silent;
    EXPECT_EQ(isHeld(deriveToPlan(support::fullWater(), {}, silent).value()),
              isHeld(derived(support::fullWater())));
}

TEST(DeriveRules, MakeEveryStepUpToTheOneAskedForAndNoneBeyond) {
    Derived before;
    for (std::size_t i = 0; i < allSteps.size(); ++i) {
        before = derived(support::fullWater(), before, allSteps.at(i));
        const auto held = isHeld(before);
        for (std::size_t k = 0; k < allSteps.size(); ++k) {
            EXPECT_EQ(held.at(k), k <= i) << nameOf(allSteps.at(k));
            EXPECT_EQ(before.seconds.contains(allSteps.at(k)), k <= i);
            EXPECT_EQ(
                before.isCurrent(allSteps.at(k), stampOf(support::fullWater(), allSteps.at(k))),
                k <= i);
        }
        EXPECT_NE(before.outline, nullptr);
    }
    EXPECT_TRUE(before.failures.empty());
    EXPECT_TRUE(before.notes.empty());
}

TEST(DeriveRules, SayWhatIsBeingMadeInTheirOrder) {
    const std::vector<std::string> wanted{
        "Looking the soundings over",           "Drawing the water",
        "Tracing contours and bands",           "Tracing the water at today's level",
        "Finding drop-offs, humps and shelves", "Mapping the weed",
        "Dividing the water into sections"};
    Listener listener;
    ASSERT_TRUE(derive(support::fullWater(), {}, Step::sections, listener));
    std::erase_if(listener.begun, [&](const std::string& part) {
        return std::ranges::find(wanted, part) == wanted.end();
    });
    EXPECT_EQ(listener.begun, wanted);
    const std::array names{"reduce", "draw", "bands", "level", "structure", "weed", "sections"};
    for (std::size_t i = 0; i < names.size(); ++i) {
        EXPECT_EQ(nameOf(allSteps.at(i)), names.at(i));
    }
}

TEST(DeriveRules, StopWithoutAResultWhenAsked) {
    for (const char* at : {"Looking the soundings over", "Drawing the water", "Mapping the weed",
                           "Dividing the water into sections"}) {
        Listener listener(at);
        const auto made = derive(support::fullWater(), {}, Step::sections, listener);
        if (!made) {
            EXPECT_EQ(made.error().kind, base::ErrorKind::cancelled) << at;
        } else { // the last step may be through before it asks
            EXPECT_STREQ(at, "Dividing the water into sections");
        }
    }
}

TEST(DeriveRules, RefuseAWaterWithoutAFrameAndSettingsOutOfRange) {
    base::Progress silent;
    Water w = support::fullWater();
    w.frame.reset();
    const auto unlaid = derive(w, {}, Step::reduce, silent);
    ASSERT_FALSE(unlaid);
    EXPECT_EQ(unlaid.error().kind, base::ErrorKind::wrongUse);
    EXPECT_EQ(unlaid.error().what, "the water has no soundings and no shoreline yet");
    w = support::fullWater();
    w.settings.weedLeft = 1.1;
    const auto wrong = derive(w, {}, Step::reduce, silent);
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().kind, base::ErrorKind::wrongUse);
    EXPECT_EQ(wrong.error().what, "the share of weed left must be between 0 and 1");
    EXPECT_EQ(wrong.error().where, "settings");
}

TEST(DeriveRules, AStepThatFailsIsToldForgottenAndMadeOnceItCanBe) {
    const Water good = support::fullWater();
    Water bad = good;
    bad.houseRules.closed[0].pieces[0] = {
        {{3.097, 55.201}, {3.099, 55.203}, {3.099, 55.201}, {3.097, 55.203}}, {}};
    const Derived before = derived(good);
    const Derived failed = derived(bad, before);
    EXPECT_EQ(isHeld(failed), (std::array{true, true, true, true, true, true, false}));
    ASSERT_EQ(failed.failures.size(), 1U);
    const base::Error& why = failed.failures.at(Step::sections);
    EXPECT_EQ(why.what, "the shore crosses itself");
    EXPECT_TRUE(why.where.starts_with("closed water nursery, longitude 3.098")) << why.where;
    EXPECT_FALSE(failed.stamps.contains(Step::sections));
    const Derived mended = derived(good, failed);
    EXPECT_TRUE(mended.failures.empty());
    EXPECT_NE(mended.sections, nullptr);
    EXPECT_EQ(mended.drawn, before.drawn);
}

TEST(DeriveRules, ALevelBelowAllWaterCostsOnlyTheMapOfToday) {
    Water w = support::fullWater();
    const Derived before = derived(w);
    w.plan.day.levelChange = units::Length::metres(-60.0);
    const Derived dry = derived(w, before);
    EXPECT_EQ(isHeld(dry), (std::array{true, true, true, false, true, true, true}));
    ASSERT_EQ(dry.failures.size(), 1U);
    EXPECT_TRUE(dry.failures.contains(Step::level));
    EXPECT_EQ(dry.form, before.form);
}

// With the last survey day taken out, nothing drawn from it may stay on the chart.
TEST(DeriveRules, WithoutASoundingNothingOlderPassesForTheMap) {
    Water w = support::fullWater();
    const Derived before = derived(w);
    w.days.clear();
    w.leadLine.edit().clear();
    const Derived shored = derived(w, before);
    EXPECT_EQ(isHeld(shored), (std::array{true, false, false, false, false, false, false}));
    EXPECT_EQ(shored.failures.size(), 1U);
    EXPECT_TRUE(shored.failures.contains(Step::draw));
    EXPECT_FALSE(shored.outlineIsAssumed);
    EXPECT_EQ(shored.stamps.size(), 1U);
}

TEST(DeriveRules, WithNeitherShoreNorSoundingNothingIsLeftAndItIsSaid) {
    Water w = support::fullWater();
    const Derived before = derived(w);
    w.days.clear();
    w.shoreline.edit().clear();
    const Derived bare = derived(w, before);
    EXPECT_EQ(isHeld(bare), (std::array{false, false, false, false, false, false, false}));
    EXPECT_EQ(bare.outline, nullptr);
    ASSERT_EQ(bare.failures.size(), 1U);
    EXPECT_EQ(bare.failures.at(Step::reduce).sentence(),
              "there is neither a shoreline nor a sounding to draw from; bring in soundings or a "
              "shoreline");
    EXPECT_TRUE(bare.stamps.empty());
}

TEST(DeriveRules, AnAssumedShoreIsSaidAndForgottenOnceThereIsOne) {
    Water w = support::fullWater();
    w.shoreline.edit().clear();
    const Derived assumed = derived(w, {}, Step::draw);
    EXPECT_TRUE(assumed.outlineIsAssumed);
    EXPECT_EQ(assumed.notes,
              (std::vector<std::string>{
                  "there is no shoreline yet: one is assumed 15 m outside the soundings"}));
    const Derived shored = derived(support::fullWater(), assumed, Step::draw);
    EXPECT_FALSE(shored.outlineIsAssumed);
    EXPECT_TRUE(shored.notes.empty());
}

TEST(DeriveRules, AKeptDrawingIsTakenOnlyForTheVeryWaterItWasMadeFrom) {
    const Water w = support::fullWater();
    const Stamp stamp = stampOf(w, Step::draw);
    const surface::DrawnWater drawn = *derived(w, {}, Step::draw).drawn;
    const Derived kept = withKeptDrawing(w, drawn, stamp);
    ASSERT_NE(kept.drawn, nullptr);
    const Derived whole = derived(w, kept);
    EXPECT_EQ(whole.drawn, kept.drawn) << "not drawn again";
    EXPECT_FALSE(whole.seconds.contains(Step::draw));
    EXPECT_TRUE(whole.failures.empty());
    EXPECT_NE(whole.sections, nullptr);

    Water other = w;
    other.leadLine.edit()[0].depth = units::Depth::metres(1.0);
    EXPECT_EQ(withKeptDrawing(other, drawn, stamp).drawn, nullptr);
    EXPECT_TRUE(withKeptDrawing(other, drawn, stamp).stamps.empty());
    other = w;
    other.frame.reset();
    EXPECT_EQ(withKeptDrawing(other, drawn, stampOf(other, Step::draw)).drawn, nullptr);
}

TEST(DeriveRules, WithoutDrawingAllButTheReductionIsMadeAnew) {
    Water w = support::fullWater();
    const Derived before = derived(w);
    EXPECT_FALSE(before.drawn->report.isChoiceKept);
    const Derived emptied = withoutDrawing(before);
    EXPECT_EQ(isHeld(emptied), (std::array{true, false, false, false, false, false, false}));
    EXPECT_EQ(emptied.stamps.size(), 1U);
    EXPECT_EQ(emptied.outline, before.outline);
    // After a small edit the water is drawn on from the map before; emptied it is drawn afresh.
    w.leadLine.edit()[1].depth = units::Depth::metres(5.3);
    EXPECT_TRUE(derived(w, before, Step::draw).drawn->report.isChoiceKept);
    EXPECT_FALSE(derived(w, withoutDrawing(before), Step::draw).drawn->report.isChoiceKept);
}

TEST(Derived, IsCurrentOnlyWithTheStampOfJustThatStep) {
    Derived d;
    EXPECT_FALSE(d.isCurrent(Step::draw, Stamp()));
    d.stamps[Step::draw] = Stamp(5);
    EXPECT_TRUE(d.isCurrent(Step::draw, Stamp(5)));
    EXPECT_FALSE(d.isCurrent(Step::draw, Stamp(6)));
    EXPECT_FALSE(d.isCurrent(Step::bands, Stamp(5)));
}

} // namespace
