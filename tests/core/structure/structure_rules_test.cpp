// SPDX-License-Identifier: GPL-3.0-or-later
// Which settings structure is found by, what it reports, and which ground stands out enough.
#include "core/structure/drop_off_lines.h"
#include "core/structure/feature_kinds.h"
#include "core/structure/find_structure.h"
#include "tests/support/made_up_water.h"

#include <algorithm>
#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using grid::Cell;
using grid::GridFrame;
using structure::codeOf;
using structure::KindGrid;
using structure::StructureSettings;
using structure::Zone;
using structure::ZoneKind;
using structure::ZoneMap;
using support::MadeUpWater;
using testing::HasSubstr;
using units::Depth;
using units::Length;

base::Result<ZoneMap> found(const MadeUpWater& water, const StructureSettings& settings = {},
                            const contours::Bands& bands = contours::Bands()) {
    base::Progress silent;
    return structure::findStructure(water.depth, water.mask, {}, bands, settings, silent);
}

TEST(StructureSettingsRules, AreTakenWithinTheirRangesAndNamedBeyond) {
    struct Case {
        const char* says;
        void (*set)(StructureSettings&, double);
        double low;
        double high;
    };
    const std::vector<Case> cases{
        {"fine scale", [](auto& s, double v) { s.fineScale = Length::metres(v); }, 3.0, 50.0},
        {"broad scale", [](auto& s, double v) { s.broadScale = Length::metres(v); }, 20.0, 500.0},
        {"slope of a drop-off", [](auto& s, double v) { s.dropOffFrom_percent = v; }, 1.0, 200.0},
        {"hold", [](auto& s, double v) { s.dropOffHold = v; }, 0.3, 1.0},
        {"high ground", [](auto& s, double v) { s.highGround = Length::metres(v); }, 0.05, 20.0},
        {"least size", [](auto& s, double v) { s.leastArea = units::Area::hectares(v); }, 0.0,
         10.0}};
    const MadeUpWater water = support::plane(60.0, 3.0, 5.0, 10.0);
    for (const Case& c : cases) {
        for (const double v : {c.low, c.high}) {
            StructureSettings settings;
            c.set(settings, v);
            EXPECT_TRUE(found(water, settings)) << c.says << " " << v;
        }
        for (const double v : {c.low - 0.01, c.high + 0.01}) {
            StructureSettings settings;
            c.set(settings, v);
            const auto refused = found(water, settings);
            ASSERT_FALSE(refused) << c.says << " " << v;
            EXPECT_EQ(refused.error().kind, base::ErrorKind::wrongUse);
            EXPECT_THAT(refused.error().what, HasSubstr(c.says));
        }
    }
    StructureSettings same;
    same.fineScale = same.broadScale = Length::metres(30.0);
    EXPECT_FALSE(found(water, same)) << "the broad scale is broader";
    base::Progress silent;
    const grid::Grid<float> trust(GridFrame(0.0, 10.0, 10.0, 3, 3), 0.1F);
    EXPECT_FALSE(
        structure::findStructure(water.depth, water.mask, trust, contours::Bands(), {}, silent));
}

TEST(StructureReportFigures, AreTheUsualTheWatersOwnOrTheUsers) {
    const auto gentle = found(support::plane(200.0, 3.0, 11.0, 4.0)).value().report.value(); // 2 %
    EXPECT_DOUBLE_EQ(gentle.dropOffFrom_percent, 10.0) << "never below";
    EXPECT_DOUBLE_EQ(gentle.dropOffDownTo_percent, 8.0);
    EXPECT_DOUBLE_EQ(gentle.gentleBelow_percent, 5.0);
    EXPECT_DOUBLE_EQ(gentle.highGround.inMetres(), 0.3) << "never below";
    EXPECT_DOUBLE_EQ(gentle.fineScale.inMetres(), 12.0) << "three cells";
    EXPECT_DOUBLE_EQ(gentle.broadScale.inMetres(), 60.0);
    EXPECT_DOUBLE_EQ(gentle.leastArea.inSquareMetres(), 500.0);
    const auto coarse = found(support::plane(400.0, 3.0, 11.0, 10.0)).value().report.value();
    EXPECT_DOUBLE_EQ(coarse.fineScale.inMetres(), 30.0);
    EXPECT_DOUBLE_EQ(coarse.broadScale.inMetres(), 90.0) << "three fine scales";
    StructureSettings own;
    own.fineScale = Length::metres(14.0);
    own.broadScale = Length::metres(80.0);
    own.dropOffFrom_percent = 20.0;
    own.dropOffHold = 0.6;
    own.highGround = Length::metres(0.7);
    own.leastArea = units::Area::squareMetres(900.0);
    const auto chosen = found(support::plane(200.0, 3.0, 11.0, 4.0), own).value().report.value();
    EXPECT_DOUBLE_EQ(chosen.fineScale.inMetres(), 14.0);
    EXPECT_DOUBLE_EQ(chosen.broadScale.inMetres(), 80.0);
    EXPECT_DOUBLE_EQ(chosen.dropOffFrom_percent, 20.0);
    EXPECT_DOUBLE_EQ(chosen.dropOffDownTo_percent, 12.0);
    EXPECT_DOUBLE_EQ(chosen.gentleBelow_percent, 10.0);
    EXPECT_DOUBLE_EQ(chosen.highGround.inMetres(), 0.7);
    EXPECT_DOUBLE_EQ(chosen.leastArea.inSquareMetres(), 900.0);
    // A quarter of the water at 40 %, the rest level: the upper quintile is steep.
    const auto steep =
        found(support::madeUpWater(
                  {{support::rectangle(0, 0, 400, 200), {}}},
                  [](geo::WaterPoint p) { return 2.0 + 0.4 * std::max(p.x_m - 300, 0.0); }, 4.0))
            .value()
            .report.value();
    EXPECT_NEAR(steep.dropOffFrom_percent, 40.0, 1.0);
}

