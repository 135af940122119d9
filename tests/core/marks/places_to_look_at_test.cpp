// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/places_to_look_at.h"

#include "tests/support/made_up_zones.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using structure::ZoneKind;
using units::Depth;

constexpr double cast_m = 30.0;

/// 200 by 200 m round the origin, falling by 4 % to the east, 6 m in the middle.
class PlacesLookedAt : public testing::Test {
protected:
    [[nodiscard]] std::vector<WaterPoint> places(std::size_t most = 40000) const {
        const rods::Ground ground(water_.depth, Depth::metres(30.0), &closed_, zones_, weed_);
        const marks::MarkInput input{.frame = water_.frame,
                                     .outline = water_.outline,
                                     .ground = ground,
                                     .bands = bands_,
                                     .sections = sections_,
                                     .trust_m = trust_m_,
                                     .isGuess = nullptr,
                                     .learned = nullptr,
                                     .waveHeightAt = {}};
        marks::ProposeSettings settings;
        settings.swingRoom = 0.0;
        settings.shallowest = Depth::metres(0.3);
        base::Progress quiet;
        const auto lying = marks::LyingCells::of(input, marks::Plan(), settings, quiet).value();
        return marks::placesToLookAt(
            input, {lying, [&ground](WaterPoint p) { return ground.isFishable(p); }}, cast_m, most);
    }
    [[nodiscard]] bool holds(const std::vector<WaterPoint>& places, WaterPoint wanted,
                             double within_m = 1e-6) const {
        return std::ranges::any_of(
            places, [&](WaterPoint p) { return geo::distance_m(p, wanted) <= within_m; });
    }
    support::MadeUpWater water_ = support::madeUpWater(
        {{support::rectangle(-100, -100, 100, 100), {}}},
        [](WaterPoint p) { return 6.0 + 0.04 * p.x_m; }, 2.0);
    structure::ZoneMap zones_ = support::noZones(water_);
    structure::ZoneMap weed_ = support::noZones(water_);
    grid::Grid<std::uint8_t> closed_{water_.depth.frame(), 0};
    grid::Grid<float> trust_m_{water_.depth.frame(), 0.2F};
    contours::Bands bands_ = contours::Bands::make({Depth::metres(5.3)}, Depth::metres(30)).value();
    sections::SectionMap sections_;
};

TEST_F(PlacesLookedAt, LieOnEdgesAndAThirdOfACastToBothSidesOfThem) {
    support::addZone(zones_, water_, ZoneKind::dropOff, [](WaterPoint) { return false; },
                     {{{33.3, -90}, {33.3, 90}}});
    support::addZone(weed_, water_, ZoneKind::weedEdge, [](WaterPoint) { return false; },
                     {{{-90, 44.4}, {-20, 44.4}}});
    const auto found = places();
    for (double along_m = 5.0; along_m < 180.0; along_m += 10.0) {
        for (const double aside_m : {-10.0, 0.0, 10.0}) {
            EXPECT_TRUE(holds(found, {33.3 + aside_m, -90.0 + along_m})) << along_m;
        }
    }
    for (double along_m = 5.0; along_m < 70.0; along_m += 10.0) {
        for (const double aside_m : {-10.0, 0.0, 10.0}) {
            EXPECT_TRUE(holds(found, {-90.0 + along_m, 44.4 + aside_m})) << along_m;
        }
    }
}

TEST_F(PlacesLookedAt, LieInTheMiddleOfEveryFeatureAndOfNothingElse) {
    double x_m = -51.7;
    for (const ZoneKind kind : structure::allZoneKinds) {
        support::addZone(zones_, water_, kind, [](WaterPoint) { return false; });
        zones_.zones.back().middle = {x_m, 13.7};
        x_m += 11.3;
    }
    const auto found = places();
    for (const structure::Zone& zone : zones_.zones) {
        const bool isFeature = zone.kind == ZoneKind::hump || zone.kind == ZoneKind::hole ||
                               zone.kind == ZoneKind::spur || zone.kind == ZoneKind::saddle;
        EXPECT_EQ(holds(found, zone.middle), isFeature) << structure::nameOf(zone.kind);
    }
}

