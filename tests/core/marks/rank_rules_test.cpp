// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/propose_marks.h"
#include "core/marks/rank_marks.h"

#include "core/marks/judgement.h"

#include "tests/support/made_up_day.h"

#include <algorithm>
#include <functional>

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using marks::Mark;
using marks::WorkedCandidate;
using units::Length;

WorkedCandidate at(WaterPoint place, std::size_t rods = 4) {
    WorkedCandidate worked;
    worked.candidate.place = place;
    worked.anchors.lie.centre = place;
    worked.spread.rods.resize(rods);
    worked.waves = marks::WaveState();
    return worked;
}

class RankRules : public testing::Test {
protected:
    [[nodiscard]] Mark only(const WorkedCandidate& candidate) const {
        return day_.ranked({candidate}).front();
    }
    support::MadeUpDay day_;
};

using Cautions = std::vector<marks::Caution>;

TEST_F(RankRules, CautionsBeginEachAtItsThresholdAndNotJustBelow) {
    const WaterPoint plain{-100.0, -50.0};
    const auto withWaves = [&](double height_m) {
        WorkedCandidate one = at(plain);
        one.waves->height = Length::metres(height_m);
        return only(one).cautions;
    };
    EXPECT_EQ(withWaves(0.3), Cautions{marks::WavesHere{Length::metres(0.3)}});
    EXPECT_EQ(withWaves(0.299), Cautions{});
    EXPECT_EQ(withWaves(0.74), Cautions{marks::WavesHere{Length::metres(0.74)}});
    EXPECT_EQ(only(at(plain, 3)).cautions, (Cautions{marks::RoomForRods{3, 4}}));
    EXPECT_EQ(only(at(plain, 0)).cautions, (Cautions{marks::RoomForRods{0, 4}}));
    EXPECT_EQ(only(at(plain, 5)).cautions, Cautions{});
    // The closed corner begins at x = -180 with cells of 4 m; a cast is 30 m.
    EXPECT_EQ(only(at({-152.2, 100.0})).cautions, Cautions{marks::ClosedWaterNear{}});
    EXPECT_EQ(only(at({-147.0, 100.0})).cautions, Cautions{});
}

TEST_F(RankRules, CautionsTellAGuessHereFromGuessesRoundHere) {
    EXPECT_EQ(only(at({-100.0, -142.0})).cautions, Cautions{marks::GuessedHere{}});
    // Sounded here; guesses make up a little more or less than half of the circle.
    for (std::size_t i = 0; i < day_.isGuess.size(); ++i) {
        const grid::GridFrame& frame = day_.isGuess.frame();
        const WaterPoint p = frame.centre(frame.cellAt(i));
        day_.isGuess[i] = p.y_m < -52.0 ? 1 : 0;
    }
    EXPECT_EQ(only(at({-98.0, -54.0 + 4.0})).cautions, Cautions{}) << "less than half";
    for (std::size_t i = 0; i < day_.isGuess.size(); ++i) {
        const grid::GridFrame& frame = day_.isGuess.frame();
        const WaterPoint p = frame.centre(frame.cellAt(i));
        day_.isGuess[i] =
            p.y_m < -44.0 && !(std::fabs(p.x_m + 98.0) < 2.0 && std::fabs(p.y_m + 50.0) < 2.0) ? 1
                                                                                               : 0;
    }
    EXPECT_EQ(only(at({-98.0, -50.0})).cautions, Cautions{marks::GuessedAround{}});
}

TEST_F(RankRules, CautionsSayWhatIsWrongWithTheUsersOwnMarks) {
    WorkedCandidate own = at({-250.0, 100.0});
    own.candidate.isPinned = true;
    EXPECT_EQ(only(own).cautions, Cautions{marks::InClosedWater{}});
    own = at({250.0, -100.0});
    own.candidate.isPinned = true;
    EXPECT_EQ(only(own).cautions, Cautions{marks::DeeperThanLimit{}});
    own = at({0.0, 900.0});
    own.candidate.isPinned = true;
    const auto marks = day_.ranked({at({-100.0, -50.0}), own});
    EXPECT_EQ(marks.size(), 1U) << "on land there is no mark, whoever put it";
}

