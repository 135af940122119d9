// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/find_structure.h"

#include "tests/support/made_up_water.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include <gtest/gtest.h>

namespace {

using structure::StructureSettings;
using structure::Zone;
using structure::ZoneKind;
using structure::ZoneMap;
using support::MadeUpWater;

base::Result<ZoneMap> found(const MadeUpWater& water, const StructureSettings& settings = {}) {
    base::Progress progress;
    return structure::findStructure(water.depth, water.mask, {}, contours::Bands(), settings,
                                    progress);
}

std::vector<Zone> of(const ZoneMap& map, ZoneKind kind) {
    std::vector<Zone> out;
    std::copy_if(map.zones.begin(), map.zones.end(), std::back_inserter(out),
                 [kind](const Zone& z) { return z.kind == kind; });
    return out;
}

MadeUpWater withNoise(MadeUpWater water, double sigma_m, unsigned seed) {
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0.0, sigma_m);
    for (std::size_t i = 0; i < water.depth.size(); ++i) {
        if (water.depth.has(i)) {
            const double depth_m = static_cast<double>(water.depth.raw_m()[i]) + noise(random);
            water.depth.set(i, units::Depth::metres(std::max(depth_m, 0.0)));
        }
    }
    return water;
}

TEST(FindStructure, FindsOneHumpWhereItIsAtSeveralCellSizes) {
    for (const double cell_m : {3.0, 5.0, 8.0}) {
        const MadeUpWater water =
            support::gaussianHump(250.0, 6.0, 1.5, 25.0, {40.0, -60.0}, cell_m);
        const ZoneMap map = found(water).value();
        const std::vector<Zone> humps = of(map, ZoneKind::hump);
        ASSERT_EQ(humps.size(), 1U) << "cell " << cell_m;
        EXPECT_EQ(humps[0].name, "Hump 1");
        EXPECT_LT(geo::distance_m(humps[0].middle, {40.0, -60.0}), 1.5 * cell_m);
        EXPECT_NEAR(humps[0].shallowest.inMetres(), 4.5, 0.1);
        EXPECT_TRUE(of(map, ZoneKind::spur).empty());
        EXPECT_TRUE(of(map, ZoneKind::hole).empty());
    }
}

TEST(FindStructure, FindsAPitAsOneHole) {
    const MadeUpWater water = support::gaussianHump(250.0, 5.0, -1.5, 25.0, {-30.0, 20.0}, 5.0);
    const ZoneMap map = found(water).value();
    ASSERT_EQ(of(map, ZoneKind::hole).size(), 1U);
    EXPECT_LT(geo::distance_m(of(map, ZoneKind::hole)[0].middle, {-30.0, 20.0}), 7.5);
    EXPECT_TRUE(of(map, ZoneKind::hump).empty());
}

TEST(FindStructure, FindsAChannelAsATrough) {
    const ZoneMap map = found(support::channel(250.0, 4.0, 1.5, 15.0, 5.0)).value();
    const std::vector<Zone> troughs = of(map, ZoneKind::trough);
    ASSERT_EQ(troughs.size(), 1U);
    EXPECT_LT(std::fabs(troughs[0].middle.x_m), 5.0);
    EXPECT_NEAR(troughs[0].deepest.inMetres(), 5.5, 0.1);
}

