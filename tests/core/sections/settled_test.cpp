// SPDX-License-Identifier: GPL-3.0-or-later
// What dividing promises, looked over by brute force: sums that fit, borders that no single cell
// betters, cuts that are the cheapest there are, and a division that stays what it was.
#include "core/sections/cell_ground.h"
#include "core/sections/divide_water.h"
#include "core/sections/lump_ground.h"
#include "core/sections/pair_cut.h"
#include "core/sections/settle_borders.h"
#include "core/sections/straight_pieces.h"
#include "tests/support/made_up_water.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <numeric>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace sections;
using support::MadeUpWater;

/// 200 by 120 m of water in cells of 5 m, with an island, deeper to the north-east.
MadeUpWater slantedBay() {
    return support::madeUpWater(
        {{support::rectangle(0.0, 0.0, 200.0, 120.0),
          {support::rectangle(90.0, 50.0, 115.0, 75.0)}}},
        [](geo::WaterPoint p) { return 2.0 + 0.01 * p.x_m + 0.02 * p.y_m; }, 5.0);
}

double crofton(bool isSide) {
    return std::numbers::pi / 8.0 * 5.0 * (isSide ? 1.0 : std::numbers::sqrt2 / 2.0);
}

/// Sums of each piece, counted pair of cells by pair of cells.
std::vector<PartSums> counted(const grid::PieceGrid& pieces, std::size_t count,
                              const MadeUpWater& water) {
    std::vector<PartSums> sums(count);
    const grid::GridFrame& f = pieces.frame();
    const auto at = [&](int col, int row) {
        const grid::Cell c{col, row};
        return f.holds(c) ? pieces[c] : -1;
    };
    for (int row = -1; row <= f.rows(); ++row) {
        for (int col = -1; col <= f.cols(); ++col) {
            const std::int32_t here = at(col, row);
            if (here < 0) {
                continue;
            }
            PartSums& sum = sums[static_cast<std::size_t>(here)];
            const std::size_t i = f.index({col, row});
            const double area_m2 = static_cast<double>(std::max(water.mask.share(i), 0.01F)) * 25.0;
            const auto depth_m = static_cast<double>(water.depth.raw_m()[i]);
            sum.area_m2 += area_m2;
            sum.x_m3 += area_m2 * f.centre({col, row}).x_m;
            sum.y_m3 += area_m2 * f.centre({col, row}).y_m;
            sum.depth_m3 += area_m2 * depth_m;
            sum.depthSquares_m4 += area_m2 * depth_m * depth_m;
            for (int dr = -1; dr <= 1; ++dr) {
                for (int dc = -1; dc <= 1; ++dc) {
                    if ((dr != 0 || dc != 0) && at(col + dc, row + dr) != here) {
                        sum.border_m += crofton(dr == 0 || dc == 0);
                    }
                }
            }
        }
    }
    return sums;
}

void expectSame(const std::vector<PartSums>& kept, const std::vector<PartSums>& counted) {
    ASSERT_EQ(kept.size(), counted.size());
    for (std::size_t k = 0; k < kept.size(); ++k) {
        EXPECT_NEAR(kept[k].area_m2, counted[k].area_m2, 1e-6) << k;
        EXPECT_NEAR(kept[k].x_m3, counted[k].x_m3, 1e-3) << k;
        EXPECT_NEAR(kept[k].y_m3, counted[k].y_m3, 1e-3) << k;
        EXPECT_NEAR(kept[k].depth_m3, counted[k].depth_m3, 1e-3) << k;
        EXPECT_NEAR(kept[k].depthSquares_m4, counted[k].depthSquares_m4, 1e-2) << k;
        EXPECT_NEAR(kept[k].border_m, counted[k].border_m, 0.02) << k;
    }
}

