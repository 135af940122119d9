// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/propose_marks.h"

#include "tests/support/made_up_day.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using units::Depth;
using units::Length;

class ProposedMarks : public testing::Test {
protected:
    [[nodiscard]] base::Result<std::vector<marks::Candidate>>
    propose(const marks::ProposeSettings& settings = {}) {
        return marks::proposeMarks(day_.input(), day_.plan, day_.pinned, settings, progress_);
    }
    support::MadeUpDay day_;
    base::Progress progress_;
};

TEST_F(ProposedMarks, LieInOpenFishableWaterWithRoomToSwing) {
    const auto found = propose().value();
    ASSERT_GT(found.size(), 50U);
    for (const marks::Candidate& candidate : found) {
        const WaterPoint p = candidate.place;
        EXPECT_TRUE(day_.water.outline.contains(p));
        EXPECT_GE(day_.water.outline.distanceToShore_m(p), day_.plan.tackle.boatLength.inMetres());
        EXPECT_FALSE(day_.ground.isClosed(p));
        const Depth depth = day_.ground.depthAt(p).value_or(Depth());
        EXPECT_LE(depth, day_.bands.limit());
        EXPECT_GE(depth, Depth::metres(1.0));
    }
}

TEST_F(ProposedMarks, KeepTheirDistanceAndTheirNumber) {
    marks::ProposeSettings settings;
    settings.most = 60;
    settings.leastApart = 0.8;
    const auto found = propose(settings).value();
    EXPECT_EQ(found.size(), 60U);
    for (std::size_t a = 0; a < found.size(); ++a) {
        for (std::size_t b = 0; b < a; ++b) {
            EXPECT_GE(geo::distance_m(found[a].place, found[b].place), 0.8 * 30.0 - 1e-6);
        }
    }
}

TEST_F(ProposedMarks, ComeBestFirst) {
    const auto found = propose().value();
    EXPECT_TRUE(std::ranges::is_sorted(found, std::ranges::greater(), &marks::Candidate::promise));
    EXPECT_GT(found.front().promise, found.back().promise);
    // By beliefs alone the worth is the weighted sum of the values: at most the sum of the weights.
    EXPECT_LE(found.front().promise, marks::Weights().sum());
    EXPECT_GE(found.back().promise, 0.0);
}

TEST_F(ProposedMarks, CrowdAtTheDropOffWhenNothingElseMatters) {
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        day_.plan.weights.set(kind, kind == marks::FactorKind::dropOff ? 1.0 : 0.0);
    }
    const auto found = propose().value();
    for (std::size_t k = 0; k < 10; ++k) {
        EXPECT_LT(std::fabs(support::MadeUpDay::down_m(found[k].place) + 13.0), 10.0);
    }
}

TEST_F(ProposedMarks, ReachEveryQuarterOfTheWater) {
    std::vector<int> met(4, 0);
    const auto found = propose().value();
    for (const marks::Candidate& candidate : found) {
        const grid::Cell c = day_.water.depth.frame().cellOf(candidate.place);
        ++met[static_cast<std::size_t>(day_.sections.sectionOfCell[c])];
    }
    EXPECT_GT(*std::ranges::min_element(met), 0);
}

TEST_F(ProposedMarks, BeginWithTheUsersOwnUnmoved) {
    day_.pinned.push_back({{-150.3, -61.7}, 0.0, false, "Old post"});
    day_.pinned.push_back({{0.0, 2000.0}, 0.0, true, "On the moor"});
    const auto found = propose().value();
    EXPECT_EQ(found.front().place, (WaterPoint{-150.3, -61.7}));
    EXPECT_EQ(found.front().name, "Old post");
    EXPECT_TRUE(found.front().isPinned);
    EXPECT_GT(found.front().promise, 0.0);
    EXPECT_EQ(std::ranges::count_if(found, &marks::Candidate::isPinned), 1)
        << "a mark on dry land is no mark";
}

TEST_F(ProposedMarks, AreStillFoundOnAPond) {
    const support::MadeUpWater pond = support::cone(18.0, 3.0, 1.0);
    const structure::ZoneMap none = support::noZones(pond);
    const rods::Ground ground(pond.depth, Depth::metres(9.0), nullptr, none, none);
    const grid::Grid<float> trust(pond.depth.frame(), 0.1F);
    sections::SectionMap sections;
    const marks::MarkInput input{.frame = pond.frame,
                                 .outline = pond.outline,
                                 .ground = ground,
                                 .bands = day_.bands,
                                 .sections = sections,
                                 .trust_m = trust,
                                 .isGuess = nullptr,
                                 .learned = nullptr,
                                 .waveHeightAt = {}};
    const auto found = marks::proposeMarks(input, day_.plan, {}, {}, progress_).value();
    EXPECT_GE(found.size(), 1U);
}