TEST_F(RankRules, MarksCarryWhatTheirCandidateHas) {
    WorkedCandidate one = at({-100.0, -50.0});
    one.candidate.name = "Post";
    one.candidate.isPinned = true;
    one.waves = marks::WaveState{Length::metres(321.0), Length::metres(0.21)};
    one.anchors.bow.rope = Length::metres(17.0);
    one.anchors.cautions = {anchoring::TurnedOffTheWind{7.0}};
    one.spread.rods[2].distance = Length::metres(12.0);
    const Mark mark = only(one);
    EXPECT_EQ(mark.rank, 1);
    EXPECT_EQ(mark.name, "Post");
    EXPECT_TRUE(mark.isPinned);
    EXPECT_EQ(mark.place, (WaterPoint{-100.0, -50.0}));
    EXPECT_EQ(mark.fetch, Length::metres(321.0));
    EXPECT_EQ(mark.waveHeight, Length::metres(0.21));
    EXPECT_EQ(mark.anchors, one.anchors);
    ASSERT_EQ(mark.spread.rods.size(), 4U);
    EXPECT_EQ(mark.spread.rods[2].distance, Length::metres(12.0));
    EXPECT_EQ(mark.depth, *day_.ground.depthAt(mark.place));
    EXPECT_NEAR(mark.trust.inMetres(), 0.2 + 0.0003 * 302.0, 1e-6) << "of its own cell";
    EXPECT_EQ(mark.section, 0);
    EXPECT_EQ(mark.sectionName, "Quarter 1");
    const auto around = marks::surroundingsOf(day_.input(), mark.place, day_.plan.tackle.cast);
    EXPECT_EQ(mark.zones, around.kinds);
    const auto judgement = marks::judgementOf(day_.input(), around, mark.place, day_.plan,
                                              one.waves, marks::ChosenBy::program);
    EXPECT_EQ(mark.score, judgement.score);
}

TEST_F(RankRules, TrustIsThatOfTheSurroundingsWhereTheCellHasNone) {
    for (std::size_t i = 0; i < day_.trust_m.size(); ++i) {
        day_.trust_m[i] = 0.4F;
    }
    day_.trust_m[day_.trust_m.frame().cellOf({-100.0, -50.0})] = NAN;
    EXPECT_NEAR(only(at({-100.0, -50.0})).trust.inMetres(), 0.4, 1e-6);
}

TEST_F(RankRules, KeepMarksTwoCastsApartAndAThirdOfTheListInASection) {
    day_.plan.tackle.cast = Length::metres(10.0);
    day_.plan.count = 7;
    std::vector<WorkedCandidate> all;
    for (int k = 0; k < 12; ++k) {
        all.push_back(at({-110.0 + 0.9 * k, -160.0 + 15.0 * k})); // 15.03 m from each to the next
    }
    const auto marks = day_.ranked(all);
    std::vector<int> inSection(4, 0);
    for (const Mark& a : marks) {
        ++inSection[static_cast<std::size_t>(a.section)];
        for (const Mark& b : marks) {
            EXPECT_TRUE(a.rank == b.rank || geo::distance_m(a.place, b.place) >= 20.0);
        }
    }
    EXPECT_EQ(marks.size(), 6U) << "every second one: the cap gives way where the list is short";
    marks::RankSettings settings;
    settings.leastApart = 1.5;
    EXPECT_EQ(day_.ranked(all, settings).size(), 7U) << "a cast and a half is 15 m";
}

