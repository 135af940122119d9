// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rods/spread_rods.h"

#include "tests/support/made_up_zones.h"

#include <cmath>
#include <functional>

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using structure::ZoneKind;
using units::Bearing;
using units::Depth;
using units::Length;

/// A level bottom, or one that falls to the east, with zones where a test puts them.
class WorthOfBaits : public testing::Test {
protected:
    [[nodiscard]] double of(const std::vector<WaterPoint>& baits) const {
        const rods::Ground ground(water_.depth, Depth::metres(30.0), nullptr, zones_, weed_);
        return rods::worthOf(baits, ground, {{0, 0}, Bearing::degrees(90.0)}, {});
    }
    void fallToTheEast() {
        water_ = support::madeUpWater(
            {{support::rectangle(-100, -100, 100, 100), {}}},
            [](WaterPoint p) { return 10.0 + 0.1 * p.x_m; }, 2.0);
    }
    static constexpr double line = 0.5 * 40.0 / 360.0;
    static constexpr double allDepths = 3.0;
    support::MadeUpWater water_ = support::plane(100.0, 4.0, 4.0, 2.0);
    structure::ZoneMap zones_ = support::noZones(water_);
    structure::ZoneMap weed_ = support::noZones(water_);
};

TEST_F(WorthOfBaits, OverALevelBottomIsTheWaterThatTheLinesCommand) {
    EXPECT_EQ(of({}), 0.0);
    EXPECT_NEAR(of({{20, 0}}), allDepths + line, 1e-9);
    EXPECT_NEAR(of({{20, 0}, {-20, 0}}), allDepths + 2.0 * line, 1e-9);
    EXPECT_NEAR(of({{0, 20}, {20, 0}}), allDepths + 2.0 * line, 1e-9);
    // Ten degrees to the left of the bow, and as far to its right: 20 degrees are both their own.
    const double east_m = 20.0 * std::cos(M_PI / 18.0);
    const double north_m = 20.0 * std::sin(M_PI / 18.0);
    EXPECT_NEAR(of({{east_m, north_m}}), allDepths + line, 1e-9);
    EXPECT_NEAR(of({{east_m, north_m}, {east_m, -north_m}}), allDepths + 1.5 * line, 1e-9);
    // 30 degrees between them: 10 of the 40 of the second are the first one's.
    EXPECT_NEAR(of({{20, 0}, {20.0 * std::cos(M_PI / 6.0), 10}}), allDepths + 1.75 * line, 1e-9);
}

TEST_F(WorthOfBaits, CountsTheNearestEdgeAndASecondBaitOnItHalf) {
    support::addZone(zones_, water_, ZoneKind::dropOff, [](WaterPoint) { return false; },
                     {{{20, -90}, {20, 90}}});
    support::addZone(weed_, water_, ZoneKind::weedEdge, [](WaterPoint) { return false; },
                     {{{-90, 22}, {90, 22}}});
    EXPECT_NEAR(of({{20, 0}}), allDepths + line + 1.0, 1e-9);
    EXPECT_NEAR(of({{16, 0}}), allDepths + line + std::exp(-1.0), 1e-9);
    EXPECT_NEAR(of({{0, 20}}), allDepths + line + std::exp(-0.25), 1e-9);
    EXPECT_NEAR(of({{20, 0}, {0, 20}}), allDepths + 2.0 * line + 1.0 + std::exp(-0.25), 1e-9);
    const double two = of({{20, 12}, {18, -12}});
    EXPECT_NEAR(two - allDepths - 2.0 * line, 1.0 + 0.5 * std::exp(-0.25), 1e-9);
    const double three = of({{20, 18}, {20, -18}, {20, 0}});
    EXPECT_NEAR(three - allDepths - 3.0 * line, 1.75, 1e-9) << "the third a quarter";
}

TEST_F(WorthOfBaits, CountsEachKindOfBottomOnce) {
    support::addZone(zones_, water_, ZoneKind::plateau, [](WaterPoint p) { return p.x_m > 0.0; });
    support::addZone(zones_, water_, ZoneKind::hole, [](WaterPoint p) { return p.x_m < -2.0; });
    EXPECT_NEAR(of({{20, 0}}), allDepths + line + 0.6, 1e-9);
    EXPECT_NEAR(of({{20, 0}, {-20, 0}}), allDepths + 2.0 * line + 0.6 + 0.75, 1e-9);
    EXPECT_NEAR(of({{10, 18}, {10, -18}}), allDepths + 2.0 * line + 0.6, 1e-9);
}

