// SPDX-License-Identifier: GPL-3.0-or-later
// Lines to sound against the same sums done once more.
#include "core/surface/propose_lines.h"
#include "core/surface/solver/gain_map.h"
#include "core/surface/solver/held_out.h"
#include "core/surface/solver/spikes.h"
#include "core/surface/solver/trip_order.h"
#include "tests/core/surface/tracks.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using surface::DrawnWater;
using surface::LineSettings;
using surface::SurveyTrip;
using surface::solver::GainMap;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using units::Length;

/// An open rectangle of 600 by 300 m in cells of 10 m: sounded in the west, the half-width growing
/// evenly from 0.2 m there to 2.6 m in the east.
DrawnWater halfKnown(const support::MadeUpWater& water) {
    DrawnWater drawn;
    drawn.mask = water.mask;
    drawn.depth = water.depth;
    const grid::GridFrame& frame = water.depth.frame();
    grid::Grid<float> halfWidth_m(frame, NAN);
    grid::Grid<surface::TrustName> names(frame, surface::TrustName::guess);
    for (std::size_t i = 0; i < frame.size(); ++i) {
        const double x_m = frame.centre(frame.cellAt(i)).x_m;
        if (water.depth.has(i)) {
            const double off_m = std::max(x_m + 250.0, 0.0);
            halfWidth_m[i] = static_cast<float>(0.2 + 0.0044 * off_m);
            names[i] = off_m > 0.0 ? surface::TrustName::inferred : surface::TrustName::sounded;
        }
    }
    drawn.trust = surface::TrustGrid(std::move(halfWidth_m), std::move(names));
    return drawn;
}

class LinesExactly : public testing::Test {
protected:
    base::Result<SurveyTrip> proposed() {
        return surface::proposeLines(drawn_, water_.outline, {}, settings_, silent_);
    }
    const support::MadeUpWater water_ = support::madeUpWater(
        {{support::rectangle(-300.0, -150.0, 300.0, 150.0), {}}},
        [](geo::WaterPoint) { return 4.0; }, 10.0);
    DrawnWater drawn_ = halfKnown(water_);
    LineSettings settings_{.launch = {-290.0, 0.0}, .time = std::chrono::minutes(40)};
    base::Progress silent_;
};

TEST_F(LinesExactly, ABlockGainsWhatALineNearerThanWhatIsKnownBringsDown) {
    const GainMap map(drawn_, water_.outline, {});
    for (const GainMap::Block& block : map.blocks()) {
        EXPECT_EQ(map.gainOf_m3(block, block.known_m), 0.0);
        EXPECT_NEAR(map.gainOf_m3(block, 0.25 * block.known_m),
                    0.75 * block.area_m2 * (block.halfWidth_m - 0.2), 1e-3);
        const double shore_m = water_.outline.distanceToShore_m(block.middle);
        EXPECT_LE(block.known_m, std::max(1.0, shore_m + 8.0) + 1e-9);
    }
    const auto east = std::ranges::max_element(map.blocks(), {}, [](const GainMap::Block& block) {
        return block.middle.x_m - std::abs(block.middle.y_m);
    });
    EXPECT_NEAR(east->halfWidth_m, 0.2 + 0.0044 * (east->middle.x_m + 250.0), 0.03);
    GainMap taken = map;
    const geo::WaterPoint start{100.0, -100.0};
    const geo::WaterPoint end{100.0, 100.0};
    taken.take(start, end);
    double before_m3 = 0.0;
    double after_m3 = 0.0;
    double area_m2 = 0.0;
    for (std::size_t i = 0; i < map.blocks().size(); ++i) {
        const GainMap::Block& block = map.blocks()[i];
        const double near_m =
            std::max(1.0, surface::solver::distanceToPiece_m(block.middle, start, end));
        before_m3 += block.area_m2 * block.halfWidth_m;
        after_m3 += block.area_m2 * taken.blocks()[i].halfWidth_m;
        area_m2 += block.area_m2;
        EXPECT_NEAR(taken.blocks()[i].known_m, std::min(near_m, block.known_m), 1e-9);
    }
    EXPECT_NEAR(before_m3 - after_m3, map.gainOf_m3(start, end), 0.05 * map.gainOf_m3(start, end));
    EXPECT_NEAR(map.meanHalfWidth_m(), before_m3 / area_m2, 1e-9);
    EXPECT_NEAR(area_m2, 180000.0, 300.0);
}

