// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/made_up_day.h"

#include <algorithm>
#include <random>

#include <gtest/gtest.h>

namespace {

using marks::FactorKind;
using marks::Mark;

constexpr unsigned seed = 20261125;

marks::Weights randomWeights(std::mt19937& random) {
    std::uniform_real_distribution<double> weight(0.0, 1.5);
    marks::Weights weights;
    for (const FactorKind kind : marks::allFactorKinds) {
        weights.set(kind, weight(random));
    }
    return weights;
}

double worthOfRods(const support::MadeUpDay& day, const Mark& mark) {
    std::vector<geo::WaterPoint> baits;
    for (const rods::RodPlace& rod : mark.spread.rods) {
        baits.push_back(rod.place);
    }
    return rods::worthOf(baits, day.ground, mark.anchors.lie, {});
}

double meanOf(const std::vector<Mark>& marks, FactorKind kind) {
    double sum = 0.0;
    for (const Mark& mark : marks) {
        sum += std::ranges::find(mark.factors, kind, &marks::Factor::kind)->value;
    }
    return sum / static_cast<double>(marks.size());
}

const support::MadeUpDay& plainDay() {
    static const support::MadeUpDay day;
    return day;
}

const std::vector<marks::WorkedCandidate>& plainWorked() {
    static const std::vector<marks::WorkedCandidate> worked = plainDay().worked();
    return worked;
}

std::vector<Mark> rankedWith(const marks::Weights& weights, const marks::MarkInput& input,
                             std::vector<marks::WorkedCandidate> candidates,
                             const marks::RankSettings& settings = {}) {
    marks::Plan plan = plainDay().plan;
    plan.weights = weights;
    base::Progress progress;
    return marks::rankMarks(input, plan, std::move(candidates), settings, progress).value();
}

void expectSame(const std::vector<Mark>& a, const std::vector<Mark>& b, const std::string& what) {
    ASSERT_EQ(a.size(), b.size()) << what;
    for (std::size_t k = 0; k < a.size(); ++k) {
        EXPECT_EQ(a[k].place, b[k].place) << what;
        EXPECT_DOUBLE_EQ(a[k].score, b[k].score) << what;
    }
}

TEST(MarksProperty, TurningTheWaterAndTheWindByRightAnglesTurnsTheMarks) {
    const auto plain = plainDay().ranked(plainWorked());
    for (const double turn_deg : {90.0, 180.0, 270.0}) {
        const support::MadeUpDay turnedDay(turn_deg);
        const auto marks = turnedDay.ranked(turnedDay.worked());
        ASSERT_EQ(marks.size(), plain.size());
        const double cell_m = turnedDay.water.depth.frame().cell_m();
        std::size_t elsewhere = 0;
        for (std::size_t k = 0; k < marks.size(); ++k) {
            // A product of nine, no longer a mean from 0 to 1: it moves four times as far.
            EXPECT_NEAR(marks[k].score, plain[k].score, 4e-3) << turn_deg;
            // Along a straight drop-off one place is as good as another: where a list of others
            // that promise the same was packed, a rounding decides between the two.
            if (geo::distance_m(turnedDay.unturned(marks[k].place), plain[k].place) > cell_m) {
                ++elsewhere;
                continue;
            }
            // A bait at the border of a cell may fall to either side, and exchange then may end in
            // another place that no single move betters: worth a few parts in a hundred.
            const double worth = worthOfRods(plainDay(), plain[k]);
            EXPECT_NEAR(worthOfRods(turnedDay, marks[k]), worth, 0.08 * worth)
                << turn_deg << ' ' << k;
        }
        EXPECT_LE(elsewhere, 2U) << turn_deg;
    }
}

/// The day with every depth sounded: what a depth that may be another takes is asked for by no
/// weight.
marks::MarkInput sounded(const grid::Grid<float>& trust_m) {
    const marks::MarkInput& day = plainDay().input();
    return {.frame = day.frame,
            .outline = day.outline,
            .ground = day.ground,
            .bands = day.bands,
            .sections = day.sections,
            .trust_m = trust_m,
            .isGuess = day.isGuess,
            .learned = nullptr,
            .waveHeightAt = {}};
}

TEST(MarksProperty, AWeightOfNoughtTakesAllInfluenceFromItsFactor) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> any(0.0, 3.0);
    for (int round = 0; round < 8; ++round) {
        marks::Weights weights = randomWeights(random);
        weights.set(FactorKind::record, 0.0);
        weights.set(FactorKind::lessTried, 0.0);
        weights.set(FactorKind::trust, 0.0);
        weights.set(FactorKind::windward, 0.0);
        weights.set(FactorKind::shelter, 0.0);
        auto candidates = plainWorked();
        const grid::Grid<float> trust(plainDay().ground.frame(), 0.03F);
        const auto plain = rankedWith(weights, sounded(trust), candidates);
        grid::Grid<float> otherTrust = trust;
        for (float& half_m : otherTrust.values()) {
            half_m *= static_cast<float>(any(random));
        }
        for (marks::WorkedCandidate& candidate : candidates) {
            candidate.waves->height = units::Length::metres(any(random));
        }
        const marks::MarkInput other = sounded(otherTrust);
        expectSame(plain, rankedWith(weights, other, candidates),
                   "seed " + std::to_string(seed) + " round " + std::to_string(round));
    }
}