TEST_F(RankRules, CapASectionAtAThirdOfTheListButTwoAtLeast) {
    // Many good places in quarter 1, one poor one each in quarters 2 and 3; as many marks as fit.
    const auto inFirst = [this](int count, int cap) {
        day_.plan.count = count;
        std::vector<WorkedCandidate> all;
        for (int k = 0; k < 6; ++k) {
            all.push_back(at({-300.0 + 62.0 * (k % 3), -60.0 - 62.0 * static_cast<int>(k / 3)}));
            all.push_back(at({-20.0 - 62.0 * (k % 3), 60.0 + 62.0 * static_cast<int>(k / 3)}));
        }
        for (WorkedCandidate& one : all) {
            one.waves->height = Length::metres(one.candidate.place.y_m < 0.0 ? 0.0 : 9.0);
        }
        for (const marks::FactorKind kind : marks::allFactorKinds) {
            day_.plan.weights.set(kind, kind == marks::FactorKind::shelter ? 1.0 : 0.0);
        }
        marks::RankSettings settings;
        settings.mostInSection = cap;
        const auto marks = day_.ranked(all, settings);
        return std::ranges::count(marks, 0, &Mark::section);
    };
    EXPECT_EQ(inFirst(2, 0), 2);
    EXPECT_EQ(inFirst(4, 0), 2);
    EXPECT_EQ(inFirst(6, 1), 5) << "one of two, and then the best, for the list is short";
    EXPECT_EQ(inFirst(4, 3), 3);
}

TEST_F(RankRules, TakeTheBestSumOfASmallListAndTheBestFirstOfALargeOne) {
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        day_.plan.weights.set(kind, kind == marks::FactorKind::shelter ? 1.0 : 0.0);
    }
    auto west = at({-150.0, -50.0});
    auto east = at({-50.0, -50.0});
    west.waves->height = east.waves->height = Length::metres(0.1);
    const std::vector all{at({-100.0, -50.0}), west, east};
    marks::RankSettings settings;
    settings.exactUpTo = 3;
    EXPECT_EQ(day_.ranked(all, settings).size(), 2U) << "the two beside the best";
    settings.exactUpTo = 2;
    EXPECT_EQ(day_.ranked(all, settings).size(), 1U) << "the best, which leaves room for none";
}

TEST_F(RankRules, EqualScoresGoByPromiseThenFromNorthToSouthThenWestToEast) {
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        day_.plan.weights.set(kind, 0.0);
    }
    auto promising = at({-100.0, -120.0});
    promising.candidate.promise = 0.2;
    const auto marks = day_.ranked(
        {at({-30.0, -50.0}), at({-100.0, -50.0}), promising, at({-200.0, -50.0}), at({-100, 50})});
    ASSERT_EQ(marks.size(), 5U);
    EXPECT_EQ(marks[0].place, (WaterPoint{-100.0, -120.0}));
    EXPECT_EQ(marks[1].place, (WaterPoint{-100.0, 50.0}));
    EXPECT_EQ(marks[2].place, (WaterPoint{-200.0, -50.0}));
    EXPECT_EQ(marks[3].place, (WaterPoint{-100.0, -50.0}));
    EXPECT_EQ(marks[4].place, (WaterPoint{-30.0, -50.0}));
}

struct Row {
    const char* sentence;
    std::function<void(marks::Plan&, marks::ProposeSettings&, marks::RankSettings&, double)> set;
    double least;
    double most;
    double step;
    bool isProposed;
    bool isRanked;
};