TEST_F(LinesExactly, EveryFigureOfATripIsThatOfItsLinesInTheirOrder) {
    const SurveyTrip trip = proposed().value();
    ASSERT_GE(trip.lines.size(), 2U);
    GainMap map(drawn_, water_.outline, {});
    EXPECT_NEAR(trip.meanHalfWidthBefore.inMetres(), map.meanHalfWidth_m(), 1e-9);
    double way_m = 0.0;
    geo::WaterPoint at = settings_.launch;
    for (const surface::SurveyLine& line : trip.lines) {
        const double length_m = geo::distance_m(line.start, line.end);
        EXPECT_NEAR(line.length.inMetres(), length_m, 1e-9);
        EXPECT_NEAR(line.gain_m3, map.gainOf_m3(line.start, line.end), 1e-6);
        EXPECT_NEAR(line.gainPerMetre_m2, line.gain_m3 / length_m, 1e-9);
        EXPECT_EQ(line.duration.count(), std::llround(length_m / 1.5));
        map.take(line.start, line.end);
        way_m += geo::distance_m(at, line.start) + length_m;
        at = line.end;
        for (const geo::WaterPoint p : {line.start, line.end}) {
            EXPECT_GE(water_.outline.distanceToShore_m(p), 5.0 - 1e-9);
        }
    }
    way_m += geo::distance_m(at, settings_.launch);
    EXPECT_NEAR(trip.meanHalfWidthAfter.inMetres(), map.meanHalfWidth_m(), 1e-9);
    EXPECT_GE(trip.distance.inMetres(), way_m - 1e-6) << "back to the launch too";
    EXPECT_LE(trip.distance.inMetres(), 1.1 * way_m) << "straight over open water";
    EXPECT_EQ(trip.duration.count(), std::llround(trip.distance.inMetres() / 1.5));
    EXPECT_LE(trip.duration, settings_.time);
}

TEST_F(LinesExactly, TwiceTheSpeedReachesAsFarAsTwiceTheTime) {
    settings_.speed = units::Speed::metresPerSecond(3.0);
    settings_.time = std::chrono::minutes(20);
    const SurveyTrip fast = proposed().value();
    settings_.speed = units::Speed::metresPerSecond(1.5);
    settings_.time = std::chrono::minutes(40);
    const SurveyTrip slow = proposed().value();
    EXPECT_NEAR(fast.distance.inMetres(), slow.distance.inMetres(), 1e-6);
    EXPECT_NEAR(2.0 * static_cast<double>(fast.duration.count()),
                static_cast<double>(slow.duration.count()), 2.0);
}

TEST_F(LinesExactly, StayWithinTheTimeAndTheNumberGiven) {
    for (const int minutes : {8, 11, 17, 26, 40, 90}) {
        settings_.time = std::chrono::minutes(minutes);
        if (const auto trip = proposed()) {
            EXPECT_LE(trip->duration, settings_.time) << minutes;
        }
    }
    settings_.time = std::chrono::hours(3);
    for (const int most : {1, 3}) {
        settings_.mostLines = most;
        EXPECT_EQ(proposed().value().lines.size(), static_cast<std::size_t>(most));
    }
}

TEST_F(LinesExactly, KeepAsFarOffTheShoreAsAskedAndAreNoShorterThanAsked) {
    settings_.offShore = Length::metres(40.0);
    settings_.shortest = Length::metres(150.0);
    const SurveyTrip trip = proposed().value();
    for (const surface::SurveyLine& line : trip.lines) {
        EXPECT_GE(line.length.inMetres(), 0.98 * 150.0);
        for (const double t : {0.0, 0.3, 0.7, 1.0}) {
            EXPECT_GE(
                water_.outline.distanceToShore_m({std::lerp(line.start.x_m, line.end.x_m, t),
                                                  std::lerp(line.start.y_m, line.end.y_m, t)}),
                40.0 - 1e-6);
        }
    }
}

