// SPDX-License-Identifier: GPL-3.0-or-later
// Distances and pieces on jumbled waters, against slower ways to the same figures.
#include "core/grid/box_mean.h"
#include "core/grid/connected_pieces.h"
#include "core/grid/distance_field.h"
#include "core/grid/piece_middles.h"
#include "core/grid/water_way.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

namespace {

using namespace grid;

Grid<std::uint8_t> jumbled(const GridFrame& f, double share, unsigned seed) {
    std::mt19937 random(seed);
    std::bernoulli_distribution isSet(share);
    Grid<std::uint8_t> out(f, 0);
    for (std::uint8_t& v : out.values()) {
        v = isSet(random) ? 1 : 0;
    }
    return out;
}

float valueAt(const Grid<float>& d, const Mask& mask, int col, int row) {
    return mask.isActive(Cell{col, row}) ? d[Cell{col, row}] : INFINITY;
}

/// The same equation solved by going over all cells until nothing changes any more.
Grid<float> swept(const Mask& mask, const std::vector<Cell>& sources) {
    const GridFrame& f = mask.frame();
    const double h = f.cell_m();
    Grid<float> d(f, INFINITY);
    for (const Cell s : sources) {
        for (int dr = -1; dr <= 1; ++dr) {
            for (int dc = -1; dc <= 1; ++dc) {
                const Cell c{s.col + dc, s.row + dr};
                if (mask.isActive(s) && mask.isActive(c)) {
                    d[c] = std::min(d[c], static_cast<float>(h * std::hypot(dc, dr)));
                }
            }
        }
    }
    for (bool isChanging = true; isChanging;) {
        isChanging = false;
        for (std::size_t i = 0; i < d.size(); ++i) {
            if (!mask.isActive(i)) {
                continue;
            }
            const Cell c = f.cellAt(i);
            const double a =
                std::min(valueAt(d, mask, c.col - 1, c.row), valueAt(d, mask, c.col + 1, c.row));
            const double b =
                std::min(valueAt(d, mask, c.col, c.row - 1), valueAt(d, mask, c.col, c.row + 1));
            double t = std::min(a, b) + h;
            if (std::fabs(a - b) < h) {
                t = 0.5 * (a + b + std::sqrt(2.0 * h * h - (a - b) * (a - b)));
            }
            if (t < static_cast<double>(d[i]) - 1e-4) {
                d[i] = static_cast<float>(t);
                isChanging = true;
            }
        }
    }
    return d;
}

TEST(WayRules, DistancesOverWaterAreThoseOfSweepingUntilNothingChanges) {
    const GridFrame f(0.0, 80.0, 2.0, 50, 40);
    for (const unsigned seed : {1U, 2U, 3U}) {
        const Mask mask = Mask::from(jumbled(f, 0.75, seed));
        const std::vector<Cell> sources{{5, 5}, {44, 31}, {60, 3}, {20, 39}};
        const Grid<float> marched = distanceOverWater_m(mask, sources);
        const Grid<float> wanted = swept(mask, sources);
        for (std::size_t i = 0; i < marched.size(); ++i) {
            if (std::isinf(wanted[i])) {
                EXPECT_TRUE(std::isinf(marched[i])) << seed << ' ' << i;
            } else {
                EXPECT_NEAR(marched[i], wanted[i], 0.02F) << seed << ' ' << i;
            }
        }
    }
}

TEST(WayRules, NothingIsReachedFartherThanAskedFor) {
    const Mask mask = Mask::from(jumbled(GridFrame(0.0, 80.0, 2.0, 50, 40), 0.8, 4));
    const std::array source{mask.nearestActive({50.0, 40.0}).value()};
    const Grid<float> all = distanceOverWater_m(mask, source);
    const Grid<float> near = distanceOverWater_m(mask, source, 20.0F);
    std::size_t reached = 0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        EXPECT_EQ(near[i], all[i] <= 20.0F ? all[i] : INFINITY) << i;
        reached += std::isinf(near[i]) ? 0 : 1;
    }
    EXPECT_GT(reached, 100U);
}

