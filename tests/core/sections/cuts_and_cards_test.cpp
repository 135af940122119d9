// SPDX-License-Identifier: GPL-3.0-or-later
// What a division is made with, one rule at a time: the cost of a part, cuts that leave whole
// parts, lines that double back, outlines of their own section, how compact it has to be.
#include "core/sections/divide_water.h"
#include "core/sections/lump_ground.h"
#include "core/sections/pair_cut.h"
#include "core/sections/reshape_sections.h"
#include "tests/support/made_up_water.h"

#include <cmath>
#include <numbers>
#include <numeric>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace sections;
using support::MadeUpWater;

TEST(CostOfAPart, IsItsDepthsItsBorderAndTheSquareOfItsDifferenceInSize) {
    PartSums part;
    part.area_m2 = 50.0;
    part.border_m = 30.0;
    part.depth_m3 = 150.0;
    part.depthSquares_m4 = 650.0; // a scatter of 650 - 150² / 50 = 200 m4
    const PartCost cost{
        .wanted_m2 = 40.0, .depthVariance_m2 = 2.5, .depth = 1.5, .border = 0.8, .size = 0.2};
    EXPECT_NEAR(cost.of(part),
                1.5 * 200.0 / (2.5 * 40.0) + 0.8 * 30.0 / std::sqrt(4.0 * std::numbers::pi * 40.0) +
                    0.2 * 0.25 * 0.25,
                1e-9);
    EXPECT_EQ(cost.of(PartSums()), 0.0);
}

std::optional<PairCut> cutOf(const MadeUpWater& water, double wanted_m2, WaterGraph& graph) {
    graph = graphOf(water.depth, water.mask, water.mask.active(), 2);
    std::vector<std::int32_t> nodes(graph.nodes.size());
    std::iota(nodes.begin(), nodes.end(), 0);
    const PartCost cost{.wanted_m2 = wanted_m2};
    return PairCutter(graph, cost).cheapest(nodes, 1e9);
}

TEST(CutsFound, RunAcrossALongWaterWhicheverWayItLies) {
    for (const double angle_deg : {0.0, 45.0, 90.0, 135.0}) {
        const MadeUpWater water = support::madeUpWater(
            {{support::turned(support::rectangle(-100.0, -20.0, 100.0, 20.0), angle_deg), {}}},
            [](geo::WaterPoint) { return 4.0; }, 5.0);
        WaterGraph graph;
        const auto cut = cutOf(water, 4000.0, graph);
        ASSERT_TRUE(cut) << angle_deg;
        const auto middle_m = [](const PartSums& s) {
            return geo::WaterPoint{s.x_m3 / s.area_m2, s.y_m3 / s.area_m2};
        };
        EXPECT_NEAR(geo::distance_m(middle_m(cut->first), middle_m(cut->second)), 100.0, 8.0)
            << angle_deg;
    }
}

TEST(CutsFound, RunStraightAcrossABroadWaterWhicheverWayItLies) {
    // Hardly longer than broad: what lies farthest from one end is a corner, and a cut along the
    // water would run slanting.
    for (const double angle_deg : {0.0, 45.0, 90.0, 135.0}) {
        const MadeUpWater water = support::madeUpWater(
            {{support::turned(support::rectangle(-70.0, -50.0, 70.0, 50.0), angle_deg), {}}},
            [](geo::WaterPoint) { return 4.0; }, 5.0);
        WaterGraph graph;
        const auto cut = cutOf(water, 7000.0, graph);
        ASSERT_TRUE(cut) << angle_deg;
        EXPECT_NEAR(cut->first.area_m2, 7000.0, 400.0) << angle_deg;
        const auto middle_m = [](const PartSums& s) {
            return geo::WaterPoint{s.x_m3 / s.area_m2, s.y_m3 / s.area_m2};
        };
        const geo::WaterPoint a = middle_m(cut->first);
        const geo::WaterPoint b = middle_m(cut->second);
        const double turn = angle_deg * std::numbers::pi / 180.0;
        const double along_m = (b.x_m - a.x_m) * std::cos(turn) + (b.y_m - a.y_m) * std::sin(turn);
        const double across_m = (b.y_m - a.y_m) * std::cos(turn) - (b.x_m - a.x_m) * std::sin(turn);
        EXPECT_NEAR(std::abs(along_m), 70.0, 4.0) << angle_deg;
        EXPECT_NEAR(across_m, 0.0, 8.0) << angle_deg;
    }
}

TEST(CutsFound, LeaveTwoPartsThatHangTogether) {
    // A horseshoe open to the south: straight across it, its two legs would be one part.
    const MadeUpWater water = support::madeUpWater(
        {{{{-100.0, -100.0},
           {-60.0, -100.0},
           {-60.0, 60.0},
           {60.0, 60.0},
           {60.0, -100.0},
           {100.0, -100.0},
           {100.0, 100.0},
           {-100.0, 100.0}},
          {}}},
        [](geo::WaterPoint p) { return p.y_m < 20.0 ? 2.0 : 8.0; }, 5.0);
    WaterGraph graph = graphOf(water.depth, water.mask, water.mask.active(), 2);
    std::vector<std::int32_t> nodes(graph.nodes.size());
    std::iota(nodes.begin(), nodes.end(), 0);
    for (const double depthWeight : {0.0, 5.0}) { // by depth, both legs belong together
        const PartCost cost{.wanted_m2 = 10400.0, .depthVariance_m2 = 1.0, .depth = depthWeight};
        const auto cut = PairCutter(graph, cost).cheapest(nodes, 1e9);
        ASSERT_TRUE(cut);
        grid::PieceGrid pieces(water.depth.frame(), -1);
        for (std::size_t k = 0; k < cut->order.size(); ++k) {
            for (const std::size_t i : graph.cellsOfNode[static_cast<std::size_t>(cut->order[k])]) {
                pieces[i] = k < cut->at ? 0 : 1;
            }
        }
        EXPECT_EQ(grid::connectedPieces(pieces).cells.size(), 2U) << depthWeight;
    }
}