TEST(MarkSettings, AreRefusedOutOfTheirRangesAndNotAtTheirEnds) {
    using P = marks::Plan;
    using S = marks::ProposeSettings;
    using R = marks::RankSettings;
    const std::vector<Row> rows{
        {"from 1 to 40 marks", [](P& p, S&, R&, double v) { p.count = static_cast<int>(v); }, 1, 40,
         1, true, true},
        {"a cast from 5 to 100 m",
         [](P& p, S&, R&, double v) { p.tackle.cast = Length::metres(v); }, 5, 100, 0.01, true,
         true},
        {"a boat from 2 to 15 m long",
         [](P& p, S&, R&, double v) { p.tackle.boatLength = Length::metres(v); }, 2, 15, 0.01, true,
         false},
        {"a wind from 0 to 60 m/s",
         [](P& p, S&, R&, double v) { p.day.wind.speed = units::Speed::metresPerSecond(v); }, 0, 60,
         0.01, true, false},
        {"from 1 to 5000 candidates", [](P&, S& s, R&, double v) { s.most = static_cast<int>(v); },
         1, 5000, 1, true, false},
        {"from 100 to 1 million places looked at",
         [](P&, S& s, R&, double v) { s.mostLookedAt = static_cast<int>(v); }, 100, 1e6, 1, true,
         false},
        {"candidates from 0.1 to 4 casts apart", [](P&, S& s, R&, double v) { s.leastApart = v; },
         0.1, 4, 0.001, true, false},
        {"a least depth from 0.3 to 5 m",
         [](P&, S& s, R&, double v) { s.shallowest = units::Depth::metres(v); }, 0.3, 5, 0.001,
         true, false},
        {"room from 0 to 5 boat lengths", [](P&, S& s, R&, double v) { s.swingRoom = v; }, 0, 5,
         0.001, true, false},
        {"roughest waves from 0.05 to 5 m",
         [](P&, S& s, R&, double v) { s.roughest = Length::metres(v); }, 0.05, 5, 0.001, true,
         false},
        {"from 0, what is known, to 1, new water", [](P& p, S&, R&, double v) { p.tryNew = v; }, 0,
         1, 0.001, true, false},
        {"marks from 0 to 20 casts apart", [](P&, S&, R& r, double v) { r.leastApart = v; }, 0, 20,
         0.001, false, true},
        {"0 or more marks in a section",
         [](P&, S&, R& r, double v) { r.mostInSection = static_cast<int>(std::fmin(v, 1e6)); }, 0,
         1e9, 1, false, false},
        {"an exact list of up to 24 candidates",
         [](P&, S&, R& r, double v) { r.exactUpTo = static_cast<int>(v); }, 0, 24, 1, false, true},
    };
    for (const Row& row : rows) {
        const auto problems = [&row](double value) {
            P plan;
            S propose;
            R rank;
            row.set(plan, propose, rank, value);
            return std::pair(marks::problemsIn(propose, plan), marks::problemsIn(rank, plan));
        };
        using Sentences = std::vector<std::string>;
        const Sentences one{row.sentence};
        for (const double fine : {row.least, row.most}) {
            EXPECT_EQ(problems(fine), (std::pair(Sentences{}, Sentences{}))) << row.sentence;
        }
        for (const double wrong : {row.least - row.step, row.most + row.step}) {
            if (wrong > 1e8) {
                continue;
            }
            EXPECT_EQ(problems(wrong).first, row.isProposed ? one : Sentences{}) << row.sentence;
            const bool isRanked = row.isRanked || row.sentence[0] == '0';
            EXPECT_EQ(problems(wrong).second, isRanked ? one : Sentences{}) << row.sentence;
        }
    }
}

TEST(MarkSettings, HaveTheDefaultsThatTheirCommentsName) {
    const marks::RankSettings rank;
    EXPECT_EQ(rank.leastApart, 2.0);
    EXPECT_EQ(rank.mostInSection, 0);
    EXPECT_EQ(rank.exactUpTo, 18);
    const marks::ProposeSettings propose;
    EXPECT_EQ(propose.most, 240);
    EXPECT_EQ(propose.leastApart, 0.5);
    EXPECT_EQ(propose.shallowest, units::Depth::metres(1.0));
    EXPECT_EQ(propose.swingRoom, 1.0);
    EXPECT_EQ(propose.roughest, Length::metres(0.35));
    EXPECT_EQ(marks::Plan().tryNew, 0.5);
    const marks::Tackle tackle;
    EXPECT_EQ(tackle.boatSpeed, units::Speed::metresPerSecond(1.5));
    EXPECT_EQ(tackle.boatLength, Length::metres(5.0));
    EXPECT_EQ(tackle.bowHeight, Length::metres(0.5));
    EXPECT_EQ(tackle.bowRope, Length::metres(50.0));
    EXPECT_EQ(tackle.sternRope, Length::metres(30.0));
    EXPECT_EQ(tackle.scope, 3.0);
    EXPECT_EQ(tackle.rods, 4);
    EXPECT_EQ(tackle.cast, Length::metres(30.0));
    EXPECT_EQ(tackle.overDepth, Length::feet(1.0));
    const marks::ExpectedDay day;
    EXPECT_EQ(day.start, std::chrono::hours(8));
    EXPECT_EQ(day.end, std::chrono::hours(16));
    EXPECT_EQ(day.levelChange, Length());
    EXPECT_EQ(marks::Plan().count, 8);
}

} // namespace
