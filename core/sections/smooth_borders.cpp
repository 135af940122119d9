// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/smooth_borders.h"

#include <array>
#include <map>

namespace sections {

namespace {

std::int32_t at(const grid::PieceGrid& pieces, int col, int row) {
    const grid::Cell c{col, row};
    return pieces.frame().holds(c) ? pieces[c] : -1;
}

/// True where the piece's cells among the eight round c hang together along sides: then taking c
/// away parts nothing.
bool hangsTogetherWithout(const grid::PieceGrid& pieces, grid::Cell c) {
    static constexpr std::array<std::array<int, 2>, 8> round{
        {{0, -1}, {1, -1}, {1, 0}, {1, 1}, {0, 1}, {-1, 1}, {-1, 0}, {-1, -1}}};
    const std::int32_t own = pieces[c];
    std::array<bool, 8> isOwn{};
    for (std::size_t k = 0; k < round.size(); ++k) {
        isOwn[k] = at(pieces, c.col + round[k][0], c.row + round[k][1]) == own;
    }
    // Runs of own cells round the ring that hold a side neighbour; corners alone hold nothing
    // together.
    int runs = 0;
    for (std::size_t k = 0; k < round.size(); k += 2) {
        const std::size_t corner = k + 1;
        const std::size_t nextSide = (k + 2) % round.size();
        const bool goesOn = isOwn[corner] && isOwn[nextSide];
        runs += isOwn[k] && !goesOn ? 1 : 0;
    }
    const bool isWholeRing = isOwn[0] && isOwn[2] && isOwn[4] && isOwn[6] && runs == 0;
    return runs == 1 || isWholeRing;
}

/// The piece with most cells within two steps; of equals the lower number. Own cells count for a
/// little more, so that straight borders stand still.
std::int32_t mostRound(const grid::PieceGrid& pieces, grid::Cell c) {
    std::map<std::int32_t, double> count;
    for (int dr = -2; dr <= 2; ++dr) {
        for (int dc = -2; dc <= 2; ++dc) {
            const std::int32_t piece = at(pieces, c.col + dc, c.row + dr);
            if (piece >= 0) {
                count[piece] += 1.0;
            }
        }
    }
    std::int32_t most = pieces[c];
    double best = count[most] + 0.5;
    for (const auto& [piece, cells] : count) {
        if (cells > best) {
            best = cells;
            most = piece;
        }
    }
    return most;
}

bool touches(const grid::PieceGrid& pieces, grid::Cell c, std::int32_t piece) {
    return at(pieces, c.col - 1, c.row) == piece || at(pieces, c.col + 1, c.row) == piece ||
           at(pieces, c.col, c.row - 1) == piece || at(pieces, c.col, c.row + 1) == piece;
}

bool isOnBorder(const grid::PieceGrid& pieces, grid::Cell c) {
    const std::int32_t own = pieces[c];
    for (const std::int32_t beside : {at(pieces, c.col - 1, c.row), at(pieces, c.col + 1, c.row),
                                      at(pieces, c.col, c.row - 1), at(pieces, c.col, c.row + 1)}) {
        if (beside >= 0 && beside != own) {
            return true;
        }
    }
    return false;
}

} // namespace

void smoothBorders(grid::PieceGrid& pieces, int passes) {
    const grid::GridFrame& f = pieces.frame();
    for (int pass = 0; pass < passes; ++pass) {
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            if (pieces[i] < 0) {
                continue;
            }
            const grid::Cell c = f.cellAt(i);
            if (!isOnBorder(pieces, c)) {
                continue;
            }
            const std::int32_t most = mostRound(pieces, c);
            if (most != pieces[i] && touches(pieces, c, most) && hangsTogetherWithout(pieces, c)) {
                pieces[i] = most;
            }
        }
    }
}

} // namespace sections