TEST(LinesOfCut, PartWhatTheyCrossAnOddNumberOfTimes) {
    const MadeUpWater water = support::madeUpWater(
        {{support::rectangle(0.0, 0.0, 200.0, 100.0), {}}}, [](geo::WaterPoint) { return 4.0; },
        10.0);
    const auto refused = [&](const geo::Path& line) {
        grid::PieceGrid pieces(water.depth.frame(), -1);
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            pieces[i] = water.mask.isActive(i) ? 0 : -1;
        }
        std::size_t count = 1;
        SectionChange change;
        change.kind = SectionChange::Kind::split;
        for (const geo::WaterPoint p : line) {
            change.line.push_back(water.frame.toEarth(p));
        }
        return reshapeSections(pieces, count, std::vector{change}, water.frame,
                               units::Area::squareMetres(1000.0))
            .size();
    };
    EXPECT_EQ(refused({{101.0, -20.0}, {101.0, 120.0}}), 0U);
    EXPECT_EQ(refused({{101.0, -20.0}, {101.0, 120.0}, {102.0, 120.0}, {102.0, -20.0}}), 1U)
        << "there and back";
    EXPECT_EQ(refused({{101.0, -20.0},
                       {101.0, 120.0},
                       {102.0, 120.0},
                       {102.0, -20.0},
                       {103.0, -20.0},
                       {103.0, 120.0}}),
              0U);
}

MadeUpWater rugged() {
    return support::madeUpWater(
        {{support::circle({0.0, 0.0}, 260.0), {}}},
        [](geo::WaterPoint p) { return 5.0 + 3.5 * std::sin(p.x_m / 25.0) + 0.006 * p.y_m; }, 5.0);
}

SectionMap divided(const MadeUpWater& water, const SectionSettings& settings) {
    base::Progress silent;
    return divideWater({.depth = water.depth,
                        .mask = water.mask,
                        .outline = water.outline,
                        .frame = water.frame,
                        .bands = contours::Bands()},
                       settings, silent)
        .value();
}

TEST(SectionsOnTheMap, HaveTheOutlineOfTheirOwnCells) {
    const MadeUpWater water = rugged();
    SectionSettings settings;
    settings.wantedArea = units::Area::hectares(1.6);
    const SectionMap map = divided(water, settings);
    ASSERT_GT(map.sections.size(), 5U);
    for (const Section& section : map.sections) {
        double outline_m2 = 0.0;
        bool isInside = false;
        for (const geo::Piece& piece : section.pieces) {
            outline_m2 += geo::areaOf(piece).inSquareMetres();
            isInside = isInside || geo::Outline::make({piece}, water.frame)
                                       .value()
                                       .contains(water.depth.frame().centre(
                                           water.depth.frame().cellAt(section.cells.front())));
            isInside = isInside ||
                       geo::Outline::make({piece}, water.frame).value().contains(section.middle);
        }
        EXPECT_TRUE(isInside) << section.name;
        EXPECT_NEAR(outline_m2, static_cast<double>(section.cells.size()) * 25.0, 300.0)
            << section.name;
    }
}

TEST(SectionsOnTheMap, AreNoLessCompactThanAskedWhateverTheDepths) {
    const MadeUpWater water = rugged();
    SectionSettings settings;
    settings.wantedArea = units::Area::hectares(1.6);
    settings.depthWeight = 10.0;
    settings.leastCompactness = 0.3;
    const SectionMap free = divided(water, settings);
    settings.leastCompactness = 0.9;
    const SectionMap held = divided(water, settings);
    EXPECT_LT(free.report.compactness, 0.9 * free.report.straightCompactness);
    EXPECT_GT(held.report.compactness, free.report.compactness);
    EXPECT_LT(held.report.depthWeight, free.report.depthWeight);
}

TEST(SectionsOnTheMap, AreNoSmallerThanAHundredSquareMetres) {
    const MadeUpWater water = support::madeUpWater(
        {{support::rectangle(0.0, 0.0, 60.0, 40.0), {}}}, [](geo::WaterPoint) { return 4.0; }, 2.0);
    base::Progress silent;
    for (const auto& [wanted_m2, isTaken] : {std::pair(99.0, false), {100.0, true}}) {
        SectionSettings settings;
        settings.wantedArea = units::Area::squareMetres(wanted_m2);
        const auto map = divideWater({.depth = water.depth,
                                      .mask = water.mask,
                                      .outline = water.outline,
                                      .frame = water.frame,
                                      .bands = contours::Bands()},
                                     settings, silent);
        ASSERT_EQ(map.has_value(), isTaken) << wanted_m2;
        if (!isTaken) {
            EXPECT_THAT(map.error().what, testing::HasSubstr("between 0.01 and 1000 ha"));
        }
    }
}

} // namespace
