// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/judgement.h"

#include "core/learning/fit_catch.h"
#include "core/marks/beliefs.h"
#include "core/marks/prospect.h"
#include "tests/support/given.h"
#include "tests/support/made_up_day.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

namespace {

using learning::Group;
using marks::ChosenBy;
using marks::FactorKind;
using marks::Weights;
using structure::ZoneKind;
using support::given;
using units::Depth;
using units::Length;

double timesOf(const marks::Judgement& judgement, FactorKind kind) {
    return std::ranges::find(judgement.factors, kind, &marks::Factor::kind)->times;
}

/// The made-up day after trips on which the drop-off gave fish and the shelf none.
class Judged : public testing::Test {
protected:
    Judged() {
        std::vector<learning::Observation> stays;
        for (int trip = 0; trip < 12; ++trip) {
            stays.push_back(stayAt({16.0 + trip, 12.0 - 15.0 * trip}, trip, 3));
            stays.push_back(stayAt({-150.0, 10.0 - 14.0 * trip}, trip, 0));
        }
        base::Progress quiet;
        day_.learned = marks::LearnedCatch{learning::fitCatch(stays, {}, quiet).value().model(),
                                           std::nullopt,
                                           3,
                                           {{Group::hour, 4, 1.0}},
                                           4.0};
    }

    learning::Observation stayAt(geo::WaterPoint place, int trip, int fish) const {
        marks::Circumstances then;
        then.season = 3;
        const auto around = marks::surroundingsOf(day_.input(), place, Length::metres(30.0));
        learning::Observation stay;
        stay.features = marks::joined(marks::placeFeaturesOf(day_.input(), around, place, then));
        stay.features.push_back({Group::hour, 4, 1.0});
        stay.rodHours = 4.0;
        stay.fish = fish;
        stay.day = trip;
        return stay;
    }

    [[nodiscard]] marks::Judgement at(geo::WaterPoint place,
                                      ChosenBy chosenBy = ChosenBy::user) const {
        const auto around = marks::surroundingsOf(day_.input(), place, Length::metres(30.0));
        return marks::judgementOf(day_.input(), around, place, day_.plan,
                                  marks::WaveState{Length::metres(100), Length::metres(0.1)},
                                  chosenBy);
    }

