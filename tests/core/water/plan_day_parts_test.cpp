// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/place_anchors.h"
#include "core/marks/order_day.h"
#include "core/marks/propose_marks.h"
#include "core/marks/rank_marks.h"
#include "core/rods/spread_rods.h"
#include "core/water/steps/day_distances.h"
#include "core/water/steps/day_waves.h"
#include "core/water/steps/hour_weight.h"
#include "core/water/steps/learn_log.h"
#include "core/water/steps/plan_day.h"
#include "tests/support/given.h"
#include "tests/support/holding.h"
#include "tests/support/planned_water.h"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using support::given;
using support::PlannedWater;
using units::Length;

logbook::Stay stayAt(const PlannedWater& made, WaterPoint place, int day, double hour, int fish) {
    logbook::Stay stay;
    stay.start = made.water.clock.at(std::chrono::year(2025) / 11 / day,
                                     std::chrono::minutes(std::lround(60.0 * hour)));
    stay.end = stay.start + std::chrono::hours(3);
    stay.place = made.onEarth(place);
    stay.rods = 2;
    for (int k = 0; k < fish; ++k) {
        stay.runs.push_back({});
        stay.runs.back().time = stay.start + std::chrono::minutes(10 + 5 * k);
    }
    return stay;
}

/// The plane with a log: the plateau in the west is good, and best in the afternoon; the east is
/// poor.
const PlannedWater& logged() {
    static const PlannedWater water = [] {
        PlannedWater made;
        for (int day = 1; day <= 8; ++day) {
            made.water.log.push_back(stayAt(made, {-200, 20}, day, 9.0, 1));
            made.water.log.push_back(stayAt(made, {-200, -60}, day, 13.0, 6));
            made.water.log.push_back(stayAt(made, {120, 0}, day, 16.25, day % 4 == 0 ? 1 : 0));
        }
        return made;
    }();
    return water;
}

water::PlannedDay planOf(const PlannedWater& made) {
    base::Progress quiet;
    return water::planDay(made.water, made.derived, made.water.plan, quiet).value();
}

/// What the engines give for inputs laid here, each setting written out: nothing of plan_day.
struct ByHand {
    explicit ByHand(const PlannedWater& made)
        : closed(made.ground.depth.frame(), 0), isGuess(made.ground.depth.frame(), 0),
          today(made.ground.depth.frame()), plan(made.water.plan) {
        const grid::GridFrame& frame = today.frame();
        for (std::size_t i = 0; i < frame.size(); ++i) {
            const WaterPoint p = frame.centre(frame.cellAt(i));
            isGuess[i] = made.ground.depth.has(i) && PlannedWater::isGuess(p) ? 1 : 0;
            for (double east = -1.99; east < 2.0; east += 0.19) {
                for (double north = -1.99; north < 2.0; north += 0.19) {
                    const bool is = PlannedWater::isClosed({p.x_m + east, p.y_m + north});
                    closed[i] = is ? 1 : closed[i];
                }
            }
            // The drawn bottom never stands above the chart's level.
            const double today_m =
                std::max(PlannedWater::chartDepth_m(p), 0.0) + PlannedWater::level_m;
            if (made.ground.depth.has(i) && today_m > 0.0) {
                today.set(i, units::Depth::metres(today_m));
            }
        }
        plan.tackle.rods = 4;
        boat.length = Length::metres(4.5);
        boat.bowHeight = Length::metres(0.8);
        boat.bowRope = Length::metres(16.0);
        boat.sternRope = Length::metres(6.5);
        boat.scope = 3.5;
        rodSettings.rods = 4;
        rodSettings.cast = Length::metres(15.0);
        rodSettings.nearest = Length::metres(7.5);
        rodSettings.overDepth = Length::metres(0.45);
    }

    grid::Grid<std::uint8_t> closed;
    grid::Grid<std::uint8_t> isGuess;
    grid::DepthGrid today;
    marks::Plan plan;
    anchoring::BoatSettings boat;
    rods::RodSettings rodSettings;
};