TEST_F(ProposedMarks, SayWhyThereAreNone) {
    const rods::Ground dry(day_.water.depth, Depth::metres(0.2), nullptr, day_.zones, day_.weed);
    const marks::MarkInput input{.frame = day_.water.frame,
                                 .outline = day_.water.outline,
                                 .ground = dry,
                                 .bands = day_.bands,
                                 .sections = day_.sections,
                                 .trust_m = day_.trust_m,
                                 .isGuess = nullptr,
                                 .learned = nullptr,
                                 .waveHeightAt = {}};
    const auto found = marks::proposeMarks(input, day_.plan, {}, {}, progress_);
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error().kind, base::ErrorKind::unusableInput);
    EXPECT_FALSE(found.error().whatToDo.empty());
}

TEST_F(ProposedMarks, AreRefusedForAPlanOutOfRange) {
    day_.plan.tackle.cast = Length::metres(400.0);
    EXPECT_EQ(propose().error().kind, base::ErrorKind::wrongUse);
    day_.plan.tackle.cast = Length::metres(30.0);
    day_.plan.count = 0;
    EXPECT_EQ(propose().error().kind, base::ErrorKind::wrongUse);
}

/// The places of the day thinned with a say about where the boat holds.
base::Result<std::vector<marks::Candidate>> proposedWith(const support::MadeUpDay& day,
                                                         const marks::Holds& holds,
                                                         const marks::ProposeSettings& settings) {
    base::Progress quiet;
    const auto lying = marks::LyingCells::of(day.input(), day.plan, settings, quiet).value();
    const auto looked = marks::lookRound(day.input(), day.plan, settings, lying, quiet).value();
    const auto prospects = marks::prospectsOf(day.input(), day.plan, looked, quiet).value();
    return marks::proposeMarks(day.input(), day.plan, looked, prospects, day.pinned, settings,
                               quiet, holds);
}

TEST_F(ProposedMarks, TakeNoTurnFromOthersWhereTheBoatDoesNotHold) {
    marks::ProposeSettings settings;
    settings.most = 30;
    const auto all = proposedWith(day_, {}, settings).value();
    // None of the first shortlist holds, and nothing near it.
    const auto isNearOneOfThose = [&all](WaterPoint p) {
        return std::ranges::any_of(
            all, [p](const marks::Candidate& one) { return geo::distance_m(one.place, p) < 5.0; });
    };
    std::vector<WaterPoint> asked;
    const auto others = proposedWith(
                            day_,
                            [&](const marks::Candidate& one) -> base::Result<bool> {
                                asked.push_back(one.place);
                                return !isNearOneOfThose(one.place);
                            },
                            settings)
                            .value();
    EXPECT_EQ(others.size(), 30U) << "as many as were wanted hold elsewhere";
    for (const marks::Candidate& one : others) {
        EXPECT_FALSE(isNearOneOfThose(one.place));
    }
    EXPECT_GT(asked.size(), 50U);
    std::ranges::sort(asked, {}, [](WaterPoint p) { return std::pair(p.x_m, p.y_m); });
    EXPECT_LT(std::ranges::count_if(
                  asked, [&asked](WaterPoint p) { return std::ranges::count(asked, p) > 1; }),
              static_cast<std::ptrdiff_t>(asked.size()) / 10)
        << "nobody is asked twice but where two kinds of place coincide";
}

TEST_F(ProposedMarks, LeaveTheUsersOwnUnasked) {
    day_.pinned.push_back({{-150.3, -61.7}, 0.0, true, "Old post"});
    const auto found =
        proposedWith(day_, [](const marks::Candidate&) -> base::Result<bool> { return false; }, {})
            .value();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().name, "Old post");
}

TEST_F(ProposedMarks, EndWhenTooManyWereTriedInVain) {
    marks::ProposeSettings settings;
    settings.mostInVain = 25;
    int asked = 0;
    const auto found = proposedWith(
                           day_,
                           [&asked](const marks::Candidate&) -> base::Result<bool> {
                               ++asked;
                               return false;
                           },
                           settings)
                           .value();
    EXPECT_TRUE(found.empty());
    EXPECT_EQ(asked, 25);
    const auto failed = proposedWith(
        day_,
        [](const marks::Candidate&) -> base::Result<bool> {
            return std::unexpected(base::Error{base::ErrorKind::wrongUse, "no", "", ""});
        },
        {});
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().what, "no");
}

TEST_F(ProposedMarks, StopWhenAsked) {
    struct Stopped : base::Progress {
        [[nodiscard]] bool stopAsked() const override { return true; }
    } stopped;
    const auto found = marks::proposeMarks(day_.input(), day_.plan, {}, {}, stopped);
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error().kind, base::ErrorKind::cancelled);
}

TEST(PlacesToLookAt, StayNearTheNumberAskedForOnALargeWater) {
    const support::MadeUpDay day;
    for (const std::size_t most : {200U, 2000U}) {
        const auto& input = day.input();
        marks::ProposeSettings settings;
        settings.mostLookedAt = static_cast<int>(most);
        settings.most = 5000;
        base::Progress progress;
        const auto found = marks::proposeMarks(input, day.plan, {}, settings, progress).value();
        EXPECT_LE(found.size(), most);
        EXPECT_GE(found.size(), 20U);
    }
}

} // namespace
