// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/rank_marks.h"

#include "tests/support/holding.h"
#include "tests/support/made_up_day.h"

#include <algorithm>
#include <map>

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using marks::Mark;
using marks::WorkedCandidate;

class RankedMarks : public testing::Test {
protected:
    static const support::MadeUpDay& plainDay() {
        static const support::MadeUpDay day;
        return day;
    }
    static const std::vector<WorkedCandidate>& plainWorked() {
        static const std::vector<WorkedCandidate> worked = plainDay().worked();
        return worked;
    }
    static const std::vector<Mark>& plainMarks() {
        static const std::vector<Mark> marks = plainDay().ranked(plainWorked());
        return marks;
    }
    /// A candidate at a place, its lie there, without ropes.
    static WorkedCandidate at(WaterPoint place) {
        WorkedCandidate worked;
        worked.candidate.place = place;
        worked.anchors.lie.centre = place;
        worked.spread.rods.resize(4);
        worked.waves = marks::WaveState();
        return worked;
    }
};

TEST_F(RankedMarks, AreAsManyAsAskedForAndCountedFromOne) {
    ASSERT_EQ(plainMarks().size(), 8U);
    for (std::size_t k = 0; k < plainMarks().size(); ++k) {
        EXPECT_EQ(plainMarks()[k].rank, static_cast<int>(k) + 1);
    }
}

// The score was a mean from 0 to 1; now it is how many times the water's mean is expected.
TEST_F(RankedMarks, ComeByFallingScoreRoundTheWatersMean) {
    for (std::size_t k = 1; k < plainMarks().size(); ++k) {
        EXPECT_LE(plainMarks()[k].score, plainMarks()[k - 1].score + 1e-12);
    }
    EXPECT_LT(plainMarks().front().score, 3.0);
    EXPECT_GT(plainMarks().back().score, 0.3);
}

TEST_F(RankedMarks, HaveNoTermInTheirScoreThatIsNotAmongTheFactors) {
    for (const Mark& mark : plainMarks()) {
        double product = 1.0;
        for (const marks::Factor& factor : mark.factors) {
            product *= factor.times;
            const bool isOfTheLog = factor.kind == marks::FactorKind::record ||
                                    factor.kind == marks::FactorKind::lessTried;
            EXPECT_NEAR(factor.times,
                        isOfTheLog ? 1.0 : std::exp(0.4 * factor.weight * (factor.value - 0.5)),
                        factor.kind == marks::FactorKind::trust ? 1e-5 : 1e-12);
        }
        EXPECT_NEAR(mark.score, product, 1e-12);
        EXPECT_FALSE(mark.expected) << "nobody has fished yet";
        EXPECT_FALSE(mark.toLearn);
        EXPECT_EQ(mark.factors.size(), marks::allFactorKinds.size());
    }
}

TEST_F(RankedMarks, KeepTwoCastsApart) {
    for (const Mark& a : plainMarks()) {
        for (const Mark& b : plainMarks()) {
            if (a.rank != b.rank) {
                EXPECT_GE(geo::distance_m(a.place, b.place), 60.0 - 1e-9);
            }
        }
    }
}

TEST_F(RankedMarks, LieWhereABoatMayLie) {
    for (const Mark& mark : plainMarks()) {
        EXPECT_TRUE(plainDay().ground.isFishable(mark.place));
        EXPECT_TRUE(plainDay().water.outline.contains(mark.place));
        EXPECT_NEAR(mark.depth.inMetres(), support::MadeUpDay::bottomAt(mark.place), 0.2);
    }
}

TEST_F(RankedMarks, CarryTheirPlaceSectionWavesAnchorsAndRods) {
    for (const Mark& mark : plainMarks()) {
        const WaterPoint back = plainDay().water.frame.toWater(mark.lonLat);
        EXPECT_NEAR(geo::distance_m(back, mark.place), 0.0, 1e-3);
        EXPECT_EQ(mark.sectionName.substr(0, 8), "Quarter ");
        EXPECT_GT(mark.fetch.value().inMetres(), 0.0);
        EXPECT_GT(mark.waveHeight.value().inMetres(), 0.0);
        EXPECT_GT(mark.anchors.bow.rope.inMetres(), 0.0);
        EXPECT_GT(mark.spread.rods.size(), 0U);
        EXPECT_GT(mark.trust.inMetres(), 0.0);
    }
}