/// Without a log.
marks::MarkInput inputOf(const PlannedWater& made, const ByHand& hand, const rods::Ground& ground) {
    return {.frame = made.ground.frame,
            .outline = made.ground.outline,
            .ground = ground,
            .bands = *made.water.settings.bands,
            .sections = *made.derived.sections,
            .trust_m = made.derived.drawn->trust.halfWidths_m(),
            .isGuess = &hand.isGuess,
            .learned = nullptr,
            .waveHeightAt = {}};
}

// Today's depths are kept as float: they differ by rounding.
void expectSame(const anchoring::Anchor& a, const anchoring::Anchor& b) {
    EXPECT_NEAR(geo::distance_m(a.place, b.place), 0.0, 1e-4);
    EXPECT_NEAR(a.depth.inMetres(), b.depth.inMetres(), 1e-4);
    EXPECT_NEAR(a.rope.inMetres(), b.rope.inMetres(), 1e-4);
    EXPECT_NEAR(a.scope, b.scope, 1e-4);
}

/// Which kinds the variants hold; their figures are those of the marks.
template <class List>
std::vector<std::size_t> kindsOf(const List& list) {
    std::vector<std::size_t> kinds;
    for (const auto& one : list) {
        kinds.push_back(one.index());
    }
    return kinds;
}

void expectSame(const marks::Mark& a, const marks::Mark& b) {
    EXPECT_EQ(a.rank, b.rank);
    EXPECT_EQ(a.isPinned, b.isPinned);
    EXPECT_EQ(a.name, b.name);
    EXPECT_EQ(a.place, b.place);
    EXPECT_NEAR(a.depth.inMetres(), b.depth.inMetres(), 1e-6);
    EXPECT_EQ(a.trust, b.trust);
    EXPECT_EQ(a.zones, b.zones);
    EXPECT_EQ(kindsOf(a.cautions), kindsOf(b.cautions));
    expectSame(a.anchors.bow, b.anchors.bow);
    ASSERT_EQ(a.anchors.stern.has_value(), b.anchors.stern.has_value());
    expectSame(*a.anchors.stern, *b.anchors.stern);
    EXPECT_EQ(a.anchors.lie, b.anchors.lie);
    EXPECT_EQ(a.anchors.offTheWind_deg, b.anchors.offTheWind_deg);
    EXPECT_EQ(kindsOf(a.anchors.cautions), kindsOf(b.anchors.cautions));
    EXPECT_EQ(a.anchors.beamPull_N, b.anchors.beamPull_N);
    EXPECT_NEAR(a.anchors.fallBackRope.inMetres(), b.anchors.fallBackRope.inMetres(), 1e-4);
    EXPECT_NEAR(a.score, b.score, 1e-7);
    ASSERT_EQ(a.factors.size(), b.factors.size());
    for (std::size_t k = 0; k < a.factors.size(); ++k) {
        EXPECT_EQ(a.factors[k].because.index(), b.factors[k].because.index());
        EXPECT_NEAR(a.factors[k].value, b.factors[k].value, 1e-7);
    }
    ASSERT_EQ(a.spread.rods.size(), b.spread.rods.size());
    for (std::size_t k = 0; k < a.spread.rods.size(); ++k) {
        EXPECT_EQ(a.spread.rods[k].place, b.spread.rods[k].place);
        EXPECT_NEAR(a.spread.rods[k].stopKnot.inMetres(), b.spread.rods[k].stopKnot.inMetres(),
                    1e-6);
        EXPECT_EQ(a.spread.rods[k].over, b.spread.rods[k].over);
    }
}