TEST_F(LinesExactly, TheLaunchMayLieTwoHundredMetresFromTheWaterAndNoFarther) {
    settings_.launch = {-490.0, 0.0};
    EXPECT_TRUE(proposed());
    settings_.launch = {-515.0, 0.0};
    const auto far = proposed();
    ASSERT_FALSE(far);
    EXPECT_EQ(far.error().kind, base::ErrorKind::unusableInput);
    EXPECT_THAT(far.error().what, HasSubstr("farther than 200 m"));
}

TEST(LineSettingsRules, AreTakenWithinTheirRangesAndNamedBeyond) {
    struct Case {
        const char* says;
        void (*set)(LineSettings&, double);
        double low;
        double high;
        double step;
    };
    const std::vector<Case> cases{
        {"the time", [](auto& s, double v) { s.time = std::chrono::minutes(static_cast<int>(v)); },
         5.0, 1440.0, 1.0},
        {"the speed", [](auto& s, double v) { s.speed = units::Speed::metresPerSecond(v); }, 0.2,
         5.0, 0.01},
        {"the shortest", [](auto& s, double v) { s.shortest = Length::metres(v); }, 10.0, 5000.0,
         0.1},
        {"1 to 100 lines", [](auto& s, double v) { s.mostLines = static_cast<int>(v); }, 1.0, 100.0,
         1.0},
        {"off the shore", [](auto& s, double v) { s.offShore = Length::metres(v); }, 0.0, 200.0,
         0.1}};
    EXPECT_THAT(surface::problemsIn(LineSettings()), IsEmpty());
    for (const Case& c : cases) {
        for (const double v : {c.low, c.high}) {
            LineSettings settings;
            c.set(settings, v);
            EXPECT_THAT(surface::problemsIn(settings), IsEmpty()) << c.says;
        }
        for (const double v : {c.low - c.step, c.high + c.step}) {
            LineSettings settings;
            c.set(settings, v);
            EXPECT_THAT(surface::problemsIn(settings), ElementsAre(HasSubstr(c.says)));
        }
    }
    LineSettings nowhere;
    nowhere.launch.y_m = NAN;
    EXPECT_THAT(surface::problemsIn(nowhere), ElementsAre(HasSubstr("launch")));
}

/// Blocks of 10 m, all water, for ways that are straight.
TEST(RoundTripOrder, CountsEveryWayAndTakesALineOutAgain) {
    const grid::Mask mask =
        grid::Mask::from(grid::Grid<std::uint8_t>(grid::GridFrame(0.0, 400.0, 10.0, 40, 40), 1));
    surface::solver::RoundTrip trip(mask, {5.0, 5.0});
    EXPECT_NEAR(trip.length_m(), 0.0, 1e-9);
    trip.add({{305.0, 5.0}, {105.0, 5.0}});
    // Out 100 m, along 200, back 300; or the other way round.
    EXPECT_NEAR(trip.length_m(), 600.0, 6.0);
    EXPECT_NEAR(trip.wayTo_m()[(grid::Cell{30, 39})], 0.0F, 1e-3F) << "from the nearest end";
    EXPECT_NEAR(trip.wayTo_m()[(grid::Cell{30, 29})], 100.0F, 2.0F);
    trip.add({{305.0, 205.0}, {5.0, 205.0}});
    EXPECT_NEAR(trip.length_m(), 100.0 + 200.0 + 200.0 + 300.0 + 200.0, 12.0);
    const auto order = trip.inOrder();
    ASSERT_EQ(order.size(), 2U);
    EXPECT_NEAR(geo::distance_m(order[0].end, order[1].start), 200.0, 1e-9)
        << "each from the end where it is entered";
    trip.undo();
    EXPECT_NEAR(trip.length_m(), 600.0, 6.0);
    EXPECT_EQ(trip.inOrder().size(), 1U);
    EXPECT_NEAR(trip.wayTo_m()[(grid::Cell{30, 19})], 200.0F, 4.0F);
}

} // namespace