    support::MadeUpDay day_;
    geo::WaterPoint onDropOff_{20.0, 0.0};
    geo::WaterPoint onShelf_{-150.0, -60.0};
};

TEST_F(Judged, MultiplyOutToWhatTheLogLetsExpect) {
    const double mean = day_.learned->model.mean().rate();
    for (const geo::WaterPoint place :
         {onDropOff_, onShelf_, geo::WaterPoint{250.0, -150.0}, geo::WaterPoint{0.0, -200.0}}) {
        const marks::Judgement judgement = at(place);
        EXPECT_NEAR(given(judgement.expected).rate(), mean * judgement.score, 1e-12);
        EXPECT_NEAR(marks::scoreOf(judgement.factors), judgement.score, 1e-12);
        EXPECT_EQ(judgement.factors.size(), marks::allFactorKinds.size() + 2);
    }
}

TEST_F(Judged, PromiseMostWhereFishWereCaughtAndSayWhy) {
    EXPECT_GT(at(onDropOff_).score, 1.2);
    EXPECT_LT(at(onShelf_).score, 0.9);
    EXPECT_GT(timesOf(at(onDropOff_), FactorKind::dropOff), 1.05);
    EXPECT_LT(timesOf(at(onShelf_), FactorKind::bottom), 0.99);
    EXPECT_EQ(timesOf(at(onDropOff_), FactorKind::lessTried), 1.0);
    const marks::Judgement told = at(onDropOff_);
    const auto record = std::ranges::find(told.factors, FactorKind::record, &marks::Factor::kind);
    const double mean = day_.learned->model.mean().rate();
    const auto here = std::get<marks::CatchHere>(record->because);
    EXPECT_NEAR(here.per10RodHours, 10.0 * mean * told.score, 1e-9);
    EXPECT_NEAR(here.meanPer10RodHours, 10.0 * mean, 1e-9);
    EXPECT_EQ(told.factors.back().because, marks::Reason(marks::HoursPlanned{}));
    EXPECT_EQ((told.factors.end() - 2)->because,
              marks::Reason(marks::UnderTheBoat{ZoneKind::dropOff}));
}

TEST_F(Judged, AllowForHavingBeenChosenAsTheBestOfMany) {
    const marks::Judgement own = at(onDropOff_);
    const marks::Judgement chosen = at(onDropOff_, ChosenBy::program);
    EXPECT_NEAR(chosen.score, 0.9 * own.score, 1e-12);
    EXPECT_NEAR(marks::scoreOf(chosen.factors), chosen.score, 1e-12);
    EXPECT_NEAR(given(chosen.expected).rate(), 0.9 * given(own.expected).rate(), 1e-12);
    EXPECT_NEAR(given(chosen.expected).interval80().second,
                0.9 * given(own.expected).interval80().second, 1e-12);
    EXPECT_EQ(timesOf(chosen, FactorKind::bestOfMany), 0.9);
    const auto record = std::ranges::find(chosen.factors, FactorKind::record, &marks::Factor::kind);
    EXPECT_NEAR(record->value, chosen.score / (1.0 + chosen.score), 1e-12) << "told of the same";
    day_.learned.reset();
    EXPECT_EQ(at(onDropOff_, ChosenBy::program).factors.size(), marks::allFactorKinds.size());
}

TEST_F(Judged, TakeAwayWhatADepthMayBeWrong) {
    const double sounded = at(onDropOff_).score;
    for (float& half_m : day_.trust_m.values()) {
        half_m = 4.0F;
    }
    const marks::Judgement guessed = at(onDropOff_);
    EXPECT_LT(guessed.score, 0.95 * sounded);
    EXPECT_GT(guessed.score, 0.3 * sounded);
    EXPECT_LT(timesOf(guessed, FactorKind::trust), 0.95);
    EXPECT_LT(guessed.toFindOut, 0.5 * given(guessed.expected).relativeWidth());
}

TEST_F(Judged, NeverGainByADepthThatNobodyKnows) {
    const double sounded = at(onShelf_).score;
    for (float& half_m : day_.trust_m.values()) {
        half_m = 3.0F;
    }
    EXPECT_LE(at(onShelf_).score, sounded);
}

TEST_F(Judged, CountWhatMayBeFoundOutByTheEagernessToTry) {
    const marks::Judgement judgement = at({250.0, -150.0});
    EXPECT_EQ(judgement.worth(0.0), judgement.score);
    EXPECT_GT(judgement.toFindOut, 0.2);
    EXPECT_NEAR(judgement.worth(2.0), judgement.score * (1.0 + 2.0 * judgement.toFindOut), 1e-12);
}

TEST_F(Judged, StandBesideWhatTheUserBelieves) {
    const double before = at(onDropOff_).score;
    day_.plan.weights.set(FactorKind::dropOff, 2.0);
    const marks::Judgement after = at(onDropOff_);
    const double value =
        std::ranges::find(after.factors, FactorKind::dropOff, &marks::Factor::kind)->value;
    EXPECT_NEAR(at(onDropOff_).score / before, std::exp(0.2 * (2.0 * value - 1.0)), 0.02);
}

TEST_F(Judged, WithoutALogAreWhatTheUserBelievesAlone) {
    day_.learned.reset();
    const marks::Judgement judgement = at(onDropOff_);
    EXPECT_FALSE(judgement.expected);
    EXPECT_EQ(judgement.factors.size(), marks::allFactorKinds.size());
    EXPECT_TRUE(judgement.features.empty());
    EXPECT_EQ(judgement.toFindOut, 0.0);
}

class Prospects : public Judged {
protected:
    [[nodiscard]] marks::Prospect prospectAt(geo::WaterPoint place) const {
        const auto around = marks::surroundingsOf(day_.input(), place, day_.plan.tackle.cast);
        return {day_.input(), {place, around}, day_.plan};
    }
    void expectAsJudged() const {
        const auto input = day_.input();
        for (const geo::WaterPoint place : {onDropOff_, onShelf_, geo::WaterPoint{250.0, -150.0}}) {
            const auto around = marks::surroundingsOf(input, place, day_.plan.tackle.cast);
            const marks::Judgement judged =
                marks::judgementOf(input, around, place, day_.plan, std::nullopt, ChosenBy::user);
            for (const double eagerness : {0.0, 1.0}) {
                EXPECT_NEAR(prospectAt(place).worth(input.learned != nullptr ? &input.learned->model
                                                                             : nullptr,
                                                    day_.plan.weights, eagerness),
                            judged.worth(eagerness), 1e-12);
            }
        }
    }
};

TEST_F(Prospects, AreWhatAPlaceIsJudgedTo) {
    expectAsJudged();
    for (float& half_m : day_.trust_m.values()) {
        half_m = 2.0F;
    }
    expectAsJudged();
    day_.plan.weights.set(FactorKind::dropOff, 2.0);
    day_.plan.weights.set(FactorKind::trust, 0.0);
    expectAsJudged();
    day_.learned.reset();
    expectAsJudged();
}

TEST_F(Prospects, ServeOtherBeliefsThanThoseTheyWereMadeWith) {
    const marks::Prospect before = prospectAt(onDropOff_);
    day_.plan.weights.set(FactorKind::dropOff, 2.0);
    const learning::CatchModel& model = day_.learned->model;
    EXPECT_EQ(before.worth(&model, day_.plan.weights, 1.0),
              prospectAt(onDropOff_).worth(&model, day_.plan.weights, 1.0));
    EXPECT_GT(before.worth(&model, day_.plan.weights, 1.0), before.worth(&model, {}, 1.0));
}

TEST(DepthChances, FollowTheNormalError) {
    const auto other = [](double depth_m, double half_m) {
        return marks::chanceOfOtherDepth(Depth::metres(depth_m), Length::metres(half_m));
    };
    // Half a metre is 1.96 standard deviations of a half-width of half a metre: 5 %.
    EXPECT_NEAR(other(2.0, 0.5), 0.05, 1e-9);
    EXPECT_NEAR(other(2.5, 1.0), 0.327087, 1e-5);
    EXPECT_NEAR(other(5.0, 1.0), 0.05, 1e-9) << "a fifth of the depth, where that is more";
    EXPECT_EQ(other(2.0, 0.0), 0.0);
    EXPECT_EQ(other(2.0, NAN), 1.0);
    const auto within = [](double depth_m, double half_m) {
        return marks::chanceOfDepthBetween(Depth::metres(0.5), Depth::metres(6.0),
                                           Depth::metres(depth_m), Length::metres(half_m));
    };
    EXPECT_NEAR(within(3.0, 0.2), 1.0, 1e-9);
    EXPECT_NEAR(within(6.5, 1.0), 0.5, 1e-9);
    EXPECT_NEAR(within(6.0, 0.5), 0.975, 1e-6);
    EXPECT_EQ(within(3.0, NAN), 1.0);
    EXPECT_EQ(within(9.0, NAN), 0.0);
}

TEST(Beliefs, AreNothingAtTheUsualWeightsBesideALog) {
    for (const FactorKind kind : marks::allFactorKinds) {
        EXPECT_EQ(marks::believedBesideLog({}, kind, 0.9), 0.0);
    }
    Weights strong;
    strong.set(FactorKind::dropOff, 2.0);
    strong.set(FactorKind::weedEdge, 0.0);
    EXPECT_NEAR(marks::believedBesideLog(strong, FactorKind::dropOff, 1.0), 0.2, 1e-12);
    EXPECT_NEAR(marks::believedBesideLog(strong, FactorKind::dropOff, 0.0), -0.2, 1e-12);
    EXPECT_NEAR(marks::believedBesideLog(strong, FactorKind::weedEdge, 1.0), -0.2, 1e-12);
    strong.set(FactorKind::dropOff, 50.0);
    EXPECT_NEAR(marks::believedBesideLog(strong, FactorKind::dropOff, 1.0), 0.2, 1e-12);
    strong.set(FactorKind::record, 0.0);
    EXPECT_NEAR(marks::believedBesideLog(strong, FactorKind::dropOff, 1.0), 0.4, 1e-12);
    strong.set(FactorKind::record, 1.6);
    EXPECT_EQ(marks::believedBesideLog(strong, FactorKind::dropOff, 1.0), 0.0);
    EXPECT_EQ(marks::believedBesideLog(strong, FactorKind::hour, 1.0), 0.0);
    strong.set(FactorKind::record, 0.0);
    EXPECT_EQ(marks::believedBesideLog(strong, FactorKind::record, 1.0), 0.0);
}

TEST(Beliefs, OfWindwardAndShelterMakeOneCurve) {
    Weights weights;
    EXPECT_EQ(marks::waveLikingOf(weights).ripple, 0.5);
    EXPECT_EQ(marks::waveLikingOf(weights).weight, 0.8);
    weights.set(FactorKind::windward, 1.2);
    EXPECT_DOUBLE_EQ(marks::waveLikingOf(weights).ripple, 0.75);
    EXPECT_DOUBLE_EQ(marks::waveLikingOf(weights).weight, 1.6);
    weights.set(FactorKind::shelter, 0.0);
    EXPECT_EQ(marks::waveLikingOf(weights).ripple, 1.0);
    // Alone, both weights count for the waves and windward for nothing else.
    EXPECT_NEAR(marks::believedAlone(weights, FactorKind::shelter, 1.0), 0.4 * 1.2 * 0.5, 1e-12);
    EXPECT_EQ(marks::believedAlone(weights, FactorKind::windward, 1.0), 0.0);
    EXPECT_EQ(marks::countingWeight(weights, FactorKind::windward), 0.0);
    EXPECT_EQ(marks::countingWeight(weights, FactorKind::dropOff), 1.0);
    // Beside a log the stronger of both: three times the usual is held to once above it.
    EXPECT_NEAR(marks::believedBesideLog(weights, FactorKind::shelter, 1.0), 0.2, 1e-12);
    EXPECT_NEAR(marks::believedBesideLog(weights, FactorKind::shelter, 0.0), -0.2, 1e-12);
    EXPECT_EQ(marks::believedBesideLog(weights, FactorKind::windward, 1.0), 0.0);
    weights.set(FactorKind::windward, 0.0);
    EXPECT_EQ(marks::waveLikingOf(weights).ripple, 0.5);
    EXPECT_EQ(marks::waveLikingOf(weights).weight, 0.0);
    EXPECT_EQ(marks::believedBesideLog(weights, FactorKind::shelter, 1.0), 0.0)
        << "who weighs neither likes no height best";
}

TEST(Beliefs, AloneGoByTheWeights) {
    Weights weights;
    EXPECT_NEAR(marks::believedAlone(weights, FactorKind::dropOff, 1.0), 0.2, 1e-12);
    EXPECT_NEAR(marks::believedAlone(weights, FactorKind::trust, 0.0), -0.06, 1e-12);
    EXPECT_EQ(marks::believedAlone(weights, FactorKind::record, 1.0), 0.0);
    EXPECT_EQ(marks::believedAlone(weights, FactorKind::lessTried, 1.0), 0.0);
}

TEST(Beliefs, MakeEagerByTheSliderAndByTheWeightOfWhatIsLessTried) {
    Weights weights;
    EXPECT_NEAR(marks::eagernessToTry(0.5, weights), 1.0, 1e-12);
    EXPECT_EQ(marks::eagernessToTry(0.0, weights), 0.0);
    EXPECT_NEAR(marks::eagernessToTry(1.0, weights), 2.0, 1e-12);
    weights.set(FactorKind::lessTried, 0.0);
    EXPECT_EQ(marks::eagernessToTry(1.0, weights), 0.0);
    weights.set(FactorKind::lessTried, 9.0);
    EXPECT_NEAR(marks::eagernessToTry(0.5, weights), 2.0, 1e-12);
}

TEST(PlaceFeatures, GoToTheReasonThatNamesThem) {
    EXPECT_EQ(marks::reasonOf(ZoneKind::dropOff), FactorKind::dropOff);
    EXPECT_EQ(marks::reasonOf(ZoneKind::weedBed), FactorKind::weedEdge);
    EXPECT_EQ(marks::reasonOf(ZoneKind::weedEdge), FactorKind::weedEdge);
    for (const ZoneKind kind : {ZoneKind::hump, ZoneKind::hole, ZoneKind::spur, ZoneKind::saddle}) {
        EXPECT_EQ(marks::reasonOf(kind), FactorKind::feature);
    }
    for (const ZoneKind kind :
         {ZoneKind::shelf, ZoneKind::plateau, ZoneKind::trough, ZoneKind::flat}) {
        EXPECT_EQ(marks::reasonOf(kind), FactorKind::bottom);
    }
}

TEST(PlaceFeatures, TellEachGroupOnceAndKnowOpenWater) {
    const support::MadeUpDay day;
    const geo::WaterPoint place{20.0, 7.0};
    const auto around = marks::surroundingsOf(day.input(), place, Length::metres(30.0));
    marks::Circumstances then;
    then.windward = 0.8;
    then.waterTemperature = units::Temperature::celsius(16.0);
    then.season = 2;
    const auto parts = marks::placeFeaturesOf(day.input(), around, place, then);
    ASSERT_EQ(parts.size(), 8U);
    const auto count = [&](Group group) {
        const auto all = marks::joined(parts);
        return std::ranges::count(all, group, &learning::Feature::group);
    };
    EXPECT_EQ(count(Group::kindAt), 1);
    EXPECT_EQ(count(Group::section), 1);
    EXPECT_EQ(count(Group::sectionBySeason), 1);
    EXPECT_EQ(count(Group::wind), 1);
    EXPECT_EQ(count(Group::place), 4);
    EXPECT_EQ(count(Group::depth), count(Group::depthByTemperature));
    const auto wind = std::ranges::find(parts, FactorKind::windward, &marks::FeaturePart::kind);
    EXPECT_NEAR(wind->features.front().value, 0.6, 1e-12);
    // Deep water east of the hump belongs to no zone.
    const geo::WaterPoint open{280.0, -100.0};
    const auto bare = marks::placeFeaturesOf(
        day.input(), marks::surroundingsOf(day.input(), open, Length::metres(30.0)), open, {});
    const auto bottom = std::ranges::find(bare, FactorKind::bottom, &marks::FeaturePart::kind);
    ASSERT_EQ(bottom->features.size(), 1U);
    EXPECT_EQ(bottom->features.front(), (learning::Feature{Group::kindAt, 0, 1.0}));
}

TEST(Worth, WithoutALogIsTheSumOfTheValuesByTheirWeights) {
    marks::Judgement judgement;
    judgement.factors = {{FactorKind::depth, 0.5, 1.0, {}, 1.0},
                         {FactorKind::dropOff, 0.8, 0.25, {}, 1.0}};
    EXPECT_NEAR(judgement.worth(0.5), 0.5 * 1.0 + 0.8 * 0.25, 1e-12);
    judgement.factors[1].weight = 0.0;
    EXPECT_NEAR(judgement.worth(0.5), 0.5, 1e-12);
}

} // namespace