TEST(PlanDay, IsWhatItsPartsGiveForWhatTheWaterAndThePlanSay) {
    const PlannedWater& made = logged();
    const ByHand hand(made);
    base::Progress quiet;
    const rods::Ground ground(hand.today, units::Depth::metres(6.0), &hand.closed,
                              *made.derived.structure, made.derived.weed->zones);
    marks::MarkInput input = inputOf(made, hand, ground);
    const water::LearnedLog log =
        water::learnedFor(water::fitLog(made.water, input, hand.plan, quiet).value(), hand.plan);
    ASSERT_TRUE(log.learned);
    input.learned = &*log.learned;
    water::WavesOfWinds near(made.ground.outline, hand.today, hand.plan.day);
    input.wavesNear = [&near](WaterPoint p) { return near.near(p); };
    std::vector<marks::Candidate> pinned;
    for (const water::PinnedMark& mark : made.water.pinnedMarks) {
        pinned.push_back({made.ground.frame.toWater(mark.place), 0.0, true, mark.name});
    }
    std::size_t refused = 0;
    const auto laidAt = [&](WaterPoint place, Length waves) {
        auto anchors = anchoring::placeAnchors(
            hand.today, ground.isClosed(place) ? nullptr : &hand.closed, place,
            {units::Bearing::degrees(120.0), units::Speed::metresPerSecond(7.0), waves}, hand.boat,
            quiet);
        refused += anchors ? 0U : 1U;
        return anchors;
    };
    const auto candidates =
        marks::proposeMarks(input, hand.plan, pinned, {}, quiet,
                            [&](const marks::Candidate& one) -> base::Result<bool> {
                                return laidAt(one.place, Length()).has_value();
                            })
            .value();
    const water::PlannedDay planned = planOf(made);
    EXPECT_EQ(planned.looked, candidates.size() + refused);
    std::vector<marks::WorkedCandidate> worked;
    for (const marks::Candidate& candidate : candidates) {
        const auto waves = [&] {
            // As the plan found it, for the marks that it kept; else nothing depends on it.
            const auto mark =
                std::ranges::find(planned.marks, candidate.place, &marks::Mark::place);
            return mark == planned.marks.end()
                       ? marks::WaveState()
                       : marks::WaveState{given(mark->fetch), given(mark->waveHeight)};
        }();
        const auto anchors = laidAt(candidate.place, waves.height);
        if (anchors && waves.fetch > Length()) {
            const auto spread = rods::spreadRods(ground, *anchors, hand.rodSettings, quiet);
            worked.push_back({candidate, *anchors, spread.value(), waves});
        }
    }
    EXPECT_GT(refused, 10U) << "the east is too deep for the ropes";
    EXPECT_EQ(planned.unanchorable, refused);
    const auto marks = marks::rankMarks(input, hand.plan, worked, {}, quiet).value();
    ASSERT_EQ(planned.marks.size(), marks.size());
    for (std::size_t k = 0; k < marks.size(); ++k) {
        expectSame(planned.marks[k], marks[k]);
    }
}

TEST(PlanDay, HighWavesAreToldOfTheMarkAndOfItsAnchors) {
    PlannedWater made;
    made.water.plan.day.wind.speed = units::Speed::metresPerSecond(30.0);
    // The program itself proposes none in such waves; the user may.
    made.water.pinnedMarks = {{"Open", made.onEarth({-200, 60})}};
    made.water.plan.count = 1;
    const water::PlannedDay day = planOf(made);
    for (const marks::Mark& mark : day.marks) {
        EXPECT_GT(given(mark.waveHeight).inMetres(), 0.31);
        EXPECT_THAT(mark.cautions,
                    testing::Contains(marks::Caution(marks::WavesHere{given(mark.waveHeight)})));
        EXPECT_TRUE(support::holds<anchoring::HighWaves>(mark.anchors.cautions));
    }
    EXPECT_EQ(day.cautions.front(), water::DayCaution(water::StayAshore{11}));
}