TEST(MarksProperty, MoreWeightOnAFactorNeverLowersItsMeanInTheBestList) {
    std::mt19937 random(seed);
    marks::RankSettings settings;
    settings.exactUpTo = 16;
    settings.leastApart = 0.0;
    settings.mostInSection = 40;
    const grid::Grid<float> trust(plainDay().ground.frame(), 0.03F);
    for (int round = 0; round < 12; ++round) {
        std::vector<marks::WorkedCandidate> some;
        std::ranges::sample(plainWorked(), std::back_inserter(some), 16, random);
        for (const FactorKind kind : marks::allFactorKinds) {
            marks::Weights weights = randomWeights(random);
            if (kind == FactorKind::windward) {
                continue; // With shelter it says which waves are liked: see there.
            }
            if (kind == FactorKind::shelter) {
                weights.set(FactorKind::windward, 0.0);
            }
            double before = -1.0;
            for (const double weight : {0.0, 0.3, 1.0, 3.0, 10.0}) {
                weights.set(kind, weight);
                const double now =
                    meanOf(rankedWith(weights, sounded(trust), some, settings), kind);
                EXPECT_GE(now, before - 1e-9) << "seed " << seed << " round " << round << ' '
                                              << marks::nameOf(kind) << " at " << weight;
                before = now;
            }
        }
    }
}

TEST(MarksProperty, AHeavyWeightOnTheDropOffBringsTheListToIt) {
    const auto meanWith = [](double weight) {
        support::MadeUpDay day;
        day.plan.weights.set(FactorKind::dropOff, weight);
        return meanOf(day.ranked(day.worked()), FactorKind::dropOff);
    };
    const double without = meanWith(0.0);
    EXPECT_GT(meanWith(1.0), without);
    EXPECT_GT(meanWith(16.0), without + 0.1);
}

TEST(MarksProperty, EveryFactorLiesBetweenNoughtAndOneAndTheScoreAboveWhateverTheWeights) {
    std::mt19937 random(seed);
    for (int round = 0; round < 20; ++round) {
        const auto marks = rankedWith(randomWeights(random), plainDay().input(), plainWorked());
        for (const Mark& mark : marks) {
            EXPECT_GT(mark.score, 0.0) << "seed " << seed;
            EXPECT_TRUE(std::isfinite(mark.score)) << "seed " << seed;
            for (const marks::Factor& factor : mark.factors) {
                EXPECT_GE(factor.value, 0.0) << marks::nameOf(factor.kind);
                EXPECT_LE(factor.value, 1.0) << marks::nameOf(factor.kind);
            }
        }
    }
}

TEST(MarksProperty, NoMarkIsEverOnLandClosedTooDeepOrNearAnother) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> metres(-1.5, 1.5);
    std::uniform_real_distribution<double> degrees(0.0, 360.0);
    for (int round = 0; round < 5; ++round) {
        support::MadeUpDay day;
        day.plan.weights = randomWeights(random);
        day.plan.day.wind.from = units::Bearing::degrees(degrees(random));
        const auto marks = day.ranked(day.worked());
        EXPECT_GE(marks.size(), 5U) << "seed " << seed << " round " << round;
        for (const Mark& mark : marks) {
            EXPECT_TRUE(day.water.outline.contains(mark.place));
            EXPECT_TRUE(day.ground.isFishable(mark.place));
            for (const Mark& other : marks) {
                EXPECT_TRUE(other.rank == mark.rank ||
                            geo::distance_m(other.place, mark.place) >= 60.0 - 1e-9);
            }
        }
    }
}

TEST(MarksProperty, ShufflingTheCandidatesChangesNothing) {
    std::mt19937 random(seed);
    const auto plain = rankedWith({}, plainDay().input(), plainWorked());
    for (int round = 0; round < 5; ++round) {
        auto shuffled = plainWorked();
        std::ranges::shuffle(shuffled, random);
        expectSame(plain, rankedWith({}, plainDay().input(), shuffled),
                   "seed " + std::to_string(seed));
    }
}

} // namespace
