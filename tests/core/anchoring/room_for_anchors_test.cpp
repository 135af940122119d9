// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/place_anchors.h"

#include <cmath>
#include <functional>
#include <numbers>
#include <string>

#include <gtest/gtest.h>

namespace {

using anchoring::BoatSettings;
using anchoring::Weather;
using geo::WaterPoint;
using units::Bearing;
using units::Depth;
using units::Length;
using units::Speed;

constexpr double depth_m = 4.0;
constexpr double northBank_m = 40.0;
constexpr double southBank_m = -60.0;

/// 400 by 100 m, level at 4 m, on cells of 2 m; no water north and south of its banks.
grid::DepthGrid levelWater() {
    grid::DepthGrid grid(grid::GridFrame(-200, 200, 2.0, 200, 200));
    for (std::size_t i = 0; i < grid.size(); ++i) {
        const double y_m = grid.frame().centre(grid.frame().cellAt(i)).y_m;
        if (y_m < northBank_m && y_m > southBank_m) {
            grid.set(i, Depth::metres(depth_m));
        }
    }
    return grid;
}

/// The same without banks: what lies beyond them is closed.
grid::Grid<std::uint8_t> closedBeyondTheBanks(grid::DepthGrid& open) {
    grid::Grid<std::uint8_t> closed(open.frame(), 0);
    for (std::size_t i = 0; i < open.size(); ++i) {
        const double y_m = open.frame().centre(open.frame().cellAt(i)).y_m;
        closed[i] = y_m < northBank_m && y_m > southBank_m ? 0 : 1;
        open.set(i, Depth::metres(depth_m));
    }
    return closed;
}

struct Expected {
    double turn_deg = 0.0;
    double bowScope = 0.0;
    double sternScope = 0.0;
    double regret = INFINITY;
};

/// The lie of least regret found by trying all, by plain geometry on a level bottom. \param off_m
/// how far the anchors stay off the banks.
Expected leastRegret(double y_m, double wind_deg, const BoatSettings& boat, double off_m) {
    Expected best;
    for (double turn_deg = -boat.mostTurn_deg; turn_deg <= boat.mostTurn_deg; turn_deg += 5.0) {
        for (double bow = boat.scope; bow > boat.leastScope - 0.2; bow -= 0.25) {
            for (const double stern : {boat.sternScope, 1.2}) {
                const double bowScope = std::max(bow, boat.leastScope);
                const double bowRise_m = depth_m + boat.bowHeight.inMetres();
                const double sternRise_m = depth_m + boat.sternHeight.inMetres();
                const double bowRope_m = std::min(bowScope * bowRise_m, boat.bowRope.inMetres());
                const double sternRope_m = std::min(stern * sternRise_m, boat.sternRope.inMetres());
                if (bowRope_m < boat.leastScope * bowRise_m - 1e-9 ||
                    sternRope_m < 1.2 * sternRise_m - 1e-9) {
                    continue;
                }
                const double bowRun_m = std::sqrt(bowRope_m * bowRope_m - bowRise_m * bowRise_m);
                const double sternRun_m =
                    std::sqrt(sternRope_m * sternRope_m - sternRise_m * sternRise_m);
                const double north = std::cos((wind_deg + turn_deg) * std::numbers::pi / 180.0);
                const double half_m = 0.5 * boat.length.inMetres();
                const double bowY_m = y_m + (half_m + bowRun_m) * north;
                const double sternY_m = y_m - (half_m + sternRun_m) * north;
                const double back_m = std::hypot(bowRun_m + sternRun_m, bowRise_m);
                const bool fits = std::max(bowY_m, sternY_m) < northBank_m - off_m &&
                                  std::min(bowY_m, sternY_m) > southBank_m + off_m &&
                                  back_m <= boat.bowRope.inMetres();
                const double regret = std::fabs(turn_deg) / 45.0 +
                                      (boat.scope - bowScope) / boat.scope +
                                      0.3 * (boat.sternScope - stern) / boat.sternScope;
                if (fits && regret < best.regret - 1e-9) {
                    best = {turn_deg, bowRope_m / bowRise_m, sternRope_m / sternRise_m, regret};
                }
            }
        }
    }
    return best;
}

Weather windFrom(double degrees) {
    return {Bearing::degrees(degrees), Speed::metresPerSecond(5.0), {}};
}

/// Where a step of half a metre along the rope decides, either lie may be found: not asked.
int expectLeastRegret(const grid::DepthGrid& depth, const grid::Grid<std::uint8_t>* closed,
                      double y_m, double wind_deg, const BoatSettings& boat) {
    const Expected expected = leastRegret(y_m, wind_deg, boat, 0.0);
    if (expected.regret != leastRegret(y_m, wind_deg, boat, 0.6).regret) {
        return 0;
    }
    base::Progress quiet;
    const auto found =
        anchoring::placeAnchors(depth, closed, {0, y_m}, windFrom(wind_deg), boat, quiet);
    SCOPED_TRACE("y " + std::to_string(y_m) + ", wind from " + std::to_string(wind_deg));
    EXPECT_EQ(found.has_value(), std::isfinite(expected.regret));
    if (found) {
        // Turned to either side alike: both are as good.
        const double north = std::cos((wind_deg + found->offTheWind_deg) * std::numbers::pi / 180);
        EXPECT_NEAR(std::fabs(found->offTheWind_deg), std::fabs(expected.turn_deg), 1e-9);
        EXPECT_NEAR(found->bow.scope, expected.bowScope, 1e-4);
        EXPECT_NEAR(found->stern->scope, expected.sternScope, 1e-4);
        EXPECT_NEAR(
            found->lie.heading.angleTo_deg(Bearing::degrees(wind_deg + found->offTheWind_deg)), 0.0,
            1e-9);
        EXPECT_EQ(found->bow.place.y_m > y_m, north > 0.0);
        const WaterPoint bow = anchoring::bowOf(found->lie, boat.length);
        const WaterPoint stern = anchoring::sternOf(found->lie, boat.length);
        EXPECT_NEAR(
            std::hypot(geo::distance_m(bow, found->bow.place), depth_m + boat.bowHeight.inMetres()),
            found->bow.rope.inMetres(), 0.01);
        EXPECT_NEAR(std::hypot(geo::distance_m(stern, found->stern->place),
                               depth_m + boat.sternHeight.inMetres()),
                    found->stern->rope.inMetres(), 0.01);
        const double back_m =
            geo::distance_m(found->bow.place, found->stern->place) - boat.length.inMetres();
        EXPECT_NEAR(found->fallBackRope.inMetres(),
                    std::hypot(back_m, depth_m + boat.bowHeight.inMetres()), 0.001);
        // 3 m2 of drag 1 in a wind of 5 m/s.
        EXPECT_NEAR(found->beamPull_N.value(), 0.5 * 1.225 * 3.0 * 25.0, 1e-9);
    }
    return 1;
}

TEST(RoomForAnchors, IsMadeByTheLeastTurnAndTheLeastShortening) {
    const grid::DepthGrid depth = levelWater();
    grid::DepthGrid open = depth;
    const auto closed = closedBeyondTheBanks(open);
    BoatSettings shortRopes;
    shortRopes.bowRope = Length::metres(14.3);
    shortRopes.sternRope = Length::metres(6.1);
    BoatSettings other;
    other.length = Length::metres(8.0);
    other.bowHeight = Length::metres(1.2);
    other.scope = 4.0;
    other.mostTurn_deg = 20.0;
    int asked = 0;
    BoatSettings turning; // no rope may be shortened
    turning.leastScope = turning.scope;
    turning.sternScope = 1.2;
    turning.mostTurn_deg = 60.0;
    for (const BoatSettings& boat : {BoatSettings(), shortRopes, other, turning}) {
        for (double y_m = -58.3; y_m<northBank_m; y_m += y_m> - 40.0 && y_m < 10.0 ? 17.0 : 1.7) {
            for (const double wind_deg : {7.0, 160.0, 340.0}) {
                asked += expectLeastRegret(depth, nullptr, y_m, wind_deg, boat);
                asked += expectLeastRegret(open, &closed, y_m, wind_deg, boat);
            }
        }
    }
    EXPECT_GT(asked, 100);
}

TEST(RoomForAnchors, IsLookedForOnBothSides) {
    for (const double side : {-1.0, 1.0}) {
        grid::DepthGrid depth = levelWater();
        for (std::size_t i = 0; i < depth.size(); ++i) {
            const WaterPoint p = depth.frame().centre(depth.frame().cellAt(i));
            if (p.y_m > 5.0 && side * p.x_m < 3.0) {
                depth.clear(i);
            }
        }
        BoatSettings boat;
        boat.leastScope = boat.scope;
        boat.mostTurn_deg = 60.0;
        base::Progress quiet;
        const auto found =
            anchoring::placeAnchors(depth, nullptr, {0, 0}, windFrom(0.0), boat, quiet);
        ASSERT_TRUE(found) << found.error().sentence();
        EXPECT_GT(side * found->offTheWind_deg, 0.0);
        EXPECT_GT(side * found->bow.place.x_m, 0.0);
    }
}

TEST(RoomForAnchors, IsNoneUnderTheBoatOnANarrowBar) {
    grid::DepthGrid depth = levelWater();
    for (std::size_t i = 0; i < depth.size(); ++i) {
        const double x_m = depth.frame().centre(depth.frame().cellAt(i)).x_m;
        if (x_m > 2.0 && x_m < 6.0) {
            depth.set(i, Depth::metres(0.39));
        }
    }
    BoatSettings boat;
    boat.length = Length::metres(12.0);
    base::Progress quiet;
    const auto place = [&](double wind_deg) {
        return anchoring::placeAnchors(depth, nullptr, {0, 0}, windFrom(wind_deg), boat, quiet);
    };
    EXPECT_FALSE(place(90.0)) << "across the bar, both ends afloat";
    EXPECT_FALSE(place(270.0)) << "the same with the stern beyond it";
    EXPECT_TRUE(place(0.0)) << "beside it";
    boat.draught = Length::metres(0.2);
    EXPECT_TRUE(place(90.0)) << "a boat that draws less floats over it";
}

TEST(RoomForAnchors, IsRefusedForWhatHindersFirst) {
    const grid::DepthGrid depth = levelWater();
    base::Progress quiet;
    BoatSettings boat;
    const auto refusal = [&](WaterPoint mark, double wind_deg) {
        const auto none =
            anchoring::placeAnchors(depth, nullptr, mark, windFrom(wind_deg), boat, quiet);
        return none ? std::string() : none.error().sentence();
    };
    boat.sternRope = Length::metres(5.0);
    EXPECT_NE(refusal({0, 0}, 0.0).find("the ropes are too short for the depth here"),
              std::string::npos)
        << "the stern rope alone";
    boat = {};
    EXPECT_NE(refusal({0, 39.0}, 0.0).find("no room here for two anchors in this wind"),
              std::string::npos);
    EXPECT_NE(refusal({0, 41.0}, 0.0).find("no water to float a boat at the mark"),
              std::string::npos);
    grid::DepthGrid open = depth;
    const auto closed = closedBeyondTheBanks(open);
    EXPECT_FALSE(anchoring::placeAnchors(open, &closed, {0, 41.0}, windFrom(0.0), boat, quiet));
}

TEST(RoomForAnchors, NeedsWaterAsDeepAsTheDraughtAtTheMark) {
    base::Progress quiet;
    for (const double at_m : {0.4, 0.39}) {
        grid::DepthGrid depth = levelWater();
        for (std::size_t i = 0; i < depth.size(); ++i) {
            depth.set(i, Depth::metres(at_m));
        }
        BoatSettings boat;
        boat.draught = Length::metres(0.3999);
        EXPECT_EQ(
            anchoring::placeAnchors(depth, nullptr, {0, 0}, windFrom(0.0), boat, quiet).has_value(),
            at_m > 0.395);
    }
}

struct Row {
    const char* name;
    std::function<void(BoatSettings&, Weather&, double)> set;
    double least;
    double most;
};

template <class Member>
auto length(Member member) {
    return [member](BoatSettings& b, Weather&, double v) { b.*member = Length::metres(v); };
}

template <class Member>
auto number(Member member) {
    return [member](BoatSettings& b, Weather&, double v) { b.*member = v; };
}

TEST(RoomForAnchors, IsAskedForWithSettingsInTheirRanges) {
    const std::vector<Row> rows{
        {"the boat's length", length(&BoatSettings::length), 2.0, 15.0},
        {"the height of the bow cleat", length(&BoatSettings::bowHeight), 0.0, 2.0},
        {"the height of the stern cleat", length(&BoatSettings::sternHeight), 0.0, 2.0},
        {"the boat's draught", length(&BoatSettings::draught), 0.0, 2.0},
        {"the bow rope", length(&BoatSettings::bowRope), 5.0, 200.0},
        {"the stern rope", length(&BoatSettings::sternRope), 5.0, 200.0},
        {"the scope", number(&BoatSettings::scope), 1.2, 10.0},
        {"the stern scope", number(&BoatSettings::sternScope), 1.2, 10.0},
        {"the least scope", number(&BoatSettings::leastScope), 1.2, 10.0},
        {"the windage",
         [](BoatSettings& b, Weather&, double v) { b.windage = units::Area::squareMetres(v); }, 0.5,
         20.0},
        {"the turn off the wind", number(&BoatSettings::mostTurn_deg), 0.0, 60.0},
        {"the wind",
         [](BoatSettings&, Weather& w, double v) { w.windSpeed = Speed::metresPerSecond(v); }, 0.0,
         60.0}};
    const grid::DepthGrid depth = levelWater();
    for (const Row& row : rows) {
        const auto isRefused = [&](double value) {
            BoatSettings boat;
            Weather weather = windFrom(90.0);
            row.set(boat, weather, value);
            base::Progress quiet;
            const auto set = anchoring::placeAnchors(depth, nullptr, {0, 0}, weather, boat, quiet);
            return !set && set.error().kind == base::ErrorKind::wrongUse &&
                   set.error().what == std::string(row.name) + " is out of its range";
        };
        EXPECT_FALSE(isRefused(row.least)) << row.name;
        EXPECT_FALSE(isRefused(row.most)) << row.name;
        EXPECT_TRUE(isRefused(row.least - 0.001)) << row.name;
        EXPECT_TRUE(isRefused(row.most + 0.001)) << row.name;
        EXPECT_TRUE(isRefused(NAN)) << row.name;
    }
}

TEST(RoomForAnchors, IsMeasuredWithTheDefaultsOfAUsualLakeBoat) {
    const BoatSettings boat;
    EXPECT_EQ(boat.length, Length::metres(5.0));
    EXPECT_EQ(boat.bowHeight, Length::metres(0.6));
    EXPECT_EQ(boat.sternHeight, Length::metres(0.5));
    EXPECT_EQ(boat.draught, Length::metres(0.4));
    EXPECT_EQ(boat.bowRope, Length::metres(50.0));
    EXPECT_EQ(boat.sternRope, Length::metres(30.0));
    EXPECT_EQ(boat.scope, 3.0);
    EXPECT_EQ(boat.sternScope, 1.5);
    EXPECT_EQ(boat.windage, units::Area::squareMetres(3.0));
    EXPECT_EQ(boat.mostTurn_deg, 40.0);
    EXPECT_EQ(boat.leastScope, 2.0);
}

TEST(RoomForAnchors, StopsLookingWhenAsked) {
    struct Stopped : base::Progress {
        [[nodiscard]] bool stopAsked() const override { return true; }
    } stopped;
    const auto none =
        anchoring::placeAnchors(levelWater(), nullptr, {0, 0}, windFrom(0.0), {}, stopped);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, base::ErrorKind::cancelled);
}

} // namespace