TEST(PlanDay, OrdersTheDayByTheMarksScoresWaysAndHours) {
    const PlannedWater& made = logged();
    const water::PlannedDay planned = planOf(made);
    base::Progress quiet;
    marks::DayInput input;
    std::vector<WaterPoint> places;
    for (const marks::Mark& mark : planned.marks) {
        input.stops.push_back({mark.rank, mark.score});
        places.push_back(mark.place);
    }
    const auto distances =
        water::dayDistances(made.water, made.ground.outline, places,
                            made.ground.frame.toWater(given(made.water.plan.launch)))
            .value();
    input.between_m = distances.between_m;
    input.fromLaunch_m = distances.fromLaunch_m;
    const units::Day day = std::chrono::year(2026) / 11 / 14;
    input.start = made.water.clock.at(day, std::chrono::hours(9));
    input.end = made.water.clock.at(day, std::chrono::minutes(17 * 60 + 30));
    input.boatSpeed = units::Speed::metresPerSecond(1.2);
    const ByHand hand(made);
    const rods::Ground ground(hand.today, units::Depth::metres(6.0), &hand.closed,
                              *made.derived.structure, made.derived.weed->zones);
    const water::LearnedLog log = water::learnedFor(
        water::fitLog(made.water, inputOf(made, hand, ground), hand.plan, quiet).value(),
        hand.plan);
    input.hourWeight = water::hourWeightOf(log.learned, made.water.clock);
    ASSERT_TRUE(input.hourWeight);
    input.light = planned.light;
    const marks::DayPlan expected = marks::orderDay(input, {}, quiet).value();
    ASSERT_EQ(planned.day.stops.size(), expected.stops.size());
    for (std::size_t k = 0; k < expected.stops.size(); ++k) {
        EXPECT_EQ(planned.day.stops[k].rank, expected.stops[k].rank);
        EXPECT_EQ(planned.day.stops[k].arrive, expected.stops[k].arrive);
        EXPECT_EQ(planned.day.stops[k].leave, expected.stops[k].leave);
        EXPECT_EQ(planned.day.stops[k].move, expected.stops[k].move);
    }
    EXPECT_EQ(planned.day.moves, expected.moves);
    EXPECT_EQ(planned.day.dark, expected.dark);
    EXPECT_EQ(planned.day.leastStay, expected.leastStay);
    EXPECT_EQ(planned.day.leftOut, expected.leftOut);
}

TEST(PlanDay, ProposesNoMarkInWavesTooRoughForAnOpenBoatAtAnchor) {
    PlannedWater made;
    made.water.plan.day.wind.speed = units::Speed::metresPerSecond(26.0);
    made.water.pinnedMarks.clear();
    const water::PlannedDay day = planOf(made);
    for (const marks::Mark& mark : day.marks) {
        EXPECT_LE(given(mark.waveHeight).inMetres(), 0.35);
    }
    EXPECT_GT(day.excluded[static_cast<std::size_t>(marks::Exclusion::tooRough)].inHectares(), 1.0);
}

TEST(PlanDay, OfAGaleIsAnotherListThanOfACalmAndSaysWhatIsTooRough) {
    const auto planIn = [](double speed_m_s) {
        PlannedWater made;
        made.water.plan.day.wind.speed = units::Speed::metresPerSecond(speed_m_s);
        made.water.pinnedMarks.clear();
        return planOf(made);
    };
    const auto placesOf = [](const water::PlannedDay& day) {
        std::vector<WaterPoint> places;
        for (const marks::Mark& mark : day.marks) {
            places.push_back(mark.place);
        }
        return places;
    };
    const water::PlannedDay calm = planIn(0.0);
    EXPECT_NE(placesOf(planIn(12.0)), placesOf(calm));
    EXPECT_FALSE(support::holds<water::TooRoughWater>(calm.basis));
    const water::PlannedDay gale = planIn(26.0);
    const units::Area rough = gale.excluded[static_cast<std::size_t>(marks::Exclusion::tooRough)];
    EXPECT_EQ(support::holds<water::TooRoughWater>(gale.basis), gale.marks.size() == 6U);
    EXPECT_EQ(support::holds<water::WaterLeftOut>(gale.basis), gale.marks.size() < 6U);
    EXPECT_GT(rough.inHectares(), 1.0);
}

TEST(PlanDay, LeavesMarksOutOfADayTooShortAndSaysForWhichStay) {
    PlannedWater made;
    made.water.plan.day.end = std::chrono::hours(11);
    const water::PlannedDay planned = planOf(made);
    ASSERT_FALSE(planned.day.leftOut.empty());
    EXPECT_EQ(planned.day.leastStay, std::chrono::minutes(30));
}