TEST(FindStructure, FindsAStepAsADropOffBetweenShelfAndFlat) {
    for (const double angle_deg : {0.0, 30.0, 45.0}) {
        const auto bottom = [](geo::WaterPoint p) {
            return 3.0 + 5.0 * std::clamp(p.x_m / 30.0 + 0.5, 0.0, 1.0);
        };
        const MadeUpWater water = support::madeUpWater(
            {{support::turned(support::rectangle(-300.0, -150.0, 300.0, 150.0), angle_deg), {}}},
            support::turned(bottom, angle_deg), 5.0);
        const ZoneMap map = found(water).value();
        const std::vector<Zone> drops = of(map, ZoneKind::dropOff);
        ASSERT_EQ(drops.size(), 1U) << "turned by " << angle_deg;
        EXPECT_NEAR(drops[0].edgeLength.inMetres(), 300.0, 25.0);
        // Top edge and foot lie where the bottom bends: at 15 m to either side of the middle.
        const double turn = -angle_deg * std::numbers::pi / 180.0;
        const auto across_m = [turn](geo::WaterPoint p) {
            return p.x_m * std::cos(turn) - p.y_m * std::sin(turn);
        };
        ASSERT_EQ(drops[0].topEdges.size(), 1U);
        for (const geo::WaterPoint p : drops[0].topEdges[0]) {
            EXPECT_NEAR(across_m(p), -15.0, 5.0) << p.x_m << " " << p.y_m;
        }
        ASSERT_EQ(drops[0].feet.size(), 1U);
        for (const geo::WaterPoint p : drops[0].feet[0]) {
            EXPECT_NEAR(across_m(p), 15.0, 5.0);
        }
        EXPECT_EQ(of(map, ZoneKind::shelf).size(), 1U);
        EXPECT_EQ(of(map, ZoneKind::flat).size(), 1U);
        EXPECT_TRUE(of(map, ZoneKind::spur).empty() && of(map, ZoneKind::trough).empty());
    }
}

/// A basin whose bank falls 6 m from the shore itself over 40 m, flat below.
MadeUpWater steepBank(double radius_m, double cell_m) {
    return support::madeUpWater(
        {{support::circle({0, 0}, radius_m), {}}},
        [radius_m](geo::WaterPoint p) {
            const double in_m = radius_m - std::hypot(p.x_m, p.y_m);
            return 6.0 * std::clamp(in_m / 40.0, 0.0, 1.0);
        },
        cell_m);
}

TEST(FindStructure, GivesADropOffAtTheShoreItsTopAlongTheShoreAndItsFoot) {
    for (const double cell_m : {2.5, 5.0}) {
        const ZoneMap map = found(steepBank(200.0, cell_m)).value();
        const std::vector<Zone> drops = of(map, ZoneKind::dropOff);
        ASSERT_EQ(drops.size(), 1U) << cell_m;
        EXPECT_TRUE(drops[0].topEdges.empty());
        ASSERT_FALSE(drops[0].shoreTops.empty());
        ASSERT_EQ(drops[0].feet.size(), 1U);
        EXPECT_NEAR(drops[0].edgeLength.inMetres(), 2.0 * std::numbers::pi * 200.0, 63.0);
        for (const geo::Path& top : drops[0].shoreTops) {
            for (const geo::WaterPoint p : top) {
                EXPECT_NEAR(std::hypot(p.x_m, p.y_m), 200.0, 1.5 * cell_m);
                EXPECT_TRUE(map.zoneOfCell.frame().holds(map.zoneOfCell.frame().cellOf(p)));
            }
        }
        for (const geo::WaterPoint p : drops[0].feet[0]) {
            EXPECT_NEAR(std::hypot(p.x_m, p.y_m), 160.0, cell_m);
        }
    }
}

TEST(FindStructure, FindsAPlateauWhereDeepWaterIsAllRound) {
    const MadeUpWater water = support::madeUpWater(
        {{support::rectangle(-400.0, -400.0, 400.0, 400.0), {}}},
        [](geo::WaterPoint p) {
            const double r_m = std::hypot(p.x_m, p.y_m);
            return 3.0 + 7.0 * std::clamp((r_m - 120.0) / 40.0, 0.0, 1.0);
        },
        5.0);
    const ZoneMap map = found(water).value();
    ASSERT_EQ(of(map, ZoneKind::plateau).size(), 1U);
    EXPECT_NEAR(of(map, ZoneKind::plateau)[0].area.inHectares(), 4.5, 0.6);
    EXPECT_EQ(of(map, ZoneKind::dropOff).size(), 1U);
}