TEST_F(WorthOfBaits, CountsTheShareOfTheDepthsWithinThreeQuartersOfAMetre) {
    fallToTheEast(); // 7 to 13 m within the cast of 30
    EXPECT_NEAR(of({{0, 20}}), 3.0 * 1.5 / 6.0 + line, 1e-5);
    EXPECT_NEAR(of({{20, 0}, {-20, 0}}), 3.0 * 3.0 / 6.0 + 2.0 * line, 1e-5);
    EXPECT_NEAR(of({{30, 0}}), 3.0 * 0.75 / 6.0 + line, 1e-5) << "none beyond the deepest";
    EXPECT_NEAR(of({{5, 20}, {0, -20}}), 3.0 * 2.0 / 6.0 + 2.0 * line, 1e-5) << "overlap once";
}

TEST(WorthOfKinds, IsThatOfThePractice) {
    struct Row {
        ZoneKind kind;
        double worth;
    };
    const std::vector<Row> rows{
        {ZoneKind::hump, 1.0},      {ZoneKind::spur, 0.95},  {ZoneKind::dropOff, 0.9},
        {ZoneKind::weedEdge, 0.85}, {ZoneKind::saddle, 0.8}, {ZoneKind::hole, 0.75},
        {ZoneKind::plateau, 0.6},   {ZoneKind::trough, 0.5}, {ZoneKind::shelf, 0.4},
        {ZoneKind::flat, 0.2},      {ZoneKind::weedBed, 0.1}};
    EXPECT_EQ(rows.size(), structure::allZoneKinds.size());
    for (const Row& row : rows) {
        EXPECT_EQ(rods::worthOf(row.kind), row.worth) << structure::nameOf(row.kind);
    }
}

TEST(RodSettings, AreRefusedOutOfTheirRangesAndNotAtTheirEnds) {
    using S = rods::RodSettings;
    struct Row {
        const char* sentence;
        std::function<void(S&, double)> set;
        double least;
        double most;
        double step;
    };
    const std::vector<Row> rows{
        {"from 1 to 8 rods", [](S& s, double v) { s.rods = static_cast<int>(v); }, 1, 8, 1},
        {"a cast from 5 to 100 m",
         [](S& s, double v) {
             s.cast = Length::metres(v);
             s.nearest = Length::metres(2.0);
         },
         5, 100, 0.01},
        {"the nearest bait from 1 to 50 m, nearer than the cast",
         [](S& s, double v) {
             s.nearest = Length::metres(v);
             s.cast = Length::metres(80.0);
         },
         1, 50, 0.01},
        {"the nearest bait from 1 to 50 m, nearer than the cast",
         [](S& s, double v) {
             s.nearest = Length::metres(v);
             s.cast = Length::metres(20.0);
         },
         1, 19.999, 0.001},
        {"an over-depth from 0 to 3 m", [](S& s, double v) { s.overDepth = Length::metres(v); }, 0,
         3, 0.001},
        {"an angle between lines from 5 to 90 degrees",
         [](S& s, double v) { s.leastAngle_deg = v; }, 5, 90, 0.01},
        {"baits from 0 to 50 m apart", [](S& s, double v) { s.leastApart = Length::metres(v); }, 0,
         50, 0.01},
        {"lines from 0 to 60 degrees off the ropes", [](S& s, double v) { s.ropeClear_deg = v; }, 0,
         60, 0.01},
        {"baits in no less than 0.1 to 5 m",
         [](S& s, double v) { s.shallowest = Depth::metres(v); }, 0.1, 5, 0.001},
    };
    for (const Row& row : rows) {
        const auto problems = [&row](double value) {
            S settings;
            row.set(settings, value);
            return rods::problemsIn(settings);
        };
        using Sentences = std::vector<std::string>;
        EXPECT_EQ(problems(row.least), Sentences{}) << row.sentence;
        EXPECT_EQ(problems(row.most), Sentences{}) << row.sentence;
        EXPECT_EQ(problems(row.least - row.step), Sentences{row.sentence});
        EXPECT_EQ(problems(row.most + row.step), Sentences{row.sentence});
    }
    const S usual;
    EXPECT_EQ(usual.rods, 4);
    EXPECT_EQ(usual.cast, Length::metres(30.0));
    EXPECT_EQ(usual.nearest, Length::metres(8.0));
    EXPECT_EQ(usual.overDepth, Length::feet(1.0));
    EXPECT_EQ(usual.leastAngle_deg, 15.0);
    EXPECT_EQ(usual.leastApart, Length::metres(6.0));
    EXPECT_EQ(usual.ropeClear_deg, 12.0);
    EXPECT_EQ(usual.shallowest, Depth::metres(0.5));
}

