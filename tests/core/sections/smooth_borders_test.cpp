// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/smooth_borders.h"

#include <cmath>
#include <functional>
#include <random>
#include <set>

#include <gtest/gtest.h>

namespace {

using grid::Cell;
using grid::PieceGrid;

constexpr int side = 60;
constexpr double reach_m = 6.0;

/// Cells of a metre, each in the piece that `pieceOf` says.
PieceGrid laid(const std::function<std::int32_t(int, int)>& pieceOf) {
    PieceGrid pieces(grid::GridFrame(0.0, side, 1.0, side, side), -1);
    for (int row = 0; row < side; ++row) {
        for (int col = 0; col < side; ++col) {
            pieces[Cell{col, row}] = pieceOf(col, row);
        }
    }
    return pieces;
}

PieceGrid smoothed(PieceGrid pieces) {
    sections::smoothBorders(pieces, reach_m, base::Progress());
    return pieces;
}

bool hangsTogether(const PieceGrid& pieces, std::size_t count) {
    return grid::connectedPieces(pieces).cells.size() == count;
}

TEST(SmoothBorders, LeavesAStraightBorderWhereItIs) {
    for (const int way : {0, 1}) {
        const PieceGrid upright =
            laid([&](int col, int row) { return (way == 0 ? col : row) < side / 2 ? 0 : 1; });
        EXPECT_EQ(smoothed(upright), upright);
    }
}

TEST(SmoothBorders, TakesTheStepsOutOfAStair) {
    // steps of 8 m about the line from corner to corner
    const PieceGrid before = laid([](int col, int row) { return col / 8 < row / 8 ? 0 : 1; });
    const PieceGrid after = smoothed(before);
    const auto farthest = [](const PieceGrid& pieces) {
        double most = 0.0;
        for (int row = 10; row < side - 10; ++row) {
            for (int col = 10; col < side - 10; ++col) {
                const double beyond = (row - col - 4.0) / std::sqrt(2.0);
                const bool isWrong = (pieces[Cell{col, row}] == 0) != (beyond > 0.0);
                most = std::max(most, isWrong ? std::abs(beyond) : 0.0);
            }
        }
        return most;
    };
    EXPECT_GT(farthest(before), 2.0);
    EXPECT_LT(farthest(after), 1.0);
    EXPECT_TRUE(hangsTogether(after, 2));
}

TEST(SmoothBorders, DoesNotReachAcrossLand) {
    // a spit of land two cells wide; beyond it lies another piece, far from any border
    const PieceGrid before = laid([](int col, int row) {
        const bool isSpit = row < 40 && (col == 30 || col == 31);
        return isSpit ? -1 : col < 30 ? (row < 4 ? 2 : 0) : 1;
    });
    const PieceGrid after = smoothed(before);
    for (int row = 8; row < 30; ++row) {
        for (int col = 0; col < side; ++col) {
            ASSERT_EQ((after[Cell{col, row}]), (before[Cell{col, row}])) << col << ", " << row;
        }
    }
}

TEST(SmoothBorders, MakesPiecesWholeThatWereFragmentsAmongFragments) {
    for (unsigned seed = 1; seed <= 20; ++seed) {
        std::mt19937 random(seed);
        // blocks as wide as the look, so that smoothing leaves most of them
        std::vector<std::int32_t> pieceOfBlock(100);
        for (std::int32_t& piece : pieceOfBlock) {
            piece = std::uniform_int_distribution<std::int32_t>(0, 3)(random);
        }
        const PieceGrid after = smoothed(laid([&](int col, int row) {
            return pieceOfBlock[static_cast<std::size_t>(col / 6 * 10 + row / 6)];
        }));
        const std::set<std::int32_t> pieces(after.values().begin(), after.values().end());
        EXPECT_TRUE(hangsTogether(after, pieces.size())) << "seed " << seed;
    }
}

TEST(SmoothBorders, KeepsEveryCellAndEveryPieceWhole) {
    for (unsigned seed = 1; seed <= 20; ++seed) {
        SCOPED_TRACE(seed);
        std::mt19937 random(seed);
        std::uniform_real_distribution<double> along(0.0, side);
        std::vector<std::pair<double, double>> middles(9);
        for (auto& [x, y] : middles) {
            x = along(random);
            y = along(random);
        }
        // the nearest of nine middles in blocks of three: cells with stairs
        PieceGrid before = laid([&](int col, int row) {
            const auto away = [&](std::size_t k) {
                return std::hypot(col / 3 * 3 - middles[k].first, row / 3 * 3 - middles[k].second);
            };
            std::size_t nearest = 0;
            for (std::size_t k = 1; k < middles.size(); ++k) {
                nearest = away(k) < away(nearest) ? k : nearest;
            }
            return static_cast<std::int32_t>(nearest);
        });
        const std::size_t count = grid::connectedPieces(before).cells.size();
        const PieceGrid after = smoothed(before);
        std::size_t covered = 0;
        for (const std::int32_t piece : after.values()) {
            covered += piece >= 0 ? 1 : 0;
        }
        EXPECT_EQ(covered, after.size());
        EXPECT_LE(grid::connectedPieces(after).cells.size(), count);
    }
}

} // namespace