TEST(FindStructure, FindsASpurThatRunsOutFromTheBank) {
    const MadeUpWater water = support::madeUpWater(
        {{support::rectangle(-300.0, 0.0, 300.0, 500.0), {}}},
        [](geo::WaterPoint p) {
            const double ridge_m = 3.0 * std::exp(-0.5 * p.x_m * p.x_m / 400.0) /
                                   (1.0 + std::exp((p.y_m - 220.0) / 15.0));
            return std::max(1.0 + 0.02 * p.y_m + 2.0 - ridge_m, 0.2);
        },
        5.0);
    const ZoneMap map = found(water).value();
    ASSERT_EQ(of(map, ZoneKind::spur).size(), 1U);
    EXPECT_LT(std::fabs(of(map, ZoneKind::spur)[0].middle.x_m), 7.5);
    EXPECT_TRUE(of(map, ZoneKind::hump).empty());
}

TEST(FindStructure, FindsNoFeatureOnACone) {
    const ZoneMap map = found(support::cone(300.0, 9.0, 5.0)).value();
    for (const Zone& zone : map.zones) {
        EXPECT_TRUE(zone.kind == ZoneKind::flat || zone.kind == ZoneKind::shelf ||
                    zone.kind == ZoneKind::hole)
            << zone.name;
    }
}

TEST(FindStructure, NamesNoTroughAlongTheMiddleOfABasin) {
    // up by 0.43 m over 60 m on either side: low ground, but the floor of the water, no channel
    const MadeUpWater water = support::madeUpWater(
        {{support::rectangle(-400.0, -150.0, 400.0, 150.0), {}}},
        [](geo::WaterPoint p) { return 2.0 + 1.2 * (1.0 - std::pow(p.y_m / 100.0, 2)); }, 5.0);
    const ZoneMap map = found(water).value();
    EXPECT_TRUE(of(map, ZoneKind::trough).empty());
    EXPECT_TRUE(of(map, ZoneKind::hole).empty());
}

TEST(FindStructure, NamesNoSpurRoundAnIsland) {
    const MadeUpWater water = support::madeUpWater(
        {{support::circle({0, 0}, 300.0), {support::circle({0, 0}, 50.0)}}},
        [](geo::WaterPoint p) { return 0.07 * (std::hypot(p.x_m, p.y_m) - 50.0); }, 5.0);
    EXPECT_TRUE(of(found(water).value(), ZoneKind::spur).empty());
}

TEST(FindStructure, AsksMoreOfARiseInDeepWaterThanInTheShallows) {
    const double rise_m = 0.9;
    EXPECT_EQ(of(found(support::gaussianHump(250.0, 5.0, rise_m, 25.0, {0, 0}, 5.0)).value(),
                 ZoneKind::hump)
                  .size(),
              1U);
    EXPECT_TRUE(of(found(support::gaussianHump(250.0, 15.0, rise_m, 25.0, {0, 0}, 5.0)).value(),
                   ZoneKind::hump)
                    .empty());
}

TEST(FindStructure, BelievesNoRiseThatTheDrawingMayHaveMade) {
    const MadeUpWater water = support::gaussianHump(250.0, 5.0, 0.9, 25.0, {0, 0}, 5.0);
    const auto humpsAt = [&](float halfWidth_m) {
        const grid::Grid<float> trust(water.depth.frame(), halfWidth_m);
        base::Progress progress;
        return of(structure::findStructure(water.depth, water.mask, trust, contours::Bands(), {},
                                           progress)
                      .value(),
                  ZoneKind::hump)
            .size();
    };
    EXPECT_EQ(humpsAt(0.3F), 1U);
    EXPECT_EQ(humpsAt(0.8F), 0U);
}

TEST(FindStructure, IsNotBrokenByATenthOfAMetreOfNoise) {
    const unsigned seed = 77;
    SCOPED_TRACE("seed " + std::to_string(seed));
    const MadeUpWater water =
        withNoise(support::gaussianHump(250.0, 6.0, 1.5, 25.0, {40.0, -60.0}, 5.0), 0.1, seed);
    const ZoneMap map = found(water).value();
    ASSERT_EQ(of(map, ZoneKind::hump).size(), 1U);
    EXPECT_LT(geo::distance_m(of(map, ZoneKind::hump)[0].middle, {40.0, -60.0}), 10.0);
    EXPECT_LE(map.zones.size(), 6U);
}