/// Rods of a boat that lies at the origin of a level water, bow to the north.
class RodsInTheOpen : public testing::Test {
protected:
    [[nodiscard]] std::vector<rods::RodPlace> rods(const rods::RodSettings& settings) const {
        const rods::Ground ground(water_.depth, limit_, &closed_, none_, none_);
        anchoring::AnchorSet set;
        set.bow = {{0, 20}, Depth::metres(4), Length::metres(bowRope_m_), 3.0};
        set.stern = {{0, -12}, Depth::metres(4), Length::metres(8), 1.5};
        base::Progress quiet;
        return rods::spreadRods(ground, set, settings, quiet).value().rods;
    }
    support::MadeUpWater water_ = support::plane(100.0, 4.0, 4.0, 2.0);
    structure::ZoneMap none_ = support::noZones(water_);
    grid::Grid<std::uint8_t> closed_{water_.depth.frame(), 0};
    Depth limit_ = Depth::metres(4.0);
    double bowRope_m_ = 15.0;
};

TEST_F(RodsInTheOpen, LieAsDeepAsTheLimitAndNoDeeper) {
    EXPECT_EQ(rods({}).size(), 4U);
    limit_ = Depth::metres(3.999);
    EXPECT_TRUE(rods({}).empty());
}

TEST_F(RodsInTheOpen, LieInWaterNoShallowerThanTheLeast) {
    rods::RodSettings settings;
    settings.shallowest = Depth::metres(4.0);
    EXPECT_EQ(rods(settings).size(), 4U);
    settings.shallowest = Depth::metres(4.001);
    EXPECT_TRUE(rods(settings).empty());
}

TEST_F(RodsInTheOpen, AreNeverCastAcrossClosedWater) {
    // A closed strip of one cell east of the boat; beyond it the water is open again.
    for (std::size_t i = 0; i < closed_.size(); ++i) {
        const double x_m = closed_.frame().centre(closed_.frame().cellAt(i)).x_m;
        closed_[i] = x_m > 12.0 && x_m < 14.0 ? 1 : 0;
    }
    rods::RodSettings settings;
    settings.rods = 8;
    const auto rods = this->rods(settings);
    EXPECT_GE(rods.size(), 6U);
    for (const rods::RodPlace& rod : rods) {
        EXPECT_LT(rod.place.x_m, 12.0);
    }
}

TEST_F(RodsInTheOpen, KeepClearOfARopeOnlyWhereThereIsOne) {
    rods::RodSettings settings;
    settings.rods = 8;
    settings.ropeClear_deg = 60.0;
    for (const rods::RodPlace& rod : rods(settings)) {
        EXPECT_GE(rod.bearing.angleTo_deg(Bearing::degrees(0.0)), 60.0 - 1e-6);
        EXPECT_GE(rod.bearing.angleTo_deg(Bearing::degrees(180.0)), 60.0 - 1e-6);
    }
    bowRope_m_ = 0.0;
    bool isAhead = false;
    for (const rods::RodPlace& rod : rods(settings)) {
        isAhead = isAhead || rod.bearing.angleTo_deg(Bearing::degrees(0.0)) < 59.0;
    }
    EXPECT_TRUE(isAhead);
}

TEST(GroundUnderRods, TellsOpenWaterFromWater) {
    const support::MadeUpWater water = support::plane(100.0, 4.0, 4.0, 2.0);
    const structure::ZoneMap none = support::noZones(water);
    grid::Grid<std::uint8_t> closed(water.depth.frame(), 0);
    closed[closed.frame().cellOf({11.0, 1.0})] = 1;
    const rods::Ground ground(water.depth, Depth::metres(9.0), &closed, none, none);
    EXPECT_FALSE(ground.isOverOpenWater({0, 1}, {30, 1}));
    EXPECT_FALSE(ground.isOverOpenWater({11, 1}, {30, 1})) << "from it";
    EXPECT_FALSE(ground.isOverOpenWater({0, 1}, {11, 1})) << "into it";
    EXPECT_TRUE(ground.isOverOpenWater({0, 3}, {30, 3})) << "beside it";
    EXPECT_FALSE(ground.isOverOpenWater({0, 3}, {130, 3})) << "ashore";
}

} // namespace