/// West, middle and east by uneven borders.
grid::PieceGrid threePieces(const MadeUpWater& water) {
    grid::PieceGrid pieces(water.depth.frame(), -1);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const geo::WaterPoint p = pieces.frame().centre(pieces.frame().cellAt(i));
        const double x_m = p.x_m + 14.0 * std::sin(p.y_m / 9.0);
        if (water.mask.isActive(i)) {
            pieces[i] = x_m < 70.0 ? 0 : x_m < 135.0 ? 1 : 2;
        }
    }
    return pieces;
}

TEST(PieceSums, AreThoseCountedCellByCell) {
    const MadeUpWater water = slantedBay();
    const grid::PieceGrid pieces = threePieces(water);
    expectSame(sumsOfPieces(pieces, 3, water.depth, water.mask), counted(pieces, 3, water));
}

TEST(PieceSums, OfLumpsAreThoseOfTheirCells) {
    const MadeUpWater water = slantedBay();
    const WaterGraph graph = graphOf(water.depth, water.mask, water.mask.active(), 4);
    std::vector<std::int32_t> part;
    for (const WaterNode& node : graph.nodes) {
        part.push_back(node.middle().x_m < 105.0 ? 0 : 1);
    }
    grid::PieceGrid pieces(water.depth.frame(), -1);
    for (std::size_t n = 0; n < part.size(); ++n) {
        for (const std::size_t cell : graph.cellsOfNode[n]) {
            pieces[cell] = part[n];
            EXPECT_EQ(graph.nodeOfCell[cell], static_cast<std::int32_t>(n));
        }
    }
    expectSame(sumsOfParts(graph, part, 2), counted(pieces, 2, water));
}

TEST(BordersSettled, NoSingleCellThatMayMoveWouldBetterThem) {
    const MadeUpWater water = slantedBay();
    for (const double depthWeight : {0.0, 2.0}) {
        grid::PieceGrid pieces = threePieces(water);
        std::vector<PartSums> sums = counted(pieces, 3, water);
        PartCost cost{.wanted_m2 = 7700.0, .depthVariance_m2 = 0.4, .depth = depthWeight};
        const auto total = [&](const std::vector<PartSums>& of) {
            return cost.of(of[0]) + cost.of(of[1]) + cost.of(of[2]);
        };
        const double before = total(sums);
        CellGround ground(water.depth, water.mask, pieces);
        std::vector<std::size_t> all(pieces.size());
        std::iota(all.begin(), all.end(), std::size_t{0});
        std::erase_if(all, [&](std::size_t i) { return pieces[i] < 0; });
        BorderSettling(ground, sums, cost).run(all, base::Progress());
        expectSame(sums, counted(pieces, 3, water));
        const double settled = total(sums);
        EXPECT_LT(settled, before - 0.05);
        for (const std::size_t i : all) {
            const std::int32_t own = pieces[i];
            std::vector<std::int32_t> beside;
            ground.eachSide(i, [&](std::size_t to) { beside.push_back(pieces[to]); });
            for (const std::int32_t to : beside) {
                if (to == own || !ground.hangsTogetherWithout(i)) {
                    continue;
                }
                pieces[i] = to;
                const auto moved = counted(pieces, 3, water);
                const bool isAllowed =
                    moved[static_cast<std::size_t>(own)].area_m2 >= 0.6 * cost.wanted_m2 &&
                    moved[static_cast<std::size_t>(to)].area_m2 <= 1.45 * cost.wanted_m2;
                EXPECT_TRUE(!isAllowed || total(moved) > settled - 0.012)
                    << "cell " << i << " gains " << settled - total(moved);
                pieces[i] = own;
            }
        }
        EXPECT_EQ(grid::connectedPieces(pieces).cells.size(), 3U);
    }
}

