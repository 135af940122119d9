// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/feature_kinds.h"

#include "core/grid/connected_pieces.h"
#include "core/grid/piece_middles.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace structure {

using grid::Cell;
using grid::Grid;
using grid::GridFrame;

namespace {

constexpr double hold = 0.5; // a feature reaches on while it stands out by this share

/// Depths of the cells just outside a piece.
struct Surroundings {
    float shallowest_m = INFINITY;
    float deepest_m = -INFINITY;
    bool touchesLand = false;
};

Surroundings roundAbout(const std::vector<std::size_t>& cells, std::int32_t piece,
                        const grid::PieceGrid& pieces, const grid::DepthGrid& depth) {
    constexpr int reach = 2; // cells
    const GridFrame& f = depth.frame();
    Surroundings out;
    for (const std::size_t i : cells) {
        const Cell c = f.cellAt(i);
        for (int dr = -reach; dr <= reach; ++dr) {
            for (int dc = -reach; dc <= reach; ++dc) {
                const Cell n{c.col + dc, c.row + dr};
                if (!depth.has(n)) {
                    out.touchesLand = true;
                } else if (pieces[n] != piece) {
                    out.shallowest_m = std::min(out.shallowest_m, depth.raw_m()[f.index(n)]);
                    out.deepest_m = std::max(out.deepest_m, depth.raw_m()[f.index(n)]);
                }
            }
        }
    }
    return out;
}

/// True where the piece is about as wide as it is long: it fills much of the circle that fits into
/// its widest place, also where it winds.
bool isCompact(const std::vector<std::size_t>& cells, const Grid<float>& toBorder_m) {
    constexpr double mostCircles = 4.0; // 1 for a disc, 4 for a strip three times as long as wide
    float radius_m = 0.0F;
    for (const std::size_t i : cells) {
        radius_m = std::max(radius_m, toBorder_m[i]);
    }
    const double circle_m2 =
        std::numbers::pi * static_cast<double>(radius_m) * static_cast<double>(radius_m);
    return static_cast<double>(cells.size()) * toBorder_m.frame().cellArea_m2() <
           mostCircles * circle_m2;
}

ZoneKind kindOfHigh(const std::vector<std::size_t>& cells, const Surroundings& around,
                    const grid::DepthGrid& depth, double high_m) {
    float summit_m = INFINITY;
    for (const std::size_t i : cells) {
        summit_m = std::min(summit_m, depth.raw_m()[i]);
    }
    const bool standsAlone =
        !around.touchesLand && static_cast<double>(around.shallowest_m - summit_m) > hold * high_m;
    return standsAlone ? ZoneKind::hump : ZoneKind::spur;
}

ZoneKind kindOfLow(const std::vector<std::size_t>& cells, const Surroundings& around,
                   const grid::DepthGrid& depth, const Grid<float>& toBorder_m, double high_m) {
    float bottom_m = -INFINITY;
    for (const std::size_t i : cells) {
        bottom_m = std::max(bottom_m, depth.raw_m()[i]);
    }
    const bool closed = static_cast<double>(bottom_m - around.deepest_m) > hold * high_m;
    return closed && isCompact(cells, toBorder_m) ? ZoneKind::hole : ZoneKind::trough;
}

} // namespace

Grid<std::uint8_t> withHysteresis(const Grid<float>& values, double from, double downTo) {
    Grid<std::int32_t> reached(values.frame(), -1);
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (static_cast<double>(values[i]) >= downTo) {
            reached[i] = 0;
        }
    }
    Grid<std::uint8_t> out(values.frame(), 0);
    for (const std::vector<std::size_t>& cells : grid::connectedPieces(reached).cells) {
        const bool holds = std::any_of(cells.begin(), cells.end(), [&](std::size_t i) {
            return static_cast<double>(values[i]) >= from;
        });
        for (const std::size_t i : cells) {
            out[i] = holds ? 1 : 0;
        }
    }
    return out;
}

void markFeatures(KindGrid& kinds, const grid::DepthGrid& depth, const GroundForm& form,
                  units::Length high) {
    const double high_m = high.inMetres();
    const Grid<std::uint8_t> isHigh = withHysteresis(form.ridge_m, high_m, hold * high_m);
    const Grid<std::uint8_t> isLow = withHysteresis(form.valley_m, high_m, hold * high_m);
    Grid<std::int32_t> ground(kinds.frame(), -1);
    constexpr std::int32_t highGround = 0;
    constexpr std::int32_t lowGround = 1;
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        if (isHigh[i] != 0 && isLow[i] != 0) {
            kinds[i] = codeOf(ZoneKind::saddle);
        } else if (isHigh[i] != 0) {
            ground[i] = highGround;
        } else if (isLow[i] != 0) {
            ground[i] = lowGround;
        }
    }
    const grid::ConnectedPieces pieces = grid::connectedPieces(ground);
    const Grid<float> toBorder_m = grid::distanceToBorder_m(pieces.pieceOfCell);
    for (std::size_t p = 0; p < pieces.cells.size(); ++p) {
        const std::vector<std::size_t>& cells = pieces.cells[p];
        const Surroundings around =
            roundAbout(cells, static_cast<std::int32_t>(p), pieces.pieceOfCell, depth);
        const ZoneKind kind = ground[cells.front()] == highGround
                                  ? kindOfHigh(cells, around, depth, high_m)
                                  : kindOfLow(cells, around, depth, toBorder_m, high_m);
        for (const std::size_t i : cells) {
            kinds[i] = codeOf(kind);
        }
    }
}

} // namespace structure