TEST(FindStructure, KeepsZonesAboveTheLeastSizeAndCellsInOneZoneOnly) {
    const MadeUpWater water = withNoise(support::cone(300.0, 30.0, 5.0), 0.3, 5);
    const ZoneMap map = found(water).value();
    std::vector<int> seen(water.depth.size(), 0);
    for (const Zone& zone : map.zones) {
        EXPECT_GE(static_cast<double>(zone.cells.size()) * 25.0, 500.0) << zone.name;
        EXPECT_FALSE(zone.pieces.empty());
        for (const std::size_t i : zone.cells) {
            EXPECT_EQ(seen[i]++, 0);
            EXPECT_TRUE(water.mask.isActive(i));
        }
    }
}

TEST(FindStructure, TellsTheThresholdsItUsed) {
    const ZoneMap map = found(support::cone(200.0, 60.0, 5.0)).value(); // 30 percent all round
    ASSERT_TRUE(map.report.has_value());
    EXPECT_NEAR(map.report->dropOffFrom_percent, 30.0, 0.5);
    StructureSettings own;
    own.dropOffFrom_percent = 12.0;
    own.highGround = units::Length::metres(0.5);
    const ZoneMap chosen = found(support::cone(200.0, 60.0, 5.0), own).value();
    EXPECT_EQ(chosen.report->dropOffFrom_percent, 12.0);
    EXPECT_EQ(chosen.report->highGround, units::Length::metres(0.5));
}

TEST(FindStructure, NumbersClockwiseFromTheLaunch) {
    MadeUpWater water = support::plane(400.0, 6.0, 6.0, 5.0);
    const std::vector<geo::WaterPoint> humps{
        {0.0, 250.0}, {250.0, 0.0}, {0.0, -250.0}, {-250.0, 0.0}};
    for (std::size_t i = 0; i < water.depth.size(); ++i) {
        if (water.depth.has(i)) {
            double depth_m = 6.0;
            for (const geo::WaterPoint h : humps) {
                const double r =
                    geo::distance_m(h, water.depth.frame().centre(water.depth.frame().cellAt(i))) /
                    25.0;
                depth_m -= 1.5 * std::exp(-0.5 * r * r);
            }
            water.depth.set(i, units::Depth::metres(depth_m));
        }
    }
    StructureSettings fromSouth;
    fromSouth.launch = geo::WaterPoint{20.0, -390.0};
    const std::vector<Zone> zones = of(found(water, fromSouth).value(), ZoneKind::hump);
    ASSERT_EQ(zones.size(), 4U);
    EXPECT_LT(geo::distance_m(zones[0].middle, humps[2]), 10.0);
    EXPECT_LT(geo::distance_m(zones[1].middle, humps[3]), 10.0);
    EXPECT_LT(geo::distance_m(zones[2].middle, humps[0]), 10.0);
    EXPECT_LT(geo::distance_m(zones[3].middle, humps[1]), 10.0);
}

TEST(FindStructure, RefusesWhatItCannotUse) {
    const MadeUpWater water = support::cone(60.0, 5.0, 5.0);
    StructureSettings settings;
    settings.broadScale = units::Length::metres(5.0);
    const auto wrongScale = found(water, settings);
    ASSERT_FALSE(wrongScale.has_value());
    EXPECT_EQ(wrongScale.error().kind, base::ErrorKind::wrongUse);
    MadeUpWater empty = water;
    empty.depth = grid::DepthGrid(water.depth.frame());
    const auto noDepth = found(empty);
    ASSERT_FALSE(noDepth.has_value());
    EXPECT_EQ(noDepth.error().kind, base::ErrorKind::unusableInput);
    MadeUpWater other = water;
    other.depth = support::cone(80.0, 5.0, 5.0).depth;
    EXPECT_FALSE(found(other).has_value());
}

} // namespace