TEST(PlanDay, RefusesAWaterThatIsNotDerivedYetWhateverIsMissing) {
    const PlannedWater made;
    base::Progress quiet;
    const auto refused = [&](auto lose) {
        water::Water water = made.water;
        water::Derived derived = made.derived;
        lose(water, derived);
        const auto planned = water::planDay(water, derived, water.plan, quiet);
        return !planned && planned.error().kind == base::ErrorKind::wrongUse;
    };
    EXPECT_FALSE(refused([](water::Water&, water::Derived&) {}));
    EXPECT_TRUE(refused([](water::Water& w, water::Derived&) { w.frame.reset(); }));
    EXPECT_TRUE(refused([](water::Water&, water::Derived& d) { d.outline.reset(); }));
    EXPECT_TRUE(refused([](water::Water&, water::Derived& d) { d.drawn.reset(); }));
    EXPECT_TRUE(refused([](water::Water&, water::Derived& d) { d.structure.reset(); }));
    EXPECT_TRUE(refused([](water::Water&, water::Derived& d) { d.weed.reset(); }));
    EXPECT_TRUE(refused([](water::Water&, water::Derived& d) { d.sections.reset(); }));
}

TEST(PlanDay, SaysWhyNoPlaceHoldsTheBoat) {
    PlannedWater made;
    made.water.pinnedMarks.clear();
    made.water.plan.tackle.bowRope = Length::metres(5.0);
    made.water.plan.tackle.sternRope = Length::metres(5.0);
    made.water.plan.tackle.bowHeight = Length::metres(2.0);
    base::Progress quiet;
    const auto planned = water::planDay(made.water, made.derived, made.water.plan, quiet);
    ASSERT_FALSE(planned);
    EXPECT_EQ(planned.error().kind, base::ErrorKind::unusableInput);
    EXPECT_NE(planned.error().what.find("holds the boat between two anchors ("), std::string::npos);
    EXPECT_NE(planned.error().what.find("the ropes are too short"), std::string::npos);
    EXPECT_EQ(planned.error().whatToDo,
              "take more rope, a smaller scope, or another limit of depth");
}

TEST(PlanDay, TellsOfAnOwnMarkThatTheLevelHasLeftDry) {
    PlannedWater made;
    made.water.pinnedMarks = {{"", made.onEarth({-295.0, -100.0})},
                              {"Old post", made.onEarth({62.3, 62.7})}};
    const water::PlannedDay dry = planOf(made);
    ASSERT_EQ(dry.refused.size(), 1U);
    EXPECT_EQ(dry.refused[0].place, made.water.pinnedMarks[0].place);
    EXPECT_EQ(dry.refused[0].why.what, "it lies on no water of this chart today");
    // 0.16 m under chart level there, so half a metre of fall is what took the water.
    made.water.plan.day.levelChange = Length::metres(0.3);
    for (const water::RefusedMark& refused : planOf(made).refused) {
        EXPECT_NE(refused.why.what, dry.refused[0].why.what);
    }
}

TEST(PlanDay, AllowsASmallerScopeThanTheUsualLeastWhereThatIsAskedFor) {
    PlannedWater made;
    made.water.plan.tackle.scope = 1.6;
    for (const marks::Mark& mark : planOf(made).marks) {
        EXPECT_LE(mark.anchors.bow.scope, 1.6 + 1e-6);
    }
}

TEST(PlanDay, StopsWhenAskedAndTellsASettingOutOfRange) {
    struct Stopped : base::Progress {
        [[nodiscard]] bool stopAsked() const override { return true; }
    } stopped;
    PlannedWater made;
    const auto none = water::planDay(made.water, made.derived, made.water.plan, stopped);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, base::ErrorKind::cancelled);
    base::Progress quiet;
    made.water.plan.tackle.sternRope = Length::metres(300.0);
    const auto wrong = water::planDay(made.water, made.derived, made.water.plan, quiet);
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().kind, base::ErrorKind::wrongUse);
}