TEST(BordersSettled, ACellThatHoldsItsPieceTogetherMayNotGo) {
    const grid::GridFrame f(0.0, 15.0, 5.0, 3, 3);
    grid::DepthGrid depth(f);
    const grid::Mask mask = grid::Mask::from(grid::Grid<std::uint8_t>(f, 1));
    const auto holds = [&](const std::array<int, 9>& own) {
        grid::PieceGrid pieces(f, 1);
        for (std::size_t i = 0; i < 9; ++i) {
            pieces[i] = own[i] != 0 ? 0 : 1;
        }
        return CellGround(depth, mask, pieces).hangsTogetherWithout(4);
    };
    EXPECT_TRUE(holds({1, 1, 1, 1, 1, 1, 1, 1, 1}));
    EXPECT_TRUE(holds({0, 1, 0, 0, 1, 0, 0, 0, 0})) << "the end of an arm";
    EXPECT_TRUE(holds({1, 1, 1, 0, 1, 0, 0, 0, 0}));
    EXPECT_TRUE(holds({0, 1, 1, 0, 1, 1, 0, 0, 0})) << "round its corner";
    EXPECT_FALSE(holds({0, 1, 0, 0, 1, 1, 0, 0, 0})) << "round a corner that is not its own";
    EXPECT_FALSE(holds({0, 1, 0, 0, 1, 0, 0, 1, 0})) << "a bridge";
    EXPECT_TRUE(holds({1, 1, 0, 1, 1, 0, 1, 1, 0})) << "the western side round";
    EXPECT_FALSE(holds({1, 0, 1, 0, 1, 0, 0, 0, 0})) << "corners alone hold nothing";
}

TEST(CutsFound, AreTheCheapestOfTheStraightOnes) {
    const MadeUpWater water = slantedBay();
    const WaterGraph graph = graphOf(water.depth, water.mask, water.mask.active(), 5);
    std::vector<std::int32_t> nodes(graph.nodes.size());
    std::iota(nodes.begin(), nodes.end(), 0);
    for (const double depthWeight : {0.0, 6.0}) {
        const PartCost cost{.wanted_m2 = 11700.0, .depthVariance_m2 = 0.4, .depth = depthWeight};
        const auto cut = PairCutter(graph, cost).cheapest(nodes, 1e9);
        ASSERT_TRUE(cut);
        std::vector<std::int32_t> part(nodes.size(), 1);
        for (std::size_t k = 0; k < cut->at; ++k) {
            part[static_cast<std::size_t>(cut->order[k])] = 0;
        }
        const auto sums = sumsOfParts(graph, part, 2);
        EXPECT_NEAR(cut->cost, cost.of(sums[0]) + cost.of(sums[1]), 1e-6);
        expectSame({cut->first, cut->second}, sums);
        // Every cut across one of four directions, or by depth, of allowed sizes.
        for (int way = 0; way < 5; ++way) {
            const double angle = std::numbers::pi * way / 4.0;
            const auto value = [&](std::int32_t n) {
                const WaterNode& node = graph.nodes[static_cast<std::size_t>(n)];
                return way == 4 ? node.sums.depth_m3 / node.sums.area_m2
                                : std::cos(angle) * node.middle().x_m +
                                      std::sin(angle) * node.middle().y_m;
            };
            if (way == 4 && depthWeight == 0.0) {
                continue;
            }
            auto order = nodes;
            std::ranges::stable_sort(order, {}, value);
            std::vector<double> costs;
            std::vector<std::int32_t> side(nodes.size(), 1);
            for (std::size_t k = 0; k + 1 < order.size(); ++k) {
                side[static_cast<std::size_t>(order[k])] = 0;
                const auto both = sumsOfParts(graph, side, 2);
                const auto fits = [&](const PartSums& s) {
                    return s.area_m2 >= 0.6 * cost.wanted_m2 && s.area_m2 <= 1.45 * cost.wanted_m2;
                };
                LumpGround ground(graph, side);
                if (fits(both[0]) && fits(both[1])) {
                    costs.push_back(cost.of(both[0]) + cost.of(both[1]));
                }
            }
            ASSERT_FALSE(costs.empty());
            std::ranges::sort(costs);
            // A cut that leaves a scrap behind the island does not count; one of the next does.
            EXPECT_LE(cut->cost, costs[std::min<std::size_t>(3, costs.size() - 1)] + 1e-6) << way;
        }
    }
}