TEST_F(RankedMarks, SpreadOverTheSections) {
    std::map<std::string, int> inSection;
    for (const Mark& mark : plainMarks()) {
        ++inSection[mark.sectionName];
    }
    for (const auto& [name, count] : inSection) {
        EXPECT_LE(count, 3) << name;
    }
}

TEST_F(RankedMarks, DoNotDependOnTheOrderOfTheCandidates) {
    auto turnedRound = plainWorked();
    std::ranges::reverse(turnedRound);
    const auto again = plainDay().ranked(turnedRound);
    ASSERT_EQ(again.size(), plainMarks().size());
    for (std::size_t k = 0; k < again.size(); ++k) {
        EXPECT_EQ(again[k].place, plainMarks()[k].place);
        EXPECT_EQ(again[k].score, plainMarks()[k].score);
    }
}

TEST_F(RankedMarks, DropCandidatesOnLandInClosedWaterAndBelowTheLimit) {
    const auto marks =
        plainDay().ranked({at({-150, -50}), at({0, 900}), at({-250, 100}), at({250, -100})});
    ASSERT_EQ(marks.size(), 1U);
    EXPECT_EQ(marks.front().place, (WaterPoint{-150, -50}));
}

TEST_F(RankedMarks, KeepThePinnedAndSayWhatIsWrongWithThem) {
    auto inClosed = at({-250, 100});
    auto tooDeep = at({250, -100});
    inClosed.candidate.isPinned = tooDeep.candidate.isPinned = true;
    inClosed.candidate.name = "Reeds";
    const auto marks = plainDay().ranked({at({-150, -50}), inClosed, tooDeep});
    ASSERT_EQ(marks.size(), 3U);
    for (const Mark& mark : marks) {
        EXPECT_EQ(support::holds<marks::InClosedWater>(mark.cautions), mark.name == "Reeds");
        EXPECT_EQ(support::holds<marks::DeeperThanLimit>(mark.cautions), mark.place.x_m > 0.0);
    }
}

TEST_F(RankedMarks, WarnOfAGuessedDepth) {
    const auto marks = plainDay().ranked({at({-150, -200}), at({-150, -50})});
    ASSERT_EQ(marks.size(), 2U);
    for (const Mark& mark : marks) {
        EXPECT_EQ(support::holds<marks::GuessedHere>(mark.cautions) ||
                      support::holds<marks::GuessedAround>(mark.cautions),
                  mark.place.y_m < -141.0);
    }
}

TEST_F(RankedMarks, WarnOfClosedWaterWithinACastOfWavesAndOfMissingRods) {
    auto candidate = at({-160, 100});
    candidate.waves->height = units::Length::metres(0.42);
    candidate.spread.rods.resize(2);
    const auto marks = plainDay().ranked({candidate});
    EXPECT_TRUE(support::holds<marks::ClosedWaterNear>(marks.front().cautions));
    EXPECT_TRUE(support::holds<marks::WavesHere>(marks.front().cautions));
    EXPECT_EQ(marks.front().cautions.back(), marks::Caution(marks::RoomForRods{2, 4}));
    EXPECT_TRUE(plainDay().ranked({at({-100, -50})}).front().cautions.empty());
}

TEST_F(RankedMarks, SayWhyThereAreNone) {
    base::Progress progress;
    const auto none =
        marks::rankMarks(plainDay().input(), plainDay().plan, {at({0, 900})}, {}, progress);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, base::ErrorKind::unusableInput);
}

TEST_F(RankedMarks, AreRefusedForSettingsOutOfRange) {
    base::Progress progress;
    marks::RankSettings settings;
    settings.exactUpTo = 60;
    const auto none =
        marks::rankMarks(plainDay().input(), plainDay().plan, plainWorked(), settings, progress);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, base::ErrorKind::wrongUse);
}

} // namespace