TEST(StructureReportFigures, ShelvesEndWhereTheLimitDoes) {
    const MadeUpWater step = support::step(150.0, 3.0, 8.0, 30.0, 5.0);
    const auto kinds = [&](double limit_m) {
        std::vector<ZoneKind> all;
        const auto bands = contours::Bands::make({Depth::metres(2)}, Depth::metres(limit_m));
        const ZoneMap map = found(step, {}, bands.value()).value();
        for (const Zone& zone : map.zones) {
            all.push_back(zone.kind);
        }
        return all;
    };
    EXPECT_THAT(kinds(4.0),
                testing::ElementsAre(ZoneKind::dropOff, ZoneKind::shelf, ZoneKind::flat));
    EXPECT_THAT(kinds(2.5),
                testing::ElementsAre(ZoneKind::dropOff, ZoneKind::flat, ZoneKind::flat));
}

/// A block of 6 by 6 cells, so deep, that stands out from the ground round it as its form says;
/// what it is marked as.
ZoneKind markedAs(float ridge_m, float valley_m, float trough_m, float depth_m,
                  const float* trust_m = nullptr, std::size_t leastLine = 4, float peakShare = 1.0F,
                  Cell asked = {9, 9}) {
    const GridFrame frame(0.0, 100.0, 5.0, 20, 20);
    structure::GroundForm form{grid::Grid<float>(frame, -1.0F), grid::Grid<float>(frame, -1.0F),
                               grid::Grid<float>(frame, -1.0F)};
    grid::DepthGrid depth(frame);
    for (std::size_t i = 0; i < frame.size(); ++i) {
        const Cell c = frame.cellAt(i);
        const bool isIn = c.col >= 7 && c.col < 13 && c.row >= 7 && c.row < 13;
        const bool isPeak = c.col == 9 && c.row == 9;
        const float share = isPeak ? 1.0F : peakShare;
        if (isIn) {
            form.ridge_m[i] = share * ridge_m;
            form.valley_m[i] = share * valley_m;
            form.trough_m[i] = share * trough_m;
        }
        const float lower_m = ridge_m > 0.0F ? ridge_m : -valley_m;
        depth.set(i, Depth::metres(static_cast<double>(isIn ? depth_m : depth_m + lower_m)));
    }
    KindGrid kinds(frame, -1);
    structure::FeatureLimits limits{Length::metres(1.0), leastLine, nullptr};
    grid::Grid<float> trust;
    if (trust_m != nullptr) {
        trust = grid::Grid<float>(frame, *trust_m);
        limits.trustHalfWidth_m = &trust;
    }
    structure::markFeatures(kinds, depth, form, limits);
    const std::int32_t kind = kinds[asked];
    return kind < 0 ? ZoneKind::weedBed : static_cast<ZoneKind>(kind);
}

constexpr ZoneKind nothing = ZoneKind::weedBed; // stands for "not marked" here

TEST(StandingOut, TakesTheHighGroundATenthOfTheDepthAndMoreThanTheDrawingCanErr) {
    EXPECT_EQ(markedAs(1.0F, -1.0F, -1.0F, 5.0F), ZoneKind::hump);
    EXPECT_EQ(markedAs(0.99F, -1.0F, -1.0F, 5.0F), nothing);
    EXPECT_EQ(markedAs(1.5F, -1.0F, -1.0F, 15.0F), ZoneKind::hump);
    EXPECT_EQ(markedAs(1.5F, -1.0F, -1.0F, 15.1F), nothing) << "a tenth of the depth";
    const float sure = 0.7F; // times root two: 0.990
    const float unsure = 0.72F;
    EXPECT_EQ(markedAs(1.0F, -1.0F, -1.0F, 5.0F, &sure), ZoneKind::hump);
    EXPECT_EQ(markedAs(1.0F, -1.0F, -1.0F, 5.0F, &unsure), nothing);
    const float unknown = NAN;
    EXPECT_EQ(markedAs(1.0F, -1.0F, -1.0F, 5.0F, &unknown), ZoneKind::hump);
    EXPECT_EQ(markedAs(1.0F, -1.0F, -1.0F, 5.0F, nullptr, 4, 0.5F, {7, 12}), ZoneKind::hump)
        << "it reaches on at half";
    EXPECT_EQ(markedAs(1.0F, -1.0F, -1.0F, 5.0F, nullptr, 4, 0.49F, {7, 12}), nothing);
}