TEST_F(PlacesLookedAt, LieOnAPatchOfAnotherKindThatTheLatticePassesBy) {
    // One cell of weed between the lattice's places, 10 m apart, and one of plateau beside it: no
    // feature has its middle there, no edge passes, and the depth is like that around.
    const WaterPoint bed{5.0, 5.0};
    const WaterPoint flat{-35.0, 45.0};
    const auto cellOf = [](WaterPoint cell) {
        return [cell](WaterPoint p) { return geo::distance_m(p, cell) < 0.5; };
    };
    EXPECT_FALSE(holds(places(), bed, 0.9));
    EXPECT_FALSE(holds(places(), flat, 0.9));
    support::addZone(weed_, water_, ZoneKind::weedBed, cellOf(bed));
    support::addZone(zones_, water_, ZoneKind::plateau, cellOf(flat));
    ASSERT_EQ(weed_.zones.back().cells.size(), 1U);
    ASSERT_EQ(zones_.zones.back().cells.size(), 1U);
    EXPECT_TRUE(holds(places(), bed, 0.9));
    EXPECT_TRUE(holds(places(), flat, 0.9));
}

TEST_F(PlacesLookedAt, LieOnASpotOfAnotherDepthThatTheLatticePassesBy) {
    const WaterPoint spot{5.0, 5.0};
    bands_ = contours::Bands::make({Depth::metres(25)}, Depth::metres(30)).value();
    for (const double times : {1.0, 1.1, 1.6, 0.6}) {
        water_ = support::madeUpWater(
            {{support::rectangle(-100, -100, 100, 100), {}}},
            [&](WaterPoint p) {
                const bool isSpot = geo::distance_m(p, spot) < 0.9;
                return (isSpot ? times : 1.0) * (6.0 + 0.004 * p.x_m);
            },
            2.0);
        EXPECT_EQ(holds(places(), spot, 0.9), times > 1.5 || times < 0.7) << times;
    }
}

/// The lattice's step by the formula in the header's words: half a cast, finer on a pond.
double stepFor(const support::MadeUpWater& water, double most) {
    const double area_m2 =
        4.0 * static_cast<double>(std::ranges::count_if(
                  water.depth.raw_m(), [](float d_m) { return !std::isnan(d_m); }));
    return std::max(std::min(15.0, std::sqrt(area_m2 / 400.0)), std::sqrt(area_m2 / (0.35 * most)));
}

TEST_F(PlacesLookedAt, LieOnALatticeThroughTheOriginOverAllThatCanBeFished) {
    for (const std::size_t most : {40000U, 300U}) {
        const double step_m = stepFor(water_, static_cast<double>(most));
        const auto found = places(most);
        const int reach = static_cast<int>(99.0 / step_m);
        for (int row = -reach; row <= reach; ++row) {
            for (int col = -reach; col <= reach; ++col) {
                EXPECT_TRUE(holds(found, {col * step_m, row * step_m})) << col << ' ' << row;
            }
        }
    }
    for (std::size_t i = 0; i < closed_.size(); ++i) {
        closed_[i] = closed_.frame().centre(closed_.frame().cellAt(i)).x_m > 0.0 ? 1 : 0;
    }
    bands_ = contours::Bands::make({Depth::metres(25)}, Depth::metres(30)).value();
    EXPECT_TRUE(std::ranges::none_of(places(), [](WaterPoint p) { return p.x_m > 2.0; }));
}

TEST_F(PlacesLookedAt, LieOnTheBordersOfBandsBetweenThem) {
    const double step_m = stepFor(water_, 40000.0);
    const auto found = places();
    // 5.3 m is where x = -17.5; a halving to the 4096th part of the step.
    for (int row = -9; row <= 9; ++row) {
        EXPECT_TRUE(holds(found, {-17.5, row * step_m}, 0.01)) << row;
    }
    water_ = support::madeUpWater(
        {{support::rectangle(-100, -100, 100, 100), {}}},
        [](WaterPoint p) { return 6.0 + 0.04 * p.y_m; }, 2.0);
    const auto turned = places();
    for (int col = -9; col <= 9; ++col) {
        EXPECT_TRUE(holds(turned, {col * step_m, -17.5}, 0.01)) << col;
    }
}

} // namespace