TEST(WayRules, StraightDistancesAreThoseOfLookingAtAllSources) {
    for (const double share : {0.002, 0.05, 0.6}) {
        const Grid<std::uint8_t> source = jumbled(GridFrame(0.0, 60.0, 1.5, 61, 40), share, 9);
        const Grid<float> distance = straightDistance_m(source);
        const GridFrame& f = source.frame();
        for (std::size_t i = 0; i < source.size(); i += 3) {
            double nearest_m = INFINITY;
            for (std::size_t k = 0; k < source.size(); ++k) {
                if (source[k] != 0) {
                    nearest_m = std::min(
                        nearest_m, geo::distance_m(f.centre(f.cellAt(i)), f.centre(f.cellAt(k))));
                }
            }
            if (std::isinf(nearest_m)) {
                EXPECT_TRUE(std::isinf(distance[i]));
            } else {
                EXPECT_NEAR(distance[i], nearest_m, 1e-3);
            }
        }
    }
}

/// Pieces by spreading from each cell that has none yet.
std::vector<std::int32_t> flooded(const Grid<std::int32_t>& classes) {
    const GridFrame& f = classes.frame();
    std::vector<std::int32_t> piece(classes.size(), -1);
    std::int32_t count = 0;
    for (std::size_t start = 0; start < piece.size(); ++start) {
        if (classes[start] < 0 || piece[start] >= 0) {
            continue;
        }
        std::vector<std::size_t> open{start};
        piece[start] = count;
        while (!open.empty()) {
            const Cell c = f.cellAt(open.back());
            open.pop_back();
            for (const Cell n : {Cell{c.col + 1, c.row}, Cell{c.col - 1, c.row},
                                 Cell{c.col, c.row + 1}, Cell{c.col, c.row - 1}}) {
                if (f.holds(n) && classes[n] == classes[start] && piece[f.index(n)] < 0) {
                    piece[f.index(n)] = count;
                    open.push_back(f.index(n));
                }
            }
        }
        ++count;
    }
    return piece;
}

TEST(WayRules, ConnectedPiecesAreThoseOfFloodingFromEachFirstCell) {
    for (const unsigned seed : {1U, 2U, 3U, 4U}) {
        std::mt19937 random(seed);
        std::uniform_int_distribution<int> kind(-1, 2);
        Grid<std::int32_t> classes(GridFrame(0.0, 30.0, 1.0, 37, 30), -1);
        for (std::int32_t& c : classes.values()) {
            c = seed == 4 ? std::min(kind(random), 0) : kind(random);
        }
        const ConnectedPieces found = connectedPieces(classes);
        const auto wanted = flooded(classes);
        EXPECT_EQ(found.pieceOfCell.values(), wanted);
        std::vector<std::vector<std::size_t>> cells(found.cells.size());
        for (std::size_t i = 0; i < wanted.size(); ++i) {
            if (wanted[i] >= 0) {
                cells.at(static_cast<std::size_t>(wanted[i])).push_back(i);
            }
        }
        EXPECT_EQ(found.cells, cells);
    }
}

TEST(WayRules, TheMiddleOfAPieceIsItsCellWithMostRoomPulledALittleToItsMean) {
    std::mt19937 random(8);
    std::uniform_int_distribution<int> kind(0, 2);
    const GridFrame f(100.0, 260.0, 4.0, 30, 25);
    PieceGrid pieces(f, -1);
    for (std::size_t i = 0; i < f.size(); ++i) { // blocks of 5 by 5 cells, some of one piece
        const Cell c = f.cellAt(i);
        pieces[i] = (c.col / 5 * 7 + c.row / 5 * 3) % 4 - 1;
    }
    const Grid<float> clearance_m = distanceToBorder_m(pieces);
    for (std::size_t i = 0; i < f.size(); ++i) {
        const Cell c = f.cellAt(i);
        double border_m = 1e9; // to the nearest cell beside another piece or at the edge
        for (std::size_t k = 0; k < f.size(); ++k) {
            const Cell n = f.cellAt(k);
            bool isBorder = false;
            for (const Cell b : {Cell{n.col + 1, n.row}, Cell{n.col - 1, n.row},
                                 Cell{n.col, n.row + 1}, Cell{n.col, n.row - 1}}) {
                isBorder = isBorder || !f.holds(b) || pieces[b] != pieces[k];
            }
            if (isBorder) {
                border_m = std::min(border_m, 4.0 * std::hypot(n.col - c.col, n.row - c.row));
            }
        }
        EXPECT_NEAR(clearance_m[i], pieces[i] < 0 ? 0.0 : border_m + 2.0, 1e-3) << i;
    }
    const auto middles = middlesOf(pieces, 4);
    ASSERT_EQ(middles.size(), 4U);
    EXPECT_EQ(middles[3], (geo::WaterPoint{100.0, 260.0})) << "no cells: the frame's corner";
    for (std::int32_t p = 0; p < 3; ++p) {
        geo::WaterPoint mean{};
        double cells = 0.0;
        for (std::size_t i = 0; i < f.size(); ++i) {
            if (pieces[i] == p) {
                mean.x_m += f.centre(f.cellAt(i)).x_m;
                mean.y_m += f.centre(f.cellAt(i)).y_m;
                cells += 1.0;
            }
        }
        mean = {mean.x_m / cells, mean.y_m / cells};
        const geo::WaterPoint middle = middles[static_cast<std::size_t>(p)];
        EXPECT_EQ(pieces[f.cellOf(middle)], p);
        const auto score = [&](geo::WaterPoint at) {
            return static_cast<double>(clearance_m[f.cellOf(at)]) -
                   0.05 * geo::distance_m(at, mean);
        };
        for (std::size_t i = 0; i < f.size(); ++i) {
            if (pieces[i] == p) {
                EXPECT_LE(score(f.centre(f.cellAt(i))), score(middle) + 1e-6);
            }
        }
    }
}

