// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/smooth_borders.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <vector>

namespace sections {

using grid::Cell;
using grid::PieceGrid;

namespace {

constexpr int passes = 2;
constexpr int mostReach = 6; ///< Cells.

constexpr std::array<Cell, 4> sides{Cell{1, 0}, Cell{-1, 0}, Cell{0, 1}, Cell{0, -1}};

class Smoothing {
public:
    Smoothing(PieceGrid& pieces, int reach)
        : pieces_(pieces), reach_(reach), isThinned_(reach > 4) {
        for (int dr = -reach; dr <= reach; ++dr) {
            halfWidths_.push_back(static_cast<int>(std::sqrt(reach * reach - dr * dr)));
        }
    }

    void run(const base::Progress& progress) {
        for (int pass = 0; pass < passes && !progress.stopAsked(); ++pass) {
            std::vector<std::pair<std::size_t, std::int32_t>> moved;
            for (const std::size_t i : nearBorders()) {
                if (const std::int32_t piece = mostAround(i); piece != pieces_[i]) {
                    moved.emplace_back(i, piece);
                }
            }
            for (const auto& [i, piece] : moved) {
                pieces_[i] = piece;
            }
        }
        joinFragments();
    }

private:
    [[nodiscard]] std::int32_t at(Cell c) const {
        return pieces_.frame().holds(c) ? pieces_[c] : -1;
    }

    /// Calls `act` with the position and the piece of every neighbour along a side that has one.
    template <class Act>
    void eachSide(std::size_t i, Act act) const {
        const grid::GridFrame& f = pieces_.frame();
        const Cell c = f.cellAt(i);
        for (const Cell step : sides) {
            const Cell to{c.col + step.col, c.row + step.row};
            if (const std::int32_t piece = at(to); piece >= 0) {
                act(f.index(to), piece);
            }
        }
    }

    /// The cells from which a border can be reached over water in half of the reach.
    [[nodiscard]] std::vector<std::size_t> nearBorders() const {
        std::vector<std::uint8_t> isFound(pieces_.size(), 0);
        std::vector<std::size_t> found;
        const auto take = [&](std::size_t i) {
            if (isFound[i] == 0) {
                isFound[i] = 1;
                found.push_back(i);
            }
        };
        const auto cols = static_cast<std::size_t>(pieces_.frame().cols());
        for (std::size_t i = 0, col = 0; i < pieces_.size();
             ++i, col = col + 1 == cols ? 0 : col + 1) {
            const std::int32_t own = pieces_[i];
            const std::int32_t east = col + 1 < cols ? pieces_[i + 1] : own;
            const std::int32_t south = i + cols < pieces_.size() ? pieces_[i + cols] : own;
            if (own >= 0 && east >= 0 && east != own) {
                take(i);
                take(i + 1);
            }
            if (own >= 0 && south >= 0 && south != own) {
                take(i);
                take(i + cols);
            }
        }
        std::size_t from = 0;
        for (int step = 1; step < (reach_ + 1) / 2; ++step) {
            const std::size_t to = found.size();
            for (; from < to; ++from) {
                eachSide(found[from], [&](std::size_t next, std::int32_t) { take(next); });
            }
        }
        return found;
    }

    /// The piece with the most cells within reach; its own of equals.
    [[nodiscard]] std::int32_t mostAround(std::size_t i) {
        const grid::GridFrame& f = pieces_.frame();
        const Cell c = f.cellAt(i);
        counts_.assign(1, {pieces_[i], 0});
        std::size_t last = 0; // neighbours mostly belong to the same piece
        const auto take = [&](std::int32_t piece) {
            if (counts_[last].first != piece) {
                for (last = 0; last < counts_.size() && counts_[last].first != piece; ++last) {
                }
                if (last == counts_.size()) {
                    counts_.emplace_back(piece, 0);
                }
            }
            ++counts_[last].second;
        };
        for (int row = std::max(c.row - reach_, 0); row <= std::min(c.row + reach_, f.rows() - 1);
             ++row) {
            const int line = row - c.row + reach_;
            const int half = halfWidths_[static_cast<std::size_t>(line)];
            const int first = std::max(c.col - half, 0);
            const int west = first + (isThinned_ ? (first - c.col + row - c.row) & 1 : 0);
            const int east = std::min(c.col + half, f.cols() - 1);
            for (int col = west; col <= east; col += isThinned_ ? 2 : 1) {
                if (const std::int32_t piece = pieces_[Cell{col, row}]; piece >= 0) {
                    take(piece);
                }
            }
        }
        auto [best, most] = counts_.front();
        for (const auto& [piece, count] : counts_) {
            if (count > most || (count == most && best != pieces_[i] && piece < best)) {
                best = piece;
                most = count;
            }
        }
        return best;
    }

    /// Gives what no longer hangs together with the most of its piece to a neighbour that does,
    /// again and again, since a fragment may touch nothing but other fragments.
    void joinFragments() {
        bool isWhole = false;
        while (!isWhole) {
            isWhole = true;
            const grid::ConnectedPieces parts = grid::connectedPieces(pieces_);
            const std::vector<std::uint8_t> isMost = mostOfEach(parts);
            for (std::size_t p = 0; p < parts.cells.size(); ++p) {
                if (isMost[p] == 0 && giveAway(parts, p, isMost)) {
                    isWhole = false;
                }
            }
        }
    }

    /// For each part whether it is the largest of its piece; the first of equals.
    [[nodiscard]] std::vector<std::uint8_t> mostOfEach(const grid::ConnectedPieces& parts) const {
        std::map<std::int32_t, std::size_t> largest;
        for (std::size_t p = 0; p < parts.cells.size(); ++p) {
            const auto [known, isNew] = largest.emplace(pieces_[parts.cells[p].front()], p);
            if (!isNew && parts.cells[p].size() > parts.cells[known->second].size()) {
                known->second = p;
            }
        }
        std::vector<std::uint8_t> isMost(parts.cells.size(), 0);
        for (const auto& [piece, part] : largest) {
            isMost[part] = 1;
        }
        return isMost;
    }

    /// \return whether there is a neighbour to take it: pockets that nature has cut off have none.
    bool giveAway(const grid::ConnectedPieces& parts, std::size_t part,
                  const std::vector<std::uint8_t>& isMost) {
        std::map<std::int32_t, int> border;
        for (const std::size_t i : parts.cells[part]) {
            eachSide(i, [&](std::size_t to, std::int32_t) {
                const auto next = static_cast<std::size_t>(parts.pieceOfCell[to]);
                if (next != part && isMost[next] != 0) {
                    ++border[pieces_[parts.cells[next].front()]];
                }
            });
        }
        const auto most = std::max_element(border.begin(), border.end(),
                                           [](auto& a, auto& b) { return a.second < b.second; });
        if (most == border.end()) {
            return false;
        }
        for (const std::size_t i : parts.cells[part]) {
            pieces_[i] = most->first;
        }
        return true;
    }

    PieceGrid& pieces_;
    int reach_;
    bool isThinned_; ///< A wide look takes every other cell, like the black ones of a chessboard.
    std::vector<int> halfWidths_;
    std::vector<std::pair<std::int32_t, int>> counts_;
};

} // namespace

void smoothBorders(PieceGrid& pieces, double reach_m, const base::Progress& progress) {
    const int reach = static_cast<int>(std::lround(reach_m / pieces.frame().cell_m()));
    if (reach >= 2) {
        Smoothing(pieces, std::min(reach, mostReach)).run(progress);
    }
}

} // namespace sections
