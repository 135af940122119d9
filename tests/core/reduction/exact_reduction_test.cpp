// SPDX-License-Identifier: GPL-3.0-or-later
// Depths, places, crossings and ties against figures worked out by formula.
#include "core/reduction/correct_positions.h"
#include "core/reduction/find_crossings.h"
#include "core/reduction/normal_equations.h"
#include "core/reduction/position_delay.h"
#include "core/reduction/robust.h"
#include "core/reduction/tie_days.h"
#include "tests/core/reduction/survey_builder.h"

#include <gtest/gtest.h>

#include <numbers>

namespace reduction {

namespace {

using soundings::Verdict;
using units::Length;
using units::WaterLevel;
using namespace std::chrono_literals;

soundings::SurveyDay eastwards(std::size_t count, double depth_m) {
    return MadeUpDay::along({0, 0}, {2.0 * static_cast<double>(count - 1), 0}, count,
                            [depth_m](geo::WaterPoint) { return depth_m; });
}

/// Speed of sound by W. Marczak 1997, J. Acoust. Soc. Am. 102, 2776: 1421.633 m/s at 4 C, 1482.380
/// at 20 C.
TEST(ReducedDepth, IsTheSumOfAllThatIsKnownOfEachDay) {
    std::vector<soundings::SurveyDay> days{eastwards(11, 10.0), eastwards(11, 8.0),
                                           eastwards(11, 6.0), eastwards(11, 5.0)};
    days[0].waterTemperature = units::Temperature::celsius(4.0);
    days[0].sounder.draft = units::Depth::metres(0.3);
    days[0].gauge = soundings::Gauge::constant(WaterLevel::metresOnGauge(1.45));
    days[1].waterTemperature = units::Temperature::celsius(20.0);
    days[1].sounder.assumedSoundSpeed = units::Speed::metresPerSecond(1450.0);
    const auto start = *days[1].soundings[0].time;
    days[1].gauge = soundings::Gauge::table(
        {{start, WaterLevel::metresOnGauge(1.0)}, {start + 10s, WaterLevel::metresOnGauge(0.5)}});
    days[2].waterTemperature = units::Temperature::celsius(20.0);
    days[2].sounder.measuresBySound = false;
    days[3].setAsideByHand = {2, 99};
    ReductionSettings settings;
    settings.chartLevel = WaterLevel::metresOnGauge(1.2);
    settings.dayOffsets = {Length::metres(0.05), Length::metres(-0.07), Length(),
                           Length::metres(1.0)};
    base::Progress progress;
    const auto survey = correctDepths(days, MadeUpDay::frame(), settings, progress);
    ASSERT_TRUE(survey);
    for (std::size_t i = 0; i < 11; ++i) {
        const double share = static_cast<double>(i) / 10.0;
        EXPECT_NEAR(survey->days[0].depth_m[i],
                    10.0 * 1421.633 / 1500.0 + 0.3 - (1.45 - 1.2) + 0.05, 1e-5);
        EXPECT_NEAR(survey->days[1].depth_m[i],
                    8.0 * 1482.380 / 1450.0 - (1.0 - 0.5 * share - 1.2) - 0.07, 1e-5);
        EXPECT_NEAR(survey->days[2].depth_m[i], 6.0, 1e-12);
        EXPECT_NEAR(survey->days[3].depth_m[i], 6.0, 1e-12);
        EXPECT_EQ(survey->days[3].verdicts[i], i == 2 ? Verdict::byHand : Verdict::kept);
        EXPECT_NEAR(survey->days[2].points[i].x_m, 2.0 * static_cast<double>(i), 1e-6);
        EXPECT_NEAR(survey->days[2].points[i].y_m, 0.0, 1e-6);
    }
    EXPECT_EQ(survey->soundingCount(), 44U);
    EXPECT_EQ(survey->keptCount(), 43U);
    // Without a level of their own, depths refer to the first that was read: a table's middle.
    days.erase(days.begin());
    EXPECT_NEAR(chartLevelOf(days, {})->inMetresOnGauge(), 0.75, 1e-12);
    settings.dayOffsets.clear();
    settings.chartLevel.reset();
    EXPECT_NEAR(correctDepths(days, MadeUpDay::frame(), settings, progress)->days[0].depth_m[0],
                8.0 * 1482.380 / 1450.0 - 0.25, 1e-5);
}

TEST(ReducedDepth, OfAnUnknownTemperatureOrAMissingSpeedIsNotCorrected) {
    soundings::SurveyDay day = eastwards(3, 10.0);
    EXPECT_EQ(termsOf({day}, 0, 0, {}).soundSpeed, Length());
    day.waterTemperature = units::Temperature::celsius(4.0);
    day.sounder.assumedSoundSpeed = units::Speed::metresPerSecond(0.0);
    EXPECT_EQ(termsOf({day}, 0, 0, {}).soundSpeed, Length());
}

/// East at 2 m/s for ten soundings, then north, a sounding a second.
soundings::SurveyDay roundTheCorner() {
    soundings::SurveyDay day = eastwards(10, 5.0);
    const soundings::SurveyDay north =
        MadeUpDay::along({18, 2}, {18, 20}, 10, [](geo::WaterPoint) { return 5.0; });
    for (const soundings::Sounding& one : north.soundings) {
        day.soundings.edit().push_back(one);
        *day.soundings.edit().back().time += 10s;
    }
    return day;
}

std::vector<geo::WaterPoint> movedBy(soundings::SurveyDay day, double delay_s) {
    day.agreedDelay_s = delay_s;
    return correctPositions({day}, MadeUpDay::reduced({day})).days[0].points;
}

void expectAt(const geo::WaterPoint& point, double x_m, double y_m, const char* what) {
    EXPECT_NEAR(point.x_m, x_m, 1e-6) << what;
    EXPECT_NEAR(point.y_m, y_m, 1e-6) << what;
}

TEST(AgreedDelay, MovesEachSoundingOnwardAlongItsPass) {
    const auto later = movedBy(roundTheCorner(), 1.5);
    expectAt(later[0], 3, 0, "onward by a second and a half");
    expectAt(later[8], 18, 1, "round the corner");
    expectAt(later[19], 18, 23, "straight on behind the last");
    const auto earlier = movedBy(roundTheCorner(), -1.5);
    expectAt(earlier[0], -3, 0, "straight back before the first");
    expectAt(earlier[10], 17, 0, "back round the corner");
    expectAt(earlier[19], 18, 17, "back");
    expectAt(movedBy(roundTheCorner(), 0.0)[3], 6, 0, "stays");
}

TEST(AgreedDelay, MovesNothingOverAGapAPassOrWithWhatIsSetAside) {
    soundings::SurveyDay gap = roundTheCorner();
    for (std::size_t i = 10; i < 20; ++i) {
        *gap.soundings.edit()[i].time += 10s; // From the tenth to the next are now 11 s.
    }
    expectAt(movedBy(gap, 1.5)[9], 21, 0, "straight on where the pass breaks off");
    for (std::size_t i = 10; i < 20; ++i) {
        *gap.soundings.edit()[i].time -= 1s; // 10 s: one way.
    }
    expectAt(movedBy(gap, 5.0)[9], 18, 1, "halfway in ten seconds");
    soundings::SurveyDay passes = roundTheCorner();
    passes.passStarts = {0, 10};
    expectAt(movedBy(passes, 1.5)[9], 21, 0, "straight on at the end of the pass");
    soundings::SurveyDay aside = roundTheCorner();
    aside.setAsideByHand = {9};
    expectAt(movedBy(aside, 1.0)[8], 17, 1, "straight between the kept ones");
    expectAt(movedBy(aside, 1.0)[9], 18, 0, "set aside: stays");
    soundings::SurveyDay untimed = roundTheCorner();
    for (soundings::Sounding& one : untimed.soundings.edit()) {
        one.time.reset();
    }
    expectAt(movedBy(untimed, 1.5)[3], 6, 0, "without a time: stays");
    // Only the day that agreed is moved.
    std::vector<soundings::SurveyDay> days{roundTheCorner(), roundTheCorner()};
    days[1].agreedDelay_s = 1.0;
    const auto both = correctPositions(days, MadeUpDay::reduced(days));
    expectAt(both.days[0].points[0], 0, 0, "not agreed");
    expectAt(both.days[1].points[0], 2, 0, "agreed");
}

TEST(PositionDelayIsWorthTaking, FromTwoTenthsAndThreeTimesItsErrorOn) {
    struct Row {
        bool isKnown;
        double delay_s;
        double error_s;
        bool isWorth;
    };
    for (const Row& row :
         {Row{true, 0.2, 0.0666, true}, Row{true, -0.2, 0.0666, true},
          Row{true, 0.199, 0.01, false}, Row{true, 0.9, 0.301, false},
          Row{true, -0.9, 0.301, false}, Row{true, 0.9, 0.3, true}, Row{false, 0.9, 0.1, false}}) {
        PositionDelay delay;
        delay.isKnown = row.isKnown;
        delay.delay_s = row.delay_s;
        delay.error_s = row.error_s;
        EXPECT_EQ(delay.isWorthTaking(), row.isWorth) << row.delay_s << ' ' << row.error_s;
    }
}

std::vector<soundings::KeptSounding> line(geo::WaterPoint from, geo::WaterPoint to, int count,
                                          double depth_m, int day, int pass) {
    std::vector<soundings::KeptSounding> kept;
    for (int i = 0; i < count; ++i) {
        const double share = count == 1 ? 0.0 : static_cast<double>(i) / (count - 1);
        kept.push_back({{},
                        std::lerp(from.x_m, to.x_m, share),
                        std::lerp(from.y_m, to.y_m, share),
                        depth_m + 0.1 * i,
                        day,
                        pass});
    }
    return kept;
}

std::vector<Crossing> crossingsOf(const std::vector<soundings::KeptSounding>& a,
                                  const std::vector<soundings::KeptSounding>& b,
                                  const CrossingSettings& settings = {}) {
    std::vector<soundings::KeptSounding> all = a;
    all.insert(all.end(), b.begin(), b.end());
    base::Progress progress;
    return findCrossings(all, settings, progress).value();
}

TEST(Crossing, IsReadStraightBetweenTheFourSoundingsRoundIt) {
    // East from 0 to 40 in steps of 10; north through x = 13 from -12 in steps of 8.
    const auto found =
        crossingsOf(line({0, 0}, {40, 0}, 5, 5.0, 3, 0), line({13, -12}, {13, 20}, 5, 7.0, 4, 1),
                    {.longestStep_m = 15.0, .leastApart = 2});
    ASSERT_EQ(found.size(), 1U);
    const Crossing& one = found[0];
    EXPECT_NEAR(one.at.x_m, 13.0, 1e-12);
    EXPECT_NEAR(one.at.y_m, 0.0, 1e-12);
    EXPECT_NEAR(one.depthA_m, 5.0 + 0.1 * 1.3, 1e-12);
    EXPECT_NEAR(one.depthB_m, 7.0 + 0.1 * 1.5, 1e-12);
    EXPECT_NEAR(one.difference_m(), 7.15 - 5.13, 1e-12);
    EXPECT_EQ(one.dayA, 3);
    EXPECT_EQ(one.dayB, 4);
    EXPECT_EQ(one.soundingA, 1U);
    EXPECT_EQ(one.soundingB, 6U);
    EXPECT_NEAR(one.shareA, 0.3, 1e-12);
    EXPECT_NEAR(one.shareB, 0.5, 1e-12);
}

TEST(Crossing, NeedsStepsOfFifteenMetresAtMost) {
    for (const auto& [step_m, count] : {std::pair{15.0, 1U}, {15.1, 0U}}) {
        const auto east = line({-20.0 * step_m - 1.0, 0}, {20.0 * step_m - 1.0, 0}, 41, 5, 0, 0);
        const auto north = line({0, -7}, {0, 7}, 2, 5, 0, 1);
        EXPECT_EQ(crossingsOf(east, north).size(), count) << step_m;
        EXPECT_EQ(crossingsOf(line({-1, -7}, {-1, 7}, 40, 5, 0, 0),
                              line({-1 - step_m / 2, 0}, {-1 + step_m / 2, 0}, 2, 5, 0, 1))
                      .size(),
                  count)
            << step_m;
    }
}

TEST(Crossing, NeedsTwentySoundingsBetweenAndNoParallels) {
    // A pass that turns: its first step is crossed by its last, `between` soundings later.
    for (const auto& [between, count] : {std::pair{20, 1U}, {19, 0U}}) {
        std::vector<soundings::KeptSounding> loop = line({0, 0}, {10, 0}, 2, 5, 0, 0);
        for (const auto& one : line({20, 0}, {5, 30}, between - 2, 5, 0, 0)) {
            loop.push_back(one);
        }
        loop.push_back({{}, 5, 5, 5, 0, 0});
        loop.push_back({{}, 5, -5, 5, 0, 0});
        base::Progress progress;
        CrossingSettings settings;
        settings.longestStep_m = 60.0;
        EXPECT_EQ(findCrossings(loop, settings, progress)->size(), count) << between;
    }
    EXPECT_TRUE(crossingsOf(line({0, 0}, {60, 0}, 30, 5, 0, 0), line({0, 0}, {60, 0}, 30, 5, 0, 1))
                    .empty());
    // Through a sounding itself it is one crossing, not two.
    EXPECT_EQ(
        crossingsOf(line({0, 0}, {60, 0}, 31, 5, 0, 0), line({30, -30}, {30, 30}, 31, 5, 0, 1))
            .size(),
        1U);
}

Crossing between(int dayA, int dayB, double depthA_m, double depthB_m) {
    Crossing one;
    one.dayA = dayA;
    one.dayB = dayB;
    one.depthA_m = depthA_m;
    one.depthB_m = depthB_m;
    return one;
}

TEST(Orders, AreMetByDifferencesUpToRootTwoTimesTheirLimit) {
    // IHO S-44 Ed. 6.1.0, Table 1: 0.5636 m and 1.1007 m at 20 m, 0.5007 m and 1.0011 m at 2 m.
    struct Row {
        double depth_m;
        double order1b_m;
        double order2_m;
    };
    for (const Row& row : {Row{20.0, 0.5636, 1.1007}, Row{2.0, 0.5007, 1.0011}}) {
        for (const double sign : {1.0, -1.0}) {
            const auto apart = [&](double limit_m, double by_m) {
                const double off_m = sign * (std::numbers::sqrt2 * limit_m + by_m);
                return between(0, 1, row.depth_m - off_m / 2, row.depth_m + off_m / 2);
            };
            EXPECT_TRUE(isWithinOrder1b(apart(row.order1b_m, -1e-3)));
            EXPECT_FALSE(isWithinOrder1b(apart(row.order1b_m, 1e-3)));
            EXPECT_TRUE(isWithinOrder2(apart(row.order2_m, -1e-3)));
            EXPECT_FALSE(isWithinOrder2(apart(row.order2_m, 1e-3)));
        }
    }
}

TEST(CrossingCheck, NamesTheLeastDifferenceThat95OfAHundredDoNotExceed) {
    for (const auto& [count, rank] : {std::pair{1, 1}, {19, 19}, {20, 19}, {40, 38}, {41, 39}}) {
        std::vector<Crossing> crossings;
        for (int i = 1; i <= count; ++i) {
            crossings.push_back(between(0, 1, 5.0, 5.0 + (i % 2 == 0 ? 0.01 : -0.01) * i));
        }
        EXPECT_NEAR(checkOf(crossings).p95_m, 0.01 * rank, 1e-9) << count;
    }
}

TEST(TieDays, GivesEachDayTheOffsetThatMakesItAgreeWithTheHeldOnes) {
    // Day 0 is held by its gauge; 1 reads 0.40 m too deep, 2 (which crosses 1 alone) 0.25 m too
    // shallow, 3 crosses 0 too seldom.
    std::vector<soundings::SurveyDay> days(4);
    days[0].gauge = soundings::Gauge::constant(WaterLevel::metresOnGauge(0.0));
    std::vector<Crossing> crossings;
    for (int i = 0; i < 5; ++i) {
        const double bottom_m = 4.0 + i;
        crossings.push_back(between(0, 1, bottom_m, bottom_m + 0.40));
        crossings.push_back(between(2, 1, bottom_m - 0.25, bottom_m + 0.40));
        crossings.push_back(between(1, 1, bottom_m, bottom_m + 3.0));
    }
    for (int i = 0; i < 4; ++i) {
        crossings.push_back(between(0, 3, 5.0, 6.0));
    }
    base::Progress progress;
    const auto tie = tieDays(crossings, days, {}, progress);
    ASSERT_TRUE(tie);
    EXPECT_EQ(tie->isHeld, (std::vector<bool>{true, false, false, false}));
    EXPECT_EQ(tie->isTied, (std::vector<bool>{true, true, true, false}));
    EXPECT_EQ(tie->crossingsWithOthers, (std::vector<std::size_t>{9, 10, 5, 4}));
    EXPECT_EQ(tie->offsets[0], Length());
    EXPECT_NEAR(tie->offsets[1].inMetres(), -0.40, 1e-5);
    EXPECT_NEAR(tie->offsets[2].inMetres(), 0.25, 1e-5);
    EXPECT_EQ(tie->offsets[3], Length());
    // Ten crossings of a sounder's own resolution (0.01 m): five between 0 and 1, five from 1 on.
    EXPECT_NEAR(tie->offsetErrors[1].inMetres(), 0.01 / std::sqrt(5.0), 1e-6);
    EXPECT_NEAR(tie->offsetErrors[2].inMetres(), 0.01 * std::sqrt(2.0 / 5.0), 1e-6);
    EXPECT_EQ(tie->offsetErrors[3], Length());
    EXPECT_EQ(tie->before.count, 19U);
    EXPECT_NEAR(tie->before.mean_m, (5 * 0.40 + 5 * 0.65 + 5 * 3.0 + 4 * 1.0) / 19.0, 1e-9);
    EXPECT_NEAR(tie->after.mean_m, (5 * 3.0 + 4 * 1.0) / 19.0, 1e-5);
    TieSettings fewer;
    fewer.leastCrossings = 4;
    const auto all = tieDays(crossings, days, fewer, progress);
    ASSERT_TRUE(all);
    EXPECT_TRUE(all->isTied[3]);
    EXPECT_NEAR(all->offsets[3].inMetres(), -1.0, 1e-5);
    // With a gauge on another day as well, both are held.
    days[1].gauge = soundings::Gauge::constant(WaterLevel::metresOnGauge(0.1));
    const auto held = tieDays(crossings, days, {}, progress);
    ASSERT_TRUE(held);
    EXPECT_EQ(held->isHeld, (std::vector<bool>{true, true, false, false}));
    EXPECT_EQ(held->offsets[1], Length());
    EXPECT_NEAR(held->offsets[2].inMetres(), 0.65, 1e-5);
}

TEST(TieDays, AWildCrossingWeighsAsHuberSays) {
    // Nine crossings 0.10 m apart and one 1.00 m: a plain mean would give 0.19 m.
    std::vector<soundings::SurveyDay> days(2);
    days[0].gauge = soundings::Gauge::constant(WaterLevel::metresOnGauge(0.0));
    std::vector<Crossing> crossings(9, between(0, 1, 5.0, 5.1));
    crossings.push_back(between(0, 1, 5.0, 6.0));
    base::Progress progress;
    const auto tie = tieDays(crossings, days, {}, progress);
    ASSERT_TRUE(tie);
    // Solved with sigma at its least, 0.01 m: 9 (0.1 - x) = 1.5 sigma.
    EXPECT_NEAR(tie->offsets[1].inMetres(), -(0.1 + 0.015 / 9.0), 1e-4);
    EXPECT_EQ(tieDays({}, {}, {}, progress)->offsets.size(), 0U);
}

TEST(NormalEquations, GiveTheWeightedLeastSquares) {
    // x + y = 3 (weight 1), x - y = 1 (weight 4), x = 2.5 (weight 2).
    NormalEquations equations(2);
    equations.add({{0, 1.0}, {1, 1.0}}, 3.0, 1.0);
    equations.add({{0, 1.0}, {1, -1.0}}, 1.0, 4.0);
    equations.add({{0, 1.0}}, 2.5, 2.0);
    // [7 -3; -3 5] (x, y) = (12, -1): determinant 26.
    const auto solution = equations.solve();
    EXPECT_NEAR(solution.values[0], (12.0 * 5.0 - 3.0) / 26.0, 1e-12);
    EXPECT_NEAR(solution.values[1], (7.0 * -1.0 + 3.0 * 12.0) / 26.0, 1e-12);
    EXPECT_NEAR(solution.errors[0], std::sqrt(5.0 / 26.0), 1e-12);
    EXPECT_NEAR(solution.errors[1], std::sqrt(7.0 / 26.0), 1e-12);
}

TEST(Robust, MedianAndSpread) {
    EXPECT_EQ(medianOf({3.0}), 3.0);
    EXPECT_EQ(medianOf({9.0, 1.0, 2.0}), 2.0);
    EXPECT_EQ(medianOf({9.0, 1.0, 2.0, 4.0}), 3.0);
    // Hampel's window as printed in the R package pracma: 0.14826 round 4.3.
    EXPECT_NEAR(robustSigma({4.1, 4.3, 9.8, 4.2, 4.4}, 4.3), 0.14826, 1e-5);
}

} // namespace

} // namespace reduction