TEST(WayRules, AWayKeepsToWaterAndIsHardlyLongerThanTheDistanceOverIt) {
    const GridFrame f(0.0, 120.0, 2.0, 80, 60);
    DepthGrid depth(f);
    for (std::size_t i = 0; i < f.size(); ++i) { // three walls with gaps at changing ends
        const Cell c = f.cellAt(i);
        const bool isWall = (c.col == 20 && c.row > 8) || (c.col == 40 && c.row < 50) ||
                            (c.col == 60 && c.row > 30);
        if (!isWall) {
            depth.set(i, units::Depth::metres(2.0));
        }
    }
    const geo::WaterPoint from{7.0, 11.0};
    const geo::WaterPoint to{151.0, 13.0};
    const geo::Path way = wayOverWater(depth, from, to);
    EXPECT_EQ(way.front(), from);
    EXPECT_EQ(way.back(), to);
    for (const geo::WaterPoint p : geo::densified(way, 0.5)) {
        bool isWater = false; // a corner may be cut by less than half a cell
        for (const double off_m : {-0.7, 0.0, 0.7}) {
            isWater = isWater || depth.has(f.cellOf({p.x_m + off_m, p.y_m})) ||
                      depth.has(f.cellOf({p.x_m, p.y_m + off_m}));
        }
        EXPECT_TRUE(isWater) << p.x_m << ' ' << p.y_m;
    }
    const geo::Path shortest{from, {41, 104}, {81, 19}, {121, 60}, to};
    EXPECT_NEAR(geo::lengthOf(way).inMetres(), geo::lengthOf(shortest).inMetres(), 12.0);
    EXPECT_LE(way.size(), 10U);
    EXPECT_EQ(wayOverWater(depth, from, from).size(), 2U);
    EXPECT_TRUE(wayOverWater(DepthGrid(f), from, to).empty());
    for (int row = 0; row < f.rows(); ++row) { // a wall with no gap parts the water
        depth.clear(f.index({50, row}));
    }
    EXPECT_TRUE(wayOverWater(depth, from, to).empty());
    EXPECT_FALSE(wayOverWater(depth, from, {90.0, 90.0}).empty());
}

// Beyond 60,000 cells several are put together; the way is found all the same.
TEST(WayRules, AWayOverAVastWaterGoesRoundTheSameWall) {
    const GridFrame f(0.0, 600.0, 1.0, 600, 600);
    DepthGrid depth(f);
    for (std::size_t i = 0; i < f.size(); ++i) {
        const Cell c = f.cellAt(i);
        if (c.col < 290 || c.col > 310 || c.row < 100) { // free in the north
            depth.set(i, units::Depth::metres(2.0));
        }
    }
    const geo::Path way = wayOverWater(depth, {100.0, 100.0}, {500.0, 100.0});
    for (const geo::WaterPoint p : geo::densified(way, 1.0)) {
        EXPECT_TRUE(depth.has(f.cellOf(p))) << p.x_m << ' ' << p.y_m;
    }
    const double shortest_m = 2.0 * std::hypot(190.0, 400.0) + 21.0;
    EXPECT_NEAR(geo::lengthOf(way).inMetres(), shortest_m, 0.03 * shortest_m);
}

} // namespace