TEST(PlanDay, LetsTheLogReachTheScore) {
    const PlannedWater& made = logged();
    const water::PlannedDay planned = planOf(made);
    const double mean = given(planned.meanPer10RodHours);
    EXPECT_GT(mean, 0.5);
    EXPECT_LT(mean, 10.0 * 58.5 / 144.0) << "the good place is no mean of the water";
    for (const marks::Mark& mark : planned.marks) {
        const marks::ExpectedCatch expected = given(mark.expected);
        double product = mean;
        for (const marks::Factor& factor : mark.factors) {
            product *= factor.times;
        }
        EXPECT_NEAR(expected.per10RodHours, product, 1e-9);
        EXPECT_NEAR(mark.score, expected.per10RodHours / mean, 1e-9);
        EXPECT_LT(expected.low, expected.per10RodHours);
        EXPECT_GT(expected.high, expected.per10RodHours);
        const auto record =
            std::ranges::find(mark.factors, marks::FactorKind::record, &marks::Factor::kind);
        EXPECT_NEAR(record->value, mark.score / (1.0 + mark.score), 1e-9);
    }
    EXPECT_LT(planned.marks.front().place.x_m, -130.0) << "the plateau in the west is good";
    EXPECT_THAT(planned.basis, testing::IsEmpty());
    for (const marks::Mark& mark : planned.marks) {
        EXPECT_EQ(mark.factors.size(), marks::allFactorKinds.size() + (mark.isPinned ? 2 : 3));
    }
}

TEST(PlanDay, SaysThatWithoutALogTheListIsByBeliefsAlone) {
    const water::PlannedDay planned = planOf(PlannedWater());
    EXPECT_FALSE(planned.meanPer10RodHours);
    EXPECT_THAT(planned.basis, testing::Contains(water::PlanNote(water::NothingCaught{})));
    for (const marks::Mark& mark : planned.marks) {
        EXPECT_FALSE(mark.expected);
        EXPECT_FALSE(mark.toLearn);
    }
}

TEST(PlanDay, SaysThatTheLogOfAnotherLakeSaysNothing) {
    PlannedWater made;
    made.water.log.push_back(stayAt(made, {9000, 9000}, 3, 9.0, 4));
    const water::PlannedDay planned = planOf(made);
    EXPECT_FALSE(planned.meanPer10RodHours);
    EXPECT_THAT(planned.basis, testing::Contains(water::PlanNote(water::NoStayCounts{1})));
    EXPECT_THAT(planned.basis, testing::Contains(water::PlanNote(water::StaysElsewhere{1, 1})));
}

TEST(PlanDay, FishesWhatIsKnownOrTriesNewWaterAsTheSliderSays) {
    PlannedWater made = logged();
    made.water.pinnedMarks.clear();
    const auto planWith = [&](double tryNew) {
        made.water.plan.tryNew = tryNew;
        return planOf(made);
    };
    const auto expectedOf = [](const water::PlannedDay& day) {
        double sum = 0.0;
        for (const marks::Mark& mark : day.marks) {
            sum += given(mark.expected).per10RodHours;
        }
        return sum;
    };
    const water::PlannedDay known = planWith(0.0);
    const water::PlannedDay fresh = planWith(1.0);
    EXPECT_GT(expectedOf(known), expectedOf(fresh));
    EXPECT_TRUE(std::ranges::none_of(known.marks, &marks::Mark::toLearn));
    EXPECT_TRUE(std::ranges::any_of(fresh.marks, &marks::Mark::toLearn));
    const water::PlannedDay again = planWith(1.0);
    ASSERT_EQ(again.marks.size(), fresh.marks.size());
    for (std::size_t k = 0; k < again.marks.size(); ++k) {
        EXPECT_EQ(again.marks[k].place, fresh.marks[k].place);
        EXPECT_EQ(again.marks[k].score, fresh.marks[k].score);
    }
}

TEST(PlanDay, MeasuresWhatEachConditionLeavesOut) {
    PlannedWater made;
    made.water.plan.tackle.bowRope = Length::metres(8.0);
    const water::PlannedDay planned = planOf(made);
    const auto ha = [&](marks::Exclusion why) {
        return planned.excluded[static_cast<std::size_t>(why)].inHectares();
    };
    // Deeper than 6 m today: east of x = 208 m in the middle, 92 m of 300 by 400 m.
    EXPECT_NEAR(ha(marks::Exclusion::tooDeep), 3.67, 0.2);
    // Eight metres of rope at twice the depth, a fifth left: from 5 m on, 83 m more.
    EXPECT_NEAR(ha(marks::Exclusion::ropesTooShort), 3.3, 0.35);
    EXPECT_GT(ha(marks::Exclusion::closed), 0.2);
    EXPECT_EQ(ha(marks::Exclusion::tooRough), 0.0);
}

} // namespace
