// SPDX-License-Identifier: GPL-3.0-or-later
// What of a stay can hardly be as it was noted: each doubt at its limit and not just before.
#include "core/water/questions/stay_doubts.h"
#include "tests/support/bowl.h"
#include "tests/support/full_water.h"

#include <functional>

#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using logbook::Stay;
using water::StayDoubt;

class StayDoubts : public testing::Test {
protected:
    StayDoubts() {
        water_.plan.tackle.rods = 4;
        water_.houseRules.rodLimit = 3;
        water_.houseRules.season =
            logbook::Season{std::chrono::January / 1, std::chrono::December / 31};
        derived_.outline = std::make_shared<const geo::Outline>(
            geo::Outline::make(water_.shoreline, *water_.frame).value());
        stay_ = water_.log[0];
    }
    std::vector<StayDoubt> doubts() const {
        return water::doubtsAbout(stay_, water_, derived_, stay_.start + 100h);
    }
    water::Water water_ = support::fullWater();
    water::Derived derived_;
    Stay stay_;
};

TEST_F(StayDoubts, AreNoneWhereAllCanBe) {
    EXPECT_EQ(doubts(), std::vector<StayDoubt>());
    stay_.rods.reset();
    EXPECT_EQ(doubts(), std::vector<StayDoubt>()) << "unknown is no doubt";
}

TEST_F(StayDoubts, BeginAtTheirLimits) {
    const auto of = [&](const std::function<void(Stay&)>& change) {
        const Stay before = stay_;
        change(stay_);
        auto found = doubts();
        stay_ = before;
        return found;
    };
    using Doubts = std::vector<StayDoubt>;
    EXPECT_EQ(of([](Stay& s) { s.end = s.start + 24h; }), Doubts());
    EXPECT_EQ(of([](Stay& s) { s.end = s.start + 25h; }), (Doubts{water::StayOverADay{25h}}));
    EXPECT_EQ(of([](Stay& s) { s.rods = 3; }), Doubts());
    EXPECT_EQ(of([](Stay& s) { s.rods = 4; }), (Doubts{water::StayOfManyRods{4, 3, true}}));
    water_.houseRules.rodLimit.reset();
    EXPECT_EQ(of([](Stay& s) { s.rods = 4; }), Doubts());
    EXPECT_EQ(of([](Stay& s) { s.rods = 5; }), (Doubts{water::StayOfManyRods{5, 4, false}}));
    EXPECT_EQ(of([](Stay& s) { s.runs[0].time = s.start; }), Doubts());
    EXPECT_EQ(of([](Stay& s) { s.runs[0].time = s.start - 1s; }),
              (Doubts{water::FishBesideStay{1}}));
    EXPECT_EQ(of([](Stay& s) { s.runs[0].time = s.end + 1s; }), (Doubts{water::FishBesideStay{1}}));
    water_.houseRules.season->last = std::chrono::January / 2;
    EXPECT_EQ(doubts(), (Doubts{water::StayOutOfSeason{}}));
}

TEST_F(StayDoubts, TellAStayThatHasNotEndedButNotAClockThatIsOff) {
    const auto at = [&](units::Moment now) {
        return water::doubtsAbout(stay_, water_, derived_, now);
    };
    EXPECT_EQ(at(stay_.end - 15min), std::vector<StayDoubt>());
    EXPECT_EQ(at(stay_.end - 16min), (std::vector<StayDoubt>{water::StayInTheFuture{}}));
}

TEST_F(StayDoubts, TellAPlaceOnLandWithItsDistance) {
    stay_.place.lat_deg += 0.05;
    const auto found = doubts();
    ASSERT_EQ(found.size(), 1U);
    const double off_m = std::get<water::StayOffTheWater>(found[0]).distance.inMetres();
    EXPECT_NEAR(off_m, derived_.outline->distanceToShore_m(water_.frame->toWater(stay_.place)),
                1e-6);
    EXPECT_GT(off_m, 4000.0);
    derived_.outline.reset();
    EXPECT_EQ(doubts(), std::vector<StayDoubt>()) << "without a shore nothing is said of it";
}

TEST_F(StayDoubts, TellAPlaceInClosedWaterByItsName) {
    const geo::WaterPoint at = water_.frame->toWater(stay_.place);
    const auto round = [&](double east_m) {
        geo::LonLatRing ring;
        for (const auto& [x_m, y_m] :
             {std::pair(-10.0, -10.0), {10.0, -10.0}, {10.0, 10.0}, {-10.0, 10.0}}) {
            ring.push_back(water_.frame->toEarth({at.x_m + east_m + x_m, at.y_m + y_m}));
        }
        return geo::LonLatPiece{ring, {}};
    };
    water_.houseRules.closed = {{"Far", {round(25.0)}}};
    EXPECT_EQ(doubts(), std::vector<StayDoubt>()) << "beside it, and not in it";
    water_.houseRules.closed.push_back({"Reserve", {round(5.0)}});
    EXPECT_EQ(doubts(), (std::vector<StayDoubt>{water::StayInClosedWater{"Reserve"}}));
}

TEST_F(StayDoubts, TellAnotherStayAtTheSameTimeUnlessTimesAreRough) {
    Stay other = stay_;
    other.id = logbook::StayId(500);
    other.runs.clear();
    other.start = stay_.end - 16min;
    other.end = stay_.end + 1h;
    water_.log.push_back(other);
    EXPECT_EQ(doubts(), (std::vector<StayDoubt>{water::StayOverOther{other.start, other.end}}));
    water_.log.edit(1).start = stay_.end - 15min;
    EXPECT_EQ(doubts(), std::vector<StayDoubt>());
}

} // namespace