TEST(StandingOut, LowGroundIsAHoleWhereItIsClosedAndBothTogetherAreASaddle) {
    EXPECT_EQ(markedAs(-1.0F, 1.2F, 1.2F, 5.0F), ZoneKind::hole);
    EXPECT_EQ(markedAs(-1.0F, 1.2F, 0.9F, 5.0F), nothing) << "low, but so is the middle of a basin";
    EXPECT_EQ(markedAs(1.2F, 1.2F, 1.2F, 5.0F), ZoneKind::saddle);
}

TEST(StandingOut, LowGroundWithAWayOutIsATrough) {
    // A groove 6 m deep in ground of 4 m, which runs out to the east at its own depth.
    const GridFrame frame(0.0, 100.0, 5.0, 20, 20);
    structure::GroundForm form{grid::Grid<float>(frame, -1.0F), grid::Grid<float>(frame, -1.0F),
                               grid::Grid<float>(frame, -1.0F)};
    grid::DepthGrid depth(frame);
    for (std::size_t i = 0; i < frame.size(); ++i) {
        const Cell c = frame.cellAt(i);
        const bool isLow = c.row >= 8 && c.row < 12 && c.col >= 6 && c.col < 12;
        const bool isOut = c.row >= 8 && c.row < 12 && c.col >= 12;
        depth.set(i, Depth::metres(isLow || isOut ? 6.0 : 4.0));
        form.valley_m[i] = form.trough_m[i] = isLow ? 1.5F : -1.0F;
    }
    KindGrid kinds(frame, -1);
    structure::markFeatures(kinds, depth, form, {Length::metres(1.0), 4, nullptr});
    EXPECT_EQ(kinds[(Cell{8, 10})], codeOf(ZoneKind::trough));
}

TEST(StandingOut, ARidgeThatHangsOnHigherGroundIsASpurOrNothingWhereItIsShort) {
    // Ground 3 m deep in the west that a tongue runs out from, at the same depth, over 8 m.
    const GridFrame frame(0.0, 100.0, 5.0, 30, 20);
    structure::GroundForm form{grid::Grid<float>(frame, -1.0F), grid::Grid<float>(frame, -1.0F),
                               grid::Grid<float>(frame, -1.0F)};
    grid::DepthGrid depth(frame);
    for (std::size_t i = 0; i < frame.size(); ++i) {
        const Cell c = frame.cellAt(i);
        const bool isTongue = c.row >= 9 && c.row < 11 && c.col >= 8 && c.col < 18;
        depth.set(i, Depth::metres(c.col < 8 ? 2.9 : isTongue ? 3.0 : 8.0));
        form.ridge_m[i] = isTongue ? 2.0F : -1.0F;
    }
    const auto kindWith = [&](std::size_t leastLine) {
        KindGrid kinds(frame, -1);
        structure::markFeatures(kinds, depth, form, {Length::metres(1.0), leastLine, nullptr});
        return kinds[Cell{12, 9}];
    };
    EXPECT_EQ(kindWith(20), codeOf(ZoneKind::spur)) << "twenty cells";
    EXPECT_EQ(kindWith(21), -1);
}

TEST(DropOffEdges, ShorterOnesThanAskedAreLeftOutAndTopsMakeUpTheLength) {
    const MadeUpWater step = support::step(150.0, 3.0, 8.0, 30.0, 5.0); // 300 m of edge
    const auto slope = structure::SlopeGrid::of(step.depth, Length::metres(15.0));
    Zone whole;
    const ZoneMap map = found(step).value();
    for (const Zone& zone : map.zones) {
        if (zone.kind == ZoneKind::dropOff) {
            whole = zone;
        }
    }
    const auto edged = [&](double least_m) {
        Zone zone = whole;
        zone.topEdges.clear();
        zone.feet.clear();
        zone.shoreTops.clear();
        zone.edgeLength = Length();
        structure::addEdgeLines(zone, slope, Length::metres(15.0), Length::metres(least_m));
        return zone;
    };
    const Zone zone = edged(30.0);
    ASSERT_EQ(zone.topEdges.size(), 1U);
    ASSERT_EQ(zone.feet.size(), 1U);
    EXPECT_TRUE(zone.shoreTops.empty());
    EXPECT_NEAR(zone.edgeLength.inMetres(), geo::lengthOf(zone.topEdges[0]).inMetres(), 1e-9);
    EXPECT_TRUE(edged(400.0).topEdges.empty());
    EXPECT_EQ(edged(400.0).edgeLength.inMetres(), 0.0);
    for (const geo::WaterPoint p : zone.topEdges[0]) {
        EXPECT_LT(p.x_m, 0.0) << "the shallow side";
    }
}

} // namespace