TEST(StraightPieces, AreThoseNearestToTheirOwnMiddles) {
    const MadeUpWater water = slantedBay();
    const WaterGraph graph = graphOf(water.depth, water.mask, water.mask.active(), 4);
    std::vector<std::int32_t> part;
    for (const WaterNode& node : graph.nodes) {
        part.push_back(node.middle().x_m < 40.0 ? 0 : node.middle().x_m < 150.0 ? 1 : 2);
    }
    const auto sums = straightPieces(graph, water.depth, water.mask, part, 3);
    ASSERT_EQ(sums.size(), 3U);
    std::vector<double> area_m2(3, 0.0);
    for (std::size_t i = 0; i < water.depth.size(); ++i) {
        const geo::WaterPoint p = water.depth.frame().centre(water.depth.frame().cellAt(i));
        const auto away_m = [&](const PartSums& s) {
            return geo::distance_m(p, {s.x_m3 / s.area_m2, s.y_m3 / s.area_m2});
        };
        if (water.mask.isActive(i)) {
            const auto nearest = std::ranges::min_element(sums, {}, away_m);
            area_m2[static_cast<std::size_t>(nearest - sums.begin())] +=
                static_cast<double>(std::max(water.mask.share(i), 0.01F)) * 25.0;
        }
    }
    for (std::size_t k = 0; k < 3; ++k) {
        EXPECT_NEAR(sums[k].area_m2, area_m2[k], 650.0) << k;
    }
    EXPECT_LT(sums[0].x_m3 / sums[0].area_m2, sums[1].x_m3 / sums[1].area_m2);
    EXPECT_LT(sums[1].x_m3 / sums[1].area_m2, sums[2].x_m3 / sums[2].area_m2);
}

/// The division of a rugged water, as figures that a rule changed by mistake would move.
TEST(DivisionStays, WhatItWasUnlessARuleIsChangedOnPurpose) {
    const MadeUpWater water = support::madeUpWater(
        {{support::circle({0.0, 0.0}, 260.0), {support::circle({60.0, -40.0}, 35.0)}}},
        [](geo::WaterPoint p) {
            return 5.0 + 3.5 * std::sin(p.x_m / 60.0) * std::cos(p.y_m / 75.0) + 0.006 * p.x_m;
        },
        5.0);
    base::Progress silent;
    SectionSettings settings;
    settings.wantedArea = units::Area::hectares(1.6);
    const SectionMap map = divideWater({.depth = water.depth,
                                        .mask = water.mask,
                                        .outline = water.outline,
                                        .frame = water.frame,
                                        .bands = contours::Bands()},
                                       settings, silent)
                               .value();
    std::vector<double> areas_m2;
    for (const Section& section : map.sections) {
        areas_m2.push_back(section.area.inSquareMetres());
    }
    std::ostringstream told;
    told.precision(8);
    for (const double area_m2 : areas_m2) {
        told << area_m2 << ", ";
    }
    told << "| " << map.report.depthWeight << ", " << map.report.compactness << ", "
         << map.report.straightCompactness << ", " << map.report.explained << ", "
         << map.report.straightExplained;
    SCOPED_TRACE(told.str());
    const std::vector<double> known_m2{18925,     14010.291, 22005.618, 15551.139, 20106.645,
                                       9590.865,  9623.9244, 14211.846, 10526.493, 15738.052,
                                       22380.618, 22100,     13710.268};
    ASSERT_EQ(areas_m2.size(), known_m2.size());
    for (std::size_t i = 0; i < areas_m2.size(); ++i) {
        EXPECT_NEAR(areas_m2[i], known_m2[i], 0.5) << map.sections[i].name;
    }
    EXPECT_NEAR(map.report.depthWeight, 1.0, 1e-6);
    EXPECT_NEAR(map.report.compactness, 0.75802886, 1e-5);
    EXPECT_NEAR(map.report.straightCompactness, 0.77933007, 1e-5);
    EXPECT_NEAR(map.report.explained, 0.7890814, 1e-5);
    EXPECT_NEAR(map.report.straightExplained, 0.28290679, 1e-5);
}

} // namespace
