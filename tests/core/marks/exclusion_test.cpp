// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/propose_marks.h"
#include "tests/support/made_up_day.h"

#include <numeric>

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using marks::Exclusion;
using units::Length;

class Exclusions : public testing::Test {
protected:
    [[nodiscard]] std::optional<Exclusion> at(WaterPoint place) const {
        return marks::exclusionAt(day_.input(), place, day_.plan, settings_);
    }
    [[nodiscard]] double areaOf(Exclusion why) const {
        return areas()[static_cast<std::size_t>(why)].inSquareMetres();
    }
    [[nodiscard]] marks::ExcludedAreas areas() const {
        base::Progress quiet;
        return marks::LyingCells::of(day_.input(), day_.plan, settings_, quiet)
            .value()
            .excludedAreas();
    }
    support::MadeUpDay day_;
    marks::ProposeSettings settings_;
};

TEST_F(Exclusions, AreToldByTheFirstConditionThatHolds) {
    EXPECT_EQ(at({-150, -50}), std::nullopt);
    EXPECT_EQ(at({-250, 100}), Exclusion::closed);
    EXPECT_EQ(at({-178, 100}), Exclusion::closed) << "two metres off closed water";
    EXPECT_EQ(at({250, -100}), Exclusion::tooDeep);
    EXPECT_EQ(at({-339.5, -200}), Exclusion::noRoom);
    settings_.shallowest = units::Depth::metres(3.5);
    EXPECT_EQ(at({-150, -50}), Exclusion::tooShallow);
}

TEST_F(Exclusions, HoldWhereTheRopesDoNotReach) {
    // 2.8 m deep: 4.5 m of rope at twice four fifths of that.
    day_.plan.tackle.bowRope = Length::metres(5.0);
    EXPECT_EQ(at({-150, -50}), std::nullopt);
    day_.plan.tackle.bowRope = Length::metres(4.0);
    EXPECT_EQ(at({-150, -50}), Exclusion::ropesTooShort);
    day_.plan.tackle.bowRope = Length::metres(50.0);
    day_.plan.tackle.sternRope = Length::metres(2.0);
    EXPECT_EQ(at({-150, -50}), Exclusion::ropesTooShort);
}

TEST_F(Exclusions, HoldWhereItIsTooRough) {
    day_.waveHeightAt = [](WaterPoint p) { return Length::metres(p.x_m < -100.0 ? 0.36 : 0.34); };
    EXPECT_EQ(at({-150, -50}), Exclusion::tooRough);
    EXPECT_EQ(at({-50, -50}), std::nullopt);
    for (const marks::Candidate& candidate : day_.proposed()) {
        EXPECT_GE(candidate.place.x_m, -100.0);
    }
}

TEST_F(Exclusions, HoldWhereTheUserBannedTheWaterAndNothingElseDoes) {
    const std::string snags = "Snags";
    day_.bannedAt = [&snags](WaterPoint p) { return p.x_m < -100.0 ? &snags : nullptr; };
    EXPECT_EQ(at({-150, -50}), Exclusion::banned);
    EXPECT_EQ(at({-50, -50}), std::nullopt);
    EXPECT_EQ(at({-250, 100}), Exclusion::closed) << "lifting the ban would not open it";
    for (const marks::Candidate& candidate : day_.proposed()) {
        EXPECT_GE(candidate.place.x_m, -100.0);
    }
    const double banned_m2 = areaOf(Exclusion::banned);
    day_.bannedAt = {};
    EXPECT_EQ(areaOf(Exclusion::banned), 0.0);
    day_.bannedAt = [&snags](WaterPoint) { return &snags; };
    EXPECT_GT(areaOf(Exclusion::banned), banned_m2 + 10'000.0);
}

TEST_F(Exclusions, SayWhereAllThatCouldBeFishedIsBanned) {
    const std::string all;
    day_.bannedAt = [&all](WaterPoint) { return &all; };
    day_.waveHeightAt = [](WaterPoint p) { return Length::metres(p.x_m < 0.0 ? 0.5 : 0.1); };
    base::Progress quiet;
    const auto none = marks::proposeMarks(day_.input(), day_.plan, {}, {}, quiet);
    ASSERT_FALSE(none);
    EXPECT_NE(none.error().what.find("you have banned"), std::string::npos);
    EXPECT_EQ(none.error().whatToDo, "lift a ban");
}

TEST_F(Exclusions, SayHowManyHectaresEachOfThemTakesWhereNothingIsLeft) {
    day_.plan.tackle.bowRope = Length::metres(4.0); // reaches 2.5 m deep at most
    settings_.shallowest = units::Depth::metres(3.0);
    base::Progress quiet;
    const auto none = marks::proposeMarks(day_.input(), day_.plan, {}, settings_, quiet);
    ASSERT_FALSE(none);
    const std::string& what = none.error().what;
    EXPECT_NE(what.find(" ha ropes too short"), std::string::npos) << what;
    EXPECT_NE(what.find(" ha closed"), std::string::npos) << what;
    EXPECT_EQ(what.find("banned"), std::string::npos) << what;
    const double short_ha = areaOf(Exclusion::ropesTooShort) / 1e4;
    EXPECT_NE(what.find(fmt::format("{:.2f} ha ropes too short", short_ha)), std::string::npos)
        << what;
    // The way out is that of what takes most.
    EXPECT_EQ(none.error().whatToDo, areaOf(Exclusion::tooDeep) > areaOf(Exclusion::ropesTooShort)
                                         ? "choose a deeper limit"
                                         : "take longer ropes, or a smaller scope");
}

TEST_F(Exclusions, SayWhereNowhereIsCalmEnough) {
    day_.waveHeightAt = [](WaterPoint) { return Length::metres(0.5); };
    base::Progress quiet;
    const auto none = marks::proposeMarks(day_.input(), day_.plan, {}, {}, quiet);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, base::ErrorKind::unusableInput);
    EXPECT_NE(none.error().what.find("too rough"), std::string::npos);
    EXPECT_FALSE(none.error().whatToDo.empty());
}

TEST_F(Exclusions, MeasureTheWaterTheyTake) {
    // Closed: x from the shore to -180, y from 62 up, and a boat's length round it.
    EXPECT_GT(areaOf(Exclusion::closed), 15000.0);
    EXPECT_LT(areaOf(Exclusion::closed), 25000.0);
    EXPECT_EQ(areaOf(Exclusion::tooRough), 0.0);
    day_.waveHeightAt = [](WaterPoint) { return Length::metres(0.5); };
    const auto all = areas();
    const double sum =
        std::accumulate(all.begin(), all.end(), 0.0, [](double before, units::Area area) {
            return before + area.inSquareMetres();
        });
    double water_m2 = 0.0;
    const grid::GridFrame& frame = day_.ground.frame();
    for (std::size_t i = 0; i < frame.size(); ++i) {
        water_m2 += day_.ground.depthAt(frame.centre(frame.cellAt(i))) ? frame.cellArea_m2() : 0.0;
    }
    EXPECT_NEAR(sum, water_m2, 1e-6 * water_m2) << "everything is left out, each cell once";
}

TEST_F(Exclusions, HaveTheirNames) {
    std::string names;
    for (const Exclusion exclusion : marks::allExclusions) {
        names += std::string(marks::nameOf(exclusion)) + ' ';
    }
    EXPECT_EQ(names,
              "closed too_shallow too_deep no_room_to_swing ropes_too_short too_rough banned "
              "too_steep_for_an_anchor no_room_for_anchors ");
}

} // namespace
